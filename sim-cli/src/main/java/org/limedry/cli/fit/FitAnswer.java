package org.limedry.cli.fit;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.limedry.cli.issue.IssueWords;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Figures;
import org.limedry.cli.page.Names;
import org.limedry.cli.safety.Advised;
import org.limedry.cli.safety.Situation;
import org.limedry.cli.site.FittedFile;
import org.limedry.reference.Estimate;
import org.limedry.study.Uncertain;
import org.limedry.study.fit.FitResult;
import org.limedry.units.Units;

/** The sentences of a fit, for the console and for the page. */
final class FitAnswer {
    static final String HAND = "A forecast, not a measurement: a hand test overrules it.";
    private static final int MOST_REMARKS = 8;

    /** An offset of a logger within these is not worth a word: K, and a fraction of humidity. */
    private static final double WORTH_TELLING_K = 0.1;

    private static final double WORTH_TELLING_HUMIDITY = 0.005;

    private final FitFindings findings;
    private final Days days;

    private FitAnswer(FitFindings findings) {
        this.findings = findings;
        this.days = findings.days();
    }

    /** Returns the answer for the console, lines of any length. */
    static List<String> lines(FitFindings findings) {
        return new FitAnswer(findings).lines();
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add("%s: readings to %s, %s".formatted(findings.site().name(), findings.untilWords(), counted(findings)));
        lines.add(headline(findings) + ".");
        if (findings.dates().isEmpty()) {
            bad(findings).forEach(line -> lines.add("  " + line));
        } else {
            IssueWords issue = findings.issue(findings.dates().get());
            addDates(lines, issue);
            issue.heldBack().forEach(held -> lines.add("The " + held + "."));
            issue.parts().forEach(part -> {
                lines.add(part.heading());
                part.lines().forEach(line -> lines.add("  " + line));
            });
            addLearnt(lines);
            wild(findings).forEach(lines::add);
        }
        remarks(findings).forEach(remark -> lines.add("Note: " + remark + "."));
        lines.add(HAND);
        return situation(findings).around(lines);
    }

    /** Returns what the site has; what is learnt has people try the plaster by hand. */
    static Situation situation(FitFindings findings) {
        return Situation.at(findings.site())
                .with(findings.scenario(), findings.site().zone())
                .advising(Advised.TOUCH);
    }

    private void addDates(List<String> lines, IssueWords issue) {
        int coats = findings.scenario().coats().size();
        if (coats < 2) {
            return;
        }
        lines.add("Every coat, 1 in 5 / likely / 4 in 5 (likely before):");
        for (int coat = 0; coat < coats; coat++) {
            FittedFile.CoatDates now = issue.now(coat);
            lines.add("  %s: %s / %s / %s (%s)"
                    .formatted(
                            issue.name(coat),
                            brief(now.earliest()),
                            brief(now.likely()),
                            brief(now.latest()),
                            brief(issue.before(coat).likely())));
        }
    }

    private void addLearnt(List<String> lines) {
        List<String> learnt = learnt(findings);
        lines.add(learnt.isEmpty() ? "The readings say nothing yet of what nobody can know." : "The readings say:");
        learnt.forEach(line -> lines.add("  " + line));
        List<String> untold = untold(findings);
        if (!untold.isEmpty()) {
            lines.add("They could not tell: " + String.join("; ", untold) + ".");
        }
        offsets(findings).forEach(lines::add);
    }

    private String brief(Optional<Instant> date) {
        return date.map(days::date).map(days::brief).orElse("after the run");
    }

    /** Returns "672 readings: 2 loggers, 5 buckets". */
    static String counted(FitFindings findings) {
        return Figures.count(findings.readings().list().size(), "reading") + " of "
                + findings.fit().channels().stream()
                        .map(FitResult.Channel::name)
                        .collect(Collectors.joining("; "));
    }

    /** Returns the answer without a full stop. */
    static String headline(FitFindings findings) {
        if (findings.dates().isEmpty()) {
            return "The run cannot be brought to these readings, so no date is drawn from them";
        }
        FitFindings.Dates dates = findings.dates().get();
        IssueWords issue = findings.issue(dates);
        int coat = issue.lastCoat();
        FittedFile.CoatDates now = issue.now(coat);
        Days days = findings.days();
        String likely = now.likely()
                .map(date -> "likely ready " + days.text(days.date(date)))
                .orElse("not ready by " + end(findings));
        FitFindings.Wide wide = dates.wide().get(coat);
        return "%s: %s; 4 chances in 5 that it is %s"
                .formatted(Names.capital(issue.name(coat)), likely, between(findings, wide));
    }

    private static String between(FitFindings findings, FitFindings.Wide wide) {
        Days days = findings.days();
        Optional<String> from = wide.oneInTen().map(days::date).map(days::textWithoutWeekday);
        Optional<String> until = wide.nineInTen().map(days::date).map(days::textWithoutWeekday);
        if (from.isEmpty()) {
            return "later than " + end(findings);
        }
        return until.isEmpty()
                ? "after " + from.get() + ", perhaps later than " + end(findings)
                : from.equals(until) ? "on " + from.get() : "between " + from.get() + " and " + until.get();
    }

