package org.draftingmaths.curve;

import java.util.SplittableRandom;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Seeded random curves for the property tests.
 *
 * <p>{@code -Dcases=1000000} sets how many each property is tried on; 10,000 if nothing is said.
 */
final class Cases {
    static final int COUNT = Integer.getInteger("cases", 10_000);

    private Cases() {}

    /** What must hold for one seeded source of random numbers. */
    @FunctionalInterface
    interface Property {
        void check(SplittableRandom random);
    }

    /** Tries a property on all seeds; a failure names its seed. */
    static void each(Property property) {
        each(COUNT, property);
    }

    /** Tries a property on a share of the seeds, for those that take long. */
    static void some(int share, Property property) {
        each(Math.max(1, COUNT / share), property);
    }

    private static void each(int count, Property property) {
        for (long seed = 0; seed < count; seed++) {
            try {
                property.check(new SplittableRandom(seed));
            } catch (AssertionError | RuntimeException failure) {
                throw new AssertionError("seed " + seed + ": " + failure.getMessage(), failure);
            }
        }
    }

    static Vector2D point(SplittableRandom random, double size) {
        return Vector2D.of(random.nextDouble(-size, size), random.nextDouble(-size, size));
    }

    /** Any curve, cubics of all shapes the most often. */
    static Curve curve(SplittableRandom random) {
        return switch (random.nextInt(4)) {
            case 0 -> new Straight(point(random, 300), point(random, 300));
            case 1 -> arc(random);
            default -> cubic(random);
        };
    }

    static Arc arc(SplittableRandom random) {
        double sweep = random.nextDouble(0.05, 2 * Math.PI) * (random.nextBoolean() ? 1 : -1);
        return new Arc(point(random, 300), random.nextDouble(5, 300), random.nextDouble(-7, 7), sweep);
    }

    /** Mostly free handles, else one of the shapes that trip routines up. */
    static Cubic cubic(SplittableRandom random) {
        Vector2D a = point(random, 300);
        Vector2D b = point(random, 300);
        Vector2D c = point(random, 300);
        Vector2D d = point(random, 300);
        return switch (random.nextInt(10)) {
            case 0 -> new Cubic(a, a, c, d);
            case 1 -> new Cubic(a, b, d, d);
            case 2 -> new Cubic(a, b, b, d);
            case 3 -> new Cubic(a, a.lerp(d, random.nextDouble(-1, 2)), a.lerp(d, random.nextDouble(-1, 2)), d);
            case 4 -> cusp(a, b, d, random.nextBoolean() ? 0 : random.nextDouble(-1e-3, 1e-3));
            case 5 -> gentle(random);
            default -> new Cubic(a, b, c, d);
        };
    }

    /** A cubic like a pattern's edge: handles within a radian of the chord, about a third of it long. */
    static Cubic gentle(SplittableRandom random) {
        Vector2D a = point(random, 300);
        double turn = random.nextDouble(-Math.PI, Math.PI);
        double chord = random.nextDouble(50, 400);
        double one = chord * random.nextDouble(0.2, 0.5);
        double other = chord * random.nextDouble(0.2, 0.5);
        Vector2D d = a.add(polar(chord, turn));
        return new Cubic(
                a,
                a.add(polar(one, turn + random.nextDouble(-1, 1))),
                d.subtract(polar(other, turn + random.nextDouble(-1, 1))),
                d);
    }

    /** Handles crosswise: {@code (a, b, a + d - b, d)} of the right proportion have a cusp; off by a little, nearly. */
    private static Cubic cusp(Vector2D a, Vector2D b, Vector2D d, double off) {
        Vector2D way = b.subtract(a);
        Vector2D side = d.subtract(a);
        // P1 = a + way, P2 = d + way - side... gives B'(1/2) = 0 when P1 - P0 + 2 (P2 - P1) + P3 - P2 = 0.
        Vector2D handle = a.add(side.multiply(1 + off)).add(way);
        Vector2D other = a.add(way);
        return new Cubic(a, handle, other, a.add(side));
    }

    static Vector2D polar(double size, double angle) {
        return Vector2D.of(size * Math.cos(angle), size * Math.sin(angle));
    }

    /** A rotation and shift, half of the time with a reflection. */
    static AffineTransformMatrix2D isometry(SplittableRandom random) {
        AffineTransformMatrix2D start =
                random.nextBoolean() ? AffineTransformMatrix2D.createScale(1, -1) : AffineTransformMatrix2D.identity();
        return start.rotate(random.nextDouble(-7, 7)).translate(point(random, 500));
    }
}
