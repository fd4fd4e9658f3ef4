package org.limedry.cli.chart;

/** Panels one below the other on one time axis, each under a line that says what it shows. */
abstract sealed class PanelStack extends Picture permits CarePicture, ReadingsPicture {
    private static final int TITLE_PX = 30;
    private static final int TITLE_ABOVE_PX = 16;
    private static final int BETWEEN_PX = 18;
    private static final int DATES_PX = 32;

    private final TimeScale times;
    private int bottom;

    PanelStack(Timeline timeline, Size size) {
        super(size);
        this.times = new TimeScale(timeline, size.pick(44, 34), size.pick(670, 348));
    }

    /** Returns a new panel below those before. */
    final TimePanel add(ValueScale scale, int heightPx) {
        int top = (bottom > 0 ? bottom + BETWEEN_PX : 0) + TITLE_PX;
        bottom = top + heightPx;
        return new TimePanel(times, scale, top, bottom);
    }

    final void drawTitle(Canvas canvas, TimePanel panel, String title) {
        canvas.text(plain(title), 0, panel.area().getMinY() - TITLE_ABOVE_PX, Align.START);
    }

    final void drawDates(Canvas canvas) {
        TimeTick.draw(canvas, times, bottom, size);
    }

    @Override
    final double heightPx() {
        return bottom + DATES_PX;
    }
}
