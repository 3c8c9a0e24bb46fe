package org.draftingmaths.exchange;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.Cubic;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.CurvePath;

/** Curves as SVG path data: straights as lines, cubics as cubics, arcs as arcs. The page's y runs down. */
final class PathData {

    /** Figures are written to a ten-thousandth of a millimetre. */
    private static final int DECIMALS = 4;

    private PathData() {}

    static String open(CurvePath path) {
        StringBuilder data = new StringBuilder("M").append(point(path.start()));
        path.curves().forEach(curve -> append(data, curve));
        return data.toString();
    }

    static String closed(CurvePath path) {
        return open(path) + "Z";
    }

    private static void append(StringBuilder data, Curve curve) {
        if (curve instanceof Cubic cubic) {
            data.append('C')
                    .append(point(cubic.startHandle()))
                    .append(' ')
                    .append(point(cubic.endHandle()))
                    .append(' ')
                    .append(point(cubic.end()));
        } else if (curve instanceof Arc arc) {
            append(data, arc);
        } else {
            data.append('L').append(point(curve.end()));
        }
    }

    /** An arc of more than half a turn is written in two, so that neither its flags nor its ends are in doubt. */
    private static void append(StringBuilder data, Arc arc) {
        if (Math.abs(arc.sweep()) > Math.PI) {
            append(data, arc.between(0, 0.5));
            append(data, arc.between(0.5, 1));
            return;
        }
        String radius = number(arc.radius());
        data.append('A').append(radius).append(' ').append(radius).append(" 0 0 ");
        data.append(arc.sweep() > 0 ? '0' : '1').append(' ').append(point(arc.end()));
    }

    static String point(Vector2D point) {
        return number(point.getX()) + " " + number(-point.getY());
    }

    static String number(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
