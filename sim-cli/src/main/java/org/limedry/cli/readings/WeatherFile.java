package org.limedry.cli.readings;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.limedry.cli.problem.InputProblem;
import org.limedry.climate.WeatherReading;
import org.limedry.climate.WeatherRecord;

/**
 * An hourly weather file of the user's own: CSV with the columns {@code timeUtc,celsius,rhPercent} and, if known, {@code
 * windMPerS}; a blank cell is a reading that is missing.
 */
public final class WeatherFile {
    private static final long MOST_BYTES = 50_000_000;
    private static final int MOST_PROBLEMS = 20;
    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("d MMM uuuu HH:mm", Locale.UK);

    private final String shown;
    private final String path;
    private final ZoneId zone;
    private final List<InputProblem> problems = new ArrayList<>();

    private WeatherFile(String shown, String path, ZoneId zone) {
        this.shown = shown;
        this.path = path;
        this.zone = zone;
    }

    /** What became of a file. */
    public sealed interface Result {}

    /** It serves. */
    public record Good(WeatherRecord.Sound weather) implements Result {}

    /** It does not; at least one problem. */
    public record Bad(List<InputProblem> problems) implements Result {
        public Bad {
            problems = List.copyOf(problems);
        }
    }

    /**
     * Reads a file.
     *
     * @param file the file
     * @param shown the file as the user named it
     * @param path field of the site file that names it
     * @param zone clock by which gaps are told
     */
    public static Result read(Path file, String shown, String path, ZoneId zone) {
        TextFile.Content content = TextFile.read(file, shown, path, MOST_BYTES);
        if (content instanceof TextFile.Unreadable unreadable) {
            return new Bad(List.of(unreadable.problem()));
        }
        return new WeatherFile(shown, path, zone).check(((TextFile.Text) content).text());
    }

    private Result check(String text) {
        List<WeatherRow> rows = WeatherTable.parse(text, this::problem);
        checkTimes(rows);
        if (problems.isEmpty()) {
            checkGaps(rows);
        }
        if (!problems.isEmpty()) {
            return new Bad(shortened());
        }
        List<WeatherReading> readings = rows.stream().map(WeatherRow::reading).toList();
        WeatherRecord.Checked checked = WeatherRecord.check(readings);
        if (checked instanceof WeatherRecord.Sound sound) {
            return new Good(sound);
        }
        ((WeatherRecord.Refused) checked).problems().forEach(found -> problem(0, "cannot be used", found));
        return new Bad(shortened());
    }

    private void checkTimes(List<WeatherRow> rows) {
        Instant before = Instant.MIN;
        for (WeatherRow row : rows) {
            Instant time = row.reading().time();
            if (time.getEpochSecond() % Duration.ofHours(1).toSeconds() != 0) {
                problem(row.line(), "timeUtc " + time, "must be a full hour");
            } else if (!time.isAfter(before)) {
                problem(row.line(), "timeUtc " + time, "must be later than the row before, " + before);
            }
            before = time;
        }
    }

    private void checkGaps(List<WeatherRow> rows) {
        Instant before = Instant.MAX;
        for (WeatherRow row : rows) {
            Instant time = row.reading().time();
            if (!row.isComplete()) {
                continue;
            }
            long missing =
                    before.isBefore(time) ? Duration.between(before, time).toHours() - 1 : 0;
            if (missing > WeatherRecord.LONGEST_BRIDGE_HOURS) {
                problem(
                        row.line(),
                        "no readings for " + missing + " hours, " + words(before.plus(Duration.ofHours(1))) + " to "
                                + words(time.minus(Duration.ofHours(1))),
                        "gaps up to " + WeatherRecord.LONGEST_BRIDGE_HOURS
                                + " hours are bridged and counted, longer are refused");
            }
            before = time;
        }
    }

    private String words(Instant instant) {
        return HOUR.format(instant.atZone(zone));
    }

    private void problem(int line, String found, String rule) {
        problems.add(new InputProblem(shown, line, path, rule, found));
    }

    private List<InputProblem> shortened() {
        if (problems.size() <= MOST_PROBLEMS) {
            return problems;
        }
        List<InputProblem> few = new ArrayList<>(problems.subList(0, MOST_PROBLEMS));
        few.add(new InputProblem(
                shown,
                0,
                path,
                "must be put right first",
                "and " + (problems.size() - MOST_PROBLEMS) + " more like these"));
        return few;
    }
}
