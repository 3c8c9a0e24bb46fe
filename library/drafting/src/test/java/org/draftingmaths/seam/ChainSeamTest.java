package org.draftingmaths.seam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.draftingmaths.check.Checks;
import org.draftingmaths.dart.Darts;
import org.draftingmaths.finish.Allowances;
import org.draftingmaths.fullness.Godets;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.piece.Beside;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.piece.Use;
import org.draftingmaths.unit.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Seams whose sides are chains of edges and parts of edges: godets, waistbands, facings and panels. */
class ChainSeamTest {

    private static final double EXACT = 1e-9;

    static Stream<Long> seeds() {
        return LongStream.range(0, 100).boxed();
    }

    // ------------------------------------------------------------------------------------------------ material

    /** Half a skirt, its waist running from the centre (x = 0) to the side with one dart 20 mm wide in it. */
    private static Piece half(String name, String centre, double beforeDart, double afterDart) {
        double end = beforeDart + 20 + afterDart;
        return Drawing.of(name)
                .from(end, 0)
                .edge("side seam", Role.SEAM)
                .line(end, 600)
                .edge("hem", Role.HEM)
                .line(0, 600)
                .edge(centre, Role.FOLD)
                .line(0, 0)
                .edge("waist", Role.SEAM)
                .line(beforeDart, 0)
                .dart("dart", beforeDart + 10, 130, beforeDart + 20, 0, 0, Leg.BEFORE)
                .line(end, 0)
                .piece();
    }

    private static Piece front() {
        return half("front", "centre front", 70, 100);
    }

    private static Piece back() {
        return half("back", "centre back", 60, 120);
    }

    /** A straight band whose lower edge runs from one end to the other. */
    private static Piece band(double length, double... notches) {
        Piece band = Drawing.of("waistband")
                .from(0, 0)
                .edge("lower", Role.SEAM)
                .line(length, 0)
                .edge("end", Role.SEAM)
                .line(length, 40)
                .edge("upper", Role.SEAM)
                .line(0, 40)
                .edge("other end", Role.SEAM)
                .line(0, 0)
                .piece();
        for (double notch : notches) {
            band = band.notched(new Notch("lower", notch, Beside.BEFORE));
        }
        return band;
    }

    /** From the centre front over the side to the centre back. */
    private static Seam.Mate halfWaist() {
        return Seam.Mate.of("front", "waist").then(Seam.Mate.backwards("back", "waist"));
    }

    private static Seam waist() {
        return Seam.flat(
                "waist",
                Seam.Mate.of("waistband", "lower"),
                halfWaist().then(halfWaist().reversed().mirrored()));
    }

    private static Draft skirt(Piece band, Seam... seams) {
        return new Draft("skirt", List.of(front(), back(), band), List.of(seams));
    }

    private static List<Double> differences(Walk walk) {
        return walk.intervals().stream().map(Walk.Interval::difference).toList();
    }

    private static Seam.Mate eitherWay(String piece, SplittableRandom random) {
        return random.nextBoolean() ? Seam.Mate.of(piece, "seam") : Seam.Mate.backwards(piece, "seam");
    }

    private static void assertClose(List<Double> got, double... wanted) {
        assertThat(got).hasSize(wanted.length);
        for (int i = 0; i < wanted.length; i++) {
            assertThat(got.get(i)).as("number %d of %s", i + 1, got).isCloseTo(wanted[i], within(EXACT));
        }
    }

    /** What a walk along a seam can find. */
    private static final Set<Finding.Kind> OF_SEAMS = EnumSet.of(
            Finding.Kind.SEAM_LENGTHS_DIFFER,
            Finding.Kind.NOTCHES_UNPARTNERED,
            Finding.Kind.EASE_NOWHERE,
            Finding.Kind.FULLNESS_UNBOUNDED);