    private static String end(FitFindings findings) {
        Days days = findings.days();
        return days.textWithoutWeekday(days.lastDay(findings.scenario().until())) + ", the end of the run";
    }

    /** Returns why no date is drawn, and where to look. */
    static List<String> bad(FitFindings findings) {
        List<String> lines = new ArrayList<>();
        ending(findings.fit().ending()).ifPresent(lines::add);
        findings.fit().unexplained().forEach(channel -> lines.add(off(channel)));
        if (findings.fit().unexplained().stream().anyMatch(FitResult.Channel::isFarOff)) {
            lines.addAll(offsets(findings));
        }
        lines.add(
                "Look first at the logger: unit and columns (limedry readings), a heater or the sun on it, battery, room.");
        lines.add("Then at the diary: a door, heater or dehumidifier that ran and is not in it, or other hours.");
        lines.add(
                "Then at the site file: a wall, an opening or a source of water that is not in it. The charts show when it"
                        + " goes wrong.");
        return lines;
    }

    private static String off(FitResult.Channel channel) {
        return channel.isFarOff()
                ? "%s is %s of its errors off all the time; %s is the most that is believed"
                        .formatted(
                                Names.capital(channel.name()),
                                Figures.oneDecimal(Math.abs(channel.offsetSigmas())),
                                Figures.oneDecimal(FitResult.WILD_SIGMA))
                : "%s lies %s errors off after fitting (%s before); %s is the most that is believed"
                        .formatted(
                                Names.capital(channel.name()),
                                Figures.oneDecimal(channel.after()),
                                Figures.oneDecimal(channel.before()),
                                Figures.oneDecimal(FitResult.BAD_SIGMA));
    }

    private static Optional<String> ending(FitResult.Ending ending) {
        return switch (ending) {
            case CONVERGED -> Optional.empty();
            case STOPPED -> Optional.of("The search went on and on without coming to rest");
            case NO_LIKELY_RUN -> Optional.of("The likely run gave up before the last reading");
        };
    }

    /** Returns what the readings say of each unknown of which they say something. */
    static List<String> learnt(FitFindings findings) {
        FitResult fit = findings.fit();
        List<Uncertain> untold = fit.untold();
        return fit.unknowns().stream()
                .filter(unknown -> !untold.contains(unknown))
                .map(unknown -> "%s: %s (before: %s)"
                        .formatted(unknown.words(), range(findings.now(unknown), unknown), before(unknown)))
                .toList();
    }

    /** Returns "0.6 to 0.9, likely 0.7 times". */
    static String range(Estimate estimate, Uncertain unknown) {
        return Figures.range(estimate.low(), estimate.high(), estimate.likely(), unknown.unit());
    }

    static String before(Uncertain unknown) {
        return Figures.plain(unknown.low()) + " to " + Figures.plain(unknown.high());
    }

    /** Returns the unknowns of which the readings told nothing. */
    static List<String> untold(FitFindings findings) {
        return findings.fit().untold().stream().map(Uncertain::words).toList();
    }

    /** Returns by how much each logger reads too much, where that is worth a word. */
    static List<String> offsets(FitFindings findings) {
        List<String> lines = new ArrayList<>();
        findings.fit().offsets().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .forEach(entry -> {
                    boolean warm = entry.getKey().startsWith("celsius.");
                    String logger = entry.getKey().substring(entry.getKey().indexOf('.') + 1);
                    double value = entry.getValue();
                    if (Math.abs(value) >= (warm ? WORTH_TELLING_K : WORTH_TELLING_HUMIDITY)) {
                        double shown = Math.abs(warm ? value : Units.percentFromFraction(value));
                        String way = warm
                                ? (value > 0 ? "C too warm" : "C too cold")
                                : (value > 0 ? "% too damp" : "% too dry");
                        lines.add(logger + " seems to read " + Figures.oneDecimal(shown) + " " + way
                                + (findings.dates().isPresent() ? "; taken off." : "."));
                    }
                });
        return lines;
    }

    /** Returns the readings that cannot be there by chance. */
    static List<String> wild(FitFindings findings) {
        Days days = findings.days();
        List<String> lines = findings.fit().wild().stream()
                .limit(MOST_REMARKS)
                .map(residual -> "Hard to believe: %s on %s, %s errors off what all others say; look at it."
                        .formatted(
                                residual.reading().channel(),
                                days.brief(days.date(residual.reading().at())),
                                Figures.whole(Math.abs(residual.sigmasFromTheOthers()))))
                .toList();
        int more = findings.fit().wild().size() - lines.size();
        return more > 0
                ? Stream.concat(lines.stream(), Stream.of("And " + more + " more of that kind."))
                        .toList()
                : lines;
    }

    /** Returns what was found in the files. */
    static List<String> remarks(FitFindings findings) {
        List<String> all = findings.readings().remarks();
        if (all.size() <= MOST_REMARKS) {
            return all;
        }
        List<String> some = new ArrayList<>(all.subList(0, MOST_REMARKS));
        some.add((all.size() - MOST_REMARKS) + " more; limedry readings and limedry diary tell them all");
        return some;
    }
}
