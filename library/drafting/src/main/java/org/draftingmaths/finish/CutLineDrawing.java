package org.draftingmaths.finish;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Corner;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.curve.Parallel;
import org.draftingmaths.curve.ParallelOutline;
import org.draftingmaths.curve.Straight;
import org.draftingmaths.curve.Swallowed;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.PaperSide;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;

/**
 * Draws a cut line: the clean parallel of the whole outline first, mitred all round; then each corner between two edges anew,
 * trimming or lengthening its two neighbours.
 */
final class CutLineDrawing {

    private final Piece piece;
    private final Allowances plan;
    private final List<Stretch> stretches = new ArrayList<>();
    private final ParallelOutline parallel;

    /** A curve of the outline with its edge. */
    private record Stretch(PaperSide side, Curve curve) {}

    private CutLineDrawing(Piece piece, Allowances plan) {
        this.piece = piece;
        this.plan = plan;
        for (PaperSide side : Paper.sides(piece)) {
            side.path().curves().forEach(curve -> stretches.add(new Stretch(side, curve)));
        }
        this.parallel = parallel();
    }

    static CutLine of(Piece piece, Allowances plan) {
        plan.requireFits(piece);
        return new CutLineDrawing(piece, plan).cutLine();
    }

    private ParallelOutline parallel() {
        List<Curve> curves = new ArrayList<>();
        List<Double> widths = new ArrayList<>();
        List<Corner> corners = new ArrayList<>();
        for (int i = 0; i < stretches.size(); i++) {
            curves.add(stretches.get(i).curve());
            widths.add(plan.width(piece, edge(i)));
            corners.add(Corner.mitre(CutLine.SPIKE));
        }
        return Parallel.outline(new CurvePath(curves), widths, corners, CutLine.DEVIATION);
    }

    private String edge(int stretch) {
        return stretches.get(stretch).side().edge();
    }

    private CutLine cutLine() {
        if (!parallel.others().isEmpty()) {
            throw new DraftingException(
                    asked(),
                    "the allowance closes a hollow at "
                            + words(parallel.others().get(0).start()) + "; make it narrower there");
        }
        List<Part> parts = parts();
        List<CutSide> whole = parts.stream().map(Part::side).toList();
        requireEveryEdge(whole);
        List<Lost> lost = parallel.swallowed().stream().map(this::lost).toList();
        if (whole.size() == 1) {
            return new CutLine(parallel.outline(), whole, List.of(), lost);
        }
        List<CornerShape> shapes = new ArrayList<>();
        for (int i = 0; i < whole.size(); i++) {
            shapes.add(shape(parts.get(i), parts.get((i + 1) % whole.size())));
        }
        return assembled(whole, shapes, lost);
    }

    /** The stretch of the parallel along one edge: which of its curves, the first and the last. */
    private record Part(CutSide side, int first, int last) {}

    /** The parallel edge by edge, without what goes from edge to edge. */
    private List<Part> parts() {
        int n = parallel.edges().size();
        String[] of = new String[n];
        for (int i = 0; i < n; i++) {
            of[i] = label(i);
        }
        int first = 0;
        while (first < n && of[first] != null && of[first].equals(of[(first + n - 1) % n])) {
            first++;
        }
        List<Part> parts = new ArrayList<>();
        int from = first;
        for (int at = first; at < first + n; at++) {
            boolean last = at + 1 == first + n || !Objects.equals(of[at % n], of[(at + 1) % n]);
            if (last) {
                if (of[at % n] != null) {
                    parts.add(part(of[at % n], from, at));
                }
                from = at + 1;
            }
        }
        return parts;
    }

    /** A stretch without the straights at either end that only bridge a bend. */
    private Part part(String edge, int first, int last) {
        int from = first;
        int to = last;
        while (from < to && bridges(from)) {
            from++;
        }
        while (to > from && bridges(to)) {
            to--;
        }
        return new Part(
                new CutSide(edge, plan.width(piece, edge), path(from, to).orElseThrow()), from, to);
    }

    /** Curves of the parallel, counted on past its end. */
    private Optional<CurvePath> path(int from, int to) {
        int n = parallel.edges().size();
        List<Curve> curves = new ArrayList<>();
        for (int at = from; at <= to; at++) {
            curves.add(parallel.outline().curves().get(at % n));
        }
        return curves.isEmpty() ? Optional.empty() : Optional.of(new CurvePath(curves));
    }

    /** Whether a curve of the parallel only bridges a bend too tight to have one: a straight beside a curve. */
    private boolean bridges(int at) {
        int source = parallel.edges().get(at % parallel.edges().size());
        return source >= 0
                && !(stretches.get(source).curve() instanceof Straight)
                && parallel.outline().curves().get(at % parallel.edges().size()) instanceof Straight;
    }

