package org.limedry.cli.wallcase;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.limedry.air.Phase;
import org.limedry.air.SaturationFormula;
import org.limedry.cli.site.schema.Block;
import org.limedry.cli.site.schema.Entry;
import org.limedry.cli.site.schema.FlagShape;
import org.limedry.cli.site.schema.Key;
import org.limedry.cli.site.schema.ListShape;
import org.limedry.cli.site.schema.NumberShape;
import org.limedry.cli.site.schema.Shape;
import org.limedry.cli.site.schema.TextShape;
import org.limedry.cli.site.schema.WordOr;
import org.limedry.cli.site.schema.WordShape;

/** Everything that a wall case file may say. */
final class CaseKeys {
    static final double COLDEST_CELSIUS = -60.0;
    static final double WARMEST_CELSIUS = 90.0;

    private static final NumberShape CELSIUS_SHAPE = NumberShape.between(COLDEST_CELSIUS, WARMEST_CELSIUS);
    private static final NumberShape HOURS_SHAPE = NumberShape.between(0.0, 1.0e6);
    /** How a former name of a formula ends, by its constants m and Tn; files that have it are told the new one. */
    private static final String FORMER_ENDING = "_mtn";

    private static final List<SaturationFormula> OVER_WATER = Arrays.stream(SaturationFormula.values())
            .filter(formula -> formula.covers(Phase.WATER))
            .toList();

    static final Key<Double> START_CELSIUS =
            Key.needed("celsius", CELSIUS_SHAPE, "temperature of the layer at its start, C");
    static final Key<Double> START_RH = Key.optional(
            "rhPercent", NumberShape.between(1.0e-6, 100.0), "relative humidity in its pores, %; 100 is suction 0");
    static final Key<Double> START_SUCTION = Key.optional(
            "suctionPa", NumberShape.between(0.0, 1.0e10), "suction in its pores, Pa, instead of rhPercent");
    static final Block START = Block.of(START_CELSIUS, START_RH, START_SUCTION)
            .needingOneOf(List.of(List.of(START_RH), List.of(START_SUCTION)));

    static final Key<String> NAME = Key.needed("name", TextShape.free(), "what layers.csv calls it; unique");
    static final Key<Double> THICKNESS_MM =
            Key.needed("thicknessMm", NumberShape.between(0.001, 1.0e6), "thickness, mm");
    static final Key<Double> DENSITY =
            Key.needed("dryDensityKgPerM3", NumberShape.between(0.01, 30_000.0), "dry density, kg/m3");
    static final Key<Double> HEAT_CAPACITY = Key.needed(
            "dryHeatCapacityJPerKgK", NumberShape.between(0.01, 100_000.0), "specific heat when dry, J/(kg K)");
    static final Key<String> SUCTION_TABLE = Key.needed(
            "suctionTable", TextShape.free(), "CSV beside this file: suctionPa,waterKgPerM3,liquidConductivityS");
    static final Key<String> WATER_TABLE = Key.needed(
            "waterTable",
            TextShape.free(),
            "CSV beside this file: waterKgPerM3,vapourPermeabilityKgPerMSPa,conductivityWPerMK");
    static final Key<Entry> START_STATE = Key.needed("start", START, "state at the start, or as laid");
    static final Key<Double> LAID_AT = Key.optional(
                    "laidAtHour", HOURS_SHAPE, "hour at which it is laid on the inside of the layers before it")
            .workedOut("there from the start, as with 0");
    static final Block LAYER =
            Block.of(NAME, THICKNESS_MM, DENSITY, HEAT_CAPACITY, SUCTION_TABLE, WATER_TABLE, START_STATE, LAID_AT);

    static final Key<Double> CELSIUS =
            Key.optional("celsius", CELSIUS_SHAPE, "temperature of the air, or of a fixed face, C");
    static final Key<Double> RH = Key.optional(
            "rhPercent",
            NumberShape.between(0.0, 100.0),
            "relative humidity of the air, or in the pores of a fixed face, %");
    static final Key<String> SERIES = Key.optional(
            "series", TextShape.free(), "CSV beside this file, hour,celsius,rhPercent, instead of the two above");
    static final Key<Double> HEAT_TRANSFER = Key.optional(
                    "heatTransferWPerM2K",
                    NumberShape.between(0.0, 1.0e9),
                    "heat transfer of the face, radiation included, W/(m2 K)")
            .workedOut("needed, unless fixed or sealed");
    static final Key<Double> VAPOUR_TRANSFER = Key.optional(
                    "vapourTransferSPerM",
                    NumberShape.between(0.0, 1.0e3),
                    "vapour transfer of the face, s/m = kg/(m2 s Pa)")
            .workedOut("needed, unless fixed or sealed");
    static final Key<Boolean> FIXED = Key.optional(
                    "fixed", new FlagShape(), "the climate is the state of the face itself")
            .plainly(false, "false");
    static final Key<Boolean> SEALED = Key.optional("sealed", new FlagShape(), "neither heat nor water passes the face")
            .plainly(false, "false");
    static final Block SIDE = Block.of(CELSIUS, RH, SERIES, HEAT_TRANSFER, VAPOUR_TRANSFER, FIXED, SEALED);

