package org.draftingmaths.curve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Cleans up a closed ring of strands: what remains has the region that the ring winds round on its left, and nothing on
 * its right.
 *
 * <p>Along the ring the winding number to the left changes only where another strand crosses: it rises by one if that
 * strand is crossed from its right to its left, and falls by one the other way. So one count from a point outwards is
 * enough, unless strands touch, overlap or meet at a joint; then it is counted for every part.
 */
final class Ring {
    /** How far off a strand its two sides are probed: well over the tolerance of a meet, well under any deviation. */
    private static final double PROBE = 1e-7;

    private static final double MEET = 1e-9;

    /** How far apart in mm two parts may end at a cusp. */
    private static final double CUSP = 1e-4;

    /** The sine of the angle below which the side from which a strand is crossed is not told by the directions. */
    private static final double GRAZING = 1e-6;

    private final CurvePath source;
    private final List<Strand> strands;
    private final List<List<Cut>> cuts;
    private boolean plain = true;
    private boolean crossed;

    /** A parameter at which a strand is cut, and by how much the winding number to its left rises there. */
    private record Cut(double at, int rise) {}

    private Ring(CurvePath source, List<Strand> strands) {
        this.source = source;
        this.strands = strands;
        this.cuts = new ArrayList<>(strands.size());
    }

    static ParallelOutline of(CurvePath source, List<Strand> strands) {
        return new Ring(source, strands).cleaned();
    }

    private ParallelOutline cleaned() {
        findCuts();
        List<Strand> kept = crossed || strands.stream().anyMatch(Strand::swallowed) ? kept() : strands;
        List<List<Strand>> loops = loops(kept);
        List<CurvePath> paths = new ArrayList<>();
        int outer = -1;
        double largest = 0;
        for (int i = 0; i < loops.size(); i++) {
            paths.add(path(loops.get(i)));
            double area = paths.get(i).area();
            if (area > largest) {
                largest = area;
                outer = i;
            }
        }
        if (outer < 0) {
            throw new IllegalArgumentException(
                    "distances swallow the whole outline; allowed are distances that leave something of it");
        }
        CurvePath outline = paths.remove(outer);
        List<Integer> edges = loops.get(outer).stream().map(Strand::edge).toList();
        return new ParallelOutline(outline, edges, paths, swallowed(loops));
    }

    private static CurvePath path(List<Strand> loop) {
        Curve[] curves = new Curve[loop.size()];
        for (int i = 0; i < curves.length; i++) {
            curves[i] = loop.get(i).curve();
        }
        return CurvePath.of(curves);
    }

    /** Every strand with every other, unless their control points tell that they do not meet. */
    private void findCuts() {
        int n = strands.size();
        Box[] boxes = new Box[n];
        for (int i = 0; i < n; i++) {
            boxes[i] = Box.around(strands.get(i).curve());
            cuts.add(List.of());
        }
        for (int i = 0; i < n; i++) {
            for (int k = i + 1; k < n; k++) {
                if (!boxes[i].clearOf(boxes[k], MEET)) {
                    cut(i, k);
                }
            }
        }
    }

    private void cut(int i, int k) {
        Curve a = strands.get(i).curve();
        Curve b = strands.get(k).curve();
        boolean next = k == i + 1;
        boolean round = i == 0 && k == strands.size() - 1;
        if ((next && OneWay.meetAtJointOnly(a, b)) || (round && OneWay.meetAtJointOnly(b, a))) {
            return;
        }
        Meets meets = CurveMeets.of(a, b, MEET);
        for (Meet m : meets.points()) {
            boolean joint =
                    (next && m.onFirst() == 1 && m.onSecond() == 0) || (round && m.onFirst() == 0 && m.onSecond() == 1);
            if (!joint) {
                cut(i, k, m);
            }
        }
        for (Overlap o : meets.overlaps()) {
            plain = false;
            crossed = true;
            add(i, new Cut(o.fromFirst(), 0));
            add(i, new Cut(o.toFirst(), 0));
            add(k, new Cut(o.fromSecond(), 0));
            add(k, new Cut(o.toSecond(), 0));
        }
    }

