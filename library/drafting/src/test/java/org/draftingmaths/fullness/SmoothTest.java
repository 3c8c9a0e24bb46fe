package org.draftingmaths.fullness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Nearest;
import org.draftingmaths.ledger.Change;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Girths;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Slash;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.piece.Stay;
import org.draftingmaths.piece.Use;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class SmoothTest {

    private static final Smooth.Blend ONE = new Smooth.Blend.OneCurve();

    static Stream<Long> seeds() {
        return LongStream.range(0, 200).boxed();
    }

    private static Piece panel(double width, double height) {
        return Drawing.of("panel")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(width, 0)
                .edge("side", Role.SEAM)
                .line(width, height)
                .edge("waist", Role.SEAM)
                .line(0, height)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .level("hip line", 0, height - 200, width, height - 200)
                .notch("hem", width * 0.7)
                .piece();
    }

    /** A fan of n wedges of a turn each: hem and top are polygons, the sides run through the middle of the circle. */
    private static Piece fan(int n, double turn, double stretch, boolean touching) {
        double radius = touching ? stretch / 2 / Math.tan(turn / 2) : stretch / 2 / Math.sin(turn / 2);
        double first = -Math.PI / 2 - n * turn / 2;
        Drawing drawing = Drawing.of("fan");
        Vector2D start = polar(radius, first);
        Vector2D end = polar(radius, first + n * turn);
        drawing = drawing.from(start.getX(), start.getY()).edge("hem", Role.HEM);
        if (touching) {
            double corner = radius / Math.cos(turn / 2);
            for (int i = 0; i < n; i++) {
                Vector2D at = polar(corner, first + (i + 0.5) * turn);
                drawing = drawing.line(at.getX(), at.getY());
            }
            drawing = drawing.line(end.getX(), end.getY());
        } else {
            for (int i = 1; i <= n; i++) {
                Vector2D at = polar(radius, first + i * turn);
                drawing = drawing.line(at.getX(), at.getY());
            }
        }
        return drawing.edge("side", Role.SEAM)
                .line(end.getX() / 2, end.getY() / 2)
                .edge("top", Role.SEAM)
                .line(start.getX() / 2, start.getY() / 2)
                .edge("other side", Role.SEAM)
                .line(start.getX(), start.getY())
                .piece();
    }

    private static Vector2D polar(double radius, double angle) {
        return Vector2D.of(radius * Math.cos(angle), radius * Math.sin(angle));
    }

    /** A fair curve through the corners is longer by a^2/24 of the stretches; what is left over falls with the fourth power of a. */
    @ParameterizedTest
    @ValueSource(doubles = {2, 4, 6.2, 10, 15})
    void throughTheCornersItGrowsByATwentyFourth(double degrees) {
        double a = Math.toRadians(degrees);
        Piece fan = fan(6, a, 50, false);
        Reworked smooth = Smooth.edge(fan, "hem", new Smooth.Blend.ThroughCorners(), Smooth.Ends.SQUARE);
        double share = Lengths.drawn(smooth.piece(), "hem") / 300 - 1;
        assertThat(share).isCloseTo(a * a / 24, within(Math.pow(a, 4) / 200));
    }

    /** A fair curve that touches the stretches in their middles is shorter by a^2/12 of them. */
    @ParameterizedTest
    @ValueSource(doubles = {2, 4, 6.2, 10, 15})
    void alongTheStretchesItShrinksByATwelfth(double degrees) {
        double a = Math.toRadians(degrees);
        Piece fan = fan(6, a, 50, true);
        Reworked smooth = Smooth.edge(fan, "hem", new Smooth.Blend.AlongStretches(), Smooth.Ends.SQUARE);
        double share = Lengths.drawn(smooth.piece(), "hem") / 300 - 1;
        assertThat(share).isCloseTo(-a * a / 12, within(Math.pow(a, 4) / 100));
    }

    /** A corner rounded off from t loses t a^2/6; the trade's figure: from 5 cm at 20 degrees about 1 mm. */
    @ParameterizedTest
    @ValueSource(doubles = {2, 5, 10, 20})
    void aRoundedCornerLosesASixth(double degrees) {
        double a = Math.toRadians(degrees);
        Piece fan = fan(2, a, 200, false);
        Reworked smooth = Smooth.edge(fan, "hem", new Smooth.Blend.Rounded(50), Smooth.Ends.AS_DRAWN);
        double lost = 400 - Lengths.drawn(smooth.piece(), "hem");
        assertThat(lost).isCloseTo(50 * a * a / 6, within(50 * Math.pow(a, 4) / 300));
        if (degrees == 20) {
            assertThat(lost).isCloseTo(1, within(0.05));
        }
    }

    /** Spread, then blend the hem square at both ends to the sweep wanted and the waist to its old length: both are exact. */
    @ParameterizedTest
    @MethodSource("seeds")
    void theHemIsAsLongAsWantedAndSquare(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double width = random.nextDouble(200, 300);
        double height = random.nextDouble(450, 700);
        Piece panel = panel(width, height);
        List<Slash> slashes = Spread.even(panel, "flare", "hem", "waist", random.nextInt(2, 6));
        double sweep = width + random.nextDouble(30, 200);
        double gap = Sweep.gap(panel, "hem", slashes, sweep).value();
        Reworked spread = Spread.all(panel, Sweep.hinged(slashes, gap), Stay.CENTRE);
        Reworked hem = Smooth.edgeTo(spread.piece(), "hem", ONE, Smooth.Ends.SQUARE, sweep);
        Reworked waist = Smooth.edgeTo(hem.piece(), "waist", ONE, Smooth.Ends.SQUARE, width);
        Piece piece = waist.piece();

        assertThat(piece.openings()).as("seed %d", seed).isEmpty();
        assertThat(Lengths.base(piece, "hem")).isCloseTo(sweep, within(1e-9));
        assertThat(Lengths.base(piece, "waist")).isCloseTo(width, within(1e-9));
        CurvePath side = Paper.edge(piece, "side");
        CurvePath line = Paper.edge(piece, "hem");
        assertThat(line.endTangent().dot(side.startTangent())).isCloseTo(0, within(1e-9));
        assertThat(line.startTangent().getY()).isCloseTo(0, within(1e-9));
        assertThat(side.length()).isCloseTo(height, within(1e-9));
        assertThat(line.start()).isEqualTo(Paper.edge(panel, "hem").start());
        List<Change> told = hem.ledger().only(Change.class).stream()
                .filter(change -> change.what().startsWith("length of 'hem' by"))
                .toList();
        assertThat(told)
                .extracting(Change::what)
                .containsExactly("length of 'hem' by the blend", "length of 'hem' by setting it");
        assertThat(told.get(0).before()).isCloseTo(Lengths.drawn(spread.piece(), "hem"), within(1e-9));
        assertThat(told.get(1).after()).isEqualTo(sweep);
        Ledger all = spread.ledger().then(hem.ledger()).then(waist.ledger());
        assertThat(Panels.undo(new Reworked(piece, all)).sameCloth(panel, 1e-8)).isTrue();
    }

    /** Even spreading tends to a ring sector: with many slashes the turn is (sweep - width) / height. */
    @Test
    void evenSpreadingTendsToARingSector() {
        Piece panel = panel(255, 600);
        for (int n : new int[] {1, 3, 12}) {
            List<Slash> slashes = Spread.even(panel, "flare", "hem", "waist", n);
            double gap = Sweep.gap(panel, "hem", slashes, 450).value();
            Piece spread =
                    Spread.all(panel, Sweep.hinged(slashes, gap), Stay.CENTRE).piece();
            Vector2D side = Paper.edge(spread, "side").startTangent();
            double turn = Math.atan2(-side.getX(), side.getY());
            assertThat(turn).isCloseTo(195.0 / 600, within(1e-12));
            // Analytic: the chords come to w + 2 n H sin(turn / 2n).
            assertThat(Lengths.drawn(spread, "hem"))
                    .isCloseTo(255 + 2 * n * 600 * Math.sin(turn / 2 / n), within(1e-9));
        }
    }

    @Test
    void theBudgetSaysWhatTheFullnessCosts() {
        Piece panel = panel(255, 600);
        Reworked spread =
                Spread.unequal(panel, Slash.straight("flare", Spot.on("hem", 100), Spot.on("waist", 155)), 60, 20);
        Budget budget = Budget.of(panel, spread.piece());
        // The gap grows evenly along the slash: at the hip, 400 of 600 mm up, 60 - 40 x 400 / 600.
        // There the line goes on nearly as the arc of the angle between its sides on that chord.
        double gap = 60 - 40 * 2 / 3.0;
        double half = Math.asin(20 / 600.0);
        assertThat(budget.levels().get("hip line")).isCloseTo(gap * half / Math.sin(half), within(1e-5));
        assertThat(budget.edges().get("hem")).isCloseTo(60, within(1e-9));
        assertThat(budget.edges().get("side")).isCloseTo(0, within(1e-9));
        assertThat(budget.area()).isCloseTo(40 * 600 * Math.sqrt(1 - 1 / 900.0), within(1e-6));
        assertThat(budget.sentence(Steps.DEFAULT))
                .isEqualTo("The fullness takes 37.2 sq in (239.9 sq cm) of cloth, 1 3/8 in (3.3 cm) at 'hip line',"
                        + " 2 3/8 in (6.0 cm) along 'hem', 3/4 in (2.0 cm) along 'waist'.");
    }

    /**
     * A slash that crosses the hip line at a slant, its gap uneven: filled or not, the line is as long, drawn and closed. Filled it runs on without a corner
     * through both ends it had, and between them it is no shorter than the straight, and no
     * longer than its handles of a third of that and the straight between them.
     */
    @ParameterizedTest
    @MethodSource("seeds")
    void fillingChangesNoWidth(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Piece panel = panel(300, 600);
        Slash slash = Slash.straight(
                "flare", Spot.on("hem", random.nextDouble(60, 240)), Spot.on("waist", random.nextDouble(60, 240)));
        Piece spread = Spread.unequal(panel, slash, random.nextDouble(35, 80), random.nextDouble(5, 30))
                .piece();
        Piece filled = Panels.fill(spread, "flare").piece();
        assertThat(Budget.of(panel, filled).levels().get("hip line"))
                .as("seed %d", seed)
                .isCloseTo(Budget.of(panel, spread).levels().get("hip line"), within(1e-9));
        assertThat(Girths.closed(filled, "hip line")).isCloseTo(Girths.closed(spread, "hip line"), within(1e-9));
        List<CurvePath> parts = lines(spread).stream()
                .sorted(Comparator.comparingDouble(line -> line.start().getX()))
                .toList();
        assertThat(parts).hasSize(2);
        Vector2D gap = parts.get(0).end().vectorTo(parts.get(1).start());
        double turn = Math.max(
                Math.abs(parts.get(0).endTangent().signedArea(gap)),
                Math.abs(gap.signedArea(parts.get(1).startTangent())));
        boolean smooth = turn / gap.norm() <= Math.sin(Math.toRadians(15));
        assertThat(lines(filled)).as("turning by more it stays broken").hasSize(smooth ? 1 : 2);
        if (!smooth) {
            return;
        }
        CurvePath whole = lines(filled).get(0);
        double from = Nearest.of(whole, parts.get(0).end()).at();
        double to = Nearest.of(whole, parts.get(1).start()).at();
        assertThat(whole.pointAt(from).distance(parts.get(0).end())).isLessThan(1e-9);
        assertThat(whole.pointAt(to).distance(parts.get(1).start())).isLessThan(1e-9);
        CurvePath over = whole.between(from, to);
        assertThat(over.startTangent().distance(parts.get(0).endTangent())).isLessThan(1e-6);
        assertThat(over.endTangent().distance(parts.get(1).startTangent())).isLessThan(1e-6);
        Vector2D chord = over.start().vectorTo(over.end());
        Vector2D handles =
                parts.get(0).endTangent().add(parts.get(1).startTangent()).multiply(chord.norm() / 3);
        assertThat(over.length())
                .isBetween(
                        chord.norm() - 1e-9,
                        2 * chord.norm() / 3 + chord.subtract(handles).norm() + 1e-9);
    }

    private static List<CurvePath> lines(Piece piece) {
        return piece.panels().stream()
                .flatMap(panel -> panel.lines().stream())
                .map(piece::place)
                .toList();
    }

    @Test
    void blendsThatCannotBeAreRefused() {
        Piece panel = panel(300, 600);
        Piece spread = Spread.hinged(panel, Slash.straight("flare", Spot.on("hem", 150), Spot.on("waist", 150)), 80)
                .piece();
        assertThatThrownBy(() -> Smooth.edge(spread, "hem", new Smooth.Blend.Rounded(200), Smooth.Ends.AS_DRAWN))
                .isInstanceOf(DraftingException.class)
                .hasMessage(
                        "Blend 'hem': a stretch of 150.0 mm between two corners is too short to round them from 200.0"
                                + " mm.");
        assertThatThrownBy(() -> Smooth.edgeTo(spread, "hem", ONE, Smooth.Ends.SQUARE, 200))
                .isInstanceOf(DraftingException.class)
                .hasMessageStartingWith("Set 'hem' to its length: This line cannot be made 200.000 mm long");
        Piece pleat = spread.using("flare", new Use.Folded(Use.Under.BEFORE, 0, Use.Stitched.LEGS));
        assertThatThrownBy(() -> Smooth.edge(pleat, "hem", ONE, Smooth.Ends.SQUARE))
                .isInstanceOf(DraftingException.class)
                .hasMessage("Fill 'flare': it is stitched or folded; leave it open first.");
        assertThatThrownBy(() -> new Smooth.Blend.Rounded(0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("A corner is rounded from more than 0 mm before it: 0.0 mm.");
        assertThat(Measured.leg(pleat, "flare", Leg.BEFORE).length()).isCloseTo(600, within(1e-9));
    }
}
