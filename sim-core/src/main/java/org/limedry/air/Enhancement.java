package org.limedry.air;

import org.limedry.units.Check;

/** How much more vapour saturated air holds than an empty space: the factor on the saturation pressure. */
public enum Enhancement {
    /** Ideal air: the factor is 1. */
    NONE {
        @Override
        public double factor(double pressurePa) {
            return 1.0;
        }
    },

    /**
     * {@code f = 1.0016 + 3.15e-6·p - 0.074/p}, p in hPa.
     *
     * <p><b>Source:</b> WMO-No. 8, annex 4.B, eq. 4.B.5, second-hand. <b>Valid:</b> not stated; 50 to 110 kPa is ours.
     * <b>Accuracy:</b> within 0.0007 of the real-gas factor from 70 to 101.325 kPa and -20 to 50 °C (computed).
     */
    WMO8 {
        @Override
        public double factor(double pressurePa) {
            Check.inClosed(pressurePa, 50_000.0, 110_000.0, "pressurePa", "Pa");
            double hPa = pressurePa / 100.0;
            return 1.0016 + 3.15e-6 * hPa - 0.074 / hPa; // eq. 4.B.5
        }
    };

    /**
     * Returns the factor.
     *
     * @param pressurePa barometric pressure, Pa
     * @return saturation pressure in moist air over that of pure vapour, dimensionless
     * @throws IllegalArgumentException if {@code pressurePa} is NaN or outside the range of the factor
     */
    public abstract double factor(double pressurePa);
}
