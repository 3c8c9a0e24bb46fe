package org.draftingmaths.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Bounds2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.block.Construction;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Inside;
import org.draftingmaths.piece.DartEnd;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Grain;
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
import org.draftingmaths.piece.Stretch;
import org.draftingmaths.piece.Use;

/**
 * One piece as marks: cloth, wedges, edges, darts, level lines, grain, notches. When every line is known the names are given places that no
 * line crosses.
 */
final class PieceDrawing {

    private static final double BESIDE = 1.6;
    private static final double NOTCH = 4;
    private static final double ARROW = 5;
    private static final double POINT = 0.9;
    private static final double CROSS = 2;

    /** Two lines of words stand this far apart, as a share of the size of the letters. */
    static final double LINES = 1.35;

    /** Where along its line a name may stand, best first. */
    private static final double[] ALONG = {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.12, 0.88};

    /** The name of a level line stands to one side, where there is more room. */
    private static final double[] ASIDE = {0.7, 0.6, 0.8, 0.5, 0.4, 0.3, 0.2, 0.88, 0.12};

    /** So many places across and down are tried for the label. */
    private static final int TRIED = 40;

    private final Figure figure;
    private final Piece piece;
    private final CurvePath outline;
    private final Pen pen;
    private final List<Mark> marks = new ArrayList<>();
    private final Labels labels = new Labels();

    private PieceDrawing(Figure figure, Pen pen) {
        this.figure = figure;
        this.piece = figure.piece();
        this.outline = Paper.outline(piece);
        this.pen = pen;
    }

    static List<Mark> of(Figure figure, Pen pen) {
        PieceDrawing drawing = new PieceDrawing(figure, pen);
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
        insideDarts().forEach(this::insideDartName);
        piece.levels().forEach(this::levelName);
        figure.construction().forEach(this::constructionName);
        if (!figure.label().isEmpty()) {
            label();
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
        } else {
            for (Leg leg : Leg.values()) {
                draw(Mark.Stroke.open(LineKind.LEG, Measured.leg(piece, opening.name(), leg)));
            }
        }
    }

    private void dart(String dart) {
        Vector2D tip = DartEnd.sewnTip(piece, dart);
        Vector2D apex = Measured.tip(piece, dart);
        draw(Mark.Stroke.line(LineKind.LEG, legEnd(dart, Leg.BEFORE), tip, legEnd(dart, Leg.AFTER)));
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
        draw(Mark.Stroke.line(LineKind.BISECTOR, firstPoint(dart), secondPoint(dart)));
    }

    private static Vector2D firstPoint(CurvePath insideDart) {
        return insideDart.curves().get(0).start();
    }

    private static Vector2D secondPoint(CurvePath insideDart) {
        return insideDart.curves().get(2).start();
    }

    /** Notches are drawn square to the stitch line, inwards. */
    private void notch(Notch notch) {
        Notches.Drawn drawn = Notches.where(piece, notch);
        draw(Mark.Stroke.line(
                LineKind.NOTCH, drawn.point(), drawn.point().add(drawn.inwards().multiply(pen.mm(NOTCH)))));
    }

    private void grain(Grain grain) {
        Vector2D way = grain.direction();
        draw(Mark.Stroke.open(
                LineKind.GRAIN,
                CurvePath.polyline(grain.from(), grain.to()),
                head(grain.to(), way.negate()),
                head(grain.from(), way)));
    }

    private CurvePath head(Vector2D tip, Vector2D back) {
        Vector2D root = tip.add(back.multiply(pen.mm(ARROW)));
        Vector2D side = left(back).multiply(pen.mm(ARROW) * 0.35);
        return CurvePath.polyline(root.add(side), tip, root.subtract(side));
    }

    private void grainWords(Grain grain) {
        CurvePath shaft = CurvePath.polyline(grain.from(), grain.to());
        beside(List.of(shaft), ALONG, TextKind.PLAIN, "grain of '" + piece.name() + "'");
    }

    /** The name of an edge inside it, along its longest side. */
    private void edgeName(Edge edge) {
        Paper.sides(piece).stream()
                .filter(side ->
                        side.edge().equals(edge.name()) && side.opening().isEmpty())
                .map(PaperSide::path)
                .max((a, b) -> Double.compare(a.length(), b.length()))
                .ifPresent(side -> nameInside(side, edge.name() + (edge.role() == Role.FOLD ? " (fold)" : "")));
    }

    private void nameInside(CurvePath side, String words) {
        place(sizes(TextKind.PLAIN)
                .flatMap(size -> DoubleStream.of(ALONG)
                        .mapToObj(share -> besideOn(side, share * side.length(), true, TextKind.PLAIN, size, words))));
    }

    private void dartName(String dart) {
        CurvePath before = CurvePath.polyline(DartEnd.sewnTip(piece, dart), legEnd(dart, Leg.BEFORE));
        CurvePath after = CurvePath.polyline(DartEnd.sewnTip(piece, dart), legEnd(dart, Leg.AFTER));
        beside(List.of(before, after), ALONG, TextKind.DART, dart);
    }

