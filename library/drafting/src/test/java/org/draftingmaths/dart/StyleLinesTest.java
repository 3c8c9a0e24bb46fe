package org.draftingmaths.dart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.piece.Detach;
import org.draftingmaths.piece.Detached;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Panels;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.SameCloth;
import org.draftingmaths.piece.Spot;
import org.draftingmaths.piece.StyleLine;
import org.draftingmaths.piece.Use;
import org.draftingmaths.seam.Walk;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;

/** Darts in seams, darts in clusters, and slashes that end on a leg. */
class StyleLinesTest {

    private static final double APEX = 150;

    /** A front of 230 by 350 mm with a waist dart whose legs are 151.3275 mm. */
    private static Piece front() {
        return Drawing.of("front")
                .from(0, 0)
                .edge("waist", Role.SEAM)
                .line(70, 0)
                .dart("waist dart", 90, APEX, 110, 0, 20, Leg.BEFORE)
                .line(210, 0)
                .edge("side seam", Role.SEAM)
                .line(230, 190)
                .edge("armhole", Role.FINISHED)
                .curve(190, 190, 170, 260, 180, 350)
                .edge("shoulder", Role.SEAM)
                .line(70, 390)
                .edge("neckline", Role.FINISHED)
                .curve(70, 340, 40, 320, 0, 320)
                .edge("centre front", Role.FOLD)
                .line(0, 0)
                .level("bust line", 0, APEX, 225, APEX)
                .grain(20, 40, 20, 280)
                .piece();
    }

    @Test
    void aSeamThroughTheApexTakesTheDart() {
        Piece front = front();
        double leg = Math.hypot(20, APEX);
        double upper = Measured.at(front, Spot.on("shoulder", 60)).distance(Vector2D.of(90, APEX));
        Detached parted = StyleLines.through(
                front,
                "waist dart",
                Spot.on("shoulder", 60),
                "panel seam",
                List.of(45.0),
                "side panel",
                "centre panel");
        Piece side = parted.with("side seam");
        Piece centre = parted.with("centre front");
        assertThat(side.openings()).isEmpty();
        assertThat(centre.openings()).isEmpty();
        assertThat(Lengths.drawn(side, "panel seam")).isCloseTo(upper + leg, within(1e-9));
        assertThat(Lengths.drawn(centre, "panel seam")).isCloseTo(upper + leg, within(1e-9));
        Draft draft = new Draft("panels", List.of(side, centre), List.of(parted.seam("panel seam")));
        assertThat(Walk.all(draft).get(0).intervals())
                .hasSize(4)
                .allSatisfy(interval -> assertThat(interval.difference()).isCloseTo(0, within(1e-9)));
        assertThat(parted.ledger().only(IntoSeam.class))
                .singleElement()
                .satisfies(seam -> assertThat(seam.angle()).isCloseTo(2 * Math.asin(20 / leg), within(1e-12)));
        assertThat(SameCloth.differences(Detach.attach(parted), front, 1e-9)).isEmpty();
    }

    /** The dart lies under the yoke line; what the line cuts off is closed, and the mates stay of one length. */
    @Test
    void aYokeIsClosedOverItsDart() {
        Piece moved = Darts.rotate(front(), "waist dart", Spot.on("shoulder", 55), "shoulder dart")
                .piece();
        Detached parted = Detach.across(
                moved,
                StyleLine.straight("yoke line", Spot.on("armhole", 110), Spot.on("centre front", 40))
                        .folding("shoulder dart"),
                "front",
                "yoke");
        Piece yoke = parted.with("neckline");
        Reworked closed = StyleLines.closed(yoke, "shoulder dart");
        assertThat(closed.piece().openings()).isEmpty();
        assertThat(closed.piece().area()).isCloseTo(yoke.area(), within(1e-6));
        assertThat(Lengths.drawn(closed.piece(), "yoke line"))
                .isCloseTo(Lengths.folded(parted.with("waist"), "yoke line"), within(1e-9));
        assertThat(Lengths.drawn(closed.piece(), "shoulder"))
                .isCloseTo(Lengths.folded(moved, "shoulder"), within(1e-9));
        assertThat(SameCloth.differences(Panels.undo(closed), yoke, 1e-9)).isEmpty();
        assertThatThrownBy(() -> StyleLines.closed(parted.with("waist"), "shoulder dart"))
                .isInstanceOf(DraftingException.class)
                .hasMessage(
                        "Close 'shoulder dart': it has a point on this part and is a dart; rotate it to another place.");
    }

