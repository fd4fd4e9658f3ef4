package org.limedry.simulation;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.limedry.room.AirFlow;
import org.limedry.room.DoorFlow;
import org.limedry.room.EarthFloor;
import org.limedry.room.FaceTransfer;
import org.limedry.room.Fog;
import org.limedry.room.OpenState;
import org.limedry.room.Opening;
import org.limedry.room.PlantState;
import org.limedry.room.RoomPlan;
import org.limedry.room.VapourExchange;
import org.limedry.units.Units;
import org.limedry.wall.Constants;

/** Openings, plant, people and ground of a site as they stand between two events. */
final class SiteFlows implements ZoneFlows {
    /** A door between two rooms that stands open. */
    record OpenDoor(int one, int other, DoorFlow flow) {}

    private final List<RoomPlan> plans;
    private final Physics physics;
    private final VapourExchange exchange;
    private final List<OpenState> open = new ArrayList<>();
    private final List<PlantState> plant = new ArrayList<>();
    private final List<OpenDoor> doors = new ArrayList<>();
    private final double[] earthSaturationPa;

    SiteFlows(List<RoomPlan> plans, Physics physics, VapourExchange exchange) {
        this.plans = plans;
        this.physics = physics;
        this.exchange = exchange;
        earthSaturationPa = new double[plans.size()];
    }

    /** Takes over what is open and on from {@code instant}. */
    void update(Instant instant) {
        open.clear();
        plant.clear();
        doors.clear();
        for (RoomPlan room : plans) {
            open.add(OpenState.of(room, instant, physics.air()));
            plant.add(PlantState.of(room, instant));
            for (Opening opening : room.openings()) {
                if (opening.toRoom().isPresent() && opening.open().isOn(instant)) {
                    int other = index(opening.toRoom().get());
                    doors.add(new OpenDoor(plans.indexOf(room), other, DoorFlow.of(opening, physics.air())));
                }
            }
        }
    }

    /** Sets the saturation pressure at the earth floor of a room, Pa, held over a step. */
    void earthSaturation(int room, double saturationPa) {
        earthSaturationPa[room] = saturationPa;
    }

    /** Returns the convection at the faces of a room as things stand, W/(m2 K). */
    double convectionWPerM2K(int room) {
        boolean anyOpen = open.get(room).anyOpen();
        for (OpenDoor door : doors) {
            anyOpen = anyOpen || door.one() == room || door.other() == room;
        }
        return FaceTransfer.insideWPerM2K(
                physics.surfaces(), anyOpen, plant.get(room).aimedAtWall());
    }

    OpenState open(int room) {
        return open.get(room);
    }

    PlantState plant(int room) {
        return plant.get(room);
    }

    List<OpenDoor> doors() {
        return doors;
    }

    VapourExchange exchange() {
        return exchange;
    }

    double gasConstantVapourJPerKgK() {
        return physics.constants().gasConstantVapourJPerKgK();
    }

    /** Returns the outdoor air coming into a room, m3/s. */
    double freshAirM3PerS(int room, RoomUnknowns rooms, Weather weather) {
        return AirFlow.freshAirM3PerS(open.get(room), rooms.airCelsius(room), weather.celsius(), weather.windMPerS());
    }

    /** Returns what heaters, machines and people give a room. */
    PlantState.Gains gains(int room, RoomUnknowns rooms) {
        return plant.get(room)
                .gains(
                        physics.constants(),
                        physics.air().pressurePa(),
                        rooms.airCelsius(room),
                        rooms.vapourKgPerM3(room));
    }

    @Override
    public void evaluate(RoomUnknowns rooms, Weather weather, ZoneTerms to) {
        to.clear();
        for (int room = 0; room < plans.size(); room++) {
            outdoors(room, rooms, weather, to);
            inside(room, rooms, to);
        }
        for (OpenDoor door : doors) {
            between(door, rooms, to);
        }
    }

    private void outdoors(int room, RoomUnknowns rooms, Weather weather, ZoneTerms to) {
        double flow = freshAirM3PerS(room, rooms, weather);
        double celsius = rooms.airCelsius(room);
        to.put(
                room,
                ZoneTerms.OUT_BY_AIR,
                exchange.outKgPerS(flow, celsius, rooms.vapourKgPerM3(room), weather.celsius(), weather.vapourPa()));
        to.add(room, ZoneTerms.AIR_HEAT, exchange.heatInW(flow, celsius, weather.celsius(), weather.vapourPa()));
    }

    private void inside(int room, RoomUnknowns rooms, ZoneTerms to) {
        PlantState.Gains gains = gains(room, rooms);
        to.add(room, ZoneTerms.AIR_HEAT, gains.airW());
        to.add(room, ZoneTerms.RADIANT_HEAT, gains.radiantW());
        to.put(room, ZoneTerms.DEHUMIDIFIER, gains.caughtKgPerS());
        to.put(room, ZoneTerms.PLANT, gains.burntWaterKgPerS());
        to.put(room, ZoneTerms.PEOPLE, gains.peopleWaterKgPerS());
        if (physics.fogFalls()) {
            double fog = fogKgPerS(room, rooms);
            to.put(room, ZoneTerms.FOG, fog);
            to.add(room, ZoneTerms.AIR_HEAT, physics.constants().latentHeatJPerKg() * fog);
        }
        RoomPlan plan = plans.get(room);
        if (plan.earthFloorKgPerM2S() > 0.0) {
            Constants constants = physics.constants();
            double vapourTransfer = FaceTransfer.vapourSPerM(
                    physics.surfaces(), physics.surfaces().stillWPerM2K());
            double vapourPa = rooms.vapourPa(room, constants.gasConstantVapourJPerKgK());
            double perM2 =
                    EarthFloor.kgPerM2S(plan.earthFloorKgPerM2S(), vapourTransfer, earthSaturationPa[room], vapourPa);
            to.put(room, ZoneTerms.GROUND, plan.floorAreaM2() * perM2);
        }
    }

    private double fogKgPerS(int room, RoomUnknowns rooms) {
        double celsius = rooms.airCelsius(room);
        double saturatedKgPerM3 = physics.constants().saturation().pressurePa(celsius)
                / (gasConstantVapourJPerKgK() * Units.kelvin(celsius));
        return Fog.kgPerS(plans.get(room).volumeM3(), rooms.vapourKgPerM3(room), saturatedKgPerM3);
    }

    private void between(OpenDoor door, RoomUnknowns rooms, ZoneTerms to) {
        double one = rooms.airCelsius(door.one());
        double other = rooms.airCelsius(door.other());
        double flow = door.flow().eachWayM3PerS(one, other);
        double oneVapour = rooms.vapourKgPerM3(door.one());
        double otherVapour = rooms.vapourKgPerM3(door.other());
        double vapour = exchange.toOtherRoomKgPerS(flow, one, oneVapour, other, otherVapour);
        double heat = exchange.heatToOtherRoomW(flow, one, oneVapour, other, otherVapour);
        to.add(door.one(), ZoneTerms.TO_ROOMS, vapour);
        to.add(door.other(), ZoneTerms.TO_ROOMS, -vapour);
        to.add(door.one(), ZoneTerms.AIR_HEAT, -heat);
        to.add(door.other(), ZoneTerms.AIR_HEAT, heat);
    }

    private int index(String name) {
        for (int room = 0; room < plans.size(); room++) {
            if (plans.get(room).name().equals(name)) {
                return room;
            }
        }
        throw new IllegalArgumentException("toRoom: must be a room of the site, was " + name);
    }
}
