package org.limedry.air;

import java.util.OptionalDouble;
import org.limedry.units.Check;
import org.limedry.units.Units;

/**
 * One state of moist air as an ideal mixture, and everything that follows from it.
 *
 * @param celsius air temperature, °C; in the range of the saturation formula over the phase that counts there
 * @param relativeHumidity vapour pressure over saturation pressure, a fraction; in [0, 1]
 * @param pressurePa barometric pressure, Pa; in [20 000, 120 000] and above the saturation pressure
 * @param saturation what 1 means
 */
public record MoistAir(double celsius, double relativeHumidity, double pressurePa, Saturation saturation) {
    /** Lowest barometric pressure that is taken, Pa: that of 12 km. */
    public static final double LOWEST_PRESSURE_PA = 20_000.0;

    /** Highest barometric pressure that is taken, Pa: more than any at the bottom of a mine. */
    public static final double HIGHEST_PRESSURE_PA = 120_000.0;

    private static final double PA_PER_KPA = 1000.0;

    public MoistAir {
        Check.inClosed(relativeHumidity, 0.0, 1.0, "relativeHumidity", "");
        Check.inClosed(pressurePa, LOWEST_PRESSURE_PA, HIGHEST_PRESSURE_PA, "pressurePa", "Pa");
        double saturated = saturation.pressurePa(celsius, pressurePa);
        Check.that(
                saturated < pressurePa,
                "pressurePa",
                "above the saturation pressure of " + saturated + " Pa",
                pressurePa);
    }

    /** Returns air with its humidity over water by WMO Magnus, as meteorology reports it. */
    public static MoistAir of(double celsius, double relativeHumidity, double pressurePa) {
        return new MoistAir(celsius, relativeHumidity, pressurePa, Saturation.METEOROLOGY);
    }

    /**
     * Returns air with this vapour pressure.
     *
     * @param vapourPressurePa vapour pressure, Pa; from 0 to saturation
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public static MoistAir ofVapourPressure(
            double celsius, double vapourPressurePa, double pressurePa, Saturation saturation) {
        return new MoistAir(
                celsius, vapourPressurePa / saturation.pressurePa(celsius, pressurePa), pressurePa, saturation);
    }

    /** Saturation pressure at the air temperature, over the phase that counts there, Pa. */
    public double saturationPressurePa() {
        return saturation.pressurePa(celsius, pressurePa);
    }

    /** Vapour pressure, Pa. */
    public double vapourPressurePa() {
        return relativeHumidity * saturationPressurePa();
    }

    /**
     * Dew point over water, °C, below 0 °C over supercooled water; empty for air too dry to have one above -100 °C, and
     * below 0 °C when the formula ends there.
     */
    public OptionalDouble dewPointCelsius() {
        return saturation.saturationCelsius(Phase.WATER, vapourPressurePa(), pressurePa);
    }

    /** Frost point over ice, °C; empty when frost cannot form because the dew point is above 0 °C, or without an ice branch. */
    public OptionalDouble frostPointCelsius() {
        return saturation.saturationCelsius(Phase.ICE, vapourPressurePa(), pressurePa);
    }

    /**
     * Thermodynamic wet bulb, °C, by {@link AdiabaticSaturation}. From 0 °C up the wick is wet. Below 0 °C it is of the
     * phase over which humidity is counted there: supercooled water or ice. Near 0 °C, where a wet and a frozen wick both
     * satisfy the equations, the wet one is taken.
     */
    public OptionalDouble wetBulbCelsius() {
        OptionalDouble wet = AdiabaticSaturation.wetBulbCelsius(this, Phase.WATER);
        boolean wetCounts = saturation.belowZero() == Phase.WATER || wet.orElse(-1.0) >= 0.0;
        return wetCounts ? wet : AdiabaticSaturation.wetBulbCelsius(this, Phase.ICE);
    }