    static final Key<Double> GAS_CONSTANT = Key.optional(
                    "gasConstantVapourJPerKgK", NumberShape.between(100.0, 1000.0), "gas constant of vapour, J/(kg K)")
            .plainly(461.5, "461.5");
    static final Key<Double> LATENT_HEAT = Key.optional(
                    "latentHeatJPerKg", NumberShape.between(0.0, 1.0e7), "latent heat of evaporation, J/kg")
            .plainly(2.5e6, "2.5e6");
    static final Key<Double> WATER_HEAT = Key.optional(
                    "waterHeatCapacityJPerKgK", NumberShape.between(0.0, 1.0e5), "specific heat of water, J/(kg K)")
            .plainly(4187.0, "4187");
    static final Key<SaturationFormula> SATURATION = Key.optional(
                    "saturation", formula(), "saturation pressure, by a name of limedry air --formula, in any case")
            .plainly(SaturationFormula.ISO13788, "iso13788");
    static final Key<Phase> BELOW_ZERO = Key.optional(
                    "belowZero",
                    WordShape.of(Phase.values(), phase -> phase.name().toLowerCase(Locale.ROOT)),
                    "what saturation counts over below 0 C")
            .plainly(Phase.WATER, "water");
    static final Key<OptionalDouble> KELVIN_AT = Key.optional(
                    "kelvinAt",
                    new WordOr<>(
                            "local",
                            OptionalDouble.empty(),
                            CELSIUS_SHAPE.as((value, place) -> Optional.of(OptionalDouble.of(value)))),
                    "temperature that stands in Kelvin's law, C")
            .plainly(OptionalDouble.empty(), "local");
    static final Key<Double> PERMEABILITY_EXPONENT = Key.optional(
                    "vapourPermeabilityExponent",
                    NumberShape.between(-10.0, 10.0),
                    "the table's permeability is multiplied by (T / 293.15 K) to this power")
            .plainly(0.0, "0");
    static final Block CONSTANTS_BLOCK =
            Block.of(GAS_CONSTANT, LATENT_HEAT, WATER_HEAT, SATURATION, BELOW_ZERO, KELVIN_AT, PERMEABILITY_EXPONENT);

    static final Key<Double> RELATIVE = Key.optional(
                    "relative", NumberShape.between(1.0e-8, 0.1), "relative tolerance of a time step")
            .plainly(1.0e-4, "1e-4");
    static final Key<Integer> CELLS = Key.optional(
                    "cells",
                    new WordOr<>("auto", 0, NumberShape.count(8, 5000)),
                    "cells in the whole wall, as near as the grading allows")
            .plainly(0, "auto");
    static final Block ACCURACY_BLOCK = Block.of(RELATIVE, CELLS);

    static final Key<List<Entry>> LAYERS =
            Key.needed("layers", new ListShape<>(LAYER, 1), "the layers, outside to inside");
    static final Key<Entry> OUTSIDE = Key.needed("outside", SIDE, "what the first layer looks at");
    static final Key<Entry> INSIDE = Key.needed("inside", SIDE, "what the last layer looks at");
    static final Key<Entry> CONSTANTS = Key.optional("constants", CONSTANTS_BLOCK, "constants of the case");
    static final Key<Double> HOURS = Key.needed("hours", NumberShape.between(0.001, 1.0e6), "length of the run, h");
    static final Key<List<Double>> OUTPUT_HOURS = Key.optional(
                    "outputHours", new ListShape<>(HOURS_SHAPE, 0), "hours to be written, besides the last")
            .plainly(List.of(), "the last hour only");
    static final Key<List<Double>> POSITIONS_MM = Key.optional(
                    "profilePositionsMm",
                    new ListShape<>(NumberShape.between(0.0, 1.0e7), 0),
                    "depths from the outside face to be written, mm")
            .plainly(List.of(), "none");
    static final Key<Entry> ACCURACY = Key.optional("accuracy", ACCURACY_BLOCK, "tolerance and grid");

    static final Block BLOCK =
            Block.of(LAYERS, OUTSIDE, INSIDE, CONSTANTS, HOURS, OUTPUT_HOURS, POSITIONS_MM, ACCURACY);

    private CaseKeys() {}

    private static Shape<SaturationFormula> formula() {
        String words = OVER_WATER.stream().map(CaseKeys::word).collect(Collectors.joining(" / "));
        String pattern = OVER_WATER.stream().map(CaseKeys::word).collect(Collectors.joining("|"));
        return new TextShape<>(words, "^(" + pattern + ")$", CaseKeys::formula);
    }

    private static SaturationFormula formula(String text) {
        String word = text.toLowerCase(Locale.ROOT);
        return OVER_WATER.stream()
                .filter(formula -> word(formula).equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("must be one of: "
                        + OVER_WATER.stream().map(CaseKeys::word).collect(Collectors.joining(", "))
                        + (word.endsWith(FORMER_ENDING)
                                ? " (" + word(SaturationFormula.MAGNUS_TO_50C) + " meant?)"
                                : "")));
    }

    static String word(SaturationFormula formula) {
        return formula.name().toLowerCase(Locale.ROOT);
    }
}
