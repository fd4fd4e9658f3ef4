package org.limedry.cli.options;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.limedry.cli.page.Figures;
import org.limedry.cli.site.SiteMeasure;
import org.limedry.climate.Schedule;
import org.limedry.climate.Timetable;
import org.limedry.room.Fumes;
import org.limedry.room.Opening;
import org.limedry.room.Plant;
import org.limedry.room.RoomPlan;
import org.limedry.simulation.Scenario;
import org.limedry.study.options.Measure;
import org.limedry.units.Units;

/**
 * The measures that are tried when the file names none: airing, gentle electric heat, both, a dehumidifier of either type in the
 * shut room, and the desiccant behind sheets. Sizes are common practice, without a source.
 */
final class UsualMeasures {
    private static final double WATTS_PER_M3 = 40.0;
    private static final double STEP_W = 500.0;
    private static final double LEAST_W = 1000.0;
    private static final double GENTLE_CELSIUS = 14.0;
    private static final double RADIANT_SHARE = 0.3;
    private static final double REFRIGERANT_LITRES_A_DAY = 30.0;
    private static final double REFRIGERANT_W = 500.0;
    private static final double DESICCANT_LITRES_A_DAY = 10.0;
    private static final double DESICCANT_W = 850.0;
    private static final String DAY = "daily 09:00-16:00";

    private final RoomPlan room;

    /** Fuel burns in its air: no measure leaves it there. */
    private final boolean fumes;

    private final Schedule always;
    private final Schedule byDay;

    private UsualMeasures(RoomPlan room, Scenario scenario, ZoneId zone) {
        this.room = room;
        this.fumes = Fumes.reach(room.name(), scenario.rooms());
        this.always = Schedule.always(scenario.from(), scenario.until());
        this.byDay = Timetable.parse(DAY).over(zone, scenario.from(), scenario.until());
    }

    /**
     * Returns the measures for a room, from the first day of a run to its end. Where fuel burns in its air, each begins with
     * taking that heater away.
     *
     * @param room a room of the scenario
     * @param scenario the job as it stands
     * @param zone clock of the site
     */
    static List<SiteMeasure> of(RoomPlan room, Scenario scenario, ZoneId zone) {
        return new UsualMeasures(room, scenario, zone).all();
    }

    private List<SiteMeasure> all() {
        Plant heater = heater();
        String kW =
                Figures.plain(((Plant.Heater) heater).watts() / Units.wattsFromKw(1.0)) + " kW electric heat to 14 C";
        boolean opens = room.openings().stream().anyMatch(Opening::leadsOutdoors);
        List<SiteMeasure> shut = List.of(
                measure(kW + ", doors as they are", Optional.empty(), List.of(heater), false),
                measure(
                        "refrigerant dehumidifier, 30 litres a day rated, shut",
                        Optional.of(Schedule.never()),
                        List.of(refrigerant()),
                        false),
                measure(
                        "desiccant dehumidifier, 10 litres a day rated, shut",
                        Optional.of(Schedule.never()),
                        List.of(desiccant()),
                        false),
                measure("the same desiccant behind sheeted openings", Optional.empty(), List.of(desiccant()), true),
                measure(
                        kW + " and the refrigerant dehumidifier, shut",
                        Optional.of(Schedule.never()),
                        List.of(heater, refrigerant()),
                        false));
        List<SiteMeasure> open = List.of(
                measure("all openings open 9 to 16 every day", Optional.of(byDay), List.of(), false),
                measure("open 9 to 16 and " + kW, Optional.of(byDay), List.of(heater), false));
        return opens ? Stream.concat(open.stream(), shut.stream()).toList() : shut;
    }

    private SiteMeasure measure(String name, Optional<Schedule> openings, List<Plant> plant, boolean sheets) {
        return new SiteMeasure(new Measure(name, room.name(), openings, plant, fumes, sheets), 0.0, 0.0, 0.0);
    }

    private Plant heater() {
        double watts = Math.max(LEAST_W, STEP_W * Math.round(WATTS_PER_M3 * room.volumeM3() / STEP_W));
        return new Plant.Heater(
                "electric heater",
                watts,
                Plant.Fuel.ELECTRIC,
                RADIANT_SHARE,
                OptionalDouble.of(GENTLE_CELSIUS),
                false,
                always);
    }

    private Plant refrigerant() {
        return new Plant.Dehumidifier(
                "refrigerant dehumidifier",
                Plant.Drying.REFRIGERANT,
                REFRIGERANT_LITRES_A_DAY / Units.SECONDS_PER_DAY,
                Plant.Rating.AT_30C_80,
                REFRIGERANT_W,
                OptionalDouble.empty(),
                always);
    }

    private Plant desiccant() {
        return new Plant.Dehumidifier(
                "desiccant dehumidifier",
                Plant.Drying.DESICCANT,
                DESICCANT_LITRES_A_DAY / Units.SECONDS_PER_DAY,
                Plant.Rating.AT_20C_60,
                DESICCANT_W,
                OptionalDouble.empty(),
                always);
    }
}
