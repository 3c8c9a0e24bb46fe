package org.draftingmaths.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.apache.commons.math3.analysis.integration.RombergIntegrator;
import org.draftingmaths.block.TorsoBlock;
import org.draftingmaths.check.Checks;
import org.draftingmaths.contour.Armholes;
import org.draftingmaths.contour.Crossing;
import org.draftingmaths.contour.Necklines;
import org.draftingmaths.contour.Recut;
import org.draftingmaths.contour.SideSeams;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.fullness.Lengthen;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Girths;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Redraw;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.seam.Walk;
import org.draftingmaths.unit.Length;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Necklines and armholes drawn anew in every women's size of two published charts, judged as at the table: front and back are laid together at
 * the shoulder and at the side, and the line is followed from piece to piece (trade practice; a test of 1921 asks for neither peak
 * nor hollow at the joined shoulder).
 */
class ContourSizesTest {

    private static final Crossing NECK = Crossing.of("shoulder", "front", "back", "neckline");
    private static final Crossing ARM = Crossing.of("shoulder", "front", "back", "armhole");

    private static final double STRAIGHT_ON = 1e-9;

    static Stream<Measurements> sizes() throws IOException {
        return TorsoBlockSizesTest.sizes();
    }

    private static List<Draft> blocks(Measurements body) {
        return List.of(
                TorsoBlock.draft(body, Ease.CLOSE_FITTING).draft(),
                TorsoBlock.bodice(body, Ease.CLOSE_FITTING).draft());
    }

    private static Length mm(double mm) {
        return Length.mm(mm);
    }

    /** The isometry that lays the back's seam on the front's, turned over, from given ends of both. */
    private static AffineTransformMatrix2D laid(Vector2D at, Vector2D along, Vector2D backAt, Vector2D backAlong) {
        double to = Math.atan2(along.getY(), along.getX());
        double from = Math.atan2(backAlong.getY(), backAlong.getX());
        return AffineTransformMatrix2D.createTranslation(backAt.negate())
                .rotate(-from)
                .scale(1, -1)
                .rotate(to)
                .translate(at);
    }

    /** By what angle the joined line turns where it passes from the front to the back. */
    private static double turn(Vector2D along, Vector2D line, Vector2D backAlong, Vector2D backLine) {
        AffineTransformMatrix2D joined = laid(Vector2D.ZERO, along, Vector2D.ZERO, backAlong);
        Vector2D onwards = joined.applyVector(backLine);
        // On the front the line leaves the corner; on the back it goes on the other way.
        Vector2D in = line.negate();
        return Math.abs(Math.atan2(in.signedArea(onwards), in.dot(onwards)));
    }

    private static Vector2D startOf(Piece piece, String edge) {
        return Paper.edge(piece, edge).startTangent();
    }

    private static Vector2D endOf(Piece piece, String edge) {
        return Paper.edge(piece, edge).endTangent().negate();
    }

    private static double judged(Curve curve) {
        return new RombergIntegrator(1e-12, 1e-10, 5, 25)
                .integrate(1_000_000, t -> curve.derivative(t).norm(), 0, 1);
    }

    private static void requireRest(Draft before, Draft after, String redrawn) {
        for (Piece was : before.pieces()) {
            Piece is = after.piece(was.name());
            assertThat(is.insideDarts()).isEqualTo(was.insideDarts());
            assertThat(is.grain()).isEqualTo(was.grain());
            for (Edge edge : was.edges()) {
                if (!List.of(redrawn, "shoulder", "side seam", "centre front", "centre back")
                        .contains(edge.name())) {
                    assertThat(is.edge(edge.name())).isEqualTo(edge);
                }
            }
            for (int i = 0; i < was.openings().size(); i++) {
                assertThat(is.openings().get(i).before())
                        .isEqualTo(was.openings().get(i).before());
                assertThat(is.openings().get(i).after())
                        .isEqualTo(was.openings().get(i).after());
            }
        }
    }

    private static void requireUndone(Draft before, Recut cut) {
        assertThat(Panels.undo(cut.front()).sameCloth(before.piece("front"), 1e-9))
                .isTrue();
        assertThat(Panels.undo(cut.back()).sameCloth(before.piece("back"), 1e-9))
                .isTrue();
    }

