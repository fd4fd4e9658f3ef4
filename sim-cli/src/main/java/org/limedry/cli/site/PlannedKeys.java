package org.limedry.cli.site;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.limedry.cli.site.schema.Block;
import org.limedry.cli.site.schema.Entry;
import org.limedry.cli.site.schema.Key;
import org.limedry.cli.site.schema.ListShape;
import org.limedry.cli.site.schema.Named;
import org.limedry.cli.site.schema.NumberShape;
import org.limedry.cli.site.schema.Tagged;
import org.limedry.cli.site.schema.TextShape;

/** Keys of what had been agreed, where the job went another way; the rest of the file is the job as it happened. */
final class PlannedKeys {
    static final Key<LocalDate> RELEASED = Key.optional(
                    "released", Words.date(), "day on which the room was to be handed over")
            .workedOut("as it happened");

    static final Key<String> OPENING_NAME = Key.needed("name", TextShape.free(), "a door or window of that room");
    static final Key<List<Entry>> OPENINGS = Key.optional(
                    "openings", new ListShape<>(Block.of(OPENING_NAME, OpeningKeys.OPEN), 1), "door hours as agreed")
            .plainly(List.of(), "as they happened");

    static final Key<List<Tagged.Variant>> PLANT = Key.optional(
                    "plant",
                    new ListShape<>(PlantKeys.MACHINES, 0),
                    "all heaters, dehumidifiers and fans as agreed, on their own dates; [] for none")
            .workedOut("as it happened");

    static final Key<Wetness> WETNESS = Key.needed("wetness", Wetness.SHAPE, "how wet the wall was stated to be");
    static final Key<Map<String, Entry>> WALLS = Key.optional(
                    "walls", Named.freely(Block.of(WETNESS), 0), "walls as they were stated to be")
            .plainly(Map.of(), "as they were");

    static final Key<Map<String, Entry>> ROOMS = Key.optional(
                    "rooms", Named.freely(Block.of(RELEASED, OPENINGS, PLANT, WALLS), 0), "rooms as agreed")
            .plainly(Map.of(), "as they were");

    static final Key<String> WEATHER = Key.optional(
                    "weather", SiteKeys.WEATHER_NAME, "weather on which the plan was made, written like place.weather")
            .workedOut("that of place");

    static final Key<Double> THICKNESS_MM =
            Key.needed("thicknessMm", NumberShape.between(2.0, 60.0), "mean thickness as agreed, dubbing out included");
    static final Key<List<Entry>> COATS = Key.optional(
                    "coats",
                    new ListShape<>(Block.of(CoatKeys.WALL, CoatKeys.ROOM, CoatKeys.COAT, THICKNESS_MM), 0),
                    "coats as they were agreed, where they went on thicker or thinner")
            .plainly(List.of(), "as they were laid");

    static final Block BLOCK = Block.of(ROOMS, WEATHER, COATS);

    private PlannedKeys() {}
}