    /** What is found of the seams themselves; the waists are straight over open darts, and the panels of the yoke slant. */
    private static List<Finding> found(Draft draft, double tolerance) {
        return Checks.all(draft, tolerance).stream()
                .filter(finding -> OF_SEAMS.contains(finding.kind()))
                .toList();
    }

    // ------------------------------------------------------------------------------------------------ a waistband

    /** Closed waist by hand: front 70 + 100, back 60 + 120, all twice, is 700. It is marked at the sides and the centre back. */
    @Test
    void aWaistbandMeetsTheWaistWithItsDartsClosed() {
        Walk walk = Walk.of(skirt(band(700, 170, 350, 530), waist()), waist());
        assertThat(walk.partnered()).isTrue();
        assertClose(walk.intervals().stream().map(Walk.Interval::second).toList(), 170, 180, 180, 170);
        assertClose(differences(walk), 0, 0, 0, 0);
        assertThat(found(skirt(band(700, 170, 350, 530), waist()), 0.5)).isEmpty();
    }

    @Test
    void aNotchAwayFromItsSideSeamIsFoundOnBothSidesOfIt() {
        assertThat(found(skirt(band(700, 170, 350, 534), waist()), 0.5))
                .extracting(Finding::where, finding -> Math.rint(finding.excess()))
                .containsExactly(
                        tuple(
                                "seam 'waist', 'lower' of 'waistband' on 'waist' of 'back' (mirrored), notch interval 3 of 4",
                                4.0),
                        tuple(
                                "seam 'waist', 'lower' of 'waistband' on 'waist' of 'front' (mirrored), notch interval 4 of 4",
                                -4.0));
    }

    /** The back is 4 mm too wide: only the back's intervals say so. */
    @Test
    void aPanelTooWideIsFoundWhereItIs() {
        Piece wide = half("back", "centre back", 60, 124);
        Draft draft = skirt(band(700, 170, 350, 530), waist()).with(wide);
        assertClose(differences(Walk.of(draft, waist())), 0, -4, -4, 0);
        Seam half = Seam.flat("waist", Seam.Mate.of("waistband", "lower"), halfWaist());
        assertThat(found(new Draft("half", List.of(front(), wide, band(350, 170)), List.of(half)), 0.5))
                .extracting(Finding::where)
                .containsExactly("seam 'waist', 'lower' of 'waistband' on 'waist' of 'back', notch interval 2 of 2");
    }

    /** A single mark at the centre back meets the middle one of three joints; those at the sides meet nothing and matter not. */
    @Test
    void aJointThatMeetsNothingIsNoMatchPoint() {
        Walk walk = Walk.of(skirt(band(700, 352), waist()), waist());
        assertClose(differences(walk), 2, -2);
    }

    /** Four notches cannot meet three joints. */
    @Test
    void aNotchLeftOverIsFound() {
        Draft draft = skirt(band(700, 100, 170, 350, 530), waist());
        Walk walk = Walk.of(draft, waist());
        assertThat(walk.partnered()).isFalse();
        assertThat(walk.intervals()).hasSize(1);
        assertThat(found(draft, 0.5)).extracting(Finding::kind).containsExactly(Finding.Kind.NOTCHES_UNPARTNERED);
        assertThat(Walk.intervals(draft, waist())).isEmpty();
    }

    /** Darts turned to the hem leave the waist's intervals as they were. */
    @Test
    void pivotingADartOutChangesNoInterval() {
        Draft draft = skirt(band(700, 170, 350, 530), waist());
        List<Walk.Interval> before = Walk.of(draft, waist()).intervals();
        Draft turned = draft.with(Darts.rotate(front(), "dart", Spot.on("hem", 110), "flare")
                        .piece()
                        .using("flare", new Use.Left(Use.Kind.FLARE)))
                .with(Darts.rotateShare(back(), "dart", Spot.on("side seam", 80), "side dart", 0.5)
                        .piece());
        List<Walk.Interval> after = Walk.of(turned, waist()).intervals();
        assertThat(after).hasSize(4);
        for (int i = 0; i < 4; i++) {
            assertThat(after.get(i).second()).isCloseTo(before.get(i).second(), within(EXACT));
        }
    }

