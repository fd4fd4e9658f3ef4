package org.limedry.cli.options;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.limedry.cli.options.OptionsFindings.Row;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Figures;
import org.limedry.cli.page.Names;
import org.limedry.cli.safety.Advised;
import org.limedry.cli.safety.Situation;
import org.limedry.cli.site.SiteMeasure;
import org.limedry.room.Plant;
import org.limedry.simulation.Warning;
import org.limedry.study.options.Measure;
import org.limedry.study.options.Options;

/** The sentences of options, for the console and for the page. */
final class OptionsAnswer {
    private final OptionsFindings findings;

    private OptionsAnswer(OptionsFindings findings) {
        this.findings = findings;
    }

    /** Returns the answer for the console, lines of any length. */
    static List<String> lines(OptionsFindings findings) {
        return new OptionsAnswer(findings).lines();
    }

    private List<String> lines() {
        List<Row> rows = findings.rows();
        List<String> lines = new ArrayList<>();
        lines.add(findings.site().name() + ": " + asItStands(findings));
        lines.add(headline(findings, rows) + ".");
        heaterOut(findings).ifPresent(lines::add);
        for (Row row : rows) {
            lines.add("  %s: %s%s; %s; %s%s"
                    .formatted(
                            row.name(),
                            saved(row.saved()),
                            row.tied() ? " (too close to call with the one before)" : "",
                            used(row),
                            money(findings, row),
                            risks(row)));
        }
        findings.refused().forEach(measure -> lines.add("  " + refused(measure)));
        lines.add(waiting(findings));
        lines.add(basis(findings));
        return situation(findings).around(lines);
    }

    static String asItStands(OptionsFindings findings) {
        Days days = findings.days();
        return findings.ready()
                .map(ready -> "as it stands the last coat of the " + rooms(findings) + " is likely ready on "
                        + days.text(days.date(ready)))
                .orElseGet(() -> "as it stands the last coat of the " + rooms(findings) + " is not ready by "
                        + days.textWithoutWeekday(days.lastDay(findings.end())) + ", the end of these runs");
    }

    /** Returns which measures begin with taking an unflued heater out, if any do. */
    static Optional<String> heaterOut(OptionsFindings findings) {
        List<String> out = findings.tried().stream()
                .map(one -> one.measure().measure())
                .filter(Measure::fuelOut)
                .map(Measure::name)
                .toList();
        if (out.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                out.size() == findings.tried().size()
                        ? "Each of these is with the unflued heater out; the job as it stands has it in."
                        : "With the unflued heater out: " + String.join("; ", out) + ".");
    }

    /** Returns why a measure was not tried. */
    static String refused(SiteMeasure measure) {
        return "NOT TRIED, DANGER: " + measure.measure().name()
                + ": fuel would burn in a room that is shut; carbon monoxide kills. Put the unflued heater out and take it away.";
    }

    private static String rooms(OptionsFindings findings) {
        return String.join(" and the ", findings.rooms());
    }

    static String headline(OptionsFindings findings, List<Row> rows) {
        List<Row> worth = rows.stream()
                .filter(row -> !row.fumes())
                .filter(row -> row.saved().likely() > OptionsFindings.HARDLY_DAYS)
                .toList();
        if (worth.isEmpty()) {
            return findings.fumes()
                    ? "Take the unflued heater out. No measure tried without it gets a day back"
                    : "None of these measures gets a day back";
        }
        Row best = worth.get(0);
        String name = findings.fumes()
                ? "Take the unflued heater out first: with it out, " + best.name()
                : Names.capital(best.name());
        String what = name + " saves " + saved(best.saved());
        if (worth.size() > 1 && worth.get(1).tied()) {
            return what + "; too close to call against " + worth.get(1).name() + cheapest(findings, worth);
        }
        return what + cheapest(findings, worth);
    }

    private static String cheapest(OptionsFindings findings, List<Row> worth) {
        return worth.stream()
                .filter(row -> row.costPerDay().isPresent())
                .min(Comparator.comparingDouble(row -> row.costPerDay().orElseThrow()))
                .map(row -> "; cheapest for each day saved: " + row.name() + ", "
                        + amount(findings, row.costPerDay().orElseThrow()) + " a day")
                .orElse("");
    }

    static String saved(Options.Saved saved) {
        String more = saved.atMost() ? " at most" : saved.atLeast() ? " at least" : "";
        String likely = saved.likely() < -OptionsFindings.HARDLY_DAYS
                ? days(-saved.likely()) + " later"
                : Math.abs(saved.likely()) <= OptionsFindings.HARDLY_DAYS ? "no difference" : days(saved.likely());
        String range = saved.low().isPresent() && saved.high().isPresent()
                ? " (" + Figures.whole(saved.low().getAsDouble()) + " to "
                        + Figures.whole(saved.high().getAsDouble()) + ")"
                : "";
        return likely + more + range;
    }

