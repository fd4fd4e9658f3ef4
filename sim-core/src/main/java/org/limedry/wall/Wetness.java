package org.limedry.wall;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.limedry.material.VanGenuchten;
import org.limedry.units.Units;

/**
 * How wet a wall is as the job begins, in words.
 *
 * <p>Only liquid wetness changes what a coat meets: a wall at 90 % relative humidity drinks like a dry one.
 */
public enum Wetness {
    /** Long dry: 60 % relative humidity in its pores. */
    DRY(0.60, false),
    /** Damp to the hand: 90 % relative humidity. */
    DAMP(0.90, false),
    /** Dark with water: half of free saturation. */
    WET(0.50, true),
    /** Water shows: 95 % of free saturation. */
    SOAKED(0.95, true);

    private final double value;
    private final boolean isSaturation;

    Wetness(double value, boolean isSaturation) {
        this.value = value;
        this.isSaturation = isSaturation;
    }

    /**
     * Returns the wetness of that name.
     *
     * @param word "dry", "damp", "wet" or "soaked"
     * @throws IllegalArgumentException if there is none of that name
     */
    public static Wetness named(String word) {
        for (Wetness wetness : values()) {
            if (wetness.word().equals(word)) {
                return wetness;
            }
        }
        String allowed = Arrays.stream(values()).map(Wetness::word).collect(Collectors.joining(", "));
        throw new IllegalArgumentException("wetness: must be one of " + allowed + ", was \"" + word + "\"");
    }

    /** Returns the word for it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * Returns the suction from which a material starts, Pa: by Kelvin's law {@code p = -rho_w R_v T ln(phi)} from a
     * humidity, by its retention from a saturation.
     *
     * @param retention retention of the material
     * @param celsius its temperature, C
     * @param constants density of water and gas constant of vapour
     */
    public double startSuctionPa(VanGenuchten retention, double celsius, Constants constants) {
        if (isSaturation) {
            return retention.suctionPa(value);
        }
        double scalePa = constants.waterDensityKgPerM3() * constants.gasConstantVapourJPerKgK() * Units.kelvin(celsius);
        return -scalePa * Math.log(value);
    }
}
