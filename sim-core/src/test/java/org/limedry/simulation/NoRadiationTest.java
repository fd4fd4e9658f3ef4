package org.limedry.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.limedry.climate.Schedule;
import org.limedry.proof.benchmarks.Course;
import org.limedry.proof.benchmarks.Lab;
import org.limedry.room.Plant;
import org.limedry.room.RoomPlan;
import org.limedry.room.Surfaces;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.Side;
import org.limedry.wall.WallPlan;

/** Rooms whose faces exchange no long-wave heat: the radiant node is the air, and radiated heat goes to the air. */
final class NoRadiationTest {
    private static final double HOURS = 400.0;
    private static final double WATTS = 300.0;
    private static final double OUT_CELSIUS = 4.0;
    private static final double STILL_W_PER_M2K = 3.0;
    private static final double OUTSIDE_W_PER_M2K = 12.0;
    private static final double CONDUCTIVITY_W_PER_MK = 0.4;
    private static final Surfaces CONVECTION_ONLY =
            new Surfaces(STILL_W_PER_M2K, 5.0, 10.0, 0.0, 7.0e-9, OUTSIDE_W_PER_M2K, 0.0);

    private record Seen(double hour, double airCelsius, double radiantCelsius) {}

    // EXACT: two closed walls of 14 and 9 m2, 0.05 and 0.12 m of 0.4 W/(m K), stand side by side between the room and
    // outdoor air of 4 C; 300 W, 0.4 of it radiant, pass them in the end: T = 4 + 300 / sum A / (1/3 + d/0.4 + 1/12).
    // Nothing else carries heat out. Tolerance: what is left of the start after 400 h, and steps.
    @Test
    void room_withoutRadiation_comesToTheSteadyTemperatureOfItsResistances() {
        double perK = 14.0 * transmittance(0.05) + 9.0 * transmittance(0.12);

        List<Seen> seen = run();

        Seen last = seen.get(seen.size() - 1);
        assertEquals(OUT_CELSIUS + WATTS / perK, last.airCelsius(), 1.0e-4);
    }

    // EXACT: the node takes the air's temperature at every step. Tolerance: rounding.
    @Test
    void radiantNode_withoutRadiation_isTheAir() {
        for (Seen one : run()) {
            assertEquals(one.airCelsius(), one.radiantCelsius(), 1.0e-9, () -> "at hour " + one.hour());
        }
    }

    private static double transmittance(double thicknessM) {
        return 1.0 / (1.0 / STILL_W_PER_M2K + thicknessM / CONDUCTIVITY_W_PER_MK + 1.0 / OUTSIDE_W_PER_M2K);
    }

    private static List<Seen> run() {
        Schedule always = Schedule.always(Lab.START, Lab.at(HOURS));
        Plant heater =
                new Plant.Heater("heater", WATTS, Plant.Fuel.ELECTRIC, 0.4, OptionalDouble.empty(), false, always);
        RoomPlan room = new RoomPlan("room", 30.0, 12.0, 2.5, 2.0e4, 0.0, 0.0, List.of(), List.of(heater), 9.0, 0.5);
        List<Seen> seen = new ArrayList<>();
        new Lab()
                .accuracy(1.0e-4, 1.0)
                .constants(Lab.isothermal())
                .surfaces(CONVECTION_ONLY)
                .outdoors(Course.steady(Lab.START, OUT_CELSIUS, 300.0))
                .room(room)
                .wall(wall("thin", 14.0, 0.05))
                .wall(wall("thick", 9.0, 0.12))
                .run(HOURS, (hour, site) -> seen.add(new Seen(hour, site.airCelsius(0), site.radiantCelsius(0))));
        return seen;
    }

    private static WallPlan wall(String name, double areaM2, double thicknessM) {
        LayerPlan layer = new LayerPlan(
                "closed", Lab.closed(CONDUCTIVITY_W_PER_MK, 2.0e5), thicknessM, 9.0, Lab.suctionPa(0.5, 9.0));
        return new WallPlan(
                name, WallPlan.Kind.LISTED, areaM2, List.of(layer), new Side.Outdoors(), new Side.Room("room"), 0.0);
    }
}
