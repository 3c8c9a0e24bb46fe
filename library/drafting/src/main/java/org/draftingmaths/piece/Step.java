package org.draftingmaths.piece;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.unit.Steps;

/** A step of the mechanism. Each holds what its inverse needs; of the piece before it only {@link MadeLonger} holds all. */
public sealed interface Step extends Entry {

    /**
     * A cut along a line; the sheet came apart there but nothing has moved.
     *
     * @param opening the opening it made
     * @param along the cut where it lay, from the mouth inwards
     */
    record Cut(String opening, CurvePath along) implements Step {
        @Override
        public String sentence(Steps steps) {
            return "Cut along '" + opening + "', " + Quantity.LENGTH.print(along.length(), steps) + " long.";
        }
    }

    /**
     * An opening put to another use. It is told by the operation that did it, and has no sentence of its own.
     *
     * @param opening the name of the opening
     * @param far whether at its other end
     * @param before what its surplus was there before
     * @param after what it is now
     */
    record Used(String opening, boolean far, Use before, Use after) implements Step {
        @Override
        public String sentence(Steps steps) {
            if (!(after instanceof Use.Left left)) {
                return "";
            }
            String surplus = switch (left.kind()) {
                case SLASH -> "what becomes of its surplus is not decided yet";
                case EASE -> "its surplus is eased in";
                case GATHERS -> "its surplus is gathered";
                case FLARE -> "its surplus hangs free";
            };
            return "Leave '" + opening + "' unsewn" + (far ? " at its other end" : "") + ": " + surplus + ".";
        }
    }

    /**
     * Panels carried to a new place.
     *
     * @param panels each panel that moved
     */
    record Moved(List<MovedPanel> panels) implements Step {
        /** Copies the list. */
        public Moved {
            panels = List.copyOf(panels);
        }

        @Override
        public String sentence(Steps steps) {
            String words = panels.stream().map(panel -> panel.words(steps)).collect(Collectors.joining("; ", "", "."));
            return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
        }
    }

    /**
     * One panel carried to a new place.
     *
     * @param witness a place on its ring by which it is known
     * @param panel the panel in words
     * @param by the isometry
     */
    record MovedPanel(Spot witness, String panel, AffineTransformMatrix2D by) {
        /**
         * By how much the panel turned.
         *
         * @return the angle in radians, anticlockwise
         */
        public double turn() {
            return Isometry.angle(by);
        }

        String words(Steps steps) {
            double turn = turn();
            if (turn != 0) {
                return "turn " + panel + " by " + Quantity.ANGLE.print(Math.abs(turn), steps)
                        + (turn > 0 ? " anticlockwise" : " clockwise");
            }
            double right = by.toArray()[2];
            double up = by.toArray()[5];
            String ways = Stream.of(along(right, "to the right", "to the left", steps), along(up, "up", "down", steps))
                    .flatMap(Optional::stream)
                    .collect(Collectors.joining(" and "));
            return "move " + panel + " "
                    + (ways.isEmpty() ? "by " + Quantity.LENGTH.printFinely(Math.hypot(right, up)) : ways);
        }

        /** A shift of less than a twentieth of a millimetre along an axis is left out. */
        private static Optional<String> along(double shift, String way, String back, Steps steps) {
            return Math.abs(shift) < 0.05
                    ? Optional.empty()
                    : Optional.of(
                            "by " + Quantity.LENGTH.print(Math.abs(shift), steps) + " " + (shift > 0 ? way : back));
        }
    }

    /**
     * An opening closed for good, its two legs made one cloth again.
     *
     * @param opening the opening as it was
     * @param mouth where its mouth was
     * @param end where its other end was
     * @param along where the legs lay when they met, from the mouth inwards
     * @param before the motion of its before leg
     * @param after the motion of its after leg
     */
    record Joined(
            Opening opening,
            Spot mouth,
            Spot end,
            CurvePath along,
            AffineTransformMatrix2D before,
            AffineTransformMatrix2D after)
            implements Step {
        @Override
        public String sentence(Steps steps) {
            return "Close '" + opening.name() + "'.";
        }
    }

    /**
     * A panel between two openings taken out; the cloth is lost and the two openings are one.
     *
     * @param first the opening before it
     * @param second the opening after it
     * @param gap the name of the opening they made together
     * @param lost the panel taken out
     * @param notches the notches on it, which went to the join
     */
    record TakenOut(Opening first, Opening second, String gap, Panel lost, List<Notch> notches) implements Step {
        /** Copies the list. */
        public TakenOut {
            notches = List.copyOf(notches);
        }