    private void cut(int i, int k, Meet m) {
        Vector2D one = strands.get(i).curve().tangent(m.onFirst());
        Vector2D other = strands.get(k).curve().tangent(m.onSecond());
        double sine = other.signedArea(one);
        crossed = true;
        plain &= m.kind() == Meet.Kind.CROSSING && Math.abs(sine) > GRAZING;
        int rise = sine > 0 ? 1 : -1;
        add(i, new Cut(m.onFirst(), rise));
        add(k, new Cut(m.onSecond(), -rise));
    }

    private void add(int strand, Cut cut) {
        if (cuts.get(strand).isEmpty()) {
            cuts.set(strand, new ArrayList<>(2));
        }
        cuts.get(strand).add(cut);
    }

    private List<Strand> kept() {
        for (List<Cut> of : cuts) {
            if (of.size() > 1) {
                of.sort(Comparator.comparingDouble(Cut::at));
            }
        }
        return plain ? followed() : counted();
    }

    /** The parts with winding number 1 to their left, by following its changes along the ring. */
    private List<Strand> followed() {
        int winding = firstWinding();
        List<Strand> kept = new ArrayList<>(strands.size());
        for (int i = 0; i < strands.size(); i++) {
            double from = 0;
            for (Cut cut : cuts.get(i)) {
                keep(kept, i, from, cut.at, winding == 1);
                from = cut.at;
                winding += cut.rise;
            }
            keep(kept, i, from, 1, winding == 1);
        }
        return kept;
    }

    /** The winding number to the left of the ring's very start. */
    private int firstWinding() {
        double to = cuts.get(0).isEmpty() ? 1 : cuts.get(0).get(0).at;
        Curve curve = strands.get(0).curve();
        return winding(beside(curve, 0.5 * to, PROBE));
    }

    private void keep(List<Strand> kept, int i, double from, double to, boolean wanted) {
        if (wanted && to > from && ((from == 0 && to == 1) || size(i, from, to) > MEET)) {
            kept.add(strands.get(i).between(from, to));
        }
    }

    private double size(int i, double from, double to) {
        Curve curve = strands.get(i).curve();
        return Plane.distance(curve.at(from), curve.at(to)) + Plane.distance(curve.at(0.5 * (from + to)), curve.at(to));
    }

    /** The parts whose left side is inside and whose right side is not; of coinciding ones the first. */
    private List<Strand> counted() {
        List<Strand> kept = new ArrayList<>();
        for (int i = 0; i < strands.size(); i++) {
            double[] at = new double[cuts.get(i).size() + 2];
            at[at.length - 1] = 1;
            for (int j = 1; j + 1 < at.length; j++) {
                at[j] = cuts.get(i).get(j - 1).at;
            }
            double from = 0;
            for (int j = 1; j < at.length; j++) {
                boolean tiny = size(i, from, at[j]) <= CurvePath.JOINT;
                if (tiny && at[j] < 1) {
                    continue;
                }
                if (!tiny && bounds(strands.get(i).curve(), 0.5 * (from + at[j]))) {
                    Strand part = strands.get(i).between(from, at[j]);
                    if (kept.stream().noneMatch(other -> coincide(other.curve(), part.curve()))) {
                        kept.add(part);
                    }
                }
                from = at[j];
            }
        }
        return kept;
    }

    private static boolean coincide(Curve a, Curve b) {
        return Plane.distance(a.start(), b.start()) <= CurvePath.JOINT
                && Plane.distance(a.end(), b.end()) <= CurvePath.JOINT
                && Plane.distance(a.at(0.5), b.at(0.5)) <= CurvePath.JOINT;
    }

    private boolean bounds(Curve curve, double t) {
        return winding(beside(curve, t, PROBE)) >= 1 && winding(beside(curve, t, -PROBE)) <= 0;
    }

    private static Vector2D beside(Curve curve, double t, double left) {
        return Plane.beside(curve.at(t), curve.tangent(t), left);
    }

    private int winding(Vector2D p) {
        int winding = 0;
        for (int i = 0; i < strands.size(); i++) {
            Vector2D end = strands.get((i + 1) % strands.size()).curve().start();
            winding += Inside.crossings(strands.get(i).curve(), end, p);
        }
        return winding;
    }

