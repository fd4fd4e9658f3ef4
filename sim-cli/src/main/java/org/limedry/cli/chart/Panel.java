package org.limedry.cli.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Rectangle;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.PlotState;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYDifferenceRenderer;
import org.jfree.chart.renderer.xy.XYItemRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.XYDataset;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/**
 * One plot of values against values whose data area is exactly the rectangle given, in whole px. The library places and
 * draws what lies in it; words are set here, by the table of letter widths, and all but the figures of the value axis by
 * the owner.
 */
abstract sealed class Panel permits TimePanel, Panel.Plain {
    private static final double FINEST_PX = 1;
    private static final double PIECE_PX = 4;
    private static final double STEP_PX = 2;
    private static final double WORDS_LEFT_PX = 8;

    private final ValueScale values;
    private final Rectangle area;
    private final NumberAxis acrossAxis = axis();
    private final NumberAxis valueAxis = axis();
    private final XYPlot plot = new XYPlot();

    Panel(double from, double to, ValueScale values, Rectangle area) {
        this.values = values;
        this.area = area;
        acrossAxis.setRange(from, to);
        valueAxis.setRange(values.low(), values.high());
        valueAxis.setTickUnit(new NumberTickUnit(values.step()));
        // Without a renderer the library draws no grid.
        plot.setRenderer(new XYLineAndShapeRenderer(true, false));
        plot.setDomainAxis(acrossAxis);
        plot.setRangeAxis(valueAxis);
        plot.setFixedDomainAxisSpace(new AxisSpace());
        plot.setFixedRangeAxisSpace(new AxisSpace());
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        plot.setInsets(RectangleInsets.ZERO_INSETS);
        plot.setBackgroundPaint(null);
        plot.setOutlineVisible(false);
        plot.setDomainGridlinesVisible(false);
        plot.setRangeGridlinePaint(Ink.GRID);
        plot.setRangeGridlineStroke(Ink.line(1));
    }

    private static NumberAxis axis() {
        NumberAxis axis = new NumberAxis();
        axis.setTickLabelsVisible(false);
        axis.setTickMarksVisible(false);
        axis.setAxisLineVisible(false);
        return axis;
    }

    /** A plot of any two quantities. */
    static final class Plain extends Panel {
        Plain(ValueScale across, ValueScale values, Rectangle area) {
            super(across.low(), across.high(), values, area);
        }
    }

    final Rectangle2D area() {
        return area;
    }

    final double x(double value) {
        return acrossAxis.valueToJava2D(value, area, RectangleEdge.BOTTOM);
    }

    final double y(double value) {
        return valueAxis.valueToJava2D(value, area, RectangleEdge.LEFT);
    }

    /** Returns where a point of the data lies, px. */
    final Point2D place(Point2D point) {
        return new Point2D.Double(x(point.getX()), y(point.getY()));
    }

    /** Adds a line through points of the data; points closer than a px are left out. Returns where it runs. */
    final List<Point2D> addLine(List<Point2D> points, BasicStroke stroke) {
        return addLine(points, stroke, Ink.BLACK);
    }

    final List<Point2D> addLine(List<Point2D> points, BasicStroke stroke, Color color) {
        List<Point2D> kept = thinned(points);
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        renderer.setSeriesStroke(0, stroke);
        renderer.setSeriesPaint(0, color);
        addData(new XYSeriesCollection(series("line", kept)), renderer);
        return kept.stream().map(this::place).toList();
    }

    /** Fills the area between two lines black wherever the first is above the second. */
    final void addFillBetween(List<Point2D> upper, List<Point2D> lower) {
        XYSeriesCollection both = new XYSeriesCollection(series("upper", upper));
        both.addSeries(series("lower", lower));
        addData(both, new FillAbove());
    }

    /** Fills where the first line is above the second, and draws neither: drawn piece by piece they lose their dashes. */
    private static final class FillAbove extends XYDifferenceRenderer {
        private static final long serialVersionUID = 1L;
        private static final Color NOTHING = new Color(0, 0, 0, 0);

        FillAbove() {
            super(Ink.BLACK, NOTHING, false);
        }

        @Override
        public int getPassCount() {
            return 1;
        }
    }

    /** Adds a tinted block from top to bottom. */
    final void addBlock(double from, double to, Color color) {
        IntervalMarker block = new IntervalMarker(from, to, color);
        block.setAlpha(1);
        plot.addDomainMarker(block, Layer.BACKGROUND);
    }

    /** Adds a dotted line from top to bottom. */
    final void addUpright(double at) {
        plot.addDomainMarker(new ValueMarker(at, Ink.BLACK, Ink.dashed(1.2, 2f, 4f)));
    }

    /** Draws the plot, its base line, and the figures of its value axis. */
    final void draw(Canvas canvas, Size size) {
        plot.draw(
                canvas.graphics(),
                new Rectangle2D.Double(area.x, area.y, area.width, area.height),
                null,
                new PlotState(),
                null);
        canvas.line(new Line2D.Double(area.getMinX(), area.getMaxY(), area.getMaxX(), area.getMaxY()), Ink.line(1));
        for (double tick : values.ticks()) {
            Text text = Text.plain(values.words(tick), size.textPx());
            double baseline = y(tick) + text.ascentPx() - text.heightPx() / 2;
            canvas.text(text, area.getMinX() - WORDS_LEFT_PX, baseline, Align.END);
        }
    }

    /** Returns a line in pieces that are long enough to be few. */
    static List<Line2D> pieces(List<Point2D> points) {
        List<Line2D> pieces = new ArrayList<>();
        Point2D from = points.get(0);
        for (Point2D to : points) {
            boolean last = to.equals(points.get(points.size() - 1));
            if (last || from.distance(to) >= PIECE_PX) {
                pieces.add(new Line2D.Double(from, to));
                from = to;
            }
        }
        return pieces;
    }

    /** Returns a line of few corners with points close enough for words to follow it. */
    static List<Point2D> fine(List<Point2D> corners) {
        List<Point2D> fine = new ArrayList<>();
        for (int i = 1; i < corners.size(); i++) {
            Point2D from = corners.get(i - 1);
            Point2D to = corners.get(i);
            int parts = (int) Math.max(1, Math.ceil(from.distance(to) / STEP_PX));
            for (int k = 0; k < parts; k++) {
                fine.add(along(from, to, (double) k / parts));
            }
        }
        fine.add(corners.get(corners.size() - 1));
        return fine;
    }

    private static Point2D along(Point2D from, Point2D to, double share) {
        return new Point2D.Double(
                from.getX() + share * (to.getX() - from.getX()), from.getY() + share * (to.getY() - from.getY()));
    }

    private void addData(XYDataset data, XYItemRenderer renderer) {
        // An empty plot already counts one data set, which is none.
        int free = plot.getDataset(0) == null ? 0 : plot.getDatasetCount();
        plot.setDataset(free, data);
        plot.setRenderer(free, renderer);
    }

    private static XYSeries series(String name, List<Point2D> points) {
        XYSeries series = new XYSeries(name, false, true);
        points.forEach(point -> series.add(point.getX(), point.getY(), false));
        return series;
    }

    private List<Point2D> thinned(List<Point2D> points) {
        List<Point2D> kept = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            boolean end = i == 0 || i == points.size() - 1;
            if (end || place(points.get(i)).distance(place(kept.get(kept.size() - 1))) >= FINEST_PX) {
                kept.add(points.get(i));
            }
        }
        return kept;
    }
}