        @Override
        public String sentence(Steps steps) {
            String widths = lost.ring().stream()
                    .filter(run -> run.border() instanceof Border.OfEdge)
                    .map(run -> Quantity.LENGTH.print(run.length(), steps) + " of "
                            + run.border().words())
                    .collect(Collectors.joining(" and "));
            return "Take out " + widths + " between '" + first.name() + "' and '" + second.name() + "'.";
        }
    }

    /**
     * The whole piece mirrored.
     *
     * @param by the reflection
     */
    record Mirrored(AffineTransformMatrix2D by) implements Step {
        @Override
        public String sentence(Steps steps) {
            return "Mirror the piece.";
        }
    }

    /**
     * The grain line drawn anew; its direction on the part that stays is the same.
     *
     * @param before where it was drawn
     * @param after where it is drawn
     */
    record GrainRedrawn(Optional<Grain> before, Optional<Grain> after) implements Step {
        @Override
        public String sentence(Steps steps) {
            return "Draw the grain line again on the part that stayed, in the same direction.";
        }
    }

    /**
     * The grain line turned: the piece is to be cut from the cloth in another direction.
     *
     * @param before where it was drawn
     * @param after where it is drawn
     * @param angle by how much it was turned in radians, anticlockwise
     */
    record GrainTurned(Grain before, Grain after, double angle) implements Step {
        @Override
        public String sentence(Steps steps) {
            return "Turn the grain line by " + Quantity.ANGLE.print(Math.abs(angle), steps)
                    + (angle > 0 ? " anticlockwise" : " clockwise") + "; the outline stays as it is.";
        }
    }

    /**
     * Cloth added beyond an edge, which is an edge no more but a line marked on the cloth.
     *
     * @param edge the edge that was
     * @param run where it lay
     * @param line the level line that marks it now
     * @param added the names of the edges that were added
     * @param lengthened edges that go on beyond it, as they were
     * @param notches the notches before
     */
    record Extended(Edge edge, Run run, String line, List<String> added, List<Edge> lengthened, List<Notch> notches)
            implements Step {
        /** Copies the lists. */
        public Extended {
            added = List.copyOf(added);
            lengthened = List.copyOf(lengthened);
            notches = List.copyOf(notches);
        }

        @Override
        public String sentence(Steps steps) {
            String goOn = "Draw the piece on beyond '" + edge.name() + "', and mark where that was as the line '" + line
                    + "'";
            return goOn + (edge.role() == Role.HEM ? "; the hem is turned on it." : ".");
        }
    }

    /**
     * A double-pointed dart left unsewn: the mark is gone.
     *
     * @param dart the dart
     * @param laid where it lay
     * @param witness a place on the border of the panel on which it lay
     */
    record MarkLeft(InsideDart dart, Laid laid, Spot witness) implements Step {
        @Override
        public String sentence(Steps steps) {
            return "Leave '" + dart.name() + "' unsewn, all " + Quantity.LENGTH.print(dart.intake(), steps) + " of it.";
        }
    }

    /**
     * The stretches of a base that were drawn anew.
     *
     * @param edge the name of the edge
     * @param parts the stretches, ascending; where darts break the edge they meet at the mouths
     * @param length the length of the whole base before
     * @param newLength the length of the whole base now
     */
    record Span(String edge, List<Drawn> parts, double length, double newLength) {

        /**
         * One stretch.
         *
         * @param from the base arc in mm where it started
         * @param to where it ended
         * @param newFrom where it starts now
         * @param newTo where it ends now
         */
        record Drawn(double from, double to, double newFrom, double newTo) {
            Drawn back() {
                return new Drawn(newFrom, newTo, from, to);
            }
        }

        /** Copies the list. */
        public Span {
            parts = List.copyOf(parts);
        }

        /** Where an arc that is no inner one of a stretch lies now; ends go to ends to the last bit. */
        double moved(double arc) {
            if (arc == length) {
                return newLength;
            }
            double now = arc;
            for (Drawn part : parts) {
                if (arc == part.to()) {
                    return part.newTo();
                } else if (arc > part.to()) {
                    now = arc + part.newTo() - part.to();
                }
            }
            return now;
        }

