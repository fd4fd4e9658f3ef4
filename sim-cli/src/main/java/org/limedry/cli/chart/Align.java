package org.limedry.cli.chart;

/** Which part of a text stands at the given place. */
enum Align {
    START(0),
    MIDDLE(0.5),
    END(1);

    private final double share;

    Align(double share) {
        this.share = share;
    }

    /** Returns the left edge of something {@code widthPx} wide that is placed at {@code x}. */
    double left(double x, double widthPx) {
        return x - share * widthPx;
    }

    /** Returns the place to name for something {@code widthPx} wide whose left edge is at {@code left}. */
    double place(double left, double widthPx) {
        return left + share * widthPx;
    }
}
