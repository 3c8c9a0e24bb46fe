package org.draftingmaths.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Nearest;
import org.draftingmaths.curve.Straight;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Flat;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.PaperSide;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.RandomPieces;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.unit.Length;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

class CutLineTest {

    private static final double DEVIATION = 1e-6;

    static Stream<Long> seeds() {
        return LongStream.range(0, 300).boxed();
    }

    /** A random piece without a fold, so that every edge may carry an allowance. */
    private static Piece seamed(long seed) {
        Piece piece = RandomPieces.piece(seed);
        List<Edge> edges = piece.edges().stream()
                .map(edge -> new Edge(edge.name(), Role.SEAM, 0, edge.base()))
                .toList();
        return new Piece(
                piece.name(),
                edges,
                piece.openings(),
                piece.panels(),
                piece.levels(),
                piece.insideDarts(),
                piece.notches(),
                piece.grain());
    }

    private static Allowances randomWidths(Piece piece, SplittableRandom random) {
        Map<String, Double> widths = new TreeMap<>();
        piece.edges().forEach(edge -> widths.put(edge.name(), random.nextDouble(2, 25)));
        return new Allowances(0, widths, List.of());
    }

    private static CurvePath net(Piece piece, String edge) {
        return Paper.edge(piece, edge);
    }

    /** How many corners of an edge turn outwards, the ends of darts among them. */
    private static int outwardCorners(CurvePath edge, Piece piece, CutSide side) {
        double way = Paper.sides(piece).stream()
                        .filter(each -> each.edge().equals(side.edge()))
                        .allMatch(PaperSide::forward)
                ? 1
                : -1;
        int corners = 0;
        for (int i = 1; i < edge.curves().size(); i++) {
            Vector2D in = edge.curves().get(i - 1).tangent(1);
            Vector2D out = edge.curves().get(i).tangent(0);
            corners += way * in.signedArea(out) > 1e-9 ? 1 : 0;
        }
        return corners;
    }

    /**
     * Every place of a side lies the edge's width from the edge, never less; beside the edge's end, where the corner
     * with its neighbour begins, never less than the narrower of the two; farther off only on the straights about the edge's own corners, at most three to a corner.
     * These are squared off across the corner at twice the width, so that none of them is over sqrt 5 times it away. The outline is closed, valid and made of
     * sides and corners in turn.
     */
    @ParameterizedTest
    @MethodSource("seeds")
    void everySideIsItsWidthFromItsEdge(long seed) {
        Piece piece = seamed(seed);
        Allowances plan = randomWidths(piece, new SplittableRandom(seed));
        CutLine cut;
        try {
            cut = CutLine.of(piece, plan);
        } catch (DraftingException refused) {
            assertThat(refused.reason())
                    .containsAnyOf(
                            "closes a hollow",
                            "too wide for the bend",
                            "leaves no cut line",
                            "is broken by",
                            "leave nothing",
                            "crosses itself");
            return;
        }
        double sum = 0;
        for (CutSide side : cut.sides()) {
            CurvePath edge = net(piece, side.edge());
            int tips = 0;
            for (Curve curve : side.path().curves()) {
                double least = Double.POSITIVE_INFINITY;
                double most = Double.NEGATIVE_INFINITY;
                for (int i = 0; i <= 8; i++) {
                    Nearest nearest = Nearest.of(edge, curve.at(i / 8.0));
                    double off = nearest.distance() - side.width();
                    boolean atEnd = nearest.at() < 1e-6 || nearest.at() > edge.length() - 1e-6;
                    least = Math.min(least, atEnd ? nearest.distance() - narrowest(cut, side) : off);
                    most = Math.max(most, off);
                }
                assertThat(least).as("seed %s, '%s' short", seed, side.edge()).isGreaterThan(-2 * DEVIATION);
                if (most > 2 * DEVIATION) {
                    assertThat(curve).as("seed %s, '%s'", seed, side.edge()).isInstanceOf(Straight.class);
                    assertThat(most)
                            .as("seed %s, '%s' spike", seed, side.edge())
                            .isLessThan((Math.sqrt(5) - 1) * side.width());
                    tips++;
                }
            }
            assertThat(tips)
                    .as("seed %s, '%s'", seed, side.edge())
                    .isLessThanOrEqualTo(3 * outwardCorners(edge, piece, side));
            sum += side.path().length();
        }
        for (CutCorner corner : cut.corners()) {
            sum += corner.path().map(CurvePath::length).orElse(0.0);
        }
        assertThat(sum).isCloseTo(cut.outline().length(), within(1e-6));
        assertThat(cut.outline().closes(1e-6)).isTrue();
        assertThat(Flat.polygon(cut.outline()).isValid()).as("seed %s", seed).isTrue();
        assertThat(Flat.polygon(cut.outline()).contains(Flat.polygon(Paper.outline(piece))))
                .as("seed %s", seed)
                .isTrue();
    }