        /** The stretch of which an arc is an inner one. */
        Optional<Drawn> around(double arc) {
            return parts.stream()
                    .filter(part -> part.from() < arc && arc < part.to())
                    .findFirst();
        }

        Span back() {
            return new Span(edge, parts.stream().map(Drawn::back).toList(), newLength, length);
        }

        /** The edge with the figure to draw it by. */
        private String words(Steps steps) {
            String was = Quantity.LENGTH.print(length, steps);
            String is = Quantity.LENGTH.print(newLength, steps);
            return "'" + edge + "'" + (was.equals(is) ? ", " + is + " as before" : " to " + is + ", before " + was);
        }
    }

    /**
     * The legs of a dart cut or lengthened to an edge that was drawn anew over it.
     *
     * @param dart the name of the dart
     * @param before the base of its before leg as it was
     * @param after the base of its after leg as it was
     * @param newBefore the base of its before leg now
     * @param newAfter the base of its after leg now
     */
    record LegsCut(String dart, CurvePath before, CurvePath after, CurvePath newBefore, CurvePath newAfter) {

        LegsCut back() {
            return new LegsCut(dart, newBefore, newAfter, before, after);
        }

        /** The opening with its legs as they are now. */
        Opening of(Opening opening) {
            return new Opening(dart, opening.mouth(), opening.farMouth(), newBefore, newAfter);
        }

        /** Whether the legs are still as they were left. */
        boolean holds(Piece piece) {
            return piece.openings().stream()
                    .anyMatch(each -> each.name().equals(dart)
                            && each.before().equals(newBefore)
                            && each.after().equals(newAfter));
        }
    }

    /**
     * The level lines of a panel.
     *
     * @param witness a place on the panel's ring
     * @param stretches how they lay
     */
    record Lines(Spot witness, List<Stretch> stretches) {
        /** Copies the list. */
        public Lines {
            stretches = List.copyOf(stretches);
        }
    }

    /**
     * Edges redrawn.
     *
     * @param piece the name of the piece
     * @param edges the edges before
     * @param notches the notches before
     * @param edgesAfter the edges after, by which an undo knows that nothing was changed since
     * @param notchesAfter the notches after
     * @param spans for each edge that was redrawn the stretches of it
     * @param darts the darts over which it was done, each with its legs
     * @param lines for each panel on which level lines were cut or went on, how they lay
     */
    record Redrawn(
            String piece,
            List<Edge> edges,
            List<Notch> notches,
            List<Edge> edgesAfter,
            List<Notch> notchesAfter,
            List<Span> spans,
            List<LegsCut> darts,
            List<Lines> lines)
            implements Step {
        /** Copies the lists. */
        public Redrawn {
            edges = List.copyOf(edges);
            notches = List.copyOf(notches);
            edgesAfter = List.copyOf(edgesAfter);
            notchesAfter = List.copyOf(notchesAfter);
            spans = List.copyOf(spans);
            darts = List.copyOf(darts);
            lines = List.copyOf(lines);
        }

        /**
         * The edges that were redrawn.
         *
         * @return their names
         */
        public List<String> redrawn() {
            return spans.stream().map(Span::edge).toList();
        }

        @Override
        public String sentence(Steps steps) {
            String folded =
                    darts.isEmpty() ? "." : ", with " + listed(darts.stream().map(LegsCut::dart)) + " folded.";
            return spans.stream()
                            .map(span -> span.words(steps))
                            .collect(Collectors.joining("; ", "Redraw on '" + piece + "': ", ""))
                    + folded;
        }

        private static String listed(Stream<String> names) {
            return names.map(name -> "'" + name + "'").collect(Collectors.joining(" and "));
        }
    }

    /**
     * The ends of a dart's legs moved along their lines, and the seam beside the dart redrawn to them.
     *
     * @param dart the name of the dart
     * @param beforeSeam the stretch up to the dart as it was, in the edge's base as it is now
     * @param afterSeam the stretch from the dart on as it was, in the edge's base as it is now
     * @param beforeLeg the base of the before leg as it was
     * @param afterLeg the base of the after leg as it was
     * @param edgeAfter the edge after, by which an undo knows that nothing was changed since
     * @param openingAfter the dart after
     */
    record LegEndsMoved(
            String dart,
            CurvePath beforeSeam,
            CurvePath afterSeam,
            CurvePath beforeLeg,
            CurvePath afterLeg,
            Edge edgeAfter,
            Opening openingAfter)
            implements Step {
        @Override
        public String sentence(Steps steps) {
            return "Move the leg ends of '" + dart + "' along their lines and redraw '" + edgeAfter.name()
                    + "' to them.";
        }
    }

