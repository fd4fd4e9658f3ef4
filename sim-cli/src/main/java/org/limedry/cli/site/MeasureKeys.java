package org.limedry.cli.site;

import java.util.List;
import java.util.Map;
import org.limedry.cli.site.schema.Block;
import org.limedry.cli.site.schema.Entry;
import org.limedry.cli.site.schema.FlagShape;
import org.limedry.cli.site.schema.Key;
import org.limedry.cli.site.schema.ListShape;
import org.limedry.cli.site.schema.NumberShape;
import org.limedry.cli.site.schema.Tagged;
import org.limedry.cli.site.schema.TextShape;
import org.limedry.climate.Timetable;

/** Keys of measures that could be taken to be ready sooner, and of the firm's own rates. */
final class MeasureKeys {
    private static final NumberShape MONEY = NumberShape.between(0.0, 1e7);

    static final Key<String> NAME = Key.needed("name", TextShape.free(), "what you call it");
    static final Key<String> ROOM = Key.needed("room", TextShape.free(), "room in which it is done");
    static final Key<List<Timetable>> OPEN = Key.optional(
                    "open", Words.times(), "when all openings of the room to outdoors stand open instead")
            .workedOut("as they are");
    static final Key<List<Tagged.Variant>> PLANT = Key.optional(
                    "plant", new ListShape<>(PlantKeys.SHAPE, 0), "what is brought in on top of what is there")
            .plainly(List.of(), "none");
    static final Key<Boolean> SHEETS = Key.optional(
                    "sheets",
                    new FlagShape(),
                    "whether its openings are sheeted over: none stands open, half the leakage is left")
            .plainly(false, "false");
    static final Key<Boolean> FUEL_OUT = Key.optional(
                    "fuelOut",
                    new FlagShape(),
                    "whether heaters that burn gas or paraffin in the room air are put out and taken away first; rooms joined by"
                            + " a door count as one")
            .plainly(false, "false");
    static final Key<Double> HIRE = Key.optional(
                    "hirePerDay", MONEY, "hire for each day until the job is ready, in your money")
            .plainly(0.0, "0");
    static final Key<Double> ONCE =
            Key.optional("once", MONEY, "what it costs once, in your money").plainly(0.0, "0");
    static final Key<Double> LABOUR_HOURS = Key.optional(
                    "labourHoursPerDay",
                    NumberShape.between(0.0, 24.0),
                    "hours a day that someone must see to it, at the rate for labour")
            .plainly(0.0, "0");

    static final Block BLOCK = Block.of(NAME, ROOM, OPEN, PLANT, FUEL_OUT, SHEETS, HIRE, ONCE, LABOUR_HOURS);

    static final Key<String> CURRENCY = Key.optional("currency", TextShape.free(), "what your money is called")
            .plainly("", "none");
    static final Key<Double> ELECTRICITY = Key.optional("electricityPerKWh", MONEY, "one kWh of electricity")
            .workedOut("not told: kWh are told instead");
    static final Key<Double> FUEL = Key.optional("fuelPerKWh", MONEY, "one kWh of heat from gas or paraffin")
            .workedOut("not told: kWh are told instead");
    static final Key<Double> LABOUR = Key.optional("labourPerHour", MONEY, "one hour of whoever opens and shuts")
            .plainly(0.0, "0");
    static final Key<Double> WAITING = Key.optional(
                    "waitingPerDay", MONEY, "what one more day of the job costs you, whoever bears it")
            .plainly(0.0, "0");

    static final Block RATES = Block.of(CURRENCY, ELECTRICITY, FUEL, LABOUR, WAITING);

    private MeasureKeys() {}

    /** Reports measures of rooms that are not there. */
    static void check(Entry site) {
        Map<String, Entry> rooms = site.given(SiteKeys.ROOMS).orElse(Map.of());
        for (Entry measure : site.given(SiteKeys.MEASURES).orElse(List.of())) {
            measure.given(ROOM)
                    .filter(room -> !rooms.containsKey(room))
                    .ifPresent(room -> measure.at(ROOM)
                            .problem(
                                    "\"" + room + "\"",
                                    "must be a room of this file: " + String.join(", ", rooms.keySet())));
        }
    }
}
