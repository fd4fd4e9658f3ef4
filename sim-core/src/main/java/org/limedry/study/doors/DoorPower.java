package org.limedry.study.doors;

import org.limedry.air.MagnusForm;
import org.limedry.climate.SensorError;

/**
 * What a cubic metre of outdoor air can take up, and how well that is known.
 *
 * <p>Does not say how many cubic metres come in, nor whether the walls have that much to give.
 *
 * @param gPerM3 water that it can take away, g/m3; negative if it brings water
 * @param errorGPerM3 one-sigma error, g/m3
 */
public record DoorPower(double gPerM3, double errorGPerM3) {
    /** Whether the power is beyond what instruments can tell. */
    public enum Sign {
        /** It dries. */
        DRIES,
        /** It wets. */
        WETS,
        /** Nobody can tell. */
        WITHIN_ERROR
    }

    /**
     * Returns what outdoor air, warmed or cooled to the room, takes out of its air.
     *
     * <p>{@code (p_i - p_e) / (R_v T_i)}; error {@code sqrt(s_i^2 + s_e^2) / (R_v T_i)}, s as in {@link
     * AirReading#errorPa}.
     *
     * <p><b>Source:</b> gas law, balance of partial pressures; first-order propagation. <b>Valid:</b> errors of the two
     * instruments independent. <b>Accuracy:</b> ideal gas, 0.5 %; the error of T_i in the divisor, 0.2 %, is left out.
     *
     * @param inside air of the room
     * @param outside air outdoors
     * @param errors of each instrument
     */
    public static DoorPower ofRoom(AirReading inside, AirReading outside, SensorError errors) {
        double differencePa = inside.vapourPressurePa() - outside.vapourPressurePa();
        return of(differencePa, Math.hypot(inside.errorPa(errors), outside.errorPa(errors)), inside.celsius());
    }

    /**
     * Returns what outdoor air takes off a wet face; negative when it wets it: its dew point is above the face.
     *
     * <p>{@code (p_sat(t_s) - p_e) / (R_v T_s)}; the error of the face is that of a temperature alone.
     *
     * <p><b>Source:</b> as {@link #ofRoom}. <b>Valid:</b> a face that is wet or about to be. <b>Accuracy:</b> as there.
     *
     * @param faceCelsius face of the wall, C
     * @param outside air outdoors
     * @param errors of each instrument
     */
    public static DoorPower ofFace(double faceCelsius, AirReading outside, SensorError errors) {
        double differencePa = MagnusForm.WMO_WATER.pressurePa(faceCelsius) - outside.vapourPressurePa();
        double facePa = MagnusForm.WMO_WATER.slopePaPerK(faceCelsius) * errors.temperatureK();
        return of(differencePa, Math.hypot(facePa, outside.errorPa(errors)), faceCelsius);
    }

    private static DoorPower of(double differencePa, double errorPa, double celsius) {
        return new DoorPower(AirReading.gramsPerM3(differencePa, celsius), AirReading.gramsPerM3(errorPa, celsius));
    }

    /** Tells which way it goes, if that is more than one sigma. */
    public Sign sign() {
        if (gPerM3 > errorGPerM3) {
            return Sign.DRIES;
        }
        return gPerM3 < -errorGPerM3 ? Sign.WETS : Sign.WITHIN_ERROR;
    }
}