    /** Chains parts end to end into closed loops. */
    private static List<List<Strand>> loops(List<Strand> kept) {
        int n = kept.size();
        boolean[] used = new boolean[n];
        List<List<Strand>> loops = new ArrayList<>();
        for (int first = 0; first < n; first++) {
            if (used[first]) {
                continue;
            }
            List<Strand> loop = new ArrayList<>(n);
            Vector2D start = kept.get(first).curve().start();
            int at = first;
            while (at >= 0) {
                used[at] = true;
                loop.add(kept.get(at));
                int next = following(kept, used, at, start);
                if (next >= 0) {
                    bridge(
                            loop,
                            kept.get(at).curve().end(),
                            kept.get(next).curve().start());
                }
                at = next;
            }
            Vector2D end = loop.get(loop.size() - 1).curve().end();
            // A crumb left at a cusp, shorter than a joint is wide, is no loop though its ends are together.
            if (Plane.distance(start, end) <= CurvePath.JOINT && !crumb(loop)) {
                loops.add(loop);
            }
        }
        return loops;
    }

    /** At a cusp two parts may end a little apart, because neither is fitted up to the very place where they meet. */
    private static void bridge(List<Strand> loop, Vector2D from, Vector2D to) {
        double gap = Plane.distance(from, to);
        if (gap > CurvePath.JOINT && gap <= CUSP) {
            loop.add(Strand.corner(from, to));
        }
    }

    private static boolean crumb(List<Strand> loop) {
        double size = 0;
        for (Strand strand : loop) {
            Curve curve = strand.curve();
            Vector2D middle = curve.at(0.5);
            size += Plane.distance(curve.start(), middle) + Plane.distance(middle, curve.end());
            if (size > CurvePath.JOINT) {
                return false;
            }
        }
        return true;
    }

    /** The unused part that starts nearest to where this one ends, or -1 if the loop's own start is nearer still. */
    private static int following(List<Strand> kept, boolean[] used, int at, Vector2D start) {
        Vector2D end = kept.get(at).curve().end();
        int n = kept.size();
        int best = -1;
        double least = Plane.distance(end, start);
        for (int step = 1; step < n; step++) {
            int k = (at + step) % n;
            double distance = used[k]
                    ? Double.POSITIVE_INFINITY
                    : Plane.distance(kept.get(k).curve().start(), end);
            if (distance < least) {
                best = k;
                least = distance;
            }
            if (least <= MEET) {
                break;
            }
        }
        return best;
    }

    /** What no loop is parallel to, in lengths of the source's curves. */
    private List<Swallowed> swallowed(List<List<Strand>> loops) {
        int n = source.curves().size();
        List<List<Strand>> parts = new ArrayList<>();
        for (int edge = 0; edge < n; edge++) {
            parts.add(new ArrayList<>(2));
        }
        for (List<Strand> loop : loops) {
            for (Strand strand : loop) {
                if (strand.edge() >= 0 && !strand.swallowed()) {
                    parts.get(strand.edge()).add(strand);
                }
            }
        }
        List<Swallowed> swallowed = new ArrayList<>();
        for (int edge = 0; edge < n; edge++) {
            double[] gaps = gaps(parts.get(edge));
            for (int i = 0; i < gaps.length; i += 2) {
                add(swallowed, edge, gaps[i], gaps[i + 1]);
            }
        }
        return swallowed;
    }

    /** The stretches of [0, 1] that no part covers, as pairs. */
    private static double[] gaps(List<Strand> parts) {
        parts.sort(Comparator.comparingDouble(Strand::from));
        double[] gaps = new double[2 * parts.size() + 2];
        int count = 0;
        double reached = 0;
        for (Strand part : parts) {
            if (part.from() > reached) {
                gaps[count++] = reached;
                gaps[count++] = part.from();
            }
            reached = Math.max(reached, part.to());
        }
        if (reached < 1) {
            gaps[count++] = reached;
            gaps[count++] = 1;
        }
        return Arrays.copyOf(gaps, count);
    }

    private void add(List<Swallowed> swallowed, int edge, double from, double to) {
        Curve curve = source.curves().get(edge);
        double start = from == 0 ? 0 : curve.length(0, from, 1e-6);
        double end = to == 1 ? source.lengths()[edge + 1] - source.lengths()[edge] : curve.length(0, to, 1e-6);
        if (end - start > CurvePath.JOINT) {
            swallowed.add(new Swallowed(edge, start, end));
        }
    }
}
