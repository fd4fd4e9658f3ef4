package org.limedry.material;

import org.limedry.units.Check;

/** A property told by a table over water: linear between rows, held constant past both ends. */
public final class LinearTable implements WaterFunction {
    private final double[] water;
    private final double[] value;
    private final double[] slope;

    /**
     * Takes the rows of a table.
     *
     * @param waterKgPerM3 water, kg/m3; at least 0, rising from row to row; at least two
     * @param value the property in its own unit; at least 0
     */
    public LinearTable(double[] waterKgPerM3, double[] value) {
        water = waterKgPerM3.clone();
        this.value = value.clone();
        Check.atLeast(water.length, 2, "waterKgPerM3 rows");
        Check.that(value.length == water.length, "value", "one for each water", value.length);
        for (int k = 0; k < water.length; k++) {
            Check.nonNegative(water[k], "waterKgPerM3", "kg/m3");
            Check.nonNegative(value[k], "value", "");
            Check.that(k == 0 || water[k] > water[k - 1], "waterKgPerM3", "rising from row to row", water[k]);
        }
        slope = new double[water.length - 1];
        for (int k = 0; k < slope.length; k++) {
            slope[k] = (value[k + 1] - value[k]) / (water[k + 1] - water[k]);
        }
    }

    @Override
    public double at(double waterKgPerM3) {
        int last = water.length - 1;
        if (waterKgPerM3 <= water[0]) {
            return value[0];
        }
        if (waterKgPerM3 >= water[last]) {
            return value[last];
        }
        int k = piece(waterKgPerM3);
        return value[k] + slope[k] * (waterKgPerM3 - water[k]);
    }

    /** Returns the slope by water, of the wetter piece at a row, 0 past the ends. */
    public double slopeAt(double waterKgPerM3) {
        boolean inside = waterKgPerM3 > water[0] && waterKgPerM3 < water[water.length - 1];
        return inside ? slope[piece(waterKgPerM3)] : 0.0;
    }

    private int piece(double waterKgPerM3) {
        int low = 0;
        int high = water.length - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (water[middle] <= waterKgPerM3) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
