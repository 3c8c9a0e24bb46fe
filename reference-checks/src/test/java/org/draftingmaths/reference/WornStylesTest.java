package org.draftingmaths.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.block.TorsoBlock;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Meet;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.curve.Nearest;
import org.draftingmaths.exchange.Style;
import org.draftingmaths.finish.CutLine;
import org.draftingmaths.finish.FinalPattern;
import org.draftingmaths.finish.Snip;
import org.draftingmaths.lessons.styles.PottersApron;
import org.draftingmaths.lessons.styles.ReadersBlouse;
import org.draftingmaths.measure.Ease;
import org.draftingmaths.measure.Measure;
import org.draftingmaths.measure.Measurements;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.seam.Walk;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Whether the apron and the blouse can be sewn and worn: what holds what, in every women's size of two published charts. */
class WornStylesTest {

    private static final String SIZES = "org.draftingmaths.reference.TorsoBlockSizesTest#sizes";

    /** How high the bib of the apron is drawn above the waist, and where its straps lie, in mm. */
    private static final double BIB = 260;

    private static final double FROM_NECK = 40;
    private static final double FROM_CENTRE_BACK = 40;

    static Stream<Arguments> styles() throws java.io.IOException {
        List<Named<Function<Measurements, Style>>> styles =
                List.of(Named.of("blouse", ReadersBlouse::draft), Named.of("apron", PottersApron::draft));
        return TorsoBlockSizesTest.sizes().flatMap(body -> styles.stream().map(style -> Arguments.of(style, body)));
    }

    // ------------------------------------------------------------------------------------------------ both

    /** An edge that is to be sewn is sewn to something, and the image of one on the other half as well. */
    @ParameterizedTest
    @MethodSource("styles")
    void everySeamEdgeIsSewn(Function<Measurements, Style> make, Measurements body) {
        Draft draft = make.apply(body).draft();
        for (Piece piece : draft.pieces()) {
            piece.edges().stream()
                    .filter(edge -> edge.role() == Role.SEAM)
                    .forEach(edge -> assertThat(draft.seams().stream()
                                    .flatMap(seam -> Stream.of(seam.first(), seam.second()))
                                    .flatMap(mate -> mate.parts().stream())
                                    .anyMatch(part -> part.piece().equals(piece.name())
                                            && part.edge().equals(edge.name())))
                            .as("'%s' of '%s'", edge.name(), piece.name())
                            .isTrue());
        }
    }

    // ------------------------------------------------------------------------------------------------ apron

    /**
     * The strap starts where its seat is and ends at the back waist: on the block as it is drafted, from the middle of the seat, at the bib's height
     * above the waist, to the shoulder 40 mm from the neck point, and from there to the waist 40 mm from the centre back.
     */
    @ParameterizedTest
    @MethodSource(SIZES)
    void theStrapIsAsLongAsItsWay(Measurements body) {
        Draft apron = PottersApron.draft(body).draft();
        CurvePath seat = Paper.edge(apron.piece("apron"), "strap seat");
        Vector2D middle = seat.start().lerp(seat.end(), 0.5);
        double waist = Paper.edge(apron.piece("apron"), "tie seat").end().getY();
        assertThat(middle.getY() - waist).isCloseTo(BIB, within(1e-9));
        Draft block = TorsoBlock.bodice(body, Ease.CLOSE_FITTING).draft();
        // The waist is drawn in a curve, so that it runs smooth when the dart is closed.
        Vector2D atWaist = Paper.edge(block.piece("back"), "waist").pointAt(FROM_CENTRE_BACK);
        double way = Vector2D.of(middle.getX(), BIB).distance(onShoulder(block.piece("front")))
                + onShoulder(block.piece("back")).distance(atWaist);
        Piece strap = apron.piece("strap");
        double stitched = (Lengths.base(strap, "left side") + Lengths.base(strap, "right side")) / 2;
        assertThat(stitched).isCloseTo(way, within(1e-6));
        // By the tape: over the front and down the back, less the bib. The tape starts at the neck point, 4 cm inside.
        double tape = body.length(Measure.FRONT_WAIST_LENGTH).mm()
                + body.length(Measure.BACK_WAIST_LENGTH).mm()
                - BIB;
        assertThat(stitched).isBetween(tape - 30, tape + 10);
    }

    /** The shoulder is drawn from the arm to the neck; its dart is farther from the neck than the strap. */
    private static Vector2D onShoulder(Piece piece) {
        CurvePath shoulder = Paper.edge(piece, "shoulder");
        Vector2D neck = shoulder.end();
        return neck.subtract(shoulder.endTangent().multiply(FROM_NECK));
    }

