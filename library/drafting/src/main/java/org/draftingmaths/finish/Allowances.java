package org.draftingmaths.finish;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Lengths;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.unit.Asked;
import org.draftingmaths.unit.Length;

/**
 * What is to be added outside the stitch line: a width for every edge, and how corners are cut.
 *
 * <p>A fold carries none: the general width passes it by, and asking for one is refused when the plan meets the piece. Usual
 * widths (in millimetres, exact from the inch figures): 6.35 enclosed or curved, 12.7 in general, 19.05 at a zip
 * (mudmosh.com, seam and hem allowances); 15.875 in home patterns (Wikipedia, Seam allowance), which is printed as 1.5 cm
 * and is 0.875 more. They are starting values; the trade disagrees.
 *
 * <pre>{@code
 * Allowances plan = Allowances.of(Length.mm(10))
 *         .on("hem", Length.mm(40))
 *         .corner("hem", "side seam", CornerCut.TURNED_BACK)
 *         .corner("shoulder", "neckline", CornerCut.TURNED_BACK);
 * }</pre>
 *
 * @param general the width in mm on every edge that is not named, folds left out
 * @param edges the widths in mm of the edges that are named
 * @param corners the corners that are not left to themselves; those are plain, or blunted where the angle is less than 35°
 *     (common practice)
 */
public record Allowances(double general, Map<String, Double> edges, List<AtCorner> corners) {

    /** Parts of a chain lie on one another when they share more than this share of the seam: joints that meet do not lie exactly so. */
    private static final double TOGETHER = 0.02;

    /**
     * How the corners between two edges are cut; where the two meet twice, it holds for both places.
     *
     * @param seam the edge that is sewn or folded first
     * @param crossing the edge that crosses it
     * @param cut the shape
     */
    public record AtCorner(String seam, String crossing, CornerCut cut) {
        /** Checks that there are two edges. */
        public AtCorner {
            if (seam.equals(crossing)) {
                throw new IllegalArgumentException("A corner lies between two edges: '" + seam + "' and itself.");
            }
        }

        boolean isBetween(String one, String other) {
            return (seam.equals(one) && crossing.equals(other)) || (seam.equals(other) && crossing.equals(one));
        }
    }

    /** Checks the widths and copies. */
    public Allowances {
        requireWidth("any edge", general);
        edges.forEach(Allowances::requireWidth);
        edges = Collections.unmodifiableMap(new TreeMap<>(edges));
        corners = List.copyOf(corners);
    }

    private static void requireWidth(String edge, double width) {
        if (!(width >= 0 && Double.isFinite(width))) {
            throw new IllegalArgumentException("An allowance is 0 mm or more: " + width + " mm on "
                    + (edge.equals("any edge") ? edge : "'" + edge + "'") + ".");
        }
    }

    /**
     * One width on every edge but folds, corners plain.
     *
     * @param general the width, 0 or more
     * @return the plan
     */
    public static Allowances of(Length general) {
        return new Allowances(general.mm(), Map.of(), List.of());
    }

    /**
     * The widths with which a piece was drawn.
     *
     * @param piece the piece
     * @return the plan, corners plain
     */
    public static Allowances drawn(Piece piece) {
        Map<String, Double> widths = new TreeMap<>();
        piece.edges().forEach(edge -> widths.put(edge.name(), edge.allowance()));
        return new Allowances(0, widths, List.of());
    }

    /**
     * The plan with another width on one edge.
     *
     * @param edge the name of the edge
     * @param width the width, 0 or more
     * @return the plan
     */
    public Allowances on(String edge, Length width) {
        Map<String, Double> widths = new TreeMap<>(edges);
        widths.put(edge, width.mm());
        return new Allowances(general, widths, corners);
    }

    /**
     * The plan with another shape at the corners between two edges.
     *
     * @param seam the edge that is sewn or folded first
     * @param crossing the edge that crosses it
     * @param cut the shape
     * @return the plan
     */
    public Allowances corner(String seam, String crossing, CornerCut cut) {
        List<AtCorner> all = new ArrayList<>(corners);
        all.removeIf(each -> each.isBetween(seam, crossing));
        all.add(new AtCorner(seam, crossing, cut));
        return new Allowances(general, edges, all);
    }

