package org.draftingmaths.exchange;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.unit.Length;
import org.draftingmaths.unit.Steps;

/**
 * A cross at the lower left corner of a sheet and one at its upper right: their distance shows whether the sheet was joined and scaled truly on
 * both axes at once.
 */
final class Diagonal {

    /** How far the crosses lie from the lower and upper side of the sheet, on paper in mm: in the rim that pieces leave free. */
    private static final double IN = 7;

    /** How far from its left and right side: clear of the cross in the corner of the tile. */
    private static final double ASIDE = Sheet.GAP + 2;

    private static final double ARM = 4;

    /** A ring tells it from the crosses by which tiles are joined. */
    private static final double RING = 2.5;

    private Diagonal() {}

    static Sheet on(Sheet sheet) {
        Pen pen = sheet.pen();
        Vector2D a = low(sheet);
        Vector2D b = high(sheet);
        double size = pen.label();
        double aside = pen.mm(ARM + 2);
        double down = Lettering.ABOVE * size / 2;
        String toB = "A: to B it is " + words(sheet);
        String toA = "B: to A it is " + words(sheet);
        List<Mark> marks = new ArrayList<>(sheet.marks());
        for (Vector2D end : List.of(a, b)) {
            marks.add(Mark.Stroke.cross(LineKind.RULE, end, pen.mm(ARM)));
            marks.add(Mark.Stroke.closed(LineKind.RULE, CurvePath.of(Arc.circle(end, pen.mm(RING)))));
        }
        marks.add(Mark.Words.level(TextKind.PLAIN, size, Mark.Anchor.START, a.getX() + aside, a.getY() - down, toB));
        marks.add(Mark.Words.level(
                TextKind.PLAIN,
                size,
                Mark.Anchor.START,
                b.getX() - aside - Lettering.width(toA, size),
                b.getY() - down,
                toA));
        return new Sheet(sheet.width(), sheet.height(), pen, marks, sheet.places());
    }

    static Vector2D low(Sheet sheet) {
        return Vector2D.of(sheet.pen().mm(ASIDE), sheet.pen().mm(IN));
    }

    static Vector2D high(Sheet sheet) {
        return Vector2D.of(sheet.width(), sheet.height()).subtract(low(sheet));
    }

    /** The distance of the crosses on paper. */
    static String words(Sheet sheet) {
        return Steps.DEFAULT.both(
                Length.mm(low(sheet).distance(high(sheet)) / sheet.pen().factor()));
    }
}
