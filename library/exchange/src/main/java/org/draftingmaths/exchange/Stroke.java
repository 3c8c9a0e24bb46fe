package org.draftingmaths.exchange;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.Cubic;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.Straight;

/** A stroke of a drawing in its own units. Unlike the library's curves it may be stretched and slanted. */
sealed interface Stroke {

    Vector2D from();

    Vector2D to();

    /** The stroke under any affine map. */
    Stroke mapped(AffineTransformMatrix2D by);

    /** The stroke as curves, which stray from it by no more than the bound, in its unit; none if it is a single point. */
    List<Curve> curves(double bound);

    record Line(Vector2D from, Vector2D to) implements Stroke {
        @Override
        public Line mapped(AffineTransformMatrix2D by) {
            return new Line(by.apply(from), by.apply(to));
        }

        @Override
        public List<Curve> curves(double bound) {
            return from.equals(to) || from.distance(to) == 0 ? List.of() : List.of(new Straight(from, to));
        }
    }

    record Bezier(Vector2D from, Vector2D fromHandle, Vector2D toHandle, Vector2D to) implements Stroke {

        /** The quadratic with one handle, by raising its degree. */
        static Bezier quadratic(Vector2D from, Vector2D handle, Vector2D to) {
            return new Bezier(from, from.lerp(handle, 2.0 / 3), to.lerp(handle, 2.0 / 3), to);
        }

        @Override
        public Bezier mapped(AffineTransformMatrix2D by) {
            return new Bezier(by.apply(from), by.apply(fromHandle), by.apply(toHandle), by.apply(to));
        }

        @Override
        public List<Curve> curves(double bound) {
            double extent = from.distance(fromHandle) + fromHandle.distance(toHandle) + toHandle.distance(to);
            return extent == 0 ? List.of() : List.of(new Cubic(from, fromHandle, toHandle, to));
        }
    }

    /**
     * Part of an ellipse: {@code centre + u cos a + v sin a}, {@code a = start + t sweep}. An affine map carries it to another.
     *
     * @param from its start, as it was written
     * @param to its end, as it was written
     */
    record Elliptic(Vector2D from, Vector2D to, Vector2D centre, Vector2D u, Vector2D v, double start, double sweep)
            implements Stroke {
        @Override
        public Elliptic mapped(AffineTransformMatrix2D by) {
            return new Elliptic(
                    by.apply(from), by.apply(to), by.apply(centre), by.applyVector(u), by.applyVector(v), start, sweep);
        }

        /** The cubics of the unit circle, mapped: what strays by d there strays by no more than d times the stretch here. */
        @Override
        public List<Curve> curves(double bound) {
            double stretch = Math.hypot(u.norm(), v.norm());
            if (stretch == 0) {
                return new Line(from, to).curves(bound);
            }
            List<Cubic> unit =
                    ArcCubics.of(new Arc(Vector2D.ZERO, 1, start, sweep), Math.max(bound / stretch, LEAST_BOUND));
            List<Curve> curves = new ArrayList<>();
            for (int i = 0; i < unit.size(); i++) {
                Cubic part = unit.get(i);
                Vector2D begin = i == 0 ? from : ((Cubic) curves.get(i - 1)).end();
                Vector2D end = i == unit.size() - 1 ? to : at(part.end());
                curves.add(new Cubic(begin, at(part.startHandle()), at(part.endHandle()), end));
            }
            return curves;
        }

        private Vector2D at(Vector2D onUnit) {
            return centre.add(u.multiply(onUnit.getX())).add(v.multiply(onUnit.getY()));
        }
    }

    /** Below this, as a share of the radius, the rounding of coordinates is larger than the bound. */
    double LEAST_BOUND = 1e-15;
}
