package org.draftingmaths.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.draftingmaths.check.Checks;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Meet;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.dart.Darts;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Finding;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Chains of random operations on random pieces: what must be conserved is, and every chain can be undone. */
class CutMoveJoinTest {

    private static final int PIECES = Integer.getInteger("pieces", 1000);
    private static final int STEPS = 10;
    private static final int BATCH = 50;
    private static final Map<String, Integer> DONE = new ConcurrentHashMap<>();
    private static final GaussIntegratorFactory RULES = new GaussIntegratorFactory();

    static Stream<Long> batches() {
        return LongStream.range(0, PIECES / BATCH).boxed();
    }

    /**
     * One operation of a chain: the piece before it, how much cloth and edge it took out, and by how much it widened all
     * openings together.
     */
    private record Done(String what, Piece before, Reworked after, Lost lost, double widened) {
        String kind() {
            return what.substring(0, 3);
        }
    }

    /** A refused place is no fault, but an operation that never succeeds proves nothing. */
    @AfterAll
    static void everyKindWasProved() {
        for (String kind : List.of("cut", "piv", "mir", "spr", "tak")) {
            assertThat(DONE.getOrDefault(kind, 0))
                    .as("%s, of %d pieces", kind, PIECES)
                    .isGreaterThanOrEqualTo(PIECES / 5);
        }
    }

    private record Lost(double area, Map<String, Double> lengths) {
        static final Lost NOTHING = new Lost(0, Map.of());
    }

    @ParameterizedTest
    @MethodSource("batches")
    void conservesAndUndoes(long batch) {
        for (long seed = batch * BATCH; seed < (batch + 1) * BATCH; seed++) {
            conservesAndUndoes(seed, RandomPieces.piece(seed));
        }
    }

    private static void conservesAndUndoes(long seed, Piece original) {
        SplittableRandom random = new SplittableRandom(seed * 31 + 7);
        AtomicInteger names = new AtomicInteger();
        Deque<Done> chain = new ArrayDeque<>();
        Piece piece = original;
        for (int tries = 0; chain.size() < STEPS; tries++) {
            assertThat(tries).as("seed %d: tries for a chain", seed).isLessThan(400);
            Optional<Done> done = attempt(piece, random, names);
            if (done.isPresent()) {
                requireLaws(seed, done.get());
                DONE.merge(done.get().kind(), 1, Integer::sum);
                chain.push(done.get());
                piece = done.get().after().piece();
            }
        }
        while (!chain.isEmpty()) {
            Done last = chain.pop();
            Piece undone = Panels.undo(new Reworked(piece, last.after().ledger()));
            assertThat(SameCloth.differences(undone, last.before(), 1e-9))
                    .as("seed %d, undo of %s", seed, last.what())
                    .isEmpty();
            piece = undone;
        }
        assertThat(SameCloth.differences(piece, original, 1e-9))
                .as("seed %d, all undone", seed)
                .isEmpty();
    }

    /** One kind of operation, tried in several places; a refused place is no fault. */
    private static Optional<Done> attempt(Piece piece, SplittableRandom random, AtomicInteger names) {
        int kind = random.nextInt(7);
        for (int i = 0; i < 20; i++) {
            String name = "slash " + names.incrementAndGet();
            try {
                Optional<Done> done = switch (kind) {
                    case 0 -> cut(piece, random, name);
                    case 1, 2, 3 -> pivot(piece, random, name);
                    case 4 -> Optional.of(mirror(piece, random));
                    case 5 -> spread(piece, random, name);
                    default -> takeOut(piece, random, name);
                };
                if (done.isPresent()) {
                    return done;
                }
            } catch (DraftingException refused) {
                // another place will do
            }
        }
        return Optional.empty();
    }

    private static Spot spot(Piece piece, SplittableRandom random) {
        Edge edge = piece.edges().get(random.nextInt(1, piece.edges().size()));
        return Spot.on(edge.name(), random.nextDouble(0.05, 0.95) * edge.length());
    }

    private static Optional<Done> cut(Piece piece, SplittableRandom random, String name) {
        Slash slash = Slash.straight(name, spot(piece, random), spot(piece, random));
        return Optional.of(new Done("cut", piece, Panels.cut(piece, slash), Lost.NOTHING, 0));
    }

