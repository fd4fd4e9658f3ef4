package org.limedry.cli.issue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Figures;
import org.limedry.cli.page.Names;
import org.limedry.cli.site.FittedFile;
import org.limedry.cli.site.FittedFile.Change;
import org.limedry.cli.site.FittedFile.CoatDates;
import org.limedry.cli.site.Site;
import org.limedry.lime.HandTest;
import org.limedry.study.Draw;
import org.limedry.units.Units;

/** What changed since the page was given out before, and which reading caused it: the same words wherever it is told. */
public final class IssueWords {
    /** A move of less is within the grid of a run. */
    private static final double WORTH_TELLING_DAYS = 0.25;

    private static final double WORTH_A_PART_DAYS = 1.0;

    private final Site site;
    private final FittedFile file;
    private final Days days;

    /** Tells of a file that has an issue before its own. */
    public IssueWords(Site site, FittedFile file) {
        this.site = site;
        this.file = file;
        this.days = Days.of(site.zone(), site.from(), site.until());
    }

    /** Returns the coat that the end of the job waits for, counted from 0. */
    public int lastCoat() {
        return IntStream.range(0, file.issue().coats().size())
                .boxed()
                .max(Comparator.comparing(coat -> now(coat).likely().orElse(Instant.MAX)))
                .orElseThrow();
    }

    /** Returns the dates of a coat in this issue. */
    public CoatDates now(int coat) {
        return file.issue().coats().get(coat);
    }

    /** Returns the dates of a coat in the issue before. */
    public CoatDates before(int coat) {
        return issueBefore().coats().get(coat);
    }

    private FittedFile.Issue issueBefore() {
        return file.before().orElseThrow();
    }

    /** Returns what a coat is called: "store north wall, coat 2". */
    public String name(int coat) {
        return Names.wall(site.wallWords(now(coat).wall())) + ", coat "
                + now(coat).coat();
    }

    /** Returns what the issue before knew. */
    public String beforeWords() {
        Instant until = issueBefore().readingsUntil();
        return until.isAfter(site.from()) ? "readings to " + lastDay(until) : "before any reading";
    }

    /** Returns what this issue knows. */
    public String nowWords() {
        return "readings to " + lastDay(file.issue().readingsUntil());
    }

    private String lastDay(Instant until) {
        return days.brief(days.lastDay(until));
    }

    /**
     * What moved one coat.
     *
     * @param heading which date, from when to when
     * @param lines what moved it, a line each
     */
    public record Part(String heading, List<String> lines) {
        public Part {
            lines = List.copyOf(lines);
        }
    }

    /** Returns what moved the coat that the job waits for, then every other that moved by a day or more. */
    public List<Part> parts() {
        int last = lastCoat();
        return Stream.concat(
                        Stream.of(last),
                        IntStream.range(0, file.issue().coats().size())
                                .boxed()
                                .filter(coat -> coat != last && movedDays(coat) >= WORTH_A_PART_DAYS))
                .map(coat -> new Part(heading(coat), lines(now(coat))))
                .toList();
    }

    /** Returns the coats of which a date lies on the day on which the hand found dents, and what that means, a sentence each. */
    public List<String> heldBack() {
        List<HandTest> dents = site.scenario(Draw.likely()).handTests().stream()
                .filter(test -> !test.result().passes())
                .toList();
        return IntStream.range(0, file.issue().coats().size())
                .boxed()
                .flatMap(coat -> dents.stream()
                        .filter(test -> test.wall().equals(now(coat).wall())
                                && test.coat() == now(coat).coat())
                        .map(HandTest::instant)
                        .max(Comparator.naturalOrder())
                        .map(days::date)
                        .filter(day -> isFirst(day, now(coat)))
                        .map(day -> name(coat) + " had dents on " + days.brief(day)
                                + ": that date means as soon as the hand says so")
                        .stream())
                .toList();
    }

    private boolean isFirst(LocalDate day, CoatDates dates) {
        return Stream.of(dates.earliest(), dates.likely())
                .anyMatch(date -> date.map(days::date).equals(Optional.of(day)));
    }

    private double movedDays(int coat) {
        Instant end = site.until();
        Duration move = Duration.between(
                before(coat).likely().orElse(end), now(coat).likely().orElse(end));
        return Math.abs(Units.daysFromSeconds((double) move.toSeconds()));
    }

    private String heading(int coat) {
        return "What moved %s from %s (%s) to %s (%s):"
                .formatted(
                        name(coat),
                        date(before(coat).likely()),
                        beforeWords(),
                        date(now(coat).likely()),
                        nowWords());
    }

    private String date(Optional<Instant> likely) {
        return likely.map(days::date).map(days::brief).orElse("after the run");
    }

    private List<String> lines(CoatDates coat) {
        List<String> lines = new ArrayList<>();
        of(coat, file.changes()).forEach(change -> lines.add(change.cause() + ": " + later(change.days())));
        of(coat, file.readings()).stream()
                .sorted(Comparator.comparingDouble(change -> -Math.abs(change.days())))
                .forEach(change ->
                        lines.add("(without " + change.cause() + " it would be " + later(-change.days()) + ")"));
        if (lines.isEmpty()) {
            lines.add("nothing by a quarter of a day or more");
        }
        return lines;
    }

    private static List<Change> of(CoatDates coat, List<Change> changes) {
        return changes.stream()
                .filter(change -> change.wall().equals(coat.wall()) && change.coat() == coat.coat())
                .filter(change -> Math.abs(change.days()) >= WORTH_TELLING_DAYS)
                .toList();
    }

    private static String later(double days) {
        String number = Figures.oneDecimal(Math.abs(days));
        return number + (number.equals("1.0") ? " day " : " days ") + (days > 0.0 ? "later" : "sooner");
    }
}
