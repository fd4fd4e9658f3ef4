package org.limedry.cli.site;

import java.util.List;
import org.limedry.cli.site.schema.Block;
import org.limedry.cli.site.schema.FlagShape;
import org.limedry.cli.site.schema.Key;
import org.limedry.cli.site.schema.NumberShape;
import org.limedry.cli.site.schema.WordShape;
import org.limedry.lime.LimeKind;
import org.limedry.lime.Mix;
import org.limedry.reference.Estimate;

/** Keys of a mix. */
final class MixKeys {
    private static final NumberShape PARTS = NumberShape.between(0.1, 20.0);
    private static final NumberShape SHARE = NumberShape.between(0.0, 50.0);
    private static final NumberShape LITRES = NumberShape.between(0.1, 2000.0);

    static final Key<LimeKind> LIME = Key.needed(
            "lime", WordShape.of(LimeKind.values(), LimeKind::words), "the binder; quicklime means a hot mix");
    static final Key<Double> LIME_PARTS =
            Key.optional("limeParts", PARTS, "parts of lime by volume").plainly(1.0, "1");
    static final Key<Double> SAND_PARTS =
            Key.needed("sandParts", NumberShape.between(0.0, 20.0), "parts of sand by volume, loose");
    static final Key<Mix.SandState> SAND = Key.optional(
                    "sand",
                    WordShape.of(Mix.SandState.values(), Words::ofConstant),
                    "sand as it lies in the yard, or dried")
            .assumed(Mix.SandState.DAMP, "damp", "common practice, no source");
    static final Key<Boolean> HAIR =
            Key.optional("hair", new FlagShape(), "whether hair is beaten in").plainly(false, "false");
    static final Key<Double> SLAG = Key.optional(
                    "slagPercentOfMix", SHARE, "ground slag, percent by volume of the whole dry mix")
            .workedOut("none");
    static final Key<Double> POZZOLAN = Key.optional(
                    "pozzolanPercentOfMix",
                    SHARE,
                    "brick dust, trass or another pozzolan, percent by volume of the whole dry mix")
            .workedOut("none");
    static final Key<Double> WATER_LITRES = Key.optional(
                    "waterLitresPerBatch",
                    LITRES,
                    "water put into one batch, if you measured it; for a hot mix all the water, slaking included")
            .workedOut("not measured");
    static final Key<Double> LIME_LITRES = Key.optional(
                    "limeLitresPerBatch", LITRES, "lime gauged into the same batch; needed with waterLitresPerBatch")
            .workedOut("not measured");
    static final Key<Estimate> FREE_WATER = Key.optional(
                    "freeWaterLitresPerM3",
                    Range.between(100.0, 700.0),
                    "water in a m3 of the fresh mortar, if you know it better than we do")
            .workedOut("from the parts by volume");

    static final Key<Estimate> ENTRY_SUCTION = Key.optional(
                    "entrySuctionKPa",
                    Range.between(1.0, 20_000.0),
                    "suction at which the coat begins to empty, if you had it measured")
            .workedOut("by the kind of mix");

    static final List<Key<?>> ALL = List.of(
            LIME,
            LIME_PARTS,
            SAND_PARTS,
            SAND,
            HAIR,
            SLAG,
            POZZOLAN,
            WATER_LITRES,
            LIME_LITRES,
            FREE_WATER,
            ENTRY_SUCTION);

    static final Block BLOCK = Block.of(ALL.toArray(Key<?>[]::new));

    private MixKeys() {}
}