    /** Each end of the strap is as wide as what it is sewn into. */
    @ParameterizedTest
    @MethodSource(SIZES)
    void theStrapFitsItsSeats(Measurements body) {
        Draft apron = PottersApron.draft(body).draft();
        assertThat(Lengths.base(apron.piece("apron"), "strap seat"))
                .isCloseTo(Lengths.base(apron.piece("strap"), "first end"), within(1e-9));
        Seam back = seam(apron, "strap at the back");
        assertThat(back.second().words()).contains("'top' of 'back band'");
        assertThat(Lengths.base(apron.piece("back band"), "centre back")).isCloseTo(90, within(1e-9));
        assertThat(walk(apron, "strap at the back").difference()).isCloseTo(0, within(1e-9));
    }

    private static final Pattern CUT = Pattern.compile("'strap': .* and cut [^(]*\\(([0-9.]+) cm\\)");

    /** The cut strap is as long as the sheet says, and 10 mm are outside every edge but the hems and the neatened one. */
    @ParameterizedTest
    @MethodSource(SIZES)
    void thePrintedStrapIsAsLongAsTold(Measurements body) {
        Style style = PottersApron.draft(body);
        Matcher told = CUT.matcher(style.markdown(Steps.DEFAULT));
        assertThat(told.find()).isTrue();
        CutLine cut = pattern(style, "strap").cut();
        CurvePath along = CurvePath.polyline(Vector2D.of(0, -100), Vector2D.of(0, 2000));
        List<Double> ends = Meets.of(along, cut.outline()).points().stream()
                .map(Meet::onFirst)
                .sorted()
                .toList();
        assertThat(ends.get(1) - ends.get(0)).isCloseTo(10 * Double.parseDouble(told.group(1)), within(0.5));
        assertThat(cut.sides()).allSatisfy(side -> assertThat(side.width()).isEqualTo(10));
    }

    /** Nothing steps where the hem folds, and the facing ends with the allowance of what it lies on. */
    @ParameterizedTest
    @MethodSource(SIZES)
    void theApronsSidesRunStraight(Measurements body) {
        Style style = PottersApron.draft(body);
        FinalPattern apron = pattern(style, "apron");
        double side = Paper.edge(apron.piece(), "tie seat").end().getX();
        for (String edge : List.of("side", "tie seat")) {
            assertThat(apron.cut().side(edge).path().bounds().getMin().getX()).isCloseTo(side + 20, within(1e-6));
            assertThat(apron.cut().side(edge).path().bounds().getMax().getX()).isCloseTo(side + 20, within(1e-6));
        }
        assertThat(apron.piece().edges()).noneMatch(edge -> edge.name().endsWith(" turned"));
        FinalPattern facing = pattern(style, "bib facing");
        assertThat(facing.cut().side("outer edge").width()).isZero();
        assertThat(facing.cut().side("tie seat").width())
                .isEqualTo(apron.cut().side("tie seat").width());
    }

    /** The tie reaches across the back to the other side and to the centre front, and 35 cm remain; folded it goes into the band. */
    @ParameterizedTest
    @MethodSource(SIZES)
    void theTieReachesTheFront(Measurements body) {
        Draft apron = PottersApron.draft(body).draft();
        double wide = Paper.edge(apron.piece("apron"), "tie seat").end().getX();
        double across = body.length(Measure.WAIST).mm() - 2 * wide;
        assertThat(Lengths.base(apron.piece("tie"), "one side")).isCloseTo(across + wide + 350, within(1e-6));
        assertThat(Lengths.base(apron.piece("tie"), "end") / 2)
                .isLessThan(Lengths.base(apron.piece("back band"), "end") / 2 - 10);
    }

    /** The lines for the pocket are as long as its folded edges. */
    @ParameterizedTest
    @MethodSource(SIZES)
    void thePocketsLinesFit(Measurements body) {
        Draft apron = PottersApron.draft(body).draft();
        Piece pocket = apron.piece("pocket");
        assertThat(2 * level(apron.piece("apron"), "pocket bottom"))
                .isCloseTo(Lengths.base(pocket, "bottom"), within(1e-9));
        assertThat(level(apron.piece("apron"), "pocket side"))
                .isCloseTo(Lengths.base(pocket, "left") - 30, within(1e-9));
    }

    // ------------------------------------------------------------------------------------------------ blouse

