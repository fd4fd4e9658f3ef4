package org.limedry.study.doors;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.limedry.climate.SensorError;
import org.limedry.study.doors.DoorPower.Sign;

final class DoorPowerTest {
    private static final SensorError NONE = new SensorError(0.0, 0.0);

    // COMPUTED: Python 3.11, WMO Magnus over water and the gas law at the room's temperature.
    @Test
    void ofRoom_coldDampDay_isTheDifferenceOfVapour() {
        DoorPower power = DoorPower.ofRoom(new AirReading(8.0, 0.85), new AirReading(5.0, 0.90), SensorError.usual());

        assertEquals(0.97223, power.gPerM3(), 1.0e-5); // digits of the computed figure
        // COMPUTED: Python 3.11, 400,000 draws of all four readings, seed 1: 0.450.
        assertEquals(0.450, power.errorGPerM3(), 0.005); // first-order propagation against the draws, about 1 %
        assertEquals(Sign.DRIES, power.sign());
    }

    // COMPUTED: Python 3.11, as above; "about 2 g per m3" of the trade.
    @Test
    void ofFace_mildWetAirOnColdWalls_putsTwoGramsOnThem() {
        DoorPower power = DoorPower.ofFace(7.0, new AirReading(12.0, 0.90), SensorError.usual());

        assertEquals(-2.0047, power.gPerM3(), 1.0e-4); // digits of the computed figure
        // COMPUTED: Python 3.11, 400,000 draws: 0.528.
        assertEquals(0.528, power.errorGPerM3(), 0.005); // first-order propagation against the draws, about 1 %
        assertEquals(Sign.WETS, power.sign());
    }

    // EXACT: at one temperature the vapour pressures stand as the humidities do, whatever the saturation formula.
    @Property(tries = 200)
    void ofRoom_sameTemperature_hasTheSignOfTheHumidities(
            @ForAll @DoubleRange(min = -10.0, max = 30.0) double celsius,
            @ForAll @DoubleRange(min = 0.2, max = 1.0) double inside,
            @ForAll @DoubleRange(min = 0.2, max = 1.0) double outside) {
        DoorPower power = DoorPower.ofRoom(new AirReading(celsius, inside), new AirReading(celsius, outside), NONE);

        assertEquals(Math.signum(inside - outside), Math.signum(power.gPerM3()));
    }

    // EXACT: a figure that equals its error is not beyond it.
    @Test
    void sign_atTheErrorItself_isWithinIt() {
        assertEquals(Sign.WITHIN_ERROR, new DoorPower(0.4, 0.4).sign());
        assertEquals(Sign.WITHIN_ERROR, new DoorPower(-0.4, 0.4).sign());
        assertEquals(Sign.DRIES, new DoorPower(0.41, 0.4).sign());
        assertEquals(Sign.WETS, new DoorPower(-0.41, 0.4).sign());
    }

    @Test
    void errors_belowNothing_areRefused() {
        assertThrows(IllegalArgumentException.class, () -> new SensorError(-0.1, 0.03));
        assertThrows(IllegalArgumentException.class, () -> new SensorError(0.5, -0.03));
        assertThrows(IllegalArgumentException.class, () -> new SensorError(Double.NaN, 0.03));
    }
}
