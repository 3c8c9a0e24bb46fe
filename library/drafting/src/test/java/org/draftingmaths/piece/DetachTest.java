package org.draftingmaths.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Cubic;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.DraftingException;
import org.junit.jupiter.api.Test;

class DetachTest {

    private static final double APEX = 180;

    /** A front with a shoulder dart and a waist dart that end at one point, 90 mm from the centre. */
    private static Piece front() {
        return Drawing.of("front")
                .from(0, 0)
                .edge("waist", Role.SEAM)
                .line(75, 0)
                .dart("waist dart", 90, APEX, 105, 0, 0, Leg.BEFORE)
                .line(230, 0)
                .edge("side seam", Role.SEAM)
                .line(240, 200)
                .edge("armhole", Role.FINISHED)
                .curve(190, 200, 185, 280, 195, 370)
                .edge("shoulder", Role.SEAM)
                .line(145, 388)
                .dart("shoulder dart", 90, APEX, 130, APEX + Math.sqrt(55 * 55 + 208 * 208 - 40 * 40), 0, Leg.BEFORE)
                .line(70, 415)
                .edge("neckline", Role.FINISHED)
                .curve(70, 360, 40, 340, 0, 340)
                .edge("centre front", Role.FOLD)
                .line(0, 0)
                .level("bust line", 0, APEX, 239, APEX)
                .notch("armhole", 60)
                .grain(20, 40, 20, 280)
                .piece();
    }

    /** The yoke line crosses the shoulder dart: with the dart folded it is straight, and both parts get it in one length. */
    @Test
    void aYokeLineIsDrawnWithTheDartFolded() {
        Piece front = front();
        double angle = Measured.angle(front, "shoulder dart");
        StyleLine line = StyleLine.straight("yoke line", Spot.on("armhole", 90), Spot.on("centre front", 60))
                .folding("shoulder dart")
                .marked(40.0, 90.0);

        Detached parted = Detach.across(front, line, "lower front", "yoke");

        Piece lower = parted.with("waist");
        Piece yoke = parted.with("neckline");
        assertThat(lower.area() + yoke.area()).isCloseTo(front.area(), within(1e-6));
        assertThat(Lengths.base(lower, "yoke line")).isCloseTo(Lengths.base(yoke, "yoke line"), within(1e-9));
        assertThat(Lengths.base(lower, "armhole") + Lengths.base(yoke, "armhole"))
                .isCloseTo(Lengths.base(front, "armhole"), within(1e-9));
        assertThat(Measured.angle(lower, "shoulder dart")).isCloseTo(angle, within(1e-12));
        assertThat(Measured.angle(yoke, "shoulder dart")).isCloseTo(angle, within(1e-12));
        assertThat(lower.opening("shoulder dart").farMouth()).isEmpty();
        assertThat(yoke.opening("shoulder dart").farMouth()).isPresent();
        assertThat(lower.notches())
                .containsExactly(
                        new Notch("armhole", 60, Beside.BEFORE),
                        new Notch("yoke line", 40, Beside.BEFORE),
                        new Notch("yoke line", 90, Beside.BEFORE));
        assertThat(yoke.grain()).isPresent();
        assertThat(lower.grain()).isPresent();
        assertThat(yoke.levels()).isEmpty();

        Piece closed = Panels.open(
                        yoke,
                        java.util.Map.of("shoulder dart", Measured.closing(yoke, "shoulder dart")),
                        Stay.CENTRE,
                        "Close")
                .piece();
        assertThat(closed.openings()).isEmpty();
        assertThat(closed.panels()).hasSize(1);
        CurvePath sewn = closed.place(closed.panels().get(0).ring().stream()
                .filter(run -> run.border().equals(new Border.OfEdge("yoke line")))
                .findFirst()
                .orElseThrow());
        assertThat(sewn.length())
                .as("straight with the dart folded")
                .isCloseTo(sewn.start().distance(sewn.end()), within(1e-9));
        assertThat(SameCloth.differences(Detach.attach(parted), front, 1e-9)).isEmpty();
    }

