package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.Change;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Quantity;

/** The parting of one piece into two whose panels hang together along cut openings only, and its inverse. */
final class Parting {

    private final Piece piece;
    private final String line;
    private final List<Link> links;
    private final List<Integer> groups;
    private final String asked;

    private Parting(Piece piece, String line, List<Link> links, String asked) {
        this.piece = piece;
        this.line = line;
        this.links = links;
        this.asked = asked;
        this.groups = groups();
    }

    /** What becomes one part: its names of edges, its stretches of the line. */
    private record Side(Piece part, Step.Half half) {}

    static Detached part(
            Reworked cut, String line, List<Link> links, List<Double> marks, List<String> names, String asked) {
        Piece piece = cut.piece();
        Parting parting = new Parting(piece, line, links, asked);
        Side before = parting.side(Leg.BEFORE, names.get(0), marks);
        Side after = parting.side(Leg.AFTER, names.get(1), marks);
        Step step = new Step.Parted(
                line,
                piece.name(),
                piece.edges(),
                piece.openings(),
                piece.levels(),
                piece.insideDarts(),
                piece.notches(),
                piece.grain(),
                before.half(),
                after.half());
        Change area = new Change(
                "net area",
                Quantity.AREA,
                piece.area(),
                before.part().area() + after.part().area());
        return new Detached(before.part(), after.part(), cut.ledger().then(step).then(area));
    }

    // ------------------------------------------------------------------------------------- the two parts

    /** For each panel the number of its part: 0 at the before leg of the first opening, 1 at the after leg. */
    private List<Integer> groups() {
        int[] group = new int[piece.panels().size()];
        Arrays.setAll(group, i -> i);
        Set<String> cuts = links.stream().map(Link::opening).collect(Collectors.toSet());
        Set<String> folded = foldedDarts();
        for (Opening opening : piece.openings()) {
            if (!cuts.contains(opening.name())) {
                unite(group, opening, true);
            }
            if (folded.contains(opening.name())) {
                unite(group, opening, false);
            }
        }
        Opening first = piece.opening(links.get(0).opening());
        int before = group[panelAt(first, Leg.BEFORE, true)];
        int after = group[panelAt(first, Leg.AFTER, true)];
        boolean two = before != after && Arrays.stream(group).allMatch(g -> g == before || g == after);
        if (!two) {
            throw new DraftingException(
                    asked,
                    before == after
                            ? "the two sides still hang together; the line must part the piece from edge to edge"
                            : "more than two parts would come of it");
        }
        return Arrays.stream(group).mapToObj(g -> g == before ? 0 : 1).toList();
    }

    private Set<String> foldedDarts() {
        return links.stream()
                .flatMap(link -> link.over().stream())
                .map(Fold::dart)
                .collect(Collectors.toSet());
    }

    private void unite(int[] group, Opening opening, boolean atTip) {
        int one = group[panelAt(opening, Leg.BEFORE, atTip)];
        int other = group[panelAt(opening, Leg.AFTER, atTip)];
        Arrays.setAll(group, i -> group[i] == other ? one : group[i]);
    }

    private int panelAt(Opening opening, Leg leg, boolean atTip) {
        double length = opening.base(leg).length();
        for (int i = 0; i < piece.panels().size(); i++) {
            boolean here = piece.panels().get(i).ring().stream()
                    .filter(run -> run.border().equals(opening.leg(leg)))
                    .anyMatch(run -> atTip ? run.to() == length : run.from() == 0);
            if (here) {
                return i;
            }
        }
        throw new IllegalStateException("Opening '" + opening.name() + "' lies on no panel.");
    }

    private List<Panel> panels(int side) {
        List<Panel> own = new ArrayList<>();
        for (int i = 0; i < groups.size(); i++) {
            if (groups.get(i) == side) {
                own.add(piece.panels().get(i));
            }
        }
        return own;
    }

