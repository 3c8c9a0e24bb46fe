package org.draftingmaths.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.block.Construction;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.piece.DartEnd;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.FoldEnd;
import org.draftingmaths.piece.Grain;
import org.draftingmaths.piece.InsideDart;
import org.draftingmaths.piece.Laid;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.LevelLine;
import org.draftingmaths.piece.Measured;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Notches;
import org.draftingmaths.piece.Opening;
import org.draftingmaths.piece.Panel;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.PaperSide;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.StitchLines;
import org.draftingmaths.piece.Stretch;
import org.draftingmaths.piece.Use;

/**
 * One piece as marks: cloth, wedges, edges, darts, level lines, grain, notches. When every line is known the names are given places that no
 * line crosses.
 */
final class PieceDrawing {

    private static final double NOTCH = 4;
    private static final double POINT = 0.9;
    private static final double CROSS = 2;

    /** The name of a level line stands to one side, where there is more room. */
    private static final double[] ASIDE = {0.7, 0.6, 0.8, 0.5, 0.4, 0.3, 0.2, 0.88, 0.12};

    /** How far down a fold, as a share of it, the arrow stands that says which way it is brought. */
    private static final double FOLD_ARROW = 0.12;

    private final Figure figure;
    private final Piece piece;
    private final CurvePath outline;
    private final Pen pen;
    private final List<Mark> marks = new ArrayList<>();
    private final Labels labels = new Labels();
    private final Wording words;

    private PieceDrawing(Figure figure, Pen pen) {
        this.figure = figure;
        this.piece = figure.piece();
        this.outline = Paper.outline(piece);
        this.pen = pen;
        this.words = new Wording(outline, outline, pen, labels, marks);
    }

    static List<Mark> of(Figure figure, Pen pen, List<CurvePath> joins) {
        PieceDrawing drawing = new PieceDrawing(figure, pen);
        joins.forEach(drawing.labels::divide);
        drawing.lines();
        drawing.words();
        return drawing.marks;
    }

    private void lines() {
        cloth();
        figure.ghost().ifPresent(ghost -> draw(Mark.Stroke.closed(LineKind.EARLIER, Paper.outline(ghost))));
        levels();
        piece.openings().forEach(this::opening);
        insideDarts().forEach(this::insideDart);
        edges();
        piece.notches().forEach(this::notch);
        piece.grain().ifPresent(this::grain);
        figure.construction().forEach(line -> draw(Mark.Stroke.open(LineKind.CONSTRUCTION, line.line())));
    }

    private void words() {
        piece.grain().ifPresent(this::grainWords);
        piece.edges().forEach(this::edgeName);
        piece.openings().stream()
                .filter(opening -> opening.mouth().use() instanceof Use.Dart)
                .forEach(opening -> dartName(opening.name()));
        piece.openings().stream()
                .filter(opening -> opening.mouth().use() instanceof Use.Folded)
                .forEach(opening -> words.beside(
                        FoldEnd.lines(piece, opening.name()).hidden(), Wording.ALONG, TextKind.DART, opening.name()));
        insideDarts().forEach(this::insideDartName);
        piece.levels().forEach(this::levelName);
        figure.construction().forEach(this::constructionName);
        if (!figure.label().isEmpty()) {
            words.label(figure.label());
        }
    }

    private void draw(Mark.Stroke stroke) {
        marks.add(stroke);
        labels.avoid(stroke);
    }

    private void cloth() {
        marks.add(new Mark.Area(Tint.WEDGE, outline));
        for (Panel panel : piece.panels()) {
            marks.add(new Mark.Area(Tint.CLOTH, piece.place(panel.ring())));
        }
    }

    private void edges() {
        for (PaperSide side : Paper.sides(piece)) {
            boolean fold = piece.edge(side.edge()).role() == Role.FOLD;
            LineKind kind = side.opening().isPresent() ? LineKind.END : fold ? LineKind.FOLD : LineKind.NET;
            draw(Mark.Stroke.open(kind, side.path()));
        }
    }

    private void levels() {
        for (Panel panel : piece.panels()) {
            for (Stretch stretch : panel.lines()) {
                draw(Mark.Stroke.open(LineKind.LEVEL, piece.place(stretch)));
            }
        }
    }

    private void opening(Opening opening) {
        if (opening.mouth().use() instanceof Use.Dart) {
            dart(opening.name());
        } else if (opening.mouth().use() instanceof Use.Folded) {
            folded(opening.name());
        } else {
            for (Leg leg : Leg.values()) {
                draw(Mark.Stroke.open(LineKind.LEG, Measured.leg(piece, opening.name(), leg)));
            }
        }
    }

