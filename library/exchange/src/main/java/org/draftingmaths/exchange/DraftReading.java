package org.draftingmaths.exchange;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.Cubic;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.curve.Straight;
import org.draftingmaths.piece.Beside;
import org.draftingmaths.piece.Border;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Grain;
import org.draftingmaths.piece.InsideDart;
import org.draftingmaths.piece.Laid;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.LegShape;
import org.draftingmaths.piece.LevelLine;
import org.draftingmaths.piece.Mouth;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Opening;
import org.draftingmaths.piece.Panel;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Role;
import org.draftingmaths.piece.Run;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.piece.Stretch;
import org.draftingmaths.piece.Use;

/** Reads a draft from JSON: first the values as they stand, then whether each piece holds together. */
final class DraftReading {

    private DraftReading() {}

    static Draft draft(At root) {
        boolean old = version(root) == 1;
        root.fields("format", "version", "name", "pieces", "seams");
        List<Piece> pieces = root.member("pieces").each(DraftReading::piece);
        List<Seam> seams = root.member("seams").each(old ? OldSeams::seam : DraftReading::seam);
        return root.made(
                () -> new Draft(root.member("name").text(), pieces, old ? OldSeams.caughtWhereTheyMeet(seams) : seams));
    }

    private static int version(At root) {
        At format = root.member("format");
        if (!format.text().equals(DraftFiles.FORMAT)) {
            throw format.refused("this is not '" + DraftFiles.FORMAT + "' but '" + format.text() + "'");
        }
        At version = root.member("version");
        if (version.whole() < 1 || version.whole() > DraftFiles.VERSION) {
            throw version.refused(
                    "version " + version.whole() + " is not known; versions 1 to " + DraftFiles.VERSION + " are read");
        }
        return version.whole();
    }

    private static Piece piece(At at) {
        at.fields("name", "edges", "openings", "panels", "levels", "insideDarts", "notches", "grain");
        Piece piece = at.made(() -> new Piece(
                at.member("name").text(),
                at.member("edges").each(DraftReading::edge),
                at.member("openings").each(DraftReading::opening),
                at.member("panels").each(DraftReading::panel),
                at.member("levels").each(DraftReading::level),
                at.member("insideDarts").each(DraftReading::insideDart),
                at.member("notches").each(DraftReading::notch),
                at.optional("grain").map(DraftReading::grain)));
        Coherent.require(piece, at);
        return piece;
    }

    private static Edge edge(At at) {
        at.fields("name", "role", "allowance", "base");
        return at.made(() -> new Edge(
                at.member("name").text(),
                at.member("role").word(Role.values(), Terms::of),
                at.member("allowance").number(),
                path(at.member("base"))));
    }

    /** Not held to the limit of parts: a traced edge may have many curves; the limit of values holds. */
    private static CurvePath path(At at) {
        return at.made(
                () -> new CurvePath(at.items().stream().map(DraftReading::curve).toList()));
    }

    private static Curve curve(At at) {
        at.fields("straight", "cubic", "arc");
        if (at.has("straight")) {
            List<At> points = points(at.fields("straight").member("straight"), 2);
            return at.made(
                    () -> new Straight(points.get(0).point(), points.get(1).point()));
        }
        if (at.has("cubic")) {
            List<At> points = points(at.fields("cubic").member("cubic"), 4);
            return at.made(() -> new Cubic(
                    points.get(0).point(),
                    points.get(1).point(),
                    points.get(2).point(),
                    points.get(3).point()));
        }
        At arc = at.member("arc").fields("centre", "radius", "startAngle", "sweep");
        return at.made(() -> new Arc(
                arc.member("centre").point(),
                arc.member("radius").number(),
                arc.member("startAngle").number(),
                arc.member("sweep").number()));
    }

    private static List<At> points(At at, int count) {
        List<At> points = at.items();
        if (points.size() != count) {
            throw at.refused(count + " points are needed here, but there are " + points.size());
        }
        return points;
    }

    private static Opening opening(At at) {
        at.fields("name", "mouth", "farMouth", "before", "after");
        return at.made(() -> new Opening(
                at.member("name").text(),
                mouth(at.member("mouth")),
                at.optional("farMouth").map(DraftReading::mouth),
                path(at.member("before")),
                path(at.member("after"))));
    }

    private static Mouth mouth(At at) {
        at.fields("edge", "opening", "leg", "before", "after", "use");
        return at.made(() -> new Mouth(
                border(at), at.member("before").number(), at.member("after").number(), use(at.member("use"))));
    }

    private static Border border(At at) {
        if (at.has("edge")) {
            if (at.has("opening") || at.has("leg")) {
                throw at.refused("either an edge or a leg of an opening is needed here, not both");
            }
            return new Border.OfEdge(at.member("edge").text());
        }
        if (!at.has("opening")) {
            throw at.refused("the field 'edge' is missing, or 'opening' and 'leg'");
        }
        return new Border.OfLeg(at.member("opening").text(), at.member("leg").word(Leg.values(), Terms::of));
    }

