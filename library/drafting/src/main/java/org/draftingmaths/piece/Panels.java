package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Ledger;

/**
 * The primitives that every operation is made of, and their inverses: cut, move, join, take out, fill, mirror.
 *
 * <p>Conserved by each: the base of every edge, the base arc of every mark, the net area of cloth (but for what is taken
 * out or filled in, which the ledger keeps), the shape of every panel. {@code undo(rework(piece)) = piece} to rounding.
 */
public final class Panels {

    /** Points nearer than this, in mm, are one point: far above rounding, far below anything that can be drawn. */
    static final double TOUCH = 1e-6;

    private Panels() {}

    // ------------------------------------------------------------------------------------------------ cut

    /**
     * Cuts the sheet from one place on a panel's ring to another. Nothing moves; the new opening has no width.
     *
     * @param piece the piece
     * @param slash where to cut
     * @return the piece with one panel more
     * @throws DraftingException when the line leaves the panel, crosses its ring, or its two ends lie on no panel together
     */
    public static Reworked cut(Piece piece, Slash slash) {
        List<CurvePath> rings = Outlines.simpleRings(piece, slash::words);
        Corners corners = Corners.of(piece, slash.mouth(), slash.end(), slash::words);
        CurvePath along = corners.along(slash.along(), slash::words);
        Outlines.requireInside(rings.get(corners.index()), corners.piece(), corners.panel(), along, slash::words);
        Opening opening = new Opening(
                slash.name(),
                Mouth.undecided(((Spot.On) slash.mouth()).border(), corners.startArc()),
                farMouth(slash.end()),
                along,
                along);
        Piece cut = Split.split(corners, opening, along, Isometry.NONE, Isometry.NONE);
        return new Reworked(cut, Ledger.of(new Step.Cut(slash.name(), along)));
    }

    private static Optional<Mouth> farMouth(Spot end) {
        return end instanceof Spot.On on ? Optional.of(Mouth.undecided(on.border(), on.arc())) : Optional.empty();
    }

    // ------------------------------------------------------------------------------------------------ move

    /**
     * Carries panels to a new place. Openings widen or narrow; nothing is joined.
     *
     * @param piece the piece
     * @param motions for each panel in the order of {@link Piece#panels()} its isometry
     * @return the piece with its panels moved
     */
    static Reworked move(Piece piece, List<AffineTransformMatrix2D> motions) {
        List<Step.MovedPanel> moved = new ArrayList<>();
        List<Panel> panels = new ArrayList<>();
        for (int i = 0; i < motions.size(); i++) {
            Panel panel = piece.panels().get(i);
            AffineTransformMatrix2D by = motions.get(i);
            if (by.equals(Isometry.NONE)) {
                panels.add(panel);
            } else {
                panels.add(panel.moved(by));
                moved.add(new Step.MovedPanel(witness(panel), panel.words(), by));
            }
        }
        return new Reworked(piece.with(panels), moved.isEmpty() ? Ledger.EMPTY : Ledger.of(new Step.Moved(moved)));
    }

    /** A place on the panel's ring that no move changes. */
    static Spot.On witness(Panel panel) {
        Run run = panel.ring().get(0);
        return new Spot.On(run.border(), (run.from() + run.to()) / 2, Optional.empty());
    }

    static int panelOf(Piece piece, Spot.On witness) {
        for (int i = 0; i < piece.panels().size(); i++) {
            boolean here = piece.panels().get(i).ring().stream()
                    .anyMatch(run -> run.border().equals(witness.border())
                            && run.from() <= witness.arc()
                            && witness.arc() <= run.to());
            if (here) {
                return i;
            }
        }
        throw changedSince(witness.words());
    }

    // ------------------------------------------------------------------------------------------------ open

    /**
     * Opens and closes: moves the panels so that at each named opening the after side moves as told, seen from the before
     * side, and joins what has closed. Panels that meet at other openings move together. With {@code M} the motion of a
     * group and {@code R} the relative motion at an opening, {@code M(after) = M(before) R}, and {@code M} of the part that
     * stays is none. Round every loop of openings the motions must cancel: what opens is what closes.
     *
     * @param piece the piece
     * @param relative for each opening that changes, how its after side moves as seen from its before side
     * @param stay which part stays where it is
     * @param asked the operation in words, for refusals
     * @return the piece and what was done
     * @throws DraftingException when the motions round a loop do not cancel, when parts would lie over one another (with the
     *     largest angle or shift that clears), or when nothing tells which part stays
     */
    public static Reworked open(Piece piece, Map<String, Motion> relative, Stay stay, String asked) {
        return Open.open(piece, new TreeMap<>(relative), stay, asked);
    }

