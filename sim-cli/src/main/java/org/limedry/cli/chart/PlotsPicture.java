package org.limedry.cli.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Plots in rows: up to three abreast on wide paper, one below the other on a telephone. */
final class PlotsPicture implements Picture {
    private static final double ROW_GAP_PX = 14;
    private static final double COLUMN_GAP_PX = 16;

    private final PlotsChart chart;
    private final Size size;
    private final Paragraph note;
    private final List<PlotArea> areas = new ArrayList<>();
    private final double notesTop;

    PlotsPicture(PlotsChart chart, Size size) {
        this.chart = chart;
        this.size = size;
        this.note = Paragraph.wrapped(Text.plain(chart.note(), size.textPx()), size.widthPx());
        int columns = size.pick(columns(chart.plots().size()), 1);
        double width = (size.widthPx() - (columns - 1) * COLUMN_GAP_PX) / columns;
        double top = 0;
        for (int first = 0; first < chart.plots().size(); first += columns) {
            double bottom = top;
            int end = Math.min(first + columns, chart.plots().size());
            for (int k = first; k < end; k++) {
                double left = (k - first) * (width + COLUMN_GAP_PX);
                PlotArea area = new PlotArea(chart.plots().get(k), size, new PlotArea.Place(left, top, width));
                areas.add(area);
                bottom = Math.max(bottom, area.bottom());
            }
            top = bottom + ROW_GAP_PX;
        }
        notesTop = top;
    }

    /** Four plots look better in two rows of two. */
    private static int columns(int plots) {
        return plots == 4 ? 2 : Math.min(plots, 3);
    }

    @Override
    public double widthPx() {
        return size.widthPx();
    }

    @Override
    public double heightPx() {
        return notesTop + (chart.note().isEmpty() ? 0 : note.heightPx());
    }

    @Override
    public String story() {
        String plots = chart.plots().stream().map(PlotsPicture::story).collect(Collectors.joining(" "));
        return chart.note().isEmpty() ? plots : plots + " " + chart.note();
    }

    private static String story(PlotsChart.Plot plot) {
        String lines = plot.lines().stream()
                .map(line -> line.name() + ": "
                        + line.points().stream()
                                .map(point -> String.format(Locale.ROOT, "%.1f at %.0f", point.up(), point.across()))
                                .collect(Collectors.joining(", ")))
                .collect(Collectors.joining("; "));
        String dots = plot.dots().isEmpty() ? "" : plot.dots().size() + " marks";
        return plot.heading() + " (" + plot.up() + " against " + plot.across() + "): " + lines + dots + ".";
    }

    @Override
    public void draw(Canvas canvas) {
        areas.forEach(area -> area.draw(canvas));
        if (!chart.note().isEmpty()) {
            canvas.paragraph(note, 0, notesTop, Align.START);
        }
    }
}
