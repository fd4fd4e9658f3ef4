package org.limedry.cli.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.limedry.cli.chart.CurveSpots.Side;
import org.limedry.cli.chart.WallAndDewPointChart.Hour;

/** Lays out the chart of the coldest wall against the dew point. */
final class WallPicture implements Picture {
    private static final int AXIS_TITLE_BASELINE_PX = 14;
    private static final String WALL = "wall";
    private static final int PLOT_TOP_PX = 30;
    private static final int DATES_PX = 32;

    private final WallAndDewPointChart chart;
    private final Size size;
    private final TimeScale times;
    private final HourSums sums;
    private final int plotBottom;
    private final Strips strips;

    WallPicture(WallAndDewPointChart chart, Size size) {
        this.chart = chart;
        this.size = size;
        this.times = new TimeScale(chart.timeline(), size.pick(122, 34), size.pick(670, 348));
        this.sums = new HourSums(chart.timeline(), chart.hours());
        this.plotBottom = size.pick(206, 256);
        this.strips = new Strips(chart, size, times, plotBottom + size.pick(12, 6));
    }

    @Override
    public double widthPx() {
        return size.widthPx();
    }

    @Override
    public double heightPx() {
        return strips.bottom() + DATES_PX;
    }

    @Override
    public void draw(Canvas canvas) {
        List<TimedValue> wall = sums.line(Hour::wallCelsius);
        List<TimedValue> dew = sums.line(Hour::dewPointCelsius);
        DoubleSummaryStatistics range = Stream.concat(wall.stream(), dew.stream())
                .flatMapToDouble(point -> DoubleStream.of(point.value()))
                .summaryStatistics();
        ValueScale celsius = ValueScale.celsius(range.getMin(), range.getMax());
        TimePanel panel = new TimePanel(times, celsius, PLOT_TOP_PX, plotBottom);
        panel.addFillBetween(dew, wall);
        Line dewLine = new Line("dew point", panel.addLine(dew, Ink.dashed(2, 6f, 4f)));
        Line wallLine = new Line(WALL, panel.addLine(wall, Ink.line(2.8)));
        panel.draw(canvas, size);
        axisTitle(canvas);
        strips.draw(canvas);
        TimeTick.draw(canvas, times, strips.bottom() + 4, size);

        Rectangle2D area = panel.area();
        LabelPlacer placer = new LabelPlacer(
                canvas, new Rectangle2D.Double(area.getX(), area.getY(), area.getWidth(), area.getHeight() - 3));
        Stream.of(dewLine, wallLine).forEach(line -> placer.avoid(line.owner(), TimePanel.pieces(line.points())));
        avoidBlack(placer, panel, wall, dew);
        blackestPlace(panel, wall, dew).ifPresent(place -> placer.place(blackLabel(wallLine, place)));
        placer.place(name(wallLine, Text.bold("coldest wall: " + chart.wall(), size.textPx()), Side.ABOVE));
        placer.place(name(dewLine, text("dew point of the room air"), Side.BELOW));
    }

    private void axisTitle(Canvas canvas) {
        Align align = size.pick(Align.END, Align.START);
        canvas.text(text("degrees C"), size.pick(times.left() - 8, 0), AXIS_TITLE_BASELINE_PX, align);
    }

    private record Line(String owner, List<Point2D> points) {}

    private Text text(String words) {
        return Text.plain(words, size.textPx());
    }

    private Label name(Line line, Text words, Side first) {
        Side second = first == Side.ABOVE ? Side.BELOW : Side.ABOVE;
        Text fitting = words.cutTo(times.widthPx() - 20.0);
        CurveSpots preferred = new CurveSpots(line.points(), List.of(first));
        CurveSpots other = new CurveSpots(line.points(), List.of(second));
        return new Label(
                line.owner(),
                Paragraph.oneLineOrTwo(fitting),
                setting -> Stream.concat(preferred.of(setting).stream(), other.of(setting).stream())
                        .toList(),
                preferred.anchors(),
                Ink.PAPER);
    }