    /** Ease is declared by interval, of a chain too. */
    @Test
    void easeIsDeclaredByInterval() {
        Seam eased = new Seam(
                "waist",
                waist().second(),
                waist().first(),
                List.of(new Seam.Held(2, 5, Seam.How.EASE, "over the hip"), new Seam.Held(3, 5, Seam.How.EASE, "")));
        assertThat(found(skirt(band(690, 170, 345, 520), eased), 0.5)).isEmpty();
        Seam nowhere = new Seam(
                "waist", eased.first(), eased.second(), List.of(new Seam.Held(5, 5, Seam.How.EASE, "over the hip")));
        assertThat(found(skirt(band(690, 170, 345, 520), nowhere), 0.5))
                .extracting(Finding::kind, Finding::measured, Finding::expected)
                .containsExactly(tuple(Finding.Kind.EASE_NOWHERE, 5.0, 4.0));
    }

    /** An opening that stays open belongs to the part that begins at it, so that parts sum up to the whole. */
    @Test
    void gathersAtACutAreCountedOnce() {
        Piece gathered = front().using("dart", new Use.Left(Use.Kind.GATHERS));
        Seam.Mate waist = Seam.Mate.of("front", "waist");
        Seam.Mate parts =
                Seam.Mate.of("front", "waist").between(0, 70).then(waist.from(new Notch("waist", 70, Beside.BEFORE)));
        assertClose(
                parts.parts().stream()
                        .map(part -> Lengths.folded(gathered, part))
                        .toList(),
                70,
                120);
        Seam.Mate after = waist.upTo(new Notch("waist", 70, Beside.AFTER));
        assertThat(Lengths.folded(gathered, after.parts().get(0))).isCloseTo(90, within(EXACT));
    }

    // ------------------------------------------------------------------------------------------------ laws

    /** A panel with a curved right edge that runs upwards. */
    private static Piece panel(String name, SplittableRandom random, double height, double[] controls) {
        for (int i = 0; i < controls.length; i++) {
            controls[i] = random.nextDouble(-30, 30);
        }
        return Drawing.of(name)
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(200, 0)
                .edge("seam", Role.SEAM)
                .curve(200 + controls[0], height / 3, 200 + controls[1], 2 * height / 3, 200, height)
                .edge("top", Role.SEAM)
                .line(0, height)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .piece();
    }

    private static Piece notched(Piece piece, double[] shares) {
        Piece notched = piece;
        for (double share : shares) {
            notched =
                    notched.notched(new Notch("seam", share * piece.edge("seam").length(), Beside.BEFORE));
        }
        return notched;
    }

    private static double[] shares(SplittableRandom random) {
        return random.doubles(random.nextInt(1, 6), 0.02, 0.98).sorted().toArray();
    }

    /** Independent of the library: the speed of the cubic, integrated. */
    private static double cubicLength(double height, double[] controls) {
        double a = controls[0];
        double b = controls[1];
        return new IterativeLegendreGaussIntegrator(16, 1e-13, 1e-13)
                .integrate(
                        100_000,
                        t -> Math.hypot(3 * (1 - t) * (1 - t) * a + 6 * (1 - t) * t * (b - a) - 3 * t * t * b, height),
                        0,
                        1);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void splitAtNotchesItWalksTheSame(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] shares = shares(random);
        Piece one = notched(panel("one", random, 400, new double[2]), shares);
        Piece other = notched(panel("other", random, 404, new double[2]), shares);
        Seam.Mate first = Seam.Mate.of("one", "seam");
        Seam.Mate second = Seam.Mate.of("other", "seam");
        Draft draft = new Draft("two", List.of(one, other), List.of());
        List<Walk.Interval> whole =
                Walk.of(draft, Seam.flat("side", first, second)).intervals();
        List<Walk.Interval> split = Walk.of(
                        draft, Seam.flat("side", splitAt(one, first, random), splitAt(other, second, random)))
                .intervals();
        assertSame(split, whole, seed);
        double elsewhere = one.edge("seam").length() * (random.nextBoolean() ? 0.011 : 0.991);
        Seam.Mate anywhere = first.between(0, elsewhere)
                .then(first.between(elsewhere, one.edge("seam").length()));
        assertSame(Walk.of(draft, Seam.flat("side", anywhere, second)).intervals(), whole, seed);
    }

