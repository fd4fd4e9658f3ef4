package org.limedry.cli.airing;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.limedry.cli.ask.Question;
import org.limedry.room.Opening;
import org.limedry.room.RoomPlan;
import org.limedry.study.airing.Airing;
import org.limedry.study.airing.SteadyHeat;
import org.limedry.units.Units;

/**
 * What the user of {@code limedry airing} asked for, as written.
 *
 * @param room name of a room; if not said, the one that waits longest
 * @param by the day by which it is to be ready
 * @param levels levels of airing; none for the usual ones
 * @param heatsKw heats, kW; none for a gentle one
 * @param holdCelsius what the thermostat holds, C
 * @param withoutPlant whether machines of the file are left out
 */
record AiringAsked(
        Optional<String> room,
        Optional<LocalDate> by,
        List<String> levels,
        List<Double> heatsKw,
        Optional<Double> holdCelsius,
        boolean withoutPlant) {
    /** The thermostat goes by the mean outdoors over so long from the first coat on. */
    static final Duration HEAT_MEAN = Duration.ofDays(56);

    private static final String FAN = "fan";
    private static final List<Double> USUAL_DOOR_HOURS = List.of(0.0, 2.0, 4.0, 6.0, 8.0, 12.0, 24.0);
    private static final List<Double> USUAL_FANS_PER_HOUR = List.of(2.0, 6.0);
    private static final List<Double> FANS_ALONE_PER_HOUR = List.of(1.0, 2.0, 4.0, 6.0);
    private static final double FAN_STEP_M3_PER_H = 50.0;
    private static final double MOST_FAN_M3_PER_H = 100_000.0;
    private static final double MOST_KW = 200.0;
    private static final double LEAST_KW = 0.1;
    private static final double COOLEST_CELSIUS = 1.0;
    private static final double WARMEST_CELSIUS = 35.0;
    private static final int MOST_HEATS = 4;
    private static final int MOST_LEVELS = 16;

    AiringAsked {
        levels = List.copyOf(levels);
        heatsKw = List.copyOf(heatsKw);
    }

    /** Refuses what no room could be given, before anything is run. */
    void check(Question question) {
        levels.forEach(level -> airing(question, level));
        heatsKw.forEach(kw -> watts(question, kw));
        holdCelsius.ifPresent(holds -> checkHold(question, holds));
    }

    private static void checkHold(Question question, double holds) {
        if (!(holds >= COOLEST_CELSIUS && holds <= WARMEST_CELSIUS)) {
            throw question.refused("--hold: must be 1 to 35 C, was " + holds);
        }
    }

    /** Returns the levels of airing to try in a room, the shut one first. */
    List<Airing> airings(Question question, RoomPlan plan) {
        boolean opens = plan.openings().stream().anyMatch(Opening::leadsOutdoors);
        Stream<Airing> wanted =
                levels.isEmpty() ? usual(plan, opens) : levels.stream().map(one -> airing(question, one));
        List<Airing> all =
                Stream.concat(Stream.of(Airing.SHUT), wanted).distinct().toList();
        if (!opens && all.stream().anyMatch(one -> one.doorHours() > 0.0)) {
            throw question.refused(
                    "--levels: must be fans, as fan200: " + plan.name() + " has no door or window to outdoors");
        }
        if (all.size() > MOST_LEVELS) {
            throw question.refused("--levels: must be " + MOST_LEVELS + " at most, were " + all.size());
        }
        return all;
    }

    /** Fans are counted in air changes an hour, in steps of 50 m3/h. */
    private static Stream<Airing> usual(RoomPlan plan, boolean opens) {
        Stream<Airing> doors = opens ? USUAL_DOOR_HOURS.stream().map(Airing::doors) : Stream.empty();
        Stream<Airing> fans = (opens ? USUAL_FANS_PER_HOUR : FANS_ALONE_PER_HOUR)
                .stream()
                        .map(changes -> Math.rint(changes * plan.volumeM3() / FAN_STEP_M3_PER_H))
                        .map(steps -> Math.max(1.0, steps) * FAN_STEP_M3_PER_H)
                        .map(AiringAsked::fan);
        return Stream.concat(doors, fans);
    }

    private static Airing fan(double m3PerHour) {
        return Airing.fan(Units.perSecondFromPerHour(m3PerHour));
    }

    private static Airing airing(Question question, String level) {
        String text = level.strip();
        boolean isFan = text.startsWith(FAN);
        double most = isFan ? MOST_FAN_M3_PER_H : Airing.WHOLE_DAY_HOURS;
        double value = number(isFan ? text.substring(FAN.length()) : text);
        if (!(value >= 0.0 && value <= most) || (isFan && value == 0.0)) {
            throw question.refused(
                    "--levels: must be door hours a day from 0 to 24, or fan and m3/h as in fan200, was " + level);
        }
        return isFan ? fan(value) : Airing.doors(value);
    }

    private static double number(String text) {
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }

    /** Returns the heats to try in a room, none first. */
    List<Optional<SteadyHeat>> heats(Question question, double volumeM3, double meanOutdoorCelsius) {
        double holds = holdCelsius.orElseGet(() -> SteadyHeat.gentleCelsius(meanOutdoorCelsius));
        DoubleStream watts = heatsKw.isEmpty()
                ? DoubleStream.of(SteadyHeat.gentleWatts(volumeM3))
                : heatsKw.stream().distinct().mapToDouble(kw -> watts(question, kw));
        List<Optional<SteadyHeat>> heats = new ArrayList<>();
        heats.add(Optional.empty());
        watts.sorted().forEach(power -> heats.add(Optional.of(new SteadyHeat(power, holds))));
        if (heats.size() > MOST_HEATS) {
            throw question.refused("--heat: must be " + (MOST_HEATS - 1) + " at most, were " + (heats.size() - 1));
        }
        return heats;
    }

    private static double watts(Question question, double kw) {
        if (!(kw >= LEAST_KW && kw <= MOST_KW)) {
            throw question.refused("--heat: must be 0.1 to 200 kW, was " + kw);
        }
        return Units.wattsFromKw(kw);
    }
}
