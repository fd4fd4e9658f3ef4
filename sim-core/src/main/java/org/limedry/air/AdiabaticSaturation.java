package org.limedry.air;

import java.util.OptionalDouble;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.limedry.units.Check;

/**
 * The thermodynamic wet bulb: the temperature at which water evaporating into air brings it to saturation without heat
 * from outside.
 *
 * <p>It is not the reading of a real wick, for which see {@link Psychrometer}: over ice the two differ by up to 8 % of
 * relative humidity.
 */
public final class AdiabaticSaturation {
    private static final double ROOT_ACCURACY_K = 1e-12;
    private static final int MAX_ROOT_EVALUATIONS = 200;

    /** Saturated air: with the dew point as near as this to the temperature, rounding hides the root between them. */
    private static final double SATURATED_WITHIN_K = 1e-9;

    private AdiabaticSaturation() {}

    /**
     * Returns the humidity ratio of air with this dry and wet bulb.
     *
     * <p>Over water {@code W = ((2501 - 2.326·tw)·Ws - 1.006·(t - tw)) / (2501 + 1.86·t - 4.186·tw)}, over ice {@code W =
     * ((2830 - 0.24·tw)·Ws - 1.006·(t - tw)) / (2830 + 1.86·t - 2.1·tw)}, Ws at saturation at tw.
     *
     * <p><b>Source:</b> ASHRAE Handbook Fundamentals (SI) 2017, chapter 1, eq. 33 and 35, second-hand. <b>Valid:</b> not
     * stated. <b>Accuracy:</b> that of ideal moist air.
     *
     * @param dryCelsius air temperature, °C
     * @param wetCelsius wet-bulb temperature, °C; where saturated vapour stays below {@code pressurePa}
     * @param pressurePa barometric pressure, Pa
     * @param wick whether the wick is wet or frozen
     * @param saturation the formula; the wick decides the phase
     * @return humidity ratio, kg/kg dry air; negative when no air can have this wet bulb
     * @throws IllegalArgumentException if an argument is not finite, the formula lacks the phase, or water would boil
     */
    public static double humidityRatio(
            double dryCelsius, double wetCelsius, double pressurePa, Phase wick, Saturation saturation) {
        Check.finite(dryCelsius, "dryCelsius", "°C");
        double saturated = HumidityRatio.ofVapourPressure(
                saturation.enhancement().factor(pressurePa)
                        * saturation.formula().extrapolatedPressurePa(wick, wetCelsius),
                pressurePa);
        double sensible = AirConstants.DRY_AIR_HEAT_CAPACITY_KJ_PER_KG_K * (dryCelsius - wetCelsius);
        double vapour = AirConstants.VAPOUR_HEAT_CAPACITY_KJ_PER_KG_K * dryCelsius;
        return switch (wick) {
            case WATER ->
                ((AirConstants.EVAPORATION_HEAT_KJ_PER_KG - 2.326 * wetCelsius) * saturated - sensible)
                        / (AirConstants.EVAPORATION_HEAT_KJ_PER_KG + vapour - 4.186 * wetCelsius); // eq. 33
            case ICE ->
                ((2830.0 - 0.24 * wetCelsius) * saturated - sensible) / (2830.0 + vapour - 2.1 * wetCelsius); // eq. 35
        };
    }

    /**
     * Returns the wet bulb of air over a wick of one phase: the root of {@link #humidityRatio} between the dew (or frost)
     * point and the air temperature, to 1e-12 K.
     *
     * @param air the air
     * @param wick whether the wick is wet or frozen; a wet wick may be supercooled
     * @return wet-bulb temperature, °C; empty when the formula does not cover it, and over ice when it would lie above
     *     0 °C. Over ice it is above the air temperature when the air is supersaturated over ice.
     */
    public static OptionalDouble wetBulbCelsius(MoistAir air, Phase wick) {
        if (!air.saturation().formula().covers(wick)) {
            return OptionalDouble.empty();
        }
        OptionalDouble saturated = air.saturation().saturationCelsius(wick, air.vapourPressurePa(), air.pressurePa());
        if (Math.abs(saturated.orElse(Double.NaN) - air.celsius()) < SATURATED_WITHIN_K) {
            return saturated;
        }
        double far = saturated.orElse(air.saturation().formula().lowestCelsius(wick));
        double near = Math.min(air.celsius(), air.saturation().formula().maxCelsius(wick));
        UnivariateFunction surplus = wet ->
                humidityRatio(air.celsius(), wet, air.pressurePa(), wick, air.saturation()) - air.humidityRatio();
        // From the dew point to the air temperature the surplus goes through zero, unless the branch ends between them.
        if (surplus.value(far) * surplus.value(near) > 0.0) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(new BrentSolver(ROOT_ACCURACY_K)
                .solve(MAX_ROOT_EVALUATIONS, surplus, Math.min(far, near), Math.max(far, near)));
    }
}
