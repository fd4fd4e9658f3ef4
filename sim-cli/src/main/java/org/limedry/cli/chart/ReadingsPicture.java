package org.limedry.cli.chart;

import java.awt.BasicStroke;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.limedry.cli.chart.CurveSpots.Side;
import org.limedry.climate.LoggedReading;

/** Lays out the chart of what a logger read: one panel for temperatures, one for humidity, whichever there are. */
final class ReadingsPicture implements Picture {
    private static final int AXIS_TITLE_BASELINE_PX = 14;
    private static final int TITLE_TO_PLOT_PX = 16;
    private static final int BETWEEN_PX = 18;
    private static final int DATES_PX = 32;
    private static final double DOT_PX = 3;

    private final ReadingsChart chart;
    private final Size size;
    private final TimeScale times;
    private final ReadingsLines air;
    private final ReadingsLines surface;
    private final ReadingsLines humidity;
    private final List<Panel> panels = new ArrayList<>();

    ReadingsPicture(ReadingsChart chart, Size size) {
        this.chart = chart;
        this.size = size;
        this.times = new TimeScale(chart.timeline(), size.pick(44, 34), size.pick(670, 348));
        this.air = ReadingsLines.of(chart, LoggedReading::celsius);
        this.surface = ReadingsLines.of(chart, LoggedReading::surfaceCelsius);
        this.humidity = ReadingsLines.of(chart, ReadingsPicture::percent);
        if (!air.isEmpty() || !surface.isEmpty()) {
            addPanel(
                    titleOf(
                            "temperature, degrees C",
                            shownBands().anyMatch(lines -> !lines.bands().isEmpty())),
                    celsius());
        }
        if (!humidity.isEmpty()) {
            addPanel(titleOf("relative humidity, percent", !humidity.bands().isEmpty()), percents());
        }
    }

    /** Two ranges upon each other could not be told apart. */
    private Stream<ReadingsLines> shownBands() {
        return air.isEmpty() || surface.isEmpty() ? Stream.of(air, surface) : Stream.empty();
    }

    private String titleOf(String name, boolean grey) {
        String key = size.pick("; grey: from the lowest to the highest of the day", "; grey: range of day");
        return grey ? name + key : name;
    }

    /** One plot under its axis title. */
    private record Panel(String title, TimePanel plot, int top) {}

    private void addPanel(String title, ValueScale scale) {
        int top = panels.isEmpty() ? 0 : (int) panels.get(0).plot().area().getMaxY() + BETWEEN_PX;
        int plotTop = top + AXIS_TITLE_BASELINE_PX + TITLE_TO_PLOT_PX;
        panels.add(new Panel(title, new TimePanel(times, scale, plotTop, plotTop + size.pick(140, 150)), top));
    }

    private static OptionalDouble percent(LoggedReading reading) {
        OptionalDouble fraction = reading.relativeHumidity();
        return fraction.isEmpty() ? fraction : OptionalDouble.of(100.0 * fraction.getAsDouble());
    }

    private ValueScale celsius() {
        DoubleSummaryStatistics range = Stream.of(air, surface)
                .flatMap(lines -> lines.values().stream())
                .mapToDouble(Double::doubleValue)
                .summaryStatistics();
        return ValueScale.celsius(range.getMin(), range.getMax());
    }

    private ValueScale percents() {
        return ValueScale.percentUpTo100(humidity.values().stream()
                .mapToDouble(Double::doubleValue)
                .min()
                .orElse(0.0));
    }

    @Override
    public double widthPx() {
        return size.widthPx();
    }

    private double bottom() {
        return panels.get(panels.size() - 1).plot().area().getMaxY();
    }

    @Override
    public double heightPx() {
        return bottom() + DATES_PX;
    }

    @Override
    public void draw(Canvas canvas) {
        for (Panel panel : panels) {
            boolean warm = panel.title().startsWith("temperature");
            List<Drawn> drawn = new ArrayList<>();
            if (warm) {
                drawn.addAll(add(panel.plot(), air, Ink.line(2.2)));
                drawn.addAll(add(panel.plot(), surface, Ink.dashed(2, 6f, 4f)));
                shownBands().forEach(lines -> bands(canvas, panel.plot(), lines));
            } else {
                drawn.addAll(add(panel.plot(), humidity, Ink.line(2.2)));
                bands(canvas, panel.plot(), humidity);
            }
            panel.plot().draw(canvas, size);
            dots(canvas, panel.plot(), warm ? List.of(air, surface) : List.of(humidity));
            canvas.text(text(panel.title()), 0, panel.top() + AXIS_TITLE_BASELINE_PX, Align.START);
            if (warm && !air.isEmpty() && !surface.isEmpty()) {
                name(canvas, panel.plot(), drawn);
            }
        }
        TimeTick.draw(canvas, times, bottom(), size);
    }

