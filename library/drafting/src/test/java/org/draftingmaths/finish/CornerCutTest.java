package org.draftingmaths.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Nearest;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.piece.DartEnd;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Flat;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.unit.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/** Every corner proved by folding or laying the allowance as it is pressed. */
class CornerCutTest {

    private static final double FOLDED = 1e-6;

    static Stream<Long> seeds() {
        return LongStream.range(0, 200).boxed();
    }

    /**
     * A piece whose seam lies on the x axis from (-300, 0) to the corner at the origin, with the piece above it, and whose
     * crossing edge rises from the corner at the angle inside the piece, straight or curved.
     */
    private static Piece piece(double angle, double bulge) {
        double x = -200 * Math.cos(angle);
        double y = 200 * Math.sin(angle);
        Drawing drawing = Drawing.of("piece")
                .from(-300, 0)
                .edge("seam", Role.SEAM)
                .line(0, 0)
                .edge("crossing", Role.SEAM);
        Vector2D side = Vector2D.of(y, -x).normalize();
        Drawing crossed = bulge == 0
                ? drawing.line(x, y)
                : drawing.curve(x / 3, y / 3, x * 2 / 3 + side.getX() * bulge, y * 2 / 3 + side.getY() * bulge, x, y);
        return crossed.edge("top", Role.SEAM)
                .line(-300, 250)
                .edge("far", Role.SEAM)
                .line(-300, 0)
                .piece();
    }

    private static CutLine cut(Piece piece, double seam, double crossing, CornerCut shape) {
        return CutLine.of(
                piece,
                Allowances.of(Length.mm(10))
                        .on("seam", Length.mm(seam))
                        .on("crossing", Length.mm(crossing))
                        .corner("seam", "crossing", shape));
    }

    private static List<Vector2D> samples(CurvePath path) {
        List<Vector2D> points = new ArrayList<>();
        for (Curve curve : path.curves()) {
            for (int i = 0; i <= 20; i++) {
                points.add(curve.at(i / 20.0));
            }
        }
        return points;
    }

    private static Vector2D folded(Vector2D point) {
        return Vector2D.of(point.getX(), -point.getY());
    }

    /** The crossing edge's cut line from the seam's own line upwards. */
    private static CurvePath crossingCut(CutLine cut) {
        CurvePath side = cut.side("crossing").path();
        CurvePath corner = cut.corner("seam", "crossing").path().orElseThrow();
        return corner.then(side);
    }

    /** Pressed open: the end of the allowance lies on the crossing cut line, nothing shows past it and nothing is short of it. */
    @ParameterizedTest
    @MethodSource("seeds")
    void turnedBackLiesOnTheCrossingCutLine(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double seam = random.nextDouble(5, 40);
        double crossing = random.nextDouble(5, seam);
        Piece piece = piece(Math.toRadians(random.nextDouble(60, 110)), random.nextInt(2) * random.nextDouble(-25, 25));
        CutLine cut = cut(piece, seam, crossing, CornerCut.TURNED_BACK);
        CurvePath line = crossingCut(cut);
        List<Vector2D> end = samples(cut.corner("seam", "crossing").path().orElseThrow()).stream()
                .filter(point -> point.getY() < 0 && point.getY() > -seam + FOLDED)
                .toList();
        assertThat(end).isNotEmpty();
        for (Vector2D point : end) {
            assertThat(Nearest.of(line, folded(point)).distance())
                    .as("seed %s shows", seed)
                    .isLessThan(FOLDED);
        }
        for (Vector2D point : samples(line)) {
            if (point.getY() > 0 && point.getY() < seam) {
                assertThat(Nearest.of(line, folded(point)).distance())
                        .as("seed %s short", seed)
                        .isLessThan(FOLDED);
            }
        }
        Polygon whole = Flat.polygon(cut.outline(), 200);
        Geometry allowance = whole.intersection(box(-150, -100, 200, 0));
        Geometry pressed = new AffineTransformation(1, 0, 0, 0, -1, 0).transform(allowance);
        Geometry cloth = whole.intersection(box(-400, 0, 400, 400));
        assertThat(pressed.difference(cloth).getArea())
                .as("seed %s shows", seed)
                .isLessThan(0.01);
    }

    private static Geometry box(double left, double low, double right, double high) {
        return new GeometryFactory().createPolygon(new Coordinate[] {
            new Coordinate(left, low),
            new Coordinate(right, low),
            new Coordinate(right, high),
            new Coordinate(left, high),
            new Coordinate(left, low)
        });
    }

