package org.limedry.cli.airing;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Figures;
import org.limedry.room.Fumes;
import org.limedry.room.Opening;
import org.limedry.room.Plant;
import org.limedry.study.Draw;
import org.limedry.study.airing.Airing;
import org.limedry.study.airing.AiringFinding;
import org.limedry.study.airing.AiringLine;
import org.limedry.study.airing.FreshAir;
import org.limedry.study.airing.RoomWait;
import org.limedry.study.airing.SteadyHeat;
import org.limedry.units.Units;

/** Waits, air and what to do, in the words of the page. */
final class AiringWords {
    private static final double DAYS_PER_WEEK = 7.0;
    private static final double LONGEST_IN_DAYS = 14.0;
    private static final int MOST_NAMED_OPENINGS = 3;

    private final AiringAnswer answer;
    private final Days days;

    AiringWords(AiringAnswer answer) {
        this.answer = answer;
        this.days = Days.of(
                answer.site().zone(), answer.site().from(), answer.site().until());
    }

    /** Returns "9 days", "5½ weeks" or "not in 20 weeks". */
    String wait(OptionalDouble waited) {
        return waited.isPresent() ? wait(waited.getAsDouble()) : "not in " + horizon();
    }

    /** Returns "9 days" or "5½ weeks". */
    static String wait(double waited) {
        return waited < LONGEST_IN_DAYS ? Figures.count(Math.max(1.0, waited), "day") : weeks(waited) + " weeks";
    }

    String horizon() {
        return Figures.whole(Math.floor(answer.study().horizonDays() / DAYS_PER_WEEK)) + " weeks";
    }

    /** Returns "7½ to 12 weeks, likely 9"; without a range the likely wait. */
    String range(RoomWait waited) {
        if (!waited.isRanged() || waited.earliestDays().isEmpty()) {
            return wait(waited.likelyDays());
        }
        String from = wait(waited.earliestDays());
        return from + " to " + wait(waited.latestDays()) + ", likely " + wait(waited.likelyDays());
    }

    private static String weeks(double waited) {
        long halves = Math.round(2.0 * waited / DAYS_PER_WEEK);
        return Figures.whole(halves / 2) + (halves % 2 == 0 ? "" : "\u00bd");
    }

    /** Returns the day on which a wait ends. */
    LocalDate day(double waited) {
        return days.date(answer.firstLaid()
                .plus(Duration.ofMinutes(Math.round(Duration.ofDays(1).toMinutes() * waited))));
    }

    Days days() {
        return days;
    }

    /** Returns fresh air to two figures: it is known to a factor of 1.5 at best. */
    static String air(double m3PerS) {
        double m3PerH = m3PerS * Units.SECONDS_PER_HOUR;
        double unit = m3PerH >= 100.0 ? 10.0 : 1.0;
        return Figures.whole(unit * Math.round(m3PerH / unit));
    }

    /** Returns "110 (70 to 160)". */
    static String air(FreshAir fresh) {
        return air(fresh.likelyM3PerS()) + " (" + air(fresh.lowM3PerS()) + " to " + air(fresh.highM3PerS()) + ")";
    }

    /** Returns "shut, cracks only", "doors 6 h" or "fan 300 m³/h". */
    String level(Airing airing) {
        if (airing.isShut()) {
            return "shut, cracks only";
        }
        if (airing.fanM3PerS() > 0.0) {
            return "fan " + Figures.whole(airing.fanM3PerS() * Units.SECONDS_PER_HOUR) + " m\u00b3/h, day and night";
        }
        return airing.doorHours() == Airing.WHOLE_DAY_HOURS
                ? openWord() + " day and night"
                : openWord() + " " + hours(airing.doorHours()) + " h a day";
    }

    private String openWord() {
        List<Opening> openings = openings();
        return openings.size() == 1 ? openings.get(0).name() : "doors, windows";
    }

    static String hours(double hours) {
        return Figures.plain(hours);
    }

    /** Returns what to do, as an order: "open the yard door and window together 6 hours on dry days". */
    String order(AiringFinding finding) {
        Airing airing = finding.level().airing();
        if (airing.isShut()) {
            return "leave the " + answer.room().name() + " shut";
        }
        if (airing.fanM3PerS() > 0.0) {
            return "run a fan of " + Figures.whole(airing.fanM3PerS() * Units.SECONDS_PER_HOUR)
                    + " m\u00b3 an hour day and night";
        }
        String together = openings().size() > 1 ? " together" : "";
        String often = finding.level().shutDays().isEmpty() ? "a day" : "on dry days";
        String span = airing.doorHours() == Airing.WHOLE_DAY_HOURS
                ? "day and night"
                : Figures.count(airing.doorHours(), "hour") + " " + often;
        return "open the " + openingNames() + together + " " + span;
    }

    private List<Opening> openings() {
        return answer.building().plan().openings().stream()
                .filter(Opening::leadsOutdoors)
                .toList();
    }

    private String openingNames() {
        List<String> names = openings().stream().map(Opening::name).toList();
        if (names.size() > MOST_NAMED_OPENINGS) {
            return names.size() + " doors and windows to outdoors";
        }
        return listed(names);
    }

    static String listed(List<String> names) {
        int last = names.size() - 1;
        return last < 1
                ? String.join("", names)
                : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }

    /** Returns "10:00 to 16:00". */
    static String times(Airing airing) {
        return time(airing.opened()) + " to " + time(airing.shut());
    }

    private static String time(LocalTime time) {
        return String.format(Locale.ROOT, "%d:%02d", time.getHour(), time.getMinute());
    }

    /** Returns "cold" or "2 kW held at 15 °C". */
    static String heat(AiringLine line) {
        return line.heat()
                .map(heat -> kw(heat) + " kW held at " + Figures.plain(heat.holdsCelsius()) + " \u00b0C")
                .orElse("no heat");
    }

    /** Returns ", with gentle heat (2 kW electric, held at 15 °C)", or nothing for a cold room. */
    static String withHeat(AiringFinding finding) {
        return finding.level()
                .heat()
                .map(heat -> ", with " + kw(heat) + " kW of electric heat held at " + Figures.plain(heat.holdsCelsius())
                        + " \u00b0C")
                .orElse("");
    }

    static String kw(SteadyHeat heat) {
        return Figures.plain(heat.watts() / Units.wattsFromKw(1.0));
    }

    /** Returns what was taken out of the room and what stays in it and beside it, a sentence each. */
    List<String> plant() {
        List<String> gone = names(plant -> plant instanceof Plant.Heater
                || plant instanceof Plant.Fan
                || (answer.room().bare() && plant instanceof Plant.Dehumidifier));
        List<String> kept = names(plant -> !gone.contains(plant.name()));
        String room = answer.room().name();
        String taken = gone.isEmpty() ? "" : "Left out of the " + room + ": " + listed(gone) + ". ";
        String stays = kept.isEmpty() ? "" : "Stays: " + listed(kept) + ". ";
        String others = answer.site().rooms().size() == 1
                ? ""
                : answer.room().bare() ? "No machine in other rooms." : "Other rooms as in the file.";
        String fumes = Fumes.reach(room, answer.site().scenario(Draw.likely()).rooms())
                ? " No unflued heater here or in rooms joined to it by a door."
                : "";
        String all = (taken + stays + others + fumes).strip();
        return all.isEmpty() ? List.of() : List.of(all);
    }

    private List<String> names(Predicate<Plant> which) {
        return answer.building().plan().plant().stream()
                .filter(which)
                .map(Plant::name)
                .distinct()
                .collect(Collectors.toList());
    }
}