    /** The least width of a side and of its two neighbours. */
    private static double narrowest(CutLine cut, CutSide side) {
        List<CutSide> sides = cut.sides();
        int at = sides.indexOf(side);
        return Math.min(
                side.width(),
                Math.min(
                        sides.get((at + 1) % sides.size()).width(),
                        sides.get((at + sides.size() - 1) % sides.size()).width()));
    }

    /** The widths of the first test are wide for such small jagged pieces; still most must be cut, not refused. */
    @Test
    void mostRandomPiecesAreCut() {
        long cut = seeds().filter(seed -> isCut(seamed(seed), randomWidths(seamed(seed), new SplittableRandom(seed))))
                .count();
        assertThat(cut).isGreaterThan(240);
    }

    private static boolean isCut(Piece piece, Allowances plan) {
        try {
            CutLine.of(piece, plan);
            return true;
        } catch (DraftingException refused) {
            return false;
        }
    }

    private static Geometry buffer(Polygon polygon, double distance, int join, double limit) {
        BufferParameters parameters = new BufferParameters(64, BufferParameters.CAP_ROUND, join, limit);
        parameters.setSimplifyFactor(1e-6);
        return BufferOp.bufferOp(polygon, distance, parameters);
    }

    /**
     * JTS judges: between its round buffer and its mitred one, and where no tip is cut its mitred area. It mitres the chords of
     * its polygon, whose direction misses the tangent at a corner by half of what one of a thousand parts turns.
     */
    @ParameterizedTest
    @MethodSource("seeds")
    void oneWidthAllRoundIsTheMitredBuffer(long seed) {
        Piece piece = seamed(seed);
        double width = new SplittableRandom(seed).nextDouble(3, 12);
        Allowances plan = Allowances.of(Length.mm(width));
        if (!isCut(piece, plan)) {
            return;
        }
        CutLine cut = CutLine.of(piece, plan);
        Polygon net = Flat.polygon(Paper.outline(piece), 1000);
        Polygon ours = Flat.polygon(cut.outline(), 200);
        Geometry round = buffer(net, width - 0.02, BufferParameters.JOIN_ROUND, 1);
        Geometry mitred = buffer(net, width + 0.02, BufferParameters.JOIN_MITRE, 2.05);
        double chords = 1e-3 * width * width;
        assertThat(round.difference(ours).getArea()).as("short, seed %s", seed).isLessThan(1e-6);
        assertThat(ours.difference(mitred).getArea()).as("over, seed %s", seed).isLessThan(chords);
        if (sharpest(piece) > Math.toRadians(62)) {
            double theirs = buffer(net, width, BufferParameters.JOIN_MITRE, 2).getArea();
            assertThat(ours.getArea()).as("seed %s", seed).isCloseTo(theirs, within(1e-5 * theirs));
        }
    }

    /** The smallest angle inside the outline, dart ends included. */
    private static double sharpest(Piece piece) {
        List<Curve> curves = Paper.outline(piece).curves();
        double least = Math.PI;
        for (int i = 0; i < curves.size(); i++) {
            Vector2D in = curves.get(i).tangent(1);
            Vector2D out = curves.get((i + 1) % curves.size()).tangent(0);
            least = Math.min(least, Math.PI - Math.atan2(in.signedArea(out), in.dot(out)));
        }
        return least;
    }

