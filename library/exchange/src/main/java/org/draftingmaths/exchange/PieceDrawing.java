package org.draftingmaths.exchange;

import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.block.Construction;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Nearest;
import org.draftingmaths.piece.DartEnd;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.FoldEnd;
import org.draftingmaths.piece.Grain;
import org.draftingmaths.piece.Laid;
import org.draftingmaths.piece.Leg;
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

/** One piece: cloth, wedges, edges, darts, level lines, grain, notches and names. */
final class PieceDrawing {

    private static final double LABEL_INSIDE = 1.6;
    private static final double NOTCH = 4;
    private static final double ARROW = 5;

    /** How far down a fold, as a share of it, the arrow stands that says which way it is brought. */
    private static final double FOLD_ARROW = 0.12;

    private final Piece piece;
    private final Pen pen;
    private final StringBuilder svg = new StringBuilder();

    private PieceDrawing(Piece piece, Pen pen) {
        this.piece = piece;
        this.pen = pen;
    }

    static String of(Figure figure, Pen pen) {
        PieceDrawing drawing = new PieceDrawing(figure.piece(), pen);
        drawing.cloth();
        figure.ghost().ifPresent(ghost -> drawing.path("ghost", PathData.closed(Paper.outline(ghost))));
        drawing.levels();
        drawing.openings();
        drawing.insideDarts();
        drawing.edges();
        drawing.notches();
        figure.piece().grain().ifPresent(drawing::grain);
        figure.construction().forEach(drawing::construction);
        return drawing.svg.toString();
    }

    private void cloth() {
        path("wedge", PathData.closed(Paper.outline(piece)));
        for (Panel panel : piece.panels()) {
            path("cloth", PathData.closed(piece.place(panel.ring())));
        }
    }

    private void edges() {
        for (PaperSide side : Paper.sides(piece)) {
            boolean fold = piece.edge(side.edge()).role() == Role.FOLD;
            path(side.opening().isPresent() ? "end" : fold ? "fold" : "edge", PathData.open(side.path()));
        }
        for (Edge edge : piece.edges()) {
            name(edge);
        }
    }

    /** The name of an edge inside it, along its longest side. */
    private void name(Edge edge) {
        Optional<PaperSide> longest = Paper.sides(piece).stream()
                .filter(side ->
                        side.edge().equals(edge.name()) && side.opening().isEmpty())
                .max((a, b) -> Double.compare(a.path().length(), b.path().length()));
        longest.ifPresent(side -> nameInside(side.path(), edge.name() + (edge.role() == Role.FOLD ? " (fold)" : "")));
    }

    /** Letters stand on their left: where the outline is read backwards, they need their height more of distance. */
    private void nameInside(CurvePath path, String words) {
        double middle = path.length() / 2;
        Vector2D way = path.tangentAt(middle);
        Vector2D inside = Vector2D.of(-way.getY(), way.getX());
        boolean backwards = !upright(way).equals(way);
        double bulge = bulge(path, middle, inside, Pen.textWidth(words, pen.label()) / 2);
        double distance = pen.mm(LABEL_INSIDE) + bulge + (backwards ? 0.75 * pen.label() : 0);
        text("middle", path.pointAt(middle).add(inside.multiply(distance)), upright(way), words);
    }

    /** How far the line comes inwards under the letters. */
    private static double bulge(CurvePath path, double middle, Vector2D inside, double half) {
        double from = Math.max(0, middle - half);
        double to = Math.min(path.length(), middle + half);
        Vector2D at = path.pointAt(middle);
        return Math.max(
                0,
                Math.max(
                        at.vectorTo(path.pointAt(from)).dot(inside),
                        at.vectorTo(path.pointAt(to)).dot(inside)));
    }

    /** The direction in which letters are read: to the right, and upwards on an upright line. */
    private static Vector2D upright(Vector2D way) {
        boolean left = way.getX() < -1e-9;
        boolean down = Math.abs(way.getX()) <= 1e-9 && way.getY() < 0;
        return left || down ? way.negate() : way;
    }

