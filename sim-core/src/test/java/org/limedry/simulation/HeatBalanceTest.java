package org.limedry.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.limedry.air.MagnusForm;
import org.limedry.climate.Schedule;
import org.limedry.proof.benchmarks.Lab;
import org.limedry.proof.benchmarks.SheetMaterials;
import org.limedry.room.AirExchange;
import org.limedry.room.Plant;
import org.limedry.room.RoomPlan;
import org.limedry.room.VapourExchange;
import org.limedry.wall.Constants;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.Side;
import org.limedry.wall.WallColumn;
import org.limedry.wall.WallNodes;
import org.limedry.wall.WallPlan;

/**
 * Heat stored against heat put in, for a wall alone and for a room with its walls.
 *
 * <p>Water is given no heat capacity here. Then the heat of a wall is a sum over its nodes, and a shut system keeps {@code
 * sum C T + C_air T_air + L V rho_v} but for what heaters bring. With it the equations let moving water carry no heat,
 * which is named as a limit.
 */
final class HeatBalanceTest {
    private static final double BRICK_M = 0.12;
    private static final double COAT_M = 0.010;
    private static final double AREA_M2 = 14.0;
    private static final double VOLUME_M3 = 30.0;
    private static final double LATENT_J_PER_KG = 2.5e6;
    private static final double AIR_J_PER_M3_K = 1207.2;
    private static final double FITTINGS_J_PER_K = 4.0e4;
    private static final double HOURS = 30.0;
    private static final double WATTS = 700.0;

    // EXACT: nothing passes a sealed face, so what the warm wet brick gives the cold coat takes. Tolerance: rounding of
    // some hundred steps, against 5e5 J/m2 that change place.
    @Test
    void heat_ofASealedWall_stays() {
        WallPlan wall = new WallPlan(
                "wall",
                WallPlan.Kind.LISTED,
                1.0,
                List.of(brick(18.0, 2.0e5)),
                new Side.Sealed(),
                new Side.Sealed(),
                0.0);
        Lab lab =
                new Lab().accuracy(1.0e-3, 1.0).constants(withoutHeatOfWater()).wall(wall);
        lab.coat("wall", SheetMaterials.inertMortar(SheetMaterials.roomCoat(), 0.97), COAT_M, 6.0, 0.0);
        List<Double> heat = new ArrayList<>();
        List<Double> face = new ArrayList<>();

        lab.run(HOURS, (hour, site) -> {
            WallColumn column = model(site).columns().get(0);
            if (column.coats() == 1) {
                heat.add(heatJPerM2(column));
                face.add(column.innerCelsius());
            }
        });

        assertTrue(last(face) - face.get(0) > 5.0, "the coat must have warmed");
        assertEquals(heat.get(0), last(heat), 1.0e-10 * heat.get(0));
    }

    // EXACT: a shut room on walls with a sealed middle keeps what its heater brings, 700 W for 30 h, as warmth of walls
    // and air and as vapour. Tolerance: rounding, against 76 MJ put in.
    @Test
    void heat_ofAShutRoom_isWhatItsHeaterBrought() {
        List<Double> heat = new ArrayList<>();
        List<Double> vapour = new ArrayList<>();

        room().run(HOURS, (hour, site) -> {
            WallColumn column = model(site).columns().get(0);
            if (column.coats() == 1) {
                RoomUnknowns rooms = model(site).system().rooms();
                heat.add(AREA_M2 * heatJPerM2(column) + airJ(rooms) - WATTS * 3600.0 * hour);
                vapour.add(rooms.vapourKgPerM3(0));
            }
        });

        assertTrue(last(vapour) > 1.5 * vapour.get(0), "the coat must have wetted the air");
        assertEquals(heat.get(0), last(heat), 1.0e-9 * WATTS * 3600.0 * HOURS);
    }

    /** In this package the view of a site is the site itself. */
    private static SiteModel model(SiteView site) {
        return (SiteModel) site;
    }

    private static double last(List<Double> values) {
        return values.get(values.size() - 1);
    }

    private static Lab room() {
        Schedule always = Schedule.always(Lab.START, Lab.at(HOURS));
        Plant heater =
                new Plant.Heater("heater", WATTS, Plant.Fuel.ELECTRIC, 0.4, OptionalDouble.empty(), false, always);
        RoomPlan room = new RoomPlan(
                "room", VOLUME_M3, 12.0, 2.5, FITTINGS_J_PER_K, 0.0, 0.0, List.of(), List.of(heater), 9.0, 0.7);
        WallPlan wall = new WallPlan(
                "wall",
                WallPlan.Kind.LISTED,
                AREA_M2,
                List.of(brick(7.0, 2.0e7)),
                new Side.Sealed(),
                new Side.Room("room"),
                0.0);
        return new Lab()
                .accuracy(1.0e-3, 1.0)
                .constants(withoutHeatOfWater())
                .air(AirExchange.ordinary(), new VapourExchange.HeatCapacity.Fixed(AIR_J_PER_M3_K))
                .room(room)
                .wall(wall)
                .coat("wall", SheetMaterials.inertMortar(SheetMaterials.roomCoat(), 0.97), COAT_M, 9.0, 0.0);
    }

    private static LayerPlan brick(double celsius, double suctionPa) {
        return new LayerPlan("brick", SheetMaterials.roomBrick(), BRICK_M, celsius, suctionPa);
    }

    private static Constants withoutHeatOfWater() {
        return new Constants(MagnusForm.ISO_WATER, 461.5, 1000.0, LATENT_J_PER_KG, 0.0, OptionalDouble.empty(), 0.0);
    }

    private static double airJ(RoomUnknowns rooms) {
        double perK = airJPerK();
        return perK * rooms.airCelsius(0) + LATENT_J_PER_KG * VOLUME_M3 * rooms.vapourKgPerM3(0);
    }

    /** Returns the capacity that the room keeps from its start: moist air at 9 C and 70 %, and what stands in it. */
    private static double airJPerK() {
        double vapourPa = 0.7 * MagnusForm.ISO_WATER.pressurePa(9.0);
        AirExchange air = AirExchange.ordinary();
        VapourExchange exchange = new VapourExchange(
                air.balance(), air.pressurePa(), 461.5, new VapourExchange.HeatCapacity.OfIncomingAir());
        return VOLUME_M3 * exchange.moistJPerM3K(9.0, vapourPa / (461.5 * 282.15)) + FITTINGS_J_PER_K;
    }

    private static double heatJPerM2(WallColumn wall) {
        double[] links = WallNodes.linksM(BRICK_M, 1.0, COAT_M);
        double brick = SheetMaterials.roomBrick().dryHeatCapacityJPerM3K();
        double coat = SheetMaterials.roomCoat().dryHeatCapacityJPerM3K();
        assertEquals(wall.nodes(), links.length + 1);
        double sum = 0.0;
        double depth = 0.0;
        for (int link = 0; link < links.length; link++) {
            double capacity = depth < BRICK_M - 1.0e-6 ? brick : coat;
            sum += capacity * links[link] * 0.5 * (wall.celsius(link) + wall.celsius(link + 1));
            depth += links[link];
        }
        return sum;
    }
}
