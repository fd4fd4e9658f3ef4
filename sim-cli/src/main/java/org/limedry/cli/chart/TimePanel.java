package org.limedry.cli.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Rectangle;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.PlotState;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYItemRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.XYDataset;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** One plot over time whose data area is exactly the rectangle given; the words around it are drawn by its owner. */
final class TimePanel {
    private static final double FINEST_PX = 1;
    private static final double PIECE_PX = 4;
    private static final double WORDS_LEFT_PX = 8;

    private final TimeScale times;
    private final ValueScale values;
    private final Rectangle area;
    private final NumberAxis valueAxis = new NumberAxis();
    private final XYPlot plot = new XYPlot();

    TimePanel(TimeScale times, ValueScale values, int top, int bottom) {
        this.times = times;
        this.values = values;
        this.area = new Rectangle(times.left(), top, times.widthPx(), bottom - top);
        NumberAxis timeAxis = new NumberAxis();
        timeAxis.setRange(0, times.lengthSeconds());
        valueAxis.setRange(values.low(), values.high());
        valueAxis.setTickUnit(new NumberTickUnit(values.step()));
        for (NumberAxis axis : List.of(timeAxis, valueAxis)) {
            axis.setTickLabelsVisible(false);
            axis.setTickMarksVisible(false);
            axis.setAxisLineVisible(false);
        }
        plot.setDomainAxis(timeAxis);
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

    Rectangle2D area() {
        return area;
    }

    double y(double value) {
        return valueAxis.valueToJava2D(value, area, RectangleEdge.LEFT);
    }

    Point2D place(TimedValue point) {
        return new Point2D.Double(times.x(point.at()), y(point.value()));
    }

    /** Adds a line; points closer than a px are left out. Returns where it runs. */
    List<Point2D> addLine(List<TimedValue> points, BasicStroke stroke) {
        List<TimedValue> kept = thinned(points);
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setDrawSeriesLineAsPath(true);
        renderer.setSeriesStroke(0, stroke);
        renderer.setSeriesPaint(0, Ink.BLACK);
        addData(new XYSeriesCollection(series("line", kept)), renderer);
        return kept.stream().map(this::place).toList();
    }

    /** Fills the area between two lines black wherever the first is above the second. */
    void addFillBetween(List<TimedValue> upper, List<TimedValue> lower) {
        XYSeriesCollection both = new XYSeriesCollection(series("upper", upper));
        both.addSeries(series("lower", lower));
        addData(both, new FillAbove());
    }

    /** Adds a tinted block from top to bottom. */
    void addBlock(Instant from, Instant to, Color color) {
        IntervalMarker block = new IntervalMarker(times.seconds(from), times.seconds(to), color);
        block.setAlpha(1);
        plot.addDomainMarker(block, Layer.BACKGROUND);
    }

    /** Adds a dotted line from top to bottom. */
    void addUpright(Instant at) {
        plot.addDomainMarker(new ValueMarker(times.seconds(at), Ink.BLACK, Ink.dashed(1.2, 2f, 4f)));
    }

    /** Draws the plot and the figures on its value axis. */
    void draw(Canvas canvas, Size size) {
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

    private void addData(XYDataset data, XYItemRenderer renderer) {
        int index = plot.getDatasetCount();
        // An empty plot already counts one data set, which is none.
        int free = plot.getDataset(0) == null ? 0 : index;
        plot.setDataset(free, data);
        plot.setRenderer(free, renderer);
    }

    private XYSeries series(String name, List<TimedValue> points) {
        XYSeries series = new XYSeries(name, false, true);
        points.forEach(point -> series.add(times.seconds(point.at()), point.value(), false));
        return series;
    }

    private List<TimedValue> thinned(List<TimedValue> points) {
        List<TimedValue> kept = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            boolean end = i == 0 || i == points.size() - 1;
            if (end || place(points.get(i)).distance(place(kept.get(kept.size() - 1))) >= FINEST_PX) {
                kept.add(points.get(i));
            }
        }
        return kept;
    }
}
