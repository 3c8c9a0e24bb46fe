package org.draftingmaths.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.finish.CutLine;
import org.draftingmaths.finish.CutSide;
import org.draftingmaths.finish.Drill;
import org.draftingmaths.finish.FinalPattern;
import org.draftingmaths.finish.GrainLine;
import org.draftingmaths.finish.Label;
import org.draftingmaths.finish.MarkedLine;
import org.draftingmaths.finish.Snip;
import org.draftingmaths.piece.Role;

/** A finished piece as marks: cut line, the lines within it, snips, drill points, grain and labels, each where it was finished to be. */
final class FinishedDrawing {

    private static final double DRILL = 1.5;

    private final FinalPattern pattern;
    private final Pen pen;
    private final List<Mark> marks = new ArrayList<>();

    private FinishedDrawing(FinalPattern pattern, Pen pen) {
        this.pattern = pattern;
        this.pen = pen;
    }

    /** The marks, in the piece's own coordinates. */
    static List<Mark> of(FinalPattern pattern, Pen pen, List<CurvePath> joins) {
        FinishedDrawing drawing = new FinishedDrawing(pattern, pen);
        drawing.marks.add(new Mark.Area(Tint.CLOTH, pattern.cut().outline()));
        drawing.cut();
        pattern.lines().forEach(drawing::line);
        pattern.snips().forEach(drawing::snip);
        pattern.drills().forEach(drawing::drill);
        pattern.grain().ifPresent(drawing::grain);
        drawing.labels(joins);
        return drawing.marks;
    }

    /** Scissors follow the cut line but never the fold: where it runs along one, the fold is drawn instead. */
    private void cut() {
        CutLine cut = pattern.cut();
        List<CutSide> sides = cut.sides();
        int fold = firstFold(sides);
        if (fold < 0) {
            marks.add(Mark.Stroke.closed(LineKind.CUT, cut.outline()));
            return;
        }
        Optional<CurvePath> line = Optional.empty();
        for (int i = 0; i < sides.size(); i++) {
            int number = (fold + i) % sides.size();
            CutSide side = sides.get(number);
            if (isFold(side)) {
                line.ifPresent(path -> marks.add(Mark.Stroke.open(LineKind.CUT, path)));
                marks.add(Mark.Stroke.open(LineKind.FOLD, side.path()));
                line = Optional.empty();
            } else {
                line = Optional.of(joined(line, side.path()));
            }
            Optional<CurvePath> corner = cut.corners().get(number).path();
            if (corner.isPresent()) {
                line = Optional.of(joined(line, corner.get()));
            }
        }
        line.ifPresent(path -> marks.add(Mark.Stroke.open(LineKind.CUT, path)));
    }

    private int firstFold(List<CutSide> sides) {
        for (int i = 0; i < sides.size(); i++) {
            if (isFold(sides.get(i))) {
                return i;
            }
        }
        return -1;
    }

    private boolean isFold(CutSide side) {
        return pattern.piece().edge(side.edge()).role() == Role.FOLD;
    }

    private static CurvePath joined(Optional<CurvePath> before, CurvePath next) {
        return before.map(path -> path.then(next)).orElse(next);
    }

    private void line(MarkedLine line) {
        LineKind kind = switch (line.kind()) {
            case STITCH -> LineKind.STITCH;
            case FOLD -> LineKind.FOLD;
            case DART_LEG, INSIDE_DART -> LineKind.LEG;
            case DART_CENTRE -> LineKind.BISECTOR;
            case LEVEL -> LineKind.LEVEL;
        };
        if (kind != LineKind.FOLD) {
            marks.add(Mark.Stroke.open(kind, line.path()));
        }
    }

    private void snip(Snip snip) {
        if (snip.depth() > CurvePath.JOINT) {
            marks.add(Mark.Stroke.line(LineKind.NOTCH, snip.cut(), snip.end()));
        }
    }

