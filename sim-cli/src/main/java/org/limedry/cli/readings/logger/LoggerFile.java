package org.limedry.cli.readings.logger;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.limedry.cli.problem.InputProblem;
import org.limedry.cli.readings.TextFile;
import org.limedry.climate.LoggedReading;
import org.limedry.climate.Readings;

/** A file that a logger wrote, as it was understood. */
public final class LoggerFile {
    private static final long MOST_BYTES = 100_000_000;
    private static final int LONGEST_LINE = 100_000;
    private static final int FIRST = 3;
    private static final Set<Found.Kind> DOUBTS = Set.of(
            Found.Kind.STUCK,
            Found.Kind.FULL,
            Found.Kind.CONTRADICTION,
            Found.Kind.LONE_JUMP,
            Found.Kind.OUT_OF_RANGE,
            Found.Kind.NO_NUMBER);

    private final String shown;
    private final ReadingPlan plan;
    private final List<Said> said;
    private final List<Found> found;
    private final List<Ordered> rows;
    private final List<Unused> unused;
    private final boolean clockTaken;
    private final Readings readings;

    private LoggerFile(String shown, Proposal.Clear clear, List<Found> found, List<Ordered> rows) {
        this.shown = shown;
        this.plan = clear.plan();
        this.said = List.copyOf(clear.said());
        this.found = List.copyOf(found);
        this.rows = List.copyOf(rows);
        this.unused = List.copyOf(clear.unused());
        this.clockTaken = clear.clockTaken();
        this.readings = new Readings(rows.stream().map(Ordered::reading).toList());
    }

    /** What became of a file. */
    public sealed interface Result {}

    /** It was read. */
    public record Good(LoggerFile file) implements Result {}

    /** It was not; at least one problem. */
    public record Bad(List<InputProblem> problems) implements Result {
        public Bad {
            problems = List.copyOf(problems);
        }
    }

    /**
     * Reads a file.
     *
     * @param file the file, named as the user named it
     * @param asked what the user said about it
     * @param fallback clock of the logger where neither the user nor the file says it
     */
    public static Result read(Path file, Asked asked, ZoneId fallback) {
        return read(file, file.toString(), asked, fallback);
    }

    /**
     * Reads a file.
     *
     * @param shown the file as the user named it
     * @param asked what the user said about it
     * @param fallback clock of the logger where neither the user nor the file says it
     */
    public static Result read(Path file, String shown, Asked asked, ZoneId fallback) {
        TextFile.Content content = TextFile.readOfAnyEncoding(file, shown, MOST_BYTES);
        if (content instanceof TextFile.Unreadable unreadable) {
            return new Bad(List.of(unreadable.problem()));
        }
        return parse(((TextFile.Text) content).text(), shown, asked, fallback);
    }

    /** Reads the text of a file. */
    static Result parse(String text, String shown, Asked asked, ZoneId fallback) {
        Lines lines = Lines.of(text);
        if (lines.longest() > LONGEST_LINE) {
            return new Bad(List.of(new InputProblem(
                    shown,
                    0,
                    "",
                    "must be at most " + LONGEST_LINE + " letters a line: one line a reading",
                    "a line of " + lines.longest() + " letters")));
        }
        Proposal.Result proposal = Proposal.of(lines, shown, asked, fallback);
        if (proposal instanceof Proposal.Unclear unclear) {
            return new Bad(unclear.problems());
        }
        Proposal.Clear clear = (Proposal.Clear) proposal;
        List<Found> found = new ArrayList<>();
        List<Figures> figures = clear.walk().figures(clear.plan().clock().order(), lines, found);
        ClockWords clock = new ClockWords(clear.plan().clock().zone());
        List<Ordered> rows =
                StrayClock.without(Ordered.of(Moments.of(figures, clock.zone(), found), clock, found), clock, found);
        if (rows.isEmpty()) {
            return new Bad(List.of(new InputProblem(
                    shown, 0, "", "must have lines with a time and a figure", "no line of it can be read")));
        }
        Suspects.find(rows, clock, found);
        found.sort(Comparator.comparing(Found::kind).thenComparing(Found::line));
        return new Good(new LoggerFile(shown, clear, found, rows));
    }

    /** Returns the file as the user named it. */
    public String shown() {
        return shown;
    }

    /** Returns the clock of the logger. */
    public ZoneId zone() {
        return plan.clock().zone();
    }

    /** Returns whether times were taken by the usual clock, since neither the file nor the user says one. */
    public boolean isClockTaken() {
        return clockTaken;
    }

    /** Returns the columns with figures that were taken for nothing. */
    public List<Unused> unused() {
        return unused;
    }

    /** Returns how the file was understood. */
    public List<Said> said() {
        return said;
    }

    /** Returns everything that is not as it should be, kind by kind. */
    public List<Found> found() {
        return found;
    }

    /** Returns the readings. */
    public Readings readings() {
        return readings;
    }

    /** Returns the readings without the figures of a sensor that stood still, which say nothing of the air; if any are left. */
    public Optional<Readings> believable() {
        List<LoggedReading> moving = Suspects.withoutStuck(readings.all());
        List<LoggedReading> kept =
                moving.stream().filter(reading -> !reading.isBlank()).toList();
        return kept.isEmpty() ? Optional.empty() : Optional.of(new Readings(kept));
    }

    /** Returns what is readable and yet hard to believe: each kind in a sentence, with its first line. */
    public List<String> doubts() {
        Map<Found.Kind, List<Found>> byKind = found.stream()
                .filter(one -> DOUBTS.contains(one.kind()))
                .collect(Collectors.groupingBy(Found::kind, TreeMap::new, Collectors.toList()));
        return byKind.entrySet().stream()
                .map(kind -> (kind.getValue().size() == 1 ? "" : kind.getValue().size() + " times, first ")
                        + "line " + kind.getValue().get(0).line() + ", "
                        + kind.getValue().get(0).words() + ": " + kind.getKey().words())
                .toList();
    }

    /** A reading with its line. */
    public record Line(int number, LoggedReading reading) {}

    /** Returns the first readings in the order of the file, for the user to compare. */
    public List<Line> firstLines() {
        return rows.stream()
                .sorted(Comparator.comparing(Ordered::line))
                .limit(FIRST)
                .map(row -> new Line(row.line(), row.reading()))
                .toList();
    }

    /** Returns what the plan adds to each temperature, K. */
    public double temperatureOffsetK() {
        return plan.offsets().temperatureK();
    }

    /** Returns what the plan adds to each humidity, percent. */
    public double humidityOffsetPercent() {
        return plan.offsets().humidityPercent();
    }

    ReadingPlan plan() {
        return plan;
    }
}
