package org.draftingmaths.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.fullness.Spread;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Cloth in a gap: what is conserved, what is gained, and the way back. */
class FillTest {

    private static final List<Use.Kind> KINDS =
            List.of(Use.Kind.SLASH, Use.Kind.EASE, Use.Kind.GATHERS, Use.Kind.FLARE);

    static Stream<Long> seeds() {
        return LongStream.range(0, 300).boxed();
    }

    /** Several openings of every kind, filled one after the other in any order, on pieces of any shape. */
    @ParameterizedTest
    @MethodSource("seeds")
    void fillingKeepsThePaper(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Piece piece = opened(seed, random);
        Piece before = piece;
        Ledger ledger = Ledger.EMPTY;
        List<String> names =
                new ArrayList<>(piece.openings().stream().map(Opening::name).toList());
        while (!names.isEmpty()) {
            String name = names.remove(random.nextInt(names.size()));
            Reworked filled = Panels.fill(piece, name);
            ledger = ledger.then(filled.ledger());
            piece = filled.piece();
        }

        assertThat(piece.panels()).as("seed %d", seed).hasSize(1);
        assertThat(Flat.polygon(Paper.outline(piece))
                        .symDifference(Flat.polygon(Paper.outline(before)))
                        .getArea())
                .as("the paper, judged by JTS")
                .isLessThan(1e-4);
        assertThat(piece.area()).isCloseTo(Paper.outline(before).area(), within(1e-6));
        for (Edge edge : before.edges()) {
            assertThat(Lengths.drawn(piece, edge.name())).isCloseTo(Lengths.drawn(before, edge.name()), within(1e-8));
            assertThat(Lengths.folded(piece, edge.name())).isCloseTo(Lengths.folded(before, edge.name()), within(1e-8));
            assertThat(piece.edge(edge.name()).length()).isCloseTo(Lengths.drawn(before, edge.name()), within(1e-8));
        }
        for (int i = 0; i < before.notches().size(); i++) {
            Vector2D then = Notches.where(before, before.notches().get(i)).point();
            Vector2D now = Notches.where(piece, piece.notches().get(i)).point();
            assertThat(now.distance(then)).isLessThan(1e-8);
        }
        for (LevelLine level : before.levels()) {
            assertThat(Girths.closed(piece, level.name())).isCloseTo(Girths.closed(before, level.name()), within(1e-8));
        }
        Piece back = Panels.undo(new Reworked(piece, ledger));
        assertThat(SameCloth.differences(back, before, 1e-8)).isEmpty();
    }

    /** A random piece, its darts left open, and one or two slashes from edge to edge spread in it. */
    private static Piece opened(long seed, SplittableRandom random) {
        Piece piece = RandomPieces.piece(seed);
        for (Opening dart : List.copyOf(piece.openings())) {
            Use.Kind kind = KINDS.get(random.nextInt(KINDS.size()));
            piece = piece.using(dart.name(), new Use.Left(kind));
        }
        if (!clear(piece)) {
            return opened(seed + 1000, random);
        }
        if (random.nextInt(4) == 0) {
            piece = Panels.mirror(piece, Vector2D.of(-500, 0), Vector2D.of(0.2, 1))
                    .piece();
        }
        int wanted = random.nextInt(0, 3);
        for (int i = 0; i < 60 && wanted > 0; i++) {
            List<Edge> edges = piece.edges();
            Edge from = edges.get(random.nextInt(1, edges.size()));
            Edge to = edges.get(random.nextInt(1, edges.size()));
            Slash slash = Slash.straight(
                    "slash " + wanted,
                    Spot.on(from.name(), random.nextDouble() * from.length()),
                    Spot.on(to.name(), random.nextDouble() * to.length()));
            try {
                double far = random.nextBoolean() ? 0 : random.nextDouble(2, 15);
                Piece spread = Spread.all(
                                piece,
                                List.of(new Spread.Opened(slash, random.nextDouble(2, 25), far)),
                                Stay.at("edge 0", 1))
                        .piece();
                if (clear(spread)) {
                    piece = spread;
                    wanted--;
                }
            } catch (DraftingException refused) {
                assertThat(refused.asked()).startsWith("S");
            }
        }
        return piece;
    }

