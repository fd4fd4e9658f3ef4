package org.limedry.cli.chart;

/**
 * Words over a row: what it is, and in bold what came of it, at the right where both have room in one line and below
 * where not.
 *
 * @param what what the row is
 * @param result what came of it
 * @param beside whether both stand in one line
 * @param widthPx width of the row, px
 */
record RowWords(Paragraph what, Paragraph result, boolean beside, double widthPx) {
    private static final double BETWEEN_PX = 14;

    static RowWords of(String what, String result, Size size) {
        Text plain = Text.plain(what, size.textPx());
        Text bold = Text.bold(result, size.textPx());
        double widthPx = size.widthPx();
        return new RowWords(
                Paragraph.wrapped(plain, widthPx),
                Paragraph.wrapped(bold, widthPx),
                plain.widthPx() + BETWEEN_PX + bold.widthPx() <= widthPx,
                widthPx);
    }

    double heightPx() {
        return beside ? what.heightPx() : whatPx() + result.heightPx();
    }

    private double whatPx() {
        return what.lines().size() * what.pitchPx();
    }

    /** Draws the words on white, for lines that run below them. */
    void draw(Canvas canvas, double top) {
        canvas.boxed(what, 0, top, Align.START);
        if (beside) {
            canvas.boxed(result, widthPx - result.widthPx(), top, Align.START);
        } else {
            canvas.boxed(result, 0, top + whatPx(), Align.START);
        }
    }
}
