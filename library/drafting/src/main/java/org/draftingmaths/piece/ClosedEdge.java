package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Meet;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.curve.Nearest;
import org.draftingmaths.curve.Straight;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.unit.Steps;

/**
 * An edge laid with the darts in it folded shut, as it lies on the table when it is drawn anew over them: the stretch at its start stays where it
 * is, and each dart brings what follows it up to its before leg by a turn about its apex. This is the edge's base, moved as its first stretch is.
 *
 * <p>With {@code M1, M2, ...} the motions of the stretches in their order, the stretch {@code k} is carried by {@code M1 Mk^-1}. A line drawn
 * over the darts crosses the line of each dart's folded legs outside its point, first at {@code c}; then the legs run from {@code c} to the
 * point, and the edge, opened again, turns by the dart's angle there.
 *
 * <p>Darts are folded to the apex, not to a point set back from it; {@code Truing.blendDart} makes the edge smooth over the dart as it is sewn.
 */
public final class ClosedEdge {

    private final Piece piece;
    private final Edge edge;
    private final Run first;
    private final Run last;
    private final List<Folded> darts;

    /**
     * A dart as it lies folded in the edge's base.
     *
     * @param opening the dart
     * @param leg both its legs, from the mouth to the point
     * @param side positive when the legs lie anticlockwise of the edge's direction, else negative
     */
    private record Folded(Opening opening, CurvePath leg, double side) {

        String name() {
            return "'" + opening.name() + "'";
        }

        Vector2D point() {
            return leg.end();
        }
    }

    private ClosedEdge(Piece piece, Edge edge, List<Folded> darts) {
        this.piece = piece;
        this.edge = edge;
        this.first = Redraw.end(piece, edge, false);
        this.last = Redraw.end(piece, edge, true);
        this.darts = darts;
    }

    /**
     * An edge with the darts in it folded shut.
     *
     * <pre>{@code
     * ClosedEdge neck = ClosedEdge.of(back, "neckline");
     * CurvePath line = neck.line();
     * }</pre>
     *
     * @param piece the piece
     * @param edge the name of the edge
     * @return the edge as it lies closed; as it lies, where no dart breaks it
     * @throws IllegalArgumentException when there is no such edge
     * @throws DraftingException when an opening breaks the edge that is not sewn as a dart, or a dart whose legs differ
     */
    public static ClosedEdge of(Piece piece, String edge) {
        Edge named = piece.edge(edge);
        List<Folded> darts = piece.openings().stream()
                .filter(opening -> breaks(opening, named))
                .sorted(Comparator.comparingDouble(opening -> opening.mouth().before()))
                .map(opening -> folded(piece, named, opening))
                .toList();
        return new ClosedEdge(piece, named, darts);
    }

    private static boolean breaks(Opening opening, Edge edge) {
        return inside(opening.mouth(), edge)
                || opening.farMouth().filter(far -> inside(far, edge)).isPresent();
    }

    private static boolean inside(Mouth mouth, Edge edge) {
        return mouth.border().equals(new Border.OfEdge(edge.name()))
                && mouth.after() > 0
                && mouth.before() < edge.length();
    }

    private static Folded folded(Piece piece, Edge edge, Opening opening) {
        String asked = "Draw '" + edge.name() + "' over '" + opening.name() + "'";
        Mouth mouth = opening.mouth();
        if (!(mouth.use() instanceof Use.Dart) || opening.farMouth().isPresent() || mouth.before() != mouth.after()) {
            throw new DraftingException(
                    asked, "it is not sewn as a dart and cannot be folded shut; close it or fill it first");
        }
        CurvePath before = leg(piece, opening, Leg.BEFORE, run -> run.to() == mouth.before(), asked);
        CurvePath after = leg(piece, opening, Leg.AFTER, run -> run.from() == mouth.after(), asked);
        if (!Panels.coincide(before, after)) {
            throw new DraftingException(
                    asked, "its legs differ and do not fold on one another; make them equal first, with Legs.equalise");
        }
        double side = edge.base().tangentAt(mouth.before()).signedArea(before.startTangent());
        return new Folded(opening, before, side);
    }

    /** A leg in the base of the edge, carried with the stretch beside it. */
    private static CurvePath leg(Piece piece, Opening opening, Leg leg, Predicate<Run> beside, String asked) {
        Border own = opening.leg(leg);
        Run run = Panels.onlyRun(piece, own)
                .orElseThrow(() -> new DraftingException(asked, "another slash ends on its leg; close that first"));
        Run stretch = piece.panels().stream()
                .flatMap(panel -> panel.ring().stream())
                .filter(each -> each.border().equals(opening.mouth().border()) && beside.test(each))
                .findFirst()
                .orElseThrow(() -> new DraftingException(asked, "cloth was taken out of the edge beside it"));
        return piece.base(own).transformed(stretch.motion().inverse().multiply(run.motion()));
    }

    /**
     * The edge as it lies closed.
     *
     * @return its curve, in the edge's own direction
     */
    public CurvePath line() {
        return edge.base().transformed(first.motion());
    }

    /**
     * How the edge's last stretch, and what lies beside it, is carried when the darts are folded shut.
     *
     * @return the isometry from where it lies to where it lies closed
     */
    public AffineTransformMatrix2D closing() {
        return first.motion().multiply(last.motion().inverse());
    }

