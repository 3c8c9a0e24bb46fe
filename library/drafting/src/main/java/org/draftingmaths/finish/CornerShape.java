package org.draftingmaths.finish;

import java.util.List;
import java.util.Optional;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;

/**
 * One corner of a cut line, solved.
 *
 * @param end how much of the arriving cut line stays, in mm from its start
 * @param start from where on the leaving cut line stays, in mm from its start
 * @param corner the corner
 */
record CornerShape(double end, double start, CutCorner corner) {

    /** Two places nearer than this, in mm, are one: well under the joint of a path. */
    static final double SAME = 1e-8;

    /** How far lines are carried on past the corner, as a multiple of the wider allowance. */
    private static final double REACH = 25;

    static CornerShape of(NetCorner net, CutSide arriving, CutSide leaving, Optional<Allowances.AtCorner> choice) {
        double reach = REACH * Math.max(1, Math.max(arriving.width(), leaving.width()));
        Away a = Away.straight(arriving.width(), arriving.path().reversed(), net.at(), net.in(), reach);
        Away b = Away.straight(
                leaving.width(), leaving.path(), net.at(), net.out().negate(), reach);
        Cut cut = choice.filter(each -> each.cut() != CornerCut.PLAIN)
                .map(each -> asked(net, a, b, each, arriving.edge()))
                .orElseGet(() -> PlainCorner.of(net, a, b, choice.isEmpty()));
        Away carriedA = cut.a();
        Away carriedB = cut.b();
        Optional<CurvePath> path = joined(List.of(
                carriedA.carried(cut.onA()).map(CurvePath::reversed), cut.between(), carriedB.carried(cut.onB())));
        return new CornerShape(
                arriving.path().length() - carriedA.trimmed(cut.onA()),
                carriedB.trimmed(cut.onB()),
                new CutCorner(
                        arriving.edge(),
                        leaving.edge(),
                        net.at(),
                        net.angle(),
                        choice.map(Allowances.AtCorner::cut).orElse(CornerCut.PLAIN),
                        cut.made(),
                        path));
    }

    private static Cut asked(NetCorner net, Away a, Away b, Allowances.AtCorner choice, String arriving) {
        boolean seamArrives = choice.seam().equals(arriving);
        return switch (choice.cut()) {
            case BLUNTED -> PlainCorner.blunted(net, a, b);
            case STEPPED -> PlainCorner.stepped(a, b);
            default ->
                seamArrives
                        ? CrossedCorner.of(net, a, b, choice, net.in())
                        : CrossedCorner.of(net, b, a, choice, net.out().negate())
                                .swapped();
        };
    }

    private static Optional<CurvePath> joined(List<Optional<CurvePath>> parts) {
        Curve[] curves = parts.stream()
                .flatMap(Optional::stream)
                .flatMap(part -> part.curves().stream())
                .toArray(Curve[]::new);
        return curves.length == 0 ? Optional.empty() : Optional.of(CurvePath.of(curves));
    }

    /**
     * Where two cut lines are cut, and what is cut between.
     *
     * @param a the first line, carried on as the shape asks
     * @param onA where on it, in mm from the start of what is carried on
     * @param between from that place to the one on the other; none if they are one
     * @param b the second line
     * @param onB where on it
     * @param made the shape
     */
    record Cut(Away a, double onA, Optional<CurvePath> between, Away b, double onB, CornerCut made) {

        Cut as(CornerCut other) {
            return new Cut(a, onA, between, b, onB, other);
        }

        Cut swapped() {
            return new Cut(b, onB, between.map(CurvePath::reversed), a, onA, made);
        }
    }
}