    private static String days(double days) {
        return days < 10 ? Figures.oneDecimal(days) + " days" : Figures.count(days, "day");
    }

    static String used(Row row) {
        List<String> parts = new ArrayList<>();
        if (Math.abs(row.energy().electricKWh()) >= 0.5) {
            parts.add(signed(row.energy().electricKWh()) + " kWh electric");
        }
        if (Math.abs(row.energy().fuelKWh()) >= 0.5) {
            parts.add(signed(row.energy().fuelKWh()) + " kWh of fuel");
        }
        parts.add(signed(row.litresMore()) + " litres out");
        return String.join(", ", parts);
    }

    private static String signed(double value) {
        String whole = Figures.whole(Math.abs(value));
        return (value < 0 && !"0".equals(whole) ? "\u2212" : "+") + whole;
    }

    static String money(OptionsFindings findings, Row row) {
        return row.cost()
                .map(cost -> row.costPerDay()
                        .map(perDay -> amount(findings, perDay) + " for each day saved")
                        .orElse(amount(findings, cost) + " in all"))
                .orElse("no rates given");
    }

    private static String amount(OptionsFindings findings, double money) {
        String currency = findings.site().rates().map(rates -> rates.currency()).orElse("");
        return (Figures.whole(money) + " " + currency).strip();
    }

    /** Returns what the measure brings with it that the job as it stands does not. */
    static String risks(Row row) {
        List<String> words = Stream.concat(
                        Stream.of(row.fumes() ? "fuel burns in the room: carbon monoxide, never shut it" : ""),
                        row.warned().stream().sorted().map(OptionsAnswer::risk))
                .filter(word -> !word.isEmpty())
                .toList();
        return words.isEmpty() ? "" : "; watch: " + String.join(", ", words);
    }

    private static String risk(Warning.Kind kind) {
        return switch (kind) {
            case FROST_AIR, FROST_WET_FACE -> "frost";
            case TOO_FAST -> "too fast in the first days, mist and screen";
            case UNFLUED_HEATER -> "it waters the walls";
            case HEAT_WITHOUT_AIR -> "heat without air";
            case DRY_BUT_SOFT -> "dry but soft, air it an hour a day";
            case CARBON_DIOXIDE -> "carbon dioxide";
            case WET_LATH -> "wet laths";
            default -> "";
        };
    }

    static String waiting(OptionsFindings findings) {
        return findings.later()
                .map(wait -> {
                    Days days = findings.days();
                    Options.Saved saved = findings.saved(wait);
                    return "Waiting and starting on %s instead saves no days: the last coat is likely %s later."
                            .formatted(
                                    days.textWithoutWeekday(
                                            days.date(findings.scenario().from())
                                                    .plusDays(wait.movedDays())),
                                    Figures.count(-saved.likely(), "day"));
                })
                .orElse("Waiting for another season was not tried: --wait-until DATE.");
    }

    static String basis(OptionsFindings findings) {
        return findings.ranged()
                ? "In brackets: one in five either side. Two are too close to call when their difference, run side by side, has"
                        + " no sure sign."
                : "Likely dates only; --ranges for ranges. Two within a day or a tenth are called too close to call.";
    }

    /** Returns what the site has and what the measures would have people do. */
    static Situation situation(OptionsFindings findings) {
        Situation situation = Situation.at(findings.site())
                .with(findings.scenario(), findings.site().zone())
                .with(findings.base().likely());
        for (OptionsFindings.Tried tried : findings.tried()) {
            Measure measure = tried.measure().measure();
            situation = situation
                    .with(measure.plant(), findings.site().zone())
                    .with(tried.result().likely())
                    .advising(advised(measure));
        }
        return situation;
    }

    private static List<Advised> advised(Measure measure) {
        List<Advised> advised = new ArrayList<>();
        if (measure.sheets()) {
            advised.add(Advised.SHEET);
        } else if (measure.shuts()) {
            advised.add(Advised.SHUT);
        } else if (measure.openings().isPresent()) {
            advised.add(Advised.OPEN);
        }
        for (Plant plant : measure.plant()) {
            advised.add(
                    plant instanceof Plant.Heater
                            ? Advised.HEAT
                            : plant instanceof Plant.Dehumidifier ? Advised.DEHUMIDIFY : Advised.BLOW);
        }
        return advised;
    }
}
