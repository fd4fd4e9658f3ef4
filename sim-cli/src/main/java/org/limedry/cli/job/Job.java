package org.limedry.cli.job;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.limedry.cli.chart.Weeks;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Figures;
import org.limedry.cli.page.Names;
import org.limedry.cli.site.Site;
import org.limedry.lime.Laying;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Scenario;
import org.limedry.study.Draw;
import org.limedry.study.EnsembleResult;
import org.limedry.study.ReadyRange;
import org.limedry.units.Units;

/**
 * A job begun on one day, laid by gangs, and what came of it.
 *
 * @param site the site, perhaps moved to another season
 * @param scenario its likely run
 * @param result what was found
 */
public record Job(Site site, Scenario scenario, EnsembleResult result) {
    private static final double DAYS_PER_WEEK = 7.0;
    private static final double TENTHS = 10.0;
    private static final double SECONDS_PER_MILLI = 1.0e-3;

    /** Lengths of run, longest first: a slow winter must be seen to its end. */
    private static final List<Integer> LENGTHS_DAYS = List.of(280, 224, 168, 112);

    /** Returns the job of a site with its result. */
    public static Job of(Site site, EnsembleResult result) {
        return new Job(site, site.programme(Draw.likely()), result);
    }

    /**
     * Returns the job of a site in another season, with as long a run as its weather allows; empty if the weather does not
     * even reach as far as the file's own run.
     *
     * @param movedDays days by which it is moved; 0 for the file's own season
     */
    public static Optional<Site> longest(Site site, int movedDays) {
        long own = Duration.between(site.from(), site.until()).toDays();
        Optional<Site> there = movedDays == 0 ? Optional.of(site) : site.moved(movedDays);
        return there.flatMap(moved -> LENGTHS_DAYS.stream()
                .filter(days -> days > own)
                .flatMap(days -> moved.lasting(days).stream())
                .findFirst()
                .or(() -> Optional.of(moved)));
    }

    /** Returns the morning from which weeks are counted: the first on which the file lets a coat be laid. */
    public Instant begins() {
        return scenario.coats().stream()
                .map(coat -> ((Laying.ByGang) coat.laying()).earliest())
                .min(Instant::compareTo)
                .orElse(scenario.from());
    }

    /** Returns the first day of work. */
    public LocalDate start() {
        return date(begins());
    }

    /** Returns the day for which an instant of the runs stands. */
    public LocalDate date(Instant instant) {
        return instant.atZone(site.zone()).toLocalDate().plusDays(site.movedDays());
    }

    /** Returns the last day of the runs. */
    public LocalDate lastDay() {
        return date(scenario.until().minusNanos(1));
    }

    /** Returns the words for its days: with years, for other starts lie in other years. */
    public Days days() {
        return Days.of(site.zone(), scenario.from(), result.likely().reached());
    }

    /** Returns the length of the runs from the first day of work on, weeks. */
    public double runWeeks() {
        return weeks(scenario.until());
    }

    /** Returns the weeks from the first day of work to an instant. */
    public double weeks(Instant instant) {
        double seconds = Duration.between(begins(), instant).toMillis() * SECONDS_PER_MILLI;
        return Units.daysFromSeconds(seconds) / DAYS_PER_WEEK;
    }

    /** Returns how long the whole job takes. */
    public Weeks weeks() {
        return result.job()
                .map(this::weeks)
                .orElseGet(() -> Weeks.likelyOnly(result.jobReady().map(this::weeks)));
    }

    /** Returns when a coat is ready, in weeks from the first day of work. */
    public Weeks weeks(int coat) {
        return range(coat)
                .map(this::weeks)
                .orElseGet(() -> Weeks.likelyOnly(coat(coat).ready().map(this::weeks)));
    }

    private Weeks weeks(ReadyRange range) {
        return new Weeks(
                range.earliest().map(this::weeks),
                range.likely().map(this::weeks),
                range.latest().map(this::weeks),
                true);
    }

    /** Returns how many coats there are. */
    public int coats() {
        return result.likely().coats().size();
    }

    /** Returns what the likely run found of a coat. */
    public Outcome.CoatResult coat(int coat) {
        return result.likely().coats().get(coat);
    }

    /** Returns the range of a coat, if ranges were asked for. */
    public Optional<ReadyRange> range(int coat) {
        return Stream.of(result.coats())
                .filter(ranges -> !ranges.isEmpty())
                .map(ranges -> ranges.get(coat))
                .findFirst();
    }

    /** Returns a coat in words: "store north wall, first coat". */
    public String name(int coat) {
        return name(site, coat(coat).wall(), coat(coat).number());
    }

    /** Returns what a coat is called: its wall and its number. */
    public static String name(Site site, String wall, int number) {
        return Names.wall(site.wallWords(wall)) + ", " + Names.ordinal(number) + " coat";
    }

    /** Returns "4.6 gang days of work". */
    public String workWords() {
        double days = result.likely().coats().stream()
                .filter(coat -> coat.laid().isPresent())
                .flatMap(coat -> coat.work().stream())
                .mapToDouble(Outcome.Work::days)
                .sum();
        String number = Figures.plain(Math.round(TENTHS * days) / TENTHS);
        return number + ("1".equals(number) ? " gang day of work" : " gang days of work");
    }
}