    /**
     * Draws the edge anew over its darts, and neighbours to it. Each dart's legs are cut or lengthened to the new edge.
     *
     * <p>Conserved: the point, angle and press direction of every dart, its legs' equality, the motions of all parts, every other edge. Changed and
     * told: the legs and intakes, the lengths of the edges, the net area. Notches keep what {@code marks} says, between the darts beside them.
     *
     * @param line the new curve, drawn where the edge lies closed, in its own direction
     * @param beside for each other edge to be redrawn its curve, as for {@link Redraw#edges(Piece, Map)}
     * @param marks for each edge what its notches keep; their share, where none is named
     * @return the piece and what was done
     * @throws IllegalArgumentException as {@link Redraw#edges(Piece, Map)}
     * @throws DraftingException when the line passes over the point of a dart or misses a dart, when a dart would have
     *     nothing left to sew, or as {@link Redraw#edges(Piece, Map, Map)}
     */
    public Reworked redrawn(CurvePath line, Map<String, CurvePath> beside, Map<String, Redraw.Marks> marks) {
        CurvePath base = line.transformed(first.motion().inverse());
        List<Step.LegsCut> cuts = new ArrayList<>();
        List<Step.Span.Drawn> parts = new ArrayList<>();
        double from = 0;
        double newFrom = 0;
        for (Folded dart : darts) {
            Crossing crossing = Crossing.of(dart, base, asked(dart), first.motion());
            double to = dart.opening().mouth().before();
            if (!(crossing.onLine() > newFrom)) {
                throw new DraftingException(asked(dart), "it would change places with the dart before it");
            }
            parts.add(new Step.Span.Drawn(from, to, newFrom, crossing.onLine()));
            cuts.add(crossing.cut(dart.opening()));
            from = to;
            newFrom = crossing.onLine();
        }
        parts.add(new Step.Span.Drawn(from, edge.length(), newFrom, base.length()));
        List<Redraw.Drawn> drawn = new ArrayList<>(List.of(new Redraw.Drawn(edge, base, parts)));
        drawn.addAll(Redraw.drawn(piece, beside));
        Reworked done = Redraw.redrawn(piece, drawn, cuts, marks, Map.of());
        for (Folded dart : darts) {
            done.piece().using(dart.opening().name(), dart.opening().mouth().use());
        }
        return done;
    }

    private String asked(Folded dart) {
        return "Draw '" + edge.name() + "' over " + dart.name();
    }

    /**
     * Where a new edge crosses the folded legs of a dart.
     *
     * @param onLine the arc in mm on the new edge
     * @param onLeg how far inwards of the old mouth, in mm; negative outside it
     */
    private record Crossing(double onLine, double onLeg) {

        static Crossing of(Folded dart, CurvePath line, String asked, AffineTransformMatrix2D placed) {
            CurvePath leg = dart.leg();
            double reach = 1 + leg.start().distance(line.start()) + line.length();
            CurvePath ray = outwards(leg, reach);
            double depth = ray.length() - Panels.TOUCH;
            Meet meet = Meets.of(line, ray).points().stream()
                    .filter(each -> each.onSecond() < depth)
                    .max(Comparator.comparingDouble(Meet::onSecond))
                    .orElseThrow(() -> missed(dart, line, reach, asked, placed));
            boolean inner = meet.onFirst() > Panels.TOUCH && meet.onFirst() < line.length() - Panels.TOUCH;
            if (!inner || meet.kind() != Meet.Kind.CROSSING || !sameWay(dart, line, ray, meet)) {
                throw new DraftingException(
                        asked,
                        "the new line does not pass across its folded legs at "
                                + Outlines.words(placed.apply(meet.point()))
                                + ", where it first meets them from their point outwards; keep it outside the point and let"
                                + " it go on beyond the legs, or move the dart elsewhere first");
            }
            return new Crossing(meet.onFirst(), meet.onSecond() - reach);
        }

        /** Whether the cloth lies on the point's side of the new line, as it does of the old. */
        private static boolean sameWay(Folded dart, CurvePath line, CurvePath ray, Meet meet) {
            double is = line.tangentAt(meet.onFirst()).signedArea(ray.tangentAt(meet.onSecond()));
            return is * dart.side() > 0;
        }

        /** Why a line does not cross the legs, in words: it lies beyond the point, or beside the dart. */
        private static DraftingException missed(
                Folded dart, CurvePath line, double reach, String asked, AffineTransformMatrix2D placed) {
            Vector2D point = dart.point();
            Vector2D beyond = point.add(dart.leg().endTangent().multiply(reach));
            String at = Outlines.words(placed.apply(point));
            if (Meets.of(line, CurvePath.polyline(point, beyond)).points().isEmpty()) {
                return new DraftingException(
                        asked,
                        "the new line passes the dart by, whose point lies at " + at
                                + "; draw it across the line of the dart, or move the dart elsewhere first");
            }
            double by = Nearest.of(line, point).distance();
            return new DraftingException(
                    asked,
                    "the new line passes over the point of the dart at " + at + ", "
                            + Quantity.LENGTH.print(by, Steps.DEFAULT)
                            + " too far; keep it outside the point, or move the dart elsewhere first");
        }

        Step.LegsCut cut(Opening opening) {
            return new Step.LegsCut(
                    opening.name(), opening.before(), opening.after(), cut(opening.before()), cut(opening.after()));
        }

        private CurvePath cut(CurvePath leg) {
            if (Math.abs(onLeg) <= CurvePath.JOINT) {
                return leg;
            }
            return onLeg > 0 ? leg.between(onLeg, leg.length()) : outwards(leg, -onLeg);
        }

        /** A leg that goes on straight beyond its mouth. */
        private static CurvePath outwards(CurvePath leg, double by) {
            Vector2D from = leg.start().subtract(leg.startTangent().multiply(by));
            List<Curve> curves = leg.curves();
            return curves.size() == 1 && curves.get(0) instanceof Straight
                    ? CurvePath.polyline(from, leg.end())
                    : CurvePath.polyline(from, leg.start()).then(leg);
        }
    }
}
