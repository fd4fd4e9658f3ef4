package org.limedry.cli.delay;

import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Names;
import org.limedry.cli.site.PlannedJob;
import org.limedry.cli.site.PlannedJob.Cause;
import org.limedry.cli.site.Site;
import org.limedry.study.Draw;
import org.limedry.study.EnsembleResult;
import org.limedry.study.MemberQuantile;
import org.limedry.study.delay.Delay;
import org.limedry.study.delay.RoomDays;
import org.limedry.study.delay.Shares;

/**
 * What there is to tell of a delay: the two sides, and the days between them by cause.
 *
 * @param runs the runs behind it
 * @param delay the days, exactly
 * @param planned the side that was planned
 * @param actual the side that happened, by the record
 * @param days days between the two ready dates by the calendar
 * @param causes their shares, largest first; what the record says beyond the runs comes last
 * @param facts what each side was like
 * @param ready ready date of each run that shares out the delay
 * @param totalRange one-in-five and four-in-five of the whole delay, if members were run
 */
public record DelayStory(
        DelayRuns runs,
        Delay delay,
        JobSide planned,
        JobSide actual,
        long days,
        List<Told> causes,
        DelayFacts facts,
        List<Optional<Instant>> ready,
        Optional<Range> totalRange) {
    private static final double LEAST_OTHER_DAYS = 0.05;

    public DelayStory {
        causes = List.copyOf(causes);
        ready = List.copyOf(ready);
    }

    /**
     * A share of the delay.
     *
     * @param cause the cause; empty for what the record says beyond the runs
     * @param words what happened
     * @param days its days, exactly
     * @param shown its days as printed; all add up to the days of the calendar
     * @param soonerDays days gained had this cause alone gone as planned; 0 for the rest
     * @param range one-in-five and four-in-five, if members were run
     */
    public record Told(
            Optional<Cause> cause, String words, double days, long shown, double soonerDays, Optional<Range> range) {}

    /**
     * Two ends of a range of days.
     *
     * @param low one member in five is lower
     * @param high one in five is higher
     */
    public record Range(double low, double high) {}

    /** Returns the story of a wall. */
    public static DelayStory of(DelayRuns runs, List<EnsembleResult> results, String wall) {
        PlannedJob job = runs.job();
        String room = job.roomOf(wall);
        Site asPlanned = job.site(runs.happened(0));
        JobSide planned = side(asPlanned, results.get(0), wall, room);
        JobSide actual = side(runs.site(), runs.recorded(results), wall, room);
        Delay delay = runs.delay(results, wall);
        DelayFacts facts = DelayFacts.of(runs, planned, actual);
        long days = ChronoUnit.DAYS.between(day(planned), day(actual));
        List<Delay> members = members(runs, results, wall);
        return new DelayStory(
                runs,
                delay,
                planned,
                actual,
                days,
                told(runs, delay, days, facts, members),
                facts,
                results.subList(0, runs.sets()).stream()
                        .map(result -> JobSide.ready(result.likely().coats(), wall))
                        .toList(),
                range(members.stream().map(Delay::totalDays).toList()));
    }

    private static JobSide side(Site site, EnsembleResult result, String wall, String room) {
        return new JobSide(site, site.scenario(Draw.likely()), result.likely(), wall, room);
    }

    /** Returns the day of ready, or the last day of the run. */
    private static LocalDate day(JobSide side) {
        return side.ready()
                .map(side::day)
                .orElseGet(() -> side.day(side.scenario().until().minusNanos(1)));
    }

    private static List<Delay> members(DelayRuns runs, List<EnsembleResult> results, String wall) {
        return IntStream.range(0, results.get(0).members().size())
                .mapToObj(member -> runs.delay(results, wall, member))
                .toList();
    }

    private static Optional<Range> range(List<Double> days) {
        if (days.isEmpty()) {
            return Optional.empty();
        }
        double[] values = days.stream().mapToDouble(Double::doubleValue).toArray();
        return Optional.of(new Range(
                MemberQuantile.of(values, MemberQuantile.ONE_IN_FIVE),
                MemberQuantile.of(values, MemberQuantile.FOUR_IN_FIVE)));
    }

    private static List<Told> told(DelayRuns runs, Delay delay, long days, DelayFacts facts, List<Delay> members) {
        boolean other = Math.abs(delay.otherDays()) >= LEAST_OTHER_DAYS;
        List<Double> exact = other
                ? Stream.concat(delay.causeDays().stream(), Stream.of(delay.otherDays()))
                        .toList()
                : delay.causeDays();
        List<Long> shown = exact.isEmpty() ? List.of() : Shares.whole(exact, days);
        List<Told> told = new ArrayList<>();
        for (int i = 0; i < runs.causes().size(); i++) {
            int cause = i;
            told.add(new Told(
                    Optional.of(runs.causes().get(i)),
                    facts.words(runs.causes().get(i)),
                    exact.get(i),
                    shown.get(i),
                    delay.soonerDays().get(i),
                    range(members.stream()
                            .map(member -> member.causeDays().get(cause))
                            .toList())));
        }
        told.sort(Comparator.comparingDouble(Told::days).reversed());
        if (other) {
            int last = exact.size() - 1;
            told.add(new Told(
                    Optional.empty(),
                    "Laying dates and hand tests as recorded",
                    exact.get(last),
                    shown.get(last),
                    0.0,
                    Optional.empty()));
        }
        return told;
    }

    /** Returns the wording of dates over both sides. */
    Days dates() {
        return new Days(runs.site().zone(), false);
    }

    /** Returns what the wall is called: "store north wall". */
    String wallWords() {
        return Names.wall(runs.site().wallWords(planned.wall()));
    }

    /** Returns the day on which the plaster was planned to be ready. */
    LocalDate plannedReady() {
        return day(planned);
    }

    /** Returns the day on which it was ready, or the last day of the run. */
    LocalDate actualReady() {
        return day(actual);
    }

    /** Tells whether both sides were ready. */
    public boolean isComplete() {
        return planned.ready().isPresent() && actual.ready().isPresent();
    }

    /** Returns "at least " where a run ended before its plaster was ready. */
    String atLeast() {
        return delay.isOpen() ? "at least " : "";
    }

    /** Returns what makes a drying day: the litres that the room carried off on an average day of the plan. */
    double targetLitres() {
        RoomDays asPlanned = planned.roomDays();
        return asPlanned.totalLitres() / Math.max(1, asPlanned.count());
    }

    /** Returns the sum as it is shown: "74 + 45 - 3 = 116 days". */
    String sum() {
        StringBuilder sum = new StringBuilder();
        for (Told told : causes) {
            String sign = told.shown() < 0 ? " \u2212 " : " + ";
            String first = told.shown() < 0 ? "\u2212" : "";
            sum.append(sum.isEmpty() ? first : sign).append(Math.abs(told.shown()));
        }
        return sum + " = " + DelayWords.days(days);
    }
}