    private static Seam.Mate splitAt(Piece piece, Seam.Mate whole, SplittableRandom random) {
        List<Notch> chosen = new ArrayList<>(piece.notches());
        chosen.removeIf(notch -> random.nextInt(3) == 0);
        Seam.Mate chain = null;
        Notch last = null;
        for (Notch notch : chosen) {
            Seam.Mate part = last == null ? whole.upTo(notch) : whole.between(last, notch);
            chain = chain == null ? part : chain.then(part);
            last = notch;
        }
        return chain == null ? whole : chain.then(whole.from(last));
    }

    private static void assertSame(List<Walk.Interval> got, List<Walk.Interval> wanted, long seed) {
        assertThat(got).as("seed %d", seed).hasSameSizeAs(wanted);
        for (int i = 0; i < wanted.size(); i++) {
            assertThat(got.get(i).first())
                    .as("seed %d, interval %d", seed, i + 1)
                    .isCloseTo(wanted.get(i).first(), within(EXACT));
            assertThat(got.get(i).second())
                    .as("seed %d, interval %d", seed, i + 1)
                    .isCloseTo(wanted.get(i).second(), within(EXACT));
        }
    }

    /** Chains of random edges with random notches, joints meeting notches or not. */
    @ParameterizedTest
    @MethodSource("seeds")
    void sewnFromTheOtherEndTheIntervalsAreReversed(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Piece> pieces = new ArrayList<>();
        Seam.Mate first = chain("one", random, pieces);
        Seam.Mate second = chain("other", random, pieces);
        Draft draft = new Draft("chains", pieces, List.of());
        Walk forwards = Walk.of(draft, Seam.flat("side", first, second));
        Walk backwards = Walk.of(draft, Seam.flat("side", first.reversed(), second.reversed()));
        List<Walk.Interval> turned = new ArrayList<>(backwards.intervals());
        Collections.reverse(turned);
        assertThat(backwards.partnered()).isEqualTo(forwards.partnered());
        assertSame(turned, forwards.intervals(), seed);
        assertThat(first.reversed().reversed()).isEqualTo(first);
    }

    private static Seam.Mate chain(String name, SplittableRandom random, List<Piece> pieces) {
        Seam.Mate chain = null;
        int parts = random.nextInt(1, 4);
        for (int i = 0; i < parts; i++) {
            Piece panel = panel(name + " " + i, random, random.nextDouble(100, 400), new double[2]);
            pieces.add(
                    random.nextBoolean()
                            ? notched(panel, random.doubles(1, 0.1, 0.9).toArray())
                            : panel);
            Seam.Mate part = eitherWay(panel.name(), random);
            chain = chain == null ? part : chain.then(part);
        }
        return chain;
    }

