package org.limedry.cli.site;

import org.limedry.cli.site.schema.Block;
import org.limedry.cli.site.schema.Key;
import org.limedry.reference.Estimate;

/** Keys of what nobody on site can know; a figure with its range, or one number to hold it fast. */
final class AssumeKeys {
    static final Key<Estimate> OPENING_FLOW = Key.optional(
                    "openingFlowFactor",
                    Range.between(0.1, 5.0),
                    "air through open doors and windows against the formula")
            .workedOut("1, from 0.5 to 2");
    static final Key<Estimate> DEHUMIDIFIER_OUTPUT = Key.optional(
                    "dehumidifierFactor",
                    Range.between(0.1, 3.0),
                    "water that dehumidifiers take up against their plates and curves")
            .workedOut("1, from 0.7 to 1.2");
    static final Key<Estimate> STILL_AIR = Key.optional(
                    "stillAirWPerM2K",
                    Range.between(0.5, 15.0),
                    "heat taken up by a face in a still room; vapour goes with it")
            .workedOut("3, from 2 to 5");
    static final Key<Estimate> READY_SUCTION = Key.optional(
                    "readySuctionKPa", Range.between(1.0, 100_000.0), "suction at which a coat counts as green-hard")
            .workedOut("300, from 100 to 1000");
    static final Key<Estimate> READY_AGE = Key.optional(
                    "readyAgeDays",
                    Range.between(0.0, 60.0),
                    "age, in days' worth at 20 C, at which it counts as green-hard")
            .workedOut("2, from 1 to 3");
    static final Key<Estimate> WEATHER_SHIFT = Key.optional(
                    "weatherShiftDays",
                    Range.between(-21.0, 21.0),
                    "days by which the weather is taken later, to stand for other years")
            .workedOut("0, from -21 to 21");
    static final Key<Estimate> THICKNESS = Key.optional(
                    "coatThicknessFactor",
                    Range.between(0.5, 2.0),
                    "true mean thickness of the coats against what is written")
            .workedOut("1, from 0.85 to 1.15");

    static final Block BLOCK =
            Block.of(OPENING_FLOW, DEHUMIDIFIER_OUTPUT, STILL_AIR, READY_SUCTION, READY_AGE, WEATHER_SHIFT, THICKNESS);

    private AssumeKeys() {}
}