    /** Words would be lost on black. */
    private static void avoidBlack(LabelPlacer placer, TimePanel panel, List<TimedValue> wall, List<TimedValue> dew) {
        List<Line2D> uprights = IntStream.range(0, wall.size())
                .filter(i -> dew.get(i).value() >= wall.get(i).value())
                .<Line2D>mapToObj(i -> new Line2D.Double(panel.place(wall.get(i)), panel.place(dew.get(i))))
                .toList();
        placer.avoid(WALL, uprights);
    }

    /** Returns where the dew point stands highest over the wall, on the wall's own line, if it does anywhere. */
    private static Optional<Point2D> blackestPlace(TimePanel panel, List<TimedValue> wall, List<TimedValue> dew) {
        return IntStream.range(0, wall.size())
                .filter(i -> dew.get(i).value() > wall.get(i).value())
                .boxed()
                .max(Comparator.comparingDouble(
                        i -> dew.get(i).value() - wall.get(i).value()))
                .map(i -> panel.place(wall.get(i)));
    }

    /** Below the wall's line, close to where the black is thickest. */
    private Label blackLabel(Line wall, Point2D blackest) {
        CurveSpots below = new CurveSpots(wall.points(), List.of(Side.BELOW));
        CurveSpots above = new CurveSpots(wall.points(), List.of(Side.ABOVE));
        Comparator<Rectangle2D> nearest =
                Comparator.comparingDouble(box -> Math.abs(box.getCenterX() - blackest.getX()));
        double reach = size.widthPx() / 3.0;
        return new Label(
                wall.owner(),
                Paragraph.oneLineOrTwo(Text.bold("black: wall wet", size.textPx())),
                setting -> Stream.of(below, above)
                        .flatMap(spots -> spots.of(setting).stream()
                                .filter(box -> Math.abs(box.getCenterX() - blackest.getX()) <= reach)
                                .sorted(nearest))
                        .toList(),
                List.of(blackest),
                Ink.PAPER);
    }

    @Override
    public String story() {
        Timeline timeline = chart.timeline();
        long all = chart.hours().stream()
                .filter(hour -> hour.at().isAfter(timeline.from()))
                .count();
        return String.format(
                Locale.ROOT,
                "Two lines, %s to %s, %s. The %s stands between %s and %s degrees C, the dew point of the room air"
                        + " between %s and %s. The dew point lies at or above the wall for %,d of %,d hours."
                        + " Strips below show the wet hours, the doors%s, the heater%s and the dehumidifier%s.",
                DateWords.longDayWithYear(timeline.firstDay()),
                DateWords.longDayWithYear(timeline.lastDay()),
                timeline.byDay() ? "means of each day" : "hour by hour",
                chart.wall(),
                extreme(Comparator.naturalOrder(), true),
                extreme(Comparator.reverseOrder(), true),
                extreme(Comparator.naturalOrder(), false),
                extreme(Comparator.reverseOrder(), false),
                chart.wetHours(),
                all,
                since(hour -> hour.doorsOpenShare() > 0),
                since(hour -> hour.heaterShare() > 0),
                since(hour -> hour.dehumidifierShare() > 0));
    }

    private String extreme(Comparator<Double> order, boolean ofWall) {
        return chart.hours().stream()
                .map(hour -> ofWall ? hour.wallCelsius() : hour.dewPointCelsius())
                .min(order)
                .map(celsius -> Litres.text(Litres.shown(celsius, 1)))
                .orElseThrow();
    }

    private String since(Predicate<Hour> on) {
        List<Stretch> stretches = sums.stretches(on);
        if (stretches.isEmpty()) {
            return " (never)";
        }
        return " (first on "
                + DateWords.longDay(chart.timeline().day(stretches.get(0).from())) + ")";
    }
}