    /**
     * A sheet made longer or shorter across a line that darts may cross. What is taken out is found nowhere else, and bases are found anew, so the whole
     * sheet is kept for the way back.
     *
     * @param asked what was asked, in words
     * @param before the piece before
     * @param after the piece after, by which an undo knows that nothing was changed since
     */
    record MadeLonger(String asked, Piece before, Piece after) implements Step {
        @Override
        public String sentence(Steps steps) {
            return asked
                    + ": all below the line moves with it, and darts across it are drawn anew from mouth to point.";
        }
    }

    /**
     * The gap of an opening filled with cloth.
     *
     * @param opening the opening as it was
     * @param area the cloth that was added, in square mm
     * @param before the motion of its before leg
     * @param after the motion of its after leg
     * @param joints where the two parts were joined, in the order in which it was done
     * @param lines where level lines go on over the cloth, in the order in which it was done
     * @param notches the notches before
     * @param notchesAfter the notches after
     */
    record Filled(
            Opening opening,
            double area,
            AffineTransformMatrix2D before,
            AffineTransformMatrix2D after,
            List<Joint> joints,
            List<LineJoint> lines,
            List<Notch> notches,
            List<Notch> notchesAfter)
            implements Step {
        /** Copies the lists. */
        public Filled {
            joints = List.copyOf(joints);
            lines = List.copyOf(lines);
            notches = List.copyOf(notches);
            notchesAfter = List.copyOf(notchesAfter);
        }

        @Override
        public String sentence(Steps steps) {
            return "Fill '" + opening.name() + "' with cloth: " + Quantity.AREA.print(area, steps) + ".";
        }
    }

    /**
     * Where the two sides of a filled opening were joined: at one end of it, the edge there made one again over what is drawn across.
     *
     * @param arriving where the outline comes to it
     * @param leaving where the outline goes on from it
     * @param edge the edge whose base was changed, as it was; empty where no edge had to be joined
     * @param edgeAfter the same edge as it is
     * @param from the base arc at which the joined stretch begins
     * @param to the base arc before at which the edge went on
     * @param width the length of what was drawn across
     * @param turn the isometry from the base before to the base after, beyond the joint
     * @param arcs the base arcs before of what ends or begins beyond the joint, so that they come back to the last bit
     */
    record Joint(
            Optional<Spot.On> arriving,
            Optional<Spot.On> leaving,
            Optional<Edge> edge,
            Optional<Edge> edgeAfter,
            double from,
            double to,
            double width,
            AffineTransformMatrix2D turn,
            List<Double> arcs) {
        /** Copies the list. */
        public Joint {
            arcs = List.copyOf(arcs);
        }

        Joint at(Spot.On comes, Spot.On goes) {
            return new Joint(Optional.of(comes), Optional.of(goes), edge, edgeAfter, from, to, width, turn, arcs);
        }
    }

    /**
     * Where a level line goes on over a gap that was filled.
     *
     * @param line the line as it was
     * @param lineAfter the line as it is
     * @param from the base arc at which what is drawn over the gap begins
     * @param to the base arc before at which the line went on
     * @param width the length of what was drawn
     * @param turn the isometry from the base before to the base after, beyond the gap
     * @param arcs the base arcs before of what ends or begins beyond the gap, so that they come back to the last bit
     */
    record LineJoint(
            LevelLine line,
            LevelLine lineAfter,
            double from,
            double to,
            double width,
            AffineTransformMatrix2D turn,
            List<Double> arcs) {
        /** Copies the list. */
        public LineJoint {
            arcs = List.copyOf(arcs);
        }

        /** A stretch as it is counted once the gap is filled. */
        Stretch onwards(Stretch stretch) {
            return stretch.line().equals(line.name()) && stretch.from() >= to
                    ? new Stretch(
                            line.name(),
                            onwards(stretch.from()),
                            onwards(stretch.to()),
                            stretch.motion().multiply(turn.inverse()))
                    : stretch;
        }

        private double onwards(double arc) {
            return arc == line.base().length() ? lineAfter.base().length() : from + width + (arc - to);
        }

        /** A stretch as it was counted before: in two where it went on over the gap. */
        Stream<Stretch> back(Stretch stretch) {
            if (!stretch.line().equals(line.name()) || stretch.to() <= from) {
                return Stream.of(stretch);
            }
            Stretch lower = new Stretch(line.name(), stretch.from(), from, stretch.motion());
            Stretch upper = new Stretch(
                    line.name(),
                    back(Math.max(stretch.from(), from + width)),
                    back(stretch.to()),
                    stretch.motion().multiply(turn));
            return Stream.of(lower, upper).filter(each -> each.from() < each.to());
        }

        private double back(double arc) {
            double before = arc == lineAfter.base().length() ? line.base().length() : to + (arc - from - width);
            return arcs.stream()
                    .filter(each -> Math.abs(each - before) <= Panels.TOUCH)
                    .findFirst()
                    .orElse(before);
        }
    }

