package org.limedry.climate;

import org.limedry.air.MoistAir;

/**
 * The water that a cubic metre of outdoor air can carry out of a room, and how well two loggers know it.
 *
 * <p>It is a small difference of two larger numbers: in winter the error of ordinary sensors is about half of it.
 *
 * @param kgPerM3 water carried out, kg per m3 of air exchanged; negative when the outdoor air brings water in
 * @param errorKgPerM3 one standard deviation of it, kg/m3
 */
public record DryingPower(double kgPerM3, double errorKgPerM3) {
    private static final double STEP_K = 0.05;

    /**
     * Returns the difference of the absolute humidities and its error.
     *
     * <p>{@code P = a(Ti, hi) - a(To, ho)}; {@code s2 = sum of (da/dT sT)2 + (da/dh sh)2} over both loggers, whose errors
     * are taken as independent.
     *
     * <p><b>Source:</b> law of propagation of uncertainty, JCGM 100:2008, equation (10). <b>Valid:</b> where the
     * saturation formula of both states is, with 0.05 K to spare. <b>Accuracy:</b> first order in the errors.
     *
     * @param inside air of the room
     * @param outside air outdoors
     * @param error error of each of the two loggers
     */
    public static DryingPower between(MoistAir inside, MoistAir outside, SensorError error) {
        double power = inside.absoluteHumidityKgPerM3() - outside.absoluteHumidityKgPerM3();
        return new DryingPower(power, Math.sqrt(variance(inside, error) + variance(outside, error)));
    }

    /** Returns whether the answer is larger than twice its error: whether opening up can be said to help or to harm. */
    public boolean isTold() {
        return Math.abs(kgPerM3) > 2.0 * errorKgPerM3;
    }

    private static double variance(MoistAir air, SensorError error) {
        double perKelvin = (at(air, STEP_K) - at(air, -STEP_K)) / (2.0 * STEP_K);
        MoistAir full = new MoistAir(air.celsius(), 1.0, air.pressurePa(), air.saturation());
        double byTemperature = perKelvin * error.temperatureK();
        // Absolute humidity is proportional to relative humidity.
        double byHumidity = full.absoluteHumidityKgPerM3() * error.relativeHumidity();
        return byTemperature * byTemperature + byHumidity * byHumidity;
    }

    private static double at(MoistAir air, double warmerK) {
        return new MoistAir(air.celsius() + warmerK, air.relativeHumidity(), air.pressurePa(), air.saturation())
                .absoluteHumidityKgPerM3();
    }
}
