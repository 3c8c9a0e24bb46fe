package org.draftingmaths.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;

/** Meets that are built on purpose are found, and every meet that is told lies on both curves. */
class MeetsPropertiesTest {

    private static Curve shifted(Curve curve, Vector2D by) {
        return curve.transformed(AffineTransformMatrix2D.createTranslation(by));
    }

    private static void confirm(Curve a, Curve b, Meets meets, double tolerance) {
        for (Meet meet : meets.points()) {
            assertThat(a.at(meet.onFirst()).distance(b.at(meet.onSecond()))).isLessThanOrEqualTo(tolerance);
            assertThat(a.at(meet.onFirst()).distance(meet.point())).isLessThanOrEqualTo(tolerance);
        }
        for (Overlap o : meets.overlaps()) {
            assertThat(a.at(o.fromFirst()).distance(b.at(o.fromSecond()))).isLessThanOrEqualTo(2 * tolerance);
            assertThat(a.at(o.toFirst()).distance(b.at(o.toSecond()))).isLessThanOrEqualTo(2 * tolerance);
        }
    }

    /** Whether a meet or an overlap is told within a distance of a place. */
    private static boolean told(Meets meets, Curve a, Vector2D place, double within) {
        return meets.points().stream().anyMatch(m -> m.point().distance(place) <= within)
                || meets.overlaps().stream()
                        .anyMatch(o -> Nearest.of(a.between(o.fromFirst(), o.toFirst()), place)
                                        .distance()
                                <= within);
    }

    @Test
    void curvesLaidThroughACommonPlaceMeetThere() {
        Cases.each(random -> {
            Curve a = Cases.curve(random);
            double s = random.nextDouble();
            Curve free = Cases.curve(random);
            Curve b = shifted(free, a.at(s).subtract(free.at(random.nextDouble())));
            Meets meets = Meets.of(a, b);
            confirm(a, b, meets, 1e-9);
            // Curves of 300 mm radius that all but touch stay within 1e-9 mm for sqrt(8 * 300 * 1e-9) mm: one meet.
            assertThat(told(meets, a, a.at(s), 2e-3)).as("%s and %s", a, b).isTrue();
        });
    }

    @Test
    void orderMakesNoDifference() {
        Cases.each(random -> {
            Curve a = Cases.curve(random);
            Curve b = Cases.curve(random);
            Meets one = Meets.of(a, b);
            Meets other = Meets.of(b, a);
            confirm(a, b, one, 1e-9);
            assertThat(other.points()).hasSameSizeAs(one.points());
            for (Meet meet : one.points()) {
                assertThat(told(other, b, meet.point(), 1e-6)).isTrue();
            }
        });
    }

    /** The second curve is laid tangent to the first; where their bends differ they touch and part on one side. */
    @Test
    void curvesLaidTangentTouch() {
        Cases.each(random -> {
            Curve a = Cases.curve(random);
            double s = random.nextDouble(0.05, 0.95);
            Curve free = Cases.curve(random);
            double t = random.nextDouble(0.05, 0.95);
            if (a.derivative(s).norm() < 20 || free.derivative(t).norm() < 20) {
                return;
            }
            Vector2D way = a.tangent(s);
            Vector2D other = free.tangent(t);
            AffineTransformMatrix2D turn = AffineTransformMatrix2D.createRotation(
                    free.at(t), Math.atan2(other.signedArea(way), other.dot(way)));
            Curve turned = free.transformed(turn);
            Curve b = shifted(turned, a.at(s).subtract(turned.at(t)));
            Meets meets = Meets.of(a, b);
            confirm(a, b, meets, 1e-9);
            double bend = Math.abs(a.curvature(s) - b.curvature(t));
            if (bend < 1e-3) {
                return;
            }
            // Within the tolerance of a touch the places may move along by sqrt(2 tolerance / bend) = 0.0015 mm, and
            // on to a crossing close by if the sliver between is thinner than the tolerance.
            assertThat(told(meets, a, a.at(s), 0.01)).as("%s and %s", a, b).isTrue();
            List<Meet> near = meets.points().stream()
                    .filter(m -> m.point().distance(a.at(s)) < 0.2)
                    .toList();
            boolean stays = Math.abs(a.curvature(s + 1e-3) - a.curvature(s)) < 0.01 * bend
                    && Math.abs(b.curvature(t + 1e-3) - b.curvature(t)) < 0.01 * bend;
            if (stays && near.size() == 1) {
                assertThat(near.get(0).kind()).as("%s and %s", a, b).isEqualTo(Meet.Kind.TOUCHING);
            }
        });
    }

