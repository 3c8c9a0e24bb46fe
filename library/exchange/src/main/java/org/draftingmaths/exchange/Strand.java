package org.draftingmaths.exchange;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.Cubic;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.Straight;
import org.draftingmaths.piece.Role;

/**
 * Curves end to end, as one shape of a drawing holds them, in mm, y up.
 *
 * @param name its id, or nothing
 * @param role what becomes of it
 * @param curves the curves, at least one
 * @param place where in the file it stands
 */
record Strand(String name, Role role, List<Curve> curves, String place) {

    Strand {
        curves = List.copyOf(curves);
    }

    Vector2D start() {
        return curves.get(0).start();
    }

    Vector2D end() {
        return curves.get(curves.size() - 1).end();
    }

    Strand reversed() {
        List<Curve> turned =
                new ArrayList<>(curves.stream().map(Curve::reversed).toList());
        Collections.reverse(turned);
        return new Strand(name, role, turned, place);
    }

    /** The strand from another start: its first curve is bent to begin there. */
    Strand startingAt(Vector2D point) {
        List<Curve> bent = new ArrayList<>(curves);
        Curve first = bent.remove(0);
        if (!first.end().equals(point)) {
            bent.add(0, startingAt(first, point));
        }
        return new Strand(name, role, bent.isEmpty() ? curves : bent, place);
    }

    /** A cubic keeps its direction at the start. Arcs do not come from drawings. */
    private static Curve startingAt(Curve curve, Vector2D point) {
        if (curve instanceof Cubic cubic) {
            Vector2D handle = cubic.startHandle().add(cubic.start().vectorTo(point));
            return new Cubic(point, handle, cubic.endHandle(), cubic.end());
        }
        return curve instanceof Arc arc ? arc : new Straight(point, curve.end());
    }

    String words() {
        return name.isEmpty() ? "the line at " + place : "'" + name + "'";
    }
}
