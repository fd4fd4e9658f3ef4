package org.limedry.study;

import java.util.List;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import org.limedry.simulation.WaterAccount;
import org.limedry.units.Check;
import org.limedry.units.Units;

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

    /**
     * Returns the litres below which a share of the members stays; linear between the two next to it.
     *
     * <p><b>Source:</b> definition 6 of Hyndman and Fan 1996, Sample quantiles in statistical packages, The American
     * Statistician 50, 361-365, FROM MEMORY.
     *
     * @param litres one figure for each member; not empty
     * @param share share of the members; above 0 and at most 1
     */
    public static double quantile(List<Double> litres, double share) {
        Check.notEmpty(litres, "litres");
        double[] values = litres.stream().mapToDouble(Double::doubleValue).toArray();
        return new Percentile()
                .withEstimationType(Percentile.EstimationType.R_6)
                .evaluate(values, Units.percentFromFraction(share));
    }

    private static double net(WaterAccount account) {
        double out = account.outByAirKg() + account.betweenRoomsKg() + account.dehumidifierKg() + account.runOffKg();
        return out - account.groundKg() - account.peopleKg() - account.plantAddedKg();
    }
}
