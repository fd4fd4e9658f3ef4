package org.limedry.cli.site;

import java.time.LocalDate;
import java.util.Optional;
import org.limedry.cli.site.schema.Block;
import org.limedry.cli.site.schema.Key;
import org.limedry.cli.site.schema.NumberShape;
import org.limedry.cli.site.schema.TextShape;
import org.limedry.cli.site.schema.WordShape;
import org.limedry.lime.HandTest;

/** Keys of a coat and of a hand test on it. */
final class CoatKeys {
    private static final String WHEN_READY = "when ready";
    private static final NumberShape THICKNESS = NumberShape.between(2.0, 60.0);

    static final Key<String> ROOM = Key.optional("room", TextShape.free(), "room of the wall")
            .workedOut("the only room with a wall of that name");
    static final Key<String> WALL = Key.needed("wall", TextShape.free(), "wall on which it goes");
    static final Key<String> MIX = Key.needed("mix", TextShape.free(), "one of the mixes");
    static final Key<Double> THICKNESS_MM = Key.needed("thicknessMm", THICKNESS, "mean thickness");
    static final Key<Double> DUBBING_MM = Key.optional(
                    "dubbingOutMm",
                    NumberShape.between(0.0, 60.0),
                    "mean thickness of dubbing out in the same mix laid with it")
            .plainly(0.0, "0");
    /** Empty means when the coat under it is ready. */
    static final Key<Optional<LocalDate>> LAID = Key.needed(
            "laid",
            new TextShape<>(
                    "date, YYYY-MM-DD, or " + WHEN_READY,
                    "^(\\d{4}-\\d{2}-\\d{2}|" + WHEN_READY + ")$",
                    text -> text.equals(WHEN_READY) ? Optional.empty() : Optional.of(Words.dateOf(text))),
            "day on which it is laid, at 08:00; when ready: the next working day after the coat under it is ready");

    static final Key<Double> MORTAR_CELSIUS = Key.optional(
                    "mortarCelsius", NumberShape.between(0.0, 60.0), "temperature of the mortar when laid")
            .assumed(10.0, "10", "from memory");
    static final Key<Double> PREWETTING = Key.optional(
                    "prewettingLitresPerM2", NumberShape.between(0.0, 10.0), "water put on the wall just before")
            .plainly(0.0, "0");

    static final Key<Double> M2_PER_DAY = Key.optional(
                    "m2PerDay", NumberShape.between(0.5, 1000.0), "what a gang lays of this coat in a day")
            .workedOut("that of the gang");

    static final Block BLOCK =
            Block.of(WALL, ROOM, MIX, THICKNESS_MM, DUBBING_MM, LAID, MORTAR_CELSIUS, PREWETTING, M2_PER_DAY);

    static final Key<Integer> COAT = Key.needed("coat", NumberShape.count(1, 20), "number of the coat on that wall");
    static final Key<LocalDate> DATE = Key.needed("date", Words.date(), "day on which you tried it, at 08:00");
    static final Key<HandTest.Result> RESULT = Key.needed(
            "result",
            WordShape.of(HandTest.Result.values(), Words::ofConstant),
            "dents under the finger: not ready; the nail marks it but the knuckle does not dent it, or hard: ready");

    static final Block TEST_BLOCK = Block.of(WALL, ROOM, COAT, DATE, RESULT);

    private CoatKeys() {}
}