    /** Mates whose crossing edges run on straight into one another: squared ends lie edge to edge when the seam is sewn. */
    @ParameterizedTest
    @MethodSource("seeds")
    void squaredMatesLieEdgeToEdge(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double seam = random.nextDouble(5, 20);
        double crossing = random.nextDouble(5, 20);
        double angle = Math.toRadians(random.nextDouble(60, 120));
        CutLine one = cut(piece(angle, 0), seam, crossing, CornerCut.SQUARED);
        CutLine other = cut(piece(Math.PI - angle, 0), seam, crossing, CornerCut.SQUARED);
        double past = crossing / Math.sin(angle);
        for (CutLine cut : List.of(one, other)) {
            assertThat(samples(cut.outline()).stream().filter(point -> point.getY() < -FOLDED))
                    .as("seed %s", seed)
                    .allSatisfy(point -> assertThat(point.getX()).isLessThan(past + FOLDED));
            assertThat(Nearest.of(cut.outline(), Vector2D.of(past, 0)).distance())
                    .isLessThan(FOLDED);
            assertThat(Nearest.of(cut.outline(), Vector2D.of(past, -seam)).distance())
                    .isLessThan(FOLDED);
            assertThat(Nearest.of(cut.outline(), Vector2D.of(past, -seam / 2)).distance())
                    .isLessThan(FOLDED);
        }
    }

    /**
     * Pressed to the mate: both crossing edges are parts of one circle, so the carried-on end of the one, which lies flat on the
     * other, must lie on the other's cut line.
     */
    @ParameterizedTest
    @MethodSource("seeds")
    void carriedOnLiesOnTheMatesCutLine(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double seam = random.nextDouble(5, 20);
        double crossing = random.nextDouble(5, 20);
        double radius = random.nextDouble(50, 150);
        double lean = random.nextDouble(-0.35, 0.35);
        Vector2D centre = AffineTransformMatrix2D.createRotation(lean).apply(Vector2D.of(radius, 0));
        Piece upper = round(centre, 1);
        Piece lower = round(Vector2D.of(centre.getX(), -centre.getY()), 1);
        CutLine cut = cut(upper, seam, crossing, CornerCut.CARRIED_ON);
        CutLine mate = cut(lower, seam, crossing, CornerCut.PLAIN);
        CurvePath mates = mate.side("crossing").path();
        CurvePath end = cut.corner("seam", "crossing").path().orElseThrow();
        List<Vector2D> lying = samples(end).stream()
                .filter(point -> point.getY() < -1 && point.getY() > -seam + FOLDED)
                .toList();
        assertThat(lying).as("seed %s", seed).isNotEmpty();
        for (Vector2D point : lying) {
            assertThat(Math.abs(point.distance(centre) - (radius - crossing)))
                    .as("seed %s", seed)
                    .isLessThan(FOLDED);
            assertThat(Nearest.of(mates, folded(point)).distance())
                    .as("seed %s", seed)
                    .isLessThan(FOLDED);
        }
    }

    /** The seam on the x axis to the origin; the crossing edge is an arc of a circle through it, hollow towards its centre. */
    private static Piece round(Vector2D centre, double sweep) {
        Vector2D from = centre.negate();
        Vector2D on =
                centre.add(AffineTransformMatrix2D.createRotation(-sweep / 2).apply(from));
        Vector2D to = centre.add(AffineTransformMatrix2D.createRotation(-sweep).apply(from));
        return Drawing.of("round")
                .from(-300, 0)
                .edge("seam", Role.SEAM)
                .line(0, 0)
                .edge("crossing", Role.SEAM)
                .arc(on.getX(), on.getY(), to.getX(), to.getY())
                .edge("top", Role.SEAM)
                .line(to.getX(), 400)
                .line(-300, 400)
                .edge("far", Role.SEAM)
                .line(-300, 0)
                .piece();
    }

