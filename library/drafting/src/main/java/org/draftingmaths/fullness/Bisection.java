package org.draftingmaths.fullness;

import java.util.function.DoubleUnaryOperator;

/** Where a function that only rises or only falls takes a value, to the last bit of the argument. */
final class Bisection {

    private static final int HALVINGS = 200;

    private Bisection() {}

    static double rising(DoubleUnaryOperator function, double value, double low, double high) {
        double below = low;
        double above = high;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = below + (above - below) / 2;
            if (middle <= below || middle >= above) {
                break;
            }
            if (function.applyAsDouble(middle) < value) {
                below = middle;
            } else {
                above = middle;
            }
        }
        return below + (above - below) / 2;
    }

    static double falling(DoubleUnaryOperator function, double value, double low, double high) {
        return rising(x -> -function.applyAsDouble(x), -value, low, high);
    }
}
