package org.limedry.cli.site;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.limedry.cli.site.schema.Entry;
import org.limedry.cli.site.schema.Tagged;
import org.limedry.climate.Schedule;
import org.limedry.climate.Timetable;
import org.limedry.room.Opening;
import org.limedry.room.Plant;
import org.limedry.room.RoomPlan;
import org.limedry.study.Draw;
import org.limedry.units.Units;

/** From the keys of rooms to rooms that can be computed, for one draw. */
final class RoomPlans {
    /** Furniture and inner air follow the room, J/K for each m2 of floor. FROM MEMORY (EN ISO 52016-1). */
    static final double FITTINGS_J_PER_M2K = 10_000.0;

    /** How long a wall is misted each time. */
    static final Duration MISTING = Duration.ofMinutes(10);

    private static final int MINUTES_PER_DAY = 24 * 60;
    private static final double WINDOW_SILL_M = 0.9;
    private static final double WATTS_PER_LITRE_A_DAY = 17.0;
    private static final double DESICCANT_WATTS_PER_LITRE_A_DAY = 85.0;

    private final SiteParts parts;
    private final Guesses guesses;
    private final Draw draw;

    RoomPlans(SiteParts parts, Guesses guesses, Draw draw) {
        this.parts = parts;
        this.guesses = guesses;
        this.draw = draw;
    }

    /**
     * Returns a room.
     *
     * @param startCelsius temperature as the run begins, C
     */
    RoomPlan plan(String name, Entry room, double startCelsius) {
        RoomSize size = RoomSize.of(room);
        double earthKgPerM2Day = parts.library()
                .defaults()
                .of("evaporation from bare damp earth floor")
                .likely();
        return new RoomPlan(
                name,
                size.volumeM3(),
                size.floorAreaM2(),
                size.heightM(),
                FITTINGS_J_PER_M2K * size.floorAreaM2(),
                guesses.leakage(name, room).in(draw),
                room.get(RoomKeys.FLOOR) == RoomKeys.Floor.BARE_EARTH ? earthKgPerM2Day / Units.SECONDS_PER_DAY : 0.0,
                room.get(RoomKeys.OPENINGS).stream().map(this::opening).toList(),
                room.get(RoomKeys.PLANT).stream()
                        .map(plant -> plant(name, plant))
                        .toList(),
                startCelsius,
                Units.fractionFromPercent(room.get(RoomKeys.START_RH)));
    }

    private Opening opening(Entry opening) {
        double usualSillM = opening.given(OpeningKeys.GLASS).isPresent() ? WINDOW_SILL_M : 0.0;
        return new Opening(
                opening.get(OpeningKeys.NAME),
                opening.get(OpeningKeys.WIDTH),
                opening.get(OpeningKeys.HEIGHT),
                opening.given(OpeningKeys.SILL).orElse(usualSillM),
                opening.given(OpeningKeys.FACING).orElse(""),
                opening.given(OpeningKeys.TO),
                schedule(opening.get(OpeningKeys.OPEN), LocalDate.MIN, LocalDate.MAX));
    }

    /** Returns one thing that is brought into a room. */
    Plant plant(String room, Tagged.Variant variant) {
        Entry entry = variant.entry();
        String name = entry.given(PlantKeys.NAME).orElse(variant.word());
        if (variant.word().equals(PlantKeys.MISTING)) {
            double kgPerM2S = entry.get(PlantKeys.LITRES_PER_M2) / MISTING.toSeconds();
            String wall = WallNames.Listed.planName(room, entry.get(PlantKeys.WALL));
            return new Plant.Misting(name, wall, kgPerM2S, scheduleOf(entry, mistingTimes(entry)));
        }
        Schedule on = scheduleOf(entry, entry.get(PlantKeys.ON));
        return switch (variant.word()) {
            case PlantKeys.DEHUMIDIFIER -> dehumidifier(name, entry, on);
            case PlantKeys.FAN -> new Plant.Fan(name, Units.perSecondFromPerHour(entry.get(PlantKeys.M3_PER_HOUR)), on);
            case PlantKeys.PEOPLE -> new Plant.People(name, entry.get(PlantKeys.COUNT), on);
            default -> heater(name, variant.word(), entry, on);
        };
    }