    /** Both darts go into a seam through their point; its two edges have one length and the marks of one line. */
    @Test
    void theSeamThroughThePointTakesBothDarts() {
        Piece front = front();
        Detached parted = Detach.through(
                front,
                "panel seam",
                List.of("shoulder dart", "waist dart"),
                List.of(160.0),
                "side front",
                "centre front panel");
        Piece side = parted.with("armhole");
        Piece centre = parted.with("centre front");
        double legs = Measured.leg(front, "shoulder dart", Leg.BEFORE).length()
                + Measured.leg(front, "waist dart", Leg.BEFORE).length();
        assertThat(Lengths.drawn(side, "panel seam")).isCloseTo(legs, within(1e-9));
        assertThat(Lengths.drawn(centre, "panel seam")).isCloseTo(legs, within(1e-9));
        assertThat(side.openings()).isEmpty();
        assertThat(side.area() + centre.area()).isCloseTo(front.area(), within(1e-6));
        assertThat(side.levels()).hasSize(1);
        assertThat(centre.levels()).hasSize(1);
        assertThat(SameCloth.differences(Detach.attach(parted), front, 1e-9)).isEmpty();
    }

    @Test
    void whatWasChangedSinceIsNotAttached() {
        Detached parted = Detach.through(
                front(), "panel seam", List.of("shoulder dart", "waist dart"), List.of(), "side front", "centre panel");
        Piece longer = Redraw.edges(
                        parted.after(),
                        java.util.Map.of(
                                "neckline",
                                CurvePath.polyline(
                                        Measured.at(parted.after(), Spot.on("neckline", 0)),
                                        Measured.at(parted.after(), Spot.on("centre front", 0)))))
                .piece();
        assertThatThrownBy(() -> Detach.attach(new Detached(parted.before(), longer, parted.ledger())))
                .isInstanceOf(DraftingException.class)
                .hasMessage(
                        "Attach 'centre panel' along 'panel seam': the piece was changed since; undo the later operations"
                                + " first.");
    }

    @Test
    void refusals() {
        Piece front = front();
        Spot armhole = Spot.on("armhole", 90);
        Spot centre = Spot.on("centre front", 60);
        assertThatThrownBy(() -> Detach.across(front, StyleLine.straight("yoke", armhole, centre), "a", "b"))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining(
                        "'shoulder dart' lies open across it; fold it first, with folding(\"shoulder dart\")");
        assertThatThrownBy(() -> Detach.across(
                        front,
                        StyleLine.straight("yoke", armhole, centre).folding("shoulder dart", "waist dart"),
                        "a",
                        "b"))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining("it does not cross 'waist dart'; leave that out of the darts to fold");
        Piece uneven = Drawing.of("uneven")
                .from(0, 0)
                .edge("waist", Role.SEAM)
                .line(70, 0)
                .dart("dart", 90, 150, 100, 0, 0, Leg.BEFORE)
                .line(200, 0)
                .edge("side", Role.SEAM)
                .line(200, 200)
                .edge("top", Role.SEAM)
                .line(0, 200)
                .edge("centre", Role.FOLD)
                .line(0, 0)
                .piece();
        assertThatThrownBy(() -> Detach.across(
                        uneven,
                        StyleLine.straight("line", Spot.on("side", 60), Spot.on("centre", 140))
                                .folding("dart"),
                        "a",
                        "b"))
                .isInstanceOf(DraftingException.class)
                .hasMessageContaining(
                        "the legs of 'dart' are unequal (151.327 mm and 150.333 mm) and cannot be folded on one"
                                + " another; make them equal first");
        assertThatThrownBy(() -> Detach.through(front, "seam", List.of("waist dart"), List.of(), "a", "b"))
                .isInstanceOf(DraftingException.class)
                .hasMessage("Cut along 'seam': 'waist dart' does not reach from edge to edge.");
    }

    /** Random pieces cut by straight and curved lines, across up to two darts: the laws, and one piece again. */
    @Test
    void partsAddUpAndBecomeOneAgain() {
        int[] crossed = new int[3];
        for (long seed = 0; seed < 120; seed++) {
            Piece piece = RandomPieces.piece(seed);
            SplittableRandom random = new SplittableRandom(seed);
            for (int i = 0; i < 12; i++) {
                Optional<StyleLine> found = line(piece, random);
                if (found.isPresent()) {
                    StyleLine line = found.get();
                    Detached parted = Detach.across(piece, line, "one", "other");
                    crossed[line.folded().size()]++;
                    requireLaws(seed, piece, parted);
                }
            }
        }
        assertThat(crossed[0]).as("lines across no dart").isGreaterThan(150);
        assertThat(crossed[1]).as("lines across one dart").isGreaterThan(100);
        assertThat(crossed[2]).as("lines across two darts").isGreaterThan(20);
    }