    private void openings() {
        for (Opening opening : piece.openings()) {
            if (opening.mouth().use() instanceof Use.Dart) {
                dart(opening.name());
            } else if (opening.mouth().use() instanceof Use.Folded) {
                folded(opening.name());
            } else {
                for (Leg leg : Leg.values()) {
                    path("leg", PathData.open(Measured.leg(piece, opening.name(), leg)));
                }
            }
        }
    }

    /** Folds that are seen are drawn like legs, those beneath and the placement line as a bisector is. */
    private void folded(String fold) {
        FoldEnd.Lines lines = FoldEnd.lines(piece, fold);
        lines.seen().forEach(line -> path("leg", PathData.open(line)));
        lines.hidden().forEach(line -> path("bisector", PathData.open(line)));
        path(lines.seen().size() == 1 ? "leg" : "bisector", PathData.open(lines.placement()));
        lines.seen().forEach(line -> arrow(share(line, FOLD_ARROW), share(lines.placement(), FOLD_ARROW)));
        CurvePath named = lines.hidden().get(0);
        Vector2D way = upright(named.startTangent());
        Vector2D aside = Vector2D.of(-way.getY(), way.getX());
        text("middle dartname", share(named, 0.4).add(aside.multiply(pen.mm(1.2))), way, fold);
    }

    private static Vector2D share(CurvePath line, double share) {
        return line.pointAt(share * line.length());
    }

    /** Which way a fold is brought. */
    private void arrow(Vector2D from, Vector2D to) {
        Vector2D way = from.directionTo(to);
        Vector2D side = Vector2D.of(-way.getY(), way.getX()).multiply(pen.mm(ARROW) * 0.3);
        path("leg", "M" + PathData.point(from) + "L" + PathData.point(to) + head(to, way.negate(), side));
    }

    private void insideDarts() {
        for (Panel panel : piece.panels()) {
            for (Laid laid : panel.darts()) {
                CurvePath outline = piece.place(laid);
                path("wedge", PathData.closed(outline));
                path("leg", PathData.closed(outline));
                Vector2D one = outline.curves().get(0).start();
                Vector2D other = outline.curves().get(2).start();
                path("bisector", PathData.open(CurvePath.polyline(one, other)));
                Vector2D way = upright(one.directionTo(other));
                Vector2D aside = Vector2D.of(-way.getY(), way.getX());
                double off = piece.insideDart(laid.dart()).intake() / 2 + pen.mm(2);
                text("middle dartname", one.lerp(other, 0.5).add(aside.multiply(off)), way, laid.dart());
            }
        }
    }

    private void dart(String dart) {
        Vector2D before = Measured.leg(piece, dart, Leg.BEFORE).start();
        Vector2D after = Measured.leg(piece, dart, Leg.AFTER).start();
        Vector2D tip = DartEnd.sewnTip(piece, dart);
        Vector2D apex = Measured.tip(piece, dart);
        path("leg", "M" + PathData.point(before) + "L" + PathData.point(tip) + "L" + PathData.point(after));
        path("bisector", PathData.open(CurvePath.polyline(DartEnd.foldEnd(piece, dart), tip)));
        dot(tip, pen.mm(0.9));
        if (apex.distance(tip) > 0.1) {
            cross(apex);
        }
        Vector2D way = tip.directionTo(before.lerp(after, 0.5));
        Vector2D upright = upright(way);
        Vector2D aside = Vector2D.of(-upright.getY(), upright.getX());
        Vector2D at = tip.lerp(before.lerp(after, 0.5), 0.5)
                .add(aside.multiply(Measured.intake(piece, dart) / 4 + pen.mm(2.5)));
        text("middle dartname", at, upright, dart);
    }

    private void levels() {
        for (Panel panel : piece.panels()) {
            for (Stretch stretch : panel.lines()) {
                path("level", PathData.open(piece.place(stretch)));
            }
        }
        piece.levels()
                .forEach(line -> longest(line.name()).ifPresent(stretch -> {
                    CurvePath placed = piece.place(stretch);
                    double at = placed.length() * 0.7;
                    Vector2D way = placed.tangentAt(at);
                    Vector2D upright = upright(way);
                    Vector2D above = Vector2D.of(-upright.getY(), upright.getX());
                    text("middle levelname", placed.pointAt(at).add(above.multiply(pen.mm(1.2))), upright, line.name());
                }));
    }