    @ParameterizedTest
    @MethodSource("sizes")
    void roundNecklinesRunOnOverTheShoulder(Measurements body) {
        SplittableRandom random = new SplittableRandom(body.name().hashCode());
        for (Draft block : blocks(body)) {
            for (int i = 0; i < 12; i++) {
                double along = random.nextDouble(-5, 35);
                double front = random.nextDouble(-5, 90);
                double back = random.nextDouble(5, 60) + 0.35 * Math.max(0, along);
                Recut cut = Necklines.reshape(block, NECK, Necklines.Wanted.round(mm(along), mm(front), mm(back)));
                Draft drawn = cut.draft();
                Piece one = drawn.piece("front");
                Piece other = drawn.piece("back");
                // The block's shoulders run from the armhole to the neck, its necklines on from there to the centre.
                assertThat(turn(
                                endOf(one, "shoulder"), startOf(one, "neckline"),
                                endOf(other, "shoulder"), startOf(other, "neckline")))
                        .isLessThan(STRAIGHT_ON);
                for (Piece piece : drawn.pieces()) {
                    CurvePath line = Paper.edge(piece, "neckline");
                    assertThat(line.endTangent().getY())
                            .as("square at the centre")
                            .isCloseTo(0, within(1e-12));
                    assertThat(line.curves()).hasSize(1);
                    requireOneBend(line);
                    double drop = block.piece(piece.name())
                                    .edge("centre " + piece.name())
                                    .length()
                            - piece.edge("centre " + piece.name()).length();
                    assertThat(drop).isCloseTo(piece.equals(one) ? front : back, within(1e-9));
                    assertThat(block.piece(piece.name()).edge("shoulder").length()
                                    - piece.edge("shoulder").length())
                            .isCloseTo(along, within(1e-9));
                }
                double girth = 2
                        * (judged(Paper.edge(one, "neckline").curves().get(0))
                                + judged(Paper.edge(other, "neckline").curves().get(0)));
                assertThat(Necklines.opening(drawn, NECK)).isCloseTo(girth, within(1e-6));
                assertThat(Walk.all(drawn))
                        .allSatisfy(walk -> assertThat(walk.difference()).isCloseTo(0, within(1e-9)));
                requireRest(block, drawn, "neckline");
                requireUndone(block, cut);
                assertThat(Checks.all(drawn, Checks.SEAM_TOLERANCE).stream()
                                .filter(found -> found.kind() == Finding.Kind.OUTLINE_CROSSES
                                        || found.kind() == Finding.Kind.SEAM_LENGTHS_DIFFER))
                        .isEmpty();
            }
        }
    }

    /** No inflection: the curvature keeps its sign. */
    private static void requireOneBend(CurvePath line) {
        Curve curve = line.curves().get(0);
        double sign = Math.signum(curve.curvature(0.5));
        for (int i = 0; i <= 40; i++) {
            assertThat(curve.curvature(i / 40.0) * sign).isGreaterThanOrEqualTo(0);
        }
    }

    @ParameterizedTest
    @MethodSource("sizes")
    void aVIsStraightInFrontAndRunsOnBehind(Measurements body) {
        for (Draft block : blocks(body)) {
            Draft drawn = Necklines.reshape(block, NECK, Necklines.Wanted.v(mm(15), mm(110), mm(12)))
                    .draft();
            Piece one = drawn.piece("front");
            Piece other = drawn.piece("back");
            CurvePath line = Paper.edge(one, "neckline");
            assertThat(line.length()).isCloseTo(line.start().distance(line.end()), within(1e-12));
            assertThat(turn(
                            endOf(one, "shoulder"), startOf(one, "neckline"),
                            endOf(other, "shoulder"), startOf(other, "neckline")))
                    .isLessThan(STRAIGHT_ON);
            requireOneBend(Paper.edge(other, "neckline"));
            assertThat(Paper.edge(other, "neckline").endTangent().getY()).isCloseTo(0, within(1e-12));
        }
    }

