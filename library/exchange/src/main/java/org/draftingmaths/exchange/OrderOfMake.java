package org.draftingmaths.exchange;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.finish.Cutting;
import org.draftingmaths.finish.Facings;
import org.draftingmaths.finish.Hems;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Opening;
import org.draftingmaths.piece.Panel;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.piece.Step;
import org.draftingmaths.piece.Unfold;
import org.draftingmaths.piece.Use;
import org.draftingmaths.seam.Walk;
import org.draftingmaths.unit.Steps;

/**
 * In what order a style is sewn: what lies within a piece first, then the seams as the draft has them, edges and hems last. Facings are neatened
 * before they are sewn on, and turned after.
 */
final class OrderOfMake {

    /** What is less, in mm, is no figure for hands: half a step of the inch and more than one of the centimetre. */
    private static final double LITTLE = 2;

    private OrderOfMake() {}

    static List<String> of(Style style, Steps steps) {
        List<String> said = new ArrayList<>(interfaced(style));
        said.addAll(Alike.grouped(style.draft().pieces().stream()
                .flatMap(piece -> within(piece).stream())
                .toList()));
        said.addAll(seams(style, steps));
        said.addAll(finished(style, steps));
        return said;
    }

    static boolean isFaced(Style style) {
        return style.draft().pieces().stream().anyMatch(FacingSet::isFacing);
    }

    static boolean isInterfaced(Style style) {
        return style.cuts().stream().anyMatch(OrderOfMake::isInterfaced);
    }

    private static boolean isInterfaced(ToCut cut) {
        return cut.cuttings().stream().anyMatch(cutting -> cutting.cloth() == Cutting.Cloth.INTERFACING);
    }

    private static List<String> interfaced(Style style) {
        return Alike.grouped(style.cuts().stream()
                .filter(OrderOfMake::isInterfaced)
                .map(each -> "Put the interfacing on '" + each.piece() + "' before anything is sewn to it.")
                .toList());
    }

    /** The seams; sentences that are alike are said once where nothing comes between them. */
    private static List<String> seams(Style style, Steps steps) {
        List<FacingSet> sets = FacingSet.of(style.draft());
        List<String> said = new ArrayList<>();
        List<String> run = new ArrayList<>();
        Set<String> ways = new HashSet<>();
        for (Walk walk : inOrder(Walk.all(style.draft()), sets)) {
            for (FacingSet set : sets) {
                if (set.begins(walk.seam())) {
                    flush(run, said);
                    said.add(set.neatened(style, steps));
                }
            }
            run.add(seam(style, walk, steps));
            for (FacingSet set : sets) {
                if (set.ends(walk.seam())) {
                    flush(run, said);
                    said.add(turned(set, ways.add(set.turned())));
                }
            }
        }
        flush(run, said);
        return said;
    }

    /** What a facing catches in, as the end of a strap, lies on the garment before the facing is sewn over it. */
    private static List<Walk> inOrder(List<Walk> walks, List<FacingSet> sets) {
        List<Walk> ordered = new ArrayList<>(walks);
        for (FacingSet set : sets) {
            List<Walk> caught = walks.stream()
                    .filter(walk -> walk.seam().caught() && set.catches(walk.seam()))
                    .toList();
            ordered.removeAll(caught);
            int first = 0;
            while (!set.begins(ordered.get(first).seam())) {
                first++;
            }
            ordered.addAll(first, caught);
        }
        return ordered;
    }

    /** The first time in full; where another is done alike, by its catchwords. */
    private static String turned(FacingSet set, boolean isNew) {
        String ways = isNew ? set.turned() : "trim, clip, understitch, turn and press as before";
        String one = set.pieces().size() > 1 ? " as one facing: " : ": ";
        return "Finish " + set.words() + one + ways + "; " + set.tacked() + ".";
    }

    private static void flush(List<String> run, List<String> said) {
        said.addAll(Alike.grouped(run));
        run.clear();
    }

