package org.draftingmaths.finish;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Meets;
import org.draftingmaths.curve.Nearest;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.ledger.Reach;
import org.draftingmaths.piece.Beside;
import org.draftingmaths.piece.Border;
import org.draftingmaths.piece.DartEnd;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Mouth;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Notches;
import org.draftingmaths.piece.Opening;
import org.draftingmaths.piece.Panel;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.PaperSide;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Stretch;
import org.draftingmaths.piece.Use;

/** Places of the stitch line carried to the cut line. */
final class Snips {

    /** Places nearer than this in mm are one. */
    private static final double SAME = 1e-6;

    /** A cut line may lie off its parallel by its deviation, and a place on it by as much again. */
    private static final double ON = 1e-5;

    /** Where two edges run on within this angle of straight there is no corner. */
    private static final double NO_CORNER = Math.toRadians(10);

    /** What was cut, and what is wrong with it. */
    record Cut(List<Snip> snips, List<Finding> findings) {}

    private final Piece piece;
    private final CutLine cut;
    private final Marking marking;
    private final List<PaperSide> sides;
    private final List<Snip> snips = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    private Snips(Piece piece, CutLine cut, Marking marking) {
        this.piece = piece;
        this.cut = cut;
        this.marking = marking;
        this.sides = Paper.sides(piece);
    }

    static Cut of(Piece piece, CutLine cut, Marking marking) {
        marking.doubled().forEach(piece::edge);
        Snips snips = new Snips(piece, cut, marking);
        piece.notches().forEach(snips::notch);
        piece.openings().forEach(snips::opening);
        snips.folds();
        snips.hemTurns();
        piece.panels().forEach(snips::levels);
        return new Cut(List.copyOf(snips.snips), List.copyOf(snips.findings));
    }

    private void notch(Notch notch) {
        double half = marking.spacing() / 2;
        boolean doubled = marking.doubled().contains(notch.edge());
        boolean room = notch.arc() >= half
                && notch.arc() + half <= piece.edge(notch.edge()).length();
        if (doubled && room) {
            matched(Snip.Kind.DOUBLE_NOTCH, new Notch(notch.edge(), notch.arc() - half, notch.beside()));
            matched(Snip.Kind.DOUBLE_NOTCH, new Notch(notch.edge(), notch.arc() + half, notch.beside()));
        } else {
            matched(Snip.Kind.NOTCH, notch);
        }
    }

    /** A match point, square to the stitch line; at a corner it says nothing, because either edge could be meant. */
    private void matched(Snip.Kind kind, Notch notch) {
        Notches.Drawn drawn = Notches.where(piece, notch);
        CutSide side = cut.side(notch.edge());
        add(kind, notch.edge(), side, drawn.point(), drawn.inwards().negate()).ifPresent(snip -> {
            double off = Nearest.of(side.path(), snip.cut()).distance();
            double room = Math.max(snip.depth(), SAME);
            double toCorner = off > ON ? 0 : toCorner(side, snip.cut());
            if (toCorner < room) {
                findings.add(new Finding(
                        Finding.Kind.NOTCH_AT_CORNER,
                        String.format(
                                Locale.ROOT,
                                "notch at %.1f mm of '%s' of '%s'",
                                notch.arc(),
                                notch.edge(),
                                piece.name()),
                        Quantity.LENGTH,
                        toCorner,
                        room,
                        0));
            }
        });
    }

    /** How far a place on a side is from the nearer of its ends at which there is a corner. */
    private double toCorner(CutSide side, Vector2D place) {
        int at = cut.sides().indexOf(side);
        int n = cut.sides().size();
        if (cut.corners().isEmpty()) {
            return Double.POSITIVE_INFINITY;
        }
        double atStart = isCorner(cut.corners().get((at + n - 1) % n))
                ? side.path().start().distance(place)
                : Double.POSITIVE_INFINITY;
        double atEnd = isCorner(cut.corners().get(at)) ? side.path().end().distance(place) : Double.POSITIVE_INFINITY;
        return Math.min(atStart, atEnd);
    }

