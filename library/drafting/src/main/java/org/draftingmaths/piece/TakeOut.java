package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Ledger;

/** Cloth taken out between two openings, and put back. */
final class TakeOut {

    private TakeOut() {}

    static Reworked takeOut(Piece piece, Opening first, Opening second, String gap) {
        if (first.equals(second)) {
            throw new IllegalArgumentException(
                    "Cloth is taken out between two openings; '" + first.name() + "' is one.");
        }
        String asked = "Take out the cloth between '" + first.name() + "' and '" + second.name() + "'";
        Panel lost = piece.panels().stream()
                .filter(panel -> borders(panel, first, second))
                .findFirst()
                .orElseThrow(() -> new DraftingException(
                        asked, "no part lies just between them; they must start on one edge and end at one point"));
        Opening both = new Opening(
                gap,
                new Mouth(
                        first.mouth().border(),
                        first.mouth().before(),
                        second.mouth().after(),
                        Use.SLASH),
                farMouth(first, second),
                first.before(),
                second.after());
        List<Notch> notches =
                piece.notches().stream().filter(notch -> lies(notch, lost)).toList();
        List<Opening> openings = Stream.concat(
                        piece.openings().stream().filter(each -> !each.equals(first) && !each.equals(second)),
                        Stream.of(both))
                .toList();
        List<Panel> panels = piece.panels().stream()
                .filter(panel -> !panel.equals(lost))
                .map(panel -> renamed(
                        renamed(panel, first.leg(Leg.BEFORE), both.leg(Leg.BEFORE)),
                        second.leg(Leg.AFTER),
                        both.leg(Leg.AFTER)))
                .toList();
        Piece without = piece.withOpenings(openings, panels).withNotches(atTheJoin(piece.notches(), notches, both));
        return new Reworked(without, Ledger.of(new Step.TakenOut(first, second, gap, lost, notches)));
    }

    /** A panel with just these four things on its ring: the after leg of the first, edges, the before leg of the second. */
    private static boolean borders(Panel panel, Opening first, Opening second) {
        List<Border> legs = panel.ring().stream()
                .map(Run::border)
                .filter(Border.OfLeg.class::isInstance)
                .toList();
        return legs.size() == 2
                && legs.contains(first.leg(Leg.AFTER))
                && legs.contains(second.leg(Leg.BEFORE))
                && first.mouth().border().equals(second.mouth().border());
    }

    private static Optional<Mouth> farMouth(Opening first, Opening second) {
        return first.farMouth()
                .flatMap(one -> second.farMouth()
                        .map(other -> new Mouth(one.border(), one.before(), other.after(), Use.SLASH)));
    }

    private static boolean lies(Notch notch, Panel lost) {
        return lost.ring().stream()
                .anyMatch(run -> run.border().equals(new Border.OfEdge(notch.edge())) && Notches.holds(run, notch));
    }

    private static List<Notch> atTheJoin(List<Notch> all, List<Notch> lost, Opening gap) {
        return all.stream()
                .map(notch -> lost.contains(notch)
                        ? new Notch(notch.edge(), gap.mouth().before(), Beside.BEFORE)
                        : notch)
                .toList();
    }

    private static Panel renamed(Panel panel, Border from, Border to) {
        return panel.with(panel.ring().stream()
                .map(run -> run.border().equals(from) ? run.along(to) : run)
                .toList());
    }

    static Piece putBack(Piece piece, Step.TakenOut taken) {
        Opening both = piece.opening(taken.gap());
        List<Panel> panels = new ArrayList<>(piece.panels().stream()
                .map(panel -> renamed(
                        renamed(panel, both.leg(Leg.BEFORE), taken.first().leg(Leg.BEFORE)),
                        both.leg(Leg.AFTER),
                        taken.second().leg(Leg.AFTER)))
                .toList());
        panels.add(taken.lost());
        List<Opening> openings = Stream.concat(
                        piece.openings().stream().filter(each -> !each.equals(both)),
                        Stream.of(taken.first(), taken.second()))
                .toList();
        return piece.withOpenings(openings, panels).withNotches(backFromTheJoin(piece.notches(), taken, both));
    }

    private static List<Notch> backFromTheJoin(List<Notch> all, Step.TakenOut taken, Opening gap) {
        List<Notch> notches = new ArrayList<>(all);
        for (Notch lost : taken.notches()) {
            notches.remove(new Notch(lost.edge(), gap.mouth().before(), Beside.BEFORE));
            notches.add(lost);
        }
        return notches;
    }
}