    // ------------------------------------------------------------------------------------------------ join

    /**
     * Joins an opening whose two legs coincide: they go, and the cloth is one again.
     *
     * @param piece the piece
     * @param name the opening
     * @return the piece without that opening
     * @throws DraftingException when the legs do not coincide
     */
    public static Reworked join(Piece piece, String name) {
        Opening opening = piece.opening(name);
        if (!closed(piece, name)) {
            throw new DraftingException("Join '" + name + "'", "its legs do not lie on one another; close it first");
        }
        return Join.join(piece, opening);
    }

    /** Whether the two legs of an opening coincide. */
    static boolean closed(Piece piece, String name) {
        Optional<Run> before = onlyRun(piece, new Border.OfLeg(name, Leg.BEFORE));
        Optional<Run> after = onlyRun(piece, new Border.OfLeg(name, Leg.AFTER));
        if (before.isEmpty() || after.isEmpty()) {
            return false;
        }
        CurvePath one =
                piece.base(before.get().border()).transformed(before.get().motion());
        CurvePath other =
                piece.base(after.get().border()).transformed(after.get().motion());
        return coincide(one, other);
    }

    /** Whether two lines lie on one another from end to end. */
    static boolean coincide(CurvePath one, CurvePath other) {
        double length = one.length();
        double otherLength = other.length();
        if (Math.abs(length - otherLength) > TOUCH) {
            return false;
        }
        return Stream.of(0.0, 0.25, 0.5, 0.75, 1.0)
                .allMatch(share -> one.pointAt(share * length).distance(other.pointAt(share * otherLength)) <= TOUCH);
    }

    /** The run of a border, when the whole border is one run. */
    static Optional<Run> onlyRun(Piece piece, Border border) {
        List<Run> runs = piece.panels().stream()
                .flatMap(panel -> panel.ring().stream())
                .filter(run -> run.border().equals(border))
                .toList();
        return runs.size() == 1 ? Optional.of(runs.get(0)) : Optional.empty();
    }

    // ------------------------------------------------------------------------------------------------ take out

    /**
     * Takes out the panel between two openings, so that what lies on either side can be closed over it. The cloth is lost:
     * the ledger keeps the panel and its intervals, and its notches go to the join.
     *
     * @param piece the piece
     * @param first the opening before the panel, along the edge
     * @param second the opening after it
     * @param gap the name of the opening that the two become
     * @return the piece with a gap in place of the panel
     * @throws DraftingException when no panel lies just between the two
     */
    public static Reworked takeOut(Piece piece, String first, String second, String gap) {
        return TakeOut.takeOut(piece, piece.opening(first), piece.opening(second), gap);
    }

    // ------------------------------------------------------------------------------------------------ fill

    /**
     * Fills the gap of an opening with cloth, as far as what is drawn across its mouths: the sheet goes on through it, a later
     * line may cross it, and the edges that it broke are whole again and may be redrawn.
     *
     * <p>Conserved: the outline on paper, the drawn and the folded length of every edge, the place of every notch. Changed and told:
     * the base of an edge that the opening broke, which gains the width drawn across and is bent as the edge lies now, and the net
     * area, which gains the gap. A level line whose two ends run on in one goes on over the cloth; one that does not is said to be broken.
     * Legs of unequal length that lie on one another are filled too: the step is left in the edge.
     *
     * @param piece the piece
     * @param name the opening: undecided, eased, gathered or left as flare
     * @return the piece without that opening
     * @throws DraftingException when the opening is stitched or folded, when another slash ends on one of its legs, or when what is
     *     drawn across would cross the cloth
     */
    public static Reworked fill(Piece piece, String name) {
        return Fill.fill(piece, piece.opening(name));
    }

    // ------------------------------------------------------------------------------------------------ use

    /**
     * Puts an opening to another use at its mouth, as {@link Piece#using}, so that it can be undone.
     *
     * <pre>{@code
     * Reworked eased = Panels.use(front, "waist dart", new Use.Left(Use.Kind.EASE));
     * Piece back = Panels.undo(eased);
     * }</pre>
     *
     * @param piece the piece
     * @param opening the name of the opening
     * @param use what becomes of its surplus
     * @return the piece and what was done
     * @throws DraftingException as {@link Piece#using}
     */
    public static Reworked use(Piece piece, String opening, Use use) {
        Use before = piece.opening(opening).mouth().use();
        return new Reworked(piece.using(opening, use), Ledger.of(new Step.Used(opening, false, before, use)));
    }