    /** Folds that are seen are drawn like legs, those beneath and the placement line as a bisector is. */
    private void folded(String fold) {
        FoldEnd.Lines lines = FoldEnd.lines(piece, fold);
        boolean one = lines.seen().size() == 1;
        lines.seen().forEach(line -> draw(Mark.Stroke.open(LineKind.LEG, line)));
        lines.hidden().forEach(line -> draw(Mark.Stroke.open(LineKind.BISECTOR, line)));
        draw(Mark.Stroke.open(one ? LineKind.LEG : LineKind.BISECTOR, lines.placement()));
        lines.seen()
                .forEach(line -> draw(Arrows.fold(share(line, FOLD_ARROW), share(lines.placement(), FOLD_ARROW), pen)));
    }

    private static Vector2D share(CurvePath line, double share) {
        return line.pointAt(share * line.length());
    }

    private void dart(String dart) {
        Vector2D tip = DartEnd.sewnTip(piece, dart);
        Vector2D apex = Measured.tip(piece, dart);
        draw(Mark.Stroke.open(
                LineKind.LEG,
                StitchLines.of(piece, dart, Leg.BEFORE)
                        .then(StitchLines.of(piece, dart, Leg.AFTER).reversed())));
        draw(Mark.Stroke.line(LineKind.BISECTOR, DartEnd.foldEnd(piece, dart), tip));
        marks.add(new Mark.Area(Tint.POINT, CurvePath.of(Arc.circle(tip, pen.mm(POINT)))));
        if (apex.distance(tip) > 0.1) {
            draw(Mark.Stroke.cross(LineKind.LEG, apex, pen.mm(CROSS)));
        }
    }

    private Vector2D legEnd(String dart, Leg leg) {
        return Measured.leg(piece, dart, leg).start();
    }

    private Stream<Laid> insideDarts() {
        return piece.panels().stream().flatMap(panel -> panel.darts().stream());
    }

    private void insideDart(Laid laid) {
        CurvePath dart = piece.place(laid);
        marks.add(new Mark.Area(Tint.WEDGE, dart));
        draw(Mark.Stroke.closed(LineKind.LEG, dart));
        draw(Mark.Stroke.open(LineKind.BISECTOR, fromPointToPoint(laid)));
    }

    private CurvePath fromPointToPoint(Laid laid) {
        InsideDart dart = piece.insideDart(laid.dart());
        return CurvePath.polyline(
                laid.motion().apply(dart.oneTip()), laid.motion().apply(dart.otherTip()));
    }

    /** Notches are drawn square to the stitch line, inwards. */
    private void notch(Notch notch) {
        Notches.Drawn drawn = Notches.where(piece, notch);
        draw(Mark.Stroke.line(
                LineKind.NOTCH, drawn.point(), drawn.point().add(drawn.inwards().multiply(pen.mm(NOTCH)))));
    }

    private void grain(Grain grain) {
        draw(Arrows.grain(grain.from(), grain.to(), false, pen));
    }

    private void grainWords(Grain grain) {
        CurvePath shaft = CurvePath.polyline(grain.from(), grain.to());
        words.beside(List.of(shaft), Wording.ALONG, TextKind.PLAIN, "grain of '" + piece.name() + "'", "grain");
    }

    /** The name of an edge inside it, along its longest side. */
    private void edgeName(Edge edge) {
        Paper.sides(piece).stream()
                .filter(side ->
                        side.edge().equals(edge.name()) && side.opening().isEmpty())
                .map(PaperSide::path)
                .max((a, b) -> Double.compare(a.length(), b.length()))
                .ifPresent(side ->
                        words.inside(side, TextKind.PLAIN, edge.name() + (edge.role() == Role.FOLD ? " (fold)" : "")));
    }

    private void dartName(String dart) {
        CurvePath before = CurvePath.polyline(DartEnd.sewnTip(piece, dart), legEnd(dart, Leg.BEFORE));
        CurvePath after = CurvePath.polyline(DartEnd.sewnTip(piece, dart), legEnd(dart, Leg.AFTER));
        words.beside(List.of(before, after), Wording.ALONG, TextKind.DART, dart);
    }

    private void insideDartName(Laid laid) {
        CurvePath middle = fromPointToPoint(laid);
        Vector2D out = Wording.left(middle.startTangent())
                .multiply(piece.insideDart(laid.dart()).intake() / 2);
        words.beside(
                List.of(shifted(middle, out), shifted(middle, out.negate())),
                Wording.ALONG,
                TextKind.DART,
                laid.dart());
    }

    private static CurvePath shifted(CurvePath line, Vector2D by) {
        return CurvePath.polyline(line.start().add(by), line.end().add(by));
    }

    private void levelName(LevelLine level) {
        List<CurvePath> stretches = piece.panels().stream()
                .flatMap(panel -> panel.lines().stream())
                .filter(stretch -> stretch.line().equals(level.name()))
                .map(piece::place)
                .sorted((a, b) -> Double.compare(b.length(), a.length()))
                .toList();
        if (!stretches.isEmpty()) {
            words.beside(stretches, ASIDE, TextKind.LEVEL, level.name());
        }
    }

    private void constructionName(Construction line) {
        words.beside(List.of(line.line()), Wording.ALONG, TextKind.CONSTRUCTION, line.name());
    }
}
