package org.limedry.cli.chart;

import java.awt.Rectangle;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.limedry.cli.chart.Label.Side;
import org.limedry.cli.chart.PlotsChart.Line;
import org.limedry.cli.chart.PlotsChart.Point;

/** Plots in rows: up to three abreast on wide paper, one below the other on a telephone. */
final class PlotsPicture extends Picture {
    private static final double ROW_GAP_PX = 14;
    private static final double COLUMN_GAP_PX = 16;
    private static final double LINE_PX = 21;
    private static final double WORDS_GAP_PX = 8;
    private static final double BETWEEN_TICKS_PX = 8;
    private static final double DOT_RADIUS_PX = 3.5;
    private static final double INSIDE_PX = 6;

    private final PlotsChart chart;
    private final Paragraph note;
    private final List<Area> areas = new ArrayList<>();
    private final double notesTop;

    PlotsPicture(PlotsChart chart, Size size) {
        super(size);
        this.chart = chart;
        this.note = Paragraph.wrapped(plain(chart.note()), size.widthPx());
        int columns = size.pick(columns(chart.plots().size()), 1);
        double width = (size.widthPx() - (columns - 1) * COLUMN_GAP_PX) / columns;
        double top = 0;
        for (int first = 0; first < chart.plots().size(); first += columns) {
            double bottom = top;
            int end = Math.min(first + columns, chart.plots().size());
            for (int k = first; k < end; k++) {
                double left = (k - first) * (width + COLUMN_GAP_PX);
                Area area = new Area(chart.plots().get(k), left, top, width);
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
    double heightPx() {
        return notesTop + (chart.note().isEmpty() ? 0 : note.heightPx());
    }

    @Override
    String story() {
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
    void draw(Canvas canvas) {
        areas.forEach(area -> area.draw(canvas));
        if (!chart.note().isEmpty()) {
            canvas.paragraph(note, 0, notesTop, Align.START);
        }
    }

    /** One plot with its heading, axes, lines and marks. */
    private final class Area {
        private final PlotsChart.Plot plot;
        private final double left;
        private final double top;
        private final double right;
        private final ValueScale across;
        private final Paragraph heading;
        private final Panel panel;

        Area(PlotsChart.Plot plot, double left, double top, double widthPx) {
            this.plot = plot;
            this.left = left;
            this.top = top;
            this.right = left + widthPx;
            this.across = plot.range() instanceof PlotsChart.Range.Same same
                    ? ValueScale.between(same.low(), same.high())
                    : ValueScale.between(least(), most());
            ValueScale up = plot.range() instanceof PlotsChart.Range.FromZero zero
                    ? ValueScale.fromZero(zero.highest())
                    : across;
            this.heading = Paragraph.wrapped(bold(plot.heading()), widthPx);
            double figuresPx = up.ticks().stream()
                    .mapToDouble(tick -> plain(up.words(tick)).widthPx())
                    .max()
                    .orElse(0);
            int plotLeft = (int) Math.ceil(left + figuresPx + WORDS_GAP_PX);
            int plotTop = (int) Math.ceil(top + heading.heightPx() + LINE_PX + INSIDE_PX);
            int plotRight = (int) Math.floor(right - INSIDE_PX);
            this.panel = new Panel.Plain(
                    across, up, new Rectangle(plotLeft, plotTop, plotRight - plotLeft, size.pick(170, 190)));
        }

        private Stream<Point> points() {
            return Stream.concat(
                    plot.lines().stream().flatMap(line -> line.points().stream()),
                    plot.dots().stream().map(PlotsChart.Dot::at));
        }

        private double least() {
            return points().mapToDouble(Point::across).min().orElse(0);
        }

        private double most() {
            return points().mapToDouble(Point::across).max().orElse(1);
        }

        /** Returns the lower edge of everything that belongs to the plot. */
        double bottom() {
            return panel.area().getMaxY() + 2 * LINE_PX + INSIDE_PX;
        }

        void draw(Canvas canvas) {
            Rectangle2D area = panel.area();
            canvas.paragraph(heading, left, top, Align.START);
            canvas.text(plain(plot.up()), left, area.getMinY() - 2 * INSIDE_PX, Align.START);
            LabelPlacer placer = new LabelPlacer(canvas, area);
            List<Label> names = new ArrayList<>();
            if (plot.range() instanceof PlotsChart.Range.Same) {
                Point2D low = new Point2D.Double(across.low(), across.low());
                panel.addLine(List.of(low, new Point2D.Double(across.high(), across.high())), Ink.line(1), Ink.MIDDLE);
            }
            for (Line line : plot.lines()) {
                List<Point2D> run = Panel.fine(panel.addLine(data(line), Ink.coat(names.size())));
                placer.avoid(line, Panel.pieces(run));
                names.add(Label.along(line, Paragraph.oneLineOrTwo(plain(line.name())), run, Side.ABOVE));
            }
            panel.draw(canvas, size);
            drawAcross(canvas);
            plot.dots().forEach(dot -> drawDot(canvas, dot));
            names.forEach(placer::place);
        }

        private static List<Point2D> data(Line line) {
            return line.points().stream()
                    .<Point2D>map(point -> new Point2D.Double(point.across(), point.up()))
                    .toList();
        }

        private void drawAcross(Canvas canvas) {
            double baseline = panel.area().getMaxY() + LINE_PX;
            List<AxisWords.At> figures = across.ticks().stream()
                    .map(tick -> new AxisWords.At(panel.x(tick), plain(across.words(tick))))
                    .toList();
            new AxisWords(left, right, BETWEEN_TICKS_PX).draw(canvas, figures, baseline);
            canvas.text(plain(plot.across()), right, baseline + LINE_PX, Align.END);
        }

        private void drawDot(Canvas canvas, PlotsChart.Dot dot) {
            Point2D at =
                    panel.place(new Point2D.Double(dot.at().across(), dot.at().up()));
            // White ones are larger, so that one shows round a black one upon it.
            Ellipse2D circle = Marks.disc(at, dot.black() ? DOT_RADIUS_PX - 1.0 : DOT_RADIUS_PX);
            canvas.fill(circle, dot.black() ? Ink.BLACK : Ink.PAPER);
            if (!dot.black()) {
                canvas.draw(circle, Ink.line(1), Ink.BLACK);
            }
        }
    }
}
