package org.limedry.cli.odds;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Figures;
import org.limedry.cli.page.Names;
import org.limedry.cli.safety.Advised;
import org.limedry.cli.safety.Situation;
import org.limedry.reference.Estimate;
import org.limedry.study.Uncertain;
import org.limedry.study.odds.Odds;

/** The sentences of odds, for the console and for the page. */
final class OddsAnswer {
    private static final int MOST_TOLD = 5;

    /** A range of less than this is a matter of hours: what a measurement would take off it is not told. */
    private static final double WORTH_TELLING_DAYS = 0.5;

    private static final double TRUSTED = 0.5;

    private final OddsFindings findings;
    private final Days days;

    private OddsAnswer(OddsFindings findings) {
        this.findings = findings;
        this.days = findings.days();
    }

    /** Returns the answer for the console, lines of any length. */
    static List<String> lines(OddsFindings findings) {
        return new OddsAnswer(findings).lines();
    }

    private List<String> lines() {
        int coat = findings.lastCoat();
        Odds odds = findings.odds(coat);
        List<String> lines = new ArrayList<>();
        lines.add(findings.site().name() + ": odds of " + odds.members().size() + " runs");
        lines.add(headline(findings, coat) + ".");
        lines.add("The likely run says " + dated(findings.likely(coat)) + "; " + notReady(odds) + ".");
        if (findings.scenario().coats().size() > 1) {
            lines.add("Every coat, 1 in 5 / middle / 4 in 5:");
            for (int other = 0; other < findings.scenario().coats().size(); other++) {
                Odds its = findings.odds(other);
                lines.add("  %s: %s / %s / %s%s"
                        .formatted(
                                findings.name(other),
                                dated(its.oneInFive()),
                                dated(its.median()),
                                dated(its.fourInFive()),
                                findings.byHand(other) ? ", by your hand test" : ""));
            }
        }
        lines.add(whatMatters(findings, coat));
        told(odds).forEach(one -> lines.add("  " + worth(one)));
        lines.add(weather(findings, coat));
        lines.add(trust(findings, odds));
        lines.add("A forecast, not a measurement: a hand test overrules it.");
        return situation(findings).around(lines);
    }

    /** Returns what the site has and what finding out would have people do. */
    static Situation situation(OddsFindings findings) {
        List<Advised> advised = new ArrayList<>(List.of(Advised.TOUCH));
        for (int coat = 0; coat < findings.scenario().coats().size(); coat++) {
            told(findings.odds(coat))
                    .forEach(one ->
                            advised.addAll(Measuring.advised(one.unknown().key())));
        }
        return Situation.at(findings.site())
                .with(findings.scenario(), findings.site().zone())
                .with(findings.result().likely())
                .advising(advised);
    }

    /** Returns the answer without a full stop. */
    static String headline(OddsFindings findings, int coat) {
        Odds odds = findings.odds(coat);
        Days days = findings.days();
        if (odds.median().isEmpty()) {
            return Names.capital(findings.name(coat)) + ": the chances are under one half that it is ready by "
                    + lastDay(findings);
        }
        return "%s: an even chance by %s; 1 in 5 before %s, 1 in 5 after %s"
                .formatted(
                        Names.capital(findings.name(coat)),
                        days.text(days.date(odds.median().get())),
                        odds.oneInFive()
                                .map(days::date)
                                .map(days::textWithoutWeekday)
                                .orElse(lastDay(findings)),
                        odds.fourInFive()
                                .map(days::date)
                                .map(days::textWithoutWeekday)
                                .orElse(lastDay(findings)));
    }

    static String lastDay(OddsFindings findings) {
        Days days = findings.days();
        return days.textWithoutWeekday(days.lastDay(findings.scenario().until())) + ", the end of the run";
    }

    static String notReady(Odds odds) {
        return odds.notReady() == 0
                ? "all of the runs are ready by their end"
                : odds.notReady() + " of " + odds.members().size() + " runs are not ready by their end";
    }

    static String whatMatters(OddsFindings findings, int coat) {
        Odds odds = findings.odds(coat);
        String width = Figures.count(findings.widthDays(coat), "day");
        if (told(odds).isEmpty()) {
            return "The range is " + width + " wide; no single measurement would narrow it by half a day.";
        }
        return "The range is " + width + " wide, from 1 in 5 to 4 in 5. Knowing one thing would take off:";
    }

    static List<Odds.Influence> told(Odds odds) {
        return odds.influences().stream()
                .filter(one -> one.daysOff() >= WORTH_TELLING_DAYS)
                .limit(MOST_TOLD)
                .toList();
    }

    /** Returns what one unknown does, and how it can be found out. */
    static String worth(Odds.Influence one) {
        return "up to %s: %s; %s"
                .formatted(
                        Figures.count(one.daysOff(), "day"),
                        one.unknown().words(),
                        Measuring.of(one.unknown().key()));
    }

    static String direction(Odds.Influence one) {
        return one.laterWhenHigh() ? "more of it: later" : "more of it: sooner";
    }

    static String weather(OddsFindings findings, int coat) {
        return findings.weatherWidthDays(coat)
                .map(width -> "Weather alone, all else likely: %s of range (%s)."
                        .formatted(Figures.count(width, "day"), findings.weather()))
                .orElse("The weather is not varied: " + findings.weather() + ".");
    }

    static String trust(OddsFindings findings, Odds odds) {
        String share = Figures.whole(100.0 * odds.explained()) + " %";
        if (findings.site().fitted().isPresent()) {
            return share
                    + " of the spread follows from the unknowns. Since the fit they hang together: knowing one tells of others too,"
                    + " and what each takes off overlaps. Take the order as a hint.";
        }
        return odds.explained() < TRUSTED
                ? "Only " + share + " of the spread follows from the unknowns one by one: take the order as a hint."
                : share
                        + " of the spread follows from the unknowns one by one; the rest is weather and what they do together.";
    }

    /** Returns low, likely and high of an unknown: "30 to 70, likely 50 %". */
    static String range(Estimate range, Uncertain unknown) {
        return Figures.range(range.low(), range.high(), range.likely(), unknown.unit());
    }

    private String dated(Optional<Instant> date) {
        return date.map(days::date).map(days::brief).orElse("after the run");
    }
}