    @ParameterizedTest
    @MethodSource("sizes")
    void armholesRunOnOverShoulderAndUnderarm(Measurements body) {
        SplittableRandom random = new SplittableRandom(body.name().hashCode());
        for (Draft block : blocks(body)) {
            for (int i = 0; i < 12; i++) {
                double shoulder = random.nextDouble(-5, 30);
                double lower = random.nextDouble(-15, 35);
                Recut cut = Armholes.reshape(
                        block,
                        ARM,
                        Armholes.Wanted.SAME.shoulderIn(mm(shoulder)).lower(mm(lower)));
                Draft drawn = cut.draft();
                Piece one = drawn.piece("front");
                Piece other = drawn.piece("back");
                assertThat(turn(
                                startOf(one, "shoulder"), endOf(one, "armhole"),
                                startOf(other, "shoulder"), endOf(other, "armhole")))
                        .isLessThan(STRAIGHT_ON);
                assertThat(turn(
                                endOf(one, "side seam"), startOf(one, "armhole"),
                                endOf(other, "side seam"), startOf(other, "armhole")))
                        .isLessThan(STRAIGHT_ON);
                for (Piece piece : drawn.pieces()) {
                    requireOneBend(Paper.edge(piece, "armhole"));
                    Piece was = block.piece(piece.name());
                    assertThat(was.edge("side seam").length()
                                    - piece.edge("side seam").length())
                            .isCloseTo(lower, within(1e-6));
                    assertThat(was.edge("shoulder").length()
                                    - piece.edge("shoulder").length())
                            .isCloseTo(shoulder, within(1e-9));
                    assertThat(Lengths.base(piece, "armhole"))
                            .isCloseTo(
                                    judged(Paper.edge(piece, "armhole").curves().get(0)), within(1e-6));
                }
                assertThat(Walk.all(drawn))
                        .allSatisfy(walk -> assertThat(walk.difference()).isCloseTo(0, within(1e-6)));
                requireRest(block, drawn, "armhole");
                requireUndone(block, cut);
            }
        }
    }

    /** A width asked for is drawn to a millionth of a millimetre, or refused with the range; the ends of that range are drawn. */
    @ParameterizedTest
    @MethodSource("sizes")
    void theWidthAskedIsDrawnOrRefused(Measurements body) {
        SplittableRandom random = new SplittableRandom(body.name().hashCode());
        int drawnAsAsked = 0;
        for (Draft block : blocks(body)) {
            for (int i = 0; i < 12; i++) {
                Armholes.Wanted in = Armholes.Wanted.SAME.shoulderIn(mm(random.nextDouble(0, 25)));
                double front = random.nextDouble(-5, 40);
                double back = random.nextDouble(-5, 40);
                try {
                    requireWidths(block, in, front, back);
                    drawnAsAsked++;
                } catch (DraftingException refused) {
                    assertThat(refused.reason()).contains("no curve without a kink makes");
                    boolean ofFront = refused.reason().contains("'front'");
                    double asked = ofFront ? front : back;
                    double least = refused.reach().orElseThrow().least();
                    double most = refused.reach().orElseThrow().most();
                    assertThat(asked < least || asked > most).isTrue();
                    double possible = asked < least ? least + 1e-3 : most - 1e-3;
                    Armholes.Wanted other = ofFront
                            ? new Armholes.Wanted(in.shoulder(), 0, Optional.of(possible), Optional.empty())
                            : new Armholes.Wanted(in.shoulder(), 0, Optional.empty(), Optional.of(possible));
                    Draft drawn = Armholes.reshape(block, ARM, other).draft();
                    assertThat(narrower(block, drawn, ofFront ? "front" : "back"))
                            .isCloseTo(possible, within(1e-6));
                }
            }
        }
        assertThat(drawnAsAsked).as("drawn as asked, of 24").isGreaterThan(3);
    }

    private static void requireWidths(Draft block, Armholes.Wanted in, double front, double back) {
        Draft drawn =
                Armholes.reshape(block, ARM, in.cutAway(mm(front), mm(back))).draft();
        assertThat(narrower(block, drawn, "front")).isCloseTo(front, within(1e-6));
        assertThat(narrower(block, drawn, "back")).isCloseTo(back, within(1e-6));
    }