    /** Humidity ratio, kg of vapour per kg of dry air. */
    public double humidityRatio() {
        return HumidityRatio.ofVapourPressure(vapourPressurePa(), pressurePa);
    }

    /** Absolute humidity, kg of vapour per m³ of moist air: {@code e / (Rv·T)}. */
    public double absoluteHumidityKgPerM3() {
        return vapourPressurePa() / (AirConstants.VAPOUR_GAS_CONSTANT_J_PER_KG_K * Units.kelvin(celsius));
    }

    /**
     * Enthalpy per kg of dry air, zero for dry air and liquid water at 0 °C: {@code h = 1.006·t + W·(2501 + 1.86·t)}.
     *
     * <p><b>Source:</b> ASHRAE Handbook Fundamentals (SI) 2017, chapter 1, eq. 30, second-hand. <b>Accuracy:</b> without
     * enhancement 0.3 kJ/kg up to 25 °C and 1 % above at saturation (computed against real gas).
     */
    public double enthalpyKJPerKg() {
        return AirConstants.DRY_AIR_HEAT_CAPACITY_KJ_PER_KG_K * celsius
                + humidityRatio()
                        * (AirConstants.EVAPORATION_HEAT_KJ_PER_KG
                                + AirConstants.VAPOUR_HEAT_CAPACITY_KJ_PER_KG_K * celsius); // eq. 30
    }

    /**
     * Volume of moist air that holds one kg of dry air, m³/kg: {@code v = 0.287042·T·(1 + 1.607858·W) / p}, p in kPa.
     *
     * <p><b>Source:</b> ASHRAE Handbook Fundamentals (SI) 2017, chapter 1, eq. 26, second-hand.
     */
    public double specificVolumeM3PerKg() {
        double gasConstantKJ = AirConstants.DRY_AIR_GAS_CONSTANT_J_PER_KG_K / PA_PER_KPA;
        return gasConstantKJ
                * Units.kelvin(celsius)
                * (1.0 + AirConstants.DRY_AIR_TO_WATER_MASS_RATIO * humidityRatio())
                / (pressurePa / PA_PER_KPA); // eq. 26
    }

    /** Density of the moist air, kg/m³: {@code (1 + W) / v}. */
    public double densityKgPerM3() {
        return (1.0 + humidityRatio()) / specificVolumeM3PerKg();
    }

    /**
     * Returns the relative humidity that a surface of another temperature sees: vapour pressure of the air over saturation
     * pressure at the surface, over the phase that counts there. Above 1 the surface takes dew or frost.
     *
     * @param surfaceCelsius surface temperature, °C; in the range of the saturation formula
     * @return relative humidity at the surface, a fraction; not capped at 1
     * @throws IllegalArgumentException if {@code surfaceCelsius} is NaN or outside that range
     */
    public double relativeHumidityAt(double surfaceCelsius) {
        return vapourPressurePa() / saturation.pressurePa(surfaceCelsius, pressurePa);
    }

    /**
     * Says whether dew or frost forms on a surface: whether it sees a relative humidity of 1 or more.
     *
     * @param surfaceCelsius surface temperature, °C; in the range of the saturation formula
     * @throws IllegalArgumentException if {@code surfaceCelsius} is NaN or outside that range
     */
    public boolean condensesOn(double surfaceCelsius) {
        return relativeHumidityAt(surfaceCelsius) >= 1.0;
    }

    /**
     * Returns the temperature at which a surface sees a given relative humidity: the dew point for 1, the mould line of
     * ISO 13788 for 0.8.
     *
     * @param limit relative humidity at the surface, a fraction; in (0, 1]
     * @return surface temperature, °C; empty when there is none or the formula does not cover it
     * @throws IllegalArgumentException if {@code limit} is NaN or outside its range
     */
    public OptionalDouble surfaceCelsiusAt(double limit) {
        Check.inOpenClosed(limit, 0.0, 1.0, "limit", "");
        return saturation.saturationCelsius(vapourPressurePa() / limit, pressurePa);
    }
}
