package org.limedry.cli.site;

import java.util.List;
import org.limedry.cli.site.schema.Block;
import org.limedry.cli.site.schema.Entry;
import org.limedry.cli.site.schema.Key;
import org.limedry.cli.site.schema.ListShape;
import org.limedry.cli.site.schema.NumberShape;
import org.limedry.cli.site.schema.Shape;
import org.limedry.cli.site.schema.TextShape;

/** Keys of what was read on site: loggers, the yard, the diary. Files are looked for beside the site file. */
final class ReadingKeys {
    static final Shape<String> FILE_NAME = TextShape.free();

    static final Key<String> FILE = Key.needed(
            "file", FILE_NAME, "file of a logger, as limedry readings takes it; its reading plan beside it counts");
    static final Key<String> ROOM =
            Key.optional("room", TextShape.free(), "room whose air it read").workedOut("it read no room");
    static final Key<String> WALL = Key.optional(
                    "wall", TextShape.free(), "wall whose face its column of wall surface is of; needs room")
            .workedOut("it read no wall");
    private static final Block LOGGER = Block.of(FILE, ROOM, WALL);

    static final Key<List<Entry>> LOGGERS = Key.optional("loggers", new ListShape<>(LOGGER, 0), "loggers in the rooms")
            .plainly(List.of(), "none");
    static final Key<String> OUTDOORS = Key.optional(
                    "outdoors", FILE_NAME, "logger in the shade outdoors: the weather of these days as it was")
            .workedOut("the weather of the place, which must then be that of these days");
    static final Key<String> DIARY = Key.optional(
                    "diary", FILE_NAME, "the site diary, as limedry diary checks it: what stood open and what ran")
            .workedOut("all went by the timetables of this file");
    static final Key<Double> TEMPERATURE_ERROR = Key.optional(
                    "temperatureErrorK",
                    NumberShape.between(0.1, 5.0),
                    "error of one logger, as two side by side have it")
            .plainly(0.5, "0.5");
    static final Key<Double> HUMIDITY_ERROR = Key.optional(
                    "humidityErrorPercent", NumberShape.between(0.5, 20.0), "the same for humidity")
            .plainly(3.0, "3");

    static final Block BLOCK = Block.of(LOGGERS, OUTDOORS, DIARY, TEMPERATURE_ERROR, HUMIDITY_ERROR);

    private ReadingKeys() {}
}