    /**
     * Puts an opening to another use at its other end, as {@link Piece#usingFar}, so that it can be undone.
     *
     * @param piece the piece
     * @param opening the name of the opening
     * @param use what becomes of its surplus there
     * @return the piece and what was done
     * @throws IllegalArgumentException as {@link Piece#usingFar}
     * @throws DraftingException as {@link Piece#usingFar}
     */
    public static Reworked useFar(Piece piece, String opening, Use use) {
        Piece used = piece.usingFar(opening, use);
        Use before = piece.opening(opening).farMouth().orElseThrow().use();
        return new Reworked(used, Ledger.of(new Step.Used(opening, true, before, use)));
    }

    private static Piece unused(Piece piece, Step.Used used) {
        String asked = "Undo the use of '" + used.opening() + "'";
        Opening now = requireUse(piece, used.opening(), used.far(), used.after(), asked);
        Opening then = used.far() ? now.usedFar(used.before()) : now.used(used.before());
        return piece.withOpenings(
                piece.openings().stream()
                        .map(each -> each.equals(now) ? then : each)
                        .toList(),
                piece.panels());
    }

    private static Opening requireUse(Piece piece, String name, boolean far, Use use, String asked) {
        return piece.openings().stream()
                .filter(each -> each.name().equals(name))
                .filter(each -> far
                        ? each.farMouth()
                                .filter(mouth -> mouth.use().equals(use))
                                .isPresent()
                        : each.mouth().use().equals(use))
                .findFirst()
                .orElseThrow(() -> changedSince(asked));
    }

    // ------------------------------------------------------------------------------------------------ mirror

    /**
     * Mirrors the piece in a line. Every edge keeps its base, its direction and its marks; only the way round changes.
     *
     * @param piece the piece
     * @param point a point on the line
     * @param direction the direction of the line
     * @return the mirrored piece
     */
    public static Reworked mirror(Piece piece, Vector2D point, Vector2D direction) {
        AffineTransformMatrix2D by = Isometry.reflection(point, direction);
        return new Reworked(mirrored(piece, by), Ledger.of(new Step.Mirrored(by)));
    }

    private static Piece mirrored(Piece piece, AffineTransformMatrix2D by) {
        List<Panel> panels = piece.panels().stream()
                .map(panel -> panel.moved(by))
                .map(panel -> panel.with(turnedRound(panel.ring())))
                .toList();
        return piece.with(panels).withGrain(piece.grain().map(grain -> grain.moved(by)));
    }

    private static List<Run> turnedRound(List<Run> ring) {
        List<Run> turned = new ArrayList<>();
        for (int i = ring.size() - 1; i >= 0; i--) {
            turned.add(ring.get(i).turnedRound());
        }
        return turned;
    }

    // ------------------------------------------------------------------------------------------------ undo

    /**
     * Undoes an operation from its result and its ledger alone: the steps' inverses, last step first.
     *
     * @param done a piece and the ledger of what made it so
     * @return the piece as it was
     * @throws DraftingException when the piece was changed since
     */
    public static Piece undo(Reworked done) {
        List<Entry> entries = done.ledger().entries();
        Piece piece = done.piece();
        for (int i = entries.size() - 1; i >= 0; i--) {
            if (entries.get(i) instanceof Step step) {
                piece = undo(piece, step);
            }
        }
        return piece;
    }

    private static Piece undo(Piece piece, Step step) {
        if (step instanceof Step.Cut cut) {
            return uncut(piece, cut);
        } else if (step instanceof Step.Used used) {
            return unused(piece, used);
        } else if (step instanceof Step.Moved moved) {
            return movedBack(piece, moved);
        } else if (step instanceof Step.Joined joined) {
            return reopened(piece, joined);
        } else if (step instanceof Step.TakenOut taken) {
            return TakeOut.putBack(piece, taken);
        } else if (step instanceof Step.Mirrored mirrored) {
            return mirrored(piece, mirrored.by());
        } else if (step instanceof Step.Redrawn redrawn) {
            return Redraw.undo(piece, redrawn);
        }
        if (step instanceof Step.LegEndsMoved moved) {
            return LegEnds.undo(piece, moved);
        } else if (step instanceof Step.MadeLonger longer) {
            return SheetLength.undo(piece, longer);
        }
        if (step instanceof Step.Filled filled) {
            return Fill.undo(piece, filled);
        }
        if (step instanceof Step.Unfolded unfolded) {
            return Unfold.undo(piece, unfolded);
        } else if (step instanceof Step.Extended extended) {
            return Extend.undo(piece, extended);
        } else if (step instanceof Step.GrainTurned turned) {
            return piece.withGrain(Optional.of(turned.before()));
        }
        if (step instanceof Step.MarkLeft left) {
            return markedAgain(piece, left);
        }
        if (step instanceof Step.Parted parted) {
            throw new DraftingException(
                    "Undo the parting along '" + parted.line() + "'",
                    "two pieces came of it; attach them (Detach.attach)");
        }
        return piece.withGrain(((Step.GrainRedrawn) step).before());
    }

