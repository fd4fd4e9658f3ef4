package org.limedry.room;

import org.limedry.units.Units;
import org.limedry.wall.Constants;

/**
 * What a dehumidifier takes from the air and gives back as heat.
 *
 * <p>Does not model ice and its thawing apart from the fade below 16 °C, a full bucket that stops the machine, ageing
 * filters, or the warm wet air that a desiccant machine blows out of doors: its heat is taken to stay in the room.
 *
 * @param waterKgPerS water caught, kg/s; at least 0
 * @param heatW heat to the air: latent heat of that water and the electric power, W
 */
public record DehumidifierOutput(double waterKgPerS, double heatW) {
    private static final double NO_COLD_COIL_CELSIUS = 6.0;
    private static final double FULL_COLD_COIL_CELSIUS = 16.0;
    private static final double DESICCANT_FULL_CELSIUS = 20.0;
    private static final double DESICCANT_FULL_RELATIVE_HUMIDITY = 0.60;

    /**
     * Returns what {@code machine} does while it is on.
     *
     * <p>{@code REFRIGERANT: rated · c_v / c_v(rating point) · clamp((t - 6) / 10, 0, 1)}, c_v vapour in kg/m3. {@code
     * DESICCANT: rated · min(1, W / W(20 °C, 60 %))} whatever its rating point, W the humidity ratio. Times {@code
     * clamp((rh - setting) / 2 % + 1/2, 0, 1)} with a humidistat: proportional over 2 %, half output at the setting. Heat
     * {@code = L · water + watts · humidistat share}: a machine too cold to dry still uses its power.
     *
     * <p><b>Source:</b> our fit to figures of suppliers: 12 l/day at 30 °C/80 % gives 4 to 5 at 15 °C/80 %
     * (S54); 0.50 to 0.60 at 27 °C/60 % and icing below about 12 °C (S53); desiccant 8.7 to 3.9 g/kg at 20 °C/60 % (S55). <b>Valid:</b> portable machines, 0 to 35 °C. <b>Accuracy:</b> not
     * stated; machines of one rating differ by a factor 1.5 in the cold.
     *
     * @param machine the machine
     * @param constants constants of the run
     * @param pressurePa air pressure, Pa
     * @param roomCelsius room air, °C
     * @param roomVapourKgPerM3 vapour in the room air, kg/m3
     * @return what it does
     */
    public static DehumidifierOutput of(
            Plant.Dehumidifier machine,
            Constants constants,
            double pressurePa,
            double roomCelsius,
            double roomVapourKgPerM3) {
        double vapourPa = roomVapourKgPerM3 * constants.gasConstantVapourJPerKgK() * Units.kelvin(roomCelsius);
        double share = machine.humidistat().isEmpty()
                ? 1.0
                : Control.drying(
                        machine.humidistat().getAsDouble(),
                        vapourPa / constants.saturation().pressurePa(roomCelsius));
        double derating = switch (machine.drying()) {
            case REFRIGERANT ->
                roomVapourKgPerM3 / ratedVapourKgPerM3(machine.rating(), constants) * coldCoil(roomCelsius);
            case DESICCANT -> desiccantShare(vapourPa, constants, pressurePa);
        };
        double waterKgPerS = machine.ratedKgPerS() * share * Math.max(0.0, derating);
        return new DehumidifierOutput(
                waterKgPerS, constants.latentHeatJPerKg() * waterKgPerS + machine.watts() * share);
    }

    private static double coldCoil(double roomCelsius) {
        double share = (roomCelsius - NO_COLD_COIL_CELSIUS) / (FULL_COLD_COIL_CELSIUS - NO_COLD_COIL_CELSIUS);
        return Math.min(1.0, Math.max(0.0, share));
    }

    private static double desiccantShare(double vapourPa, Constants constants, double pressurePa) {
        double fullPa =
                DESICCANT_FULL_RELATIVE_HUMIDITY * constants.saturation().pressurePa(DESICCANT_FULL_CELSIUS);
        return Math.min(1.0, perDryAir(vapourPa, pressurePa) / perDryAir(fullPa, pressurePa));
    }

    private static double ratedVapourKgPerM3(Plant.Rating rating, Constants constants) {
        return switch (rating) {
            case AT_30C_80 -> vapourKgPerM3(30.0, 0.80, constants);
            case AT_20C_60 -> vapourKgPerM3(20.0, 0.60, constants);
        };
    }

    private static double vapourKgPerM3(double celsius, double relativeHumidity, Constants constants) {
        return relativeHumidity
                * constants.saturation().pressurePa(celsius)
                / (constants.gasConstantVapourJPerKgK() * Units.kelvin(celsius));
    }

    /** The humidity ratio but for the ratio of molar masses, which cancels. */
    private static double perDryAir(double vapourPa, double pressurePa) {
        return vapourPa / (pressurePa - vapourPa);
    }
}
