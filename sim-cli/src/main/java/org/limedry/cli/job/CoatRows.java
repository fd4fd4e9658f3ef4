package org.limedry.cli.job;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.limedry.cli.page.Ascii;
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

    /** Returns the table for the page; who lays what is told where there is more than one gang. */
    public static Table table(Job job, String caption) {
        List<Table.Column> columns = new ArrayList<>();
        columns.add(Table.Column.words("Coat"));
        if (isByTurns(job)) {
            columns.add(Table.Column.words("Gang"));
        }
        columns.add(Table.Column.number("Work, days"));
        columns.add(Table.Column.words("Laid"));
        boolean ranged = !job.result().coats().isEmpty();
        columns.add(Table.Column.words(ranged ? "Ready: early \u2013 likely \u2013 late" : "Ready, likely"));
        columns.add(Table.Column.number("Waiting, days"));
        return new Table(
                caption,
                columns,
                IntStream.range(0, job.coats()).mapToObj(coat -> row(job, coat)).toList());
    }

    private static boolean isByTurns(Job job) {
        return job.site().gangs().size() > 1;
    }

    private static List<String> row(Job job, int coat) {
        Outcome.CoatResult found = job.coat(coat);
        List<String> row = new ArrayList<>();
        row.add(job.name(coat));
        if (isByTurns(job)) {
            row.add(found.work().map(Outcome.Work::gang).orElse("none yet"));
        }
        row.add(found.work().map(work -> Figures.oneDecimal(work.days())).orElse("not begun"));
        row.add(cell(job, found.laid()));
        row.add(job.range(coat)
                .map(range -> Stream.of(range.earliest(), range.likely(), range.latest())
                        .map(at -> cell(job, at))
                        .collect(Collectors.joining(" \u2013 ")))
                .orElseGet(() -> cell(job, found.ready())));
        OptionalInt waiting = waitingDays(found);
        row.add(waiting.isPresent() ? Figures.whole(waiting.getAsInt()) : "still waiting");
        return row;
    }

    /** Day and month stay on one line. */
    private static String cell(Job job, Optional<Instant> at) {
        return at.map(known -> job.days().brief(job.date(known)))
                .orElseGet(() -> "not by " + job.days().brief(job.lastDay()))
                .replace(' ', '\u00a0');
    }

    /** Returns the sheet of several jobs. */
    public static CsvSheet sheet(List<Job> jobs) {
        List<List<?>> rows = new ArrayList<>();
        for (Job job : jobs) {
            for (int coat = 0; coat < job.coats(); coat++) {
                rows.add(cells(job, coat));
            }
        }
        return new CsvSheet(
                List.of(
                        "start",
                        "wall",
                        "coat",
                        "gang",
                        "workDays",
                        "couldBegin",
                        "begun",
                        "laid",
                        "readyEarliest",
                        "readyLikely",
                        "readyLatest",
                        "waitingDays",
                        "waitedForGangDays"),
                rows);
    }

    private static List<?> cells(Job job, int coat) {
        Outcome.CoatResult found = job.coat(coat);
        Optional<ReadyRange> range = job.range(coat);
        Function<Optional<Instant>, Optional<String>> day =
                at -> at.map(known -> job.date(known).toString());
        return List.of(
                job.start().toString(),
                found.wall(),
                found.number(),
                found.work().map(Outcome.Work::gang),
                found.work().map(Outcome.Work::days),
                day.apply(found.work().map(Outcome.Work::offered)),
                day.apply(found.work().map(Outcome.Work::begun)),
                day.apply(found.laid()),
                day.apply(range.flatMap(ReadyRange::earliest)),
                day.apply(found.ready()),
                day.apply(range.flatMap(ReadyRange::latest)),
                boxed(waitingDays(found)),
                boxed(waitedForGangDays(found)));
    }

    private static Optional<Integer> boxed(OptionalInt value) {
        return value.isPresent() ? Optional.of(value.getAsInt()) : Optional.empty();
    }

    /** Returns the coats for a JSON file: a date past the runs is null. */
    public static ArrayNode json(Job job) {
        ArrayNode coats = JsonNodeFactory.instance.arrayNode();
        for (int coat = 0; coat < job.coats(); coat++) {
            Outcome.CoatResult found = job.coat(coat);
            ObjectNode node = coats.addObject().put("wall", found.wall()).put("coat", found.number());
            found.work().ifPresent(work -> node.put("gang", work.gang()).put("workDays", work.days()));
            put(node, "begun", job, found.work().map(Outcome.Work::begun));
            put(node, "laid", job, found.laid());
            ObjectNode ready = node.putObject("ready");
            job.range(coat).ifPresent(range -> put(ready, "earliest", job, range.earliest()));
            put(ready, "likely", job, found.ready());
            job.range(coat).ifPresent(range -> put(ready, "latest", job, range.latest()));
        }
        return coats;
    }

    private static void put(ObjectNode node, String key, Job job, Optional<Instant> at) {
        at.ifPresentOrElse(known -> node.put(key, job.date(known).toString()), () -> node.putNull(key));
    }
}
