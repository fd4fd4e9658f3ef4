package org.limedry.simulation;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.limedry.lime.Carbonation;
import org.limedry.room.CarbonDioxide;

/**
 * Set and carbonation of all coats with the carbon dioxide of the rooms, one step at a time.
 *
 * <p>Split from the moisture step: the carbon dioxide of a step is balanced implicitly with the air flow and the state at
 * its start, and the water that set binds or carbonation frees is a constant source in the moisture step that follows.
 */
final class Chemistry {
    /** What one coat does in the step. */
    private record Dose(CoatCourse coat, double ppm, double releasedKgPerM2, double boundKgPerM2) {}

    private final List<CoatCourse> coats;
    private final FaceAir air;
    private final SiteFlows flows;
    private final double outdoorPpm;
    private final double[] roomPpm;
    private final double[] volumeM3;
    private List<Dose> doses = List.of();
    private List<CarbonDioxide.Step> gas = List.of();

    Chemistry(List<CoatCourse> coats, FaceAir air, SiteFlows flows, double outdoorPpm, double[] volumeM3) {
        this.coats = coats;
        this.air = air;
        this.flows = flows;
        this.outdoorPpm = outdoorPpm;
        this.volumeM3 = volumeM3;
        roomPpm = new double[volumeM3.length];
        Arrays.fill(roomPpm, outdoorPpm);
    }

    double ppm(int room) {
        return roomPpm[room];
    }

    /** Works out the step and puts its water into the walls as sources. */
    void prepare(RoomUnknowns rooms, Weather weather, double stepS) {
        gas = volumeM3.length == 0
                ? List.of()
                : CarbonDioxide.over(zones(rooms, weather, stepS), doors(rooms), outdoorPpm, stepS);
        List<Dose> next = new ArrayList<>();
        for (CoatCourse coat : coats) {
            if (coat.isLaid()) {
                int room = air.innerRoom(coat.wall());
                double ppm = room < 0 ? outdoorPpm : gas.get(room).meanPpm();
                double released = Carbonation.waterReleasedKgPerM2(coat.carbonatingKgPerM2(ppm, stepS));
                double bound = coat.boundKgPerM2(stepS);
                coat.column().addSource(coat.frontNode(), released / stepS);
                coat.column().addSourceInCoat(coat.plan().number(), -bound / stepS);
                next.add(new Dose(coat, ppm, released, bound));
            }
        }
        doses = next;
    }

    /** Takes the step that {@link #prepare} worked out. */
    void accept(Instant now, double stepS, Books books) {
        for (int room = 0; room < roomPpm.length; room++) {
            roomPpm[room] = gas.get(room).endPpm();
        }
        for (Dose dose : doses) {
            double area = dose.coat().column().plan().areaM2();
            Ledger ledger = books.ofWall(dose.coat().wall());
            ledger.add(Ledger.Term.RELEASED, area * dose.releasedKgPerM2());
            ledger.add(Ledger.Term.BOUND, area * dose.boundKgPerM2());
            dose.coat().carbonate(dose.ppm(), stepS);
            dose.coat().age(now, stepS);
        }
    }

    private List<CarbonDioxide.Zone> zones(RoomUnknowns rooms, Weather weather, double stepS) {
        List<CarbonDioxide.Zone> zones = new ArrayList<>();
        for (int room = 0; room < roomPpm.length; room++) {
            int index = room;
            double density = flows.exchange()
                    .dryAirKgPerM3(rooms.airCelsius(room), rooms.vapourPa(room, flows.gasConstantVapourJPerKgK()));
            zones.add(new CarbonDioxide.Zone(
                    volumeM3[room] * density,
                    roomPpm[room],
                    flows.exchange()
                            .dryAirKgPerS(
                                    flows.freshAirM3PerS(room, rooms, weather), weather.celsius(), weather.vapourPa()),
                    flows.gains(room, rooms).carbonDioxideKgPerS(),
                    ppm -> takenKg(index, ppm, stepS)));
        }
        return zones;
    }

    private List<CarbonDioxide.Door> doors(RoomUnknowns rooms) {
        List<CarbonDioxide.Door> doors = new ArrayList<>();
        for (SiteFlows.OpenDoor door : flows.doors()) {
            double celsius = rooms.airCelsius(door.one());
            double vapourPa = rooms.vapourPa(door.one(), flows.gasConstantVapourJPerKgK());
            double flow = door.flow().eachWayM3PerS(celsius, rooms.airCelsius(door.other()));
            doors.add(new CarbonDioxide.Door(
                    door.one(), door.other(), flows.exchange().dryAirKgPerS(flow, celsius, vapourPa)));
        }
        return doors;
    }

    private double takenKg(int room, double ppm, double stepS) {
        double sum = 0.0;
        for (CoatCourse coat : coats) {
            if (coat.isLaid() && air.innerRoom(coat.wall()) == room) {
                sum += coat.column().plan().areaM2()
                        * Carbonation.carbonDioxideTakenKgPerM2(coat.carbonatingKgPerM2(ppm, stepS));
            }
        }
        return sum;
    }
}