    /** Plain: the tip lies its width from either edge's line. Blunted: squared off across the tip at the wider width. */
    @ParameterizedTest
    @MethodSource("seeds")
    void plainAndBluntedTips(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double seam = random.nextDouble(5, 20);
        double crossing = random.nextDouble(5, 20);
        double angle = Math.toRadians(random.nextDouble(70, 110));
        Vector2D way = Vector2D.of(-Math.cos(angle), Math.sin(angle));
        CutLine plain = cut(piece(angle, 0), seam, crossing, CornerCut.PLAIN);
        double s = (crossing + seam * Math.cos(angle)) / Math.sin(angle);
        Vector2D tip = Vector2D.of(s, -seam);
        assertThat(-way.signedArea(tip)).isCloseTo(crossing, within(1e-9));
        assertThat(Nearest.of(plain.outline(), tip).distance())
                .as("seed %s", seed)
                .isLessThan(FOLDED);
        assertThat(plain.corner("seam", "crossing").made()).isEqualTo(CornerCut.PLAIN);

        CutLine blunt = cut(piece(angle, 0), seam, crossing, CornerCut.BLUNTED);
        double wider = Math.max(seam, crossing);
        Vector2D out = tip.normalize();
        CutCorner corner = blunt.corner("seam", "crossing");
        assertThat(corner.made()).isEqualTo(CornerCut.BLUNTED);
        assertThat(samples(corner.path().orElseThrow()).stream()
                        .mapToDouble(out::dot)
                        .max()
                        .orElseThrow())
                .as("seed %s", seed)
                .isCloseTo(wider, within(FOLDED));
    }

    /** Common practice: below 35° a corner is blunted unasked, and no tip stands off over twice the allowance. */
    @Test
    void pointedCornersAreBluntedUnasked() {
        Allowances plan = Allowances.of(Length.mm(10));
        for (double degrees : new double[] {20, 30, 34.9}) {
            CutCorner corner =
                    CutLine.of(piece(Math.toRadians(degrees), 0), plan).corner("seam", "crossing");
            assertThat(corner.made()).isEqualTo(CornerCut.BLUNTED);
            assertThat(reach(corner)).isCloseTo(10, within(FOLDED));
        }
        for (double degrees : new double[] {35.1, 50, 59.9}) {
            CutCorner corner =
                    CutLine.of(piece(Math.toRadians(degrees), 0), plan).corner("seam", "crossing");
            assertThat(corner.made()).isEqualTo(CornerCut.BLUNTED);
            assertThat(reach(corner)).isCloseTo(20, within(FOLDED));
        }
        CutCorner wide = CutLine.of(piece(Math.toRadians(60.1), 0), plan).corner("seam", "crossing");
        assertThat(wide.made()).isEqualTo(CornerCut.PLAIN);
        assertThat(reach(wide)).isCloseTo(10 / Math.sin(Math.toRadians(60.1) / 2), within(FOLDED));
    }

    /** How far a corner reaches along the line that halves it. */
    private static double reach(CutCorner corner) {
        double half = corner.angle() / 2;
        Vector2D out = Vector2D.of(Math.cos(half), -Math.sin(half));
        return samples(corner.path().orElseThrow()).stream()
                .mapToDouble(out::dot)
                .max()
                .orElseThrow();
    }

    /** A flared hem: folded up at the hem line its ends lie on the side seams' cut lines, nothing short, nothing over. */
    @ParameterizedTest
    @MethodSource("seeds")
    void aTurnedUpHemEndsOnTheSideSeams(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double flare = random.nextDouble(-40, 90);
        double depth = random.nextDouble(15, 50);
        Piece skirt = Drawing.of("skirt")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(300 + flare, 0)
                .edge("side", Role.SEAM)
                .line(300, 500)
                .edge("waist", Role.SEAM)
                .line(0, 500)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .piece();
        CutLine cut = CutLine.of(
                skirt,
                Allowances.of(Length.mm(15)).on("hem", Length.mm(depth)).corner("hem", "side", CornerCut.TURNED_BACK));
        for (int i = 1; i <= 20; i++) {
            double y = depth * (i - 0.01) / 20;
            assertThat(widest(cut, -y)).as("seed %s", seed).isCloseTo(widest(cut, y), within(FOLDED));
        }
    }

    /** The largest x of a cut line at a level; its parts there are straight. */
    private static double widest(CutLine cut, double y) {
        double widest = Double.NEGATIVE_INFINITY;
        for (Curve curve : cut.outline().curves()) {
            double from = curve.start().getY() - y;
            double to = curve.end().getY() - y;
            if (from * to <= 0 && from != to) {
                widest = Math.max(
                        widest,
                        curve.start().lerp(curve.end(), from / (from - to)).getX());
            }
        }
        return widest;
    }