    /**
     * A half piece opened out at its fold.
     *
     * @param fold the edge that was the fold
     * @param run where it lay
     * @param notches the notches of the half
     */
    record Unfolded(Edge fold, Run run, List<Notch> notches) implements Step {
        /** Copies the list. */
        public Unfolded {
            notches = List.copyOf(notches);
        }

        @Override
        public String sentence(Steps steps) {
            return "Open the piece out at '" + fold.name() + "', which is an edge no more.";
        }
    }

    /**
     * A piece cut in two along a line.
     *
     * @param line the edge that both parts got
     * @param whole the name of the piece it was
     * @param edges its edges
     * @param openings its openings, the cut ones among them
     * @param levels its level lines
     * @param darts its double-pointed darts
     * @param notches its notches
     * @param grain its grain line
     * @param before how the one part came of it
     * @param after how the other did
     */
    record Parted(
            String line,
            String whole,
            List<Edge> edges,
            List<Opening> openings,
            List<LevelLine> levels,
            List<InsideDart> darts,
            List<Notch> notches,
            Optional<Grain> grain,
            Half before,
            Half after)
            implements Step {
        /** Copies the lists. */
        public Parted {
            edges = List.copyOf(edges);
            openings = List.copyOf(openings);
            levels = List.copyOf(levels);
            darts = List.copyOf(darts);
            notches = List.copyOf(notches);
        }

        @Override
        public String sentence(Steps steps) {
            return "Cut '" + whole + "' in two along '" + line + "': '" + before.piece() + "' and '" + after.piece()
                    + "'.";
        }
    }

    /**
     * How one part came of the whole.
     *
     * @param piece the name of the part
     * @param stretches what the line is made of on this part
     * @param parts the stretches of edges on it, and their names
     * @param legs the legs of darts that the line crossed, and the stretch of them on this part
     * @param edges its edges, by which an attaching knows that nothing was changed since
     * @param openings its openings, for the same reason
     */
    record Half(
            String piece,
            List<LineStretch> stretches,
            List<EdgePart> parts,
            List<LegPart> legs,
            List<Edge> edges,
            List<Opening> openings) {
        /** Copies the lists. */
        public Half {
            stretches = List.copyOf(stretches);
            parts = List.copyOf(parts);
            legs = List.copyOf(legs);
            edges = List.copyOf(edges);
            openings = List.copyOf(openings);
        }
    }

    /**
     * A stretch of the line that was a leg of an opening.
     *
     * @param leg the leg
     * @param length its length in mm
     * @param from the lower arc on the line, in mm
     * @param to the upper arc: {@code from + length} but for rounding
     * @param inwards whether the line passes the leg from the mouth inwards
     * @param intoLine the isometry from the leg's base to the line's
     */
    record LineStretch(
            Border leg, double length, double from, double to, boolean inwards, AffineTransformMatrix2D intoLine) {}

    /**
     * A stretch of an edge that became an edge of a part.
     *
     * @param edge the edge
     * @param from the lower base arc in mm
     * @param to the upper base arc
     * @param name the name of the edge on the part
     * @param length its length there: {@code to - from} but for rounding
     */
    record EdgePart(String edge, double from, double to, String name, double length) {}

    /**
     * The stretch of a dart's leg that is on a part.
     *
     * @param leg the leg
     * @param from the lower arc in mm from the mouth
     * @param to the upper arc
     * @param length its length on the part: {@code to - from} but for rounding
     */
    record LegPart(Border leg, double from, double to, double length) {}
}