    private static Plant heater(String name, String word, Entry entry, Schedule on) {
        return new Plant.Heater(
                name,
                Units.wattsFromKw(entry.get(PlantKeys.KW)),
                PlantKeys.fuel(word),
                Units.fractionFromPercent(entry.get(PlantKeys.RADIANT)),
                optional(entry.given(PlantKeys.THERMOSTAT)),
                entry.get(PlantKeys.AIMED),
                on);
    }

    private Plant dehumidifier(String name, Entry entry, Schedule on) {
        return new Plant.Dehumidifier(
                name,
                entry.get(PlantKeys.TYPE),
                guesses.dehumidifierOutput().in(draw) * entry.get(PlantKeys.LITRES_PER_DAY) / Units.SECONDS_PER_DAY,
                ratedAt(entry),
                watts(entry),
                optional(entry.given(PlantKeys.HUMIDISTAT).map(Units::fractionFromPercent)),
                on);
    }

    /** Returns the air for which the plate of a dehumidifier holds. FROM MEMORY where it is not said. */
    static Plant.Rating ratedAt(Entry dehumidifier) {
        return dehumidifier
                .given(PlantKeys.RATED_AT)
                .orElse(isDesiccant(dehumidifier) ? Plant.Rating.AT_20C_60 : Plant.Rating.AT_30C_80);
    }

    /** Returns the power of a dehumidifier, W. FROM MEMORY where it is not said. */
    static double watts(Entry dehumidifier) {
        double perLitre = isDesiccant(dehumidifier) ? DESICCANT_WATTS_PER_LITRE_A_DAY : WATTS_PER_LITRE_A_DAY;
        return dehumidifier
                .given(PlantKeys.WATTS)
                .orElseGet(() -> perLitre * dehumidifier.get(PlantKeys.LITRES_PER_DAY));
    }

    private static boolean isDesiccant(Entry dehumidifier) {
        return dehumidifier.get(PlantKeys.TYPE) == Plant.Drying.DESICCANT;
    }

    private static OptionalDouble optional(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    private static List<Timetable> mistingTimes(Entry entry) {
        List<Timetable.Line> lines = new ArrayList<>();
        for (LocalTime time : entry.get(PlantKeys.AT)) {
            int from = time.toSecondOfDay() / 60;
            int until = (from + (int) MISTING.toMinutes()) % MINUTES_PER_DAY;
            lines.add(new Timetable.Line(EnumSet.allOf(DayOfWeek.class), from, until));
        }
        return List.of(new Timetable(lines, LocalDate.MIN, LocalDate.MAX));
    }

    private Schedule scheduleOf(Entry plant, List<Timetable> timetables) {
        return schedule(
                timetables,
                plant.given(PlantKeys.FROM).orElse(LocalDate.MIN),
                plant.given(PlantKeys.UNTIL).orElse(LocalDate.MAX));
    }

    /** Returns when something is on within two dates. */
    Schedule schedule(List<Timetable> timetables, LocalDate first, LocalDate last) {
        List<Schedule.Span> spans = new ArrayList<>();
        RunDays days = parts.days();
        for (Timetable timetable : timetables) {
            LocalDate from = timetable.first().isAfter(first) ? timetable.first() : first;
            LocalDate until = timetable.last().isBefore(last) ? timetable.last() : last;
            if (!until.isBefore(from)) {
                spans.addAll(new Timetable(timetable.lines(), from, until)
                        .over(days.zone(), days.from(), days.until())
                        .spans());
            }
        }
        return new Schedule(spans);
    }
}
