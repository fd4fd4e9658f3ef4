package org.limedry.room;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class DoorFlowTest {
    private final DoorFlow door = DoorFlow.of(RoomFixture.door(0.8, 2.0), AirExchange.ordinary());

    // COMPUTED: (0.6 * 0.8 / 3) sqrt(9.80665 * 2^3 * sqrt(dT^2 + 0.01^2) / T) in Python 3.11.7; T the mean in kelvin.
    @ParameterizedTest
    @CsvSource({"13, 11, 0.11868787058943366", "12, 12, 0.008392447361533722"})
    void eachWay_isTheFormula(double oneCelsius, double otherCelsius, double expectedM3PerS) {
        double flow = door.eachWayM3PerS(oneCelsius, otherCelsius);

        assertEquals(expectedM3PerS, flow, 1e-15); // a few roundings
    }

    @Property
    void eachWay_isTheSameFromBothSides(
            @ForAll @DoubleRange(min = -10.0, max = 30.0) double oneCelsius,
            @ForAll @DoubleRange(min = -10.0, max = 30.0) double otherCelsius) {
        assertEquals(
                door.eachWayM3PerS(oneCelsius, otherCelsius),
                door.eachWayM3PerS(otherCelsius, oneCelsius)); // no tolerance: the same operations
    }

    @Property
    void eachWay_withMoreDifferenceOrDoor_isNeverLess(
            @ForAll @DoubleRange(min = 0.0, max = 10.0) double differenceK,
            @ForAll @DoubleRange(min = 0.0, max = 5.0) double moreK,
            @ForAll @DoubleRange(min = 0.0, max = 0.5) double moreM) {
        DoorFlow larger = DoorFlow.of(RoomFixture.door(0.8 + moreM, 2.0 + moreM), AirExchange.ordinary());
        double flow = door.eachWayM3PerS(12.0 + differenceK, 12.0 - differenceK);

        double wider = door.eachWayM3PerS(12.0 + differenceK + moreK, 12.0 - differenceK - moreK);
        double through = larger.eachWayM3PerS(12.0 + differenceK, 12.0 - differenceK);

        assertTrue(wider >= flow * (1.0 - 1e-15)); // rounding of the mean temperature
        assertTrue(through >= flow);
    }
}