    /** The line misses the apex by some 20 mm: of a dart of angle a 2 d sin(a/2) are left over. */
    @Test
    void whatALineBesideTheApexLeavesOver() {
        Piece front = front();
        double x = 90;
        Spot top = Spot.on("shoulder", shoulderArc(front, x));
        Detached parted =
                Detach.across(front, StyleLine.straight("panel seam", top, Spot.on("waist", 85)), "side", "centre");
        Piece centre = parted.with("centre front");
        StyleLines.LeftOver over = StyleLines.leftOver(centre, "waist dart", "panel seam");
        assertThat(over.distance()).isGreaterThan(10);
        assertThat(over.findings()).isEmpty();
        Spot far = Spot.on("shoulder", shoulderArc(front, 72));
        StyleLines.LeftOver tooFar = StyleLines.leftOver(
                Detach.across(front, StyleLine.straight("panel seam", far, Spot.on("waist", 50)), "side", "centre")
                        .with("side seam"),
                "waist dart",
                "panel seam");
        assertThat(tooFar.distance()).isGreaterThan(StyleLines.FURTHEST);
        assertThat(tooFar.findings())
                .singleElement()
                .satisfies(finding -> assertThat(finding.sentence(Steps.DEFAULT))
                        .startsWith(
                                "'panel seam' and 'waist dart' of 'side': the line passes too far from the dart's point"
                                        + " for a seam to shape it; measured ")
                        .contains("expected 1 in (2.5 cm)"));
        double angle = 2 * Math.asin(20 / Math.hypot(20, APEX));
        assertThat(over.width()).isCloseTo(2 * over.distance() * Math.sin(angle / 2), within(1e-12));
        Reworked closed = StyleLines.beside(centre, "waist dart", "panel seam", "short dart", 25);
        assertThat(Measured.intake(closed.piece(), "short dart")).isCloseTo(over.width(), within(1e-9));
        assertThat(closed.piece().openings()).hasSize(1);
        assertThat(Lengths.folded(closed.piece(), "panel seam"))
                .isCloseTo(Lengths.base(parted.with("side seam"), "panel seam"), within(1e-9));
        assertThatThrownBy(() -> StyleLines.beside(centre, "waist dart", "panel seam", "short dart", 10))
                .isInstanceOf(DraftingException.class)
                .hasMessageStartingWith(
                        "Close 'waist dart' into 'panel seam': the line passes too far from its point for a seam to shape it"
                                + " (asked ");
    }

    private static double shoulderArc(Piece front, double x) {
        double length = front.edge("shoulder").length();
        return length * (180 - x) / 110;
    }

    /** Three darts side by side that point short of the apex and beside it: the angles add up and both legs of each are alike. */
    @Test
    void aClusterSharesOneAngle() {
        Piece front = front();
        double whole = Measured.angle(front, "waist dart");
        Reworked cluster = Darts.divide(
                front,
                "waist dart",
                List.of(
                        new Darts.Part(Spot.on("side seam", 70), "low", 0.3).pointing(Vector2D.of(125, 120)),
                        new Darts.Part(Spot.on("side seam", 95), "middle", 0.4).pointing(Vector2D.of(120, 140)),
                        new Darts.Part(Spot.on("side seam", 120), "high", 0.3).pointing(Vector2D.of(125, 160))));
        Piece piece = cluster.piece();
        double sum = 0;
        for (String name : List.of("low", "middle", "high")) {
            sum += Measured.angle(piece, name);
            Vector2D tip = org.draftingmaths.piece.DartEnd.sewnTip(piece, name);
            assertThat(tip.distance(Measured.leg(piece, name, Leg.BEFORE).start()))
                    .isCloseTo(tip.distance(Measured.leg(piece, name, Leg.AFTER).start()), within(1e-9));
        }
        assertThat(sum).isCloseTo(whole, within(1e-12));
        assertThat(piece.area()).isCloseTo(front.area(), within(1e-6));
        assertThat(Lengths.base(piece, "side seam")).isCloseTo(Lengths.base(front, "side seam"), within(1e-9));
        double half = 0.4 * whole / 2;
        assertThat(cluster.ledger().only(ClusterPoint.class)).hasSize(3);
        ClusterPoint middle = cluster.ledger().only(ClusterPoint.class).stream()
                .filter(point -> point.dart().equals("middle"))
                .findFirst()
                .orElseThrow();
        assertThat(middle.apart())
                .as("the point comes apart by 2 |TP| sin(a/2)")
                .isCloseTo(2 * Math.hypot(30, 10) * Math.sin(half), within(1e-9));
        assertThat(SameCloth.differences(Panels.undo(cluster), front, 1e-9)).isEmpty();
    }