    private Text text(String words) {
        return Text.plain(words, size.textPx());
    }

    /** A line where it was drawn. */
    private record Drawn(ReadingsLines owner, List<Point2D> points) {}

    private static List<Drawn> add(TimePanel plot, ReadingsLines lines, BasicStroke stroke) {
        return lines.lines().stream()
                .map(line -> new Drawn(lines, plot.addLine(line, stroke)))
                .toList();
    }

    /** The range of each day lies under everything else. */
    private void bands(Canvas canvas, TimePanel plot, ReadingsLines lines) {
        for (List<ReadingsLines.Band> band : lines.bands()) {
            Path2D area = new Path2D.Double();
            Point2D first =
                    plot.place(new TimedValue(band.get(0).at(), band.get(0).high()));
            area.moveTo(first.getX(), first.getY());
            band.stream()
                    .map(day -> plot.place(new TimedValue(day.at(), day.high())))
                    .forEach(point -> area.lineTo(point.getX(), point.getY()));
            for (int i = band.size() - 1; i >= 0; i--) {
                Point2D low =
                        plot.place(new TimedValue(band.get(i).at(), band.get(i).low()));
                area.lineTo(low.getX(), low.getY());
            }
            area.closePath();
            canvas.fill(area, Ink.TINT);
        }
    }

    /** A reading between two gaps has no line. */
    private void dots(Canvas canvas, TimePanel plot, List<ReadingsLines> all) {
        all.stream()
                .flatMap(lines -> lines.lines().stream())
                .filter(line -> line.size() == 1)
                .map(line -> plot.place(line.get(0)))
                .forEach(point -> canvas.fill(
                        new Ellipse2D.Double(point.getX() - DOT_PX / 2, point.getY() - DOT_PX / 2, DOT_PX, DOT_PX),
                        Ink.BLACK));
    }

    private void name(Canvas canvas, TimePanel plot, List<Drawn> drawn) {
        Rectangle2D area = plot.area();
        LabelPlacer placer = new LabelPlacer(canvas, area);
        drawn.stream()
                .filter(line -> line.points().size() > 1)
                .forEach(line -> placer.avoid(line.owner(), TimePanel.pieces(line.points())));
        longest(drawn, air).ifPresent(line -> placer.place(label(line, "air", Side.ABOVE)));
        longest(drawn, surface).ifPresent(line -> placer.place(label(line, "wall", Side.BELOW)));
    }

    private static Optional<Drawn> longest(List<Drawn> drawn, ReadingsLines owner) {
        return drawn.stream()
                .filter(line -> line.owner().equals(owner))
                .max((a, b) -> Integer.compare(a.points().size(), b.points().size()));
    }

    private Label label(Drawn line, String words, Side first) {
        CurveSpots spots = new CurveSpots(
                line.points(), first == Side.ABOVE ? List.of(Side.ABOVE, Side.BELOW) : List.of(Side.BELOW, Side.ABOVE));
        return new Label(
                line.owner(),
                List.of(Paragraph.of(Text.bold(words, size.textPx()))),
                spots::of,
                spots.anchors(),
                Ink.PAPER);
    }

    @Override
    public String story() {
        Timeline timeline = chart.timeline();
        return String.format(
                Locale.ROOT,
                "What a logger read, %s to %s, %s.%s%s%s Gaps are left open.",
                DateWords.longDayWithYear(timeline.firstDay()),
                DateWords.longDayWithYear(timeline.lastDay()),
                timeline.byDay()
                        ? "means of each day over a grey band from its lowest to its highest"
                        : "every reading",
                range(" The air stands between %.1f and %.1f degrees C.", air),
                range(" The wall stands between %.1f and %.1f degrees C.", surface),
                range(" The humidity stands between %.0f and %.0f percent.", humidity));
    }

    private static String range(String sentence, ReadingsLines lines) {
        DoubleSummaryStatistics range =
                lines.values().stream().mapToDouble(Double::doubleValue).summaryStatistics();
        return lines.isEmpty() ? "" : String.format(Locale.ROOT, sentence, range.getMin(), range.getMax());
    }
}
