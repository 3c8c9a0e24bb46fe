package org.draftingmaths.piece;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Meet;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.curve.Straight;
import org.draftingmaths.ledger.Change;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;

/**
 * A sheet made longer or shorter across a straight line from edge to edge, which darts may cross.
 *
 * <p>With {@code d} the direction square to the line, downwards, everything below the line moves by {@code v = by d}; what lies on the line or
 * above it stays. An edge that crosses the line gets the straight {@code v} there, or loses what lies between the line and the one {@code -by}
 * below it. A dart that crosses the line keeps its point on the one side of it and its mouth on the other, each moving with its side, and its legs are
 * straight between them: with {@code w} the width of the mouth and {@code h} the depth of an upright dart, its legs become
 * {@code hypot(w/2, h + by)} long, both alike, and its angle {@code 2 atan(w / 2(h + by))}. A double-pointed dart goes likewise, point by point.
 *
 * <p>Conserved: all that lies on one side of the line, with every width, dart, mark and direction in it; the width of every mouth; the edges that do not
 * cross the line, as they lie. The base of an edge in which a crossing dart has its mouth is found anew, by closing that dart at its new angle.
 */
public final class SheetLength {

    private final Piece piece;
    private final AboveBelow sides;
    private final double by;
    private final String asked;
    private final AffineTransformMatrix2D shift;
    private final Map<Run, Run> runs = new HashMap<>();
    private final Map<String, Edge> edges = new HashMap<>();
    private final Map<String, DoubleUnaryOperator> arcs = new HashMap<>();

    private SheetLength(Piece piece, Spot from, Spot to, double by, String asked) {
        this.piece = piece;
        this.sides = AboveBelow.of(piece, from, to, asked);
        this.by = by;
        this.asked = asked;
        this.shift = AffineTransformMatrix2D.createTranslation(sides.down().multiply(by));
    }

    /**
     * Makes a piece longer or shorter across a line.
     *
     * @param piece the piece
     * @param from where the line starts, on an edge that no opening breaks
     * @param to where it ends, on another such edge
     * @param by how much longer, in mm; negative for shorter, not 0
     * @param asked what is asked, in words, for refusals and the ledger
     * @return the piece and what was done
     * @throws IllegalArgumentException when an edge is unknown or a place is past its end
     * @throws DraftingException when the line leaves the cloth, when what crosses it is no straight dart, or a double-pointed one that slants to it, when a
     *     level line slants across it, when there is less cloth below it than is to be taken out, or when the outline would cross itself
     */
    public static Reworked at(Piece piece, Spot from, Spot to, double by, String asked) {
        return new SheetLength(piece, from, to, by, asked).done();
    }

    private Reworked done() {
        List<Opening> crossing = piece.openings().stream().filter(this::crosses).toList();
        crossing.forEach(this::requireDart);
        requireCloth();
        piece.edges().forEach(edge -> remake(edge, crossing));
        List<Opening> openings = piece.openings().stream()
                .map(opening -> remade(opening, crossing.contains(opening)))
                .toList();
        Piece bare = new Piece(
                piece.name(),
                piece.edges().stream()
                        .map(edge -> edges.getOrDefault(edge.name(), edge))
                        .toList(),
                openings,
                piece.panels().stream().map(this::moved).toList(),
                piece.levels(),
                piece.insideDarts().stream().map(this::moved).toList(),
                piece.notches().stream()
                        .map(notch -> new Notch(notch.edge(), arc(notch.edge(), notch.arc()), notch.beside()))
                        .toList(),
                piece.grain().map(this::moved));
        Piece now = withLevels(bare);
        Outlines.requireSimple(now, asked);
        crossing.forEach(dart -> now.using(dart.name(), dart.mouth().use()));
        return new Reworked(now, told(now, crossing));
    }