    private static Use use(At at) {
        String as = at.member("as").word(Terms.uses(), word -> word);
        if (as.equals(Terms.DART)) {
            at.fields("as", "setBack", "press", "shape");
            return at.made(() ->
                    new Use.Dart(at.member("setBack").number(), press(at.member("press")), shape(at.member("shape"))));
        }
        if (as.equals(Terms.FOLDED)) {
            at.fields("as", "under", "depth", "lines");
            return at.made(() -> new Use.Folded(
                    at.member("under").word(Use.Under.values(), Terms::of),
                    at.member("depth").number(),
                    at.member("lines").word(Use.Stitched.values(), Terms::of)));
        }
        at.fields("as");
        return new Use.Left(at.member("as").word(Use.Kind.values(), Terms::of));
    }

    private static Optional<Leg> press(At at) {
        String press = at.word(Terms.presses(), word -> word);
        return press.equals(Terms.OPEN) ? Optional.empty() : Optional.of(at.word(Leg.values(), Terms::of));
    }

    private static LegShape shape(At at) {
        return at.made(() -> new LegShape(at.each(DraftReading::off)));
    }

    private static LegShape.Off off(At at) {
        at.fields("share", "out");
        return at.made(() ->
                new LegShape.Off(at.member("share").number(), at.member("out").number()));
    }

    private static Panel panel(At at) {
        at.fields("ring", "lines", "darts");
        return at.made(() -> new Panel(
                at.member("ring").each(DraftReading::run),
                at.member("lines").each(DraftReading::stretch),
                at.member("darts").each(DraftReading::laid)));
    }

    private static Run run(At at) {
        at.fields("edge", "opening", "leg", "from", "to", "forward", "motion");
        return at.made(() -> new Run(
                border(at),
                at.member("from").number(),
                at.member("to").number(),
                at.member("forward").flag(),
                motion(at.member("motion"))));
    }

    private static Stretch stretch(At at) {
        at.fields("line", "from", "to", "motion");
        return at.made(() -> new Stretch(
                at.member("line").text(),
                at.member("from").number(),
                at.member("to").number(),
                motion(at.member("motion"))));
    }

    private static Laid laid(At at) {
        at.fields("dart", "motion");
        return new Laid(at.member("dart").text(), motion(at.member("motion")));
    }

    private static AffineTransformMatrix2D motion(At at) {
        return AffineTransformMatrix2D.of(at.numbers(6));
    }

    private static LevelLine level(At at) {
        at.fields("name", "base");
        return at.made(() -> new LevelLine(at.member("name").text(), path(at.member("base"))));
    }

    private static InsideDart insideDart(At at) {
        at.fields("name", "oneTip", "otherTip", "oneSide", "otherSide", "shape");
        return at.made(() -> new InsideDart(
                at.member("name").text(),
                at.member("oneTip").point(),
                at.member("otherTip").point(),
                at.member("oneSide").point(),
                at.member("otherSide").point(),
                shape(at.member("shape"))));
    }

    private static Notch notch(At at) {
        at.fields("edge", "arc", "beside");
        return at.made(() -> new Notch(
                at.member("edge").text(),
                at.member("arc").number(),
                at.member("beside").word(Beside.values(), Terms::of)));
    }

    private static Grain grain(At at) {
        at.fields("from", "to");
        Vector2D from = at.member("from").point();
        return at.made(() -> new Grain(from, at.member("to").point()));
    }

    private static Seam seam(At at) {
        at.fields("name", "first", "second", "held", "caught");
        return at.made(() -> new Seam(
                at.member("name").text(),
                mate(at.member("first")),
                mate(at.member("second")),
                at.member("held").each(DraftReading::held),
                at.member("caught").flag()));
    }

    private static Seam.Mate mate(At at) {
        return at.made(() -> new Seam.Mate(at.each(DraftReading::part)));
    }

    private static Seam.Part part(At at) {
        at.fields("piece", "edge", "forward", "mirrored", "from", "to");
        return at.made(() -> new Seam.Part(
                at.member("piece").text(),
                at.member("edge").text(),
                at.member("forward").flag(),
                at.member("mirrored").flag(),
                at.optional("from").map(DraftReading::place),
                at.optional("to").map(DraftReading::place)));
    }

    private static Seam.Place place(At at) {
        at.fields("arc", "beside");
        return at.made(() ->
                new Seam.Place(at.member("arc").number(), at.member("beside").word(Beside.values(), Terms::of)));
    }

    static Seam.Held held(At at) {
        at.fields("interval", "surplus", "how", "reason");
        return at.made(() -> new Seam.Held(
                at.member("interval").whole(),
                at.member("surplus").number(),
                at.member("how").word(Seam.How.values(), Terms::of),
                at.member("reason").text()));
    }
}