    /** By how much the narrowest place at the armhole lies nearer to the centre. */
    private static double narrower(Draft before, Draft after, String piece) {
        return Paper.edge(before.piece(piece), "armhole").bounds().getMin().getX()
                - Paper.edge(after.piece(piece), "armhole").bounds().getMin().getX();
    }

    /** Facing heads of 56 to 60 cm, as adults' are (common practice), the block's own neck never opens; a wide one does. */
    @ParameterizedTest
    @MethodSource("sizes")
    void aHeadNeedsRoom(Measurements body) {
        for (Draft block : blocks(body)) {
            Finding found = Necklines.headFits(block, NECK, Length.cm(58)).orElseThrow();
            double missing = 580
                    - 2
                            * (judged(Paper.edge(block.piece("front"), "neckline")
                                            .curves()
                                            .get(0))
                                    + judged(Paper.edge(block.piece("back"), "neckline")
                                            .curves()
                                            .get(0)));
            assertThat(found.excess()).isCloseTo(-missing, within(1e-6));
            // The slit that is proposed lets the head through, and one a step shorter would not.
            double slit = 5 * Math.ceil(missing / 10);
            assertThat(found.remedy()).contains(Steps.DEFAULT.both(mm(slit)));
            Draft wide = Necklines.reshape(block, NECK, Necklines.Wanted.round(mm(35), mm(90), mm(40)))
                    .draft();
            assertThat(Necklines.headFits(wide, NECK, Length.cm(58))).isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("sizes")
    void whatIsNotThereIsRefused(Measurements body) {
        Draft block = blocks(body).get(0);
        double toDart = Redraw.last(block.piece("front"), "shoulder").length();
        assertThatThrownBy(() -> Necklines.reshape(block, NECK, Necklines.Wanted.round(mm(toDart), mm(20), mm(20))))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("there is not so much of 'shoulder' before its other end or a dart");
        assertThatThrownBy(() -> Necklines.reshape(block, NECK, Necklines.Wanted.round(mm(45), mm(20), mm(-25))))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("no line without a kink runs over the shoulder");
        assertThatThrownBy(() -> Armholes.reshape(block, ARM, Armholes.Wanted.SAME.lower(Length.cm(60))))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("there is not so much of 'side seam'");
        assertThatThrownBy(() -> Necklines.reshape(
                        block,
                        Crossing.of("side", "front", "back", "neckline"),
                        Necklines.Wanted.round(mm(10), mm(20), mm(20))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("'neckline' does not meet 'side seam' in 'front'.");
        assertThatThrownBy(() -> Necklines.reshape(
                        block,
                        Crossing.of("hood", "front", "back", "neckline"),
                        Necklines.Wanted.round(mm(10), mm(20), mm(20))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("There is no seam named 'hood'; there are shoulder, side.");
    }

    private static double turnAtJoints(CurvePath path) {
        double most = 0;
        for (int i = 1; i < path.curves().size(); i++) {
            Vector2D in = path.curves().get(i - 1).tangent(1);
            Vector2D out = path.curves().get(i).tangent(0);
            most = Math.max(most, Math.abs(Math.atan2(in.signedArea(out), in.dot(out))));
        }
        return most;
    }

    /** The place on the side seam at a height, as its arc, by halving: the seam rises all the way. */
    private static double arcAt(CurvePath rising, double height) {
        double low = 0;
        double high = rising.length();
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (rising.pointAt(middle).getY() < height) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** All below the line comes down or up by the length asked, all above stays, the side seams stay smooth and alike. */
    @ParameterizedTest
    @MethodSource("sizes")
    void lengthenedAndShortenedBelowTheDarts(Measurements body) {
        SplittableRandom random = new SplittableRandom(body.name().hashCode());
        Draft block = blocks(body).get(0);
        double hem = Paper.edge(block.piece("front"), "hem").start().getY();
        for (int i = 0; i < 8; i++) {
            double by = random.nextDouble(4, 40) * (i % 2 == 0 ? 1 : -1);
            double height = hem + random.nextDouble(Math.max(8, -by + 5), 60);
            Draft drawn = block;
            for (Piece piece : block.pieces()) {
                CurvePath side = Paper.edge(piece, "side seam");
                String centre = "centre " + piece.name();
                Spot onSide = Spot.on("side seam", arcAt(side, height));
                Spot.On onCentre = (Spot.On)
                        Spot.on(centre, Paper.edge(piece, centre).start().getY() - height);
                Reworked done = Lengthen.at(piece, onSide, onCentre, mm(by));
                Piece now = done.piece();
                assertThat(Paper.edge(now, "hem").start().getY()).isCloseTo(hem - by, within(1e-9));
                assertThat(Paper.edge(now, "hem").length())
                        .isCloseTo(Paper.edge(piece, "hem").length(), within(1e-9));
                assertThat(Paper.edge(now, centre).length()
                                - Paper.edge(piece, centre).length())
                        .isCloseTo(by, within(1e-9));
                for (String stays : List.of("armhole", "shoulder", "neckline")) {
                    assertThat(now.edge(stays)).isEqualTo(piece.edge(stays));
                    assertThat(Paper.edge(now, stays)
                                    .end()
                                    .distance(Paper.edge(piece, stays).end()))
                            .isLessThan(1e-9);
                }
                assertThat(turnAtJoints(Paper.edge(now, "side seam"))).isLessThan(turnAtJoints(side) + 1e-6);
                double change = Paper.edge(now, "side seam").length() - side.length();
                assertThat(change / by).as("the side seam slants little").isBetween(0.9, 1.1);
                assertThat(Panels.undo(done).sameCloth(piece, 1e-9)).isTrue();
                drawn = drawn.with(now);
            }
            assertThat(Walk.all(drawn))
                    .allSatisfy(walk -> assertThat(walk.difference()).isCloseTo(0, within(1e-6)));
        }
    }

    @ParameterizedTest
    @MethodSource("sizes")
    void aLineAtTheHemIsRefused(Measurements body) {
        Draft block = blocks(body).get(0);
        assertThatThrownBy(() -> Lengthen.at(block.piece("front"), "hip line", mm(20)))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("the line does not run from edge to edge");
        assertThatThrownBy(() -> Lengthen.at(block.piece("front"), "hip line", mm(0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("A piece is made longer or shorter by more or less than 0 mm.");
    }

    /** Both ends of the seam come in by what was asked, square to the grain; the widths at hip and underarm follow; the mates stay alike. */
    @ParameterizedTest
    @MethodSource("sizes")
    void sidesTakenInAlike(Measurements body) {
        SplittableRandom random = new SplittableRandom(body.name().hashCode());
        Draft block = blocks(body).get(0);
        for (int i = 0; i < 8; i++) {
            double start = random.nextDouble(-20, 25);
            double stop = random.nextDouble(-15, 15);
            Recut cut = SideSeams.takeIn(block, "side", mm(start), mm(stop));
            for (Piece was : block.pieces()) {
                Piece is = cut.draft().piece(was.name());
                CurvePath before = Paper.edge(was, "side seam");
                CurvePath after = Paper.edge(is, "side seam");
                assertThat(before.start().subtract(after.start()).distance(Vector2D.of(start, 0)))
                        .isLessThan(1e-9);
                assertThat(before.end().subtract(after.end()).distance(Vector2D.of(stop, 0)))
                        .isLessThan(1e-9);
                assertThat(Girths.closed(was, "hip line") - Girths.closed(is, "hip line"))
                        .isCloseTo(start, within(1e-6));
                assertThat(Paper.edge(is, "hem").length())
                        .isCloseTo(Paper.edge(was, "hem").length() - start, within(1e-9));
                double waist = Girths.closed(was, "waist line") - Girths.closed(is, "waist line");
                assertThat(waist).isBetween(Math.min(start, stop) - 1e-6, Math.max(start, stop) + 1e-6);
                assertThat(is.edge("shoulder")).isEqualTo(was.edge("shoulder"));
            }
            assertThat(Walk.all(cut.draft()))
                    .allSatisfy(walk -> assertThat(walk.difference()).isCloseTo(0, within(1e-9)));
            requireUndone(block, cut);
        }
    }
}