    /** The facing of the cowl is deep at the centre, and at the shoulder as deep as the facing of the back neck that it is sewn to. */
    @ParameterizedTest
    @MethodSource(SIZES)
    void theCowlsFacingJoinsTheBacks(Measurements body) {
        Draft blouse = ReadersBlouse.draft(body).draft();
        Piece front = blouse.piece("front");
        double top = Paper.outline(front).bounds().getMax().getY();
        double fold = Paper.edge(front, "shoulder").end().getY();
        assertThat(top - fold).isBetween(80.0, 120.0);
        Piece facing = blouse.piece("back neck facing");
        for (String half : List.of("", "mirrored ")) {
            Seam seam = seam(blouse, half + "neck facing at the shoulder");
            assertThat(seam.first().words()).isEqualTo("'" + half + "shoulder turned' of 'front'");
            assertThat(seam.second().words()).isEqualTo("'" + half + "shoulder' of 'back neck facing'");
            assertThat(Lengths.base(front, half + "shoulder turned"))
                    .isCloseTo(Lengths.base(facing, half + "shoulder"), within(1e-6));
            // Both are sewn from the neck point outwards.
            assertThat(Paper.edge(front, half + "shoulder turned")
                            .start()
                            .distance(Paper.edge(front, half + "shoulder").end()))
                    .isLessThan(1e-9);
            assertThat(Paper.edge(facing, half + "shoulder")
                            .end()
                            .distance(Paper.edge(facing, half + "neckline").start()))
                    .isLessThan(1e-9);
        }
    }

    /** Facings of neck and arm leave 10 mm of the shoulder between them. */
    @ParameterizedTest
    @MethodSource(SIZES)
    void theFacingsDoNotLieOnEachOther(Measurements body) {
        Draft blouse = ReadersBlouse.draft(body).draft();
        double both = Lengths.base(blouse.piece("back neck facing"), "shoulder")
                + Lengths.base(blouse.piece("back arm facing"), "shoulder");
        assertThat(both).isLessThan(Lengths.folded(blouse.piece("back"), "shoulder") - 9);
        assertThat(both).isGreaterThan(55);
    }

    /** What is sewn on the one half is sewn on the other, as long. */
    @ParameterizedTest
    @MethodSource(SIZES)
    void bothHalvesAreSewn(Measurements body) {
        Draft blouse = ReadersBlouse.draft(body).draft();
        for (String name : List.of("shoulder", "side", "front arm", "back arm", "back neck")) {
            assertThat(walk(blouse, "mirrored " + name).intervals())
                    .as(name)
                    .hasSameSizeAs(walk(blouse, name).intervals());
            assertThat(length(walk(blouse, "mirrored " + name)))
                    .as(name)
                    .isCloseTo(length(walk(blouse, name)), within(1e-9));
        }
    }

    /** 25 mm for what moves on the bias; a hem's end is marked at the side seams and nowhere else. */
    @ParameterizedTest
    @MethodSource(SIZES)
    void thereIsClothToMarkAnew(Measurements body) {
        Style style = ReadersBlouse.draft(body);
        for (String piece : List.of("front", "back")) {
            FinalPattern pattern = pattern(style, piece);
            for (String edge : List.of("side seam", "mirrored side seam", "hem", "mirrored hem")) {
                assertThat(pattern.cut().side(edge).width()).as(edge).isEqualTo(25);
            }
            List<Snip> turns = pattern.snips().stream()
                    .filter(snip -> snip.kind() == Snip.Kind.HEM_TURN)
                    .toList();
            assertThat(turns).hasSize(2).allSatisfy(snip -> {
                assertThat(snip.stitch().distance(snip.cut())).isLessThan(40);
                assertThat(Stream.of("side seam", "mirrored side seam")
                                .mapToDouble(side -> Nearest.of(Paper.edge(pattern.piece(), side), snip.stitch())
                                        .distance())
                                .min()
                                .orElseThrow())
                        .isLessThan(1e-6);
            });
        }
        assertThat(style.markdown(Steps.DEFAULT))
                .contains("the paper is unchanged by it")
                .contains("tack it at the seams, and let it hang from there")
                .contains("'front', piece 1 of 5: cut 1, single layer, face up, self.")
                .doesNotContain("No seam of the draft takes");
    }

    // ------------------------------------------------------------------------------------------------ helpers

    private static double level(Piece piece, String name) {
        return piece.panels().stream()
                .flatMap(panel -> panel.lines().stream())
                .filter(line -> line.line().equals(name))
                .mapToDouble(line -> piece.place(line).length())
                .sum();
    }

    private static Seam seam(Draft draft, String name) {
        return draft.seams().stream()
                .filter(seam -> seam.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Walk walk(Draft draft, String name) {
        return Walk.all(draft).stream()
                .filter(walk -> walk.seam().name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static double length(Walk walk) {
        return walk.intervals().stream().mapToDouble(Walk.Interval::first).sum();
    }

    private static FinalPattern pattern(Style style, String piece) {
        return style.patterns().stream()
                .filter(pattern -> pattern.piece().name().equals(piece))
                .findFirst()
                .orElseThrow();
    }
}
