package org.draftingmaths.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** Parallels judged by the distance itself, by Steiner's formulas, by hand-worked corners and by JTS. */
class ParallelTest {
    private static final GeometryFactory JTS = new GeometryFactory();
    private static final int DENSE = 200;

    private static Vector2D at(double x, double y) {
        return Vector2D.of(x, y);
    }

    private static Vector2D beside(Curve curve, double t, double left) {
        Vector2D way = curve.tangent(t);
        return curve.at(t).add(Vector2D.of(-left * way.getY(), left * way.getX()));
    }

    /** Half the least radius on the side of the parallel, or 40 mm. */
    private static double room(Cubic cubic, double side) {
        double bend = 1.0 / 80;
        for (int i = 0; i <= 400; i++) {
            bend = Math.max(bend, side * cubic.curvature(i / 400.0));
        }
        return 0.5 / bend;
    }

    @Test
    void everyPointIsWithinTheDeviationOfTheTrueParallel() {
        Cases.each(random -> {
            Cubic cubic = Cases.gentle(random);
            double side = random.nextBoolean() ? 1 : -1;
            double distance = side * room(cubic, side) * random.nextDouble(0.1, 1);
            double deviation = Math.pow(10, random.nextDouble(-5, -1));
            CurvePath parallel = Parallel.of(cubic, distance, deviation);
            assertThat(parallel.start().distance(beside(cubic, 0, distance))).isLessThan(1e-11);
            assertThat(parallel.end().distance(beside(cubic, 1, distance))).isLessThan(1e-11);
            List<Vector2D> dense = trueParallel(cubic, distance);
            for (Curve part : parallel.curves()) {
                for (int i = 1; i < 40; i++) {
                    assertThat(offTrueParallel(cubic, distance, dense, part.at(i / 40.0)))
                            .as("%s at %s", cubic, distance)
                            .isLessThanOrEqualTo(deviation);
                }
            }
            for (int i = 1; i < 100; i++) {
                assertThat(Nearest.of(parallel, beside(cubic, i / 100.0, distance))
                                .distance())
                        .as("%s at %s", cubic, distance)
                        .isLessThanOrEqualTo(deviation);
            }
        });
    }

    /** The bound holds for any cubic that is taken for a parallel, near or far off, and is not much too wide for a near one. */
    @Test
    void noCubicIsFartherOffThanItsBound() {
        int[] near = {0};
        int[] tight = {0};
        Cases.some(4, random -> {
            Cubic cubic = Cases.gentle(random);
            double side = random.nextBoolean() ? 1 : -1;
            double distance = side * room(cubic, side) * random.nextDouble(0.1, 1.6);
            double part = random.nextDouble(0.1, 1);
            double from = random.nextDouble(0, 1 - part);
            Cubic piece = cubic.between(from, from + part);
            Vector2D start = beside(piece, 0, distance);
            Vector2D end = beside(piece, 1, distance);
            double shrink = 1 - distance * piece.curvature(0.5);
            double off = random.nextInt(3) == 0 ? 0.3 : 0.03;
            double one = shrink * piece.derivative(0).norm() / 3 * (1 + off * random.nextDouble(-1, 1));
            double other = shrink * piece.derivative(1).norm() / 3 * (1 + off * random.nextDouble(-1, 1));
            Cubic taken =
                    new Cubic(start, start.add(one, piece.tangent(0)), end.subtract(other, piece.tangent(1)), end);
            double bound = CubicParallel.deviation(piece, distance, taken);
            List<Vector2D> dense = trueParallel(piece, distance);
            double measured = 0;
            for (int i = 1; i < 40; i++) {
                measured = Math.max(measured, offTrueParallel(piece, distance, dense, taken.at(i / 40.0)));
            }
            assertThat(measured).as("%s at %s", piece, distance).isLessThanOrEqualTo(bound * (1 + 1e-9) + 1e-9);
            if (off < 0.1 && part < 0.4 && measured > 1e-6) {
                near[0]++;
                tight[0] += bound < 3 * measured + 0.01 ? 1 : 0;
            }
        });
        assertThat(tight[0]).isGreaterThanOrEqualTo(near[0] / 2);
    }

