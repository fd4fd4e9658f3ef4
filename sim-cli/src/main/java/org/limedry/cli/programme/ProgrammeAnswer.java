package org.limedry.cli.programme;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.limedry.cli.chart.ProgrammeChart;
import org.limedry.cli.job.Bars;
import org.limedry.cli.job.CoatRows;
import org.limedry.cli.job.Job;
import org.limedry.cli.job.JobCare;
import org.limedry.cli.job.JobColumns;
import org.limedry.cli.job.WeekWords;
import org.limedry.cli.page.Block;
import org.limedry.cli.page.Bundle;
import org.limedry.cli.page.Columns;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Figures;
import org.limedry.cli.page.JsonText;
import org.limedry.cli.page.Names;
import org.limedry.cli.page.Page;
import org.limedry.cli.page.Table;
import org.limedry.cli.site.GangPlan;
import org.limedry.study.job.GangTime;
import org.limedry.study.job.NextDoor;

/**
 * The answer to: how long does the job take, who works when, and what is everybody waiting for.
 *
 * @param job the job
 * @param neighbours what its rooms do to each other
 * @param foot what the page rests on
 */
record ProgrammeAnswer(Job job, Neighbours neighbours, Page.Foot foot) {
    private static final int LEAST_FREE_DAYS = 5;
    private static final int MOST_FREE = 3;
    private static final String NAME = "programme";

    /** Returns the lines for the console. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(job.site().name() + ": programme from " + Days.full(job.start()));
        lines.add(headline() + ".");
        lines.add(sharesOfTime());
        lines.addAll(CoatRows.lines(job));
        lines.add(
                job.weeks().ranged()
                        ? "  1 in 5 before earliest, 1 in 5 after latest. A hand test overrules."
                        : "  Likely dates only; --ranges for earliest and latest. A hand test overrules.");
        lines.addAll(gangs());
        lines.addAll(neighbours.sentences(job));
        return JobCare.of(List.of(job)).around(lines);
    }

    private String headline() {
        return job.result()
                .jobReady()
                .map(ready ->
                        "Ready in " + WeekWords.range(job) + ": " + job.days().text(job.date(ready)))
                .orElseGet(() -> "Not ready by " + Days.full(job.lastDay()) + ", the end of the run");
    }

    private String sharesOfTime() {
        String most = longestWait().isPresent()
                ? ", longest for the " + job.name(longestWait().getAsInt()) + " ("
                        + Figures.count(
                                CoatRows.waitingDays(job.coat(longestWait().getAsInt()))
                                        .orElse(0),
                                "day") + ")"
                : "";
        return Names.capital(job.workWords()) + "; the rest is waiting" + most + ".";
    }

    private OptionalInt longestWait() {
        return IntStream.range(0, job.coats())
                .filter(coat -> CoatRows.waitingDays(job.coat(coat)).isPresent())
                .boxed()
                .max(Comparator.comparing(
                        coat -> CoatRows.waitingDays(job.coat(coat)).orElse(0)))
                .map(OptionalInt::of)
                .orElseGet(OptionalInt::empty);
    }

    private List<GangTime> gangTimes() {
        return GangTime.of(job.result().likely(), job.site().zone(), LEAST_FREE_DAYS);
    }

    /** Returns a sentence for each gang: its days, and when it is free to work elsewhere. */
    private List<String> gangs() {
        List<String> lines = new ArrayList<>();
        for (GangTime time : gangTimes()) {
            String free = time.free().stream()
                    .limit(MOST_FREE)
                    .map(stretch -> day(stretch.first()) + " to " + day(stretch.last()))
                    .collect(Collectors.joining(", "));
            lines.add("The " + time.gang() + ": " + Figures.count(time.daysOnSite(), "day") + " on site"
                    + (free.isEmpty() ? "." : "; free to work elsewhere " + free + "."));
        }
        int waited = IntStream.range(0, job.coats())
                .map(coat -> CoatRows.waitedForGangDays(job.coat(coat)).orElse(0))
                .sum();
        if (waited > 0) {
            lines.add("Coats that were ready waited " + Figures.count(waited, "day") + " in all for a gang.");
        }
        return lines;
    }

    private String day(LocalDate day) {
        return job.days().brief(day.plusDays(job.site().movedDays()));
    }

    /** Returns whether the likely run saw every coat ready. */
    boolean complete() {
        return job.result().jobReady().isPresent();
    }

    /** Returns the files. */
    Bundle files() {
        ProgrammeChart chart = chart();
        return new Bundle()
                .page(NAME, page(chart))
                .chart(NAME, chart)
                .csv(NAME, CoatRows.sheet(List.of(job)))
                .json(NAME, json());
    }

    private ProgrammeChart chart() {
        String title = complete()
                ? Names.capital(job.workWords()) + " in " + WeekWords.likely(job) + "; the rest is waiting"
                : "Not all of it is ready by " + job.days().brief(job.lastDay());
        String heading = "Start " + job.days().textWithoutWeekday(job.start()) + ": ready in " + WeekWords.range(job);
        return new ProgrammeChart(NAME, title, List.of(Bars.of(job, heading)), job.runWeeks());
    }

    private Page page(ProgrammeChart chart) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Words(sharesOfTime(), Block.Weight.STRONG));
        String note = "Black: the gang is at it. Striped: waiting until it is ready. "
                + (job.weeks().ranged()
                        ? "Dashed: one chance in five it is earlier, one in five later. Thick tick and date: likely."
                        : "Thick tick and date: likely; no range was asked for.");
        blocks.add(new Block.Figure(chart, note));
        List<String> says = new ArrayList<>(gangs());
        says.addAll(neighbours.sentences(job));
        blocks.add(new Block.Lines("While it dries", false, says));
        blocks.add(new Block.Figures(CoatRows.table(job, "Each coat: work and waiting")));
        blocks.add(new Block.Figures(gangTable()));
        blocks.add(new Block.Cautions(JobCare.of(List.of(job))));
        return new Page(
                new Page.Head(
                        job.site().name(),
                        "programme from " + Days.full(job.start()),
                        job.site().isInvented(),
                        headline()),
                blocks,
                foot);
    }

    private Table gangTable() {
        return Columns.<GangPlan>of()
                .words("Gang", GangPlan::name)
                .number("People", gang -> Figures.whole(gang.people()))
                .number("One coat, m\u00b2 a day", gang -> Figures.plain(gang.m2PerDay()))
                .words("From", gang -> gang.outputGiven() ? "you" : "common practice, no source")
                .table("Gangs", job.site().gangs());
    }

    private ObjectNode json() {
        ObjectNode root = JsonText.object()
                .put("site", job.site().name())
                .put("start", job.start().toString())
                .put("runEnds", job.lastDay().toString());
        root.setAll(JobColumns.weeks().json(job));
        JsonText.putCautions(root, JobCare.of(List.of(job)));
        root.set("coats", CoatRows.json(job));
        ArrayNode next = root.putArray("nextDoor");
        neighbours.alone().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .flatMap(entry -> NextDoor.delays(job.result().likely(), entry.getValue()).stream())
                .forEach(delay -> next.addObject()
                        .put("wall", delay.wall())
                        .put("coat", delay.coat())
                        .put("longerForPlasterNextDoorDays", delay.days()));
        return root;
    }
}