    private static void requireLaws(long seed, Piece piece, Detached parted) {
        Piece one = parted.before();
        Piece other = parted.after();
        assertThat(judged(one) + judged(other)).as("seed %d", seed).isCloseTo(judged(piece), within(10.0));
        assertThat(one.area() + other.area()).as("seed %d", seed).isCloseTo(piece.area(), within(1e-6));
        assertThat(Lengths.base(one, "line")).as("seed %d", seed).isCloseTo(Lengths.base(other, "line"), within(1e-9));
        for (Edge edge : piece.edges()) {
            double sum = java.util.stream.Stream.of(one, other)
                    .flatMap(part -> part.edges().stream())
                    .filter(each ->
                            each.name().equals(edge.name()) || each.name().matches(edge.name() + " \\d"))
                    .mapToDouble(Edge::length)
                    .sum();
            assertThat(sum).as("seed %d, %s", seed, edge.name()).isCloseTo(edge.length(), within(1e-8));
        }
        assertThat(one.notches().size() + other.notches().size())
                .as("seed %d", seed)
                .isGreaterThanOrEqualTo(piece.notches().size());
        assertThat(SameCloth.differences(Detach.attach(parted), piece, 1e-9))
                .as("seed %d", seed)
                .isEmpty();
    }

    /** The area of cloth as another library finds it, of polygons with 64 corners to a curve: each misses a 4096th of its bulge. */
    private static double judged(Piece piece) {
        return piece.panels().stream()
                .map(panel -> Flat.polygon(piece.place(panel.ring())))
                .peek(polygon -> assertThat(polygon.isValid()).isTrue())
                .mapToDouble(org.locationtech.jts.geom.Polygon::getArea)
                .sum();
    }

    /** A line that can be cut, with the darts it crosses found by trying. */
    private static Optional<StyleLine> line(Piece piece, SplittableRandom random) {
        Edge from = piece.edges().get(random.nextInt(piece.edges().size()));
        Edge to = piece.edges().get(random.nextInt(piece.edges().size()));
        StyleLine line = StyleLine.straight(
                "line",
                Spot.on(from.name(), random.nextDouble(0.1, 0.9) * from.length()),
                Spot.on(to.name(), random.nextDouble(0.1, 0.9) * to.length()));
        List<String> darts = piece.openings().stream().map(Opening::name).toList();
        for (List<String> folded : orders(darts)) {
            try {
                StyleLine tried = line.folding(folded.toArray(String[]::new));
                Detach.across(piece, tried, "one", "other");
                return Optional.of(random.nextBoolean() ? tried : bent(piece, tried));
            } catch (DraftingException refused) {
                // another order may do
            }
        }
        return Optional.empty();
    }

    /** A line without darts may be curved, if the cloth lets it. */
    private static StyleLine bent(Piece piece, StyleLine line) {
        if (!line.folded().isEmpty()) {
            return line;
        }
        Vector2D start = Measured.at(piece, line.from());
        Vector2D end = Measured.at(piece, line.to());
        Vector2D way = start.vectorTo(end);
        Vector2D aside = Vector2D.of(-way.getY(), way.getX()).multiply(0.1);
        CurvePath curve = CurvePath.of(new Cubic(
                start, start.lerp(end, 0.3).add(aside), start.lerp(end, 0.7).subtract(aside), end));
        StyleLine shaped = StyleLine.shaped("line", line.from(), line.to(), curve);
        try {
            Detach.across(piece, shaped, "one", "other");
            return shaped;
        } catch (DraftingException refused) {
            return line;
        }
    }

    private static List<List<String>> orders(List<String> darts) {
        List<List<String>> orders = new java.util.ArrayList<>();
        orders.add(List.of());
        darts.forEach(dart -> orders.add(List.of(dart)));
        darts.forEach(dart ->
                darts.stream().filter(other -> !other.equals(dart)).forEach(other -> orders.add(List.of(dart, other))));
        return orders;
    }
}
