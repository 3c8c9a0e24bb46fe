package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Straight;
import org.draftingmaths.ledger.Change;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;

/**
 * The ends of a dart's legs moved along their leg lines, and the seam redrawn to them on either side of the dart: the redraw
 * of an edge that a dart breaks.
 *
 * <p>Let {@code d} be the direction outwards of the closed dart's legs in the edge's base, and {@code x, y} by how much the
 * before and the after leg become longer. The base of all that follows the dart is shifted by {@code (x - y) d} and its motion
 * by as much back, so that on paper nothing moves but the two stretches beside the dart.
 *
 * <p>Conserved: the angle of the dart and its apex, every other edge, the place on paper of all else, the share of each notch
 * between the fixed points beside it. Changed and told: the legs, the intake, the edge's length, the net area.
 */
public final class LegEnds {

    private LegEnds() {}

    /**
     * Moves the ends of a dart's legs.
     *
     * @param piece the piece
     * @param dart the name of a dart
     * @param beforeSeam the stretch of its edge up to the dart, where it is to lie, in the edge's own direction; it ends on the
     *     line of the before leg
     * @param afterSeam the stretch of its edge from the dart on, where it is to lie, in the edge's own direction; it starts on
     *     the line of the after leg
     * @return the piece and what was done
     * @throws IllegalArgumentException when a stretch does not end on its leg's line, or its far end moves
     * @throws DraftingException when a leg is curved or cut, when it ends at a corner or at another opening, when nothing would
     *     be left to sew, or when the new outline would cross itself
     */
    public static Reworked move(Piece piece, String dart, CurvePath beforeSeam, CurvePath afterSeam) {
        String asked = "Move the leg ends of '" + dart + "'";
        Sides was = Sides.of(piece, dart, asked);
        was.requireFarEnds(beforeSeam, afterSeam, asked);
        Sides now = new Sides(
                dart,
                beforeSeam.transformed(was.before().motion().inverse()),
                afterSeam.transformed(was.after().motion().inverse()),
                ended(piece, dart, Leg.BEFORE, beforeSeam.end(), asked),
                ended(piece, dart, Leg.AFTER, afterSeam.start(), asked),
                was.before(),
                was.after());
        Piece moved = with(piece, now);
        Outlines.requireSimple(moved, asked);
        if (moved.opening(dart).mouth().use() instanceof Use.Dart use) {
            moved.using(dart, use);
        }
        Step step = new Step.LegEndsMoved(
                dart,
                was.beforeSeam(),
                was.afterSeam().transformed(now.shift()),
                was.beforeLeg(),
                was.afterLeg(),
                moved.edge(was.edge()),
                moved.opening(dart));
        return new Reworked(moved, told(piece, moved, was, now, Ledger.of(step)));
    }

    /**
     * The stretch of seam beside a dart where it lies.
     *
     * @param piece the piece
     * @param dart the name of a dart
     * @param leg up to the before leg, or from the after leg on
     * @return its curve, in the edge's own direction
     * @throws DraftingException as {@link #move}
     */
    public static CurvePath seam(Piece piece, String dart, Leg leg) {
        Sides sides = Sides.of(piece, dart, "Move the leg ends of '" + dart + "'");
        return leg == Leg.BEFORE
                ? sides.beforeSeam().transformed(sides.before().motion())
                : sides.afterSeam().transformed(sides.after().motion());
    }

    private static Ledger told(Piece before, Piece after, Sides was, Sides now, Ledger done) {
        String dart = "'" + was.dart() + "'";
        Ledger ledger = done.then(Ledger.of(
                length(
                        "before leg of " + dart,
                        was.beforeLeg().length(),
                        now.beforeLeg().length()),
                length(
                        "after leg of " + dart,
                        was.afterLeg().length(),
                        now.afterLeg().length()),
                length(
                        "length of '" + was.edge() + "'",
                        before.edge(was.edge()).length(),
                        after.edge(was.edge()).length()),
                length("intake of " + dart, Measured.intake(before, was.dart()), Measured.intake(after, was.dart()))));
        for (int i = 0; i < before.notches().size(); i++) {
            Notch then = before.notches().get(i);
            double arc = after.notches().get(i).arc();
            if (then.arc() != arc) {
                ledger = ledger.then(length("place of the notch along '" + then.edge() + "'", then.arc(), arc));
            }
        }
        return ledger.then(new Change("net area", Quantity.AREA, before.area(), after.area()));
    }

