package org.limedry.cli.doors;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.limedry.cli.chart.Litres;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Figures;
import org.limedry.cli.page.Names;
import org.limedry.room.Fumes;
import org.limedry.study.doors.DoorDay;
import org.limedry.study.doors.DoorReason.Word;
import org.limedry.study.doors.DoorWay;
import org.limedry.units.Units;

/** What a plan says, on paper and on the console. */
final class DoorWords {
    /** Two ways that differ by less are alike, litres and share of the larger. Judgement. */
    private static final double ALIKE_LITRES = 0.5;

    private static final double ALIKE_SHARE = 0.05;

    private final DoorFindings findings;

    /** Makes the words for a plan. */
    DoorWords(DoorFindings findings) {
        this.findings = findings;
    }

    /** Returns the answer for the wall: "Doors: open Mon, Tue; shut Thu". */
    String headline() {
        String open = days(day -> day.hoursOf(Word.OPEN) > 0);
        String shut = days(day -> day.hoursOf(Word.OPEN) == 0
                && 2 * day.hoursOf(Word.SHUT) > day.hours().size());
        if (open.isEmpty() && shut.isEmpty()) {
            return "Doors: no need to open them";
        }
        return "Doors: "
                + (open.isEmpty() ? "" : "open " + open)
                + (open.isEmpty() || shut.isEmpty() ? "" : "; ")
                + (shut.isEmpty() ? "" : "shut " + shut);
    }

    private String days(Predicate<DoorDay> which) {
        return findings.days().stream()
                .filter(which)
                .map(day -> new DayWords(day).weekday())
                .collect(Collectors.joining(", "));
    }

    /** Returns the answer for the console. */
    List<String> console() {
        List<String> lines = new ArrayList<>();
        DayWords today = new DayWords(findings.days().get(0));
        lines.add("Doors on " + today.weekday() + " " + today.date() + ": " + today.blocks() + "; night "
                + DayWords.night(findings.nights().get(0)) + ".");
        lines.add(findings.site() + ", " + findings.room() + " (" + String.join(" and ", findings.doors())
                + "); weather: " + findings.weather());
        boolean shutNights = findings.nights().stream()
                .allMatch(night -> DayWords.night(night).equals("SHUT"));
        for (int i = 0; i < findings.days().size(); i++) {
            DayWords day = new DayWords(findings.days().get(i));
            String night = shutNights
                    ? ""
                    : "; night " + DayWords.night(findings.nights().get(i));
            lines.add(day.weekday() + " " + day.date() + ": " + day.blocks() + night + ". " + day.why());
        }
        lines.add((shutNights ? "Nights: shut. " : "") + "Where it makes no difference leave them as they stand.");
        lines.add(litres());
        lines.add(worth());
        findings.waits().ifPresent(coat -> lines.add(ready(coat)));
        lines.add("Look first: rain is not in the plan. Rain blowing in, or mild mist: shut.");
        return findings.situation().around(lines);
    }

    /** Returns litres by each way. */
    String litres() {
        String nights = findings.plan().question().nights() ? "" : ", if it can be left";
        return "Litres out of the walls: by the plan " + litres(DoorWay.PLAN) + "; open 6 to 20 every day "
                + litres(DoorWay.OPEN_BY_DAY) + "; open day and night" + nights + " " + litres(DoorWay.ALWAYS_OPEN)
                + (fumes() ? "." : "; always shut " + litres(DoorWay.ALWAYS_SHUT) + ".");
    }

    /** Where fuel burns in the room air, what shut doors would bring is not worth knowing. */
    private boolean fumes() {
        return Fumes.reach(
                findings.room(), findings.plan().question().scenario().rooms());
    }

    String litres(DoorWay way) {
        WayResult result = findings.of(way);
        String likely = figure(result.litres());
        return result.lowLitres()
                .flatMap(low ->
                        result.highLitres().map(high -> likely + " (" + figure(low) + " to " + figure(high) + ")"))
                .orElse(likely);
    }

    private String figure(double litres) {
        return decimals() == 0 ? Figures.whole(litres) : Figures.oneDecimal(litres);
    }

    /** Returns litres as they are shown, so that differences are those of what can be read. */
    private double shown(double litres) {
        double unit = decimals() == 0 ? 1.0 : 10.0;
        return Math.round(litres * unit) / unit;
    }

    /** Returns the decimals that suit the largest of all figures. */
    private int decimals() {
        double largest = findings.ways().values().stream()
                .mapToDouble(way -> Math.abs(way.litres()))
                .max()
                .orElse(0.0);
        return Litres.decimals(largest);
    }

    /** Returns what the plan is worth against open doors and shut ones, also where it is worth nothing. */
    String worth() {
        DoorWay open = findings.plan().question().nights() ? DoorWay.ALWAYS_OPEN : DoorWay.OPEN_BY_DAY;
        String shut = fumes() ? "" : against(DoorWay.ALWAYS_SHUT, "shut doors") + " and ";
        return "The plan takes out " + shut
                + against(open, "doors always open" + (open == DoorWay.OPEN_BY_DAY ? " by day" : "")) + ".";
    }

    private String against(DoorWay other, String words) {
        double plan = shown(findings.of(DoorWay.PLAN).litres());
        double difference = plan - shown(findings.of(other).litres());
        double alike = Math.max(
                ALIKE_LITRES,
                ALIKE_SHARE
                        * Math.max(Math.abs(plan), Math.abs(findings.of(other).litres())));
        if (Math.abs(difference) < alike) {
            return "as much as " + words;
        }
        return figure(Math.abs(difference)) + " litres " + (difference > 0.0 ? "more than " : "LESS than ") + words;
    }

    /** Returns when the coat that waits is ready by each way. */
    String ready(String coat) {
        return Names.capital(coat) + " ready: by the plan " + date(DoorWay.PLAN) + "; open 6 to 20 "
                + date(DoorWay.OPEN_BY_DAY) + "; open day and night " + date(DoorWay.ALWAYS_OPEN)
                + (fumes() ? "" : "; shut " + date(DoorWay.ALWAYS_SHUT)) + " (likely dates).";
    }

    private String date(DoorWay way) {
        Days days = new Days(findings.zone(), false);
        return findings.of(way)
                .ready()
                .map(ready -> days.brief(days.date(ready)))
                .orElse("not by the end of the run");
    }

    /** Returns what "no difference" means. */
    String noDifference() {
        var errors = findings.plan().question().errors();
        return "\u201cNo difference\u201d = closer than "
                + Figures.plain(Units.percentFromFraction(errors.relativeHumidity())) + " % humidity and "
                + Figures.plain(errors.temperatureK())
                + " \u00b0C on each instrument can tell: leave the doors as they stand.";
    }
}