    private Ledger told(Piece now, List<Opening> crossing) {
        Ledger ledger = Ledger.of(new Step.MadeLonger(asked, piece, now));
        for (String edge : List.of(sides.from().edge(), sides.to().edge())) {
            ledger = ledger.then(length(
                    "length of '" + edge + "'",
                    piece.edge(edge).length(),
                    now.edge(edge).length()));
        }
        for (Opening dart : crossing) {
            String name = "'" + dart.name() + "'";
            for (Leg leg : Leg.values()) {
                ledger = ledger.then(length(
                        leg.name().toLowerCase(java.util.Locale.ROOT) + " leg of " + name,
                        dart.base(leg).length(),
                        now.opening(dart.name()).base(leg).length()));
            }
            ledger = ledger.then(new Change(
                    "angle of " + name,
                    Quantity.ANGLE,
                    Measured.angle(piece, dart.name()),
                    Measured.angle(now, dart.name())));
        }
        for (InsideDart dart : piece.insideDarts()) {
            double was = dart.oneTip().distance(dart.otherTip());
            InsideDart is = now.insideDart(dart.name());
            if (!is.equals(dart)) {
                ledger = ledger.then(length(
                        "'" + dart.name() + "' from point to point",
                        was,
                        is.oneTip().distance(is.otherTip())));
            }
        }
        return ledger.then(new Change("net area", Quantity.AREA, piece.area(), now.area()));
    }

    private static Change length(String what, double before, double after) {
        return new Change(what, Quantity.LENGTH, before, after);
    }

    // ------------------------------------------------------------------------------------------------ what is refused

    private boolean crosses(Opening opening) {
        return Stream.of(Leg.values())
                .map(leg -> Measured.leg(piece, opening.name(), leg))
                .anyMatch(leg -> sides.below(leg.start()) != sides.below(leg.end()));
    }

    private void requireDart(Opening opening) {
        for (Leg leg : Leg.values()) {
            List<Curve> curves = opening.base(leg).curves();
            boolean straight = curves.size() == 1 && curves.get(0) instanceof Straight;
            if (!straight
                    || Panels.onlyRun(piece, opening.leg(leg)).isEmpty()
                    || opening.farMouth().isPresent()
                    || !(opening.mouth().use() instanceof Use.Dart)) {
                throw new DraftingException(
                        asked,
                        "the line crosses '" + opening.name()
                                + "', which is no dart with straight legs; close or fill it, or take another line");
            }
        }
    }

    /** What comes up to the line must have been so far below it. */
    private void requireCloth() {
        if (by > 0) {
            return;
        }
        double room = Double.POSITIVE_INFINITY;
        for (Panel panel : piece.panels()) {
            for (Run run : panel.ring()) {
                boolean ends = run.border() instanceof Border.OfEdge edge && sides.ends(edge.edge());
                CurvePath path = piece.place(run);
                room = Math.min(room, ends ? depth(path, edgeCrossing(run)) : depth(path));
            }
            for (Laid laid : panel.darts()) {
                room = Math.min(
                        room,
                        points(piece.insideDart(laid.dart()), laid).stream()
                                .filter(sides::below)
                                .mapToDouble(sides::depth)
                                .min()
                                .orElse(room));
            }
        }
        if (!(-by < room)) {
            throw new DraftingException(
                    asked,
                    "there is less cloth below the line, before the next edge or the point or mouth of a dart, than is to be taken out",
                    new Reach(Quantity.LENGTH, -by, 0, room));
        }
    }

    private AboveBelow.Place edgeCrossing(Run run) {
        return sides.place(((Border.OfEdge) run.border()).edge());
    }