    private static boolean isCorner(CutCorner corner) {
        return Math.abs(corner.angle() - Math.PI) > NO_CORNER;
    }

    private void opening(Opening opening) {
        if (opening.mouth().use() instanceof Use.Dart && opening.mouth().border() instanceof Border.OfEdge edge) {
            Vector2D tip = DartEnd.sewnTip(piece, opening.name());
            for (Leg leg : Leg.values()) {
                Vector2D end = Measured.leg(piece, opening.name(), leg).start();
                add(Snip.Kind.DART_LEG, opening.name(), cut.side(edge.edge()), end, tip.directionTo(end));
            }
        }
        Stream.concat(Stream.of(opening.mouth()), opening.farMouth().stream()).forEach(this::fullness);
    }

    private void fullness(Mouth mouth) {
        boolean held = mouth.use() instanceof Use.Left left
                && (left.kind() == Use.Kind.EASE || left.kind() == Use.Kind.GATHERS);
        if (held && mouth.border() instanceof Border.OfEdge edge) {
            for (Notch end : List.of(
                    new Notch(edge.edge(), mouth.before(), Beside.BEFORE),
                    new Notch(edge.edge(), mouth.after(), Beside.AFTER))) {
                Notches.Drawn drawn = Notches.where(piece, end);
                add(
                        Snip.Kind.FULLNESS_END,
                        edge.edge(),
                        cut.side(edge.edge()),
                        drawn.point(),
                        drawn.inwards().negate());
            }
        }
    }

    /** Where a fold's own line comes to the cut line of its neighbour. */
    private void folds() {
        for (int i = 0; i < cut.corners().size(); i++) {
            CutSide arriving = cut.sides().get(i);
            CutSide leaving = cut.sides().get((i + 1) % cut.sides().size());
            CutCorner corner = cut.corners().get(i);
            if (isFold(leaving.edge())) {
                foldEnd(leaving.edge(), arriving, corner, arriving.path().end());
            } else if (isFold(arriving.edge())) {
                foldEnd(arriving.edge(), leaving, corner, leaving.path().start());
            }
        }
    }

    /** The cut line goes along the fold from the corner on the stitch line to the place that is snipped. */
    private void foldEnd(String fold, CutSide neighbour, CutCorner corner, Vector2D neighbourEnd) {
        if (neighbour.width() == 0) {
            return;
        }
        Vector2D on = sides.stream()
                .filter(side -> side.edge().equals(fold))
                .map(side -> side.path().start().distance(corner.net()) < SAME
                        ? side.path().end()
                        : side.path().start())
                .findFirst()
                .orElseThrow();
        Vector2D out = on.directionTo(corner.net());
        Stream<Vector2D> ends = corner.path().stream()
                .flatMap(path -> path.curves().stream())
                .flatMap(curve -> Stream.of(curve.start(), curve.end()));
        Stream.concat(Stream.of(neighbourEnd), ends)
                .filter(end -> Math.abs(out.signedArea(corner.net().vectorTo(end))) < SAME)
                .max((a, b) -> Double.compare(out.dot(a), out.dot(b)))
                .ifPresent(end -> snip(Snip.Kind.FOLD_END, fold, neighbour, corner.net(), end));
    }

    private boolean isFold(String edge) {
        return piece.edge(edge).role() == Role.FOLD;
    }

    /** The ends of the line at which a hem is turned up, on the cut line of what crosses it; where a hem runs straight on nothing crosses it. */
    private void hemTurns() {
        for (int i = 0; i < cut.corners().size(); i++) {
            if (!isCorner(cut.corners().get(i))) {
                continue;
            }
            CutSide arriving = cut.sides().get(i);
            CutSide leaving = cut.sides().get((i + 1) % cut.sides().size());
            Vector2D net = cut.corners().get(i).net();
            if (isHem(arriving) && leaving.width() > 0) {
                add(Snip.Kind.HEM_TURN, arriving.edge(), leaving, net, endTangent(arriving.edge()));
            } else if (isHem(leaving) && arriving.width() > 0) {
                add(
                        Snip.Kind.HEM_TURN,
                        leaving.edge(),
                        arriving,
                        net,
                        startTangent(leaving.edge()).negate());
            }
        }
    }