    private static Change length(String what, double before, double after) {
        return new Change(what, Quantity.LENGTH, before, after);
    }

    static Piece undo(Piece piece, Step.LegEndsMoved step) {
        String asked = "Undo the moving of the leg ends of '" + step.dart() + "'";
        if (!piece.openings().contains(step.openingAfter()) || !piece.edges().contains(step.edgeAfter())) {
            throw Panels.changedSince(asked);
        }
        Sides now = Sides.of(piece, step.dart(), asked);
        return with(
                piece,
                new Sides(
                        step.dart(),
                        step.beforeSeam(),
                        step.afterSeam(),
                        step.beforeLeg(),
                        step.afterLeg(),
                        now.before(),
                        now.after()));
    }

    /** The base of a leg that ends at a new place on its line. */
    private static CurvePath ended(Piece piece, String dart, Leg leg, Vector2D end, String asked) {
        CurvePath base = piece.opening(dart).base(leg);
        Run run = Panels.onlyRun(piece, piece.opening(dart).leg(leg)).orElseThrow();
        Vector2D to = run.motion().inverse().apply(end);
        Vector2D out = base.end().directionTo(base.start());
        Vector2D way = base.end().vectorTo(to);
        double beside = Math.abs(way.signedArea(out));
        if (beside > Panels.TOUCH || way.dot(out) <= Panels.TOUCH) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "%s: the seam must end on the line of the %s leg, but ends %.3f mm beside it, at %s.",
                    asked,
                    leg.name().toLowerCase(Locale.ROOT),
                    beside,
                    Outlines.words(end)));
        }
        return to.distance(base.start()) <= CurvePath.JOINT ? base : CurvePath.polyline(to, base.end());
    }

    /**
     * The two stretches of seam beside a dart and its two legs, each in its own base.
     *
     * @param dart the name of the dart
     * @param beforeSeam the stretch up to the dart
     * @param afterSeam the stretch from the dart on
     * @param beforeLeg the before leg
     * @param afterLeg the after leg
     * @param before the run that is the first stretch now
     * @param after the run that is the second stretch now
     */
    private record Sides(
            String dart,
            CurvePath beforeSeam,
            CurvePath afterSeam,
            CurvePath beforeLeg,
            CurvePath afterLeg,
            Run before,
            Run after) {

        static Sides of(Piece piece, String dart, String asked) {
            Opening opening = piece.opening(dart);
            Mouth mouth = opening.mouth();
            if (opening.farMouth().isPresent() || mouth.before() != mouth.after()) {
                throw new DraftingException(asked, "it is no dart: it goes through, or cloth was taken out of it");
            }
            for (Leg leg : Leg.values()) {
                List<Curve> curves = opening.base(leg).curves();
                boolean straight = curves.size() == 1 && curves.get(0) instanceof Straight;
                if (!straight || Panels.onlyRun(piece, opening.leg(leg)).isEmpty()) {
                    throw new DraftingException(
                            asked, "its " + name(leg) + " leg is curved, or another slash ends on it");
                }
            }
            Run before = run(piece, mouth.border(), run -> run.to() == mouth.before(), Leg.BEFORE, asked);
            Run after = run(piece, mouth.border(), run -> run.from() == mouth.after(), Leg.AFTER, asked);
            CurvePath base = piece.base(mouth.border());
            return new Sides(
                    dart,
                    base.between(before.from(), before.to()),
                    base.between(after.from(), after.to()),
                    opening.before(),
                    opening.after(),
                    before,
                    after);
        }

        private static Run run(Piece piece, Border border, Predicate<Run> where, Leg leg, String asked) {
            return piece.panels().stream()
                    .flatMap(panel -> panel.ring().stream())
                    .filter(run -> run.border().equals(border) && where.test(run))
                    .findFirst()
                    .orElseThrow(() -> new DraftingException(
                            asked,
                            "its " + name(leg) + " leg ends at a corner or at another opening, where no stretch of "
                                    + border.words() + " can be redrawn to it"));
        }

        private static String name(Leg leg) {
            return leg.name().toLowerCase(Locale.ROOT);
        }

        String edge() {
            return ((Border.OfEdge) before.border()).edge();
        }

        /** From where the second stretch lies in the base to where it continues the first. */
        AffineTransformMatrix2D shift() {
            return AffineTransformMatrix2D.createTranslation(afterSeam.start().vectorTo(beforeSeam.end()));
        }

        void requireFarEnds(CurvePath newBefore, CurvePath newAfter, String asked) {
            Vector2D start = before.motion().apply(beforeSeam.start());
            Vector2D end = after.motion().apply(afterSeam.end());
            if (start.distance(newBefore.start()) > Panels.TOUCH || end.distance(newAfter.end()) > Panels.TOUCH) {
                throw new IllegalArgumentException(asked + ": the stretches must go from " + Outlines.words(start)
                        + " to the dart and from the dart to " + Outlines.words(end) + ".");
            }
        }

        /** The whole edge: what lies before the first stretch, the two stretches, what lies after the second. */
        CurvePath base(CurvePath was) {
            List<Curve> curves = new ArrayList<>();
            if (before.from() > 0) {
                curves.addAll(was.between(0, before.from()).curves());
            }
            curves.addAll(beforeSeam.curves());
            curves.addAll(afterSeam.transformed(shift()).curves());
            if (was.length() - after.to() > Panels.TOUCH) {
                curves.addAll(was.between(after.to(), was.length())
                        .transformed(shift())
                        .curves());
            }
            return new CurvePath(curves);
        }

        /** Where an arc of the old base lies on the new one. */
        double arc(double old, double oldLength, double newLength) {
            double first = beforeSeam.length();
            double second = afterSeam.length();
            if (old == oldLength) {
                return newLength;
            } else if (old <= before.from()) {
                return old;
            } else if (old <= before.to()) {
                return before.from() + (old == before.to() ? first : (old - before.from()) * (first / before.length()));
            } else if (old <= after.to()) {
                double share = old == after.to() ? second : (old - after.from()) * (second / after.length());
                return before.from() + first + share;
            }
            return old - after.to() + before.from() + first + second;
        }
    }

    private static Piece with(Piece piece, Sides sides) {
        Edge edge = piece.edge(sides.edge());
        Edge changed = new Edge(edge.name(), edge.role(), edge.allowance(), sides.base(edge.base()));
        double was = edge.length();
        double is = changed.length();
        AffineTransformMatrix2D back = sides.shift().inverse();
        List<Panel> panels = new ArrayList<>();
        for (Panel panel : piece.panels()) {
            List<Run> ring = new ArrayList<>();
            for (Run run : panel.ring()) {
                if (run.border().equals(new Border.OfEdge(edge.name()))) {
                    ring.add(new Run(
                            run.border(),
                            sides.arc(run.from(), was, is),
                            sides.arc(run.to(), was, is),
                            run.forward(),
                            run.from() >= sides.after().from() ? run.motion().multiply(back) : run.motion()));
                } else if (run.border() instanceof Border.OfLeg leg
                        && leg.opening().equals(sides.dart())) {
                    CurvePath base = leg.leg() == Leg.BEFORE ? sides.beforeLeg() : sides.afterLeg();
                    ring.add(run.part(0, base.length()));
                } else {
                    ring.add(run);
                }
            }
            panels.add(panel.with(ring));
        }
        Piece bare = new Piece(
                piece.name(),
                piece.edges().stream()
                        .map(each -> each.equals(edge) ? changed : each)
                        .toList(),
                piece.openings().stream()
                        .map(each -> opening(each, sides, was, is))
                        .toList(),
                panels,
                piece.levels(),
                piece.insideDarts(),
                piece.notches().stream()
                        .map(notch -> notch.edge().equals(edge.name())
                                ? new Notch(notch.edge(), sides.arc(notch.arc(), was, is), notch.beside())
                                : notch)
                        .toList(),
                piece.grain());
        return Redraw.withLevels(piece, bare);
    }

    private static Opening opening(Opening opening, Sides sides, double was, double is) {
        boolean own = opening.name().equals(sides.dart());
        return new Opening(
                opening.name(),
                mouth(opening.mouth(), sides, was, is),
                opening.farMouth().map(mouth -> mouth(mouth, sides, was, is)),
                own ? sides.beforeLeg() : opening.before(),
                own ? sides.afterLeg() : opening.after());
    }

    private static Mouth mouth(Mouth mouth, Sides sides, double was, double is) {
        return mouth.border().equals(sides.before().border())
                ? new Mouth(
                        mouth.border(),
                        sides.arc(mouth.before(), was, is),
                        sides.arc(mouth.after(), was, is),
                        mouth.use())
                : mouth;
    }
}