    /** Lengths by Gauss's quadrature of Commons Math. */
    @ParameterizedTest
    @MethodSource("seeds")
    void aChainIsAsLongAsItsParts(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Piece> pieces = new ArrayList<>();
        double expected = 0;
        Seam.Mate chain = null;
        for (int i = 0; i < 3; i++) {
            double height = random.nextDouble(100, 400);
            double[] controls = new double[2];
            pieces.add(panel("panel " + i, random, height, controls));
            expected += cubicLength(height, controls);
            Seam.Mate part = eitherWay("panel " + i, random);
            chain = chain == null ? part : chain.then(part);
        }
        Seam seam = Seam.flat("yoke", Seam.Mate.of("waistband", "lower"), chain);
        pieces.add(band(expected));
        Walk walk = Walk.of(new Draft("yoke", pieces, List.of(seam)), seam);
        assertThat(walk.intervals()).as("a yoke without a notch").hasSize(1);
        assertThat(walk.difference()).as("seed %d", seed).isCloseTo(0, within(1e-6));
        double own = DoubleStream.of(0, 1, 2)
                .map(i -> Lengths.folded(pieces.get((int) i), "seam"))
                .sum();
        assertThat(walk.intervals().get(0).second()).isCloseTo(own, within(EXACT));
    }

    /** Two joints meet where they lie at one place, and not where they were kept apart. */
    @Test
    void jointsMeetJointsAtTheSamePlace() {
        assertClose(differences(Walk.of(yoke(204), yokeSeam())), 4, -4);
        assertClose(differences(Walk.of(yoke(230), yokeSeam())), 0);
    }

    private static Seam yokeSeam() {
        return Seam.flat(
                "yoke",
                Seam.Mate.of("left yoke", "lower").then(Seam.Mate.of("right yoke", "lower")),
                Seam.Mate.of("left panel", "lower").then(Seam.Mate.of("right panel", "lower")));
    }

    private static Draft yoke(double joint) {
        return new Draft(
                "yoke",
                List.of(
                        band(joint).named("left yoke"),
                        band(500 - joint).named("right yoke"),
                        band(200).named("left panel"),
                        band(300).named("right panel")),
                List.of(yokeSeam()));
    }

    // ------------------------------------------------------------------------------------------------ a godet, a strap

    /** The sides of the godet equal the slit, here the lower 220 mm of a seam of 600. */
    @Test
    void aGodetIsSetIntoTheLowerPartOfASeam() {
        Piece godet = Godets.forSeam("godet", 220, 180).draft().piece("godet");
        Seam.Mate front = Seam.Mate.of("front", "side seam");
        Seam.Mate back = Seam.Mate.of("back", "side seam");
        Draft draft = new Draft(
                "skirt",
                List.of(front(), back(), godet),
                List.of(
                        Seam.flat("side", front.between(0, 380), back.between(0, 380)),
                        Seam.flat("front of godet", Seam.Mate.of("godet", "side"), front.between(380, 600)),
                        Seam.flat(
                                "back of godet", Seam.Mate.backwards("godet", "other side"), back.between(380, 600))));
        assertThat(found(draft, 1e-6)).isEmpty();
        Draft high = new Draft(
                "skirt",
                draft.pieces(),
                List.of(Seam.flat("front of godet", Seam.Mate.of("godet", "side"), front.between(376, 600))));
        assertThat(found(high, 0.5))
                .extracting(Finding::where)
                .containsExactly(
                        "seam 'front of godet', 'side' of 'godet' on 'side seam' of 'front' from 14 3/4 in (37.6 cm) to 23 5/8 in (60.0 cm)");
    }