    private void insideDartName(Laid laid) {
        CurvePath dart = piece.place(laid);
        CurvePath middle = CurvePath.polyline(firstPoint(dart), secondPoint(dart));
        Vector2D out = left(middle.startTangent())
                .multiply(piece.insideDart(laid.dart()).intake() / 2);
        beside(List.of(shifted(middle, out), shifted(middle, out.negate())), ALONG, TextKind.DART, laid.dart());
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
            beside(stretches, ASIDE, TextKind.LEVEL, level.name());
        }
    }

    private void constructionName(Construction line) {
        beside(List.of(line.line()), ALONG, TextKind.CONSTRUCTION, line.name());
    }

    /** Words along one of several lines, on either side of it. */
    private void beside(List<CurvePath> lines, double[] shares, TextKind kind, String words) {
        place(sizes(kind)
                .flatMap(size -> lines.stream()
                        .flatMap(line -> DoubleStream.of(shares)
                                .boxed()
                                .flatMap(share -> Stream.of(true, false)
                                        .map(left ->
                                                besideOn(line, share * line.length(), left, kind, size, words))))));
    }

    private Stream<Double> sizes(TextKind kind) {
        return Stream.of(pen.size(kind), pen.mm(TextKind.LEAST));
    }

    /** Words at a place of a line, to the left of its direction or to the right, clear of the line where it bends towards them. */
    private Mark.Words besideOn(CurvePath line, double at, boolean left, TextKind kind, double size, String words) {
        Vector2D way = line.tangentAt(at);
        Vector2D aside = left ? left(way) : left(way).negate();
        Vector2D upright = upright(way);
        boolean above = left(upright).dot(aside) > 0;
        double bulge = bulge(line, at, aside, Lettering.width(words, size) / 2);
        double distance = pen.mm(BESIDE) + bulge + (above ? 0 : Lettering.ABOVE * size);
        return new Mark.Words(
                kind, size, Mark.Anchor.MIDDLE, line.pointAt(at).add(aside.multiply(distance)), upright, words);
    }

    /** How far the line comes towards the words under their ends. */
    private static double bulge(CurvePath path, double middle, Vector2D aside, double half) {
        double from = Math.max(0, middle - half);
        double to = Math.min(path.length(), middle + half);
        Vector2D at = path.pointAt(middle);
        return Math.max(
                0,
                Math.max(
                        at.vectorTo(path.pointAt(from)).dot(aside),
                        at.vectorTo(path.pointAt(to)).dot(aside)));
    }

    /** Places on the piece come before places off it. */
    private void place(Stream<Mark.Words> candidates) {
        Map<Boolean, List<Mark.Words>> on =
                candidates.collect(Collectors.partitioningBy(words -> Inside.contains(outline, middle(words))));
        marks.add(labels.place(
                Stream.concat(on.get(true).stream(), on.get(false).stream()).toList()));
    }

    private static Vector2D middle(Mark.Words words) {
        return words.box().get(0).lerp(words.box().get(2), 0.5);
    }

    /** The label stands upright as near to the middle of the piece as there is room; in a narrow piece along its grain. */
    private void label() {
        Bounds2D box = outline.bounds();
        List<List<Mark.Words>> places = new ArrayList<>();
        for (double size : sizes(TextKind.PLAIN).toList()) {
            for (Vector2D way : List.of(Vector2D.Unit.PLUS_X, Vector2D.Unit.PLUS_Y)) {
                middles(box).forEach(middle -> places.add(block(middle, way, size)));
            }
        }
        marks.addAll(labels.placeTogether(places));
    }

    private List<Vector2D> middles(Bounds2D box) {
        Vector2D centre = box.getCentroid();
        Vector2D size = box.getDiagonal();
        List<Vector2D> middles = new ArrayList<>();
        for (int i = 1; i < TRIED; i++) {
            for (int j = 1; j < TRIED; j++) {
                middles.add(box.getMin().add(Vector2D.of(size.getX() * i / TRIED, size.getY() * j / TRIED)));
            }
        }
        return middles.stream()
                .filter(middle -> Inside.contains(outline, middle))
                .sorted((a, b) -> Double.compare(a.distance(centre), b.distance(centre)))
                .toList();
    }

    /** Lines of words about a middle. */
    private List<Mark.Words> block(Vector2D middle, Vector2D way, double size) {
        List<String> lines = figure.label();
        Vector2D down = left(way).negate();
        double first = size * TextKind.CAPTION.size() / TextKind.PLAIN.size();
        double step = LINES * size;
        Vector2D at = middle.add(down.multiply(-step * (lines.size() - 1) / 2));
        List<Mark.Words> block = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            TextKind kind = i == 0 ? TextKind.CAPTION : TextKind.PLAIN;
            Vector2D place = at.add(down.multiply(i * step));
            block.add(new Mark.Words(kind, i == 0 ? first : size, Mark.Anchor.MIDDLE, place, way, lines.get(i)));
        }
        return block;
    }

    private static Vector2D left(Vector2D way) {
        return Vector2D.of(-way.getY(), way.getX());
    }

    /** The direction in which letters are read: to the right, and upwards on an upright line. */
    private static Vector2D upright(Vector2D way) {
        boolean leftwards = way.getX() < -1e-9;
        boolean down = Math.abs(way.getX()) <= 1e-9 && way.getY() < 0;
        return leftwards || down ? way.negate() : way;
    }
}
