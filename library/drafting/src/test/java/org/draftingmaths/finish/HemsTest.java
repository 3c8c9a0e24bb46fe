package org.draftingmaths.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Nearest;
import org.draftingmaths.curve.Parallel;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Flat;
import org.draftingmaths.piece.Isometry;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Notches;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Unfold;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class HemsTest {

    private static final double FOLDED = 1e-6;
    private static final Give GIVE = new Give(0.04, 0.02);

    static Stream<Long> seeds() {
        return LongStream.range(0, 100).boxed();
    }

    /** A skirt panel that widens or narrows to its straight hem, its side seam a curve there. */
    private static Piece skirt(SplittableRandom random) {
        double slant = random.nextDouble(-40, 60);
        return Drawing.of("skirt")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(240 + slant, 0)
                .edge("side seam", Role.SEAM)
                .curve(240 + slant / 2, random.nextDouble(80, 200), 240, 350, 190, 600)
                .edge("waist", Role.SEAM)
                .curve(120, 592, 60, 590, 0, 590)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .notch("side seam", 25)
                .notch("centre", 100)
                .grain(60, 100, 60, 500)
                .piece();
    }

    /** A panel of a round skirt: two straight sides and two arcs about one centre. */
    static Piece flared(double radius, double length, double angle) {
        Arc hem = new Arc(Vector2D.ZERO, radius + length, -Math.PI / 2, angle);
        Arc waist = new Arc(Vector2D.ZERO, radius, -Math.PI / 2 + angle, -angle);
        return Drawing.of("panel")
                .from(hem.start().getX(), hem.start().getY())
                .edge("hem", Role.HEM)
                .along(CurvePath.of(hem))
                .edge("side", Role.SEAM)
                .line(waist.start().getX(), waist.start().getY())
                .edge("waist", Role.SEAM)
                .along(CurvePath.of(waist))
                .edge("centre", Role.FOLD)
                .line(hem.start().getX(), hem.start().getY())
                .grain(20, -radius - 60, 20, -radius - length + 40)
                .piece();
    }

    /** Folded up, the side seams coincide and the raw edge lies level; the fold of the piece goes on and opens out whole. */
    @ParameterizedTest
    @MethodSource("seeds")
    void aStraightHemFoldsOnToThePiece(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Piece skirt = skirt(random);
        double depth = random.nextDouble(20, 90);
        TurnUp made = Hems.turnUp(skirt, "hem", depth, GIVE);
        Piece hemmed = made.piece();
        AffineTransformMatrix2D fold = Isometry.reflection(Vector2D.ZERO, Vector2D.of(1, 0));
        CurvePath folded = Paper.edge(hemmed, "side seam turned").transformed(fold);
        CurvePath side = Paper.edge(hemmed, "side seam");
        for (int i = 0; i <= 30; i++) {
            assertThat(Nearest.of(side, folded.pointAt(folded.length() * i / 30))
                            .distance())
                    .as("seed %d", seed)
                    .isLessThan(FOLDED);
        }
        CurvePath raw = Paper.edge(hemmed, "free edge of hem").transformed(fold);
        assertThat(raw.start().getY()).isCloseTo(depth, within(FOLDED));
        assertThat(raw.end().getY()).isCloseTo(depth, within(FOLDED));
        assertThat(Nearest.of(side, raw.end()).distance()).isLessThan(FOLDED);
        assertThat(Lengths.base(hemmed, "centre")).isCloseTo(590 + depth, within(FOLDED));
        assertThat(hemmed.notches())
                .filteredOn(notch -> notch.edge().equals("side seam turned"))
                .hasSize(depth > 25 ? 1 : 0);
        Vector2D mark = Notches.where(
                        hemmed,
                        hemmed.notches().stream()
                                .filter(notch -> notch.edge().equals("centre"))
                                .findFirst()
                                .orElseThrow())
                .point();
        assertThat(mark.distance(Vector2D.of(0, 490)))
                .as("marks stay on the cloth")
                .isLessThan(1e-9);
        assertThat(made.parts()).extracting(HemPart::surplus).containsExactly(0.0);
        Piece whole = Unfold.at(hemmed, "centre").piece();
        assertThat(Flat.polygon(Paper.outline(whole)).isValid()).isTrue();
        assertThat(whole.area()).isCloseTo(2 * hemmed.area(), within(1e-6));
        assertThat(Panels.undo(new Reworked(hemmed, made.ledger())).sameCloth(skirt, 1e-9))
                .as("seed %d", seed)
                .isTrue();
    }

    /** A square end on a slanted seam is what must not happen: the mirrored end is as long as the seam's own stretch there. */
    @Test
    void theEndHasTheSlopeOfTheSeam() {
        Piece slanted = Drawing.of("sleeve")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(200, 0)
                .edge("seam", Role.SEAM)
                .line(260, 300)
                .edge("top", Role.SEAM)
                .line(-60, 300)
                .edge("other seam", Role.SEAM)
                .line(0, 0)
                .grain(100, 50, 100, 250)
                .piece();
        Piece made = Hems.turnUp(slanted, "hem", 50, GIVE).piece();
        // By similar triangles: the seam is 10 mm wider 50 mm up, so folded down it must be 10 mm wider there too.
        assertThat(Paper.edge(made, "free edge of hem").length()).isCloseTo(220, within(1e-9));
        assertThat(Paper.edge(made, "seam turned").length()).isCloseTo(Math.hypot(10, 50), within(1e-9));
    }

    /** The trade's own figure: depth 4 cm on a hem that turns by 1.3 rad has 2 x 4 x 1.3 = 10.4 cm to ease. Measured on the parallels. */
    @Test
    void theSurplusIsTwiceDepthTimesTurning() {
        Piece panel = flared(200, 700, 1.3);
        HemPart part = Hems.parts(panel, "hem", 40).get(0);
        assertThat(part.surplus()).isCloseTo(104, within(1e-9));
        CurvePath hem = Paper.edge(panel, "hem");
        double raw = Parallel.of(hem.curves().get(0), -40, 1e-6).length();
        double on = Parallel.of(hem.curves().get(0), 40, 1e-6).length();
        assertThat(raw - on).isCloseTo(104, within(1e-9));
        assertThat(part.raw()).isCloseTo(raw, within(1e-9));
        assertThat(part.sewnTo()).isCloseTo(on, within(1e-9));
    }

    /** First the facing cut in one, then the hem: what went straight on is one edge, and the hem is turned up over the facing's width too. */
    @Test
    void aFacingCutInOneIsHemmedWithThePiece() {
        Piece open = Drawing.of("front")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(220, 0)
                .edge("side", Role.SEAM)
                .line(200, 400)
                .edge("neckline", Role.FINISHED)
                .curve(120, 400, 60, 340, 0, 330)
                .edge("front edge", Role.FINISHED)
                .line(0, 0)
                .notch("hem", 50)
                .grain(100, 40, 100, 300)
                .piece();
        Reworked faced = Facings.cutInOne(open, "front edge", 60);
        assertThat(Lengths.base(faced.piece(), "hem")).isCloseTo(280, within(1e-9));
        assertThat(faced.piece().notches()).extracting(Notch::arc).containsExactly(110.0);
        TurnUp hemmed = Hems.turnUp(faced.piece(), "hem", 40, GIVE);
        assertThat(Lengths.base(hemmed.piece(), "outer edge of front edge"))
                .isCloseTo(lower(faced.piece()) + 40, within(1e-6));
        assertThat(Paper.edge(hemmed.piece(), "free edge of hem").length()).isCloseTo(280 - 2, within(1e-9));
        Piece back = Panels.undo(new Reworked(hemmed.piece(), faced.ledger().then(hemmed.ledger())));
        assertThat(back.sameCloth(open, 1e-9)).isTrue();
    }

    /** How long the free edge is before the hem goes on. */
    private static double lower(Piece piece) {
        return Lengths.base(piece, "outer edge of front edge");
    }

    /** On any smooth hem the raw edge that was drawn is as long as the stretches say, and lies at the depth. */
    @ParameterizedTest
    @MethodSource("seeds")
    void aCurvedHemIsToldStretchByStretch(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Piece wavy = wavy(random.nextDouble(-60, 60), random.nextDouble(-60, 60));
        double depth = random.nextDouble(8, 25);
        List<HemPart> parts = Hems.parts(wavy, "hem", depth);
        CurvePath hem = Paper.edge(wavy, "hem");
        double outside = parallels(hem, -depth);
        double inside = parallels(hem, depth);
        assertThat(parts.stream().mapToDouble(HemPart::raw).sum())
                .as("seed %d", seed)
                .isCloseTo(outside, within(1e-5));
        assertThat(parts.stream().mapToDouble(HemPart::sewnTo).sum()).isCloseTo(inside, within(1e-5));
        for (HemPart part : parts) {
            CurvePath stretch = hem.between(part.from(), part.to());
            assertThat(stretch.curves()).allSatisfy(curve -> {
                for (int i = 1; i < 20; i++) {
                    assertThat(curve.curvature(i / 20.0) * Math.signum(part.turning()))
                            .as("seed %d: one way", seed)
                            .isGreaterThan(-1e-9);
                }
            });
        }
        TurnUp made = Hems.turnUp(wavy, "hem", depth, new Give(0.9, 0.9));
        CurvePath raw = Paper.edge(made.piece(), "free edge of hem");
        for (int i = 3; i <= 27; i++) {
            assertThat(Nearest.of(hem, raw.pointAt(raw.length() * i / 30)).distance())
                    .as("seed %d", seed)
                    .isCloseTo(depth, within(1e-5));
        }
        assertThat(Flat.polygon(Paper.outline(made.piece())).isValid()).isTrue();
        assertThat(made.toEase() - made.toStretch())
                .as("the net, which nobody may judge by")
                .isCloseTo(outside - inside, within(1e-5));
    }

    private static double parallels(CurvePath path, double left) {
        return path.curves().stream()
                .mapToDouble(curve -> Parallel.of(curve, left, 1e-6).length())
                .sum();
    }

    /** A hem of two cubics, tangent to one another and level at both ends. */
    private static Piece wavy(double one, double other) {
        return Drawing.of("wavy")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .curve(70, 0, 110, one, 180, one)
                .curve(250, one, 300, other, 360, other)
                .edge("side", Role.SEAM)
                .line(350, 500)
                .edge("waist", Role.SEAM)
                .line(10, 500)
                .edge("other side", Role.SEAM)
                .line(0, 0)
                .piece();
    }

    /** As much up as down: the net turning is nothing, and still there is as much to ease in one place as to stretch in another. */
    @Test
    void aNetOfNothingIsNotFlat() {
        Piece wavy = wavy(-50, 0);
        TurnUp made = Hems.turnUp(wavy, "hem", 20, new Give(0.5, 0.5));
        assertThat(made.toEase()).isCloseTo(made.toStretch(), within(1e-9)).isGreaterThan(10);
        assertThat(made.parts()).extracting(part -> Math.signum(part.turning())).containsExactly(-1.0, 1.0, -1.0);
        assertThatThrownBy(() -> Hems.turnUp(wavy, "hem", 20, new Give(0.5, 0.01)))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("the hollow stretch from ")
                .hasMessageContaining("mm too short")
                .hasMessageContaining("draft a shaped facing");
    }

    /** Just what is workable is made, a hair more is refused with that depth. */
    @ParameterizedTest
    @MethodSource("seeds")
    void tooDeepForTheCurveIsRefused(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double angle = random.nextDouble(0.4, 1.4);
        double radius = random.nextDouble(150, 400);
        double length = random.nextDouble(400, 800);
        Piece panel = flared(radius, length, angle);
        double ease = random.nextDouble(0.01, 0.08);
        // By hand: 2 d phi = e (L - d phi) with L = R phi gives d = e R / (2 + e).
        double workable = ease * (radius + length) / (2 + ease);
        TurnUp made = Hems.turnUp(panel, "hem", workable * 0.999, new Give(ease, 0));
        assertThat(made.toEase()).isCloseTo(2 * workable * 0.999 * angle, within(1e-9));
        assertThatThrownBy(() -> Hems.turnUp(panel, "hem", workable * 1.001, new Give(ease, 0)))
                .isInstanceOfSatisfying(DraftingException.class, refused -> {
                    assertThat(refused.reach().orElseThrow().most()).isCloseTo(workable, within(1e-9));
                    assertThat(refused).hasMessageContaining("draft a shaped facing");
                });
        // The turned-up ends lie on the seams: the centre is the fold and goes on, the side is straight and square to
        // the hem.
        assertThat(Lengths.base(made.piece(), "centre")).isCloseTo(length + workable * 0.999, within(1e-6));
        assertThat(Paper.edge(made.piece(), "side turned").length()).isCloseTo(workable * 0.999, within(1e-6));
    }

    /** The remedy: a shaped facing is the hem's own band, for which no fold exists. */
    @Test
    void aShapedFacingIsTheBand() {
        Piece panel = flared(200, 500, 1.2);
        Piece facing = Facings.separate(Facings.alone(panel), "facing", List.of(new Facings.On("panel", "hem")), 60)
                .only();
        assertThat(Lengths.base(facing, "hem")).isCloseTo(700 * 1.2, within(FOLDED));
        assertThat(Lengths.base(facing, "outer edge")).isCloseTo(640 * 1.2, within(1e-5));
        assertThat(facing.area()).isCloseTo(60 * 670 * 1.2, within(1e-2));
        assertThat(Flat.polygon(Paper.outline(panel)).buffer(0.1).contains(Flat.polygon(Paper.outline(facing))))
                .isTrue();
        assertThat(Facings.separate(
                                Facings.alone(skirt(new SplittableRandom(5))),
                                "facing",
                                List.of(new Facings.On("skirt", "hem")),
                                60)
                        .only()
                        .edges())
                .extracting(edge -> edge.name())
                .containsExactly("hem", "side seam", "outer edge", "centre");
    }

    @Test
    void itIsTold() {
        TurnUp made = Hems.turnUp(flared(200, 700, 1.3), "hem", 15, GIVE);
        assertThat(made.ledger().sentences(Steps.DEFAULT))
                .containsExactly(
                        "Draw the piece on beyond 'hem', and mark where that was as the line 'hem line'; the hem is turned on it.",
                        "From 0 in (0.0 cm) to 46 1/8 in (117.0 cm) along, the hem is convex and turns by 74.5°: the raw edge is"
                                + " 1 1/2 in (3.9 cm) too long; ease it in.");
        assertThat(new HemPart(0, 100, -0.2, 20).sentence(Steps.DEFAULT))
                .contains("is hollow")
                .endsWith("3/8 in (0.8 cm) too short; stretch or clip it.");
        // 2 x 12 mm x 0.02 are 0.48 mm, 2 x 12 mm x 0.022 are 0.53 mm.
        assertThat(new HemPart(0, 100, -0.02, 12).sentence(Steps.DEFAULT))
                .endsWith(
                        "the hem turns by 1.1° only: the turn-up lies flat, its raw edge off by less than half a millimetre.")
                .doesNotContain("hollow");
        assertThat(new HemPart(0, 100, -0.022, 12).sentence(Steps.DEFAULT)).endsWith("too short; stretch or clip it.");
        assertThat(new HemPart(0, 100, 0, 20).sentence(Steps.DEFAULT)).endsWith("is straight: the turn-up lies flat.");
    }

    @Test
    void impossibleHemsAreRefused() {
        Piece skirt = skirt(new SplittableRandom(2));
        for (double depth : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> Hems.turnUp(skirt, "hem", depth, GIVE))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("A hem is turned up by more than 0 mm: " + depth + " mm.");
        }
        for (double share : new double[] {-0.1, 1, Double.NaN}) {
            assertThatThrownBy(() -> new Give(share, 0)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> new Give(0, share)).isInstanceOf(IllegalArgumentException.class);
        }
        assertThatThrownBy(() -> Hems.turnUp(skirt, "hem", 700, GIVE))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("it would be deeper than 'skirt' at");
        Piece cornered = Drawing.of("scallop")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .curve(50, -30, 100, -30, 150, 0)
                .curve(200, -30, 250, -30, 300, 0)
                .edge("side", Role.SEAM)
                .line(300, 400)
                .edge("waist", Role.SEAM)
                .line(0, 400)
                .edge("other side", Role.SEAM)
                .line(0, 0)
                .piece();
        assertThatThrownBy(() -> Hems.turnUp(cornered, "hem", 20, GIVE))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("it has a corner");
        Piece slanted = Drawing.of("skirt")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(250, 30)
                .edge("side", Role.SEAM)
                .line(250, 600)
                .edge("waist", Role.SEAM)
                .line(0, 600)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .piece();
        assertThatThrownBy(() -> Hems.turnUp(slanted, "hem", 40, GIVE))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("folded back, it would not lie on the fold 'centre'; square the corner first");
    }
}