    @Test
    void theToleranceJudgesWhatTouches() {
        Cases.some(10, random -> {
            double gap = Math.pow(10, random.nextDouble(-7, -2));
            Vector2D top = Vector2D.of(random.nextDouble(-50, 50), random.nextDouble(-50, 50));
            Cubic hill = new Cubic(
                    top.add(Vector2D.of(-40, -30)),
                    top.add(Vector2D.of(-20, 10)),
                    top.add(Vector2D.of(20, 10)),
                    top.add(Vector2D.of(40, -30)));
            Curve[] above = {
                new Straight(top.add(Vector2D.of(-60, gap)), top.add(Vector2D.of(60, gap))),
                new Arc(top.add(Vector2D.of(0, gap + 80)), 80, Math.PI, Math.PI),
                new Cubic(
                        top.add(Vector2D.of(-40, 30 + gap)),
                        top.add(Vector2D.of(-20, -10 + gap)),
                        top.add(Vector2D.of(20, -10 + gap)),
                        top.add(Vector2D.of(40, 30 + gap)))
            };
            for (Curve curve : above) {
                assertThat(Meets.of(hill, curve, 0.9 * gap).isEmpty()).isTrue();
                Meets touch = Meets.of(hill, curve, 1.1 * gap);
                assertThat(touch.overlaps()).isEmpty();
                assertThat(touch.points()).hasSize(1);
                assertThat(touch.points().get(0).kind()).isEqualTo(Meet.Kind.TOUCHING);
                // Seen from below, the two cross twice: two places, or one touch once the sliver is thinner.
                Curve below = shifted(curve, Vector2D.of(0, -2 * gap));
                assertThat(Meets.of(hill, below, 1e-9).points()).hasSize(2);
                Meets sliver = Meets.of(hill, below, 1.1 * gap);
                assertThat(sliver.points()).hasSize(1);
                assertThat(sliver.points().get(0).kind()).isEqualTo(Meet.Kind.TOUCHING);
            }
        });
    }

    @Test
    void partsOfOneCurveOverlap() {
        Cases.each(random -> {
            Curve whole = random.nextInt(4) == 0 ? Cases.arc(random) : Cases.gentle(random);
            double a0 = random.nextDouble(0, 0.5);
            double a1 = random.nextDouble(a0 + 0.1, 1);
            double b0 = random.nextDouble(0, 0.5);
            double b1 = random.nextDouble(b0 + 0.1, 1);
            Curve a = whole.between(a0, a1);
            Curve b = random.nextBoolean()
                    ? whole.between(b0, b1)
                    : whole.between(b0, b1).reversed();
            double low = Math.max(a0, b0);
            double high = Math.min(a1, b1);
            if (high - low < 1e-3 && high - low > -1e-6) {
                return;
            }
            Meets meets = Meets.of(a, b);
            if (high < low) {
                assertThat(meets.overlaps()).isEmpty();
                return;
            }
            assertThat(meets.overlaps()).as("%s and %s", a, b).hasSize(1);
            Overlap o = meets.overlaps().get(0);
            assertThat(a.at(o.fromFirst()).distance(whole.at(low))).isLessThan(1e-6);
            assertThat(a.at(o.toFirst()).distance(whole.at(high))).isLessThan(1e-6);
            assertThat(b.at(o.fromSecond()).distance(whole.at(low))).isLessThan(1e-6);
        });
    }

    @Test
    void endsOnACurveTouch() {
        Cases.each(random -> {
            Curve a = Cases.curve(random);
            double s = random.nextDouble(0.01, 0.99);
            Curve free = Cases.curve(random);
            Curve b = shifted(free, a.at(s).subtract(free.start()));
            if (a.derivative(s).norm() < 1 || free.derivative(0).norm() < 1) {
                return;
            }
            double angle = Math.abs(a.tangent(s).signedArea(b.tangent(0)));
            if (angle < 1e-3) {
                return;
            }
            Meets meets = Meets.of(a, b);
            assertThat(meets.points()).as("%s and %s", a, b).anySatisfy(m -> {
                assertThat(m.onSecond()).isZero();
                assertThat(m.onFirst()).isCloseTo(s, within(1e-6));
                assertThat(m.kind()).isEqualTo(Meet.Kind.TOUCHING);
            });
        });
    }

    @Test
    void loopsAreFoundByTheirOwnCrossing() {
        Cases.each(random -> {
            Cubic cubic = Cases.cubic(random);
            Meets self = Meets.selfMeets(CurvePath.of(cubic));
            double middle = random.nextDouble(0.2, 0.8);
            for (Meet m : self.points()) {
                assertThat(m.onSecond()).isGreaterThan(m.onFirst());
                CurvePath path = CurvePath.of(cubic);
                assertThat(path.pointAt(m.onFirst()).distance(path.pointAt(m.onSecond())))
                        .isLessThan(4e-9);
            }
            // A crossing of a part with another part is a crossing of the whole with itself.
            Cubic one = cubic.between(0, middle);
            Cubic other = cubic.between(middle, 1);
            long crossings = Meets.of(one, other).points().stream()
                    .filter(m -> m.kind() == Meet.Kind.CROSSING)
                    .count();
            if (self.overlaps().isEmpty() && crossings > 0) {
                assertThat(self.points()).hasSize(1);
            }
        });
    }

