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
import org.limedry.cli.site.schema.WordShape;
import org.limedry.reference.Estimate;

/** Keys of a room. */
final class RoomKeys {
    private static final NumberShape LENGTH = NumberShape.between(0.5, 100.0);

    /** What the floor is, where no wall of the room is listed as its floor. */
    enum Floor {
        BARE_EARTH,
        FLAGS,
        BOARDS,
        SCREED
    }

    /** What the ceiling is, where no wall of the room is listed as its ceiling. */
    enum Ceiling {
        LATH_AND_PLASTER,
        BOARDS,
        MASONRY
    }

    static final Key<Double> LENGTH_M = Key.needed("lengthM", LENGTH, "length inside");
    static final Key<Double> WIDTH_M = Key.needed("widthM", LENGTH, "width inside");
    static final Key<Double> HEIGHT_M = Key.needed("heightM", NumberShape.between(1.0, 30.0), "height inside");
    static final Key<Entry> SIZE = Key.optional(
                    "size", Block.of(LENGTH_M, WIDTH_M, HEIGHT_M), "inside size of a box-shaped room")
            .workedOut("volumeM3 and floorAreaM2 needed");
    static final Key<Double> VOLUME_M3 = Key.optional(
                    "volumeM3", NumberShape.between(2.0, 50_000.0), "volume, for a room that is no box")
            .workedOut("from size");
    static final Key<Double> FLOOR_AREA_M2 = Key.optional(
                    "floorAreaM2", NumberShape.between(1.0, 5000.0), "floor area, for a room that is no box")
            .workedOut("from size");
    static final Key<Estimate> LEAKAGE = Key.optional(
                    "leakagePerHour", Range.between(0.0, 20.0), "air changes an hour through cracks, all shut")
            .workedOut("0.6, from 0.2 to 2");
    static final Key<Floor> FLOOR = Key.optional(
                    "floor", WordShape.of(Floor.values(), Words::ofConstant), "what the floor is, on the ground")
            .assumed(Floor.FLAGS, "flags", "an ordinary old floor; from memory");
    static final Key<Ceiling> CEILING = Key.optional(
                    "ceiling",
                    WordShape.of(Ceiling.values(), Words::ofConstant),
                    "what the ceiling is; masonry: a vault like the walls")
            .assumed(Ceiling.LATH_AND_PLASTER, "lath and plaster", "an ordinary old ceiling; from memory");
    static final Key<Double> START_CELSIUS = Key.optional(
                    "startCelsius", NumberShape.between(-10.0, 35.0), "temperature of air and walls as the run begins")
            .workedOut("mean outdoors over the first ten days");
    static final Key<Double> START_RH = Key.optional(
                    "startRhPercent",
                    NumberShape.between(20.0, 100.0),
                    "relative humidity of the air as the run begins")
            .assumed(85.0, "85", "a cold old room; from memory");
    static final Key<List<Entry>> OPENINGS = Key.optional(
                    "openings", new ListShape<>(OpeningKeys.BLOCK, 0), "doors and windows")
            .plainly(List.of(), "none");
    static final Key<Map<String, Entry>> WALLS = Key.optional(
                    "walls",
                    Named.freely(WallKeys.BLOCK, 0),
                    "walls by name; one that two rooms share is listed under one of them")
            .plainly(Map.of(), "none");
    static final Key<List<Tagged.Variant>> PLANT = Key.optional(
                    "plant", new ListShape<>(PlantKeys.SHAPE, 0), "what is brought in")
            .plainly(List.of(), "none");

    static final Key<LocalDate> RELEASED = Key.optional(
                    "released", Words.date(), "day on which the room was handed over; for a delay only")
            .workedOut("the day on which its first coat was laid");

    static final Block BLOCK = Block.of(
                    SIZE,
                    VOLUME_M3,
                    FLOOR_AREA_M2,
                    LEAKAGE,
                    FLOOR,
                    CEILING,
                    OPENINGS,
                    WALLS,
                    PLANT,
                    START_CELSIUS,
                    START_RH,
                    RELEASED)
            .needingOneOf(List.of(List.of(SIZE), List.of(VOLUME_M3, FLOOR_AREA_M2)));

    private RoomKeys() {}
}