    private Optional<Stretch> longest(String line) {
        return piece.panels().stream()
                .flatMap(panel -> panel.lines().stream())
                .filter(stretch -> stretch.line().equals(line))
                .max((a, b) -> Double.compare(a.to() - a.from(), b.to() - b.from()));
    }

    /** Notches are drawn square to the stitch line, inwards. */
    private void notches() {
        for (Notch notch : piece.notches()) {
            Notches.Drawn drawn = Notches.where(piece, notch);
            path(
                    "notch",
                    PathData.open(CurvePath.polyline(
                            drawn.point(), drawn.point().add(drawn.inwards().multiply(pen.mm(NOTCH))))));
        }
    }

    /** The name stands on the left of the grain line; where an edge and its name come close there, on the right. */
    private void grain(Grain grain) {
        Vector2D way = grain.direction();
        Vector2D side = Vector2D.of(-way.getY(), way.getX()).multiply(pen.mm(ARROW) * 0.35);
        String shaft = "M" + PathData.point(grain.from()) + "L" + PathData.point(grain.to());
        String heads = head(grain.to(), way.negate(), side) + head(grain.from(), way, side);
        path("grain", shaft + heads);
        Vector2D upright = upright(way);
        Vector2D aside = Vector2D.of(-upright.getY(), upright.getX());
        Vector2D middle = grain.from().lerp(grain.to(), 0.5);
        Vector2D left = middle.add(aside.multiply(pen.mm(1.5)));
        Vector2D right = middle.subtract(aside.multiply(pen.mm(1.5) + 0.75 * pen.label()));
        Vector2D at = Nearest.of(Paper.outline(piece), left).distance() < 3 * pen.label() ? right : left;
        text("middle", at, upright, "grain of '" + piece.name() + "'");
    }

    private String head(Vector2D tip, Vector2D back, Vector2D side) {
        Vector2D root = tip.add(back.multiply(pen.mm(ARROW)));
        return "M" + PathData.point(root.add(side)) + "L" + PathData.point(tip) + "L"
                + PathData.point(root.subtract(side));
    }

    private void construction(Construction line) {
        path("construction", PathData.open(line.line()));
        double at = line.line().length() * 0.25;
        Vector2D way = upright(line.line().tangentAt(at));
        Vector2D above = Vector2D.of(-way.getY(), way.getX());
        text("middle constructionname", line.line().pointAt(at).add(above.multiply(pen.mm(1.2))), way, line.name());
    }

    private void cross(Vector2D at) {
        double x = at.getX();
        double y = at.getY();
        path(
                "leg",
                "M" + PathData.point(Vector2D.of(x - 2, y)) + "L" + PathData.point(Vector2D.of(x + 2, y)) + "M"
                        + PathData.point(Vector2D.of(x, y - 2)) + "L" + PathData.point(Vector2D.of(x, y + 2)));
    }

    private void dot(Vector2D at, double radius) {
        svg.append("<circle class=\"point\" cx=\"")
                .append(PathData.number(at.getX()))
                .append("\" cy=\"")
                .append(PathData.number(-at.getY()))
                .append("\" r=\"")
                .append(PathData.number(radius))
                .append("\"/>\n");
    }

    private void path(String kind, String data) {
        svg.append("<path class=\"").append(kind).append("\" d=\"").append(data).append("\"/>\n");
    }

    private void text(String kind, Vector2D at, Vector2D way, String words) {
        String x = PathData.number(at.getX());
        String y = PathData.number(-at.getY());
        double degrees = -Math.toDegrees(Math.atan2(way.getY(), way.getX()));
        svg.append("<text class=\"")
                .append(kind)
                .append("\" x=\"")
                .append(x)
                .append("\" y=\"")
                .append(y)
                .append("\" transform=\"rotate(")
                .append(PathData.number(degrees))
                .append(' ')
                .append(x)
                .append(' ')
                .append(y)
                .append(")\">")
                .append(Pen.escaped(words))
                .append("</text>\n");
    }
}