    /** Two slashes to the leg, 20 and 60 mm below the point: the gap at the upper is 20 sin(a), at the mouth a little more. */
    @Test
    void slashesToALegLeaveASliver() {
        Piece front = front();
        double angle = Measured.angle(front, "waist dart");
        double leg = Math.hypot(20, APEX);
        List<LegSlashes.OnLeg> slashes = List.of(
                new LegSlashes.OnLeg(Spot.on("side seam", 130), "upper", leg - 8, 0.8),
                new LegSlashes.OnLeg(Spot.on("side seam", 100), "lower", leg - 20, 0.2));
        Reworked closed = LegSlashes.close(front, "waist dart", Leg.AFTER, slashes, 3);
        assertThat(Measured.angle(closed.piece(), "upper")).isCloseTo(0.8 * angle, within(1e-12));
        assertThat(Measured.angle(closed.piece(), "lower")).isCloseTo(0.2 * angle, within(1e-12));
        assertThat(closed.piece().area()).isCloseTo(front.area(), within(1e-6));
        double gap = 8 * Math.sin(angle) + 12 * Math.sin(0.2 * angle);
        LegSlashes.Sliver sliver = closed.ledger().only(LegSlashes.Sliver.class).get(0);
        assertThat(sliver.widest()).isCloseTo(gap, within(1e-9));
        double width = Measured.at(closed.piece(), Spot.on("waist", 70, org.draftingmaths.piece.Beside.BEFORE))
                .distance(Measured.at(closed.piece(), Spot.on("waist", 70, org.draftingmaths.piece.Beside.AFTER)));
        assertThat(width).as("the mouth that remains").isGreaterThan(gap - 1e-9).isLessThan(gap + 1);
        assertThat(closed.piece().opening("waist dart").mouth().use()).isEqualTo(Use.SLASH);
        assertThat(SameCloth.differences(
                        Panels.undo(closed)
                                .using(
                                        "waist dart",
                                        front.opening("waist dart").mouth().use()),
                        front,
                        1e-9))
                .isEmpty();
        assertThatThrownBy(() -> LegSlashes.close(front, "waist dart", Leg.AFTER, slashes, 1))
                .isInstanceOf(DraftingException.class)
                .hasMessageStartingWith(
                        "Close 'waist dart' by slashes to its leg: a sliver too wide to be eased away would"
                                + " remain; end the slashes nearer the point (asked ");
    }

    @Test
    void whatCannotBeSaysWhy() {
        Piece front = front();
        Spot side = Spot.on("side seam", 100);
        assertThatThrownBy(() -> new Darts.Part(side, "new", 1).pointing(Vector2D.of(Double.NaN, 0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("Dart 'new' needs a place to point to: (NaN, 0.0).");
        assertThatThrownBy(() -> Darts.divide(
                        front, "waist dart", List.of(new Darts.Part(side, "new", 1).pointing(Vector2D.of(400, 150)))))
                .isInstanceOf(DraftingException.class)
                .hasMessageStartingWith(
                        "Slash 'new' from 'side seam' at 100.0 mm to the point of 'waist dart': it leaves the cloth");
        assertThatThrownBy(() -> new LegSlashes.OnLeg(side, "new", Double.NaN, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("Slash 'new' ends on a leg more than 0 mm from the mouth: NaN mm.");
        assertThatThrownBy(() -> LegSlashes.close(
                        front, "waist dart", Leg.AFTER, List.of(new LegSlashes.OnLeg(side, "new", 300, 1)), 3))
                .isInstanceOf(DraftingException.class)
                .hasMessage(
                        "Close 'waist dart' by slashes to its leg: 'new' would end past the point of the dart (asked"
                                + " 11 3/4 in (30.0 cm), possible 0 in (0.0 cm) to 6 in (15.1 cm)).");
        assertThatThrownBy(() -> Detach.across(
                        front, StyleLine.straight("line", side, Spot.on("centre front", 100)), "part", "part"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("Two parts need two names; both would be 'part'.");
    }
}
