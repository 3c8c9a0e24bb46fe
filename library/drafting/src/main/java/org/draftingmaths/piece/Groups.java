package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.DraftingException;

/**
 * Panels that move together: those which meet at openings that do not change.
 *
 * @param piece the piece
 * @param of for each panel, in order, the number of its group
 */
record Groups(Piece piece, List<Integer> of) {

    static Groups apart(Piece piece, Set<String> changing) {
        int[] group = new int[piece.panels().size()];
        Arrays.setAll(group, i -> i);
        for (Opening opening : piece.openings()) {
            if (!changing.contains(opening.name())) {
                int one = group[panelAtTip(piece, opening, Leg.BEFORE)];
                int other = group[panelAtTip(piece, opening, Leg.AFTER)];
                Arrays.setAll(group, i -> group[i] == other ? one : group[i]);
            }
        }
        return new Groups(piece, Arrays.stream(group).boxed().toList());
    }

    /** The panel on which a leg ends at its tip: it is there that an opening holds its two sides together. */
    static int panelAtTip(Piece piece, Opening opening, Leg leg) {
        Border border = opening.leg(leg);
        double tip = opening.base(leg).length();
        for (int i = 0; i < piece.panels().size(); i++) {
            boolean here = piece.panels().get(i).ring().stream()
                    .anyMatch(run -> run.border().equals(border) && run.to() == tip);
            if (here) {
                return i;
            }
        }
        throw new IllegalStateException("Opening '" + opening.name() + "' lies on no panel.");
    }

    int at(Opening opening, Leg leg) {
        return of.get(panelAtTip(piece, opening, leg));
    }

    List<Panel> panels(int group) {
        List<Panel> panels = new ArrayList<>();
        for (int i = 0; i < of.size(); i++) {
            if (of.get(i) == group) {
                panels.add(piece.panels().get(i));
            }
        }
        return panels;
    }

    /** The group that stays. */
    int staying(Stay stay, String asked) {
        if (stay.at().isPresent()) {
            return withPlace(stay.at().get(), asked);
        }
        List<Integer> all = of.stream().distinct().toList();
        List<Integer> central = all.stream().filter(group -> centre(group) > 0).toList();
        if (central.size() == 1) {
            return central.get(0);
        }
        return longestGrain(central.isEmpty() ? all : central, asked);
    }

    private int withPlace(Spot.On place, String asked) {
        List<Integer> found = of.stream()
                .distinct()
                .filter(group -> panels(group).stream()
                        .flatMap(panel -> panel.ring().stream())
                        .anyMatch(run -> run.border().equals(place.border())
                                && run.from() <= place.arc()
                                && place.arc() <= run.to()))
                .toList();
        if (found.size() != 1) {
            throw new DraftingException(
                    asked,
                    found.isEmpty()
                            ? "no part has " + place.words() + " on its edge, so none can stay there"
                            : "two parts meet at " + place.words() + "; name a place on one of them to stay");
        }
        return found.get(0);
    }

    private int longestGrain(List<Integer> groups, String asked) {
        List<Integer> sorted = groups.stream()
                .sorted((a, b) -> Double.compare(grain(b), grain(a)))
                .toList();
        if (sorted.size() > 1 && grain(sorted.get(0)) - grain(sorted.get(1)) <= Panels.TOUCH) {
            throw new DraftingException(
                    asked, "neither fold, centre line nor grain tells which part stays; say which one");
        }
        return sorted.get(0);
    }

    /** How much of the fold or centre line a group has. */
    private double centre(int group) {
        return panels(group).stream()
                .flatMap(panel -> panel.ring().stream())
                .filter(run -> Centre.isCentre(piece, run))
                .mapToDouble(Run::length)
                .sum();
    }

    /** How much of the grain line lies on a group. */
    private double grain(int group) {
        return piece.grain()
                .map(grain -> CurvePath.polyline(grain.from(), grain.to()))
                .map(line -> panels(group).stream()
                        .flatMap(panel -> Within.of(piece.place(panel.ring()), line).stream())
                        .mapToDouble(Within::length)
                        .sum())
                .orElse(0.0);
    }
}
