package org.limedry.cli.chart;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.limedry.cli.chart.AiringChart.Line;
import org.limedry.cli.chart.AiringChart.Point;
import org.limedry.cli.chart.AiringChart.Spot;

/** What an airing chart tells, in sentences. */
record AiringStory(AiringChart chart) {
    String words() {
        String lines = chart.lines().stream().map(this::line).collect(Collectors.joining(" "));
        String nothing = chart.marks().nothingUntil().isPresent()
                ? String.format(
                        Locale.ROOT,
                        " Below %.0f cubic metres an hour nothing changes.",
                        chart.marks().nothingUntil().getAsDouble())
                : "";
        return "Across: fresh air in cubic metres an hour. Up: " + chart.waited() + ". " + lines + nothing
                + chart.marks().tooFast().map(AiringStory::spot).orElse("")
                + chart.marks().slower().map(AiringStory::spot).orElse("")
                + chart.marks().doThis().map(AiringStory::spot).orElse("");
    }

    private String line(Line line) {
        return line.points().stream().map(this::point).collect(Collectors.joining(", ", line.name() + ": ", "."));
    }

    private String point(Point point) {
        String range = point.earliest().isPresent() || point.latest().isPresent()
                ? " (" + weeks(point.earliest()) + " to " + weeks(point.latest()) + ")"
                : "";
        return String.format(Locale.ROOT, "%s at %.0f", weeks(point.weeks()) + range, point.m3PerHour());
    }

    private String weeks(OptionalDouble weeks) {
        return weeks.isPresent()
                ? String.format(Locale.ROOT, "%.1f weeks", weeks.getAsDouble())
                : String.format(Locale.ROOT, "not in %.0f weeks", Math.floor(chart.horizonWeeks()));
    }

    private static String spot(Spot spot) {
        return String.format(Locale.ROOT, " At %.0f: %s.", spot.m3PerHour(), spot.words());
    }
}