    private Side side(Leg leg, String name, List<Double> marks) {
        int number = leg == Leg.BEFORE ? 0 : 1;
        List<Panel> own = panels(number);
        List<Step.EdgePart> edgeParts = edgeParts(own);
        List<Step.LegPart> legParts = legParts(own);
        List<Step.LineStretch> stretches = new ArrayList<>();
        CurvePath base = lay(own, stretches);

        List<Edge> edges = new ArrayList<>();
        for (Step.EdgePart part : edgeParts) {
            Edge edge = piece.edge(part.edge());
            edges.add(new Edge(part.name(), edge.role(), edge.allowance(), base(edge, part)));
        }
        edges.add(new Edge(line, Role.SEAM, 0, base));
        List<Opening> openings = openings(own, edgeParts, legParts, stretches);
        List<Panel> panels = own.stream()
                .map(panel -> panel.with(panel.ring().stream()
                        .map(run -> renamed(run, edgeParts, legParts, stretches))
                        .toList()))
                .toList();
        Piece bare = new Piece(
                name,
                edges,
                openings,
                panels,
                piece.levels().stream()
                        .filter(level -> own.stream()
                                .flatMap(panel -> panel.lines().stream())
                                .anyMatch(stretch -> stretch.line().equals(level.name())))
                        .toList(),
                piece.insideDarts().stream()
                        .filter(dart -> own.stream()
                                .flatMap(panel -> panel.darts().stream())
                                .anyMatch(laid -> laid.dart().equals(dart.name())))
                        .toList(),
                notches(edgeParts),
                piece.grain().map(grain -> Grains.onPart(piece, own, grain)));
        Piece part = bare.with(panels.stream()
                .map(panel -> panel.with(Join.Heal.ring(bare, panel.ring())))
                .toList());
        for (double arc : marks) {
            part = part.notched(new Notch(line, arc, Beside.BEFORE));
        }
        return new Side(part, new Step.Half(name, stretches, edgeParts, legParts, edges, openings));
    }

    // ------------------------------------------------------------------------------------- the line

    /** Lays the legs that face this part end to end, with the darts between them folded shut. */
    private CurvePath lay(List<Panel> own, List<Step.LineStretch> stretches) {
        AffineTransformMatrix2D fold = Isometry.NONE;
        CurvePath base = null;
        double begun = 0;
        for (Link link : links) {
            if (link.over().isPresent()) {
                fold = link.over().get().shut(piece).premultiply(fold);
            }
            Run run = facing(own, link);
            CurvePath leg = piece.base(run.border());
            AffineTransformMatrix2D into = run.motion().premultiply(fold);
            CurvePath laid = link.inwards()
                    ? leg.transformed(into)
                    : leg.transformed(into).reversed();
            base = base == null ? laid : base.then(laid);
            double end = base.length();
            stretches.add(new Step.LineStretch(run.border(), leg.length(), begun, end, link.inwards(), into));
            begun = end;
        }
        return base;
    }

    private Run facing(List<Panel> own, Link link) {
        Opening opening = piece.opening(link.opening());
        List<Run> runs = own.stream()
                .flatMap(panel -> panel.ring().stream())
                .filter(run -> run.border().equals(opening.leg(Leg.BEFORE))
                        || run.border().equals(opening.leg(Leg.AFTER)))
                .toList();
        boolean whole = runs.size() == 1
                && runs.get(0).length()
                        == opening.base(((Border.OfLeg) runs.get(0).border()).leg())
                                .length();
        if (!whole) {
            throw new DraftingException(
                    asked, "another slash ends on a leg of '" + opening.name() + "'; close or move it first");
        }
        return runs.get(0);
    }

    // ------------------------------------------------------------------------------------- edges and legs