    private static Piece markedAgain(Piece piece, Step.MarkLeft left) {
        int index = panelOf(piece, (Spot.On) left.witness());
        return withInsideDarts(
                piece,
                Stream.concat(piece.insideDarts().stream(), Stream.of(left.dart()))
                        .toList(),
                index,
                Stream.concat(piece.panels().get(index).darts().stream(), Stream.of(left.laid()))
                        .toList());
    }

    private static Piece withInsideDarts(Piece piece, List<InsideDart> darts, int index, List<Laid> laid) {
        List<Panel> panels = new ArrayList<>(piece.panels());
        panels.set(index, new Panel(panels.get(index).ring(), panels.get(index).lines(), laid));
        return new Piece(
                piece.name(),
                piece.edges(),
                piece.openings(),
                panels,
                piece.levels(),
                darts,
                piece.notches(),
                piece.grain());
    }

    /**
     * Leaves a double-pointed dart unsewn: the mark goes, the cloth stays.
     *
     * @param piece the piece
     * @param name the name of the dart
     * @return the piece and what was done
     * @throws IllegalArgumentException when there is no such dart
     * @throws DraftingException when the dart was cut, so that it lies on several parts
     */
    public static Reworked unmark(Piece piece, String name) {
        InsideDart dart = piece.insideDart(name);
        List<Integer> on = IntStream.range(0, piece.panels().size())
                .filter(i -> piece.panels().get(i).darts().stream()
                        .anyMatch(laid -> laid.dart().equals(name)))
                .boxed()
                .toList();
        if (on.size() != 1) {
            throw new DraftingException("Leave '" + name + "' unsewn", "it lies on several parts of the piece");
        }
        Panel panel = piece.panels().get(on.get(0));
        Laid laid = panel.darts().stream()
                .filter(each -> each.dart().equals(name))
                .findFirst()
                .orElseThrow();
        Piece without = withInsideDarts(
                piece,
                piece.insideDarts().stream().filter(each -> !each.equals(dart)).toList(),
                on.get(0),
                panel.darts().stream().filter(each -> !each.equals(laid)).toList());
        return new Reworked(without, Ledger.of(new Step.MarkLeft(dart, laid, witness(panel))));
    }

    /** The cut that is undone must be as it was made: undecided and closed again by what was undone before it. */
    private static Piece uncut(Piece piece, Step.Cut cut) {
        String asked = "Take back the cut '" + cut.opening() + "'";
        Opening opening = requireUse(piece, cut.opening(), false, Use.SLASH, asked);
        if (opening.farMouth().isPresent()) {
            requireUse(piece, cut.opening(), true, Use.SLASH, asked);
        }
        if (!closed(piece, cut.opening())) {
            throw changedSince(asked);
        }
        return join(piece, cut.opening()).piece();
    }

    private static Piece movedBack(Piece piece, Step.Moved moved) {
        List<Panel> panels = new ArrayList<>(piece.panels());
        for (Step.MovedPanel each : moved.panels()) {
            int index = panelOf(piece, (Spot.On) each.witness());
            panels.set(index, panels.get(index).moved(each.by().inverse()));
        }
        return piece.with(panels);
    }

    private static Piece reopened(Piece piece, Step.Joined joined) {
        String asked = "Open '" + joined.opening().name() + "' again";
        Corners corners = Corners.of(piece, joined.mouth(), joined.end(), () -> asked);
        if (corners.start().distance(joined.along().start()) > TOUCH
                || corners.stop().distance(joined.along().end()) > TOUCH) {
            throw changedSince(asked);
        }
        return Split.split(corners, joined.opening(), joined.along(), joined.before(), joined.after());
    }

    static DraftingException changedSince(String asked) {
        return new DraftingException(asked, "the piece was changed since; undo the later operations first");
    }
}
