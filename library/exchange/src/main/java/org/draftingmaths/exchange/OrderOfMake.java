package org.draftingmaths.exchange;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.finish.Cutting;
import org.draftingmaths.finish.Facings;
import org.draftingmaths.finish.Hems;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Opening;
import org.draftingmaths.piece.Panel;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.piece.Unfold;
import org.draftingmaths.piece.Use;
import org.draftingmaths.seam.Walk;
import org.draftingmaths.unit.Steps;

/** In what order a style is sewn: what lies within a piece first, then the seams as the draft has them, edges and hems last. */
final class OrderOfMake {

    private OrderOfMake() {}

    static List<String> of(Style style, Steps steps) {
        List<String> said = new ArrayList<>();
        said.addAll(interfaced(style));
        style.draft().pieces().forEach(piece -> said.addAll(within(piece)));
        Walk.all(style.draft()).forEach(walk -> said.add(seam(walk, steps)));
        said.addAll(finished(style, steps));
        return Alike.grouped(said);
    }

    private static List<String> interfaced(Style style) {
        return style.cuts().stream()
                .filter(each ->
                        each.cuttings().stream().anyMatch(cutting -> cutting.cloth() == Cutting.Cloth.INTERFACING))
                .map(each -> "Put the interfacing on '" + each.piece() + "' before anything is sewn to it.")
                .toList();
    }

    private static List<String> within(Piece piece) {
        List<String> said = new ArrayList<>();
        for (Opening opening : piece.openings()) {
            String name = "'" + opening.name() + "' of '" + piece.name() + "'";
            said.addAll(opening.mouth().use().of(new Use.Cases<List<String>>() {
                @Override
                public List<String> dart(Use.Dart dart) {
                    return List.of("Sew " + name + " from the edge to its point, and press it "
                            + dart.press()
                                    .map(leg -> way(piece, opening.name(), leg))
                                    .orElse("open") + ".");
                }

                @Override
                public List<String> left(Use.Left left) {
                    return switch (left.kind()) {
                        case GATHERS -> List.of("Sew two rows of long stitches for " + name + " between its snips.");
                        case EASE ->
                            List.of("Sew a row of long stitches for " + name + " between its snips, to be held in.");
                        case FLARE, SLASH -> List.of();
                    };
                }

                @Override
                public List<String> folded(Use.Folded folded) {
                    return List.of("Fold " + name
                            + " between its snips, and hold it with long stitches within the allowance.");
                }
            }));
        }
        for (Panel panel : piece.panels()) {
            panel.darts()
                    .forEach(
                            laid -> said.add(
                                    "Sew '" + laid.dart() + "' of '" + piece.name()
                                            + "' from its middle to one point and then to the other, and press it towards the centre."));
        }
        return said;
    }

    /** Where the leg lies as the piece is worn: the centre line is on x = 0 and y runs up. */
    private static String way(Piece piece, String dart, Leg leg) {
        Vector2D to = Measured.leg(piece, dart, leg).start();
        Vector2D from = Measured.leg(piece, dart, leg.other()).start();
        Vector2D shift = from.vectorTo(to);
        if (Math.abs(shift.getY()) > Math.abs(shift.getX())) {
            return shift.getY() < 0 ? "downwards" : "upwards";
        }
        return Math.abs(to.getX()) < Math.abs(from.getX()) ? "towards the centre" : "away from the centre";
    }

    private static String seam(Walk walk, Steps steps) {
        Seam seam = walk.seam();
        double first =
                walk.intervals().stream().mapToDouble(Walk.Interval::first).sum();
        String sewn =
                (seam.caught() ? "Catch " : "Sew ") + seam.first().words() + (seam.caught() ? " in with " : " to ")
                        + seam.second().words() + ", "
                        + Quantity.LENGTH.print(first, steps)
                        + (walk.intervals().size() > 1 ? ", matching the notches" : "");
        List<String> held = held(seam, walk.intervals().size(), steps);
        return sewn + (held.isEmpty() ? "." : "; " + String.join("; ", held) + ".");
    }

    /** What is held in, interval by interval; said once where it is the same in all. */
    private static List<String> held(Seam seam, int intervals, Steps steps) {
        List<Seam.Held> held =
                seam.held().stream().filter(each -> each.surplus() != 0).toList();
        List<String> what =
                held.stream().map(each -> held(each, steps)).distinct().toList();
        if (intervals == 1) {
            return what;
        }
        if (what.size() == 1 && held.size() == intervals) {
            return List.of("in each of the " + intervals + " notch intervals " + what.get(0));
        }
        return held.stream()
                .map(each -> "in notch interval " + each.interval() + " of " + intervals + " " + held(each, steps))
                .toList();
    }

    private static String held(Seam.Held held, Steps steps) {
        String length = Quantity.LENGTH.print(Math.abs(held.surplus()), steps);
        String what = switch (held.how()) {
            case EASE -> "ease away " + length;
            case GATHERS -> "gather away " + length;
            case STRETCH -> "stretch it by " + length;
            case STAY -> "hold back " + length + " to a tape";
        };
        return what + (held.reason().isBlank() ? "" : " (" + held.reason() + ")");
    }

    /** Edges that no seam takes are finished or left open, hems are turned up. */
    private static List<String> finished(Style style, Steps steps) {
        Map<String, List<String>> said = new LinkedHashMap<>();
        for (Role role : List.of(Role.FINISHED, Role.SEAM, Role.HEM)) {
            for (Piece piece : style.draft().pieces()) {
                piece.edges().stream()
                        .filter(edge -> edge.role() == role && !isSewn(style, piece.name(), edge.name()))
                        .filter(edge -> !Hems.isTurnedEnd(edge.name()) && !Unfold.isImage(piece, edge.name()))
                        .forEach(edge -> said.computeIfAbsent(how(style, piece, edge, steps), key -> new ArrayList<>())
                                .add("'" + edge.name() + "' of '" + piece.name() + "'"));
            }
        }
        return said.entrySet().stream()
                .map(each -> each.getKey().replace("%s", listed(each.getValue())))
                .toList();
    }

    private static String how(Style style, Piece piece, Edge edge, Steps steps) {
        if (Hems.isFreeEdge(edge.name())) {
            return "Turn in on its line what ends at %s, and sew it down.";
        }
        if (Facings.isOuterEdge(edge.name())) {
            return "Neaten %s, turn the facing that ends there to the inside on its line, and let it hang: tack it at the seams only.";
        }
        if (edge.role() == Role.FINISHED) {
            return "Neaten, face or bind %s.";
        }
        if (edge.role() == Role.SEAM) {
            return "No seam of the draft takes %s: sew it on, turn it in or bind it, as its piece asks.";
        }
        double depth = style.patterns().stream()
                .filter(each -> each.piece().name().equals(piece.name()))
                .mapToDouble(each -> each.cut().side(edge.name()).width())
                .findFirst()
                .orElse(0);
        return depth > 0 ? "Turn up %s by " + Quantity.LENGTH.print(depth, steps) + " and hem it." : "Face or bind %s.";
    }

    private static boolean isSewn(Style style, String piece, String edge) {
        return style.draft().seams().stream()
                .flatMap(seam -> Stream.of(seam.first(), seam.second()))
                .flatMap(mate -> mate.parts().stream())
                .anyMatch(part -> part.piece().equals(piece) && part.edge().equals(edge));
    }

    /** One, two and three. */
    private static String listed(List<String> names) {
        int last = names.size() - 1;
        return last == 0 ? names.get(0) : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }
}
