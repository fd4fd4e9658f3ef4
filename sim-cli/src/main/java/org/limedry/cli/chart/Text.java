package org.limedry.cli.chart;

import java.awt.geom.Rectangle2D;
import org.limedry.units.Check;

/**
 * A line of text.
 *
 * @param words what it says
 * @param sizePx type size, px
 * @param bold whether it is bold
 */
record Text(String words, int sizePx, boolean bold) {
    private static final double ABOVE_BASELINE_SIZES = 0.80;
    private static final double BELOW_BASELINE_SIZES = 0.22;

    Text {
        Check.atLeast(sizePx, 1, "sizePx");
        words = printable(words);
    }

    /** Returns the words with every run of blanks and control characters as one blank. */
    static String printable(String words) {
        return words.replaceAll("[\\p{Cntrl}\\s]+", " ").strip();
    }

    static Text plain(String words, int sizePx) {
        return new Text(words, sizePx, false);
    }

    static Text bold(String words, int sizePx) {
        return new Text(words, sizePx, true);
    }

    double widthPx() {
        return TextWidths.inSizes(words, bold) * sizePx;
    }

    double heightPx() {
        return (ABOVE_BASELINE_SIZES + BELOW_BASELINE_SIZES) * sizePx;
    }

    /** Returns how far its baseline lies below the top of its box, px. */
    double ascentPx() {
        return ABOVE_BASELINE_SIZES * sizePx;
    }

    Rectangle2D box(double left, double baseline) {
        return new Rectangle2D.Double(left, baseline - ascentPx(), widthPx(), heightPx());
    }

    /** Returns the same in other words. */
    Text with(String other) {
        return new Text(other, sizePx, bold);
    }

    /** Returns the text, cut with an ellipsis if it is wider than {@code widthPx}. */
    Text cutTo(double widthPx) {
        Text cut = this;
        int length = words.codePointCount(0, words.length());
        while (cut.widthPx() > widthPx && length > 1) {
            length--;
            String kept = words.substring(0, words.offsetByCodePoints(0, length));
            cut = with(kept.strip() + "\u2026");
        }
        return cut;
    }
}