    /** The stretches of every edge that lie on a part; one that comes back gets a number. */
    private List<Step.EdgePart> edgeParts(List<Panel> own) {
        List<Step.EdgePart> parts = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            List<double[]> stretches = stretches(own, edge);
            for (int i = 0; i < stretches.size(); i++) {
                double from = stretches.get(i)[0];
                double to = stretches.get(i)[1];
                String name = stretches.size() == 1 ? edge.name() : edge.name() + " " + (i + 1);
                boolean whole = from == 0 && to == edge.length();
                Step.EdgePart part = new Step.EdgePart(edge.name(), from, to, name, to - from);
                parts.add(new Step.EdgePart(
                        edge.name(),
                        from,
                        to,
                        name,
                        whole ? edge.length() : base(edge, part).length()));
            }
        }
        return parts;
    }

    private static CurvePath base(Edge edge, Step.EdgePart part) {
        boolean whole = part.from() == 0 && part.to() == edge.length();
        return whole ? edge.base() : edge.base().between(part.from(), part.to());
    }

    private List<double[]> stretches(List<Panel> own, Edge edge) {
        List<Run> runs = own.stream()
                .flatMap(panel -> panel.ring().stream())
                .filter(run -> run.border().equals(new Border.OfEdge(edge.name())))
                .sorted((a, b) -> Double.compare(a.from(), b.from()))
                .toList();
        List<double[]> found = new ArrayList<>();
        for (Run run : runs) {
            int last = found.size() - 1;
            if (last >= 0 && follows(edge, found.get(last)[1], run.from())) {
                found.get(last)[1] = run.to();
            } else {
                found.add(new double[] {run.from(), run.to()});
            }
        }
        return found;
    }

    /** Stretches follow one another directly, or across a gap where cloth was taken out. */
    private boolean follows(Edge edge, double end, double next) {
        return end == next
                || piece.openings().stream()
                        .map(Opening::mouth)
                        .anyMatch(mouth -> mouth.border().equals(new Border.OfEdge(edge.name()))
                                && mouth.before() == end
                                && mouth.after() == next);
    }

    private List<Step.LegPart> legParts(List<Panel> own) {
        return links.stream()
                .flatMap(link -> link.over().stream())
                .flatMap(fold -> Stream.of(Leg.values()).map(leg -> legPart(own, piece.opening(fold.dart()), leg)))
                .toList();
    }

    private Step.LegPart legPart(List<Panel> own, Opening dart, Leg leg) {
        Run run = own.stream()
                .flatMap(panel -> panel.ring().stream())
                .filter(each -> each.border().equals(dart.leg(leg)))
                .findFirst()
                .orElseThrow(
                        () -> new DraftingException(asked, "it does not cross '" + dart.name() + "' from leg to leg"));
        double length = dart.base(leg).between(run.from(), run.to()).length();
        return new Step.LegPart(dart.leg(leg), run.from(), run.to(), length);
    }

    // ------------------------------------------------------------------------------------- renaming

    private static Run renamed(
            Run run,
            List<Step.EdgePart> edges,
            List<Step.LegPart> legs,
            List<Step.LineStretch> stretches,
            String line) {
        for (Step.LineStretch stretch : stretches) {
            if (run.border().equals(stretch.leg())) {
                return new Run(
                        new Border.OfEdge(line),
                        stretch.from(),
                        stretch.to(),
                        run.forward() == stretch.inwards(),
                        run.motion().multiply(stretch.intoLine().inverse()));
            }
        }
        if (run.border() instanceof Border.OfLeg leg) {
            return legs.stream()
                    .filter(part -> part.leg().equals(leg))
                    .findFirst()
                    .map(part -> new Run(leg, 0, part.length(), run.forward(), run.motion()))
                    .orElse(run);
        }
        String edge = ((Border.OfEdge) run.border()).edge();
        Step.EdgePart part = part(edges, edge, run.from(), run.to());
        return new Run(
                new Border.OfEdge(part.name()),
                onPart(part, run.from()),
                onPart(part, run.to()),
                run.forward(),
                run.motion());
    }

    private Run renamed(Run run, List<Step.EdgePart> edges, List<Step.LegPart> legs, List<Step.LineStretch> stretches) {
        return renamed(run, edges, legs, stretches, line);
    }

    private static Step.EdgePart part(List<Step.EdgePart> parts, String edge, double from, double to) {
        return parts.stream()
                .filter(part -> part.edge().equals(edge) && part.from() <= from && to <= part.to())
                .findFirst()
                .orElseThrow();
    }

    private static double onPart(Step.EdgePart part, double arc) {
        return arc == part.to() ? part.length() : arc - part.from();
    }

    private List<Notch> notches(List<Step.EdgePart> parts) {
        return piece.notches().stream()
                .flatMap(notch -> parts.stream()
                        .filter(part -> part.edge().equals(notch.edge())
                                && part.from() <= notch.arc()
                                && notch.arc() <= part.to())
                        .map(part -> new Notch(part.name(), onPart(part, notch.arc()), notch.beside()))
                        .limit(1))
                .toList();
    }

    // ------------------------------------------------------------------------------------- openings

    private List<Opening> openings(
            List<Panel> own, List<Step.EdgePart> edges, List<Step.LegPart> legs, List<Step.LineStretch> stretches) {
        Set<String> cuts = links.stream().map(Link::opening).collect(Collectors.toSet());
        Set<String> folded = foldedDarts();
        return piece.openings().stream()
                .filter(opening -> !cuts.contains(opening.name()))
                .filter(opening -> own.stream()
                        .flatMap(panel -> panel.ring().stream())
                        .anyMatch(run -> run.border().equals(opening.leg(Leg.BEFORE))))
                .map(opening -> folded.contains(opening.name())
                        ? cutThrough(opening, legs, edges, stretches)
                        : new Opening(
                                opening.name(),
                                mouth(opening.mouth(), edges),
                                opening.farMouth().map(mouth -> mouth(mouth, edges)),
                                opening.before(),
                                opening.after()))
                .toList();
    }

    /** The part with the point keeps the dart, its mouth now on the line; the other has a gap from its edge to the line. */
    private Opening cutThrough(
            Opening dart, List<Step.LegPart> legs, List<Step.EdgePart> edges, List<Step.LineStretch> stretches) {
        double at = crossedAt(dart, stretches);
        Mouth onLine = new Mouth(new Border.OfEdge(line), at, at, Use.SLASH);
        CurvePath before = stretch(dart, Leg.BEFORE, legs);
        CurvePath after = stretch(dart, Leg.AFTER, legs);
        boolean fromEdge = legs.stream().anyMatch(part -> part.leg().equals(dart.leg(Leg.BEFORE)) && part.from() == 0);
        return fromEdge
                ? new Opening(dart.name(), mouth(dart.mouth(), edges), Optional.of(onLine), before, after)
                : new Opening(dart.name(), onLine.used(dart.mouth().use()), Optional.empty(), before, after);
    }

    private static CurvePath stretch(Opening dart, Leg leg, List<Step.LegPart> legs) {
        Step.LegPart part = legs.stream()
                .filter(each -> each.leg().equals(dart.leg(leg)))
                .findFirst()
                .orElseThrow();
        return dart.base(leg).between(part.from(), part.to());
    }

    private double crossedAt(Opening dart, List<Step.LineStretch> stretches) {
        for (int i = 1; i < links.size(); i++) {
            boolean here = links.get(i)
                    .over()
                    .filter(fold -> fold.dart().equals(dart.name()))
                    .isPresent();
            if (here) {
                return stretches.get(i).from();
            }
        }
        throw new IllegalStateException("The line does not cross '" + dart.name() + "'.");
    }

    private static Mouth mouth(Mouth mouth, List<Step.EdgePart> edges) {
        if (!(mouth.border() instanceof Border.OfEdge edge)) {
            return mouth;
        }
        Step.EdgePart part = part(edges, edge.edge(), mouth.before(), mouth.after());
        return new Mouth(
                new Border.OfEdge(part.name()), onPart(part, mouth.before()), onPart(part, mouth.after()), mouth.use());
    }

    // ------------------------------------------------------------------------------------- one again

    static Piece rejoin(Piece before, Piece after, Step.Parted step) {
        List<Panel> panels = Stream.concat(
                        whole(before, step.before(), step.line()), whole(after, step.after(), step.line()))
                .toList();
        return new Piece(
                step.whole(),
                step.edges(),
                step.openings(),
                panels,
                step.levels(),
                step.darts(),
                step.notches(),
                step.grain());
    }

    private static Stream<Panel> whole(Piece part, Step.Half half, String line) {
        if (!part.edges().equals(half.edges()) || !part.openings().equals(half.openings())) {
            throw Panels.changedSince("Attach '" + part.name() + "' along '" + line + "'");
        }
        return part.panels().stream()
                .map(panel -> panel.with(panel.ring().stream()
                        .flatMap(run -> restored(run, half, line))
                        .toList()));
    }

    private static Stream<Run> restored(Run run, Step.Half half, String line) {
        if (run.border().equals(new Border.OfEdge(line))) {
            List<Run> legs = new ArrayList<>();
            for (Step.LineStretch stretch : half.stretches()) {
                if (run.from() <= stretch.from() && stretch.to() <= run.to()) {
                    legs.add(run.forward() ? legs.size() : 0, leg(run, stretch));
                }
            }
            return legs.stream();
        }
        if (run.border() instanceof Border.OfLeg leg) {
            return Stream.of(half.legs().stream()
                    .filter(part -> part.leg().equals(leg))
                    .findFirst()
                    .map(part -> new Run(leg, part.from(), part.to(), run.forward(), run.motion()))
                    .orElse(run));
        }
        Step.EdgePart part = half.parts().stream()
                .filter(each -> run.border().equals(new Border.OfEdge(each.name())))
                .findFirst()
                .orElseThrow();
        return Stream.of(new Run(
                new Border.OfEdge(part.edge()),
                onWhole(part, run.from()),
                onWhole(part, run.to()),
                run.forward(),
                run.motion()));
    }

    private static Run leg(Run run, Step.LineStretch stretch) {
        return new Run(
                stretch.leg(),
                0,
                stretch.length(),
                run.forward() == stretch.inwards(),
                run.motion().multiply(stretch.intoLine()));
    }

    private static double onWhole(Step.EdgePart part, double arc) {
        return arc == part.length() ? part.to() : arc + part.from();
    }
}
