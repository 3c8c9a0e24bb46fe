package org.draftingmaths.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Finding.Kind;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Border;
import org.draftingmaths.piece.DartEnd;
import org.draftingmaths.piece.InsideDart;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Opening;
import org.draftingmaths.piece.Panel;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Run;
import org.draftingmaths.piece.StitchLines;
import org.draftingmaths.piece.Underlay;
import org.draftingmaths.piece.Use;
import org.draftingmaths.unit.Angles;

/** What is wrong with the darts of a piece. None of it throws: what cannot be measured because of one fault is left to that fault. */
final class DartChecks {

    private final Piece piece;
    private final double tolerance;
    private final DartLimits limits;
    private final List<Finding> found = new ArrayList<>();

    private DartChecks(Piece piece, double tolerance, DartLimits limits) {
        this.piece = piece;
        this.tolerance = tolerance;
        this.limits = limits;
    }

    static List<Finding> of(Piece piece, double tolerance, DartLimits limits) {
        DartChecks checks = new DartChecks(piece, tolerance, limits);
        piece.openings().stream()
                .filter(opening -> opening.mouth().use() instanceof Use.Dart)
                .forEach(checks::dart);
        piece.insideDarts().forEach(checks::inside);
        piece.panels().forEach(checks::slivers);
        return List.copyOf(checks.found);
    }

    private void dart(Opening opening) {
        String dart = opening.name();
        legs(dart);
        width(opening);
        small(where(dart), Measured.intake(piece, dart));
        double setBack = ((Use.Dart) opening.mouth().use()).setBack();
        double depth = DartEnd.depth(piece, dart);
        if (setBack >= depth) {
            add(Kind.TIP_BEYOND_LEG, where(dart), Quantity.LENGTH, setBack, depth, 0, "Set the point back by less.");
        } else if (Measured.intake(piece, dart) > CurvePath.JOINT) {
            offBisector(dart);
            crossing(dart);
            underlay(dart);
        }
    }

    private void legs(String dart) {
        double before = Measured.leg(piece, dart, Leg.BEFORE).length();
        double after = Measured.leg(piece, dart, Leg.AFTER).length();
        if (Math.abs(before - after) > tolerance) {
            add(
                    Kind.LEGS_UNEQUAL,
                    where(dart),
                    Quantity.LENGTH,
                    after,
                    before,
                    tolerance,
                    "Make them equal (Legs.equalise).");
        }
    }

    private void width(Opening opening) {
        double angle = Measured.angle(piece, opening.name());
        String remedy = "Divide it (Darts.divide).";
        if (angle > limits.widestAngle()) {
            add(Kind.DART_WIDE, where(opening.name()), Quantity.ANGLE, angle, limits.widestAngle(), 0, remedy);
        }
        Optional<Double> widest = opening.mouth().border() instanceof Border.OfEdge edge
                ? Optional.ofNullable(limits.widestIntakes().get(edge.edge()))
                : Optional.empty();
        double intake = Measured.intake(piece, opening.name());
        widest.filter(limit -> intake > limit)
                .ifPresent(
                        limit -> add(Kind.DART_WIDE, where(opening.name()), Quantity.LENGTH, intake, limit, 0, remedy));
    }

    private void small(String where, double intake) {
        if (intake < limits.smallestIntake()) {
            add(
                    Kind.DART_SMALL,
                    where,
                    Quantity.LENGTH,
                    intake,
                    limits.smallestIntake(),
                    0,
                    "Ease so little in (Darts.leave).");
        }
    }

    /** The sewn point must lie as far from the one leg end as from the other: on the line square over the middle of the mouth. */
    private void offBisector(String dart) {
        Vector2D before = Measured.leg(piece, dart, Leg.BEFORE).start();
        Vector2D after = Measured.leg(piece, dart, Leg.AFTER).start();
        Vector2D toTip = before.lerp(after, 0.5).vectorTo(DartEnd.sewnTip(piece, dart));
        double off = Math.abs(toTip.dot(before.directionTo(after)));
        if (off > tolerance) {
            add(
                    Kind.POINT_OFF_BISECTOR,
                    where(dart),
                    Quantity.LENGTH,
                    off,
                    0,
                    tolerance,
                    "Make the legs equal (Legs.equalise).");
        }
    }

