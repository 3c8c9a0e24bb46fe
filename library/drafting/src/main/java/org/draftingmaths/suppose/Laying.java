package org.draftingmaths.suppose;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;

/**
 * One line laid on another.
 *
 * <p>Both are looked at in {@value #STATIONS} equal steps of length. The one is moved rigidly, turned over first if asked, so that the sum
 * of squares of the distances of like stations is least: with both taken about their middles the angle is
 * {@code atan2(sum p x q, sum p . q)}. What is told is the greatest distance of like stations.
 */
final class Laying {

    static final int STATIONS = 32;

    private Laying() {}

    /** How far in mm two lines of one length stay apart at most when the first is laid on the second. */
    static double apart(CurvePath first, CurvePath second, boolean turnedOver) {
        return apart(stations(first, first.length()), stations(second, second.length()), turnedOver);
    }

    /** The same over the length that both have, from their starts. */
    static double apartFromStart(CurvePath first, CurvePath second, boolean turnedOver) {
        double length = Math.min(first.length(), second.length());
        return apart(stations(first, length), stations(second, length), turnedOver);
    }

    static double apart(List<Vector2D> first, List<Vector2D> second, boolean turnedOver) {
        List<Vector2D> one = centred(turnedOver ? turnedOver(first) : first);
        List<Vector2D> other = centred(second);
        double cross = 0;
        double dot = 0;
        for (int i = 0; i < one.size(); i++) {
            cross += one.get(i).signedArea(other.get(i));
            dot += one.get(i).dot(other.get(i));
        }
        double angle = Math.atan2(cross, dot);
        double greatest = 0;
        for (int i = 0; i < one.size(); i++) {
            greatest = Math.max(greatest, turned(one.get(i), angle).distance(other.get(i)));
        }
        return greatest;
    }

    static Vector2D turned(Vector2D way, double angle) {
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        return Vector2D.of(cos * way.getX() - sin * way.getY(), sin * way.getX() + cos * way.getY());
    }

    static List<Vector2D> stations(CurvePath path, double length) {
        List<Vector2D> stations = new ArrayList<>();
        for (int i = 0; i <= STATIONS; i++) {
            stations.add(path.pointAt(length * i / STATIONS));
        }
        return stations;
    }

    private static List<Vector2D> turnedOver(List<Vector2D> points) {
        return points.stream()
                .map(point -> Vector2D.of(-point.getX(), point.getY()))
                .toList();
    }

    private static List<Vector2D> centred(List<Vector2D> points) {
        Vector2D sum = Vector2D.ZERO;
        for (Vector2D point : points) {
            sum = sum.add(point);
        }
        Vector2D middle = sum.multiply(1.0 / points.size());
        return points.stream().map(point -> point.subtract(middle)).toList();
    }
}