    /**
     * The width on one edge of a piece.
     *
     * @param piece the piece
     * @param edge the name of one of its edges
     * @return the width in mm; 0 on a fold
     * @throws DraftingException when the plan names a width for a fold
     */
    public double width(Piece piece, String edge) {
        boolean fold = piece.edge(edge).role() == Role.FOLD;
        double width = edges.getOrDefault(edge, fold ? 0 : general);
        if (fold && width > 0) {
            throw new DraftingException(
                    "Add " + Quantity.LENGTH.printFinely(width) + " on '" + edge + "' of '" + piece.name() + "'",
                    "it is a fold, and a fold is not cut; open the piece out at it if there is to be a seam");
        }
        return width;
    }

    Optional<AtCorner> between(String one, String other) {
        return corners.stream().filter(each -> each.isBetween(one, other)).findFirst();
    }

    /** Refuses a plan that names edges the piece does not have, or a width on a fold. */
    void requireFits(Piece piece) {
        edges.keySet().forEach(piece::edge);
        corners.forEach(each -> {
            piece.edge(each.seam());
            piece.edge(each.crossing());
        });
        piece.edges().stream().map(Edge::name).forEach(edge -> width(piece, edge));
    }

    /**
     * Seams whose two edges carry unlike allowances. Edges that are sewn together are laid cut edge to cut edge, so unlike
     * widths shift the seam, unless the difference is meant: a declared seam is not reported.
     *
     * @param draft the draft
     * @param plans the plan for each piece, by the piece's name
     * @param declared the names of the seams whose allowances are meant to differ, such as those sewn to a binding
     * @param tolerance how far in mm the widths may lie apart
     * @return the findings in order of make
     * @throws IllegalArgumentException when a piece has no plan or the tolerance is not 0 or more
     */
    public static List<Finding> mates(
            Draft draft, Map<String, Allowances> plans, Set<String> declared, double tolerance) {
        Asked.lengthOrNone("A tolerance", tolerance);
        List<Finding> findings = new ArrayList<>();
        for (Seam seam : draft.seams()) {
            if (!declared.contains(seam.name())) {
                findings.addAll(mates(draft, plans, seam, tolerance));
            }
        }
        return List.copyOf(findings);
    }

    /** Each two parts that lie on one another are compared once. */
    private static List<Finding> mates(Draft draft, Map<String, Allowances> plans, Seam seam, double tolerance) {
        List<Finding> findings = new ArrayList<>();
        double firstLength = length(draft, seam.first().parts());
        double secondLength = length(draft, seam.second().parts());
        double firstAt = 0;
        for (Seam.Part first : seam.first().parts()) {
            double firstTo = firstAt + length(draft, List.of(first)) / firstLength;
            double secondAt = 0;
            for (Seam.Part second : seam.second().parts()) {
                double secondTo = secondAt + length(draft, List.of(second)) / secondLength;
                double one = width(draft, plans, first);
                double other = width(draft, plans, second);
                boolean together = Math.min(firstTo, secondTo) - Math.max(firstAt, secondAt) > TOGETHER;
                if (together && Math.abs(one - other) > tolerance) {
                    String where = "seam '" + seam.name() + "', " + first.words() + " on " + second.words();
                    findings.add(
                            new Finding(Finding.Kind.ALLOWANCES_DIFFER, where, Quantity.LENGTH, one, other, tolerance));
                }
                secondAt = secondTo;
            }
            firstAt = firstTo;
        }
        return findings;
    }

    private static double length(Draft draft, List<Seam.Part> parts) {
        return parts.stream()
                .mapToDouble(part -> Lengths.folded(draft.piece(part.piece()), part))
                .sum();
    }

    private static double width(Draft draft, Map<String, Allowances> plans, Seam.Part part) {
        Allowances plan = Optional.ofNullable(plans.get(part.piece()))
                .orElseThrow(() -> new IllegalArgumentException("There is no plan for '" + part.piece() + "'."));
        return plan.width(draft.piece(part.piece()), part.edge());
    }
}
