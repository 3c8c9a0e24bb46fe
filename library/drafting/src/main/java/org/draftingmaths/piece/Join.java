package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Ledger;

/** Two coinciding legs taken away, two rings made one. */
final class Join {

    private Join() {}

    static Reworked join(Piece piece, Opening opening) {
        Panel one = panelWith(piece, opening.leg(Leg.BEFORE));
        Panel other = panelWith(piece, opening.leg(Leg.AFTER));
        if (one.equals(other)) {
            throw new DraftingException(
                    "Join '" + opening.name() + "'",
                    "both its legs lie on one part; joining them would close the piece into a tube");
        }
        Run before = Panels.onlyRun(piece, opening.leg(Leg.BEFORE)).orElseThrow();
        Run after = Panels.onlyRun(piece, opening.leg(Leg.AFTER)).orElseThrow();
        List<Run> first = one.onwardsFrom(before);
        List<Run> second = other.onwardsFrom(after);
        List<Run> ring = new ArrayList<>(first);
        ring.addAll(second);

        List<Stretch> lines = new ArrayList<>(one.lines());
        lines.addAll(other.lines());
        List<Laid> darts = new ArrayList<>(one.darts());
        darts.addAll(other.darts());
        Piece bare = piece.withOpenings(
                piece.openings().stream().filter(each -> !each.equals(opening)).toList(),
                piece.panels().stream()
                        .filter(panel -> !panel.equals(one) && !panel.equals(other))
                        .toList());
        Panel joined = new Panel(Heal.ring(bare, ring), Heal.lines(bare, lines), darts);
        Spot mouth = new Spot.On(opening.mouth().border(), opening.mouth().before(), Optional.of(Beside.BEFORE));
        Spot end = whereBegins((before.forward() ? first : second).get(0));
        List<Panel> panels = new ArrayList<>(bare.panels());
        panels.add(joined);
        Step step = new Step.Joined(
                opening,
                mouth,
                end,
                piece.base(before.border()).transformed(before.motion()),
                before.motion(),
                after.motion());
        return new Reworked(bare.with(panels), Ledger.of(step));
    }

    /** Where the inner end of the legs lies now: the run that begins there tells. */
    private static Spot whereBegins(Run run) {
        return new Spot.On(run.border(), run.entry(), Optional.of(run.forward() ? Beside.AFTER : Beside.BEFORE));
    }

    private static Panel panelWith(Piece piece, Border border) {
        return piece.panels().stream()
                .filter(panel ->
                        panel.ring().stream().anyMatch(run -> run.border().equals(border)))
                .findFirst()
                .orElseThrow();
    }

    /** What was one before a cut is made one again. */
    static final class Heal {

        private Heal() {}

        static List<Run> ring(Piece piece, List<Run> ring) {
            List<Run> healed = new ArrayList<>();
            for (Run run : ring) {
                append(piece, healed, run);
            }
            if (healed.size() > 1) {
                Run last = healed.remove(healed.size() - 1);
                Run first = healed.remove(0);
                List<Run> seam = new ArrayList<>();
                seam.add(last);
                append(piece, seam, first);
                healed.addAll(0, seam);
            }
            return healed;
        }

        private static void append(Piece piece, List<Run> runs, Run next) {
            int end = runs.size() - 1;
            if (end >= 0 && continues(piece, runs.get(end), next)) {
                Run last = runs.remove(end);
                AffineTransformMatrix2D motion = last.length() >= next.length() ? last.motion() : next.motion();
                runs.add(new Run(
                        last.border(),
                        Math.min(last.from(), next.from()),
                        Math.max(last.to(), next.to()),
                        last.forward(),
                        motion));
            } else {
                runs.add(next);
            }
        }

        private static boolean continues(Piece piece, Run last, Run next) {
            return last.border().equals(next.border())
                    && last.forward() == next.forward()
                    && last.exit() == next.entry()
                    && sameMotion(piece.base(last.border()).bounds(), last.motion(), next.motion());
        }

        static List<Stretch> lines(Piece piece, List<Stretch> lines) {
            List<Stretch> sorted = lines.stream()
                    .sorted(java.util.Comparator.comparing(Stretch::line).thenComparingDouble(Stretch::from))
                    .toList();
            List<Stretch> healed = new ArrayList<>();
            for (Stretch next : sorted) {
                int end = healed.size() - 1;
                if (end >= 0 && continues(piece, healed.get(end), next)) {
                    Stretch last = healed.remove(end);
                    boolean keep = last.to() - last.from() >= next.to() - next.from();
                    healed.add(new Stretch(last.line(), last.from(), next.to(), keep ? last.motion() : next.motion()));
                } else {
                    healed.add(next);
                }
            }
            return healed;
        }

        private static boolean continues(Piece piece, Stretch last, Stretch next) {
            return last.line().equals(next.line())
                    && last.to() == next.from()
                    && sameMotion(piece.level(last.line()).base().bounds(), last.motion(), next.motion());
        }

        private static boolean sameMotion(
                org.apache.commons.geometry.euclidean.twod.Bounds2D where,
                AffineTransformMatrix2D one,
                AffineTransformMatrix2D other) {
            Vector2D low = where.getMin();
            Vector2D high = where.getMax();
            return Isometry.apart(one, other, low, high, Vector2D.of(low.getX(), high.getY())) <= Panels.TOUCH;
        }
    }
}
