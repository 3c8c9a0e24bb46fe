package org.draftingmaths.suppose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.piece.Beside;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Grain;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SupposeTest {

    private static final double TOLERANCE = 0.5;

    /**
     * A skirt half as a bare outline, its dart cut out: legs from (90, 0) and (110 + slip, 0) to (100, -100), hem raised by some mm at the
     * centre, side longer by some mm at the hem.
     */
    private static Drawing half(String name, double wider, double slip, double raised, double longer) {
        return Drawing.of(name)
                .from(0, -500 + raised)
                .edge("a", Role.SEAM)
                .line(230 + wider, -500 - longer)
                .edge("b", Role.SEAM)
                .line(230 + wider, -200)
                .curve(230 + wider, -120, 195 + wider, -60, 195 + wider, 0)
                .edge("c", Role.SEAM)
                .curve(165 + wider, 0, 140 + slip, -3, 110 + slip, 0)
                .edge("d", Role.SEAM)
                .line(100, -100)
                .edge("e", Role.SEAM)
                .line(90, 0)
                .edge("f", Role.SEAM)
                .curve(60, -3, 30, 0, 0, 0)
                .edge("g", Role.SEAM)
                .line(0, -500 + raised)
                .grain(40, -400, 40, -100);
    }

    private static Draft draft(Drawing... drawings) {
        return new Draft(
                "stranger", List.of(drawings).stream().map(Drawing::piece).toList(), List.of());
    }

    private static List<Finding.Kind> kinds(Supposed supposed) {
        return supposed.findings().stream().map(Finding::kind).toList();
    }

    private static Finding only(Supposed supposed, Finding.Kind kind) {
        List<Finding> found =
                supposed.findings().stream().filter(each -> each.kind() == kind).toList();
        assertThat(found).as("%s", supposed.findings()).hasSize(1);
        return found.get(0);
    }

    private static List<String> told(Supposed supposed, Supposition.Kind kind) {
        return supposed.suppositions().stream()
                .filter(each -> each.kind() == kind)
                .map(each -> each.sureness().words() + ": " + String.join(" + ", each.places()))
                .toList();
    }

    @Test
    void aCleanDraftIsReadAndSilent() {
        Supposed supposed = Suppose.of(draft(half("x", 0, 0, 0, 0), half("y", 13, 0, 0, 0)), TOLERANCE);
        assertThat(supposed.findings()).isEmpty();
        assertThat(told(supposed, Supposition.Kind.DART))
                .containsExactly("certain: 'dart 1' in 'c' of 'x'", "certain: 'dart 1' in 'c' of 'y'");
        assertThat(told(supposed, Supposition.Kind.MATES)).contains("certain: 'b' of 'x' + 'b' of 'y'");
        assertThat(told(supposed, Supposition.Kind.FOLD)).contains("likely: 'g' of 'x'", "likely: 'g' of 'y'");
        Piece piece = supposed.draft().piece("x");
        assertThat(piece.edges()).extracting(Edge::name).containsExactlyInAnyOrder("a", "b", "c", "g");
        assertThat(Measured.angle(piece, "dart 1")).isCloseTo(2 * Math.atan2(10, 100), within(1e-12));
        assertThat(supposed.draft().seams())
                .singleElement()
                .satisfies(seam -> assertThat(
                                List.of(seam.first().edge(), seam.second().edge()))
                        .containsExactly("b", "b"));
    }

    /** Legs of sqrt(100^2 + 10^2) and sqrt(100^2 + (10 + slip)^2) mm; the point lies slip/2 off the middle of the mouth. */
    @ParameterizedTest
    @ValueSource(doubles = {6, 12, 25})
    void unequalLegsAreFound(double slip) {
        Supposed supposed = Suppose.of(draft(half("x", 0, slip, 0, 0)), TOLERANCE);
        double one = Math.hypot(100, 10);
        double other = Math.hypot(100, 10 + slip);
        Finding legs = only(supposed, Finding.Kind.LEGS_UNEQUAL);
        assertThat(Math.abs(legs.excess())).isCloseTo(other - one, within(1e-9));
        assertThat(only(supposed, Finding.Kind.POINT_OFF_BISECTOR).measured()).isCloseTo(slip / 2, within(1e-9));
        assertThat(told(supposed, Supposition.Kind.DART)).containsExactly("likely: 'dart 1' in 'c' of 'x'");
    }

    /** A slip of 0.9 mm makes the legs differ by 0.09 mm and the point lie 0.45 mm off: within the tolerance. */
    @Test
    void nearlyEqualLegsAreSilent() {
        Supposed supposed = Suppose.of(draft(half("x", 0, 0.9, 0, 0), half("y", 13, 0, 0, 0)), TOLERANCE);
        assertThat(supposed.findings()).isEmpty();
    }

    /** The hem rises by raised mm over 230 mm from side to centre, so its corner at the fold is so much off a right angle. */
    @ParameterizedTest
    @ValueSource(doubles = {3, 10, -10, 25})
    void anUnsquareFoldIsFound(double raised) {
        for (double turn : new double[] {0, 0.7, 2}) {
            Supposed supposed = Suppose.of(turned(draft(half("x", 0, 0, raised, 0)), turn), TOLERANCE);
            Finding fold = only(supposed, Finding.Kind.FOLD_NOT_SQUARE);
            assertThat(fold.where()).isEqualTo("'a' at 'g' of 'x'");
            assertThat(fold.excess()).isCloseTo(Math.atan2(raised, 230), within(1e-9));
            assertThat(fold.remedy()).startsWith(raised > 0 ? "Opened out it is a dip" : "Opened out it is a peak");
        }
    }

    /** 1.9 mm over 230 mm are 0.47 degrees. */
    @Test
    void aNearlySquareFoldIsSilent() {
        assertThat(Suppose.of(draft(half("x", 0, 0, 1.9, 0), half("y", 13, 0, 0, 0)), TOLERANCE)
                        .findings())
                .isEmpty();
    }

    /** The side of one half goes on for 6 mm at the hem: the seam is likely, and walked. */
    @Test
    void aLengthenedMateIsFound() {
        Supposed supposed = Suppose.of(draft(half("x", 0, 0, 0, 0), half("y", 13, 0, 0, 6)), TOLERANCE);
        assertThat(told(supposed, Supposition.Kind.MATES)).contains("likely: 'b' of 'x' + 'b' of 'y'");
        assertThat(only(supposed, Finding.Kind.SEAM_LENGTHS_DIFFER).excess()).isCloseTo(-6, within(1e-9));
        Supposed near = Suppose.of(draft(half("x", 0, 0, 0, 0), half("y", 13, 0, 0, 0.4)), TOLERANCE);
        assertThat(near.findings()).isEmpty();
        assertThat(told(near, Supposition.Kind.MATES)).contains("certain: 'b' of 'x' + 'b' of 'y'");
    }

    /** Straight edges of one length are hems, centres or seams: nothing in their shape tells. */
    @Test
    void squaresAreOnlyPossible() {
        Drawing square = Drawing.of("x")
                .from(0, 0)
                .edge("a", Role.SEAM)
                .line(100, 0)
                .edge("b", Role.SEAM)
                .line(100, 100)
                .edge("c", Role.SEAM)
                .line(0, 100)
                .edge("d", Role.SEAM)
                .line(0, 0);
        Drawing other = new Drawing(
                "y", square.start(), square.items(), square.levels(), square.darts(), square.notches(), square.grain());
        Supposed supposed = Suppose.of(draft(square, other), TOLERANCE);
        assertThat(supposed.draft().seams()).isEmpty();
        assertThat(supposed.possible()).hasSizeGreaterThan(4);
        assertThat(told(supposed, Supposition.Kind.ALIKE)).containsExactly("certain: 'x' + 'y'");
        assertThat(supposed.findings()).extracting(Finding::kind).containsOnly(Finding.Kind.GRAIN_MISSING);
    }

    @Test
    void mirroredPiecesAreFound() {
        Piece left = half("left", 0, 0, 0, 0).piece();
        Piece right = moved(
                        left,
                        AffineTransformMatrix2D.createScale(-1, 1)
                                .premultiply(AffineTransformMatrix2D.createRotation(1)))
                .named("right");
        Supposed supposed = Suppose.of(new Draft("stranger", List.of(left, right), List.of()), TOLERANCE);
        assertThat(told(supposed, Supposition.Kind.MIRRORED)).containsExactly("certain: 'left' + 'right'");
        assertThat(told(supposed, Supposition.Kind.MATES)).noneMatch(each -> each.startsWith("certain"));
    }

    /** A slanted straight edge that is like none is no fold, no hem and not hollow: it lacks its mate. The nearest is the far shorter one. */
    @Test
    void anEdgeWithoutMateIsFound() {
        Drawing kite = Drawing.of("x")
                .from(0, 0)
                .edge("a", Role.HEM)
                .line(300, 0)
                .edge("b", Role.SEAM)
                .line(200, 240)
                .edge("c", Role.FINISHED)
                .line(0, 300)
                .edge("d", Role.FOLD)
                .line(0, 0)
                .grain(20, 20, 20, 200);
        Finding finding = only(Suppose.of(draft(kite), TOLERANCE), Finding.Kind.MATE_MISSING);
        assertThat(finding.measured()).isCloseTo(260, within(1e-9));
        assertThat(finding.where()).isEqualTo("'b' of 'x'");
    }

    /** A notch at 100 mm on one mate and at 100 or 130 mm on the other, and none. */
    @Test
    void notchesWithoutPartnerAreTold() {
        Piece x = half("x", 0, 0, 0, 0).piece().notched(new Notch("b", 100, Beside.BEFORE));
        Piece y = half("y", 13, 0, 0, 0).piece();
        assertThat(kinds(suppose(x, y))).containsExactly(Finding.Kind.NOTCHES_UNPARTNERED);
        assertThat(told(suppose(x, y), Supposition.Kind.MATES)).contains("likely: 'b' of 'x' + 'b' of 'y'");
        assertThat(kinds(suppose(x, y.notched(new Notch("b", 130, Beside.BEFORE)))))
                .containsExactly(Finding.Kind.SEAM_LENGTHS_DIFFER, Finding.Kind.SEAM_LENGTHS_DIFFER);
        Supposed fits = suppose(x, y.notched(new Notch("b", 100, Beside.BEFORE)));
        assertThat(fits.findings()).isEmpty();
        assertThat(told(fits, Supposition.Kind.MATES)).contains("certain: 'b' of 'x' + 'b' of 'y'");
    }

    private static Supposed suppose(Piece... pieces) {
        return Suppose.of(new Draft("stranger", List.of(pieces), List.of()), TOLERANCE);
    }

    /** What is declared is kept: a seam, a hem, a finished edge and a fold are not supposed to be something else. */
    @Test
    void whatIsDeclaredStays() {
        Piece x = half("x", 0, 0, 0, 0).piece();
        Piece y = half("y", 13, 0, 0, 0).piece();
        Seam odd = Seam.flat("odd", Seam.Mate.of("x", "b"), Seam.Mate.of("y", "a"));
        Supposed supposed = Suppose.of(new Draft("stranger", List.of(x, y), List.of(odd)), TOLERANCE);
        assertThat(supposed.draft().seams()).containsExactly(odd);
        assertThat(told(supposed, Supposition.Kind.MATES)).noneMatch(each -> each.contains("'b' of 'x'"));
        assertThat(kinds(supposed)).contains(Finding.Kind.SEAM_LENGTHS_DIFFER);
        assertThatThrownBy(() -> Suppose.of(supposed.draft(), 0)).hasMessageContaining("more than 0 mm: 0.0 mm");
    }

    /** An edge with a dart drawn as it is cut when folded. The edge is straight and square over the dart: the peak falls by 4 x half the angle. */
    @Test
    void aDrawnDartEndIsFoldedOpen() {
        Piece declared = declared();
        Piece bare = bare(declared, Vector2D.ZERO);
        Supposed supposed = suppose(bare);
        assertThat(told(supposed, Supposition.Kind.DART_END)).containsExactly("likely: 'dart 1' in 'top' of 'x'");
        Piece piece = supposed.draft().piece("x");
        assertThat(Measured.tip(piece, "dart 1").distance(Vector2D.of(110, 60))).isLessThan(1e-6);
        assertThat(Measured.angle(piece, "dart 1")).isCloseTo(2 * Math.atan2(12, 140), within(1e-9));
    }

    /** The peak is moved along the edge or down: the dart no longer folds. */
    @ParameterizedTest
    @CsvSource({"2, 0", "-1.5, 0", "0, -3", "1, 2"})
    void anUntrueDartEndIsFound(double x, double y) {
        Supposed supposed = suppose(bare(smooth(), Vector2D.of(x, y)));
        assertThat(told(supposed, Supposition.Kind.DART_END))
                .singleElement()
                .asString()
                .startsWith("possible");
        assertThat(only(supposed, Finding.Kind.DART_END_UNTRUE).measured()).isCloseTo(Math.hypot(x, y), within(1e-6));
    }

    @Test
    void aTrueDartEndIsSilent() {
        Supposed supposed = suppose(bare(smooth(), Vector2D.ZERO));
        assertThat(supposed.findings()).isEmpty();
        Piece piece = supposed.draft().piece("x");
        assertThat(Measured.tip(piece, "dart 1").distance(Vector2D.of(110, 60))).isLessThan(1e-6);
        assertThat(suppose(bare(smooth(), Vector2D.of(0.3, 0))).findings()).isEmpty();
    }

    private static Piece declared() {
        return top(Drawing.of("x")
                        .from(0, 0)
                        .edge("hem", Role.HEM)
                        .line(220, 0)
                        .edge("side", Role.FINISHED)
                        .line(220, 200)
                        .edge("top", Role.SEAM)
                        .line(122, 200))
                .piece();
    }

    private static Drawing top(Drawing drawing) {
        return drawing.dart("dart", 110, 60, 98, 200, 0, Leg.BEFORE)
                .line(0, 200)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .grain(20, 20, 20, 180);
    }

    /** Closed, its edge goes straight on, at 75 degrees to the dart's one leg and 105 to the other. */
    private static Piece smooth() {
        double half = Math.atan2(12, 140);
        double right = half + Math.toRadians(15);
        double left = Math.toRadians(15) - half;
        return Drawing.of("x")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(220, 0)
                .edge("side", Role.FINISHED)
                .line(220, 200 - 98 * Math.tan(right))
                .edge("top", Role.SEAM)
                .line(122, 200)
                .dart("dart", 110, 60, 98, 200, 0, Leg.BEFORE)
                .line(0, 200 + 98 * Math.tan(left))
                .edge("centre", Role.FINISHED)
                .line(0, 0)
                .grain(20, 20, 20, 180)
                .piece();
    }

    /** The outline on paper, its edges by name, no dart declared; the peak of the dart's end moved. */
    private static Piece bare(Piece piece, Vector2D by) {
        Drawing drawing = Drawing.of(piece.name()).from(0, 0);
        for (Edge edge : piece.edges()) {
            CurvePath path = Paper.edge(piece, edge.name());
            drawing = drawing.edge(edge.name(), edge.role());
            for (int i = 0; i < path.curves().size(); i++) {
                Vector2D end = path.curves().get(i).end();
                boolean peak = edge.name().equals("top") && i == 1;
                drawing = drawing.line(end.getX() + (peak ? by.getX() : 0), end.getY() + (peak ? by.getY() : 0));
            }
        }
        return drawing.grain(20, 20, 20, 180).piece();
    }

    private static Draft turned(Draft draft, double angle) {
        return new Draft(
                draft.name(),
                draft.pieces().stream()
                        .map(piece -> moved(piece, AffineTransformMatrix2D.createRotation(angle)))
                        .toList(),
                List.of());
    }

    private static Piece moved(Piece piece, AffineTransformMatrix2D motion) {
        Vector2D start = motion.apply(piece.edges().get(0).base().start());
        Drawing drawing = Drawing.of(piece.name()).from(start.getX(), start.getY());
        for (Edge edge : piece.edges()) {
            drawing = drawing.edge(edge.name(), edge.role()).along(edge.base().transformed(motion));
        }
        Piece drawn = drawing.piece();
        Optional<Grain> grain =
                piece.grain().map(line -> new Grain(motion.apply(line.from()), motion.apply(line.to())));
        return new Piece(
                drawn.name(), drawn.edges(), drawn.openings(), drawn.panels(), List.of(), List.of(), List.of(), grain);
    }

    @Test
    void saysItInWords() {
        Supposed supposed = Suppose.of(draft(half("x", 0, 0, 0, 0), half("y", 13, 0, 0, 0)), TOLERANCE);
        assertThat(supposed.suppositions().get(0).sentence(Steps.DEFAULT))
                .isEqualTo(
                        "Certain: 'dart 1' in 'c' of 'x' is a dart; length of its legs 4 in (10.0 cm), length of the other 4 in"
                                + " (10.0 cm), angle 11.42°, corner with it closed 0.00°.");
        assertThatThrownBy(() -> new Supposition(Supposition.Kind.FOLD, Sureness.POSSIBLE, List.of(), List.of()))
                .hasMessageContaining("1 or more places");
    }

    /** Against trying all permutations. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void theAssignmentIsTheLeast(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < 40; round++) {
            int n = random.nextInt(1, 7);
            double[][] cost = new double[n][n];
            for (double[] row : cost) {
                for (int j = 0; j < n; j++) {
                    row[j] = random.nextInt(0, 30);
                }
            }
            int[] to = Assignment.of(cost);
            double sum = 0;
            for (int i = 0; i < n; i++) {
                sum += cost[i][to[i]];
            }
            assertThat(java.util.Arrays.stream(to).distinct().count()).isEqualTo(n);
            assertThat(sum).as("seed %d", seed).isEqualTo(least(cost, 0, new boolean[n]));
        }
    }

    private static double least(double[][] cost, int row, boolean[] used) {
        if (row == cost.length) {
            return 0;
        }
        double least = Double.POSITIVE_INFINITY;
        for (int j = 0; j < used.length; j++) {
            if (!used[j]) {
                used[j] = true;
                least = Math.min(least, cost[row][j] + least(cost, row + 1, used));
                used[j] = false;
            }
        }
        return least;
    }
}