    /** Outside a bend the cut line is longer by width times turning, in a hollow shorter. */
    @ParameterizedTest
    @MethodSource("seeds")
    void aBendMakesTheCutLineLongerByWidthTimesTurning(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double width = random.nextDouble(5, 20);
        double radius = random.nextDouble(60, 300);
        double half = random.nextDouble(0.1, 1.2);
        Piece convex = sector(radius, half, 1);
        Piece hollow = sector(radius, half, -1);
        Allowances plan = Allowances.of(Length.mm(width));
        double length = 2 * half * radius;
        assertThat(CutLine.of(convex, plan).side("bend").path().length())
                .isCloseTo(length + width * 2 * half, within(1e-6));
        assertThat(CutLine.of(hollow, plan).side("bend").path().length())
                .isCloseTo(length - width * 2 * half, within(1e-6));
    }

    /** A strip whose lower edge is an arc, bulging downwards or hollow. */
    private static Piece sector(double radius, double half, int sign) {
        double x = radius * Math.sin(half);
        double middle = -sign * radius * (1 - Math.cos(half));
        return Drawing.of("strip")
                .from(-x, 0)
                .edge("bend", Role.SEAM)
                .arc(0, middle, x, 0)
                .edge("right", Role.SEAM)
                .line(x, 500)
                .edge("top", Role.SEAM)
                .line(-x, 500)
                .edge("left", Role.SEAM)
                .line(-x, 0)
                .piece();
    }

    /** The law for any smooth edge: what the tangent turns, times the width. */
    @ParameterizedTest
    @MethodSource("seeds")
    void aCubicEdgeKeepsTheLawOfTurning(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double width = random.nextDouble(3, 12);
        Piece piece = Drawing.of("panel")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .curve(100, random.nextDouble(-60, 60), 200, random.nextDouble(-60, 60), 300, 0)
                .edge("right", Role.SEAM)
                .line(300, 400)
                .edge("top", Role.SEAM)
                .line(0, 400)
                .edge("left", Role.SEAM)
                .line(0, 0)
                .piece();
        CutLine cut = CutLine.of(piece, Allowances.of(Length.mm(width)));
        CurvePath net = Paper.edge(piece, "hem");
        double turning = Math.atan2(
                net.startTangent().signedArea(net.endTangent()),
                net.startTangent().dot(net.endTangent()));
        assertThat(cut.lost()).isEmpty();
        assertThat(cut.side("hem").path().length()).isCloseTo(net.length() + width * turning, within(1e-5));
    }

    private static Piece quarter() {
        return Drawing.of("quarter")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(200, 0)
                .edge("side", Role.SEAM)
                .line(200, 300)
                .edge("neckline", Role.FINISHED)
                .line(60, 300)
                .line(0, 240)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .piece();
    }

    /** The fold itself is the cut line; a slanting neckline is cut short at the fold's own line, so that it opens out to a V. */
    @Test
    void aFoldIsNotCut() {
        CutLine cut = CutLine.of(quarter(), Allowances.of(Length.mm(10)).on("hem", Length.mm(40)));
        assertThat(cut.side("centre").path().length()).isCloseTo(240, within(1e-9));
        assertThat(cut.outline().bounds().getMin().getX()).isCloseTo(0, within(1e-9));
        assertThat(cut.corner("neckline", "centre").path().orElseThrow().start())
                .satisfies(tip -> assertThat(tip.distance(Vector2D.of(0, 240 + 10 * Math.sqrt(2))))
                        .isLessThan(1e-6));
        assertThat(cut.corner("hem", "centre").path().orElseThrow().bounds().getMin())
                .satisfies(tip -> assertThat(tip.distance(Vector2D.of(0, -40))).isLessThan(1e-6));
        Piece whole = org.draftingmaths.piece.Unfold.at(quarter(), "centre").piece();
        CutLine opened = CutLine.of(
                whole, Allowances.of(Length.mm(10)).on("hem", Length.mm(40)).on("mirrored hem", Length.mm(40)));
        assertThat(opened.outline().area()).isCloseTo(2 * cut.outline().area(), within(1e-3));
    }

