package org.limedry.room;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.limedry.room.CarbonDioxide.Door;
import org.limedry.room.CarbonDioxide.Step;
import org.limedry.room.CarbonDioxide.Zone;

final class CarbonDioxideTest {
    private static final double OUTDOOR_PPM = 420.0;
    private static final double AIR_KG = 54.0;
    private static final double FRESH_KG_PER_S = 0.012;

    // EXACT: 1.2466 kg of dry air at 420 ppm hold 1.2466 * 420e-6 * 44.009 / 28.96 = 0.7956 g, to two digits 0.80.
    @Test
    void kg_ofACubicMetreOutdoors_goesByMolarMasses() {
        assertEquals(0.80e-3, CarbonDioxide.kg(1.2466, OUTDOOR_PPM), 0.005e-3); // half of the last printed digit
    }

    // EXACT: C = C_oo + (C_0 - C_oo) exp(-G t / m), C_oo = C_o + S / (kappa G); its mean by integrating.
    @ParameterizedTest
    @ValueSource(doubles = {0.7, 44.0, 46.0, 600.0, 3600.0, 86_400.0})
    void over_withAConstantSource_isTheExponential(double dtS) {
        double sourceKgPerS = 3.0e-6;
        Zone zone = new Zone(AIR_KG, 700.0, FRESH_KG_PER_S, sourceKgPerS, CarbonDioxideTest::nothing);

        Step step =
                CarbonDioxide.over(List.of(zone), List.of(), OUTDOOR_PPM, dtS).get(0);

        double x = FRESH_KG_PER_S * dtS / AIR_KG;
        double finalPpm = OUTDOOR_PPM + sourceKgPerS / CarbonDioxide.kg(FRESH_KG_PER_S, 1.0);
        assertEquals(finalPpm + (700.0 - finalPpm) * Math.exp(-x), step.endPpm(), 1e-9); // roundings of 700 times x
        assertEquals(
                finalPpm + (700.0 - finalPpm) * -Math.expm1(-x) / x, step.meanPpm(), 1e-9); // roundings of 700 over x
        assertEquals(0.0, step.takenUpKg());
    }

    // EXACT: an uptake in proportion to content is a second flow of air, free of carbon dioxide.
    @Test
    void over_withAProportionalUptake_isTheExponential() {
        double stripped = 0.03;
        double dtS = 1800.0;
        Zone zone = new Zone(AIR_KG, 700.0, FRESH_KG_PER_S, 0.0, ppm -> CarbonDioxide.kg(stripped, ppm) * dtS);

        Step step =
                CarbonDioxide.over(List.of(zone), List.of(), OUTDOOR_PPM, dtS).get(0);

        double finalPpm = OUTDOOR_PPM * FRESH_KG_PER_S / (FRESH_KG_PER_S + stripped);
        double x = (FRESH_KG_PER_S + stripped) * dtS / AIR_KG;
        assertEquals(finalPpm + (700.0 - finalPpm) * Math.exp(-x), step.endPpm(), 1e-9); // roundings of 700
    }

    // EXACT: with every way shut and nothing given, the content stays.
    @Test
    void over_withAllShut_staysAsItIs() {
        Zone zone = new Zone(AIR_KG, 700.0, 0.0, 0.0, CarbonDioxideTest::nothing);

        Step step = CarbonDioxide.over(List.of(zone), List.of(), OUTDOOR_PPM, 3600.0)
                .get(0);

        assertEquals(new Step(700.0, 700.0, 0.0, 0.0, 0.0), step);
    }

    // EXACT: two shut rooms of equal size with a door d between them: the difference decays with exp(-2 d t / m). The
    // mean
    // of the neighbour over the step is of second order.
    @Test
    void over_withADoor_isOfSecondOrderInTime() {
        double exact = 0.5 * (900.0 - 500.0) * Math.exp(-2.0 * 0.02 * 2400.0 / AIR_KG) + 0.5 * (900.0 + 500.0);
        double coarse = Math.abs(twoRoomsAfter(2400.0, 8) - exact);
        double fine = Math.abs(twoRoomsAfter(2400.0, 16) - exact);

        double observedOrder = Math.log(coarse / fine) / Math.log(2.0);

        assertEquals(2.0, observedOrder, 0.1); // the next term of the series at x = 0.1
    }

