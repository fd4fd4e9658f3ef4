package org.limedry.cli.job;

import java.time.Instant;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.limedry.cli.chart.DateWords;
import org.limedry.cli.chart.ProgrammeChart;
import org.limedry.simulation.Outcome;

/** The bars of a job. */
public final class Bars {
    private Bars() {}

    /** Returns the programme of a job under a heading. */
    public static ProgrammeChart.Programme of(Job job, String heading) {
        return new ProgrammeChart.Programme(
                heading,
                IntStream.range(0, job.coats()).mapToObj(coat -> row(job, coat)).toList());
    }

    private static ProgrammeChart.Row row(Job job, int coat) {
        Outcome.CoatResult found = job.coat(coat);
        String lastDay = DateWords.shortDay(job.lastDay());
        String words = found.ready()
                .map(ready -> DateWords.shortDay(job.date(ready)))
                .orElse(found.laid().isPresent() ? "not by " + lastDay : "not laid by " + lastDay);
        return new ProgrammeChart.Row(job.name(coat), work(job, found), job.weeks(coat), words);
    }

    /** Work is drawn from the morning on which it is begun to the end of its last day. */
    private static List<ProgrammeChart.Work> work(Job job, Outcome.CoatResult coat) {
        Optional<Instant> begun =
                coat.work().map(Outcome.Work::begun).filter(at -> coat.laid().isPresent());
        return begun
                .map(at -> new ProgrammeChart.Work(
                        job.weeks(at), job.weeks(endOfDay(job, coat.laid().orElseThrow()))))
                .stream()
                .toList();
    }

    private static Instant endOfDay(Job job, Instant laid) {
        ZonedDateTime local = laid.atZone(job.site().zone());
        return local.truncatedTo(ChronoUnit.DAYS).plusDays(1).toInstant();
    }
}
