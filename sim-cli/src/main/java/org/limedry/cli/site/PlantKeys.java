package org.limedry.cli.site;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.limedry.cli.site.schema.Block;
import org.limedry.cli.site.schema.FlagShape;
import org.limedry.cli.site.schema.Key;
import org.limedry.cli.site.schema.NumberShape;
import org.limedry.cli.site.schema.OneOrMany;
import org.limedry.cli.site.schema.Shape;
import org.limedry.cli.site.schema.Tagged;
import org.limedry.cli.site.schema.TextShape;
import org.limedry.cli.site.schema.WordShape;
import org.limedry.climate.Timetable;
import org.limedry.room.Plant;

/** Keys of what is brought into a room: heaters, dehumidifiers, fans, people, mist. */
final class PlantKeys {
    static final String MISTING = "misting";
    static final String DEHUMIDIFIER = "dehumidifier";
    static final String FAN = "fan";
    static final String PEOPLE = "people";

    /** Words for heaters. */
    private static final Map<String, Plant.Fuel> HEATERS = heaters();

    static final Key<String> NAME =
            Key.optional("name", TextShape.free(), "what you call it").workedOut("its kind");
    static final Key<List<Timetable>> ON = Key.needed("on", Words.times(), "when it runs; written like open");
    static final Key<LocalDate> FROM =
            Key.optional("from", Words.date(), "first day on which it is there").workedOut("the whole run");
    static final Key<LocalDate> UNTIL =
            Key.optional("until", Words.date(), "last day on which it is there").workedOut("the whole run");

    static final Key<Double> KW = Key.needed("kW", NumberShape.between(0.1, 200.0), "heat at full power");
    static final Key<Double> THERMOSTAT = Key.optional(
                    "thermostatCelsius", NumberShape.between(1.0, 35.0), "air temperature that it holds")
            .workedOut("none: full power");
    static final Key<Double> RADIANT = Key.optional(
                    "radiantPercent", NumberShape.between(0.0, 100.0), "share of a heater's heat given as radiation")
            .assumed(30.0, "30", "from memory");
    static final Key<Boolean> AIMED = Key.optional(
                    "aimedAtWall", new FlagShape(), "whether its draught meets a plastered wall")
            .plainly(false, "false");

    static final Key<Plant.Drying> TYPE = Key.needed(
            "type",
            WordShape.of(Plant.Drying.values(), Words::ofConstant),
            "refrigerant: a cold coil, fades below 16 C; desiccant: a wheel, works in the cold");
    static final Key<Double> LITRES_PER_DAY =
            Key.needed("litresPerDayRated", NumberShape.between(1.0, 2000.0), "litres a day on its plate");
    static final Key<Plant.Rating> RATED_AT = Key.optional(
                    "ratedAt", WordShape.of(Plant.Rating.values(), PlantKeys::word), "air for which the plate holds")
            .workedOut("30C80, a desiccant 20C60");
    static final Key<Double> WATTS = Key.optional("watts", NumberShape.between(20.0, 100_000.0), "power while running")
            .workedOut("17 W for each litre a day, a desiccant 85 W");
    static final Key<Double> HUMIDISTAT = Key.optional(
                    "humidistatPercent", NumberShape.between(20.0, 95.0), "relative humidity that it holds")
            .workedOut("none: runs on");

    static final Key<Double> M3_PER_HOUR =
            Key.needed("m3PerHour", NumberShape.between(1.0, 100_000.0), "air moved between room and outdoors");
    static final Key<Integer> COUNT = Key.needed("count", NumberShape.count(1, 200), "people at work");

    static final Key<String> WALL = Key.needed("wall", TextShape.free(), "wall of this room that is misted");
    static final Key<Double> LITRES_PER_M2 =
            Key.needed("litresPerM2", NumberShape.between(0.01, 5.0), "water each time, in litres on each m2");
    static final Key<List<LocalTime>> AT =
            Key.needed("at", new OneOrMany<>(Words.time()), "times of day, 10 minutes each");

    static final Shape<Tagged.Variant> SHAPE = new Tagged("kind", "what it is", blocks());

    /** What warms a room or moves its water: what can be agreed to be there. */
    static final Shape<Tagged.Variant> MACHINES = new Tagged("kind", "what it is", machines());

    private PlantKeys() {}

    private static Map<String, Plant.Fuel> heaters() {
        Map<String, Plant.Fuel> heaters = new LinkedHashMap<>();
        heaters.put("electric heater", Plant.Fuel.ELECTRIC);
        heaters.put("flued heater", Plant.Fuel.FLUED);
        heaters.put("unflued LPG heater", Plant.Fuel.UNFLUED_LPG);
        heaters.put("unflued paraffin heater", Plant.Fuel.UNFLUED_PARAFFIN);
        return heaters;
    }

    /** Returns what a heater of that kind burns. */
    static Plant.Fuel fuel(String kind) {
        Plant.Fuel fuel = HEATERS.get(kind);
        if (fuel == null) {
            throw new IllegalArgumentException("kind: must be one of " + HEATERS.keySet() + ", was " + kind);
        }
        return fuel;
    }

    /** Tells whether a kind of plant is a heater. */
    static boolean isHeater(String kind) {
        return HEATERS.containsKey(kind);
    }

    private static Map<String, Block> machines() {
        Map<String, Block> blocks = new LinkedHashMap<>();
        Block heater = timed(ON, KW, THERMOSTAT, RADIANT, AIMED);
        HEATERS.keySet().forEach(word -> blocks.put(word, heater));
        blocks.put(DEHUMIDIFIER, timed(ON, TYPE, LITRES_PER_DAY, RATED_AT, WATTS, HUMIDISTAT));
        blocks.put(FAN, timed(ON, M3_PER_HOUR));
        return blocks;
    }

    private static Map<String, Block> blocks() {
        Map<String, Block> blocks = machines();
        blocks.put(PEOPLE, timed(ON, COUNT));
        blocks.put(MISTING, timed(WALL, LITRES_PER_M2, AT));
        return blocks;
    }

    private static Block timed(Key<?>... own) {
        List<Key<?>> keys = new ArrayList<>(List.of(own));
        keys.addAll(List.of(NAME, FROM, UNTIL));
        return Block.of(keys.toArray(Key<?>[]::new));
    }

    /** Returns the word for a rating point. */
    static String word(Plant.Rating rating) {
        return rating == Plant.Rating.AT_30C_80 ? "30C80" : "20C60";
    }
}
