package org.limedry.cli.loggers;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.limedry.cli.readings.logger.ClockWords;
import org.limedry.cli.readings.logger.Found;
import org.limedry.cli.readings.logger.LoggerFile;
import org.limedry.cli.readings.logger.Said;
import org.limedry.cli.readings.logger.Spans;
import org.limedry.climate.LoggedReading;
import org.limedry.climate.Readings;

/** A logger file told on the console: how it was understood, what was found in it, what it comes to. */
final class ReadingsWords {
    private static final int MOST_SHOWN = 3;
    private static final int MOST_LINES = 12;
    private static final int COLUMNS = 110;

    private final List<String> lines = new ArrayList<>();

    private ReadingsWords() {}

    static List<String> of(LoggerFile file) {
        ReadingsWords words = new ReadingsWords();
        ClockWords clock = new ClockWords(file.zone());
        words.lines.add(file.shown());
        words.addUnderstood(file, clock);
        words.addFound(file);
        words.addSummary(file.readings(), clock);
        return words.lines;
    }

    /** Returns the summary alone. */
    static List<String> summary(Readings readings, ClockWords clock) {
        ReadingsWords words = new ReadingsWords();
        words.addSummary(readings, clock);
        return words.lines;
    }

    private void say(String pattern, Object... values) {
        String line = String.format(Locale.ROOT, pattern, values)
                .replace('\t', ' ')
                .replaceAll("\\p{Cntrl}", "?")
                .stripTrailing();
        lines.add(line.length() > COLUMNS ? line.substring(0, COLUMNS - 3) + "..." : line);
    }

    private void addUnderstood(LoggerFile file, ClockWords clock) {
        say("How it was read");
        for (Said said : file.said()) {
            say("  %-16s %s", said.what(), said.words());
        }
        say("First readings as understood");
        file.firstLines()
                .forEach(line -> say(
                        "  line %-5d %s  %s",
                        line.number(), clock.inFull(line.reading().at()), figures(line.reading())));
    }

    private static String figures(LoggedReading reading) {
        return cell(reading.celsius(), 1.0, " C")
                + cell(reading.relativeHumidity(), 100.0, " %")
                + cell(reading.surfaceCelsius(), 1.0, " C wall")
                + cell(reading.windMPerS(), 1.0, " m/s");
    }

    private static String cell(OptionalDouble value, double scale, String unit) {
        return value.isEmpty() ? "" : String.format(Locale.ROOT, "%8.1f%s", value.getAsDouble() * scale, unit);
    }

    private void addFound(LoggerFile file) {
        if (file.found().isEmpty()) {
            say("Found nothing wrong");
            return;
        }
        say("Found, and what was done");
        Map<Found.Kind, List<Found>> kinds =
                file.found().stream().collect(Collectors.groupingBy(Found::kind, TreeMap::new, Collectors.toList()));
        kinds.forEach((kind, all) -> {
            say("  %d x %s", all.size(), kind.words());
            all.stream().limit(MOST_SHOWN).forEach(one -> say("      %s: %s", place(one), one.words()));
            if (all.size() > MOST_SHOWN) {
                say("      and %d more: %s", all.size() - MOST_SHOWN, places(all.subList(MOST_SHOWN, all.size())));
            }
        });
    }

    private static String place(Found one) {
        return one.line() == one.lastLine() ? "line " + one.line() : "lines " + one.line() + "-" + one.lastLine();
    }

    private static String places(List<Found> all) {
        String some = all.stream()
                .limit(MOST_LINES)
                .map(ReadingsWords::place)
                .map(place -> place.replaceFirst("lines? ", ""))
                .collect(Collectors.joining(", "));
        return (all.size() == 1 ? "line " : "lines ") + some + (all.size() > MOST_LINES ? ", ..." : "");
    }

    private void addSummary(Readings readings, ClockWords clock) {
        int count = readings.all().size();
        say("Summary: %,d %s", count, count == 1 ? "reading" : "readings");
        say("  from %s", clock.inFull(readings.from()));
        say("  until %s, most of them %s apart", clock.inFull(readings.until()), Spans.words(readings.interval()));
        say("  %-14s %8s %8s %8s", "", "lowest", "mean", "highest");
        row("temperature", readings, LoggedReading::celsius, 1.0, "C");
        row("humidity", readings, LoggedReading::relativeHumidity, 100.0, "%");
        row("wall surface", readings, LoggedReading::surfaceCelsius, 1.0, "C");
        row("wind", readings, LoggedReading::windMPerS, 1.0, "m/s");
    }

    private void row(
            String name, Readings readings, Function<LoggedReading, OptionalDouble> of, double scale, String unit) {
        DoubleSummaryStatistics all = readings.all().stream()
                .flatMapToDouble(reading -> of.apply(reading).stream())
                .map(value -> value * scale)
                .summaryStatistics();
        if (all.getCount() > 0) {
            String fewer = all.getCount() == readings.all().size() ? "" : ", read " + all.getCount() + " times";
            say("  %-14s %8.1f %8.1f %8.1f %s%s", name, all.getMin(), all.getAverage(), all.getMax(), unit, fewer);
        }
    }
}
