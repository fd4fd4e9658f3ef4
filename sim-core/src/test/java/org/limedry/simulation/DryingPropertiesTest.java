package org.limedry.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.statistics.Statistics;
import org.limedry.air.MagnusForm;
import org.limedry.material.Catalogue;
import org.limedry.proof.benchmarks.Course;
import org.limedry.proof.benchmarks.Lab;
import org.limedry.reference.MaterialTable;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.Side;
import org.limedry.wall.WallPlan;

/** What more of something must do to drying and condensing, whatever the numbers are. */
final class DryingPropertiesTest {
    /** Two runs on one grid err alike: found never wetter at all on 150 rooms. A hundredth of a gram a square metre. */
    private static final double SOLVER_KG_PER_M2 = 1.0e-5;

    /** The same on the some 40 m2 of a room. */
    private static final double SOLVER_KG = 4.0e-4;

    private static final double CLEARLY_KG_PER_M2 = 0.02;
    private static final Catalogue CATALOGUE = Catalogue.of(MaterialTable.load());

    // EXACT: isothermal drying is one nonlinear diffusion with a room that mixes: drier air at one end makes no cell
    // wetter (comparison principle).
    @Property(tries = 12, shrinking = ShrinkingMode.OFF)
    void moreAiring_withDrierAir_neverSlowsDrying(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
            @ForAll @DoubleRange(min = 0.02, max = 0.4) double widthM,
            @ForAll @DoubleRange(min = 1.2, max = 6.0) double more) {
        IsothermalRoom room = IsothermalRoom.of(seed);

        Outcome less = room.aired(widthM);
        Outcome aired = room.aired(widthM * more);

        double gain = assertNeverWetter(less, aired);
        collect("airing dries clearly faster", gain > CLEARLY_KG_PER_M2);
    }

    // EXACT: the same principle, with a sink that grows in place of fresh air.
    @Property(tries = 12, shrinking = ShrinkingMode.OFF)
    void dehumidifierDoubled_inAShutRoom_neverLeavesMoreWater(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
            @ForAll @DoubleRange(min = 2.0, max = 30.0) double ratedKgPerDay) {
        IsothermalRoom room = IsothermalRoom.of(seed);

        Outcome one = room.dehumidified(ratedKgPerDay);
        Outcome two = room.dehumidified(2.0 * ratedKgPerDay);

        double gain = assertNeverWetter(one, two);
        assertTrue(two.account().changeKg() <= one.account().changeKg() + SOLVER_KG);
        assertEquals(0.0, one.account().outByAirKg());
        collect("twice the machine dries clearly faster", gain > CLEARLY_KG_PER_M2);
    }

    // EXACT: the colder pane takes up more at every moment, and what it holds more of slows it by less than that.
    // Without
    // run-off the film is all it took.
    @Property(tries = 40, shrinking = ShrinkingMode.OFF)
    void colderPane_inPrescribedAir_neverCondensesLess(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
            @ForAll @DoubleRange(min = -5.0, max = 15.0) double outsideCelsius,
            @ForAll @DoubleRange(min = 0.5, max = 8.0) double colderK) {
        Course air = air(new SplittableRandom(seed));

        double warm = condensedKgPerM2(air, outsideCelsius);
        double cold = condensedKgPerM2(air, outsideCelsius - colderK);

        assertTrue(cold >= warm - SOLVER_KG_PER_M2, () -> cold + " against " + warm);
        collect("the colder pane takes clearly more", cold > warm + CLEARLY_KG_PER_M2);
        collect("the warmer pane takes some too", warm > CLEARLY_KG_PER_M2);
    }

    private static void collect(String what, boolean seen) {
        Statistics.label(what)
                .collect(seen)
                .coverage(seenOften -> seenOften.check(true).count(count -> count >= 2));
    }

    /** Asserts that the coat of {@code faster} is at no hour wetter; returns by how much it is drier, at most. */
    private static double assertNeverWetter(Outcome slower, Outcome faster) {
        assertInstanceOf(Outcome.Ending.Complete.class, slower.ending());
        assertInstanceOf(Outcome.Ending.Complete.class, faster.ending());
        List<Double> before = IsothermalRoom.coatWater(slower);
        List<Double> after = IsothermalRoom.coatWater(faster);
        assertEquals(before.size(), after.size());
        double gain = 0.0;
        for (int hour = 0; hour < before.size(); hour++) {
            double drier = before.get(hour) - after.get(hour);
            int when = hour;
            assertTrue(drier > -SOLVER_KG_PER_M2, () -> "hour " + when + ": wetter by " + -drier);
            gain = Math.max(gain, drier);
        }
        return gain;
    }

    private static Course air(SplittableRandom random) {
        double mean = random.nextDouble(8.0, 20.0);
        double swing = random.nextDouble(0.0, 4.0);
        double humidity = random.nextDouble(0.5, 1.0);
        double vapourPa = humidity * MagnusForm.ISO_WATER.pressurePa(mean - swing);
        return new Course(
                Lab.START, hour -> mean + swing * Math.sin(Math.PI * hour / 12.0), hour -> vapourPa, hour -> 0.0);
    }

    /** Returns what a pane between this air and still air outdoors holds and has shed after two days. */
    private static double condensedKgPerM2(Course air, double outsideCelsius) {
        LayerPlan glass = new LayerPlan("glass", CATALOGUE.material(Catalogue.GLASS), 0.004, 10.0, 1.0e7);
        WallPlan pane = new WallPlan(
                "pane",
                WallPlan.Kind.PANE,
                1.0,
                List.of(glass),
                new Side.Air(outsideCelsius, 0.5, 15.0, 0.0),
                new Side.Course("air", 8.0, 2.0e-8),
                0.0);
        Lab lab = new Lab().accuracy(1.0e-3, 1.0).course("air", air).wall(pane);
        WaterAccount account = Simulation.run(lab.scenario(48.0)).account();
        return account.changeInFilmKg() + account.runOffKg();
    }
}