    private static Optional<Done> pivot(Piece piece, SplittableRandom random, String name) {
        List<String> darts = darts(piece);
        if (darts.isEmpty()) {
            return Optional.empty();
        }
        String dart = darts.get(random.nextInt(darts.size()));
        double whole = Measured.angle(piece, dart);
        double angle = random.nextInt(3) > 0 ? whole : whole * random.nextDouble(0.1, 0.9);
        return Optional.of(new Done(
                "pivot of " + dart,
                piece,
                Darts.rotateBy(piece, dart, spot(piece, random), name, angle),
                Lost.NOTHING,
                0));
    }

    private static List<String> darts(Piece piece) {
        return piece.openings().stream()
                .filter(opening -> opening.mouth().use() instanceof Use.Dart)
                .map(Opening::name)
                .toList();
    }

    private static Done mirror(Piece piece, SplittableRandom random) {
        Vector2D point = Vector2D.of(random.nextDouble(-50, 50), random.nextDouble(-50, 50));
        Vector2D direction = Vector2D.of(random.nextDouble(-1, 1), random.nextDouble(0.1, 1));
        return new Done("mirror", piece, Panels.mirror(piece, point, direction), Lost.NOTHING, 0);
    }

    private static Optional<Done> spread(Piece piece, SplittableRandom random, String name) {
        Slash slash = Slash.straight(name, spot(piece, random), spot(piece, random));
        Reworked cut = Panels.cut(piece, slash);
        CurvePath leg = Measured.leg(cut.piece(), name, Leg.BEFORE);
        double angle = random.nextDouble(0.01, 0.1);
        Motion hinged = Measured.widen(cut.piece(), name, leg.end(), angle);
        Vector2D aside = leg.start()
                .directionTo(leg.end())
                .orthogonal()
                .multiply(wayAside(cut.piece(), name) * random.nextDouble(2, 8));
        boolean turns = random.nextBoolean();
        Motion motion = turns ? hinged : Motion.shift(aside);
        Reworked open = Panels.open(cut.piece(), Map.of(name, motion), Stay.CENTRE, "Spread " + name);
        return Optional.of(new Done("spread", piece, cut.then(open), Lost.NOTHING, turns ? angle : 0));
    }

    /** The after side lies to the left of a slash seen from its mouth, when the mouth's edge runs forward. */
    private static double wayAside(Piece piece, String name) {
        return -Measured.wayRound(piece, name);
    }

    /** A wedge between two slashes of one length to a dart's point: its cloth is lost, and the gap is closed. */
    private static Optional<Done> takeOut(Piece piece, SplittableRandom random, String name) {
        List<String> darts = darts(piece);
        if (darts.isEmpty()) {
            return Optional.empty();
        }
        String dart = darts.get(random.nextInt(darts.size()));
        Vector2D apex = Measured.tip(piece, dart);
        Spot.On first = (Spot.On) spot(piece, random);
        Reworked one = Panels.cut(piece, Slash.straight(name + " a", first, Spot.tip(dart)));
        double radius = Measured.leg(one.piece(), name + " a", Leg.AFTER).length();
        Optional<Run> rest = one.piece().panels().stream()
                .flatMap(panel -> panel.ring().stream())
                .filter(run -> run.border().equals(first.border()) && run.from() == first.arc())
                .findFirst();
        if (rest.isEmpty()) {
            return Optional.empty();
        }
        CurvePath onwards = one.piece()
                .base(first.border())
                .between(rest.get().from(), rest.get().to())
                .transformed(rest.get().motion());
        Optional<Double> second = Meets.of(onwards, CurvePath.of(Arc.circle(apex, radius))).points().stream()
                .map(Meet::onFirst)
                .filter(arc -> arc > 1)
                .sorted()
                .findFirst();
        if (second.isEmpty()) {
            return Optional.empty();
        }
        Spot secondSpot = new Spot.On(first.border(), first.arc() + second.get(), Optional.empty());
        Reworked two = Panels.cut(one.piece(), Slash.straight(name + " b", secondSpot, Spot.tip(dart)));
        double before = two.piece().area();
        Reworked out = Panels.takeOut(two.piece(), name + " a", name + " b", name);
        double lostArea = before - out.piece().area();
        double angle = Measured.angle(out.piece(), name);
        if (Measured.angle(piece, dart) < 1e-3) {
            return Optional.empty();
        }
        Map<String, Motion> motions = Map.of(
                name, Measured.widen(out.piece(), name, apex, -angle),
                dart, Measured.widen(out.piece(), dart, apex, angle));
        Reworked closed = Panels.open(out.piece(), motions, Stay.CENTRE, "Close " + name);
        String edge = ((Border.OfEdge) first.border()).edge();
        return Optional.of(new Done(
                "take out at " + dart,
                piece,
                one.then(two).then(out).then(closed),
                new Lost(lostArea, Map.of(edge, second.get())),
                angle));
    }