    /** Mirroring the piece mirrors its cut line. */
    @ParameterizedTest
    @MethodSource("seeds")
    void aMirroredPieceHasTheMirroredCutLine(long seed) {
        Piece piece = seamed(seed);
        Allowances plan = randomWidths(piece, new SplittableRandom(seed));
        if (!isCut(piece, plan)) {
            return;
        }
        CutLine cut = CutLine.of(piece, plan);
        CutLine mirrored = CutLine.of(
                Panels.mirror(piece, Vector2D.ZERO, Vector2D.of(0, 1)).piece(), plan);
        assertThat(mirrored.outline().area())
                .as("seed %s", seed)
                .isCloseTo(cut.outline().area(), within(1e-3));
        for (CutSide side : cut.sides()) {
            CurvePath other = mirrored.side(side.edge()).path();
            Vector2D start = side.path().start();
            assertThat(other.end().distance(Vector2D.of(-start.getX(), start.getY())))
                    .as("seed %s, '%s'", seed, side.edge())
                    .isLessThan(1e-4);
        }
    }

    /** A hollow of 8 mm radius has no cut line at 12 mm; the stretch is reported. */
    @Test
    void whatAHollowSwallowsIsReported() {
        Piece piece = Drawing.of("slotted")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(200, 0)
                .edge("side", Role.SEAM)
                .line(200, 100)
                .edge("top", Role.SEAM)
                .line(108, 100)
                .arc(100, 92, 92, 100)
                .line(0, 100)
                .edge("other side", Role.SEAM)
                .line(0, 0)
                .piece();
        CutLine narrow = CutLine.of(piece, Allowances.of(Length.mm(4)));
        CutLine wide = CutLine.of(piece, Allowances.of(Length.mm(12)));
        assertThat(narrow.findings(piece)).isEmpty();
        assertThat(wide.lost().stream().mapToDouble(Lost::length).sum()).isGreaterThan(Math.PI * 8);
        assertThat(wide.findings(piece)).extracting(Finding::kind).containsOnly(Finding.Kind.ALLOWANCE_SWALLOWED);
    }

    static Stream<Arguments> refusals() {
        Piece notched = Drawing.of("keyhole")
                .from(0, 0)
                .edge("hem", Role.HEM)
                .line(200, 0)
                .edge("side", Role.SEAM)
                .line(200, 100)
                .edge("top", Role.SEAM)
                .line(103, 100)
                .edge("slit", Role.SEAM)
                .line(103, 40)
                .line(97, 40)
                .edge("other top", Role.SEAM)
                .line(97, 100)
                .line(0, 100)
                .edge("other side", Role.SEAM)
                .line(0, 0)
                .piece();
        return Stream.of(
                Arguments.of(
                        quarter(),
                        Allowances.of(Length.mm(10)).on("centre", Length.mm(10)),
                        "Add 10.00 mm on 'centre' of 'quarter': it is a fold, and a fold is not cut; open the piece out at"
                                + " it if there is to be a seam."),
                Arguments.of(
                        notched,
                        Allowances.of(Length.mm(10)),
                        "Add allowances to 'keyhole': the allowance leaves no cut line along 'slit', which lies in a hollow"
                                + " narrower than that; make it narrower there."),
                Arguments.of(
                        quarter(),
                        Allowances.of(Length.mm(10)).corner("neckline", "centre", CornerCut.SQUARED),
                        "Add allowances to 'quarter', at the corner of 'neckline' and 'centre', squared: a fold meets its"
                                + " neighbours plainly: what is cut there is cut through both layers."),
                Arguments.of(
                        quarter(),
                        Allowances.of(Length.mm(10))
                                .on("side", Length.ZERO)
                                .corner("side", "hem", CornerCut.TURNED_BACK),
                        "Add allowances to 'quarter', at the corner of 'hem' and 'side', turned back: 'side' has no"
                                + " allowance to be shaped."));
    }