    /** What is drawn across the openings stays clear of the cloth. */
    private static boolean clear(Piece piece) {
        return Meets.selfMeets(Paper.outline(piece)).isEmpty();
    }

    private static Piece panel() {
        return Drawing.of("panel")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(300, 0)
                .edge("side", Role.SEAM)
                .line(300, 600)
                .edge("waist", Role.SEAM)
                .line(0, 600)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .level("hip line", 0, 400, 300, 400)
                .notch("hem", 200)
                .notch("waist", 50)
                .piece();
    }

    /** Once filled, the hem is one edge again and may be redrawn, and a later slash may cross the gap. */
    @Test
    void theSheetGoesOnThroughIt() {
        Slash flare = Slash.straight("flare", Spot.on("hem", 150), Spot.on("waist", 150));
        Reworked spread = Spread.unequal(panel(), flare, 80, 20);
        Reworked filled = Panels.fill(spread.piece(), "flare");
        Piece piece = filled.piece();

        assertThat(piece.edge("hem").length()).isCloseTo(380, within(1e-9));
        assertThat(piece.edge("waist").length()).isCloseTo(320, within(1e-9));
        assertThat(piece.notches())
                .extracting(Notch::arc)
                .satisfiesExactly(
                        arc -> assertThat(arc).isCloseTo(280, within(1e-9)),
                        arc -> assertThat(arc).isCloseTo(50, within(1e-9)));
        CurvePath hem = Paper.edge(piece, "hem");
        assertThat(Redraw.edges(piece, Map.of("hem", CurvePath.polyline(hem.start(), hem.end())))
                        .piece()
                        .edge("hem")
                        .length())
                .isLessThan(380);
        Reworked across = Panels.cut(piece, Slash.straight("yoke", Spot.on("side", 300), Spot.on("centre", 250)));
        assertThat(across.piece().panels()).hasSize(2);
        assertThat(Panels.undo(across).sameCloth(piece, 1e-9)).isTrue();
        // Analytic: (80 + 20)/2 x 600 x cos(a/2), sin(a/2) = 30/600.
        assertThat(piece.area() - panel().area()).isCloseTo(50 * 600 * Math.sqrt(1 - 0.0025), within(1e-6));
        assertThat(filled.ledger().sentences(Steps.DEFAULT))
                .containsExactly(
                        "Fill 'flare' with cloth: 46.4 sq in (299.6 sq cm).",
                        "The length of 'hem' goes from 11 3/4 in (30.0 cm) to 15 in (38.0 cm).",
                        "The length of 'waist' goes from 11 3/4 in (30.0 cm) to 12 5/8 in (32.0 cm).",
                        "The length of the line 'hip line' goes from 11 3/4 in (30.0 cm) to 13 3/8 in (34.0 cm).",
                        "The net area goes from 279.0 sq in (1800.0 sq cm) to 325.4 sq in (2099.6 sq cm).");
    }

