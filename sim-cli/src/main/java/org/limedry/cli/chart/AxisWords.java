package org.limedry.cli.chart;

import java.util.List;

/**
 * Words under an axis, each about its place but between two ends; one that would touch the one before is left out.
 *
 * @param left where no word may begin before, px
 * @param right where no word may end after, px
 * @param gapPx least room between two words, px
 */
record AxisWords(double left, double right, double gapPx) {
    /**
     * What to write where.
     *
     * @param x its place, px
     * @param words what to write
     */
    record At(double x, Text words) {}

    /** Draws words that come from left to right. */
    void draw(Canvas canvas, List<At> words, double baseline) {
        double free = Double.NEGATIVE_INFINITY;
        for (At at : words) {
            double width = at.words().widthPx();
            double start = Math.max(left, Math.min(at.x() - width / 2, right - width));
            if (start >= free) {
                canvas.text(at.words(), start, baseline, Align.START);
                free = start + width + gapPx;
            }
        }
    }
}
