package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.unit.Steps;

/** Whether the parts that seams join are there, and what becomes of them when a piece changes. */
final class SeamPlaces {

    private SeamPlaces() {}

    /** The same cloth: an edge of one half. */
    private record Cloth(String piece, String edge, boolean mirrored) {}

    /** A part of an edge as a seam takes it. */
    private record Taken(Seam seam, Seam.Part part, double from, double to) {}

    /** Refuses seams of edges or places that are not there, and cloth that is sewn twice. */
    static void require(List<Piece> pieces, List<Seam> seams) {
        List<Taken> once = new ArrayList<>();
        for (Seam seam : seams) {
            List<Taken> own = new ArrayList<>();
            seam.first().parts().forEach(part -> own.add(taken(pieces, seam, part)));
            seam.second().parts().forEach(part -> own.add(taken(pieces, seam, part)));
            requireApart(own);
            if (!seam.caught()) {
                once.addAll(own);
            }
        }
        requireApart(once);
    }

    private static Taken taken(List<Piece> pieces, Seam seam, Seam.Part part) {
        Edge edge = Draft.piece(pieces, part.piece()).edge(part.edge());
        double length = edge.length();
        double from = part.from().map(Seam.Place::arc).orElse(0.0);
        double to = part.to().map(Seam.Place::arc).orElse(length);
        if (to > length + Panels.TOUCH || to - from <= Panels.TOUCH) {
            throw new IllegalArgumentException("Seam '" + seam.name() + "' takes " + part.words() + ", but '"
                    + part.edge() + "' is " + Quantity.LENGTH.print(length, Steps.DEFAULT) + " long.");
        }
        return new Taken(seam, part, from, to);
    }

    private static void requireApart(List<Taken> all) {
        Map<Cloth, List<Taken>> byCloth = new HashMap<>();
        for (Taken each : all) {
            Cloth cloth = new Cloth(each.part.piece(), each.part.edge(), each.part.mirrored());
            byCloth.computeIfAbsent(cloth, none -> new ArrayList<>()).add(each);
        }
        // In the order of the seams, so that the first fault is the one that is told.
        for (Taken each : all) {
            List<Taken> same = byCloth.remove(new Cloth(each.part.piece(), each.part.edge(), each.part.mirrored()));
            if (same != null) {
                same.sort(Comparator.comparingDouble(Taken::from));
                for (int i = 1; i < same.size(); i++) {
                    requireApart(same.get(i - 1), same.get(i));
                }
            }
        }
    }

    private static void requireApart(Taken one, Taken next) {
        if (Math.min(one.to, next.to) - next.from <= Panels.TOUCH) {
            return;
        }
        boolean same = one.seam.equals(next.seam);
        throw new IllegalArgumentException(
                same
                        ? "Seam '" + one.seam.name() + "' sews the same cloth twice: " + one.part.words() + ", and "
                                + next.part.words() + "; say which of them is on the mirrored half."
                        : "Seams '" + one.seam.name() + "' and '" + next.seam.name() + "' both sew " + next.part.words()
                                + "; if one of them is caught in with the other, as a facing over a collar, say so of it.");
    }

    // ------------------------------------------------------------------------------------------------ a piece changes

    /** The seams with their places on a piece where the piece now has them. */
    static List<Seam> carried(Piece was, Piece now, List<Seam> seams) {
        return seams.stream()
                .map(seam -> new Seam(
                        seam.name(),
                        carried(was, now, seam, seam.first()),
                        carried(was, now, seam, seam.second()),
                        seam.held(),
                        seam.caught()))
                .toList();
    }

    private static Seam.Mate carried(Piece was, Piece now, Seam seam, Seam.Mate mate) {
        return new Seam.Mate(mate.parts().stream()
                .map(part -> part.isWhole() || !part.piece().equals(was.name()) || isAsItWas(was, now, part.edge())
                        ? part
                        : new Seam.Part(
                                part.piece(),
                                part.edge(),
                                part.forward(),
                                part.mirrored(),
                                part.from().map(place -> carried(was, now, seam, part, place)),
                                part.to().map(place -> carried(was, now, seam, part, place))))
                .toList());
    }

    private static boolean isAsItWas(Piece was, Piece now, String edge) {
        return was.edge(edge).base().equals(now.edge(edge).base());
    }

    private static Seam.Place carried(Piece was, Piece now, Seam seam, Seam.Part part, Seam.Place place) {
        if (place.arc() <= Panels.TOUCH) {
            return place;
        }
        if (place.arc() >= was.edge(part.edge()).length() - Panels.TOUCH) {
            return new Seam.Place(now.edge(part.edge()).length(), place.beside());
        }
        List<Notch> before = notches(was, part.edge());
        List<Notch> after = notches(now, part.edge());
        Optional<Notch> mark = before.stream()
                .filter(notch -> Math.abs(notch.arc() - place.arc()) <= Panels.TOUCH)
                .findFirst();
        if (mark.isEmpty() || before.size() != after.size()) {
            throw new DraftingException(
                    "Put the changed '" + now.name() + "' into the draft",
                    String.format(
                            Locale.ROOT,
                            "'%s' was redrawn, and seam '%s' ends on it at %.1f mm, where %s; mark the place with a notch before"
                                    + " you redraw, or declare the seam anew",
                            part.edge(),
                            seam.name(),
                            place.arc(),
                            mark.isEmpty() ? "there is no notch to go by" : "its notches are others now"));
        }
        return new Seam.Place(after.get(before.indexOf(mark.get())).arc(), place.beside());
    }

    private static List<Notch> notches(Piece piece, String edge) {
        return piece.notches().stream()
                .filter(notch -> notch.edge().equals(edge))
                .toList();
    }
}
