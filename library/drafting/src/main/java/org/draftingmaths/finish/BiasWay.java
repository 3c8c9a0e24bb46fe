package org.draftingmaths.finish;

/** On which of the two biases of a cloth a piece lies. They are mirror images on the cloth, and they hang differently. */
public enum BiasWay {
    /** The grain turned by 45° anticlockwise. */
    LEFT(1),
    /** The grain turned by 45° clockwise. */
    RIGHT(-1);

    private final int sign;

    BiasWay(int sign) {
        this.sign = sign;
    }

    double angle() {
        return sign * Math.PI / 4;
    }

    /**
     * The way that the mirror image lies.
     *
     * @return the other way
     */
    public BiasWay mirrored() {
        return this == LEFT ? RIGHT : LEFT;
    }
}