    private static List<String> within(Piece piece) {
        List<String> said = new ArrayList<>();
        for (Opening opening : piece.openings()) {
            String name = "'" + opening.name() + "' of '" + piece.name() + "'";
            said.addAll(opening.mouth().use().of(new Use.Cases<List<String>>() {
                @Override
                public List<String> dart(Use.Dart dart) {
                    return List.of("Sew " + name + " from the edge to the point, and press "
                            + dart.press()
                                    .map(leg -> way(piece, opening.name(), leg))
                                    .orElse("open") + ".");
                }

                @Override
                public List<String> left(Use.Left left) {
                    return switch (left.kind()) {
                        case GATHERS -> List.of("Sew two rows of long stitches for " + name + " from snip to snip.");
                        case EASE ->
                            List.of("Sew a row of long stitches for " + name + " from snip to snip, to be held in.");
                        case FLARE, SLASH -> List.of();
                    };
                }

                @Override
                public List<String> folded(Use.Folded folded) {
                    return List.of("Fold " + name
                            + " from snip to snip, and hold what is folded with long stitches within the allowance.");
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

    private static String seam(Style style, Walk walk, Steps steps) {
        Seam seam = walk.seam();
        double first =
                walk.intervals().stream().mapToDouble(Walk.Interval::first).sum();
        String sewn = (seam.caught() ? "Catch " : "Sew ") + words(style, seam.first(), steps)
                + (seam.caught() ? " in with " : " to ") + words(style, seam.second(), steps) + ", "
                + Quantity.LENGTH.print(first, steps) + (walk.intervals().size() > 1 ? ", matching the notches" : "");
        List<String> held = new ArrayList<>(held(seam, walk.intervals().size(), steps));
        if (seam.held().stream().anyMatch(each -> each.how() == Seam.How.GATHERS)) {
            held.add("press the allowances away from the gathers");
        }
        return sewn + (held.isEmpty() ? "." : "; " + String.join("; ", held) + ".");
    }

    /** A side of a seam; a chain of whole edges that are called alike is told by its pieces. */
    private static String words(Style style, Seam.Mate mate, Steps steps) {
        List<Seam.Part> parts = mate.parts();
        boolean alike = parts.stream().allMatch(Seam.Part::isWhole)
                && parts.stream().map(Seam.Part::edge).distinct().count() == 1;
        if (!alike) {
            return listed(parts.stream().map(part -> words(style, part, steps)).toList());
        }
        List<String> pieces =
                parts.stream().map(part -> "'" + part.piece() + "'").distinct().toList();
        String edge = "'" + parts.get(0).edge() + "' of ";
        long mirrored = parts.stream().filter(Seam.Part::mirrored).count();
        if (2 * pieces.size() == parts.size() && mirrored == pieces.size()) {
            return edge
                    + (pieces.size() == 1 ? "both halves of " : "")
                    + listed(pieces)
                    + (pieces.size() == 1 ? "" : ", all round,");
        }
        return pieces.size() == parts.size() && (mirrored == 0 || mirrored == parts.size())
                ? edge + listed(pieces) + (mirrored > 0 ? " on the other side" : "")
                : listed(parts.stream().map(part -> words(style, part, steps)).toList());
    }

    private static String words(Style style, Seam.Part part, Steps steps) {
        String edge = "'" + part.edge() + "' of '" + part.piece() + "'" + (part.mirrored() ? " on the other side" : "");
        String from = part.from().map(place -> place(style, part, place, steps)).orElse("");
        String to = part.to().map(place -> place(style, part, place, steps)).orElse("");
        if (part.isWhole()) {
            return edge;
        }
        return edge
                + (from.isEmpty() ? "" : " from " + from)
                + (to.isEmpty() ? "" : " up to " + to)
                + (to.isEmpty() ? " on" : "");
    }

    private static String place(Style style, Seam.Part part, Seam.Place place, Steps steps) {
        boolean notched = style.draft().piece(part.piece()).notches().stream()
                .anyMatch(notch -> notch.edge().equals(part.edge()) && notch.arc() == place.arc());
        return notched ? "its notch" : Quantity.LENGTH.print(place.arc(), steps);
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
        return what.stream()
                .map(each -> {
                    List<String> where = held.stream()
                            .filter(one -> held(one, steps).equals(each))
                            .map(one -> String.valueOf(one.interval()))
                            .toList();
                    return "in notch interval" + (where.size() > 1 ? "s " : " ") + listed(where) + " of " + intervals
                            + " " + each + (where.size() > 1 ? ", each" : "");
                })
                .toList();
    }

    private static String held(Seam.Held held, Steps steps) {
        boolean little = Math.abs(held.surplus()) < LITTLE;
        String length = little ? "a little" : Quantity.LENGTH.print(Math.abs(held.surplus()), steps);
        String what = switch (held.how()) {
            case EASE -> "ease away " + length;
            case GATHERS -> "gather away " + length;
            case STRETCH -> "stretch it " + (little ? length : "by " + length);
            case STAY -> "hold back " + length + " to a tape";
        };
        return what + (held.reason().isBlank() ? "" : " (" + held.reason() + ")");
    }

    /** Edges that no seam takes: finished or left open, then a facing in one with its piece, and hems last. */
    private static List<String> finished(Style style, Steps steps) {
        List<FacingSet> sets = FacingSet.of(style.draft());
        Map<String, List<String>> said = new LinkedHashMap<>();
        for (Ending ending : Ending.values()) {
            for (Piece piece : style.draft().pieces()) {
                boolean isDone = sets.stream().anyMatch(set -> set.has(piece.name()));
                piece.edges().stream()
                        .filter(edge -> !PieceSet.isSewn(style.draft(), piece.name(), edge.name()))
                        .filter(edge -> !Hems.isTurnedEnd(edge.name()) && !Unfold.isImage(piece, edge.name()))
                        .filter(edge -> !(isDone && Facings.isOuterEdge(edge.name())))
                        .filter(edge -> ending != Ending.NOTHING && Ending.of(edge) == ending)
                        .forEach(edge -> said.computeIfAbsent(
                                        how(style, piece, edge, ending, steps), key -> new ArrayList<>())
                                .add(
                                        ending == Ending.TURNED_UP || ending == Ending.FACED_IN_ONE
                                                ? "'" + piece.name() + "'"
                                                : "'" + edge.name() + "' of '" + piece.name() + "'"));
            }
        }
        return said.entrySet().stream()
                .map(each -> each.getKey().replace("%s", listed(each.getValue())))
                .toList();
    }

    /** How an edge ends that no seam takes. */
    private enum Ending {
        FINISHED,
        FACED_IN_ONE,
        UNSEWN,
        TURNED_UP,
        HEM,
        NOTHING;

        static Ending of(Edge edge) {
            if (Facings.isOuterEdgeInOne(edge.name())) {
                return FACED_IN_ONE;
            }
            if (Hems.isFreeEdge(edge.name())) {
                return TURNED_UP;
            }
            return switch (edge.role()) {
                case HEM -> HEM;
                case SEAM -> UNSEWN;
                case FINISHED -> FINISHED;
                case FOLD, STYLE_LINE -> NOTHING;
            };
        }
    }

    /** The step that drew the piece on beyond its edge up to this one. */
    private static Optional<Step.Extended> extended(Style style, Edge edge) {
        return style.steps().sections().stream()
                .flatMap(section -> section.ledger().only(Step.Extended.class).stream())
                .filter(step -> step.added().contains(edge.name()))
                .findFirst();
    }

    private static String how(Style style, Piece piece, Edge edge, Ending ending, Steps steps) {
        double width = allowance(style, piece.name(), edge.name());
        String line = extended(style, edge)
                .map(step -> "the line '" + step.line() + "'")
                .orElse("its line");
        String raw =
                width > 0 ? "turn its raw edge in by " + Quantity.LENGTH.print(width, steps) : "neaten its raw edge";
        return switch (ending) {
            case FINISHED ->
                piece.name().endsWith("binding")
                        ? "Fold the strip over the edge it binds, and sew down %s."
                        : "Neaten, face or bind %s.";
            case FACED_IN_ONE ->
                "Fold the facing that is in one with %s to the inside on " + line + ": " + raw
                        + " first, tack it at the seams, and let it hang from there.";
            case UNSEWN -> "No seam of the draft takes %s: sew on, turn in or bind, as the piece asks.";
            case TURNED_UP ->
                "Turn the hem of %s " + way(piece, edge) + " on " + line + ": " + raw + " first, then sew it down.";
            case NOTHING -> "";
            case HEM ->
                width > 0
                        ? "Turn up %s by " + Quantity.LENGTH.print(width, steps) + " and hem it."
                        : "Face or bind %s.";
        };
    }

    /** A hem at the foot of a piece is turned up, one at its top down. */
    private static String way(Piece piece, Edge edge) {
        CurvePath free = Paper.edge(piece, edge.name());
        double middle = Paper.sides(piece).stream()
                .mapToDouble(side -> side.path().start().getY())
                .average()
                .orElse(0);
        return free.start().lerp(free.end(), 0.5).getY() > middle ? "down" : "up";
    }

    static double allowance(Style style, String piece, String edge) {
        return style.patterns().stream()
                .filter(each -> each.piece().name().equals(piece))
                .mapToDouble(each -> each.cut().side(edge).width())
                .findFirst()
                .orElse(0);
    }

    /** One, two and three. */
    static String listed(List<String> names) {
        int last = names.size() - 1;
        return last == 0 ? names.get(0) : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }
}
