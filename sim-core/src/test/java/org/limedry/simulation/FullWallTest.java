package org.limedry.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.limedry.climate.Schedule;
import org.limedry.lime.CoatPlan;
import org.limedry.lime.Laying;
import org.limedry.material.Catalogue;
import org.limedry.proof.benchmarks.Lab;
import org.limedry.proof.benchmarks.SheetMaterials;
import org.limedry.reference.MaterialTable;
import org.limedry.room.Plant;
import org.limedry.room.RoomPlan;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.Side;
import org.limedry.wall.WallPlan;

/** Water that finds no room: films that are covered, prewetting and mist that run off, rising damp held back. */
final class FullWallTest {
    private static final Catalogue CATALOGUE = Catalogue.of(MaterialTable.load());
    private static final double HOURS = 48.0;
    private static final double AREA_M2 = 10.0;
    private static final double PREWETTING_KG_PER_M2 = 0.5;

    // EXACT: granite drinks next to nothing, the face holds 0.1 kg/m2 (see WaterFilm), so some 0.4 of 0.5 kg/m2 run off
    // at once. Tolerance: what the granite drinks, A sqrt(half an hour) = 0.04 kg/m2 of it, on 10 m2.
    @Test
    void coat_onPrewettedGranite_isLaidAndTheRestRunsOff() {
        Outcome outcome = run(0.0, List.of(), coat(1, 1.0, PREWETTING_KG_PER_M2));

        assertSound(outcome);
        assertEquals(4.0, outcome.account().runOffKg(), 0.5);
        assertEquals(5.0, outcome.account().wettingKg(), 1.0e-9);
    }

    @Test
    void secondCoat_onAPrewettedCoatThatIsStillFull_isLaid() {
        Outcome outcome = run(0.0, List.of(), coat(1, 1.0, PREWETTING_KG_PER_M2), coat(2, 1.5, PREWETTING_KG_PER_M2));

        assertSound(outcome);
        assertEquals(
                2,
                outcome.coats().stream().filter(coat -> coat.laid().isPresent()).count());
    }

    // EXACT: a coat as full as this cannot take 1 kg/m2 in ten minutes; what it does not take runs off.
    @Test
    void mist_onAFullCoat_runsOff() {
        Schedule tenMinutes = Schedule.always(Lab.at(2.0), Lab.at(2.0 + 1.0 / 6.0));
        Plant mist = new Plant.Misting("mist", "wall", 1.0 / 600.0, tenMinutes);

        Outcome outcome = run(0.0, List.of(mist), coat(1, 1.0, PREWETTING_KG_PER_M2));

        assertSound(outcome);
        assertTrue(
                outcome.account().runOffKg() > 0.8 * AREA_M2,
                () -> outcome.account().toString());
    }

    // EXACT: 20 kg a day for two days into 10 m2 of granite that holds 8 kg/m3, 0.3 m thick: 24 kg fit at the most.
    @Test
    void risingDamp_intoAWallThatIsFull_isHeldBackAndTold() {
        Outcome outcome = run(20.0 / 86_400.0, List.of());

        assertSound(outcome);
        assertTrue(outcome.account().groundKg() < 24.0);
        double heldBack = outcome.warnings().stream()
                .filter(warning -> warning.kind() == Warning.Kind.WALL_FULL)
                .mapToDouble(Warning::value)
                .sum();
        assertEquals(40.0, outcome.account().groundKg() + heldBack, 1.0e-9);
    }

    private static void assertSound(Outcome outcome) {
        assertInstanceOf(Outcome.Ending.Complete.class, outcome.ending());
        // Found: some hundred. A wall that stalls the steps takes hundreds of thousands.
        assertTrue(
                outcome.statistics().steps() < 3000, () -> outcome.statistics().toString());
        assertEquals(
                0.0,
                outcome.account().residualKg(),
                1.0e-9 * Math.max(1.0, outcome.account().grossInKg()));
    }

    private static CoatPlan coat(int number, double hour, double prewettingKgPerM2) {
        return new CoatPlan(
                "wall",
                number,
                SheetMaterials.inertMortar(CATALOGUE.material(Catalogue.AIR_LIME_PLASTER), 0.97),
                0.006,
                8.0,
                prewettingKgPerM2,
                new Laying.On(Lab.at(hour)));
    }

    private static Outcome run(double risingKgPerS, List<Plant> plant, CoatPlan... coats) {
        LayerPlan granite = new LayerPlan("granite", CATALOGUE.material(Catalogue.GRANITE), 0.3, 8.0, 1.0e5);
        WallPlan wall = new WallPlan(
                "wall",
                WallPlan.Kind.LISTED,
                AREA_M2,
                List.of(granite),
                new Side.Outdoors(),
                new Side.Room("room"),
                risingKgPerS);
        RoomPlan room = new RoomPlan("room", 30.0, 12.0, 2.5, 1.0e5, 0.3, 0.0, List.of(), plant, 8.0, 0.9);
        Lab lab = new Lab().room(room).wall(wall);
        for (CoatPlan coat : coats) {
            lab.coat(coat);
        }
        return Simulation.run(lab.scenario(HOURS));
    }
}