    /** A level line goes on over the filled cloth as one, tangent to both its ends, and is cut and healed by what comes later. */
    @Test
    void levelLinesGoOnOverIt() {
        Slash flare = Slash.straight("flare", Spot.on("hem", 150), Spot.on("waist", 150));
        Slash next = Slash.straight("next", Spot.on("hem", 80), Spot.on("waist", 220));
        Piece spread = Spread.all(
                        panel(),
                        List.of(new Spread.Opened(flare, 80, 20), new Spread.Opened(next, 30, 0)),
                        Stay.at("centre", 300))
                .piece();
        Reworked one = Panels.fill(spread, "next");
        Reworked both = Panels.fill(one.piece(), "flare");
        Piece piece = both.piece();

        List<Stretch> line = piece.panels().get(0).lines();
        assertThat(line).hasSize(1);
        CurvePath drawn = piece.place(line.get(0));
        assertThat(Girths.closed(piece, "hip line")).isCloseTo(Girths.closed(spread, "hip line"), within(1e-9));
        // Analytic: at 400 of 600 the gaps are 40 and 10 wide along the chord, and each curve is a little longer.
        assertThat(drawn.length()).isBetween(350.0 - 0.5, 350.0 + 0.5);
        for (int i = 1; i < drawn.curves().size(); i++) {
            Vector2D in = drawn.curves().get(i - 1).tangent(1);
            assertThat(in.signedArea(drawn.curves().get(i).tangent(0))).isCloseTo(0, within(1e-9));
        }
        Reworked yoke = Panels.cut(piece, Slash.straight("later", Spot.on("hem", 200), Spot.on("waist", 170)));
        assertThat(Panels.undo(yoke).sameCloth(piece, 1e-9)).isTrue();
        Piece back = Panels.undo(new Reworked(piece, one.ledger().then(both.ledger())));
        assertThat(SameCloth.differences(back, spread, 1e-9)).isEmpty();
    }

    /** Where the ends of a line are shifted past one another it stays broken, and the ledger says by how much it would have to turn. */
    @Test
    void aLineThatDoesNotRunOnIsSaidToBeBroken() {
        Slash slanted = Slash.straight("slanted", Spot.on("hem", 20), Spot.on("waist", 20));
        Piece spread = Spread.all(panel(), List.of(new Spread.Opened(slanted, 30, 30)), Stay.at("centre", 300))
                .piece();
        Reworked filled = Panels.fill(spread, "slanted");
        assertThat(filled.piece().panels().get(0).lines()).hasSize(2);
        assertThat(filled.ledger().sentences(Steps.DEFAULT))
                .anySatisfy(
                        sentence -> assertThat(sentence)
                                .startsWith(
                                        "'hip line' stays broken over the filled 'slanted': to go on it would have to turn by 23"));
        assertThat(Girths.closed(filled.piece(), "hip line"))
                .isCloseTo(Girths.closed(spread, "hip line"), within(1e-9));
        assertThat(SameCloth.differences(Panels.undo(filled), spread, 1e-9)).isEmpty();
    }

    @Test
    void whatIsSewnOrHoldsAnotherIsRefused() {
        Slash flare = Slash.straight("flare", Spot.on("hem", 150), Spot.on("waist", 150));
        Piece spread = Spread.hinged(panel(), flare, 80).piece();
        Piece pleat = spread.using("flare", new Use.Folded(Use.Under.BEFORE, 0, Use.Stitched.LEGS));
        assertThatThrownBy(() -> Panels.fill(pleat, "flare"))
                .isInstanceOf(DraftingException.class)
                .hasMessage("Fill 'flare': it is stitched or folded; leave it open first.");
        Piece onLeg = Panels.cut(
                        spread,
                        Slash.straight(
                                "branch",
                                Spot.on("side", 300),
                                new Spot.On(new Border.OfLeg("flare", Leg.AFTER), 200, java.util.Optional.empty())))
                .piece();
        assertThatThrownBy(() -> Panels.fill(onLeg, "flare"))
                .isInstanceOf(DraftingException.class)
                .hasMessage("Fill 'flare': another slash ends on a leg of 'flare'; undo that first.");
    }

    @Test
    void aFillIsUndoneOnlyOnWhatItMade() {
        Slash flare = Slash.straight("flare", Spot.on("hem", 150), Spot.on("waist", 150));
        Reworked filled = Panels.fill(Spread.hinged(panel(), flare, 80).piece(), "flare");
        CurvePath hem = Paper.edge(filled.piece(), "hem");
        Piece redrawn = Redraw.edges(filled.piece(), Map.of("hem", CurvePath.polyline(hem.start(), hem.end())))
                .piece();
        assertThatThrownBy(() -> Panels.undo(new Reworked(redrawn, filled.ledger())))
                .isInstanceOf(DraftingException.class)
                .hasMessage("Empty 'flare' again: the piece was changed since; undo the later operations first.");
    }
}