    private static void requireLaws(long seed, Done done) {
        Piece before = done.before();
        Piece after = done.after().piece();
        String as = "seed " + seed + ", " + done.what();
        for (Edge edge : before.edges()) {
            double lost = done.lost().lengths().getOrDefault(edge.name(), 0.0);
            assertThat(Lengths.base(after, edge.name()))
                    .as("%s: base length of %s", as, edge.name())
                    .isCloseTo(Lengths.base(before, edge.name()) - lost, within(1e-9));
            assertThat(after.edge(edge.name())).isEqualTo(edge);
        }
        assertThat(after.area())
                .as("%s: net area", as)
                .isCloseTo(before.area() - done.lost().area(), within(1e-6));
        assertThat(angles(after)).as("%s: sum of angles", as).isCloseTo(angles(before) + done.widened(), within(1e-9));
        requireRigid(as, before, after, done.after());
        requireJudged(as, after);
    }

    private static double angles(Piece piece) {
        return piece.openings().stream()
                .mapToDouble(opening -> Measured.angle(piece, opening.name()))
                .sum();
    }

    /** Every stretch of every level line moved by exactly the motion of one of the panels that moved, or not at all. */
    private static void requireRigid(String as, Piece before, Piece after, Reworked done) {
        List<AffineTransformMatrix2D> motions = Stream.concat(
                        Stream.of(AffineTransformMatrix2D.identity()),
                        Stream.concat(
                                done.ledger().only(Step.Moved.class).stream()
                                        .flatMap(moved -> moved.panels().stream())
                                        .map(Step.MovedPanel::by),
                                done.ledger().only(Step.Mirrored.class).stream().map(Step.Mirrored::by)))
                .toList();
        List<Stretch> was = before.panels().stream()
                .flatMap(panel -> panel.lines().stream())
                .toList();
        for (Panel panel : after.panels()) {
            for (Stretch now : panel.lines()) {
                double middle = (now.from() + now.to()) / 2;
                Stretch then = was.stream()
                        .filter(line -> line.line().equals(now.line()) && line.from() <= middle && middle <= line.to())
                        .findFirst()
                        .orElseThrow();
                Vector2D base = before.level(now.line()).base().pointAt(now.from());
                Vector2D other = before.level(now.line()).base().pointAt(now.to());
                double nearest = motions.stream()
                        .mapToDouble(by -> Math.max(
                                by.apply(then.motion().apply(base))
                                        .distance(now.motion().apply(base)),
                                by.apply(then.motion().apply(other))
                                        .distance(now.motion().apply(other))))
                        .min()
                        .orElseThrow();
                assertThat(nearest).as("%s: level line %s", as, now.line()).isLessThan(1e-9);
            }
        }
    }

    /** The net area is that of polygons, and the paper is valid for JTS just when the check finds no crossing. */
    private static void requireJudged(String as, Piece piece) {
        double flat = piece.panels().stream()
                .mapToDouble(panel -> Flat.polygon(piece.place(panel.ring())).getArea())
                .sum();
        assertThat(piece.area()).as("%s: area by JTS", as).isCloseTo(flat, within(2e-4 * flat));
        CurvePath outline = Paper.outline(piece);
        assertThat(outline.length())
                .as("%s: length by Commons Math", as)
                .isCloseTo(byQuadrature(outline), within(1e-7));
        boolean crossing =
                Checks.piece(piece, 1e9).stream().anyMatch(finding -> finding.kind() == Finding.Kind.OUTLINE_CROSSES);
        assertThat(Flat.polygon(outline).isValid()).as("%s: valid by JTS", as).isEqualTo(!crossing);
    }

    /** The length as the integral of the speed, each curve in eight parts by a Gauss rule of thirty-two nodes. */
    private static double byQuadrature(CurvePath path) {
        double sum = 0;
        for (Curve curve : path.curves()) {
            for (int i = 0; i < 8; i++) {
                GaussIntegrator rule = RULES.legendre(32, i / 8.0, (i + 1) / 8.0);
                sum += rule.integrate(t -> curve.derivative(t).norm());
            }
        }
        return sum;
    }
}