    private void drill(Drill drill) {
        double radius = pen.mm(DRILL);
        marks.add(Mark.Stroke.closed(LineKind.DRILL, CurvePath.of(Arc.circle(drill.point(), radius))));
        marks.add(Mark.Stroke.cross(LineKind.DRILL, drill.point(), radius));
    }

    private void grain(GrainLine grain) {
        marks.add(Arrows.grain(grain.from(), grain.to(), grain.oneWay(), pen));
    }

    /** At full size the labels stand in the boxes that were kept for them unless the paper is joined there; on a reduced print the boxes are too small. */
    private void labels(List<CurvePath> joins) {
        Labels labels = new Labels();
        joins.forEach(labels::divide);
        marks.stream()
                .filter(Mark.Stroke.class::isInstance)
                .map(Mark.Stroke.class::cast)
                .forEach(labels::avoid);
        Wording words = new Wording(pattern.net(), pattern.cut().outline(), pen, labels, marks);
        for (Label label : pattern.labels()) {
            if (pen.factor() != 1) {
                anew(label, words);
            } else if (joins.isEmpty()) {
                marks.addAll(inItsBox(label));
            } else {
                marks.addAll(words.placed(offTheJoins(label, words)));
            }
        }
    }

    private static List<Mark.Words> inItsBox(Label label) {
        return block(label, label.centre(), label.along());
    }

    /** Lines stand about the middle of the box that is kept for them; where letters run wide they are made smaller to fit. */
    private static List<Mark.Words> block(Label label, Vector2D centre, Vector2D along) {
        double size = size(label);
        Vector2D down = Wording.left(along).negate();
        double step = Label.SPACING * label.height();
        double first = -step * (label.lines().size() - 1) / 2 + Lettering.ABOVE * size / 2;
        List<Mark.Words> block = new ArrayList<>();
        for (int i = 0; i < label.lines().size(); i++) {
            Vector2D at = centre.add(down.multiply(first + i * step));
            block.add(new Mark.Words(
                    kind(label),
                    size,
                    Mark.Anchor.MIDDLE,
                    at,
                    along,
                    label.lines().get(i)));
        }
        return block;
    }

    private static double size(Label label) {
        double widest = label.lines().stream()
                .mapToDouble(line -> Lettering.WIDER * Lettering.width(line, 1))
                .max()
                .orElseThrow();
        return Math.max(TextKind.LEAST, Math.min(label.height(), label.boxWidth() / widest));
    }

    /** Its own box first, then others for letters as large. */
    private List<List<Mark.Words>> offTheJoins(Label label, Wording words) {
        List<List<Mark.Words>> places = new ArrayList<>(List.of(inItsBox(label)));
        if (label.kind() == Label.Kind.TITLE) {
            places.addAll(
                    words.within(size(label), Wording.WAYS, (size, centre, along) -> block(label, centre, along)));
        } else {
            words.beside(lines(label), Wording.ALONG, kind(label), size(label), said(label))
                    .map(List::of)
                    .forEach(places::add);
        }
        return places;
    }

    private void anew(Label label, Wording words) {
        if (label.kind() == Label.Kind.TITLE) {
            words.label(label.lines());
        } else {
            words.beside(lines(label), Wording.ALONG, kind(label), said(label));
        }
    }

    private static String said(Label label) {
        return String.join(" ", label.lines());
    }

    /** The lines that a label may stand beside. */
    private List<CurvePath> lines(Label label) {
        return pattern.lines().stream()
                .filter(line -> label.kind() == Label.Kind.FOLD
                        ? line.kind() == MarkedLine.Kind.FOLD
                        : line.kind() == MarkedLine.Kind.LEVEL
                                && line.name().equals(label.lines().get(0)))
                .map(MarkedLine::path)
                .toList();
    }

    private static TextKind kind(Label label) {
        return switch (label.kind()) {
            case TITLE, FOLD -> TextKind.PLAIN;
            case LEVEL -> TextKind.LEVEL;
        };
    }
}