    private void crossing(String dart) {
        double room = StitchLines.room(piece, dart);
        if (room <= 1) {
            add(
                    Kind.STITCH_LINES_CROSS,
                    where(dart),
                    Quantity.COUNT,
                    1,
                    0,
                    0,
                    String.format(Locale.ROOT, "At most %.2f of its shape fits.", room));
        }
    }

    private void underlay(String dart) {
        List<Underlay.Overrun> overruns = Underlay.overruns(piece, dart).stream()
                .filter(overrun -> overrun.by() > tolerance)
                .toList();
        for (Underlay.Overrun overrun : overruns) {
            add(
                    Kind.UNDERLAY_OVERRUNS,
                    where(dart) + ", past " + overrun.past().words(),
                    Quantity.LENGTH,
                    overrun.by(),
                    0,
                    tolerance,
                    "Trim the underlay flush with " + overrun.past().words() + ". " + otherWay(dart));
        }
        double peak = Underlay.peak(piece, dart);
        double longest = limits.longestPeak() * Measured.intake(piece, dart);
        if (overruns.isEmpty() && peak > longest) {
            add(
                    Kind.UNDERLAY_LONG,
                    where(dart),
                    Quantity.LENGTH,
                    peak,
                    longest,
                    0,
                    "Trim the underlay to a seam allowance beside the stitch line. " + otherWay(dart)
                            + " Or move the dart to where the seam crosses it more nearly square (Darts.rotate).");
        }
    }

    /** The other way, and how far the fold would stand out or overrun there. */
    private String otherWay(String dart) {
        Use.Dart use = (Use.Dart) piece.opening(dart).mouth().use();
        if (use.press().isEmpty()) {
            return "Or press the dart to one side (Piece.using).";
        }
        Leg other = use.press().get().other();
        double by =
                Underlay.overrun(piece, dart, other).map(Underlay.Overrun::by).orElse(0.0);
        if (by > tolerance) {
            return String.format(
                    Locale.ROOT,
                    "Or press the dart the other way (Piece.using), though there it reaches past by %.1f mm.",
                    by);
        }
        double peak = Underlay.peak(piece, dart, other);
        return String.format(
                Locale.ROOT,
                "Or press the dart the other way (Piece.using): there it has room, and its fold ends %.1f mm %s the mouth.",
                Math.abs(peak),
                peak < 0 ? "inside" : "outside");
    }

    private void inside(InsideDart dart) {
        String where = where(dart.name());
        if (dart.intake() > limits.widestInside()) {
            add(
                    Kind.DART_WIDE,
                    where,
                    Quantity.LENGTH,
                    dart.intake(),
                    limits.widestInside(),
                    0,
                    "Take part of it in at the seams, or make two of it.");
        }
        small(where, dart.intake());
    }

    /** Two darts at one apex: the corner of the panel between them. */
    private void slivers(Panel panel) {
        List<Run> ring = panel.ring();
        for (int i = 0; i < ring.size(); i++) {
            Run in = ring.get(i);
            Run out = ring.get((i + 1) % ring.size());
            if (in.forward()
                    && !out.forward()
                    && in.border() instanceof Border.OfLeg one
                    && out.border() instanceof Border.OfLeg other
                    && !one.opening().equals(other.opening())) {
                Vector2D arriving = piece.place(in).endTangent();
                Vector2D leaving = piece.place(out).startTangent();
                double sector = Math.PI - Math.atan2(arriving.signedArea(leaving), arriving.dot(leaving));
                if (sector < limits.smallestSector()) {
                    add(
                            Kind.SLIVER,
                            "between " + pair(one.opening(), other.opening()),
                            Quantity.ANGLE,
                            sector,
                            limits.smallestSector(),
                            0,
                            "Put the darts " + Angles.degrees(limits.smallestSector(), 0) + " apart or more.");
                }
            }
        }
    }

    private String pair(String one, String other) {
        boolean inOrder = one.compareTo(other) < 0;
        return "'" + (inOrder ? one : other) + "' and " + where(inOrder ? other : one);
    }

    private String where(String dart) {
        return "'" + dart + "' of '" + piece.name() + "'";
    }

    private void add(
            Kind kind,
            String where,
            Quantity quantity,
            double measured,
            double expected,
            double allowed,
            String remedy) {
        found.add(new Finding(kind, where, quantity, measured, expected, allowed, remedy));
    }
}