    @Test
    void ringsAreSimpleWhenAnotherLibrarySaysSo() {
        Cases.some(5, random -> {
            int n = random.nextInt(3, 8);
            Vector2D[] points = new Vector2D[n + 1];
            Coordinate[] judged = new Coordinate[n + 1];
            for (int i = 0; i < n; i++) {
                points[i] = Cases.point(random, 100);
            }
            points[n] = points[0];
            for (int i = 0; i <= n; i++) {
                judged[i] = new Coordinate(points[i].getX(), points[i].getY());
            }
            LinearRing ring = new GeometryFactory().createLinearRing(judged);
            assertThat(Meets.selfMeets(CurvePath.polyline(points)).isEmpty()).isEqualTo(ring.isSimple());
        });
    }

    /** A smooth closed path is met by a line an even number of times unless the line touches it or ends inside. */
    @Test
    void aLineCrossesARingEvenlyAndTheSidesAlternate() {
        Cases.each(random -> {
            CurvePath ring = ring(random);
            CurvePath line = CurvePath.polyline(
                    Cases.polar(900, random.nextDouble(7)),
                    Cases.point(random, 80).multiply(-10));
            Meets meets = Meets.of(line, ring);
            long crossings = meets.points().stream()
                    .filter(m -> m.kind() == Meet.Kind.CROSSING)
                    .count();
            boolean endInside = Inside.contains(ring, line.end());
            assertThat(crossings % 2 == 1).isEqualTo(endInside);
            for (int i = 0; i + 1 < meets.points().size(); i++) {
                double from = meets.points().get(i).onFirst();
                double to = meets.points().get(i + 1).onFirst();
                if (to - from > 1e-6 && meets.points().size() == crossings) {
                    Vector2D between = line.pointAt(0.5 * (from + to));
                    assertThat(Inside.contains(ring, between)).isEqualTo(i % 2 == 0);
                }
            }
        });
    }

    /** A star-shaped ring of cubics with corners. */
    static CurvePath ring(SplittableRandom random) {
        int n = random.nextInt(3, 9);
        Vector2D[] corner = new Vector2D[n];
        for (int i = 0; i < n; i++) {
            corner[i] = Cases.polar(random.nextDouble(60, 200), 2 * Math.PI * (i + random.nextDouble(0.1, 0.9)) / n);
        }
        Curve[] curves = new Curve[n];
        for (int i = 0; i < n; i++) {
            Vector2D a = corner[i];
            Vector2D b = corner[(i + 1) % n];
            Vector2D bow = b.subtract(a).multiply(random.nextDouble(-0.05, 0.05));
            Vector2D off = Vector2D.of(-bow.getY(), bow.getX());
            curves[i] = random.nextInt(3) == 0
                    ? new Straight(a, b)
                    : new Cubic(a, a.lerp(b, 0.3).add(off), a.lerp(b, 0.6).add(off), b);
        }
        return CurvePath.of(curves);
    }

    @Test
    void pathsThatCrossAtAJointAreToldOnceAndRightly() {
        Cases.each(random -> {
            Vector2D joint = Cases.point(random, 100);
            double in = random.nextDouble(-3, 3);
            double out = random.nextDouble(-3, 3);
            double gap = random.nextInt(3) == 0 ? 0 : random.nextDouble(0, 9e-7);
            Vector2D off = joint.add(Cases.polar(gap, random.nextDouble(7)));
            CurvePath bent = CurvePath.polyline(joint.add(Cases.polar(50, in)), joint)
                    .then(CurvePath.of(new Straight(off, off.add(Cases.polar(60, out)))));
            double one = random.nextDouble(-3, 3);
            double other = random.nextDouble(-3, 3);
            double least = List.of(in - out, in - one, in - other, out - one, out - other, one - other).stream()
                    .mapToDouble(angle -> Math.abs(Math.sin(angle / 2)))
                    .min()
                    .orElseThrow();
            if (least < 0.05) {
                return;
            }
            // Through the middle of the gap, which neither of the two straights reaches.
            Vector2D middle = joint.lerp(off, 0.5);
            CurvePath through =
                    CurvePath.polyline(middle.add(Cases.polar(70, one)), middle, middle.add(Cases.polar(40, other)));
            Meets meets = Meets.of(bent, through);
            assertThat(meets.points()).hasSize(1);
            assertThat(meets.points().get(0).onFirst()).isCloseTo(50, within(1e-4));
            boolean crosses = between(in, out, one) != between(in, out, other);
            assertThat(meets.points().get(0).kind() == Meet.Kind.CROSSING).isEqualTo(crosses);
        });
    }

    private static boolean between(double from, double to, double angle) {
        double turn = 2 * Math.PI;
        return ((angle - from) % turn + turn) % turn < ((to - from) % turn + turn) % turn;
    }
}
