package org.limedry.room;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.limedry.air.MagnusForm;
import org.limedry.reference.ReferenceTable;
import org.limedry.room.AirExchange.Balance;

/**
 * The room rows of the case WETBULB_ROOM as far as the balance of the air alone goes; the wet faces are the walls' matter.
 * Partial pressures at room temperature, 461.5 J/(kg K), ISO saturation over water, air of 1.204 * 1006 J/(m3 K).
 */
final class RoomBalanceBenchmarkTest {
    private static final double VOLUME_M3 = 30.0;
    private static final double WET_AREA_M2 = 40.0;
    private static final double ROOM_CELSIUS = 20.0;
    private static final double OUTDOOR_CELSIUS = 5.0;
    private static final double OUTDOOR_PA = 0.8 * MagnusForm.ISO_WATER.pressurePa(OUTDOOR_CELSIUS);
    private static final double AIR_J_PER_M3_K = 1.204 * 1006.0;
    private static final VapourExchange EXCHANGE = new VapourExchange(
            Balance.PARTIAL_PRESSURE, 101_325.0, 461.5, new VapourExchange.HeatCapacity.Fixed(AIR_J_PER_M3_K));

    // COMPUTED: WETBULB_ROOM, rows "room 30 m3 at 20 C, 40 m2 wet plaster": at the humidity found, what 40 m2 give
    // leaves.
    @ParameterizedTest
    @ValueSource(strings = {"0.2", "0.5", "2", "10"})
    void out_atTheHumidityOfTheWetRoom_isWhatThePlasterGives(String airChange) {
        String room = "room 30 m3 at 20 C, 40 m2 wet plaster (h_c=3,h_r=5), outdoor 5C/80%, " + airChange + " 1/h";
        double humidity = value(room, "RH");
        double givenKgPerS = WET_AREA_M2 * value(room, "drying rate per m2");

        double outKgPerS = outKgPerS(Double.parseDouble(airChange), densityKgPerM3(humidity));

        assertEquals(givenKgPerS, outKgPerS, 1e-5 * givenKgPerS); // six digits printed of both
    }

    // COMPUTED: WETBULB_ROOM, rows "room 30 m3 20 C n=0.5 ... source 100 g/h start 50 %", exact there.
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 4, 8, 16})
    void humidity_withASource_followsTheExponential(int halfHours) {
        double hours = 0.5 * halfHours;
        String label = halfHours == 1 ? "0.5" : Integer.toString(halfHours / 2);

        double vapour = integrate(
                densityKgPerM3(0.5), hours * 3600.0, kgPerM3 -> (0.1 / 3600.0 - outKgPerS(0.5, kgPerM3)) / VOLUME_M3);

        double expected =
                value("room 30 m3 20 C n=0.5 outdoor 5C/80% source 100 g/h start 50 %", "RH after " + label + " h");
        assertEquals(expected, vapour / densityKgPerM3(1.0), 1e-6); // six digits printed
    }

    // COMPUTED: WETBULB_ROOM, rows "room air 30 m3, UA=60 W/K to 5 C, heater 600 W": the loss as a flow of air.
    @ParameterizedTest
    @ValueSource(strings = {"0.1", "0.25", "0.5", "1"})
    void temperature_withAHeater_followsTheExponential(String hours) {
        double flowM3PerS = 60.0 / AIR_J_PER_M3_K;

        double celsius = integrate(
                5.0,
                Double.parseDouble(hours) * 3600.0,
                roomCelsius -> (600.0 + EXCHANGE.heatInW(flowM3PerS, roomCelsius, OUTDOOR_CELSIUS, OUTDOOR_PA))
                        / (VOLUME_M3 * AIR_J_PER_M3_K));

        double expected = value(
                "room air 30 m3, UA=60 W/K to 5 C, heater 600 W, start 5 C, no thermal mass",
                "T after " + hours + " h");
        assertEquals(expected, celsius, 1e-5 * expected); // six digits printed
    }

    // EXACT: without air change nothing leaves, whatever the humidity.
    @Test
    void out_withoutAirChange_isZero() {
        assertEquals(0.0, outKgPerS(0.0, densityKgPerM3(1.0)));
    }

    private static double outKgPerS(double airChangesPerHour, double vapourKgPerM3) {
        double flowM3PerS = airChangesPerHour * VOLUME_M3 / 3600.0;
        return EXCHANGE.outKgPerS(flowM3PerS, ROOM_CELSIUS, vapourKgPerM3, OUTDOOR_CELSIUS, OUTDOOR_PA);
    }

    private static double densityKgPerM3(double relativeHumidity) {
        return relativeHumidity * MagnusForm.ISO_WATER.pressurePa(ROOM_CELSIUS) / (461.5 * (ROOM_CELSIUS + 273.15));
    }

    /** Classical Runge-Kutta in 400 steps: its error is below 1e-9 here. */
    private static double integrate(double start, double seconds, DoubleUnaryOperator rate) {
        double dt = seconds / 400.0;
        double y = start;
        for (int step = 0; step < 400; step++) {
            double k1 = rate.applyAsDouble(y);
            double k2 = rate.applyAsDouble(y + 0.5 * dt * k1);
            double k3 = rate.applyAsDouble(y + 0.5 * dt * k2);
            double k4 = rate.applyAsDouble(y + dt * k3);
            y += dt / 6.0 * (k1 + 2.0 * k2 + 2.0 * k3 + k4);
        }
        return y;
    }

    private static double value(String room, String quantity) {
        return ReferenceTable.load("benchmarks/WETBULB_ROOM").rows().stream()
                .filter(row ->
                        row.text("case").equals(room) && row.text("quantity").equals(quantity))
                .findFirst()
                .orElseThrow()
                .number("value");
    }
}
