package org.limedry.cli.delay;

import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Names;
import org.limedry.cli.site.PlannedJob;
import org.limedry.cli.site.Site;
import org.limedry.simulation.Outcome.CoatResult;
import org.limedry.study.Draw;
import org.limedry.study.EnsembleResult;
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
 * @param totalRange the least and the most days of the whole delay
 * @param reckonings what stands behind the ranges
 */
public record DelayStory(
        DelayRuns runs,
        Delay delay,
        JobSide planned,
        JobSide actual,
        long days,
        List<CauseDays> causes,
        DelayFacts facts,
        List<Optional<Instant>> ready,
        DaysRange totalRange,
        Reckonings reckonings) {
    private static final double LEAST_OTHER_DAYS = 0.05;

    public DelayStory {
        causes = List.copyOf(causes);
        ready = List.copyOf(ready);
    }

    /**
     * The reckonings of the whole job: the likely one and those of the members.
     *
     * @param count how many
     * @param open those in which a run ended before its plaster was ready
     * @param unknowns keys of what is set otherwise in the members; none where there are no members
     */
    record Reckonings(int count, int open, Set<String> unknowns) {
        Reckonings {
            unknowns = Set.copyOf(unknowns);
        }

        static Reckonings of(List<Delay> all, EnsembleResult members) {
            return new Reckonings(
                    all.size(),
                    (int) all.stream().filter(Delay::isOpen).count(),
                    members.members().stream()
                            .flatMap(member -> member.draw().quantiles().keySet().stream())
                            .collect(Collectors.toSet()));
        }

        /** Tells whether there is more than the likely one. */
        boolean areMany() {
            return count > 1;
        }
    }

    /** Returns the story of a wall. */
    public static DelayStory of(DelayRuns runs, List<EnsembleResult> results, String wall) {
        PlannedJob job = runs.job();
        String room = job.roomOf(wall);
        Site asPlanned = job.site(runs.happened(0));
        JobSide planned = side(asPlanned, results.get(0), wall, room);
        JobSide actual = side(runs.site(), runs.recorded(results), wall, room);
        List<Delay> reckonings = runs.reckonings(results, wall);
        Delay delay = reckonings.get(0);
        DelayFacts facts = DelayFacts.of(runs, planned, actual);
        long days = ChronoUnit.DAYS.between(day(planned), day(actual));
        return new DelayStory(
                runs,
                delay,
                planned,
                actual,
                days,
                causes(runs, reckonings, days, facts),
                facts,
                results.subList(0, runs.sets()).stream()
                        .map(result -> JobSide.ready(result.likely().coats(), wall))
                        .toList(),
                DaysRange.of(reckonings.stream().map(Delay::totalDays).toList(), days),
                Reckonings.of(reckonings, results.get(0)));
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

    private static List<CauseDays> causes(DelayRuns runs, List<Delay> reckonings, long days, DelayFacts facts) {
        Delay likely = reckonings.get(0);
        boolean other = reckonings.stream().anyMatch(one -> Math.abs(one.otherDays()) >= LEAST_OTHER_DAYS);
        List<Double> exact = other
                ? Stream.concat(likely.causeDays().stream(), Stream.of(likely.otherDays()))
                        .toList()
                : likely.causeDays();
        List<Long> shown = exact.isEmpty() ? List.of() : Shares.whole(exact, days);
        List<CauseDays> causes = new ArrayList<>();
        for (int i = 0; i < runs.causes().size(); i++) {
            int cause = i;
            causes.add(new CauseDays(
                    Optional.of(runs.causes().get(i)),
                    facts.words(runs.causes().get(i)),
                    exact.get(i),
                    shown.get(i),
                    likely.soonerDays().get(i),
                    DaysRange.of(
                            reckonings.stream()
                                    .map(one -> one.causeDays().get(cause))
                                    .toList(),
                            shown.get(i))));
        }
        causes.sort(Comparator.comparingDouble(CauseDays::days).reversed());
        if (other) {
            long last = shown.get(shown.size() - 1);
            causes.add(new CauseDays(
                    Optional.empty(),
                    "Laying dates and hand tests as recorded",
                    likely.otherDays(),
                    last,
                    0.0,
                    DaysRange.of(reckonings.stream().map(Delay::otherDays).toList(), last)));
        }
        return causes;
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

    /** Returns what a date of the job as it went stands on. */
    DateBasis basis(boolean onRecord, LocalDate day) {
        return DateBasis.of(onRecord, day, runs.job().lastRecord());
    }

    /** Returns what the day on which it was ready stands on, or that it was not ready by the end of the run. */
    DateBasis readyBasis() {
        List<CoatResult> coats = actual.coats();
        CoatResult last = coats.get(coats.size() - 1);
        return basis(last.byHand() && last.ready().isPresent(), actualReady());
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

    /** Returns the causes that were none in some reckoning, or helped in some and cost days in others. */
    List<CauseDays> maybeNothing() {
        return reckonings.areMany()
                ? causes.stream().filter(cause -> cause.range().mayBeNothing()).toList()
                : List.of();
    }

    /** Returns the sum as it is shown: "74 + 45 - 3 = 116 days". */
    String sum() {
        StringBuilder sum = new StringBuilder();
        for (CauseDays cause : causes) {
            String sign = cause.shown() < 0 ? " \u2212 " : " + ";
            String first = cause.shown() < 0 ? "\u2212" : "";
            sum.append(sum.isEmpty() ? first : sign).append(Math.abs(cause.shown()));
        }
        return sum + " = " + DelayWords.days(days);
    }
}
