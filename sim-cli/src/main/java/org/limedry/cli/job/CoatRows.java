package org.limedry.cli.job;

import com.fasterxml.jackson.databind.node.ArrayNode;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.limedry.cli.page.Ascii;
import org.limedry.cli.page.Columns;
import org.limedry.cli.page.CsvSheet;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Figures;
import org.limedry.cli.page.Table;
import org.limedry.simulation.Outcome;
import org.limedry.study.ReadyRange;
import org.limedry.units.Units;

/** The coats of a job as rows: on the console, in the table, in the CSV and in the JSON. */
public final class CoatRows {
    private static final int NAME_COLUMNS = 33;
    private static final int DATE_COLUMNS = 10;

    private static final Columns<Row> START =
            Columns.<Row>of().key("start", row -> row.job().start());

    private static final Columns<Row> FILE = Columns.<Row>of()
            .key("wall", row -> row.result().wall())
            .key("coat", row -> row.result().number())
            .key("gang", row -> row.result().work().map(Outcome.Work::gang))
            .key("workDays", row -> row.result().work().map(Outcome.Work::days))
            .key("couldBegin", row -> row.day(row.result().work().map(Outcome.Work::offered)))
            .key("begun", row -> row.day(row.result().work().map(Outcome.Work::begun)))
            .key("laid", row -> row.day(row.result().laid()))
            .key("readyEarliest", row -> row.inRange(ReadyRange::earliest))
            .key("readyLikely", row -> row.day(row.result().ready()))
            .key("readyLatest", row -> row.inRange(ReadyRange::latest))
            .key("waitingDays", row -> waitingDays(row.result()))
            .key("waitedForGangDays", row -> waitedForGangDays(row.result()));

    private record Row(Job job, int coat) {
        Outcome.CoatResult result() {
            return job.coat(coat);
        }

        Optional<LocalDate> day(Optional<Instant> at) {
            return at.map(job::date);
        }

        Optional<LocalDate> inRange(Function<ReadyRange, Optional<Instant>> end) {
            return day(job.range(coat).flatMap(end));
        }
    }

    private CoatRows() {}

    /** Returns the lines for the console, with a heading. */
    public static List<String> lines(Job job) {
        boolean ranged = !job.result().coats().isEmpty();
        List<String> lines = new ArrayList<>();
        lines.add(Ascii.cell("coat", NAME_COLUMNS)
                + cells(ranged ? List.of("laid", "earliest", "LIKELY", "latest") : List.of("laid", "READY"))
                + "wait");
        for (int coat = 0; coat < job.coats(); coat++) {
            List<String> dates = new ArrayList<>();
            dates.add(day(job, job.coat(coat).laid()));
            int at = coat;
            job.range(coat).ifPresent(range -> dates.add(day(job, range.earliest())));
            dates.add(day(job, job.coat(at).ready()));
            job.range(coat).ifPresent(range -> dates.add(day(job, range.latest())));
            lines.add(Ascii.cell(job.name(coat), NAME_COLUMNS) + cells(dates) + waits(job, coat));
        }
        return lines;
    }

    private static String cells(List<String> words) {
        StringBuilder line = new StringBuilder();
        words.forEach(word -> line.append(Ascii.cell(word, DATE_COLUMNS)));
        return line.toString();
    }

    private static String day(Job job, Optional<Instant> instant) {
        Days days = job.days();
        return instant.map(at -> days.brief(job.date(at))).orElse("not yet");
    }

    private static String waits(Job job, int coat) {
        OptionalInt days = waitingDays(job.coat(coat));
        return days.isPresent() ? Figures.count(days.getAsInt(), "day") : "";
    }

    /** Returns the days from laid to ready, rounded. */
    public static OptionalInt waitingDays(Outcome.CoatResult coat) {
        return days(coat.laid(), coat.ready());
    }

    /** Returns the days for which the coat waited for a gang, rounded. */
    public static OptionalInt waitedForGangDays(Outcome.CoatResult coat) {
        return days(coat.work().map(Outcome.Work::offered), coat.work().map(Outcome.Work::begun));
    }

    private static OptionalInt days(Optional<Instant> from, Optional<Instant> to) {
        if (from.isEmpty() || to.isEmpty()) {
            return OptionalInt.empty();
        }
        double seconds = Duration.between(from.get(), to.get()).toMillis() / 1000.0;
        return OptionalInt.of((int) Math.round(Units.daysFromSeconds(seconds)));
    }

    private static List<Row> rows(Job job) {
        return IntStream.range(0, job.coats())
                .mapToObj(coat -> new Row(job, coat))
                .toList();
    }

    /** Returns the table for the page; who lays what is told where there is more than one gang. */
    public static Table table(Job job, String caption) {
        Columns<Row> columns = Columns.<Row>of().words("Coat", row -> job.name(row.coat()));
        if (isByTurns(job)) {
            columns = columns.words(
                    "Gang", row -> row.result().work().map(Outcome.Work::gang).orElse("none yet"));
        }
        boolean ranged = !job.result().coats().isEmpty();
        return columns.number("Work, days", CoatRows::work)
                .words("Laid", row -> cell(job, row.result().laid()))
                .words(ranged ? "Ready: early \u2013 likely \u2013 late" : "Ready, likely", CoatRows::ready)
                .number("Waiting, days", CoatRows::waiting)
                .table(caption, rows(job));
    }

    private static String work(Row row) {
        return row.result().work().map(work -> Figures.oneDecimal(work.days())).orElse("not begun");
    }

    private static String ready(Row row) {
        return row.job()
                .range(row.coat())
                .map(range -> Stream.of(range.earliest(), range.likely(), range.latest())
                        .map(at -> cell(row.job(), at))
                        .collect(Collectors.joining(" \u2013 ")))
                .orElseGet(() -> cell(row.job(), row.result().ready()));
    }

    private static String waiting(Row row) {
        OptionalInt days = waitingDays(row.result());
        return days.isPresent() ? Figures.whole(days.getAsInt()) : "still waiting";
    }

    private static boolean isByTurns(Job job) {
        return job.site().gangs().size() > 1;
    }

    /** Day and month stay on one line. */
    private static String cell(Job job, Optional<Instant> at) {
        return at.map(known -> job.days().brief(job.date(known)))
                .orElseGet(() -> "not by " + job.days().brief(job.lastDay()))
                .replace(' ', '\u00a0');
    }

    /** Returns the sheet of several jobs. */
    public static CsvSheet sheet(List<Job> jobs) {
        return START.and(FILE)
                .csv(jobs.stream().flatMap(job -> rows(job).stream()).toList());
    }

    /** Returns the coats for a JSON file. */
    public static ArrayNode json(Job job) {
        return FILE.json(rows(job));
    }
}
