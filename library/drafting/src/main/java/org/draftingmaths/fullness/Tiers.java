package org.draftingmaths.fullness;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Drawing;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.unit.Asked;
import org.draftingmaths.unit.Steps;

/**
 * Tiers of straight strips, each gathered to the one above. The chain is worked from the top: with {@code T} the seam at the top and
 * {@code q1, q2, ...} the ratios, strip {@code n} is {@code T q1 q2 ... qn} long. The ratio of a tier belongs to the strip above it,
 * never to the waist. A ruffle is one tier.
 */
public final class Tiers {

    private static final int MOST = 30;

    private Tiers() {}

    /**
     * What is asked of one tier.
     *
     * @param depth its depth in mm
     * @param ratio the length of its strip to that of the edge it is gathered to: 1 for none, at most 10
     */
    public record Tier(double depth, double ratio) {
        /** Checks the figures. */
        public Tier {
            Asked.length("The depth of a tier", depth);
            if (!(ratio >= 1 && ratio <= 10)) {
                throw new IllegalArgumentException("The ratio of a tier is from 1 to 10: " + ratio + ".");
            }
        }
    }

    /**
     * One line of the chain.
     *
     * @param tier its number from the top, from 1
     * @param depth its depth in mm
     * @param ratio its ratio to the edge above
     * @param above the edge above, in mm
     * @param length the length of its strip, in mm
     */
    public record Link(int tier, double depth, double ratio, double above, double length) implements Entry {
        @Override
        public String sentence(Steps steps) {
            return String.format(
                    Locale.ROOT,
                    "Tier %d, %s deep: %s gathered to %s, ratio %.2f.",
                    tier,
                    Quantity.LENGTH.print(depth, steps),
                    Quantity.LENGTH.print(length, steps),
                    Quantity.LENGTH.print(above, steps),
                    ratio);
        }
    }

    /**
     * The chain from the top.
     *
     * @param top the seam at the top, in mm
     * @param tiers the tiers, topmost first, from 1 to 30
     * @return a line for each tier
     * @throws IllegalArgumentException when the top is not more than 0 or there is no tier
     */
    public static List<Link> chain(double top, List<Tier> tiers) {
        Asked.length("The seam at the top of the tiers", top);
        Asked.count("Tiers", tiers.size(), MOST);
        List<Link> links = new ArrayList<>();
        double above = top;
        for (Tier tier : tiers) {
            double length = tier.ratio() * above;
            links.add(new Link(links.size() + 1, tier.depth(), tier.ratio(), above, length));
            above = length;
        }
        return links;
    }

    /**
     * So many tiers of equal depth and ratio.
     *
     * @param length from the top to the hem, in mm
     * @param count how many tiers, from 1 to 30
     * @param ratio the ratio of each
     * @return the tiers
     */
    public static List<Tier> even(double length, int count, double ratio) {
        Asked.length("The length of the tiers", length);
        Asked.count("Tiers", count, MOST);
        return Collections.nCopies(count, new Tier(length / count, ratio));
    }

    /**
     * Drafts the strips, each as one piece of its whole length; how it is joined from widths of cloth is decided in cutting.
     *
     * <p>Quarters are notched on every edge, so that the gathers are spread evenly; the seams between tiers declare, quarter by
     * quarter, what is gathered.
     *
     * @param name the name of the tiers
     * @param top the seam at the top, in mm
     * @param tiers the tiers, topmost first
     * @return the strips and the seams between them
     */
    public static Drafted draft(String name, double top, List<Tier> tiers) {
        List<Link> links = chain(top, tiers);
        List<Piece> pieces = new ArrayList<>();
        List<Seam> seams = new ArrayList<>();
        Map<String, Double> wider = new TreeMap<>();
        double down = 0;
        double area = 0;
        for (Link link : links) {
            boolean last = link.tier() == links.size();
            pieces.add(strip(name + " " + link.tier(), link, last));
            if (link.tier() > 1) {
                seams.add(gathered(name, link));
            }
            wider.put(name + " " + link.tier(), link.length() - top);
            area += link.depth() * link.length();
            down += link.depth();
        }
        Budget budget = new Budget(area - top * down, Map.of(), wider);
        return new Drafted(
                new Draft(name, pieces, seams), budget, List.of(), new Ledger(List.copyOf(links)).then(budget));
    }

    /** Upright, its top edge on y = 0. */
    private static Piece strip(String name, Link link, boolean last) {
        double half = link.length() / 2;
        Piece strip = Drawing.of(name)
                .from(-half, -link.depth())
                .edge("bottom", last ? Role.HEM : Role.SEAM)
                .line(half, -link.depth())
                .edge("end", Role.SEAM)
                .line(half, 0)
                .edge("top", Role.SEAM)
                .line(-half, 0)
                .edge("other end", Role.SEAM)
                .line(-half, -link.depth())
                .grain(0, -0.2 * link.depth(), 0, -0.8 * link.depth())
                .piece();
        for (int quarter = 1; quarter < 4; quarter++) {
            double arc = quarter * link.length() / 4;
            strip = Notched.at(Notched.at(strip, "top", arc), "bottom", arc);
        }
        return strip;
    }

    private static Seam gathered(String name, Link link) {
        double surplus = (link.length() - link.above()) / 4;
        List<Seam.Held> held = new ArrayList<>();
        for (int interval = 1; interval <= 4 && surplus > 0; interval++) {
            held.add(new Seam.Held(interval, surplus, Seam.How.GATHERS, "gathered to the tier above"));
        }
        return new Seam(
                "tier " + link.tier(),
                Seam.Mate.of(name + " " + link.tier(), "top"),
                Seam.Mate.backwards(name + " " + (link.tier() - 1), "bottom"),
                held);
    }

    /**
     * Which ratio, the same for every tier, brings the last strip to this length: the root {@code (hem / T)^(1/n)}.
     *
     * @param top the seam at the top, in mm
     * @param count how many tiers, from 1 to 30
     * @param hem the length of the last strip wanted, in mm
     * @return the one ratio; none when the hem is shorter than the top or asks for a ratio of more than 10
     * @throws IllegalArgumentException when a length is not more than 0
     */
    public static Answer ratioForHem(double top, int count, double hem) {
        Asked.length("The seam at the top of the tiers", top);
        Asked.count("Tiers", count, MOST);
        Asked.length("The hem of the tiers", hem);
        String asked = "Ratio of " + count + " tiers for a hem of " + Words.of(hem);
        double most = top * Math.pow(10, count);
        if (hem < top || hem > most) {
            return new Answer.None(asked, "each ratio is from 1 to 10", new Reach(Quantity.LENGTH, hem, top, most));
        }
        return new Answer.Unique(asked, Quantity.RATIO, Math.pow(hem / top, 1.0 / count));
    }
}
