package org.limedry.cli.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.limedry.cli.chart.Label.Side;
import org.limedry.cli.chart.WallAndDewPointChart.Hour;

/** Lays out the chart of the coldest wall against the dew point. */
final class WallPicture extends Picture {
    private static final int AXIS_TITLE_BASELINE_PX = 14;
    private static final String WALL = "wall";
    private static final int PLOT_TOP_PX = 30;
    private static final int DATES_PX = 32;

    private final WallAndDewPointChart chart;
    private final TimeScale times;
    private final HourSums sums;
    private final int plotBottom;
    private final Strips strips;

    WallPicture(WallAndDewPointChart chart, Size size) {
        super(size);
        this.chart = chart;
        this.times = new TimeScale(chart.timeline(), size.pick(122, 34), size.pick(670, 348));
        this.sums = new HourSums(chart.timeline(), chart.hours());
        this.plotBottom = size.pick(206, 256);
        this.strips = new Strips(plotBottom + size.pick(12, 6));
    }

    @Override
    double heightPx() {
        return strips.bottom() + DATES_PX;
    }

    @Override
    void draw(Canvas canvas) {
        List<TimedValue> wall = sums.line(Hour::wallCelsius);
        List<TimedValue> dew = sums.line(Hour::dewPointCelsius);
        DoubleSummaryStatistics range = Stream.concat(wall.stream(), dew.stream())
                .flatMapToDouble(point -> DoubleStream.of(point.value()))
                .summaryStatistics();
        ValueScale celsius = ValueScale.celsius(range.getMin(), range.getMax());
        TimePanel panel = new TimePanel(times, celsius, PLOT_TOP_PX, plotBottom);
        panel.addBlack(dew, wall);
        Line dewLine = new Line("dew point", panel.addTimes(dew, Ink.dashed(2, 6f, 4f)));
        Line wallLine = new Line(WALL, panel.addTimes(wall, Ink.line(2.8)));
        panel.draw(canvas, size);
        axisTitle(canvas);
        strips.draw(canvas);
        TimeTick.draw(canvas, times, strips.bottom() + 4, size);

        Rectangle2D area = panel.area();
        LabelPlacer placer = new LabelPlacer(
                canvas, new Rectangle2D.Double(area.getX(), area.getY(), area.getWidth(), area.getHeight() - 3));
        Stream.of(dewLine, wallLine).forEach(line -> placer.avoid(line.owner(), Panel.pieces(line.points())));
        avoidBlack(placer, panel, wall, dew);
        blackestPlace(panel, wall, dew).ifPresent(place -> placer.place(blackLabel(wallLine, place)));
        placer.place(name(wallLine, bold("coldest wall: " + chart.wall()), Side.ABOVE));
        placer.place(name(dewLine, plain("dew point of the room air"), Side.BELOW));
    }

    private void axisTitle(Canvas canvas) {
        Align align = size.pick(Align.END, Align.START);
        canvas.text(plain("degrees C"), size.pick(times.left() - 8, 0), AXIS_TITLE_BASELINE_PX, align);
    }

    private record Line(String owner, List<Point2D> points) {}

    private Label name(Line line, Text words, Side first) {
        Text fitting = words.cutTo(times.widthPx() - 20.0);
        return new Label(
                line.owner(),
                Paragraph.oneLineOrTwo(fitting),
                setting -> Stream.of(first, first.other())
                        .flatMap(side -> Label.spots(line.points(), List.of(side), setting).stream())
                        .toList(),
                Label.anchors(line.points()));
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
        Comparator<Rectangle2D> nearest =
                Comparator.comparingDouble(box -> Math.abs(box.getCenterX() - blackest.getX()));
        double reach = size.widthPx() / 3.0;
        return new Label(
                wall.owner(),
                Paragraph.oneLineOrTwo(bold("black: wall wet")),
                setting -> Stream.of(Side.BELOW, Side.ABOVE)
                        .flatMap(side -> Label.spots(wall.points(), List.of(side), setting).stream()
                                .filter(box -> Math.abs(box.getCenterX() - blackest.getX()) <= reach)
                                .sorted(nearest))
                        .toList(),
                List.of(blackest));
    }

    @Override
    String story() {
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
        List<HourSums.Stretch> stretches = sums.stretches(on);
        if (stretches.isEmpty()) {
            return " (never)";
        }
        return " (first on "
                + DateWords.longDay(chart.timeline().day(stretches.get(0).from())) + ")";
    }

    /** The four strips under the temperatures: wet hours, open doors, heater, dehumidifier. */
    private final class Strips {
        private static final double STRIP_PX = 20;
        private static final double WIDE_PITCH_PX = 26;
        private static final double NARROW_PITCH_PX = 44;
        private static final double NARROW_NAME_PX = 18;
        private static final double TICK_PX = 2.4;
        private static final double TICK_SHORT_PX = 3;
        private static final double INSIDE_PX = 6;
        private static final double HOURS_A_DAY = 24;
        private static final double OPEN_HOURS = 0.1;

        private final double top;

        Strips(double top) {
            this.top = top;
        }

        double bottom() {
            return strip(3).getMaxY();
        }

        private Rectangle2D strip(int n) {
            double y = top + n * size.pick(WIDE_PITCH_PX, NARROW_PITCH_PX) + size.pick(0.0, NARROW_NAME_PX);
            return new Rectangle2D.Double(times.left(), y, times.widthPx(), STRIP_PX);
        }

        void draw(Canvas canvas) {
            wetHours(canvas, strip(0));
            doors(canvas, strip(1));
            plant(
                    canvas,
                    strip(2),
                    new Plant("heater", chart.plant().heater(), Fill.HEAVY),
                    sums.stretches(hour -> hour.heaterShare() > 0));
            plant(
                    canvas,
                    strip(3),
                    new Plant("dehumidifier", chart.plant().dehumidifier(), Fill.LIGHT),
                    sums.stretches(hour -> hour.dehumidifierShare() > 0));
        }

