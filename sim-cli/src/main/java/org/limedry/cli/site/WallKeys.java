package org.limedry.cli.site;

import java.util.List;
import java.util.Optional;
import org.limedry.cli.site.schema.Block;
import org.limedry.cli.site.schema.Either;
import org.limedry.cli.site.schema.Entry;
import org.limedry.cli.site.schema.Key;
import org.limedry.cli.site.schema.NumberShape;
import org.limedry.cli.site.schema.Place;
import org.limedry.cli.site.schema.Shape;
import org.limedry.cli.site.schema.TextShape;
import org.limedry.cli.site.schema.WordShape;
import org.limedry.units.Units;
import org.limedry.wall.Background;

/** Keys of a wall. */
final class WallKeys {
    /** What is on a wall before it is plastered. */
    enum Finish {
        BARE,
        LIMEWASH,
        OLD_PAINT,
        TILES
    }

    /** Which side of the room a wall is. */
    enum Face {
        WALL,
        CEILING,
        FLOOR
    }

    /** What lies beyond a wall. */
    sealed interface Beyond {
        /** Outdoor air. */
        record Outdoors() implements Beyond {}

        /** Nothing that matters: a dead cavity, or the middle of a wall that is alike on both sides. */
        record Closed() implements Beyond {}

        /** A room of this site. */
        record Room(String name, Place place) implements Beyond {}

        /** Air that is always the same. */
        record Air(double celsius, double rhPercent) implements Beyond {}
    }

    static final Key<Double> AREA_M2 = Key.optional(
                    "areaM2", NumberShape.between(0.1, 2000.0), "area of the face in the room, openings taken off")
            .workedOut("lengthM and heightM needed");
    static final Key<Double> LENGTH_M = Key.optional(
                    "lengthM", NumberShape.between(0.1, 200.0), "length, instead of the area; needed with rising damp")
            .workedOut("areaM2 needed");
    static final Key<Double> HEIGHT_M = Key.optional(
                    "heightM", NumberShape.between(0.1, 30.0), "height, instead of the area")
            .workedOut("areaM2 needed");
    static final Key<Background> BACKGROUND =
            Key.needed("background", WordShape.of(Background.values(), Background::words), "what the wall is made of");
    static final Key<Double> THICKNESS_MM = Key.optional(
                    "thicknessMm", NumberShape.between(5.0, 2000.0), "thickness of the wall, old plaster included")
            .workedOut("340 for brick, 600 for rubble, 500 for stone");
    static final Key<Finish> FINISH = Key.optional(
                    "finish", WordShape.of(Finish.values(), Words::ofConstant), "what is on the wall now")
            .plainly(Finish.BARE, "bare");
    static final Key<Wetness> WETNESS = Key.optional(
                    "wetness", Wetness.SHAPE, "how wet the wall is as the run begins; moves the dates most")
            .assumed(Wetness.DAMP, "damp", "a cold old wall without a leak; from memory");
    static final Key<Beyond> OTHER_SIDE = Key.optional("otherSide", beyond(), "what lies beyond the wall")
            .workedOut("outdoors; of lath a closed cavity");
    static final Key<Double> RISING_DAMP = Key.optional(
                    "risingDampLitresPerDayPerM",
                    NumberShape.between(0.0, 10.0),
                    "water drawn from the ground, for each metre of length")
            .plainly(0.0, "0");
    static final Key<Face> FACE = Key.optional(
                    "face", WordShape.of(Face.values(), Words::ofConstant), "side of the room")
            .workedOut("ceiling or floor if that is its name, else wall");

    static final Block BLOCK = Block.of(
                    AREA_M2,
                    LENGTH_M,
                    HEIGHT_M,
                    BACKGROUND,
                    THICKNESS_MM,
                    WETNESS,
                    OTHER_SIDE,
                    FINISH,
                    RISING_DAMP,
                    FACE)
            .needingOneOf(List.of(List.of(AREA_M2), List.of(LENGTH_M, HEIGHT_M)));

    private WallKeys() {}

    private static Shape<Beyond> beyond() {
        Key<String> room = Key.optional("room", TextShape.free(), "a room of this file");
        Key<Double> celsius = Key.optional("celsius", NumberShape.between(-30.0, 40.0), "air that is always the same");
        Key<Double> humidity = Key.optional("rhPercent", NumberShape.between(5.0, 100.0), "its relative humidity");
        Block group =
                Block.of(room, celsius, humidity).needingOneOf(List.of(List.of(room), List.of(celsius, humidity)));
        Beyond[] words = {new Beyond.Outdoors(), new Beyond.Closed()};
        return new Either<>(
                WordShape.of(words, word -> word instanceof Beyond.Outdoors ? "outdoors" : "closed cavity"),
                group.as((entry, place) -> {
                    Optional<Beyond> air = entry.given(celsius)
                            .flatMap(t -> entry.given(humidity).map(rh -> new Beyond.Air(t, rh)));
                    return entry.given(room)
                            .<Beyond>map(name -> new Beyond.Room(name, entry.at(room)))
                            .or(() -> air);
                }));
    }

    /** Returns the thickness taken when none is given, mm. FROM MEMORY: ordinary old walls. */
    static double usualThicknessMm(Background background) {
        return switch (background) {
            case OLD_BRICK, OLD_PLASTER -> 340.0;
            case LIME_RUBBLE_STONE -> 600.0;
            case SANDSTONE, SOFT_LIMESTONE, HARD_LIMESTONE, GRANITE -> 500.0;
            case TIMBER_LATH -> Units.mmFromMetres(Background.LATH_LAYER_M);
        };
    }

    /** Returns the area of a wall, m2, if it can be told. */
    static Optional<Double> areaM2(Entry wall) {
        return wall.given(AREA_M2)
                .or(() -> wall.given(LENGTH_M).flatMap(l -> wall.given(HEIGHT_M).map(h -> l * h)));
    }
}