    // EXACT: mass is kept in each room and between them, with the uptake of a front that grows with the square root of
    // time.
    @Property
    void over_withFrontsDoorsAndSources_conserves(
            @ForAll @DoubleRange(min = 1.0, max = 7200.0) double dtS,
            @ForAll @DoubleRange(min = 0.0, max = 0.5) double freshKgPerS,
            @ForAll @DoubleRange(min = 0.0, max = 0.5) double doorKgPerS,
            @ForAll @DoubleRange(min = 0.0, max = 100.0) double sourceMgPerS) {
        List<Zone> zones = List.of(
                new Zone(AIR_KG, 700.0, freshKgPerS, 1e-6 * sourceMgPerS, front(0.0, dtS)),
                new Zone(30.0, 450.0, 0.002, 0.0, front(0.0004, dtS)),
                new Zone(80.0, 420.0, 0.001, 0.0, nearlyDone(0.0099, dtS)));
        List<Door> doors = List.of(new Door(0, 1, doorKgPerS), new Door(1, 2, 0.04));

        List<Step> steps = CarbonDioxide.over(zones, doors, OUTDOOR_PPM, dtS);

        double across = 0.0;
        for (int i = 0; i < zones.size(); i++) {
            Zone zone = zones.get(i);
            Step step = steps.get(i);
            double gainKg = CarbonDioxide.kg(zone.airKg(), step.endPpm() - zone.startPpm());
            double flowsKg = zone.sourceKgPerS() * dtS - step.takenUpKg() - step.outKg() - step.toOtherRoomsKg();
            assertEquals(flowsKg, gainKg, 1e-13); // roundings of stores of 0.06 kg and flows of up to 1 kg
            assertEquals(
                    zone.takenUpKg().applyAsDouble(step.meanPpm()),
                    step.takenUpKg(),
                    1e-8 * step.takenUpKg()); // rounds end at a change of 1e-10
            assertTrue(step.endPpm() > 0.0 && step.meanPpm() > 0.0);
            across += step.toOtherRoomsKg();
        }
        assertEquals(0.0, across, 1e-15); // roundings of flows of up to 1 kg that cancel
    }

    // EXACT: a shut room can give no more than it holds, however much its plaster would take.
    @Test
    void over_withHungryPlasterInAShutRoom_starvesIt() {
        Zone zone = new Zone(AIR_KG, OUTDOOR_PPM, 0.0, 0.0, ppm -> 50.0 * Math.sqrt(ppm / OUTDOOR_PPM));

        Step step = CarbonDioxide.over(List.of(zone), List.of(), OUTDOOR_PPM, 3600.0)
                .get(0);

        double heldKg = CarbonDioxide.kg(AIR_KG, OUTDOOR_PPM);
        assertTrue(step.endPpm() >= 0.0 && step.endPpm() < 1.0);
        assertEquals(heldKg, step.takenUpKg(), 1e-3 * heldKg); // what is left in the air
    }

    @Test
    void over_withMoreFreshAir_comesCloserToOutdoors() {
        Zone stale = new Zone(AIR_KG, 2500.0, FRESH_KG_PER_S, 1e-5, CarbonDioxideTest::nothing);
        Zone fresh = new Zone(AIR_KG, 2500.0, 5.0 * FRESH_KG_PER_S, 1e-5, CarbonDioxideTest::nothing);

        double stalePpm = CarbonDioxide.over(List.of(stale), List.of(), OUTDOOR_PPM, 900.0)
                .get(0)
                .endPpm();
        double freshPpm = CarbonDioxide.over(List.of(fresh), List.of(), OUTDOOR_PPM, 900.0)
                .get(0)
                .endPpm();

        assertTrue(freshPpm < stalePpm && freshPpm > OUTDOOR_PPM);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.0, -5.0, Double.NaN})
    void over_aStepThatIsNotAbove0_isRefused(double dtS) {
        List<Zone> zones = List.of(new Zone(AIR_KG, 700.0, FRESH_KG_PER_S, 0.0, CarbonDioxideTest::nothing));

        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class, () -> CarbonDioxide.over(zones, List.of(), OUTDOOR_PPM, dtS));

        assertEquals("dtS: must be finite and above 0 s, was " + dtS, refused.getMessage());
    }

    private static double nothing(double ppm) {
        return 0.0;
    }

    /** 20 m2 at 0.594 * 200 kg/m3 and 1.4 mm per root day: what a front that stands at a depth takes over the step. */
    private static DoubleUnaryOperator front(double depthM, double dtS) {
        double squareM2PerS = 1.4e-3 * 1.4e-3 / 86_400.0;
        return ppm ->
                20.0 * 0.594 * 200.0 * (Math.sqrt(depthM * depthM + squareM2PerS * ppm / OUTDOOR_PPM * dtS) - depthM);
    }

    /** The same front with only 0.1 mm of its 10 mm coat left: from some content on the coat takes no more. */
    private static DoubleUnaryOperator nearlyDone(double depthM, double dtS) {
        double mostKg = 20.0 * 0.594 * 200.0 * (0.010 - depthM);
        return ppm -> Math.min(mostKg, front(depthM, dtS).applyAsDouble(ppm));
    }

    private static double twoRoomsAfter(double seconds, int steps) {
        double one = 900.0;
        double other = 500.0;
        for (int step = 0; step < steps; step++) {
            List<Zone> zones = List.of(
                    new Zone(AIR_KG, one, 0.0, 0.0, CarbonDioxideTest::nothing),
                    new Zone(AIR_KG, other, 0.0, 0.0, CarbonDioxideTest::nothing));
            List<Step> result = CarbonDioxide.over(zones, List.of(new Door(0, 1, 0.02)), OUTDOOR_PPM, seconds / steps);
            one = result.get(0).endPpm();
            other = result.get(1).endPpm();
        }
        return one;
    }
}
