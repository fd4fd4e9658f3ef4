package org.limedry.cli.site;

import java.util.Arrays;
import java.util.Map;
import org.limedry.cli.site.schema.Block;
import org.limedry.cli.site.schema.Entry;
import org.limedry.cli.site.schema.Key;
import org.limedry.cli.site.schema.Named;
import org.limedry.cli.site.schema.NumberShape;
import org.limedry.cli.site.schema.Shape;
import org.limedry.reference.Estimate;
import org.limedry.wall.Background;

/** Keys of a firm's own figures for materials. */
final class OwnKeys {
    static final Key<Double> DENSITY =
            Key.optional("dryDensityKgPerM3", NumberShape.between(20.0, 4000.0), "mass of a dry m3");
    static final Key<Double> HEAT_CAPACITY =
            Key.optional("heatCapacityJPerKgK", NumberShape.between(500.0, 3000.0), "specific heat when dry");
    static final Key<Double> CONDUCTIVITY =
            Key.optional("conductivityWPerMK", NumberShape.between(0.02, 10.0), "thermal conductivity when dry");
    static final Key<Double> WATER_80 =
            Key.optional("waterAt80KgPerM3", NumberShape.between(0.1, 300.0), "water held at 80 % relative humidity");
    static final Key<Double> FREE_SATURATION =
            Key.optional("freeSaturationKgPerM3", NumberShape.between(1.0, 900.0), "water held when soaked");
    static final Key<Estimate> ABSORPTION = Key.optional(
            "absorptionKgPerM2RootS", Range.between(1e-6, 5.0), "water absorption A by a standing test, kg/(m2 s^0.5)");
    static final Key<Estimate> ENTRY_SUCTION =
            Key.optional("entrySuctionKPa", Range.between(1.0, 20_000.0), "suction at which it begins to empty");
    static final Key<Double> VAPOUR_RESISTANCE =
            Key.optional("vapourResistance", NumberShape.between(1.0, 1e6), "vapour resistance against still air, mu");

    private static final Block MATERIAL = Block.of(
            DENSITY,
            HEAT_CAPACITY,
            CONDUCTIVITY,
            WATER_80,
            FREE_SATURATION,
            ABSORPTION,
            ENTRY_SUCTION,
            VAPOUR_RESISTANCE);

    /** Old plaster lies on old brick, and takes the figures of that. */
    static final Shape<Map<String, Entry>> SHAPE = Named.among(
            Arrays.stream(Background.values())
                    .filter(background -> background != Background.OLD_PLASTER)
                    .map(Background::words)
                    .toList(),
            MATERIAL);

    private OwnKeys() {}
}
