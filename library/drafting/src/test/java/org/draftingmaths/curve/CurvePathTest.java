package org.draftingmaths.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatException;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.geometry.euclidean.twod.AffineTransformMatrix2D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;

class CurvePathTest {
    private static Vector2D at(double x, double y) {
        return Vector2D.of(x, y);
    }

    private static CurvePath square() {
        return CurvePath.polyline(at(0, 0), at(10, 0), at(10, 10), at(0, 10), at(0, 0));
    }

    /** Two to five curves of all kinds, each moved to where the one before ends. */
    private static CurvePath chain(SplittableRandom random) {
        List<Curve> curves = new ArrayList<>();
        Vector2D end = Cases.point(random, 100);
        int n = random.nextInt(2, 6);
        for (int i = 0; i < n; i++) {
            Curve free = Cases.curve(random);
            Curve next = free.transformed(AffineTransformMatrix2D.createTranslation(end.subtract(free.start())));
            curves.add(next);
            end = next.end();
        }
        return new CurvePath(curves);
    }

    @Test
    void anOpenJointIsRefusedByNumber() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CurvePath.of(
                        new Straight(at(0, 0), at(1, 0)),
                        new Straight(at(1, 0), at(2, 0)),
                        new Straight(at(2, 2e-6), at(3, 0))))
                .withMessageStartingWith(
                        "joint 2 is open: curve 1 ends at (2.0, 0.0), curve 2 starts at (2.0, 2.0E-6)");
        assertThat(CurvePath.of(new Straight(at(0, 0), at(1, 0)), new Straight(at(1, 1e-6), at(2, 0)))
                        .curves())
                .hasSize(2);
    }

    @Test
    void nothingAndMissingCurvesAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(CurvePath::of)
                .withMessage("path has no curves; allowed is one or more");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CurvePath.of(new Straight(at(0, 0), at(1, 0)), null))
                .withMessage("curve 1 of the path is missing");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CurvePath.polyline(at(0, 0)))
                .withMessageStartingWith("polyline has 1 points");
    }

    @Test
    void curvesCannotBeChangedAfterwards() {
        List<Curve> given = new ArrayList<>(List.of(new Straight(at(0, 0), at(1, 0))));
        CurvePath path = new CurvePath(given);
        given.add(new Straight(at(1, 0), at(2, 0)));
        assertThat(path.curves()).hasSize(1);
        assertThatException().isThrownBy(() -> path.curves().remove(0));
        assertThat(path.curves()).hasSize(1);
        assertThat(path).isEqualTo(CurvePath.polyline(at(0, 0), at(1, 0)));
        assertThat(path).hasSameHashCodeAs(CurvePath.polyline(at(0, 0), at(1, 0)));
    }

    @Test
    void atACornerTheLeavingAndTheArrivingDirectionDiffer() {
        CurvePath square = square();
        assertThat(square.tangentAt(10)).isEqualTo(at(0, 1));
        assertThat(square.tangentBefore(10)).isEqualTo(at(1, 0));
        assertThat(square.placeAt(10)).isEqualTo(new Place(1, 0));
        assertThat(square.tangentAt(5)).isEqualTo(at(1, 0));
        assertThat(square.tangentBefore(5)).isEqualTo(at(1, 0));
        assertThat(square.tangentAt(0)).isEqualTo(square.startTangent());
        assertThat(square.tangentBefore(40)).isEqualTo(square.endTangent());
        assertThat(square.tangentBefore(0)).isEqualTo(at(1, 0));
        assertThat(square.placeAt(40)).isEqualTo(new Place(3, 1));
        assertThat(square.placeAt(10 - 5e-10)).isEqualTo(new Place(1, 0));
    }

    @Test
    void pastTheEndsIsRefusedWithTheRange() {
        CurvePath square = square();
        for (double length : new double[] {-1e-8, 40 + 1e-8, Double.NaN}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> square.pointAt(length))
                    .withMessage("length is " + length + " mm; reachable is 0 to 40.0 mm");
            assertThatIllegalArgumentException().isThrownBy(() -> square.between(1, length));
            assertThatIllegalArgumentException().isThrownBy(() -> square.between(length, 50));
        }
        assertThat(square.pointAt(40 + 5e-10)).isEqualTo(at(0, 0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> square.between(7, 7))
                .withMessageContaining("to must exceed from by more than 1e-9 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> square.lengthAt(new Place(4, 0)))
                .withMessage("place is on curve 4; the path has curves 0 to 3");
        assertThatIllegalArgumentException().isThrownBy(() -> new Place(-1, 0)).withMessageStartingWith("index is -1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Place(0, 2))
                .withMessageStartingWith("parameter is 2.0");
    }

    @Test
    void slivesAreNotKept() {
        assertThat(square().between(5, 10 + 5e-10).curves()).hasSize(1);
        assertThat(square().between(10 - 5e-10, 15).curves()).hasSize(1);
        assertThat(square().between(5, 10 + 1e-8).curves()).hasSize(2);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> square().between(10 - 7e-10, 10 + 7e-10))
                .withMessageContaining("a joint lies between them");
    }

    @Test
    void partsAddUpAndJoinAgain() {
        Cases.some(5, random -> {
            CurvePath path = chain(random);
            double length = path.length();
            double cut = random.nextDouble(0.01, 0.99) * length;
            CurvePath head = path.between(0, cut);
            CurvePath tail = path.between(cut, length);
            assertThat(head.length() + tail.length()).isCloseTo(length, within(1e-8));
            assertThat(head.end().distance(path.pointAt(cut))).isLessThan(1e-9);
            CurvePath again = head.then(tail);
            double along = random.nextDouble() * length;
            assertThat(again.pointAt(Math.min(along, again.length())).distance(path.pointAt(along)))
                    .isLessThan(1e-6);
            assertThat(path.lengthAt(path.placeAt(along))).isCloseTo(along, within(3e-9));
            assertThat(path.reversed()
                            .pointAt(Math.min(length - along, path.reversed().length()))
                            .distance(path.pointAt(along)))
                    .isLessThan(1e-6);
            assertThat(path.length(1e-8)).isCloseTo(length, within(2e-8));
        });
    }

    @Test
    void aLinePartsAPathWhereItMeetsIt() {
        CurvePath square = square();
        CurvePath line = CurvePath.polyline(at(-5, 4), at(15, 4));
        List<CurvePath> parts = square.partedBy(line);
        assertThat(parts).extracting(CurvePath::length).containsExactly(14.0, 22.0, 4.0);
        assertThat(line.partedBy(square)).extracting(CurvePath::length).containsExactly(5.0, 10.0, 5.0);
        // What misses it leaves it whole, and so does what meets its very end.
        assertThat(square.partedBy(CurvePath.polyline(at(-5, 14), at(15, 14)))).containsExactly(square);
        assertThat(CurvePath.polyline(at(0, 0), at(9, 0)).partedBy(CurvePath.polyline(at(9, -1), at(9, 1))))
                .hasSize(1);
        // A stretch in common is a part of its own.
        assertThat(CurvePath.polyline(at(-3, 0), at(15, 0)).partedBy(square))
                .extracting(CurvePath::length)
                .containsExactly(3.0, 10.0, 5.0);
        Cases.some(5, random -> {
            CurvePath path = chain(random);
            CurvePath other = chain(random);
            List<CurvePath> pieces = path.partedBy(other);
            CurvePath again = CurvePath.joined(pieces);
            assertThat(again.length()).isCloseTo(path.length(), within(1e-7));
            for (int i = 1; i < pieces.size(); i++) {
                assertThat(Nearest.of(other, pieces.get(i).start()).distance()).isLessThan(1e-8);
            }
        });
    }

    @Test
    void pathsAreJoinedAsByThen() {
        Cases.some(20, random -> {
            CurvePath one = chain(random);
            CurvePath two =
                    new CurvePath(List.of(new Straight(one.end(), one.end().add(at(3, 4)))));
            CurvePath three =
                    new CurvePath(List.of(new Straight(two.end(), two.end().add(at(-3, 4)))));
            double known = one.length();
            CurvePath joined = CurvePath.joined(List.of(one, two, three));
            assertThat(joined).isEqualTo(one.then(two).then(three));
            // Whether lengths were known before or not, they are the same to the last bit.
            assertThat(joined.length()).isEqualTo(new CurvePath(new ArrayList<>(joined.curves())).length());
            assertThat(joined.length()).isCloseTo(known + 10, within(1e-9));
        });
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CurvePath.joined(List.of(square(), CurvePath.polyline(at(5, 5), at(6, 6)))))
                .withMessageStartingWith("joint 4 is open");
    }

    @Test
    void areaIsKeptFarFromTheOrigin() {
        assertThat(square().area()).isEqualTo(100);
        assertThat(square().reversed().area()).isEqualTo(-100);
        CurvePath far = square().transformed(AffineTransformMatrix2D.createTranslation(1e6, -1e6));
        assertThat(far.area()).isCloseTo(100, within(1e-9));
        Cases.some(10, random -> {
            CurvePath ring = MeetsPropertiesTest.ring(random);
            CurvePath moved = ring.transformed(Cases.isometry(random));
            assertThat(Math.abs(moved.area())).isCloseTo(ring.area(), within(1e-8));
        });
    }

    @Test
    void boundsAndClosing() {
        assertThat(square().bounds().getMax()).isEqualTo(at(10, 10));
        assertThat(square().closes(0)).isTrue();
        assertThat(CurvePath.polyline(at(0, 0), at(1, 0), at(0, 0.5)).closes(0.4))
                .isFalse();
        assertThat(CurvePath.polyline(at(0, 0), at(1, 0), at(0, 0.5)).closes(0.5))
                .isTrue();
    }
}