    private boolean isHem(CutSide side) {
        return piece.edge(side.edge()).role() == Role.HEM && side.width() > 0;
    }

    private Vector2D endTangent(String edge) {
        return ofEdge(edge).endTangent();
    }

    private Vector2D startTangent(String edge) {
        return ofEdge(edge).startTangent();
    }

    /** An edge on paper in the direction of the outline. */
    private CurvePath ofEdge(String edge) {
        CurvePath path = Paper.edge(piece, edge);
        boolean forward =
                sides.stream().filter(side -> side.edge().equals(edge)).allMatch(PaperSide::forward);
        return forward ? path : path.reversed();
    }

    private void levels(Panel panel) {
        for (Stretch stretch : panel.lines()) {
            CurvePath line = piece.place(stretch);
            levelEnd(stretch.line(), line.start());
            levelEnd(stretch.line(), line.end());
        }
    }

    /** A level line that ends at a corner or at a match point is shown by that. */
    private void levelEnd(String line, Vector2D end) {
        if (Stream.concat(corners(), matches()).anyMatch(place -> place.distance(end) < SAME)) {
            return;
        }
        for (PaperSide side : sides) {
            Nearest nearest = Nearest.of(side.path(), end);
            if (side.opening().isEmpty() && !isFold(side.edge()) && nearest.distance() < SAME) {
                Vector2D way = side.path().tangentAt(nearest.at());
                add(Snip.Kind.LEVEL_END, line, cut.side(side.edge()), end, Vector2D.of(way.getY(), -way.getX()));
                return;
            }
        }
    }

    private Stream<Vector2D> corners() {
        return cut.corners().stream().map(CutCorner::net);
    }

    private Stream<Vector2D> matches() {
        return piece.notches().stream().map(notch -> Notches.where(piece, notch).point());
    }

    /** A snip where the line from a place of the stitch line outwards meets the cut line. */
    private Optional<Snip> add(Snip.Kind kind, String of, CutSide side, Vector2D stitch, Vector2D out) {
        if (side.width() == 0) {
            return snip(kind, of, side, stitch, stitch);
        }
        double far = cut.outline().bounds().getDiagonal().norm();
        Vector2D end =
                Meets.of(CurvePath.polyline(stitch, stitch.add(out.multiply(far))), cut.outline()).points().stream()
                        .filter(meet -> meet.onFirst() > SAME)
                        .findFirst()
                        .map(meet -> meet.point())
                        .orElse(stitch);
        return snip(kind, of, side, stitch, end);
    }

    private Optional<Snip> snip(Snip.Kind kind, String of, CutSide side, Vector2D stitch, Vector2D end) {
        boolean known = snips.stream()
                .anyMatch(other ->
                        other.stitch().distance(stitch) < SAME && other.cut().distance(end) < SAME);
        if (known) {
            return Optional.empty();
        }
        double depth = depth(side);
        Vector2D in = depth > 0 && stitch.distance(end) > 0
                ? end.add(end.directionTo(stitch).multiply(depth))
                : end;
        Snip made = new Snip(kind, of, stitch, end, in);
        snips.add(made);
        return Optional.of(made);
    }

    private double depth(CutSide side) {
        double most = side.width() / 2;
        if (marking.depth().isPresent() && marking.depth().getAsDouble() > most) {
            throw new DraftingException(
                    "Notch '" + side.edge() + "' of '" + piece.name() + "'",
                    "a notch deeper than half the allowance weakens the seam",
                    new Reach(Quantity.LENGTH, marking.depth().getAsDouble(), 0, most));
        }
        return marking.depth().orElse(Math.min(Marking.DEPTH, most));
    }
}
