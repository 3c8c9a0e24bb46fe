package org.draftingmaths.exchange;

import java.io.IOException;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.util.Matrix;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.Cubic;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;

/**
 * Marks as PDF: straights and cubics as they are, arcs as cubics. Coordinates are reckoned in double precision up to the point where they
 * are written: there is no matrix on the page whose rounding would scale the pattern.
 */
final class PdfPainter {

    /** How far in mm a cubic may stray from the arc it stands for. */
    static final double ARC = 1e-4;

    /** Joins of lines are round: a mitre would reach past a sharp dart's point. */
    private static final int ROUND = 1;

    private final PDPageContentStream page;
    private final PDFont font;

    PdfPainter(PDPageContentStream page, PDFont font) {
        this.page = page;
        this.font = font;
    }

    void draw(List<Mark> marks, View view) throws IOException {
        for (Mark mark : marks) {
            draw(mark, view);
        }
    }

    /** What lies outside the rectangle, in mm of paper, is not drawn. */
    void drawWithin(double x, double y, double width, double height, List<Mark> marks, View view) throws IOException {
        page.saveGraphicsState();
        page.addRect(View.points(x), View.points(y), View.points(width), View.points(height));
        page.clip();
        draw(marks, view);
        page.restoreGraphicsState();
    }

    private void draw(Mark mark, View view) throws IOException {
        if (mark instanceof Mark.Stroke stroke) {
            stroke(stroke, view);
        } else if (mark instanceof Mark.Area area && area.tint().inked()) {
            area(area, view);
        } else if (mark instanceof Mark.Words words) {
            words(words, view);
        }
    }

    private void stroke(Mark.Stroke stroke, View view) throws IOException {
        LineKind kind = stroke.kind();
        float[] colour = colour(kind.colour());
        float[] dashes = new float[kind.dashes().size()];
        for (int i = 0; i < dashes.length; i++) {
            dashes[i] = View.points(kind.dashes().get(i) * view.lines());
        }
        page.setStrokingColor(colour[0], colour[1], colour[2]);
        page.setLineWidth(view.width(kind));
        page.setLineJoinStyle(ROUND);
        page.setLineDashPattern(dashes, 0);
        for (CurvePath path : stroke.paths()) {
            path(path, view);
            if (stroke.closed()) {
                page.closePath();
            }
        }
        page.stroke();
    }

    private void area(Mark.Area area, View view) throws IOException {
        float[] colour = colour(area.tint().colour());
        page.setNonStrokingColor(colour[0], colour[1], colour[2]);
        path(area.outline(), view);
        page.closePath();
        page.fill();
    }

    private void path(CurvePath path, View view) throws IOException {
        page.moveTo(view.x(path.start()), view.y(path.start()));
        for (Curve curve : path.curves()) {
            if (curve instanceof Cubic cubic) {
                cubic(cubic, view);
            } else if (curve instanceof Arc arc) {
                for (Cubic cubic : ArcCubics.of(arc, ARC)) {
                    cubic(cubic, view);
                }
            } else {
                page.lineTo(view.x(curve.end()), view.y(curve.end()));
            }
        }
    }

    private void cubic(Cubic cubic, View view) throws IOException {
        Vector2D one = cubic.startHandle();
        Vector2D other = cubic.endHandle();
        Vector2D end = cubic.end();
        page.curveTo(view.x(one), view.y(one), view.x(other), view.y(other), view.x(end), view.y(end));
    }

    private void words(Mark.Words words, View view) throws IOException {
        float[] colour = colour(words.kind().colour());
        Vector2D start = words.start();
        float cos = (float) words.way().getX();
        float sin = (float) words.way().getY();
        page.setNonStrokingColor(colour[0], colour[1], colour[2]);
        page.beginText();
        page.setFont(font, view.length(words.size()));
        page.setTextMatrix(new Matrix(cos, sin, -sin, cos, view.x(start), view.y(start)));
        page.showText(words.text());
        page.endText();
    }

    private static float[] colour(String hex) {
        int value = Integer.parseInt(hex.substring(1), 16);
        return new float[] {(value >> 16 & 255) / 255f, (value >> 8 & 255) / 255f, (value & 255) / 255f};
    }
}
