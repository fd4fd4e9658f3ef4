package org.limedry.cli.chart;

import java.awt.BasicStroke;
import java.awt.Color;

/** Black, greys, and the lines drawn with them. */
final class Ink {
    static final Color BLACK = new Color(0x111111);
    static final Color DARK = new Color(0x333333);
    static final Color MIDDLE = new Color(0x777777);
    static final Color FRAME = new Color(0x999999);
    static final Color GRID = new Color(0xbbbbbb);
    static final Color TINT = new Color(0xd0d0d0);
    static final Color SHUT = new Color(0xe9e9e9);
    static final Color PAPER = Color.WHITE;

    private Ink() {}

    static BasicStroke line(double widthPx) {
        return new BasicStroke((float) widthPx, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    }

    static BasicStroke dashed(double widthPx, float... dashesPx) {
        return new BasicStroke(
                (float) widthPx, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, BasicStroke.JOIN_MITER, dashesPx, 0);
    }

    /** From a likely tick down to its line. */
    static BasicStroke drop() {
        return dashed(1.3, 1.5f, 4f);
    }

    /** Returns the line of the n-th coat; the sixth looks like the first again. */
    static BasicStroke coat(int n) {
        return switch (n % 5) {
            case 0 -> line(3.4);
            case 1 -> dashed(2.4, 9f, 5f);
            case 2 -> dashed(2.6, 13f, 4f, 2f, 4f);
            case 3 -> line(1.4);
            default -> dashed(2.6, 3f, 4f);
        };
    }
}