    /** How near to the line from below a border's ends come; those of an edge across it but the end above. */
    private double depth(CurvePath path) {
        return Stream.of(path.start(), path.end(), path.pointAt(path.length() / 2))
                .filter(sides::below)
                .mapToDouble(sides::depth)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private double depth(CurvePath path, AboveBelow.Place at) {
        Vector2D end = sides.below(path.start()) ? path.start() : path.end();
        return at.point().equals(end) ? 0 : sides.depth(end);
    }

    // ------------------------------------------------------------------------------------------------ edges and
    // openings

    private void remake(Edge edge, List<Opening> crossing) {
        List<Run> own = piece.panels().stream()
                .flatMap(panel -> panel.ring().stream())
                .filter(run -> run.border().equals(new Border.OfEdge(edge.name())))
                .sorted(Comparator.comparingDouble(Run::from))
                .toList();
        if (sides.ends(edge.name())) {
            across(edge, own.get(0), sides.place(edge.name()));
        } else if (crossing.stream().anyMatch(dart -> isInside(dart, edge))) {
            closedAnew(edge, own, crossing);
        } else {
            own.forEach(run -> runs.put(run, below(run) ? run.moved(shift) : run));
        }
    }

    private static boolean isInside(Opening dart, Edge edge) {
        return dart.mouth().border().equals(new Border.OfEdge(edge.name()))
                && dart.mouth().after() > 0
                && dart.mouth().before() < edge.length();
    }

    private boolean below(Run run) {
        return sides.below(piece.place(run));
    }

    /** An edge that crosses the line: with the straight across, or without what is taken out. */
    private void across(Edge edge, Run run, AboveBelow.Place at) {
        CurvePath path = edge.base().transformed(run.motion());
        boolean falls = sides.below(path.end());
        double far = by > 0 ? at.arc() : lost(path, at.arc(), falls);
        CurvePath first =
                falls ? path.between(0, at.arc()) : path.between(0, far).transformed(shift);
        CurvePath last =
                falls ? path.between(far, path.length()).transformed(shift) : path.between(at.arc(), path.length());
        List<CurvePath> parts = new ArrayList<>(List.of(first));
        if (first.end().distance(last.start()) > CurvePath.JOINT) {
            parts.add(CurvePath.polyline(first.end(), last.start()));
        }
        parts.add(last);
        CurvePath placed = CurvePath.joined(parts);
        if (Centre.isStraight(path) && Centre.isStraight(placed)) {
            placed = CurvePath.polyline(placed.start(), placed.end());
        } else if (edge.role() == Role.FOLD) {
            throw new DraftingException(
                    asked, "'" + edge.name() + "' is a fold and must be straight; take a line square to it");
        }
        Edge now = new Edge(
                edge.name(),
                edge.role(),
                edge.allowance(),
                placed.transformed(run.motion().inverse()));
        edges.put(edge.name(), now);
        runs.put(run, run.part(0, now.length()));
        double low = falls ? at.arc() : far;
        double high = falls ? far : at.arc();
        double joint = first.length();
        double more = now.length() - edge.length();
        // A mark on the line stays with what is above, one on cloth that is taken out goes to the joint.
        arcs.put(edge.name(), arc -> {
            boolean stays = falls ? arc <= low + Panels.TOUCH : arc <= low && arc < high - Panels.TOUCH;
            boolean beyond = arc >= high - Panels.TOUCH;
            return stays ? arc : arc == edge.length() ? now.length() : beyond ? arc + more : joint;
        });
    }

    /** Where an edge reaches so far below the line as is taken out. */
    private double lost(CurvePath path, double arc, boolean falls) {
        Vector2D way = sides.from().point().directionTo(sides.to().point());
        Vector2D on = path.pointAt(arc).add(sides.down().multiply(-by));
        double reach = 1 + path.length();
        CurvePath line = CurvePath.polyline(on.subtract(way.multiply(reach)), on.add(way.multiply(reach)));
        Stream<Double> meets = Meets.of(path, line).points().stream().map(Meet::onFirst);
        Optional<Double> nearest = falls
                ? meets.filter(at -> at > arc && at < path.length() - Panels.TOUCH)
                        .min(Comparator.naturalOrder())
                : meets.filter(at -> at < arc && at > Panels.TOUCH).max(Comparator.naturalOrder());
        return nearest.orElseThrow(
                () -> new DraftingException(asked, "an edge that crosses the line does not reach so far below it"));
    }

    /** The base of an edge in which crossing darts have their mouths: each stretch is brought up to the one before by closing what parts them. */
    private void closedAnew(Edge edge, List<Run> own, List<Opening> crossing) {
        AffineTransformMatrix2D shifted = sides.below(piece.place(own.get(0))) ? shift : Isometry.NONE;
        AffineTransformMatrix2D motion = own.get(0).motion().premultiply(shifted);
        List<CurvePath> bases = new ArrayList<>();
        List<Step.Span.Drawn> parts = new ArrayList<>();
        double from = 0;
        for (int i = 0; i < own.size(); i++) {
            Run run = own.get(i);
            if (i > 0) {
                motion = motion.premultiply(parting(edge, own.get(i - 1), run, crossing, shifted));
            }
            CurvePath placed = edge.base()
                    .between(run.from(), run.to())
                    .transformed(run.motion().premultiply(shifted));
            CurvePath base = placed.transformed(motion.inverse());
            bases.add(base);
            double to = from + base.length();
            parts.add(new Step.Span.Drawn(run.from(), run.to(), from, to));
            runs.put(run, new Run(run.border(), from, to, run.forward(), motion));
            from = to;
        }
        Edge now = new Edge(edge.name(), edge.role(), edge.allowance(), CurvePath.joined(bases));
        Run last = own.get(own.size() - 1);
        Run end = runs.get(last);
        runs.put(last, end.part(end.from(), now.length()));
        edges.put(edge.name(), now);
        Step.Span span = new Step.Span(edge.name(), parts, edge.length(), now.length());
        arcs.put(
                edge.name(),
                arc -> span.around(arc)
                        .map(part -> part.newFrom() + arc - part.from())
                        .orElseGet(() -> span.moved(arc)));
    }

    /** How the stretch behind an opening lies, as seen from the one before it: by a crossing dart's new legs, else as it did. */
    private AffineTransformMatrix2D parting(
            Edge edge, Run before, Run after, List<Opening> crossing, AffineTransformMatrix2D shifted) {
        if (before.to() != after.from()) {
            throw new DraftingException(
                    asked, "cloth was taken out of '" + edge.name() + "', in which a dart crosses the line");
        }
        return crossing.stream()
                .filter(dart -> isInside(dart, edge) && dart.mouth().before() == before.to())
                .findFirst()
                .map(dart -> laid(leg(dart, Leg.BEFORE), leg(dart, Leg.AFTER)))
                .orElseGet(() -> after.motion()
                        .multiply(before.motion().inverse())
                        .multiply(shifted.inverse())
                        .premultiply(shifted));
    }

    /** The turn and shift that lay one leg along another, mouth on mouth. */
    private static AffineTransformMatrix2D laid(CurvePath leg, CurvePath other) {
        Vector2D from = leg.startTangent();
        Vector2D to = other.startTangent();
        return AffineTransformMatrix2D.createRotation(leg.start(), Math.atan2(from.signedArea(to), from.dot(to)))
                .translate(leg.start().vectorTo(other.start()));
    }

    /** A leg of a crossing dart as it is to lie. */
    private CurvePath leg(Opening dart, Leg leg) {
        CurvePath was = Measured.leg(piece, dart.name(), leg);
        return CurvePath.polyline(moved(was.start()), moved(was.end()));
    }

    private Vector2D moved(Vector2D point) {
        return sides.below(point) ? shift.apply(point) : point;
    }

    private Opening remade(Opening opening, boolean crosses) {
        for (Leg leg : Leg.values()) {
            for (Panel panel : piece.panels()) {
                for (Run run : panel.ring()) {
                    if (run.border().equals(opening.leg(leg))) {
                        runs.put(run, crosses ? drawn(run, leg(opening, leg)) : below(run) ? run.moved(shift) : run);
                    }
                }
            }
        }
        return new Opening(
                opening.name(),
                remade(opening.mouth()),
                opening.farMouth().map(this::remade),
                crosses ? base(opening, Leg.BEFORE) : opening.before(),
                crosses ? base(opening, Leg.AFTER) : opening.after());
    }

    private static Run drawn(Run run, CurvePath leg) {
        return run.part(0, leg.length());
    }

    private CurvePath base(Opening dart, Leg leg) {
        Run run = Panels.onlyRun(piece, dart.leg(leg)).orElseThrow();
        return leg(dart, leg).transformed(run.motion().inverse());
    }

    private Mouth remade(Mouth mouth) {
        return mouth.border() instanceof Border.OfEdge edge
                ? new Mouth(
                        mouth.border(), arc(edge.edge(), mouth.before()), arc(edge.edge(), mouth.after()), mouth.use())
                : mouth;
    }

    private double arc(String edge, double arc) {
        return arcs.getOrDefault(edge, DoubleUnaryOperator.identity()).applyAsDouble(arc);
    }

    // ------------------------------------------------------------------------------------------------ what lies on the
    // sheet

    private Panel moved(Panel panel) {
        return new Panel(
                panel.ring().stream().map(runs::get).toList(),
                panel.lines(),
                panel.darts().stream()
                        .map(laid -> isBelow(piece.insideDart(laid.dart()), laid) ? laid.moved(shift) : laid)
                        .toList());
    }

    private static List<Vector2D> points(InsideDart dart, Laid laid) {
        return Stream.of(dart.oneTip(), dart.otherTip(), dart.oneSide(), dart.otherSide())
                .map(laid.motion())
                .toList();
    }

    private boolean isBelow(InsideDart dart, Laid laid) {
        return points(dart, laid).stream().allMatch(sides::below);
    }

    /** A double-pointed dart point by point; one that lies on one side of the line goes with its cloth. */
    private InsideDart moved(InsideDart dart) {
        Laid laid = piece.panels().stream()
                .flatMap(panel -> panel.darts().stream())
                .filter(each -> each.dart().equals(dart.name()))
                .findFirst()
                .orElseThrow();
        if (isBelow(dart, laid) || points(dart, laid).stream().noneMatch(sides::below)) {
            return dart;
        }
        AffineTransformMatrix2D back = laid.motion().inverse();
        List<Vector2D> now =
                points(dart, laid).stream().map(this::moved).map(back).toList();
        double one = now.get(0).distance(now.get(2)) - now.get(0).distance(now.get(3));
        double other = now.get(1).distance(now.get(2)) - now.get(1).distance(now.get(3));
        double apart = Math.max(Math.abs(one), Math.abs(other));
        if (apart > Panels.TOUCH) {
            throw new DraftingException(
                    asked,
                    "the double-pointed dart '" + dart.name() + "' slants to the line, and its sides would differ by "
                            + Quantity.LENGTH.printFinely(apart)
                            + "; take a line square to it, or one beyond its points");
        }
        return new InsideDart(dart.name(), now.get(0), now.get(1), now.get(2), now.get(3), dart.shape());
    }

    /** A grain line that crosses grows with the cloth where it runs square to the line; a slanting one stays. */
    private Grain moved(Grain grain) {
        boolean square = Math.abs(grain.direction().signedArea(sides.down())) <= 1e-9;
        boolean both = sides.below(grain.from()) && sides.below(grain.to());
        return both || square ? new Grain(moved(grain.from()), moved(grain.to())) : grain;
    }

    // ------------------------------------------------------------------------------------------------ level lines

    private Piece withLevels(Piece bare) {
        List<Panel> panels = new ArrayList<>();
        for (int i = 0; i < bare.panels().size(); i++) {
            Panel was = piece.panels().get(i);
            CurvePath ring = bare.place(bare.panels().get(i).ring());
            panels.add(new Panel(
                    bare.panels().get(i).ring(),
                    was.lines().stream().flatMap(line -> moved(was, line, ring)).toList(),
                    bare.panels().get(i).darts()));
        }
        return bare.with(panels);
    }

    /** A stretch goes with its side of the line, and on to the borders where they lie now; what is taken out with its cloth is gone. */
    private Stream<Stretch> moved(Panel panel, Stretch stretch, CurvePath ring) {
        CurvePath line = piece.place(stretch);
        double near = Math.min(sides.depth(line.start()), sides.depth(line.end()));
        double far = Math.max(sides.depth(line.start()), sides.depth(line.end()));
        boolean below = sides.below(line);
        boolean slants =
                below ? near < -Panels.TOUCH : far > Panels.TOUCH && sides.below(line.pointAt(line.length() / 20));
        boolean lost = below && far < -by - Panels.TOUCH;
        if (slants || (below && !lost && near < -by - Panels.TOUCH)) {
            throw new DraftingException(
                    asked, "the level line '" + stretch.line() + "' slants across it; take a line along that one");
        }
        if (lost) {
            return Stream.of();
        }
        AffineTransformMatrix2D by = below ? shift : Isometry.NONE;
        List<CurvePath> borders = panel.ring().stream()
                .filter(run -> !runs.get(run).equals(below ? run.moved(shift) : run) || changes(run))
                .map(run -> piece.place(run).transformed(by))
                .toList();
        return borders.isEmpty()
                ? Stream.of(stretch.moved(by))
                : Redraw.refitted(piece, stretch.moved(by), borders, ring);
    }

    private boolean changes(Run run) {
        return run.border() instanceof Border.OfEdge edge
                ? edges.containsKey(edge.edge())
                : crosses(piece.opening(((Border.OfLeg) run.border()).opening()));
    }

    /** The way back. */
    static Piece undo(Piece piece, Step.MadeLonger step) {
        Piece after = step.after();
        if (!piece.edges().equals(after.edges())
                || !piece.openings().equals(after.openings())
                || !piece.insideDarts().equals(after.insideDarts())
                || !piece.notches().equals(after.notches())
                || !piece.sameCloth(after, Panels.TOUCH)) {
            throw Panels.changedSince("Undo: " + step.asked());
        }
        return step.before();
    }
}
