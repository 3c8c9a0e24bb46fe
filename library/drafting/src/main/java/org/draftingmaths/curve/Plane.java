package org.draftingmaths.curve;

import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Distances and directions, quickly: coordinates are limited to {@link Accuracy#LARGEST}, so that no square overflows and
 * the plain square root is good to two roundings.
 */
final class Plane {
    private Plane() {}

    static double distance(Vector2D a, Vector2D b) {
        return norm(b.getX() - a.getX(), b.getY() - a.getY());
    }

    static double norm(Vector2D v) {
        return norm(v.getX(), v.getY());
    }

    static double norm(double x, double y) {
        return Math.sqrt(x * x + y * y);
    }

    /** The vector of length 1 along another, which must not be zero. */
    static Vector2D unit(Vector2D v) {
        double norm = norm(v);
        return Vector2D.of(v.getX() / norm, v.getY() / norm);
    }

    static Vector2D direction(Vector2D from, Vector2D to) {
        double x = to.getX() - from.getX();
        double y = to.getY() - from.getY();
        double norm = norm(x, y);
        return Vector2D.of(x / norm, y / norm);
    }

    /** {@code from + share (to - from)}, exactly {@code from} at 0. */
    static Vector2D between(Vector2D from, Vector2D to, double share) {
        return Vector2D.of(
                from.getX() + share * (to.getX() - from.getX()), from.getY() + share * (to.getY() - from.getY()));
    }

    /** The point at a distance to the left of a place with a unit direction. */
    static Vector2D beside(Vector2D at, Vector2D way, double left) {
        return Vector2D.of(at.getX() - left * way.getY(), at.getY() + left * way.getX());
    }

    static double cross(double ax, double ay, double bx, double by) {
        return ax * by - ay * bx;
    }

    static double cross(Vector2D a, Vector2D b) {
        return a.getX() * b.getY() - a.getY() * b.getX();
    }

    /** Half the cross product of a place with the step from one point to another. */
    static double triangle(double x, double y, Vector2D from, Vector2D to) {
        return 0.5 * (x * (to.getY() - from.getY()) - y * (to.getX() - from.getX()));
    }
}
