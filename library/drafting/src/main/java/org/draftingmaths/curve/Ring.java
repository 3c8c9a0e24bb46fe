package org.draftingmaths.curve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Cleans up a closed ring of strands: what remains has the region that the ring winds round on its left, and nothing on
 * its right.
 */
final class Ring {
    /** How far off a strand its two sides are probed: well over the tolerance of a meet, well under any deviation. */
    private static final double PROBE = 1e-7;

    private static final double MEET = 1e-9;

    private final CurvePath source;
    private final List<Strand> strands;
    private final List<List<Double>> cuts = new ArrayList<>();
    private boolean crossed;

    private Ring(CurvePath source, List<Strand> strands) {
        this.source = source;
        this.strands = strands;
    }

    static ParallelOutline of(CurvePath source, List<Strand> strands) {
        return new Ring(source, strands).cleaned();
    }

    private ParallelOutline cleaned() {
        findCuts();
        List<Strand> kept = crossed || strands.stream().anyMatch(Strand::swallowed) ? kept() : strands;
        List<List<Strand>> loops = loops(kept);
        List<Strand> outer = null;
        double largest = 0;
        for (List<Strand> loop : loops) {
            double area = path(loop).area();
            if (area > largest) {
                largest = area;
                outer = loop;
            }
        }
        if (outer == null) {
            throw new IllegalArgumentException(
                    "distances swallow the whole outline; allowed are distances that leave something of it");
        }
        List<CurvePath> others = new ArrayList<>();
        for (List<Strand> loop : loops) {
            if (loop != outer) {
                others.add(path(loop));
            }
        }
        return new ParallelOutline(path(outer), outer.stream().map(Strand::edge).toList(), others, swallowed(loops));
    }

    private static CurvePath path(List<Strand> strands) {
        return new CurvePath(strands.stream().map(Strand::curve).toList());
    }

    /** Every strand with every other, unless their control points tell that they do not meet. */
    private void findCuts() {
        int n = strands.size();
        Hull[] hulls = new Hull[n];
        for (int i = 0; i < n; i++) {
            hulls[i] = Hull.around(strands.get(i).curve());
            cuts.add(new ArrayList<>(List.of(0.0, 1.0)));
        }
        for (int i = 0; i < n; i++) {
            for (int k = i + 1; k < n; k++) {
                boolean next = k == i + 1 || (i == 0 && k == n - 1);
                if (hulls[i].clearOf(hulls[k], MEET) || (next && hulls[i].runsOnInto(hulls[k]))) {
                    continue;
                }
                cut(i, k, next);
            }
        }
    }

    private void cut(int i, int k, boolean next) {
        Curve a = strands.get(i).curve();
        Curve b = strands.get(k).curve();
        Meets meets = CurveMeets.of(a, b, MEET);
        for (Meet m : meets.points()) {
            boolean joint = next
                    && (k == i + 1 ? m.onFirst() == 1 && m.onSecond() == 0 : m.onFirst() == 0 && m.onSecond() == 1);
            if (!joint) {
                cuts.get(i).add(m.onFirst());
                cuts.get(k).add(m.onSecond());
                crossed = true;
            }
        }
        for (Overlap o : meets.overlaps()) {
            cuts.get(i).addAll(List.of(o.fromFirst(), o.toFirst()));
            cuts.get(k).addAll(List.of(o.fromSecond(), o.toSecond()));
            crossed = true;
        }
    }

    /** The parts between cuts whose left side is inside and whose right side is not; of coinciding ones the first. */
    private List<Strand> kept() {
        List<Strand> kept = new ArrayList<>();
        for (int i = 0; i < strands.size(); i++) {
            double[] at = cuts.get(i).stream()
                    .mapToDouble(Double::doubleValue)
                    .sorted()
                    .distinct()
                    .toArray();
            double from = at[0];
            for (int j = 1; j < at.length; j++) {
                Curve curve = strands.get(i).curve();
                if (curve.length(from, at[j], 1e-6) <= CurvePath.JOINT && at[j] < 1) {
                    continue;
                }
                if (curve.length(from, at[j], 1e-6) > CurvePath.JOINT && bounds(curve, 0.5 * (from + at[j]))) {
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
        return a.start().distance(b.start()) <= CurvePath.JOINT
                && a.end().distance(b.end()) <= CurvePath.JOINT
                && a.at(0.5).distance(b.at(0.5)) <= CurvePath.JOINT;
    }

    private boolean bounds(Curve curve, double t) {
        Vector2D way = curve.tangent(t);
        Vector2D left = Vector2D.of(-PROBE * way.getY(), PROBE * way.getX());
        Vector2D p = curve.at(t);
        return winding(p.add(left)) >= 1 && winding(p.subtract(left)) <= 0;
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
        List<Strand> left = new ArrayList<>(kept);
        List<List<Strand>> loops = new ArrayList<>();
        while (!left.isEmpty()) {
            List<Strand> loop = new ArrayList<>();
            Strand at = left.remove(0);
            loop.add(at);
            Vector2D start = at.curve().start();
            while (!left.isEmpty()) {
                Vector2D end = at.curve().end();
                Strand next = left.stream()
                        .min(Comparator.comparingDouble(s -> s.curve().start().distance(end)))
                        .orElseThrow();
                if (start.distance(end) <= next.curve().start().distance(end)) {
                    break;
                }
                left.remove(next);
                loop.add(next);
                at = next;
            }
            if (loop.size() > 1 || start.distance(at.curve().end()) <= CurvePath.JOINT) {
                loops.add(loop);
            }
        }
        return loops;
    }

    /** What no loop is parallel to, in lengths of the source's curves. */
    private List<Swallowed> swallowed(List<List<Strand>> loops) {
        List<Swallowed> swallowed = new ArrayList<>();
        for (int edge = 0; edge < source.curves().size(); edge++) {
            int index = edge;
            List<Strand> parts = loops.stream()
                    .flatMap(List::stream)
                    .filter(s -> s.edge() == index && !s.swallowed())
                    .sorted(Comparator.comparingDouble(Strand::from))
                    .toList();
            double reached = 0;
            for (Strand part : parts) {
                add(swallowed, edge, reached, part.from());
                reached = Math.max(reached, part.to());
            }
            add(swallowed, edge, reached, 1);
        }
        return swallowed;
    }

    private void add(List<Swallowed> swallowed, int edge, double from, double to) {
        if (to <= from) {
            return;
        }
        Curve curve = source.curves().get(edge);
        double start = curve.length(0, from, 1e-6);
        double end = curve.length(0, to, 1e-6);
        if (end - start > CurvePath.JOINT) {
            swallowed.add(new Swallowed(edge, start, end));
        }
    }
}
