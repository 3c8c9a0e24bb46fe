package org.draftingmaths.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Location;

class NearestAndInsideTest {
    private static Vector2D at(double x, double y) {
        return Vector2D.of(x, y);
    }

    @Test
    void nothingIsNearerThanTheNearest() {
        Cases.each(random -> {
            Curve curve = Cases.curve(random);
            Vector2D p = Cases.point(random, 400);
            Nearest nearest = Nearest.of(curve, p);
            assertThat(curve.at(nearest.at()).distance(nearest.point())).isLessThan(1e-9);
            assertThat(nearest.point().distance(p)).isCloseTo(nearest.distance(), within(1e-9));
            for (int i = 0; i <= 60; i++) {
                assertThat(curve.at(i / 60.0).distance(p)).isGreaterThanOrEqualTo(nearest.distance() - 1e-9);
            }
            if (nearest.at() > 0 && nearest.at() < 1) {
                double along = curve.derivative(nearest.at()).dot(p.subtract(nearest.point()));
                assertThat(Math.abs(along)).isLessThan(1e-5);
            }
        });
    }

    @Test
    void aPointOnACurveIsFoundThere() {
        Cases.each(random -> {
            Curve curve = Cases.curve(random);
            assertThat(Nearest.of(curve, curve.at(random.nextDouble())).distance())
                    .isLessThan(1e-9);
        });
    }

    /** Where a curve all but stands still, the squares of its size hide the last digits of a distance. */
    @Test
    void aPointBesideACuspIsFoundThere() {
        Cases.each(random -> {
            Vector2D a = Cases.point(random, 300);
            Vector2D way = Cases.point(random, 300);
            Vector2D side = Cases.point(random, 300);
            double off = random.nextInt(2) * random.nextDouble(-1e-3, 1e-3) * Math.pow(10, -random.nextInt(6));
            Cubic cubic = new Cubic(a, a.add(side.multiply(1 + off)).add(way), a.add(way), a.add(side));
            double t = 0.5 + random.nextDouble(-0.1, 0.1) * Math.pow(10, -random.nextInt(8));
            assertThat(Nearest.of(cubic, cubic.at(t)).distance()).isLessThan(2e-12);
        });
    }

    @Test
    void onAPathThePlaceIsALength() {
        CurvePath bent = CurvePath.polyline(at(0, 0), at(10, 0), at(10, 10));
        Nearest nearest = Nearest.of(bent, at(13, 4));
        assertThat(nearest.at()).isEqualTo(14);
        assertThat(nearest.point()).isEqualTo(at(10, 4));
        assertThat(nearest.distance()).isEqualTo(3);
        assertThat(Nearest.of(bent, at(-3, -4)).at()).isZero();
        assertThat(Nearest.of(bent, at(-3, -4)).distance()).isEqualTo(5);
        // Equally near from the middle of a square's corner: the first is taken.
        assertThat(Nearest.of(bent, at(7, 3)).at()).isEqualTo(7);
    }

    /** Of equally near places the first is taken, though the box of a later curve reaches nearer than that of the first. */
    @Test
    void theFirstOfEquallyNearPlacesIsTaken() {
        // Both 15 away from the origin: a level line at (0, -15), and 3 x + 4 y = 75 at (9, 12).
        CurvePath path = CurvePath.polyline(at(-20, -15), at(25, -15), at(25, 0), at(-15, 30));
        assertThat(Nearest.of(path, at(0, 0)).point()).isEqualTo(at(0, -15));
        assertThat(Nearest.of(path, at(0, 0)).distance()).isEqualTo(15);
        assertThat(Nearest.of(path.reversed(), at(0, 0)).point()).isEqualTo(at(9, 12));
        assertThat(Nearest.of(path.reversed(), at(0, 0)).at()).isEqualTo(30);
    }

    @Test
    void insideAgreesWithAnotherLibrary() {
        Cases.some(10, random -> {
            CurvePath ring = MeetsPropertiesTest.ring(random);
            List<Coordinate> points = new ArrayList<>();
            for (Curve curve : ring.curves()) {
                for (int i = 0; i < 200; i++) {
                    Vector2D p = curve.at(i / 200.0);
                    points.add(new Coordinate(p.getX(), p.getY()));
                }
            }
            points.add(points.get(0));
            IndexedPointInAreaLocator judge = new IndexedPointInAreaLocator(
                    new GeometryFactory().createPolygon(points.toArray(new Coordinate[0])));
            for (int i = 0; i < 20; i++) {
                Vector2D p = Cases.point(random, 220);
                if (Nearest.of(ring, p).distance() < 0.01) {
                    continue;
                }
                boolean in = judge.locate(new Coordinate(p.getX(), p.getY())) == Location.INTERIOR;
                assertThat(Inside.of(ring, p)).isEqualTo(in ? Inside.Where.INSIDE : Inside.Where.OUTSIDE);
                assertThat(Inside.windingNumber(ring, p)).isEqualTo(in ? 1 : 0);
                assertThat(Inside.windingNumber(ring.reversed(), p)).isEqualTo(in ? -1 : 0);
            }
        });
    }

    @Test
    void raysThroughCornersAndLevelEdgesCountOnce() {
        // Corners at the height of the point, an edge along its ray, and arcs that touch it from above and below.
        CurvePath ring = CurvePath.polyline(
                at(0, 0), at(10, 0), at(12, 5), at(16, 5), at(18, 0), at(20, 5), at(18, 9), at(14, 5), at(8, 12),
                at(-3, 5), at(0, 0));
        assertThat(Inside.windingNumber(ring, at(1, 5))).isEqualTo(1);
        assertThat(Inside.windingNumber(ring, at(-4, 5))).isZero();
        assertThat(Inside.windingNumber(ring, at(21, 5))).isZero();
        CurvePath circle = CurvePath.of(Arc.circle(at(0, 0), 10));
        for (double y : new double[] {-10, -5, 0, 5, 10}) {
            assertThat(Inside.windingNumber(circle, at(-20, y))).isZero();
        }
        assertThat(Inside.windingNumber(circle, at(0, 0))).isEqualTo(1);
        CurvePath twice = circle.then(circle);
        assertThat(Inside.windingNumber(twice, at(3, 0))).isEqualTo(2);
        assertThat(Inside.contains(twice, at(3, 0))).isTrue();
    }

    @Test
    void theBoundaryIsToldApart() {
        CurvePath circle = CurvePath.of(Arc.circle(at(0, 0), 10));
        assertThat(Inside.of(circle, at(10, 0))).isEqualTo(Inside.Where.BOUNDARY);
        assertThat(Inside.of(circle, at(9.99, 0))).isEqualTo(Inside.Where.INSIDE);
        assertThat(Inside.of(circle, at(9.99, 0), 0.02)).isEqualTo(Inside.Where.BOUNDARY);
        assertThat(Inside.of(circle, at(10.01, 0))).isEqualTo(Inside.Where.OUTSIDE);
        assertThat(Inside.contains(circle, at(10, 0))).isTrue();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Inside.windingNumber(circle, at(0, 10)))
                .withMessageContaining("is on the path");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Inside.of(CurvePath.polyline(at(0, 0), at(1, 0), at(1, 1)), at(0, 0)))
                .withMessageStartingWith("path is open: it starts at (0.0, 0.0)");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Inside.of(circle, at(0, 0), 0))
                .withMessageStartingWith("tolerance is 0.0");
    }

    @Test
    void whatIsNoPointIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Nearest.of(new Straight(at(0, 0), at(1, 0)), at(Double.NaN, 0)))
                .withMessageStartingWith("point x is NaN");
    }
}