    /** A neckline of a quarter circle of 100 mm, 50 pi mm long, a facing on all of it and a strap's end of 12 mm caught between. */
    @Test
    void aStrapEndIsCaughtBetweenNecklineAndFacing() {
        Piece front = Drawing.of("front")
                .from(0, 0)
                .edge("centre", Role.FOLD)
                .line(0, 100)
                .edge("neckline", Role.SEAM)
                .arc(100 * Math.sqrt(0.5), 200 - 100 * Math.sqrt(0.5), 100, 200)
                .edge("side", Role.SEAM)
                .line(100, 0)
                .edge("hem", Role.HEM)
                .line(0, 0)
                .piece();
        assertThat(front.edge("neckline").length()).isCloseTo(50 * Math.PI, within(EXACT));
        Notch from = new Notch("neckline", 80, Beside.BEFORE);
        Notch to = new Notch("neckline", 92, Beside.BEFORE);
        Piece marked = front.notched(from).notched(to);
        Piece facing = marked.named("facing");
        Piece strap = band(12).named("strap");
        Seam faced = Seam.flat("neck", Seam.Mate.of("front", "neckline"), Seam.Mate.of("facing", "neckline"));
        Seam end = Seam.flat(
                "strap",
                Seam.Mate.of("strap", "lower"),
                Seam.Mate.of("front", "neckline").between(from, to));
        List<Piece> pieces = List.of(marked, facing, strap);
        Draft draft = new Draft("top", pieces, List.of(faced, end.caughtIn()));
        assertThat(found(draft, 1e-6)).isEmpty();
        assertThatThrownBy(() -> new Draft("top", pieces, List.of(faced, end)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "Seams 'neck' and 'strap' both sew 'neckline' of 'front' from 3 1/8 in (8.0 cm) to 3 5/8 in (9.2 cm); if one of them is"
                                + " caught in with the other, as a facing over a collar, say so of it.");
        Seam wide = Seam.flat(
                "strap",
                Seam.Mate.of("strap", "lower"),
                Seam.Mate.of("front", "neckline").between(80, 88));
        assertThat(found(new Draft("top", pieces, List.of(faced, wide.caughtIn())), 0.5))
                .extracting(Finding::excess)
                .containsExactly(4.0);
    }

    // ------------------------------------------------------------------------------------------------ refusals

    @Test
    void whatIsNotThereIsRefused() {
        Seam.Mate waist = Seam.Mate.of("front", "waist");
        refused(Seam.flat("x", waist.then(Seam.Mate.of("front", "lid")), waist.mirrored()), "lid");
        refused(
                Seam.flat("x", waist.between(100, 171), Seam.Mate.of("back", "waist")),
                "Seam 'x' takes 'waist' of 'front' from 3 7/8 in (10.0 cm) to 6 3/4 in (17.1 cm), but 'waist' is 6 3/4 in (17.0 cm) long.");
        refused(Seam.flat("x", waist.then(waist), Seam.Mate.of("back", "waist")), "Seam 'x' sews the same cloth twice");
        refused(
                Seam.flat("x", waist.between(0, 90), waist.between(80, 170)),
                "Seam 'x' sews the same cloth twice: 'waist' of 'front' from 0 in (0.0 cm) to 3 1/2 in (9.0 cm), and 'waist' of 'front' from"
                        + " 3 1/8 in (8.0 cm) to 6 3/4 in (17.0 cm); say which of them is on the mirrored half.");
        assertThatThrownBy(() -> waist.between(90, 90))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("stops behind where it begins");
        assertThatThrownBy(() -> waist.between(-1, 90)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> waist.then(waist).between(0, 90)).hasMessageContaining("not of a chain");
        assertThatThrownBy(() -> waist.upTo(new Notch("hem", 3, Beside.BEFORE))).hasMessageContaining("on 'hem'");
        assertThatThrownBy(() -> new Seam.Mate(List.of())).isInstanceOf(IllegalArgumentException.class);
        Seam centre = Seam.flat(
                "x",
                Seam.Mate.of("front", "centre front"),
                Seam.Mate.of("front", "centre front").mirrored());
        assertThat(skirt(band(10), centre).seams()).containsExactly(centre);
    }

    private static void refused(Seam seam, String said) {
        assertThatThrownBy(() -> skirt(band(10), seam))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(said);
    }

    /** What redraws one edge does not guess which edge of a chain is meant. */
    @Test
    void operationsOnOneEdgeRefuseAChain() {
        Draft draft = skirt(band(700, 170, 350, 530), waist());
        assertThatThrownBy(() -> Truing.moveEnd(draft, waist(), waist().second(), Seam.End.STOP, 5))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("one whole edge of a piece");
    }

    /** A seam that ends at a notch goes with it when the edge is redrawn; one that ends where no notch is cannot. */
    @Test
    void aRedrawnEdgeCarriesItsPlaces() {
        Piece side = band(306, 106).named("side");
        Piece mate = band(300, 100).named("mate");
        Seam whole = Seam.flat("side", Seam.Mate.of("side", "lower"), Seam.Mate.of("mate", "lower"));
        Seam part = Seam.flat(
                        "pocket",
                        Seam.Mate.of("side", "lower").upTo(side.notches().get(0)),
                        Seam.Mate.of("bag", "lower"))
                .caughtIn();
        Draft draft = new Draft("skirt", List.of(side, mate, band(100).named("bag")), List.of(whole, part));
        Piece trued =
                Truing.moveEnd(draft, whole, whole.first(), Seam.End.START, 10).piece();
        Draft mended = draft.with(trued);
        assertThat(mended.seams()
                        .get(1)
                        .first()
                        .parts()
                        .get(0)
                        .to()
                        .orElseThrow()
                        .arc())
                .isCloseTo(100, within(EXACT));
        assertThat(found(mended, 1e-6)).isEmpty();
        Seam loose = Seam.flat("pocket", Seam.Mate.of("side", "lower").between(0, 90), Seam.Mate.of("bag", "lower"))
                .caughtIn();
        Draft unmarked = new Draft("skirt", draft.pieces(), List.of(whole, loose));
        assertThatThrownBy(() -> unmarked.with(trued))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining(
                        "'lower' was redrawn, and seam 'pocket' ends on it at 90.0 mm, where there is no notch");
    }

    // ------------------------------------------------------------------------------------------------ ends, allowances

    /** The angles at the end of a chain are those of the piece where it ends: here square on square, and 10 degrees off it. */
    @Test
    void aChainIsBlendedAtItsRealEnds() {
        Seam half = Seam.flat("waist", Seam.Mate.of("waistband", "lower"), halfWaist());
        Draft draft = new Draft("half", List.of(front(), back(), band(350, 170)), List.of(half));
        assertThat(Truing.blend(draft, half, Seam.End.START, "other end", "centre front")
                        .turn())
                .isCloseTo(0, within(EXACT));
        assertThat(Truing.blend(draft, half, Seam.End.STOP, "end", "centre back")
                        .turn())
                .isCloseTo(0, within(EXACT));
        assertThatThrownBy(() -> Truing.blend(draft, half, Seam.End.STOP, "end", "centre front"))
                .isInstanceOf(IllegalArgumentException.class);
        Seam partway =
                Seam.flat("waist", half.first(), Seam.Mate.of("front", "waist").between(0, 120));
        Draft short_ = new Draft("half", draft.pieces(), List.of(partway));
        assertThatThrownBy(() -> Truing.blend(short_, partway, Seam.End.STOP, "end", "side seam"))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("ends partway along 'waist' of 'front'");
    }

    /** Each part of a chain is compared with what it is sewn to, and with nothing else. */
    @Test
    void allowancesAreComparedPartByPart() {
        Allowances ten = Allowances.of(Length.mm(10));
        Allowances twenty = Allowances.of(Length.mm(20));
        Map<String, Allowances> alike =
                Map.of("left yoke", ten, "left panel", ten, "right yoke", twenty, "right panel", twenty);
        assertThat(Allowances.mates(yoke(204), alike, Set.of(), 0.1)).isEmpty();
        Map<String, Allowances> unlike =
                Map.of("left yoke", ten, "left panel", ten, "right yoke", ten, "right panel", twenty);
        assertThat(Allowances.mates(yoke(204), unlike, Set.of(), 0.1))
                .extracting(Finding::where)
                .containsExactly("seam 'yoke', 'lower' of 'right yoke' on 'lower' of 'right panel'");
    }
}
