package org.draftingmaths.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
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
    static List<Mark> of(FinalPattern pattern, Pen pen) {
        FinishedDrawing drawing = new FinishedDrawing(pattern, pen);
        drawing.marks.add(new Mark.Area(Tint.CLOTH, pattern.cut().outline()));
        drawing.cut();
        pattern.lines().forEach(drawing::line);
        pattern.snips().forEach(drawing::snip);
        pattern.drills().forEach(drawing::drill);
        pattern.grain().ifPresent(drawing::grain);
        if (pen.factor() == 1) {
            pattern.labels().forEach(drawing::label);
        } else {
            drawing.labelsAnew();
        }
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

    /** At full size lines stand about the middle of the box that was kept for them; where letters run wide they are made smaller to fit. */
    private void label(Label label) {
        double widest = label.lines().stream()
                .mapToDouble(line -> Lettering.WIDER * Lettering.width(line, 1))
                .max()
                .orElseThrow();
        double size = Math.max(TextKind.LEAST, Math.min(label.height(), label.boxWidth() / widest));
        Vector2D down = Wording.left(label.along()).negate();
        double step = Label.SPACING * label.height();
        double first = -step * (label.lines().size() - 1) / 2 + Lettering.ABOVE * size / 2;
        for (int i = 0; i < label.lines().size(); i++) {
            Vector2D at = label.centre().add(down.multiply(first + i * step));
            marks.add(new Mark.Words(
                    kind(label),
                    size,
                    Mark.Anchor.MIDDLE,
                    at,
                    label.along(),
                    label.lines().get(i)));
        }
    }

    /** On a reduced print letters are as large as on any other, and the boxes of the full size are too small for them. */
    private void labelsAnew() {
        Labels labels = new Labels();
        marks.stream()
                .filter(Mark.Stroke.class::isInstance)
                .map(Mark.Stroke.class::cast)
                .forEach(labels::avoid);
        Wording words = new Wording(pattern.net(), pen, labels, marks);
        for (Label label : pattern.labels()) {
            switch (label.kind()) {
                case TITLE -> words.label(label.lines());
                case FOLD -> along(MarkedLine.Kind.FOLD, line -> true, label, words);
                case LEVEL ->
                    along(
                            MarkedLine.Kind.LEVEL,
                            line -> line.name().equals(label.lines().get(0)),
                            label,
                            words);
            }
        }
    }

    private void along(MarkedLine.Kind kind, Predicate<MarkedLine> which, Label label, Wording words) {
        List<CurvePath> lines = pattern.lines().stream()
                .filter(line -> line.kind() == kind)
                .filter(which)
                .map(MarkedLine::path)
                .toList();
        words.beside(lines, Wording.ALONG, kind(label), String.join(" ", label.lines()));
    }

    private static TextKind kind(Label label) {
        return switch (label.kind()) {
            case TITLE, FOLD -> TextKind.PLAIN;
            case LEVEL -> TextKind.LEVEL;
        };
    }
}
