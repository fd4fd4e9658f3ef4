package org.limedry.wall;

import java.util.Locale;
import org.limedry.material.VanGenuchten;

/**
 * How wet a wall is as the job begins, in words.
 *
 * <p>Only liquid wetness changes what a coat meets: a wall at 90 % relative humidity drinks like a dry one.
 */
public enum Wetness implements StartWater {
    /** Long dry: 60 % relative humidity in its pores. */
    DRY,
    /** Damp to the hand: 90 % relative humidity. */
    DAMP,
    /** Dark with water: half of free saturation. */
    WET,
    /** Water shows: 95 % of free saturation. */
    SOAKED;

    /** Returns the word for it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Returns the figure behind the word. */
    public StartWater start() {
        return switch (this) {
            case DRY -> new Humidity(0.60);
            case DAMP -> new Humidity(0.90);
            case WET -> new Saturation(0.50);
            case SOAKED -> new Saturation(0.95);
        };
    }

    @Override
    public double startSuctionPa(VanGenuchten retention, double celsius, Constants constants) {
        return start().startSuctionPa(retention, celsius, constants);
    }
}
