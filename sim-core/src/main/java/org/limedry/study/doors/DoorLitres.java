package org.limedry.study.doors;

import org.limedry.simulation.WaterAccount;

/** What a room lost over the days of a plan. */
public final class DoorLitres {
    private DoorLitres() {}

    /**
     * Returns the water that a room lost by air, by its doors to other rooms, by dehumidifiers and off its faces, less
     * what ground, people and burnt fuel put into it: what walls, plaster and air hold less for, but for what went
     * through walls, was laid or misted on, or was bound. Litres, at 1 kg each.
     *
     * @param before the room's account as the days begin
     * @param after the same account as they end
     */
    public static double outOfWalls(WaterAccount before, WaterAccount after) {
        return net(after) - net(before);
    }

    private static double net(WaterAccount account) {
        double out = account.outByAirKg() + account.betweenRoomsKg() + account.dehumidifierKg() + account.runOffKg();
        return out - account.groundKg() - account.peopleKg() - account.plantAddedKg();
    }
}