    /** A cubic so wrong that it crosses over the curve lies the distance and more off the parallel, and the bound says so. */
    @Test
    void aCubicOnTheWrongSideIsFarOff() {
        Cubic hollow = new Cubic(at(-68, -126), at(-140, -145), at(-199, -136), at(-236, -70));
        double distance = 5.3;
        Vector2D start = beside(hollow, 0, distance);
        Vector2D end = beside(hollow, 1, distance);
        Cubic flat = new Cubic(start, start.add(57, hollow.tangent(0)), end.subtract(59, hollow.tangent(1)), end);
        double measured = offTrueParallel(hollow, distance, trueParallel(hollow, distance), flat.at(0.525));
        assertThat(measured).isGreaterThan(1.6 * distance);
        assertThat(CubicParallel.deviation(hollow, distance, flat)).isGreaterThanOrEqualTo(measured);
    }

    private static List<Vector2D> trueParallel(Cubic cubic, double distance) {
        return IntStream.rangeClosed(0, DENSE)
                .mapToObj(i -> beside(cubic, (double) i / DENSE, distance))
                .toList();
    }

    /** The distance to the dense true parallel: the least over its points, refined by a search between their neighbours. */
    private static double offTrueParallel(Cubic cubic, double distance, List<Vector2D> dense, Vector2D p) {
        int at = 0;
        for (int i = 1; i <= DENSE; i++) {
            at = dense.get(i).distanceSq(p) < dense.get(at).distanceSq(p) ? i : at;
        }
        double low = Math.max(0, at - 1.0) / DENSE;
        double high = Math.min(DENSE, at + 1.0) / DENSE;
        double golden = (Math.sqrt(5) - 1) / 2;
        double a = high - golden * (high - low);
        double b = low + golden * (high - low);
        double atA = beside(cubic, a, distance).distance(p);
        double atB = beside(cubic, b, distance).distance(p);
        // Forty steps leave 4e-9 of a two-hundredth of the curve.
        for (int i = 0; i < 40; i++) {
            if (atA < atB) {
                high = b;
                b = a;
                atB = atA;
                a = high - golden * (high - low);
                atA = beside(cubic, a, distance).distance(p);
            } else {
                low = a;
                a = b;
                atA = atB;
                b = low + golden * (high - low);
                atB = beside(cubic, b, distance).distance(p);
            }
        }
        return Math.min(atA, atB);
    }

    /** {@code L - d K} with K the angle turned. */
    @Test
    void theLengthChangesByTheAngleTurned() {
        Cases.some(10, random -> {
            Cubic cubic = Cases.gentle(random);
            double distance = room(cubic, 1) * random.nextDouble(0.1, 1);
            double turned = 0;
            for (int i = 0; i < 1000; i++) {
                Vector2D a = cubic.tangent(i / 1000.0);
                Vector2D b = cubic.tangent((i + 1) / 1000.0);
                turned += Math.atan2(a.signedArea(b), a.dot(b));
            }
            CurvePath parallel = Parallel.of(cubic, distance, 1e-5);
            assertThat(parallel.length()).isCloseTo(cubic.length() - distance * turned, within(0.01));
        });
    }

    @Test
    void straightsAndArcsStayWhatTheyAre() {
        assertThat(Parallel.of(new Straight(at(0, 0), at(10, 0)), 2, 0.01).curves())
                .containsExactly(new Straight(at(0, 2), at(10, 2)));
        Arc arc = new Arc(at(1, 2), 10, 0.5, 2);
        assertThat(Parallel.of(arc, 3, 0.01).curves()).containsExactly(new Arc(at(1, 2), 7, 0.5, 2));
        assertThat(Parallel.of(arc.reversed(), 3, 0.01).curves()).containsExactly(new Arc(at(1, 2), 13, 2.5, -2));
    }

    @Test
    void aGentleEdgeNeedsOneOrTwoCubics() {
        Cubic armhole = new Cubic(at(0, 0), at(20, 80), at(60, 120), at(120, 130));
        assertThat(Parallel.of(armhole, -10, 0.01).curves()).hasSizeLessThanOrEqualTo(2);
    }

