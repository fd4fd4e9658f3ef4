package org.limedry.cli.chart;

/** The two drawings of each chart: a wide one shrunk to a telephone cannot be read. */
public enum Size {
    /** For print at 180 mm and for screens from 560 px on. */
    WIDE(680, 15, 16),
    /** For telephones. */
    NARROW(358, 14, 15);

    private final int widthPx;
    private final int textPx;
    private final int headPx;

    Size(int widthPx, int textPx, int headPx) {
        this.widthPx = widthPx;
        this.textPx = textPx;
        this.headPx = headPx;
    }

    /** Returns the width of the drawing, px. */
    public int widthPx() {
        return widthPx;
    }

    int textPx() {
        return textPx;
    }

    int headPx() {
        return headPx;
    }

    /** Returns whichever of the two belongs to this size. */
    <T> T pick(T wide, T narrow) {
        return this == WIDE ? wide : narrow;
    }
}
