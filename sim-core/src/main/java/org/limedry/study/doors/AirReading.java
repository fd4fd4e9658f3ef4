package org.limedry.study.doors;

import org.limedry.air.AirConstants;
import org.limedry.air.MagnusForm;
import org.limedry.climate.SensorError;
import org.limedry.units.Check;
import org.limedry.units.Units;

/**
 * Air as an instrument reads it.
 *
 * @param celsius temperature, C
 * @param relativeHumidity relative humidity over water, fraction; at least 0, may pass 1 by a little
 */
public record AirReading(double celsius, double relativeHumidity) {
    public AirReading {
        Check.finite(celsius, "celsius", "C");
        Check.nonNegative(relativeHumidity, "relativeHumidity", "");
    }

    /** Returns the vapour pressure, Pa. */
    public double vapourPressurePa() {
        return relativeHumidity * MagnusForm.WMO_WATER.pressurePa(celsius);
    }

    /** Returns the vapour in it, g/m3. */
    public double vapourGPerM3() {
        return gramsPerM3(vapourPressurePa(), celsius);
    }

    /**
     * Returns the one-sigma error of the vapour pressure, {@code sqrt((phi p_sat'(t) s_t)^2 + (p_sat(t) s_phi)^2)}.
     *
     * <p><b>Source:</b> first-order propagation of independent errors. <b>Valid:</b> errors small against the reading.
     * <b>Accuracy:</b> 2 % for errors up to 1 K and 5 %.
     */
    double errorPa(SensorError errors) {
        return Math.hypot(
                relativeHumidity * MagnusForm.WMO_WATER.slopePaPerK(celsius) * errors.temperatureK(),
                MagnusForm.WMO_WATER.pressurePa(celsius) * errors.relativeHumidity());
    }

    /** Returns the vapour of a partial pressure at a temperature, {@code p / (R_v T)}, g/m3. */
    static double gramsPerM3(double vapourPressurePa, double celsius) {
        return 1000.0 * vapourPressurePa / (AirConstants.VAPOUR_GAS_CONSTANT_J_PER_KG_K * Units.kelvin(celsius));
    }
}