    @Test
    void whereItBendsTooTightlyThereIsNone() {
        Cubic hollow = new Cubic(at(0, 40), at(0, -40), at(40, -40), at(40, 40));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Parallel.of(hollow, 30, 0.01))
                .withMessageContaining("the curve bends more tightly than that");
        assertThat(Parallel.of(hollow, -30, 0.01).curves()).isNotEmpty();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Parallel.of(new Arc(at(0, 0), 10, 0, 1), 10, 0.01))
                .withMessageContaining("bends more tightly");
    }

    private static CurvePath square() {
        return CurvePath.polyline(at(0, 0), at(100, 0), at(100, 100), at(0, 100), at(0, 0));
    }

    @Test
    void cornersAreMitredSquaredOrCutOff() {
        ParallelOutline mitred = Parallel.outline(square(), 10, Corner.mitre(2), 0.01);
        assertThat(mitred.outline().area()).isCloseTo(14400, within(1e-9));
        assertThat(mitred.swallowed()).isEmpty();
        assertThat(mitred.others()).isEmpty();
        // Across the diagonal at 10 mm from the corner: each takes off a right-angled triangle of height 10 sqrt2 - 10.
        double height = 10 * Math.sqrt(2) - 10;
        assertThat(Parallel.outline(square(), 10, Corner.SQUARE, 0.01).outline().area())
                .isCloseTo(14400 - 4 * height * height, within(1e-9));
        assertThat(Parallel.outline(square(), 10, Corner.CUT_OFF, 0.01)
                        .outline()
                        .area())
                .isCloseTo(14400 - 4 * 50, within(1e-9));
    }

    @Test
    void aSpikeIsSquaredOffAtTheLimit() {
        CurvePath spike = CurvePath.polyline(at(0, 0), at(100, -10), at(100, 10), at(0, 0));
        ParallelOutline limited = Parallel.outline(spike, 5, Corner.mitre(2), 0.01);
        assertThat(limited.outline().bounds().getMin().getX()).isCloseTo(-10, within(1e-9));
        ParallelOutline whole = Parallel.outline(spike, 5, Corner.mitre(100), 0.01);
        double half = Math.atan2(10, 100);
        assertThat(whole.outline().bounds().getMin().getX()).isCloseTo(-5 / Math.sin(half), within(1e-9));
    }

    @Test
    void everyEdgeHasItsOwnDistance() {
        ParallelOutline outline = Parallel.outline(
                square(), List.of(40.0, 10.0, 10.0, 0.0), java.util.Collections.nCopies(4, Corner.mitre(9)), 0.01);
        // The fold on x = 0 gets none: 0 to 110 across, -40 to 110 up.
        assertThat(outline.outline().area()).isCloseTo(110 * 150, within(1e-9));
        assertThat(outline.edges()).containsOnly(0, 1, 2, 3, ParallelOutline.CORNER);
        for (int edge = 0; edge < 4; edge++) {
            assertThat(outline.edges()).contains(edge);
        }
    }

    @Test
    void steinersFormulasHoldRoundASmoothConvexOutline() {
        CurvePath oval = oval(80, 50);
        double d = 12;
        ParallelOutline outer = Parallel.outline(oval, d, Corner.mitre(2), 1e-4);
        double length = oval.length();
        assertThat(outer.outline().length()).isCloseTo(length + 2 * Math.PI * d, within(1e-2));
        assertThat(outer.outline().area()).isCloseTo(oval.area() + length * d + Math.PI * d * d, within(0.1));
        ParallelOutline inner = Parallel.outline(oval, -d, Corner.mitre(2), 1e-4);
        assertThat(inner.outline().length()).isCloseTo(length - 2 * Math.PI * d, within(1e-2));
        assertThat(inner.outline().area()).isCloseTo(oval.area() - length * d + Math.PI * d * d, within(0.1));
    }

    private static CurvePath oval(double a, double b) {
        double k = 4 * (Math.sqrt(2) - 1) / 3;
        return CurvePath.of(
                new Cubic(at(a, 0), at(a, k * b), at(k * a, b), at(0, b)),
                new Cubic(at(0, b), at(-k * a, b), at(-a, k * b), at(-a, 0)),
                new Cubic(at(-a, 0), at(-a, -k * b), at(-k * a, -b), at(0, -b)),
                new Cubic(at(0, -b), at(k * a, -b), at(a, -k * b), at(a, 0)));
    }

    /** A notch of 12 mm width loses its floor to an allowance of 10 mm from either side. */
    @Test
    void whatANotchSwallowsIsReported() {
        CurvePath notched = CurvePath.polyline(
                at(0, 0), at(100, 0), at(100, 80), at(56, 80), at(56, 40), at(44, 40), at(44, 80), at(0, 80), at(0, 0));
        ParallelOutline outline = Parallel.outline(notched, 10, Corner.mitre(2), 0.01);
        assertThat(outline.outline().area()).isCloseTo(120 * 100, within(1e-9));
        assertThat(outline.swallowed()).extracting(Swallowed::edge).containsExactly(3, 4, 5);
        Swallowed floor = outline.swallowed().get(1);
        assertThat(floor.from()).isZero();
        assertThat(floor.to()).isCloseTo(12, within(1e-9));
        // At 5 mm the notch stays open, 2 mm wide.
        ParallelOutline narrow = Parallel.outline(notched, 5, Corner.mitre(2), 0.01);
        assertThat(narrow.outline().area()).isCloseTo(110 * 90 - 2 * 40, within(1e-9));
    }

    @Test
    void aHollowTighterThanTheDistanceIsCleanedUp() {
        CurvePath hollow = CurvePath.of(
                new Straight(at(0, 0), at(100, 0)),
                new Straight(at(100, 0), at(100, 80)),
                new Straight(at(100, 80), at(62, 80)),
                new Cubic(at(62, 80), at(58, 40), at(42, 40), at(38, 80)),
                new Straight(at(38, 80), at(0, 80)),
                new Straight(at(0, 80), at(0, 0)));
        ParallelOutline outline = Parallel.outline(hollow, 9, Corner.mitre(2), 0.01);
        assertThat(Meets.selfMeets(outline.outline()).isEmpty()).isTrue();
        assertThat(outline.swallowed()).extracting(Swallowed::edge).contains(3);
        assertThat(outline.outline().area()).isCloseTo(judged(hollow, 9, 2), within(0.5));
    }

    /** Which edge an outline is told from first is nothing to its parallel. */
    @Test
    void theFirstEdgeMakesNoDifference() {
        List<Curve> pouch = List.of(
                new Straight(at(0, 0), at(180, 0)),
                new Straight(at(180, 0), at(180, 120)),
                new Straight(at(180, 120), at(115, 120)),
                new Cubic(at(115, 120), at(100, 120), at(106, 92), at(90, 92)),
                new Cubic(at(90, 92), at(74, 92), at(80, 120), at(65, 120)),
                new Straight(at(65, 120), at(0, 120)),
                new Straight(at(0, 120), at(0, 0)));
        for (double distance : new double[] {6, 10, 15, 25, -8}) {
            double area = Double.NaN;
            double swallowed = 0;
            for (int turn = 0; turn < 4; turn++) {
                AffineTransformMatrix2D by = AffineTransformMatrix2D.createRotation(turn * Math.PI / 2);
                for (int first = 0; first < pouch.size(); first++) {
                    List<Curve> curves = new ArrayList<>(pouch.subList(first, pouch.size()));
                    curves.addAll(pouch.subList(0, first));
                    ParallelOutline outline =
                            Parallel.outline(new CurvePath(curves).transformed(by), distance, Corner.mitre(2), 0.001);
                    assertThat(Meets.selfMeets(outline.outline()).isEmpty()).isTrue();
                    double here = outline.outline().area();
                    double lost = outline.swallowed().stream()
                            .mapToDouble(s -> s.to() - s.from())
                            .sum();
                    if (Double.isNaN(area)) {
                        area = here;
                        swallowed = lost;
                    }
                    assertThat(here).as("%s mm, edge %d", distance, first).isCloseTo(area, within(0.01));
                    assertThat(lost).as("%s mm, edge %d", distance, first).isCloseTo(swallowed, within(0.05));
                }
            }
            assertThat(area).isCloseTo(judged(new CurvePath(pouch), distance, 2), within(0.5));
        }
    }

    /** The parallels of the two walls of a slot twice as wide as the distance run along each other, and one reaches farther. */
    @Test
    void parallelsThatRunAlongEachOtherAreCutWhereTheyPart() {
        CurvePath slotted = CurvePath.polyline(
                at(0, 0),
                at(100, 0),
                at(100, 70),
                at(60, 70),
                at(60, 40),
                at(40, 40),
                at(40, 100),
                at(0, 100),
                at(0, 0));
        ParallelOutline outline = Parallel.outline(slotted, 10, Corner.mitre(2), 0.01);
        // The slot is filled to the height of the lower wall's allowance, 80; above it stands what is left of the
        // other.
        assertThat(outline.outline().area()).isCloseTo(120 * 90 + 60 * 30, within(1e-6));
        assertThat(outline.outline().area()).isCloseTo(judged(slotted, 10, 2), within(1e-6));
        assertThat(Meets.selfMeets(outline.outline()).isEmpty()).isTrue();
    }

    @Test
    void inwardsANeckPartsTheOutline() {
        CurvePath bone = CurvePath.polyline(
                at(0, 0),
                at(60, 0),
                at(60, 25),
                at(100, 25),
                at(100, 0),
                at(160, 0),
                at(160, 60),
                at(100, 60),
                at(100, 35),
                at(60, 35),
                at(60, 60),
                at(0, 60),
                at(0, 0));
        ParallelOutline outline = Parallel.outline(bone, -8, Corner.mitre(2), 0.01);
        assertThat(outline.others()).hasSize(1);
        assertThat(outline.outline().area()).isCloseTo(44 * 44, within(1e-9));
        assertThat(outline.others().get(0).area()).isCloseTo(44 * 44, within(1e-9));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Parallel.outline(bone, -40, Corner.mitre(2), 0.01))
                .withMessageContaining("swallow the whole outline");
    }

    @Test
    void aPocketThatClosesIsTold() {
        CurvePath bottle = CurvePath.polyline(
                at(0, 0),
                at(100, 0),
                at(100, 100),
                at(55, 100),
                at(55, 80),
                at(80, 80),
                at(80, 20),
                at(20, 20),
                at(20, 80),
                at(45, 80),
                at(45, 100),
                at(0, 100),
                at(0, 0));
        ParallelOutline outline = Parallel.outline(bottle, 8, Corner.mitre(2), 0.01);
        assertThat(outline.outline().area()).isCloseTo(116 * 116, within(1e-9));
        assertThat(outline.others()).hasSize(1);
        assertThat(outline.others().get(0).area()).isCloseTo(-44 * 44, within(1e-9));
    }

    @Test
    void ringsAgreeWithAnotherLibrary() {
        Cases.some(100, random -> {
            CurvePath ring = MeetsPropertiesTest.ring(random);
            double distance = random.nextDouble(2, 25) * (random.nextInt(4) == 0 ? -0.5 : 1);
            double judged = judged(ring, distance, 5);
            if (judged == 0) {
                assertThatIllegalArgumentException()
                        .isThrownBy(() -> Parallel.outline(ring, distance, Corner.mitre(5), 0.01))
                        .withMessageContaining("swallow the whole outline");
                return;
            }
            ParallelOutline outline = Parallel.outline(ring, distance, Corner.mitre(5), 0.01);
            double area = outline.outline().area();
            for (CurvePath other : outline.others()) {
                area += other.area();
            }
            assertThat(Meets.selfMeets(outline.outline()).isEmpty())
                    .as("%s at %s", ring, distance)
                    .isTrue();
            double length = outline.outline().length();
            assertThat(area).as("%s at %s", ring, distance).isCloseTo(judged, within(0.02 * length));
        });
    }

    private static double judged(CurvePath ring, double distance, double limit) {
        List<Coordinate> points = new ArrayList<>();
        for (Curve curve : ring.curves()) {
            int parts = curve instanceof Straight ? 1 : 400;
            for (int i = 0; i < parts; i++) {
                Vector2D p = curve.at((double) i / parts);
                points.add(new Coordinate(p.getX(), p.getY()));
            }
        }
        points.add(points.get(0));
        Polygon polygon = JTS.createPolygon(points.toArray(new Coordinate[0]));
        BufferParameters parameters =
                new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, limit);
        parameters.setSimplifyFactor(0);
        Geometry buffer = BufferOp.bufferOp(polygon, distance, parameters);
        return buffer.getArea();
    }

    @Test
    void whatDoesNotFitIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Parallel.outline(square().reversed(), 10, Corner.SQUARE, 0.01))
                .withMessageStartingWith("path runs clockwise");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Parallel.outline(square().between(0, 350), 10, Corner.SQUARE, 0.01))
                .withMessageStartingWith("path is open");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Parallel.outline(square(), List.of(1.0), List.of(Corner.SQUARE), 0.01))
                .withMessageStartingWith("path has 4 curves, but there are 1 distances and 1 corners");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Parallel.outline(square(), 10, Corner.SQUARE, 1e-7))
                .withMessageStartingWith("deviation is 1.0E-7");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Parallel.of(new Straight(at(0, 0), at(1, 0)), 0, 0.01))
                .withMessageStartingWith("distance is 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Corner.mitre(0.5))
                .withMessageStartingWith("limit is 0.5");
    }
}