    /** The edge that a curve of the parallel belongs to; none where it goes from edge to edge. */
    private String label(int at) {
        int n = parallel.edges().size();
        if (parallel.edges().get(at) >= 0) {
            return edge(parallel.edges().get(at));
        }
        String before = nearest(at, n - 1);
        return before.equals(nearest(at, 1)) ? before : null;
    }

    private String nearest(int at, int step) {
        int n = parallel.edges().size();
        int k = at;
        while (parallel.edges().get(k) < 0) {
            k = (k + step) % n;
        }
        return edge(parallel.edges().get(k));
    }

    private void requireEveryEdge(List<CutSide> sides) {
        List<String> found = sides.stream().map(CutSide::edge).toList();
        for (Stretch stretch : stretches) {
            String edge = stretch.side().edge();
            if (!found.contains(edge)) {
                throw new DraftingException(
                        asked(),
                        "the allowance leaves no cut line along '" + edge
                                + "', which lies in a hollow narrower than that; make it narrower there");
            }
            if (found.indexOf(edge) != found.lastIndexOf(edge)) {
                throw new DraftingException(
                        asked(), "the cut line along '" + edge + "' is broken by that of another edge");
            }
        }
    }

    private Lost lost(Swallowed swallowed) {
        Stretch at = stretches.get(swallowed.edge());
        double before = 0;
        double whole = 0;
        for (int i = 0; i < stretches.size(); i++) {
            if (edge(i).equals(at.side().edge())) {
                before += i < swallowed.edge() ? stretches.get(i).curve().length(1e-9) : 0;
                whole += stretches.get(i).curve().length(1e-9);
            }
        }
        double from = before + swallowed.from();
        double to = before + swallowed.to();
        return at.side().forward()
                ? new Lost(at.side().edge(), from, to)
                : new Lost(at.side().edge(), whole - to, whole - from);
    }

    private CornerShape shape(Part before, Part after) {
        CutSide arriving = before.side();
        CutSide leaving = after.side();
        int n = parallel.edges().size();
        int next = after.first() > before.last() ? after.first() : after.first() + n;
        int last = 0;
        while (!(edge(last).equals(arriving.edge())
                && edge((last + 1) % stretches.size()).equals(leaving.edge()))) {
            last++;
        }
        Curve in = stretches.get(last).curve();
        Curve out = stretches.get((last + 1) % stretches.size()).curve();
        NetCorner net = new NetCorner(
                in.end(),
                in.tangent(1),
                out.tangent(0),
                fold(arriving.edge()) || fold(leaving.edge()),
                path(before.last() + 1, next - 1),
                asked() + ", at the corner of '" + arriving.edge() + "' and '" + leaving.edge() + "'");
        return CornerShape.of(net, arriving, leaving, plan.between(arriving.edge(), leaving.edge()));
    }

    private boolean fold(String edge) {
        return piece.edge(edge).role() == Role.FOLD;
    }

    private CutLine assembled(List<CutSide> whole, List<CornerShape> shapes, List<Lost> lost) {
        int n = whole.size();
        List<CutSide> sides = new ArrayList<>();
        List<Curve> curves = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            CutSide side = whole.get(i);
            double from = shapes.get((i + n - 1) % n).start();
            double to = shapes.get(i).end();
            if (!(to - from > CornerShape.SAME)) {
                throw new DraftingException(
                        asked(), "the corners at either end leave nothing of the cut line along '" + side.edge() + "'");
            }
            sides.add(new CutSide(side.edge(), side.width(), side.path().between(from, to)));
            curves.addAll(sides.get(i).path().curves());
            shapes.get(i).corner().path().ifPresent(path -> curves.addAll(path.curves()));
        }
        CurvePath outline = new CurvePath(curves);
        requireSimple(outline);
        return new CutLine(
                outline, sides, shapes.stream().map(CornerShape::corner).toList(), lost);
    }

    private void requireSimple(CurvePath outline) {
        Meets meets = Meets.selfMeets(outline);
        Optional<Vector2D> first = meets.points().stream()
                .map(meet -> meet.point())
                .findFirst()
                .or(() -> meets.overlaps().stream()
                        .map(overlap -> outline.pointAt(overlap.fromFirst()))
                        .findFirst());
        if (first.isPresent()) {
            throw new DraftingException(
                    asked(),
                    "the cut line crosses itself at " + words(first.get())
                            + "; make the allowance narrower or the corners there plain");
        }
    }

    private String asked() {
        return "Add allowances to '" + piece.name() + "'";
    }

    private static String words(Vector2D point) {
        return String.format(Locale.ROOT, "(%.1f, %.1f)", point.getX(), point.getY());
    }
}