    @ParameterizedTest
    @MethodSource("refusals")
    void whatCannotBeCutIsRefused(Piece piece, Allowances plan, String message) {
        assertThatThrownBy(() -> CutLine.of(piece, plan))
                .isInstanceOf(DraftingException.class)
                .hasMessage(message);
    }

    @Test
    void whatIsNoAllowanceIsRefused() {
        for (double width : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> new Allowances(width, Map.of(), List.of()))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("An allowance is 0 mm or more: " + width + " mm on any edge.");
            assertThatThrownBy(() -> new Allowances(10, Map.of("hem", width), List.of()))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("An allowance is 0 mm or more: " + width + " mm on 'hem'.");
        }
        assertThatThrownBy(() -> Allowances.of(Length.mm(10)).corner("hem", "hem", CornerCut.PLAIN))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(
                        () -> CutLine.of(quarter(), Allowances.of(Length.mm(10)).on("collar", Length.mm(5))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("Piece 'quarter' has no edge named 'collar'");
    }

    /** Mates get the same width unless it is declared otherwise. */
    @Test
    void unlikeAllowancesOfMatesAreFound() {
        Draft draft = new Draft(
                "skirt",
                List.of(quarter(), quarter().named("back")),
                List.of(Seam.flat("side", Seam.Mate.of("quarter", "side"), Seam.Mate.of("back", "side"))));
        Allowances ten = Allowances.of(Length.mm(10));
        Map<String, Allowances> unlike = Map.of("quarter", ten, "back", ten.on("side", Length.mm(15)));
        assertThat(Allowances.mates(draft, Map.of("quarter", ten, "back", ten), Set.of(), 0))
                .isEmpty();
        assertThat(Allowances.mates(draft, unlike, Set.of("side"), 0)).isEmpty();
        assertThat(Allowances.mates(draft, unlike, Set.of(), 0.1))
                .extracting(finding -> finding.sentence(Steps.DEFAULT))
                .containsExactly(
                        "seam 'side', 'side' of 'quarter' on 'side' of 'back': the allowances of the mates differ;"
                                + " measured 3/8 in (1.0 cm), expected 5/8 in (1.5 cm), off by -5.00 mm, tolerance 0.10 mm.");
        assertThatThrownBy(() -> Allowances.mates(draft, Map.of("quarter", ten), Set.of(), 0))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void itIsTold() {
        Piece piece = sector(100, 0.5, 1);
        assertThat(CutLine.of(piece, Allowances.of(Length.mm(10))).ledger(piece).sentences(Steps.DEFAULT))
                .contains(
                        "Added 3/8 in (1.0 cm) along 'bend': 3 7/8 in (10.0 cm) on the stitch line, 4 3/8 in (11.0 cm) at the"
                                + " cut edge.");
    }

    /**
     * Published allowances: 1/4 in enclosed or curved, 1/2 in in general, 3/4 in at a zip (mudmosh.com, seam and hem allowances);
     * 5/8 in for home patterns, labelled 1.5 cm (Wikipedia, Seam allowance), which is 0.875 mm less.
     */
    @Test
    void publishedWidthsAreTakenAsTheyAre() {
        Piece piece = quarter();
        for (String inches : List.of("1/4 in", "3/8 in", "1/2 in", "5/8 in", "3/4 in")) {
            Length width = Length.parse(inches);
            CutLine cut = CutLine.of(piece, Allowances.of(width));
            List<Double> off = new ArrayList<>();
            for (PaperSide side : Paper.sides(piece)) {
                if (side.edge().equals("side")) {
                    off.add(cut.side("side").path().start().getX()
                            - side.path().start().getX());
                }
            }
            assertThat(off).hasSize(1);
            assertThat(off.get(0)).isCloseTo(width.inches() * 25.4, within(1e-9));
        }
        assertThat(Length.parse("5/8 in").minus(Length.parse("1.5 cm")).mm()).isCloseTo(0.875, within(1e-12));
    }
}
