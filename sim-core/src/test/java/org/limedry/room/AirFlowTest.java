package org.limedry.room;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class AirFlowTest {
    private static final double ULPS = 1e-14; // relative: a few roundings of sqrt and products

    // EXACT: 1/2 sqrt(0.0035 dT + 0.01) for 1 m2, 1 m high, without wind, to three digits; the formula FROM MEMORY (de
    // Gids
    // and Phaff 1982).
    @ParameterizedTest
    @CsvSource({"5, 0.083", "10, 0.106", "20, 0.141"})
    void singleSided_inStillAir_isHalfTheRootOfBuoyancyAndTurbulence(double differenceK, double expectedM3PerS) {
        double flow = AirFlow.singleSidedM3PerS(1.0, 1.0, differenceK, 0.0);

        assertEquals(expectedM3PerS, flow, 0.0005); // half of the last printed digit
    }

    // COMPUTED: the formula with A = 1.6, h = 2.0, dT = 3.7, U = 2.3 in Python 3.11.7 (math.sqrt).
    @Test
    void singleSided_withWind_isTheFormula() {
        double flow = AirFlow.singleSidedM3PerS(1.6, 2.0, 3.7, 2.3);

        assertEquals(0.16236255725997914, flow, ULPS);
    }

    @Test
    void singleSided_colderRoom_exchangesAsMuch() {
        double warm = AirFlow.singleSidedM3PerS(1.6, 2.0, 3.7, 2.3);

        double cold = AirFlow.singleSidedM3PerS(1.6, 2.0, -3.7, 2.3);

        assertEquals(warm, cold); // no tolerance: the same operations
    }

    // EXACT: sqrt((1.3 * 0.16236...)^2 + (45 * 0.7 / 3600)^2) + 0.03; the factor acts on the opening alone.
    @Test
    void freshAir_withLeakageFanAndFactor_combinesAsStated() {
        AirExchange air = new AirExchange(AirExchange.Balance.DRY_AIR_MASS, 101_325.0, 1.3, 0.4, 0.60);
        Plant fan = new Plant.Fan("fan", 0.03, RoomFixture.BY_DAY);
        RoomPlan room = RoomFixture.with(List.of(RoomFixture.outdoors(0.8, 2.0, 0.0, "N")), List.of(fan), 0.7);

        double flow = AirFlow.freshAirM3PerS(OpenState.of(room, RoomFixture.NOON, air), 9.7, 6.0, 2.3);

        double opening = AirFlow.singleSidedM3PerS(1.6, 2.0, 3.7, 2.3);
        assertEquals(Math.hypot(1.3 * opening, 0.00875) + 0.03, flow, 1e-13); // 9.7 - 6.0 is not 3.7 to the last bit
    }

    // EXACT: with all shut and the fan off only the leakage is left: 45 m3 * 0.7 1/h.
    @Test
    void freshAir_withAllShut_isTheLeakage() {
        Plant fan = new Plant.Fan("fan", 0.03, RoomFixture.BY_DAY);
        RoomPlan room = RoomFixture.with(List.of(RoomFixture.outdoors(0.8, 2.0, 0.0, "N")), List.of(fan), 0.7);

        OpenState state = OpenState.of(room, RoomFixture.NIGHT, AirExchange.ordinary());

        assertFalse(state.anyOpen());
        assertEquals(0.00875, AirFlow.freshAirM3PerS(state, 9.7, 6.0, 2.3), ULPS);
    }

    // EXACT: a door to another room is no way to outdoors.
    @Test
    void freshAir_withOnlyAnInnerDoorOpen_isZero() {
        OpenState state = RoomFixture.open(RoomFixture.door(0.8, 2.0));

        assertFalse(state.anyOpen());
        assertEquals(0.0, AirFlow.freshAirM3PerS(state, 9.7, 6.0, 2.3));
    }

    // COMPUTED: Cd A_s sqrt(2 g H sqrt(dT^2 + 0.01^2) / T), Cd 0.6, areas 0.5 and 0.3 m2 in series, H 1.8 m, 14 and 6
    // C,
    // T 283.15 K, in Python 3.11.7: 0.15415...; single-sided is 0.072 m3/s there.
    @Test
    void freshAir_lowAndHighOpeningInStillAir_isTheStackFlow() {
        OpenState state =
                RoomFixture.open(RoomFixture.outdoors(0.5, 1.0, 0.1, "N"), RoomFixture.outdoors(0.6, 0.5, 2.15, "N"));

        double flow = AirFlow.freshAirM3PerS(state, 14.0, 6.0, 0.0);

        assertEquals(0.15415283609160274, flow, 1e-12); // the neutral level is found to 1e-12 m
    }

    // EXACT: areas 0.25, 0.5 and 0.375 m2 at 0.5, 1.5 and 3 m: a neutral level at z gives as much in as out. At z = 1.5
    // the flow in is 0.25 sqrt(1) and out 0.375 sqrt(1.5) = 0.459, so z lies above 1.5; the root of
    // 0.25 sqrt(z - 0.5) + 0.5 sqrt(z - 1.5) = 0.375 sqrt(3 - z) is checked by its own residual.
    @Test
    void stack_ofThreeOpenings_letsInBelowAsMuchAsOutAbove() {
        OpenState three = RoomFixture.open(
                RoomFixture.outdoors(0.25, 1.0, 0.0, "N"),
                RoomFixture.outdoors(0.5, 1.0, 1.0, "N"),
                RoomFixture.outdoors(0.375, 1.0, 2.5, "N"));

        double sum = three.stackCoefficientM3PerS() / (0.6 * Math.sqrt(2.0 * 9.80665));

        double above = sum / 0.375;
        double neutralM = 3.0 - above * above;
        double below = 0.25 * Math.sqrt(neutralM - 0.5) + 0.5 * Math.sqrt(neutralM - 1.5);
        assertTrue(neutralM > 1.5);
        assertEquals(sum, below, 1e-9); // sqrt of the level accuracy, times an area
    }

    // EXACT: by day an opening to outdoors and a fan of 0.03 m3/s; people are neither.
    @Test
    void openState_byDay_hasTheOpeningAndTheFan() {
        RoomPlan room = RoomFixture.with(
                List.of(RoomFixture.outdoors(0.8, 2.0, 0.0, "N"), RoomFixture.door(0.8, 2.0)),
                List.of(
                        new Plant.People("gang", 3.0, RoomFixture.BY_DAY),
                        new Plant.Fan("fan", 0.03, RoomFixture.BY_DAY)),
                0.0);

        OpenState state = OpenState.of(room, RoomFixture.NOON, AirExchange.ordinary());

        assertTrue(state.anyOpen());
        assertEquals(List.of(new OpenState.Gap(1.6, 2.0)), state.gaps());
        assertEquals(0.03, state.fansM3PerS());
        assertEquals(
                0.0,
                OpenState.of(room, RoomFixture.NIGHT, AirExchange.ordinary()).fansM3PerS());
    }

    @Test
    void stack_ofOpeningsAtOneHeight_isZero() {
        OpenState state =
                RoomFixture.open(RoomFixture.outdoors(0.5, 1.0, 0.9, "N"), RoomFixture.outdoors(0.7, 1.0, 0.9, "N"));

        assertEquals(0.0, state.stackCoefficientM3PerS());
    }

    // COMPUTED: 0.6 sqrt(0.4) A_s, sides of 0.5, 0.3 and 0.2 m2, the best 0.5 against 0.5, in Python 3.11.7.
    @Test
    void cross_ofThreeSides_isTheBestSideAgainstTheOthers() {
        OpenState state = RoomFixture.open(
                RoomFixture.outdoors(0.5, 1.0, 0.9, "N"),
                RoomFixture.outdoors(0.3, 1.0, 0.9, "S"),
                RoomFixture.outdoors(0.2, 1.0, 0.9, "E"));

        assertEquals(0.13416407864998736, state.crossAreaM2(), ULPS);
    }

    // EXACT: at 8 m/s the cross flow leads: area times wind.
    @Test
    void freshAir_throughTwoSidesInWind_isTheCrossFlow() {
        OpenState state =
                RoomFixture.open(RoomFixture.outdoors(0.5, 1.0, 0.9, "N"), RoomFixture.outdoors(0.5, 1.0, 0.9, "S"));

        double flow = AirFlow.freshAirM3PerS(state, 9.7, 6.0, 8.0);

        assertEquals(8.0 * state.crossAreaM2(), flow, ULPS);
        assertTrue(flow > 2.0 * AirFlow.singleSidedM3PerS(0.5, 1.0, 3.7, 8.0));
    }

    @ParameterizedTest
    @CsvSource({"N, N", "N, ''", "'', ''"})
    void cross_ofOneSideOrUnknownSides_isZero(String facing, String otherFacing) {
        OpenState state = RoomFixture.open(
                RoomFixture.outdoors(0.5, 1.0, 0.9, facing), RoomFixture.outdoors(0.5, 1.0, 0.9, otherFacing));

        assertEquals(0.0, state.crossAreaM2());
    }

    @Property
    void freshAir_withMoreWind_isNeverLess(
            @ForAll @DoubleRange(min = 0.0, max = 15.0) double windMPerS,
            @ForAll @DoubleRange(min = 0.0, max = 5.0) double moreMPerS,
            @ForAll @DoubleRange(min = -5.0, max = 25.0) double roomCelsius) {
        OpenState state = threeOpenings(0.4);

        double less = AirFlow.freshAirM3PerS(state, roomCelsius, 6.0, windMPerS);
        double more = AirFlow.freshAirM3PerS(state, roomCelsius, 6.0, windMPerS + moreMPerS);

        assertTrue(more >= less);
    }

    @Property
    void freshAir_withMoreDifference_isNeverLess(
            @ForAll @DoubleRange(min = 0.0, max = 20.0) double differenceK,
            @ForAll @DoubleRange(min = 0.0, max = 10.0) double moreK,
            @ForAll @DoubleRange(min = 0.0, max = 15.0) double windMPerS) {
        OpenState state = threeOpenings(0.4);

        // Spread about 10 C, so that the mean temperature in the stack formula stays.
        double less = AirFlow.freshAirM3PerS(state, 10.0 + 0.5 * differenceK, 10.0 - 0.5 * differenceK, windMPerS);
        double wider = differenceK + moreK;
        double more = AirFlow.freshAirM3PerS(state, 10.0 + 0.5 * wider, 10.0 - 0.5 * wider, windMPerS);

        assertTrue(more >= less * (1.0 - 1e-15)); // rounding of the mean temperature
    }

    @Property
    void freshAir_withMoreArea_isNeverLess(
            @ForAll @DoubleRange(min = 0.05, max = 2.0) double widthM,
            @ForAll @DoubleRange(min = 0.0, max = 1.0) double widerM,
            @ForAll @DoubleRange(min = -5.0, max = 25.0) double roomCelsius,
            @ForAll @DoubleRange(min = 0.0, max = 15.0) double windMPerS) {
        double less = AirFlow.freshAirM3PerS(threeOpenings(widthM), roomCelsius, 6.0, windMPerS);

        double more = AirFlow.freshAirM3PerS(threeOpenings(widthM + widerM), roomCelsius, 6.0, windMPerS);

        assertTrue(more >= less * (1.0 - 1e-9)); // accuracy of the neutral level
    }

    @Property
    void freshAir_acrossAnySmallChange_doesNotJump(
            @ForAll @DoubleRange(min = -5.0, max = 25.0) double roomCelsius,
            @ForAll @DoubleRange(min = 0.0, max = 15.0) double windMPerS) {
        OpenState state = threeOpenings(0.4);

        double here = AirFlow.freshAirM3PerS(state, roomCelsius, 6.0, windMPerS);
        double beside = AirFlow.freshAirM3PerS(state, roomCelsius + 1e-6, 6.0, windMPerS + 1e-6);

        // The steepest slope is that of the stack at dT of 0.01 K: 1.5 m3/s (0.01 K / 283 K)^0.5 / 0.02 K, under 1
        // m3/(s K).
        assertEquals(here, beside, 1e-6);
    }

    private static OpenState threeOpenings(double middleWidthM) {
        return RoomFixture.open(
                RoomFixture.outdoors(0.9, 2.0, 0.0, "N"),
                RoomFixture.outdoors(middleWidthM, 1.1, 0.9, "S"),
                RoomFixture.outdoors(0.5, 0.5, 2.0, ""));
    }
}