        private void wetHours(Canvas canvas, Rectangle2D strip) {
            boolean byDay = chart.timeline().byDay();
            name(canvas, strip, byDay ? size.pick("wet hours of 24", "wet hours a day (full height 24)") : "wet hours");
            if (byDay) {
                sums.hoursByDay(hour -> hour.wet() ? 1 : 0).forEach((day, hours) -> dayBar(canvas, strip, day, hours));
            } else {
                sums.stretches(Hour::wet).forEach(wet -> canvas.fill(across(strip, wet, 0), Ink.BLACK));
            }
            frame(canvas, strip);
            if (chart.wetHours() == 0) {
                inside(canvas, strip, "none");
            }
        }

        private void dayBar(Canvas canvas, Rectangle2D strip, LocalDate day, double hours) {
            Rectangle2D whole = across(strip, sums.stretch(day), 0);
            double height = STRIP_PX * Math.min(1, hours / HOURS_A_DAY);
            double gap = whole.getWidth() > 4 ? 0.6 : 0;
            canvas.fill(
                    new Rectangle2D.Double(whole.getX(), whole.getMaxY() - height, whole.getWidth() - gap, height),
                    Ink.BLACK);
        }

        private void doors(Canvas canvas, Rectangle2D strip) {
            Map<LocalDate, Double> hours = sums.hoursByDay(Hour::doorsOpenShare);
            List<Double> open = hours.values().stream()
                    .filter(sum -> sum >= OPEN_HOURS)
                    .sorted()
                    .toList();
            name(canvas, strip, open.isEmpty() ? "doors" : "doors, " + typicalHours(open));
            frame(canvas, strip);
            if (open.isEmpty()) {
                inside(canvas, strip, "shut all the time");
            } else if (chart.timeline().byDay()) {
                hours.forEach((day, sum) -> doorTick(canvas, strip, day, sum));
            } else {
                sums.stretches(hour -> hour.doorsOpenShare() >= 0.5)
                        .forEach(stretch -> canvas.fill(across(strip, stretch, TICK_SHORT_PX), Ink.BLACK));
            }
        }

        private void doorTick(Canvas canvas, Rectangle2D strip, LocalDate day, double hours) {
            if (hours < OPEN_HOURS) {
                return;
            }
            Rectangle2D whole = across(strip, sums.stretch(day), TICK_SHORT_PX);
            double width = Math.min(TICK_PX, 0.45 * whole.getWidth());
            canvas.fill(
                    new Rectangle2D.Double(whole.getCenterX() - width / 2, whole.getY(), width, whole.getHeight()),
                    Ink.BLACK);
        }

        /** Returns the open hours of the middle open day, or both ends when the days differ much. */
        private static String typicalHours(List<Double> sorted) {
            long least = Math.max(1, Math.round(sorted.get(sorted.size() / 10)));
            long most = Math.max(1, Math.round(sorted.get(sorted.size() - 1 - sorted.size() / 10)));
            return least == most ? least + " h" : least + "\u2013" + most + " h";
        }

        private record Plant(String name, String words, Fill fill) {}

        private void plant(Canvas canvas, Rectangle2D strip, Plant plant, List<HourSums.Stretch> on) {
            name(canvas, strip, plant.name());
            if (size == Size.NARROW && !on.isEmpty() && !plant.words().isEmpty()) {
                detail(canvas, strip, plant);
            }
            frame(canvas, strip);
            on.forEach(stretch -> canvas.bar(across(strip, stretch, TICK_SHORT_PX), plant.fill(), Ink.line(1)));
            String since = on.isEmpty()
                    ? "none"
                    : "none until "
                            + DateWords.shortDay(chart.timeline().day(on.get(0).from()));
            double emptyPx = on.isEmpty() ? strip.getWidth() : times.x(on.get(0).from()) - strip.getX();
            if (plain(since).widthPx() + 2 * INSIDE_PX <= emptyPx) {
                inside(canvas, strip, since);
            }
        }

        private void detail(Canvas canvas, Rectangle2D strip, Plant plant) {
            double roomPx = strip.getWidth() - plain(plant.name()).widthPx() - 2 * INSIDE_PX;
            canvas.text(plain(plant.words()).cutTo(roomPx), strip.getMaxX(), nameBaseline(strip), Align.END);
        }

        private void name(Canvas canvas, Rectangle2D strip, String name) {
            if (size == Size.WIDE) {
                canvas.text(plain(name), strip.getX() - 8, middleBaseline(strip), Align.END);
            } else {
                canvas.text(plain(name), strip.getX(), nameBaseline(strip), Align.START);
            }
        }

        private void inside(Canvas canvas, Rectangle2D strip, String text) {
            canvas.text(plain(text), strip.getX() + INSIDE_PX, middleBaseline(strip), Align.START);
        }

        private static double nameBaseline(Rectangle2D strip) {
            return strip.getY() - 5;
        }

        private static double middleBaseline(Rectangle2D strip) {
            return strip.getCenterY() + 5;
        }

        private static void frame(Canvas canvas, Rectangle2D strip) {
            canvas.draw(strip, Ink.line(0.8), Ink.FRAME);
        }

        private Rectangle2D across(Rectangle2D strip, HourSums.Stretch stretch, double insetPx) {
            double left = times.x(stretch.from());
            return new Rectangle2D.Double(
                    left, strip.getY() + insetPx, times.x(stretch.to()) - left, strip.getHeight() - 2 * insetPx);
        }
    }
}