    static Stream<Arguments> darts() {
        List<Arguments> darts = new ArrayList<>();
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 40; i++) {
            for (Leg press : Leg.values()) {
                darts.add(Arguments.of(
                        random.nextDouble(8, 35),
                        random.nextDouble(80, 180),
                        random.nextDouble(0, 20),
                        press,
                        random.nextDouble(-15, 15)));
            }
        }
        return darts.stream();
    }

    /**
     * A dart closed and pressed: its two halves of allowance are mirror images in the fold, and the half that lies on the pressed-to
     * side ends on that side's cut line.
     */
    @ParameterizedTest
    @MethodSource("darts")
    void theAllowanceAcrossADartEndsOnTheSeamWhenFolded(
            double intake, double depth, double setBack, Leg press, double slope) {
        Piece piece = Drawing.of("front")
                .from(0, 0)
                .edge("waist", Role.SEAM)
                .line(150 - intake / 2, slope)
                .dart("dart", 150, slope + depth, 150 + intake / 2, slope, setBack, press)
                .line(300, 0)
                .edge("side", Role.SEAM)
                .line(300, 400)
                .edge("top", Role.SEAM)
                .line(0, 400)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .piece();
        CutLine cut = CutLine.of(piece, Allowances.of(Length.mm(15)));
        Vector2D tip = DartEnd.sewnTip(piece, "dart");
        Vector2D pressedTo = Measured.leg(piece, "dart", press).start();
        AffineTransformMatrix2D fold = Reflections.in(tip, Vector2D.of(0, 1));
        AffineTransformMatrix2D stitched = Reflections.in(tip, tip.directionTo(pressedTo));
        int between = 0;
        double angle = Math.atan2(intake / 2, depth - setBack);
        for (Vector2D point : samples(cut.side("waist").path())) {
            double at = Math.atan2(point.getX() - tip.getX(), tip.getY() - point.getY());
            if (Math.abs(at) < angle) {
                between++;
                assertThat(Nearest.of(cut.outline(), fold.apply(point)).distance())
                        .isLessThan(FOLDED);
                boolean half = (at < 0) == (press == Leg.BEFORE);
                if (half) {
                    assertThat(Nearest.of(cut.outline(), stitched.apply(point)).distance())
                            .isLessThan(FOLDED);
                }
            }
        }
        assertThat(between).isPositive();
    }

    @Test
    void shapesThatCannotBeAreRefused() {
        assertThatThrownBy(() -> cut(piece(Math.toRadians(20), 0), 10, 10, CornerCut.TURNED_BACK))
                .isInstanceOf(DraftingException.class)
                .hasMessage(
                        "Add allowances to 'piece', at the corner of 'seam' and 'crossing', turned back: at 20.0° its tip"
                                + " would stand off like a spike (asked 1 1/8 in (2.9 cm), possible 0 in (0.0 cm) to 3/4 in (2.0"
                                + " cm)).");
        for (CornerCut shape : List.of(CornerCut.SQUARED, CornerCut.TURNED_BACK, CornerCut.CARRIED_ON)) {
            assertThatThrownBy(() -> cut(piece(Math.toRadians(170), 0), 10, 10, shape))
                    .isInstanceOf(DraftingException.class)
                    .hasMessageContaining("would stand off like a spike");
            Piece inwards = Drawing.of("inwards")
                    .from(0, 0)
                    .edge("hem", Role.HEM)
                    .line(200, 0)
                    .edge("side", Role.SEAM)
                    .line(200, 100)
                    .edge("seam", Role.SEAM)
                    .line(100, 100)
                    .edge("crossing", Role.SEAM)
                    .line(100, 300)
                    .edge("top", Role.SEAM)
                    .line(0, 300)
                    .edge("far", Role.SEAM)
                    .line(0, 0)
                    .piece();
            assertThatThrownBy(() -> cut(inwards, 10, 10, shape))
                    .isInstanceOf(DraftingException.class)
                    .hasMessageContaining("the outline turns inwards there");
        }
    }

    /** Unlike widths that would meet too far off keep their widths up to the corner. */
    @Test
    void unlikeWidthsOnAFlatCornerAreStepped() {
        CutLine cut = cut(piece(Math.toRadians(175), 0), 10, 25, CornerCut.PLAIN);
        CutCorner corner = cut.corner("seam", "crossing");
        assertThat(corner.made()).isEqualTo(CornerCut.STEPPED);
        assertThat(corner.asked()).isEqualTo(CornerCut.PLAIN);
        assertThat(cut.side("seam").path().end().distance(Vector2D.of(0, -10))).isLessThan(FOLDED);
        assertThat(cut.side("crossing").path().start().norm()).isCloseTo(25, within(FOLDED));
    }
}
