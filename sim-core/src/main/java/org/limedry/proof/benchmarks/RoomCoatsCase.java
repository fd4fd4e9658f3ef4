package org.limedry.proof.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.limedry.air.MagnusForm;
import org.limedry.climate.Schedule;
import org.limedry.lime.CoatMortar;
import org.limedry.material.LiquidTransport;
import org.limedry.material.Material;
import org.limedry.material.VanGenuchten;
import org.limedry.room.AirExchange;
import org.limedry.room.Opening;
import org.limedry.room.Plant;
import org.limedry.room.RoomPlan;
import org.limedry.room.Surfaces;
import org.limedry.room.VapourExchange;
import org.limedry.units.Units;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.Side;
import org.limedry.wall.WallPlan;

/** The ROOM_COATS sheet as a scenario: brick wall with two coats, stone, glass, door by day, heater from day 12. */
final class RoomCoatsCase {
    static final double HOURS = 576.0;
    static final double BRICK_M2 = 30.0;
    static final double STONE_M2 = 10.0;
    static final double GLASS_M2 = 2.0;
    static final double VOLUME_M3 = 40.0;
    private static final double AIR_J_PER_M3_K = 1207.2;
    private static final double PRESSURE_PA = 101_325.0;
    private static final double START_CELSIUS = 8.0;
    private static final double START_HUMIDITY = 0.85;

    private RoomCoatsCase() {}

    /** Returns the case with something done to the liquid transport of every material. */
    static Lab lab(double tolerance, double gridFactor, UnaryOperator<LiquidTransport> liquid) {
        AirExchange air = new AirExchange(AirExchange.Balance.EQUAL_VOLUME, PRESSURE_PA, 1.0, 0.4, 0.6);
        VapourExchange.HeatCapacity heat = new VapourExchange.HeatCapacity.Fixed(AIR_J_PER_M3_K);
        CoatMortar mortar = SheetMaterials.inertMortar(changed(SheetMaterials.roomCoat(), liquid), 0.97);
        return new Lab()
                .accuracy(tolerance, gridFactor)
                .outdoors(weather())
                .course("out", weather())
                .air(air, heat)
                .surfaces(new Surfaces(3.0, 3.0, 3.0, 5.0, 7.0e-9, 4.0, 4.0))
                .room(room(new VapourExchange(air.balance(), PRESSURE_PA, 461.5, heat)))
                .wall(wall("brick wall", brick(liquid), BRICK_M2, 1.3e-7))
                .wall(wall("stone wall", stone(liquid), STONE_M2, 1.3e-7))
                .wall(wall("glass", glass(), GLASS_M2, 0.0))
                .coat("brick wall", mortar, 0.010, 10.0, 24.0)
                .coat("brick wall", mortar, 0.008, 10.0, 192.0);
    }

    private static Course weather() {
        return new Course(
                Lab.START,
                RoomCoatsCase::outdoorCelsius,
                hour -> outdoorHumidity(hour) * MagnusForm.ISO_WATER.pressurePa(outdoorCelsius(hour)),
                hour -> 2.0 + Math.sin(2.0 * Math.PI * hour / 84.0));
    }

    private static double outdoorCelsius(double hour) {
        return 6.0 + 3.0 * Math.cos(Math.PI * (hour - 15.0) / 12.0) + 2.0 * Math.sin(Math.PI * hour / 120.0);
    }

    private static double outdoorHumidity(double hour) {
        return 0.86 - 0.08 * Math.cos(Math.PI * (hour - 15.0) / 12.0);
    }

    private static LayerPlan brick(UnaryOperator<LiquidTransport> liquid) {
        double suctionPa = Lab.suctionPa(0.85, START_CELSIUS);
        return new LayerPlan("brick", changed(SheetMaterials.roomBrick(), liquid), 0.23, START_CELSIUS, suctionPa);
    }

    private static LayerPlan stone(UnaryOperator<LiquidTransport> liquid) {
        Material stone = SheetMaterials.roomStone();
        double suctionPa = ((VanGenuchten) stone.retention()).suctionPa(0.6);
        return new LayerPlan("stone", changed(stone, liquid), 0.40, START_CELSIUS, suctionPa);
    }

    private static LayerPlan glass() {
        return new LayerPlan("glass", Lab.closed(1.0, 2500.0 * 750.0), 0.004, START_CELSIUS, 1.0e6);
    }

    private static Material changed(Material material, UnaryOperator<LiquidTransport> liquid) {
        return SheetMaterials.withLiquid(material, liquid.apply(material.liquid()));
    }

    private static WallPlan wall(String name, LayerPlan layer, double areaM2, double outerVapourTransfer) {
        Side outside = new Side.Course("out", 20.0, outerVapourTransfer);
        return new WallPlan(name, WallPlan.Kind.LISTED, areaM2, List.of(layer), outside, new Side.Room("room"), 0.0);
    }

    private static RoomPlan room(VapourExchange exchange) {
        List<Schedule.Span> open = new ArrayList<>();
        for (int day = 0; day < HOURS / 24.0; day++) {
            open.add(new Schedule.Span(Lab.at(24.0 * day + 8.0), Lab.at(24.0 * day + 16.0)));
        }
        Opening door = new Opening("door", 0.8, 2.0, 0.0, "", Optional.empty(), new Schedule(open));
        // The sheet adds leakage to the flow of the door: a fan does, where leakage goes in by the root of the squares.
        double leakage = 0.5 * VOLUME_M3 / 3600.0;
        Plant fan = new Plant.Fan("leakage", leakage, Schedule.always(Lab.START, Lab.at(HOURS)));
        Plant heater = new Plant.Heater(
                "heater",
                1500.0,
                Plant.Fuel.ELECTRIC,
                0.4,
                OptionalDouble.empty(),
                false,
                Schedule.always(Lab.at(288.0), Lab.at(HOURS)));
        // The sheet's air holds 1207.2 J/(m3 K), ours what moist air of the start does: the fittings make up for it.
        double vapourPa = START_HUMIDITY * MagnusForm.ISO_WATER.pressurePa(START_CELSIUS);
        double ownAir = exchange.moistJPerM3K(START_CELSIUS, vapourPa / (461.5 * Units.kelvin(START_CELSIUS)));
        double fittings = 200_000.0 + VOLUME_M3 * (AIR_J_PER_M3_K - ownAir);
        return new RoomPlan(
                "room",
                VOLUME_M3,
                16.0,
                2.5,
                fittings,
                0.0,
                0.0,
                List.of(door),
                List.of(fan, heater),
                START_CELSIUS,
                START_HUMIDITY);
    }
}
