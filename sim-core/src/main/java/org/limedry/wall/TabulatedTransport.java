package org.limedry.wall;

import org.limedry.material.LinearTable;
import org.limedry.material.Material;
import org.limedry.material.SuctionTable;
import org.limedry.units.Check;

/**
 * The functions of a tabulated material as its table tells them: every row met exactly, slopes right on each piece, the
 * flux potential in closed form.
 *
 * <p>Where a table is flat the solver would divide 0 by 0. Three stores are added that no flow changes: 1e-8 kg/m3 per
 * e-fold of u everywhere; {@code 4e-4 w_f / (1 + p / 1000 Pa)} (at least 0.01 kg/m3 for 4e-4 w_f), which is a millionth of w_f at
 * 4e5 Pa, lets a front of full pores move in steps of use, and grows without bound as the suction falls below 0 towards
 * -1000 Pa, so that water which full pores cannot hold stays where it is and in the account; and 1 kg/m3 per
 * e-fold above 1e10 Pa, where no vapour is left, so that a stage may overshoot a dry end. A profile tells the table's
 * own water; a layer counts the stores too, so that its account closes.
 */
final class TabulatedTransport implements Transport {
    private static final double SMALL_STORE_KG_PER_M3 = 1.0e-8;
    private static final double STANDING_SHARE = 4.0e-4;
    private static final double LEAST_STANDING_KG_PER_M3 = 1.0e-2;
    private static final double DRY_STORE_KG_PER_M3 = 1.0;
    private static final double DRY_FROM = SuctionScale.SHIFTED.of(1.0e10);
    private static final double MOST_FLOOR_KG_PER_M3 = 50.0;
    private static final double LEAST_FLOOR_KG_PER_M3 = 1.0;
    private static final double FLOOR_SHARE = 0.2;

    private final SuctionTable table;
    private final LinearTable permeability;
    private final LinearTable conductivity;
    private final double dryHeatCapacityJPerM3K;
    private final double shiftPa = SuctionScale.SHIFTED.shiftPa();
    private final double wettestPa;
    private final double driestPa;
    private final double standingKgPaPerM3;

    TabulatedTransport(Material material) {
        boolean known = material.retention() instanceof SuctionTable
                && material.liquid().equals(material.retention())
                && material.vapourPermeabilityKgPerMSPa() instanceof LinearTable
                && material.conductivityWPerMK() instanceof LinearTable;
        Check.that(known, "material", "tabulated in all its functions", material.name());
        table = (SuctionTable) material.retention();
        permeability = (LinearTable) material.vapourPermeabilityKgPerMSPa();
        conductivity = (LinearTable) material.conductivityWPerMK();
        dryHeatCapacityJPerM3K = material.dryHeatCapacityJPerM3K();
        wettestPa = table.rowSuctionPa(0);
        standingKgPaPerM3 =
                shiftPa * Math.max(LEAST_STANDING_KG_PER_M3, STANDING_SHARE * table.freeSaturationKgPerM3());
        driestPa = table.rowSuctionPa(table.rows() - 1);
    }

    @Override
    public double dryHeatCapacityJPerM3K() {
        return dryHeatCapacityJPerM3K;
    }

    @Override
    public boolean isClosed() {
        return false;
    }

    @Override
    public double fullKgPerM3() {
        return table.freeSaturationKgPerM3();
    }

    @Override
    public double errorFloorKgPerM3() {
        return Math.max(LEAST_FLOOR_KG_PER_M3, Math.min(MOST_FLOOR_KG_PER_M3, FLOOR_SHARE * fullKgPerM3()));
    }

    @Override
    public void evaluate(double u, double[] out, int at) {
        double bySuction = Math.exp(u);
        double suctionPa = bySuction - shiftPa;
        double slope = 0.0;
        double water;
        if (suctionPa <= wettestPa || suctionPa >= driestPa) {
            water = table.waterKgPerM3(suctionPa);
            out[at + 2] = table.potentialKgPerMS(suctionPa);
            out[at + 3] = -table.conductivityS(suctionPa) * bySuction;
        } else {
            double logSuction = Math.log(suctionPa);
            int piece = table.piece(logSuction);
            water = table.water(piece, logSuction);
            slope = table.waterSlope(piece) * bySuction / suctionPa;
            out[at + 2] = table.potential(piece, logSuction);
            out[at + 3] = -table.conductivity(piece, logSuction) * bySuction;
        }
        double standing = standingKgPaPerM3 / bySuction;
        double store = SMALL_STORE_KG_PER_M3 + (u > DRY_FROM ? DRY_STORE_KG_PER_M3 : 0.0);
        out[at] = water + standing + store * (DRY_FROM - u);
        out[at + 1] = slope - standing - store;
        out[at + 4] = permeability.at(water);
        out[at + 5] = permeability.slopeAt(water) * slope;
        out[at + 6] = conductivity.at(water);
        out[at + 7] = conductivity.slopeAt(water) * slope;
    }

    @Override
    public double waterKgPerM3(double u) {
        double[] both = new double[2];
        water(u, both);
        return both[0];
    }

    @Override
    public double ownKgPerM3(double u) {
        return table.waterKgPerM3(Math.exp(u) - shiftPa);
    }

    @Override
    public double waterSlopeKgPerM3(double u) {
        double[] both = new double[2];
        water(u, both);
        return both[1];
    }

    @Override
    public void water(double u, double[] to) {
        double bySuction = Math.exp(u);
        double suctionPa = bySuction - shiftPa;
        double standing = standingKgPaPerM3 / bySuction;
        double store = SMALL_STORE_KG_PER_M3 + (u > DRY_FROM ? DRY_STORE_KG_PER_M3 : 0.0);
        to[0] = standing + store * (DRY_FROM - u);
        to[1] = -standing - store;
        if (suctionPa > wettestPa && suctionPa < driestPa) {
            double logSuction = Math.log(suctionPa);
            int piece = table.piece(logSuction);
            to[0] += table.water(piece, logSuction);
            to[1] += table.waterSlope(piece) * bySuction / suctionPa;
        } else {
            to[0] += table.waterKgPerM3(suctionPa);
        }
    }

    @Override
    public double newtonMove(double u, double waterKgPerM3) {
        double[] both = new double[2];
        water(u, both);
        return (waterKgPerM3 - both[0]) / both[1];
    }
}
