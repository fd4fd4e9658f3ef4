package org.limedry.cli.chart;

import java.awt.BasicStroke;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.limedry.cli.chart.Label.Side;
import org.limedry.climate.LoggedReading;

/** Lays out the chart of what a logger read: one panel for temperatures, one for humidity, whichever there are. */
final class ReadingsPicture extends PanelStack {
    private static final double DOT_PX = 3;

    private final ReadingsChart chart;
    private final Lines air;
    private final Lines surface;
    private final Lines humidity;
    private final List<Laid> panels = new ArrayList<>();

    ReadingsPicture(ReadingsChart chart, Size size) {
        super(chart.timeline(), size);
        this.chart = chart;
        this.air = Lines.of(chart, LoggedReading::celsius);
        this.surface = Lines.of(chart, LoggedReading::surfaceCelsius);
        this.humidity = Lines.of(chart, ReadingsPicture::percent);
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
    private Stream<Lines> shownBands() {
        return air.isEmpty() || surface.isEmpty() ? Stream.of(air, surface) : Stream.empty();
    }

    private String titleOf(String name, boolean grey) {
        String key = size.pick("; grey: from the lowest to the highest of the day", "; grey: range of day");
        return grey ? name + key : name;
    }

    /** One plot under its axis title. */
    private record Laid(String title, TimePanel plot) {}

    private void addPanel(String title, ValueScale scale) {
        panels.add(new Laid(title, add(scale, size.pick(140, 150))));
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
    void draw(Canvas canvas) {
        for (Laid panel : panels) {
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
            drawTitle(canvas, panel.plot(), panel.title());
            if (warm && !air.isEmpty() && !surface.isEmpty()) {
                name(canvas, panel.plot(), drawn);
            }
        }
        drawDates(canvas);
    }

    /** A line where it was drawn. */
    private record Drawn(Lines owner, List<Point2D> points) {}

    private static List<Drawn> add(TimePanel plot, Lines lines, BasicStroke stroke) {
        return lines.lines().stream()
                .map(line -> new Drawn(lines, plot.addTimes(line, stroke)))
                .toList();
    }

    /** The range of each day lies under everything else. */
    private void bands(Canvas canvas, TimePanel plot, Lines lines) {
        for (List<Lines.Band> band : lines.bands()) {
            List<Point2D> highs = band.stream()
                    .map(day -> plot.place(new TimedValue(day.at(), day.high())))
                    .toList();
            List<Point2D> lows = band.stream()
                    .map(day -> plot.place(new TimedValue(day.at(), day.low())))
                    .toList();
            canvas.fill(Marks.between(highs, lows), Ink.TINT);
        }
    }

    /** A reading between two gaps has no line. */
    private void dots(Canvas canvas, TimePanel plot, List<Lines> all) {
        all.stream()
                .flatMap(lines -> lines.lines().stream())
                .filter(line -> line.size() == 1)
                .map(line -> plot.place(line.get(0)))
                .forEach(point -> canvas.fill(Marks.disc(point, DOT_PX / 2), Ink.BLACK));
    }

    private void name(Canvas canvas, TimePanel plot, List<Drawn> drawn) {
        Rectangle2D area = plot.area();
        LabelPlacer placer = new LabelPlacer(canvas, area);
        drawn.stream()
                .filter(line -> line.points().size() > 1)
                .forEach(line -> placer.avoid(line.owner(), Panel.pieces(line.points())));
        longest(drawn, air).ifPresent(line -> placer.place(label(line, "air", Side.ABOVE)));
        longest(drawn, surface).ifPresent(line -> placer.place(label(line, "wall", Side.BELOW)));
    }

    private static Optional<Drawn> longest(List<Drawn> drawn, Lines owner) {
        return drawn.stream()
                .filter(line -> line.owner().equals(owner))
                .max((a, b) -> Integer.compare(a.points().size(), b.points().size()));
    }

    private Label label(Drawn line, String words, Side first) {
        return Label.along(line.owner(), List.of(Paragraph.of(bold(words))), line.points(), first);
    }

    @Override
    String story() {
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

    private static String range(String sentence, Lines lines) {
        DoubleSummaryStatistics range =
                lines.values().stream().mapToDouble(Double::doubleValue).summaryStatistics();
        return lines.isEmpty() ? "" : String.format(Locale.ROOT, sentence, range.getMin(), range.getMax());
    }

    /**
     * One thing that a logger read, as lines to draw: a new line begins after each gap.
     *
     * @param lines what was read, or the means of days that have at least half of their readings; none is empty
     * @param bands the lowest and highest of each day, where the lines are means of days; empty otherwise
     */
    private record Lines(List<List<TimedValue>> lines, List<List<Band>> bands) {
        private static final double GAP_INTERVALS = 1.9;
        private static final int HOURS_TO_NOON = 12;

        /** The lowest and the highest of a day. */
        record Band(Instant at, double low, double high) {}

        static Lines of(ReadingsChart chart, Function<LoggedReading, OptionalDouble> of) {
            List<TimedValue> all = new ArrayList<>();
            for (LoggedReading reading : chart.readings().all()) {
                of.apply(reading).ifPresent(value -> all.add(new TimedValue(reading.at(), value)));
            }
            if (!chart.timeline().byDay()) {
                return new Lines(cut(all, chart.readings().interval()), List.of());
            }
            return byDay(all, chart.timeline(), chart.readings().interval());
        }

        private static Lines byDay(List<TimedValue> all, Timeline timeline, Duration interval) {
            Map<LocalDate, List<Double>> days = new TreeMap<>();
            all.forEach(point -> days.computeIfAbsent(timeline.day(point.at()), day -> new ArrayList<>())
                    .add(point.value()));
            // The mean of a morning is not that of a day.
            days.values()
                    .removeIf(values -> values.size() * interval.toSeconds() * 2
                            < Duration.ofDays(1).toSeconds());
            List<TimedValue> means = new ArrayList<>();
            List<Band> bands = new ArrayList<>();
            days.forEach((day, values) -> {
                Instant noon = timeline.clamp(timeline.startOf(day).plus(Duration.ofHours(HOURS_TO_NOON)));
                var statistics =
                        values.stream().mapToDouble(Double::doubleValue).summaryStatistics();
                means.add(new TimedValue(noon, statistics.getAverage()));
                bands.add(new Band(noon, statistics.getMin(), statistics.getMax()));
            });
            List<List<TimedValue>> lines = cut(means, Duration.ofDays(1));
            List<List<Band>> cutBands = new ArrayList<>();
            int from = 0;
            for (List<TimedValue> line : lines) {
                cutBands.add(List.copyOf(bands.subList(from, from + line.size())));
                from += line.size();
            }
            return new Lines(lines, cutBands);
        }

        private static List<List<TimedValue>> cut(List<TimedValue> points, Duration interval) {
            List<List<TimedValue>> lines = new ArrayList<>();
            for (int i = 0; i < points.size(); i++) {
                boolean gap = i > 0
                        && Duration.between(
                                                points.get(i - 1).at(),
                                                points.get(i).at())
                                        .toSeconds()
                                > GAP_INTERVALS * interval.toSeconds();
                if (i == 0 || gap) {
                    lines.add(new ArrayList<>());
                }
                lines.get(lines.size() - 1).add(points.get(i));
            }
            return lines;
        }

        boolean isEmpty() {
            return lines.isEmpty();
        }

        /** Returns all values that will be drawn. */
        List<Double> values() {
            List<Double> values = new ArrayList<>();
            lines.forEach(line -> line.forEach(point -> values.add(point.value())));
            bands.forEach(band -> band.forEach(day -> {
                values.add(day.low());
                values.add(day.high());
            }));
            return values;
        }
    }
}
