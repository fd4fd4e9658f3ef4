package org.limedry.wall;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.limedry.material.Material;
import org.limedry.material.WaterFunction;

/**
 * A material's functions as cubic pieces in the natural logarithm of suction, for the solver.
 *
 * <p>Water, liquid flux potential {@code Phi(p) = integral of K from p to infinity}, vapour permeability and thermal
 * conductivity, each with its slope by ln p. Values and slopes are exact at the {@value #INTERVALS}+1 knots; between
 * them, for the catalogue's materials, water and conductivity err by less than 1e-6 of themselves, permeability by less
 * than 1e-6 of its dry value and the potential by less than 1e-5 of itself (a test measures it).
 *
 * <p>Near zero suction the slopes of water and potential vanish together and a step would divide 0 by 0. A store too
 * small to matter, {@code 4e-4 w_f ln(1 + 10 Pa / p)}, is added to the water of open materials: a thousandth at 1 Pa. It
 * moves with the diffusivity near saturation, so that a full cell takes and gives water as a nearly full one does.
 * Closed materials get 1e-9 kg/m3 per e-fold of suction, which no flow ever changes.
 */
final class TransportTable implements Transport {
    /** Least ln p that a state may have. */
    static final double LEAST_LOG_SUCTION = Math.log(1.0e-4);

    /** Largest ln p that a state may have. */
    static final double LARGEST_LOG_SUCTION = Math.log(1.0e11);

    private static final double FULL_LOG_SUCTION = 0.0;
    private static final double ERROR_FLOOR_KG_PER_M3 = 50.0;
    private static final int INTERVALS = 256;
    private static final double STEP = (LARGEST_LOG_SUCTION - LEAST_LOG_SUCTION) / INTERVALS;
    private static final int QUANTITIES = 4;
    private static final int PIECE = 4 * QUANTITIES;
    private static final double SMALL_STORE_SHARE = 4.0e-4;
    private static final double SMALL_STORE_PA = 10.0;
    private static final double NEAR_SATURATION_PA = 1.0e3;
    private static final double CLOSED_STORE_KG_PER_M3 = 1.0e-9;

    private final double[] pieces = new double[INTERVALS * PIECE];
    private final double dryHeatCapacityJPerM3K;
    private final boolean closed;

    TransportTable(Material material) {
        dryHeatCapacityJPerM3K = material.dryHeatCapacityJPerM3K();
        closed = isClosed(material);
        double[][] knots = knots(material);
        for (int k = 0; k < INTERVALS; k++) {
            for (int q = 0; q < QUANTITIES; q++) {
                fill(k * PIECE + 4 * q, knots[k], knots[k + 1], 2 * q);
            }
        }
    }

    @Override
    public double dryHeatCapacityJPerM3K() {
        return dryHeatCapacityJPerM3K;
    }

    @Override
    public boolean isClosed() {
        return closed;
    }

    @Override
    public void evaluate(double logSuction, double[] out, int at) {
        double place = (logSuction - LEAST_LOG_SUCTION) / STEP;
        int k = Math.min(Math.max((int) place, 0), INTERVALS - 1);
        double t = place - k;
        int c = k * PIECE;
        for (int q = 0; q < QUANTITIES; q++) {
            double c3 = pieces[c + 3];
            double c2 = pieces[c + 2];
            double c1 = pieces[c + 1];
            out[at + 2 * q] = pieces[c] + t * (c1 + t * (c2 + t * c3));
            out[at + 2 * q + 1] = (c1 + t * (2.0 * c2 + t * 3.0 * c3)) / STEP;
            c += 4;
        }
    }

    @Override
    public double waterKgPerM3(double logSuction) {
        double place = (logSuction - LEAST_LOG_SUCTION) / STEP;
        int k = Math.min(Math.max((int) place, 0), INTERVALS - 1);
        double t = place - k;
        int c = k * PIECE;
        return pieces[c] + t * (pieces[c + 1] + t * (pieces[c + 2] + t * pieces[c + 3]));
    }

    @Override
    public double waterSlopeKgPerM3(double logSuction) {
        double place = (logSuction - LEAST_LOG_SUCTION) / STEP;
        int k = Math.min(Math.max((int) place, 0), INTERVALS - 1);
        double t = place - k;
        int c = k * PIECE;
        return (pieces[c + 1] + t * (2.0 * pieces[c + 2] + t * 3.0 * pieces[c + 3])) / STEP;
    }

    @Override
    public double ownKgPerM3(double logSuction) {
        return waterKgPerM3(logSuction);
    }

    @Override
    public double fullKgPerM3() {
        return waterKgPerM3(FULL_LOG_SUCTION);
    }

    @Override
    public double errorFloorKgPerM3() {
        return ERROR_FLOOR_KG_PER_M3;
    }

    @Override
    public void water(double logSuction, double[] to) {
        to[0] = waterKgPerM3(logSuction);
        to[1] = waterSlopeKgPerM3(logSuction);
    }

    @Override
    public double newtonMove(double logSuction, double waterKgPerM3) {
        double place = (logSuction - LEAST_LOG_SUCTION) / STEP;
        int k = Math.min(Math.max((int) place, 0), INTERVALS - 1);
        double t = place - k;
        int c = k * PIECE;
        double c1 = pieces[c + 1];
        double c2 = pieces[c + 2];
        double c3 = pieces[c + 3];
        double water = pieces[c] + t * (c1 + t * (c2 + t * c3));
        return (waterKgPerM3 - water) * STEP / (c1 + t * (2.0 * c2 + t * 3.0 * c3));
    }

    private void fill(int at, double[] left, double[] right, int q) {
        double d0 = left[q + 1] * STEP;
        double d1 = right[q + 1] * STEP;
        double rise = right[q] - left[q];
        pieces[at] = left[q];
        pieces[at + 1] = d0;
        pieces[at + 2] = 3.0 * rise - 2.0 * d0 - d1;
        pieces[at + 3] = d0 + d1 - 2.0 * rise;
    }

    private static double[][] knots(Material material) {
        GaussIntegrator gauss = new GaussIntegratorFactory().legendre(8, -0.5, 0.5);
        double[][] knots = new double[INTERVALS + 1][];
        double potential = 0.0;
        for (int k = INTERVALS; k >= 0; k--) {
            double logSuction = LEAST_LOG_SUCTION + k * STEP;
            if (k < INTERVALS) {
                double middle = logSuction + 0.5 * STEP;
                potential += STEP * gauss.integrate(x -> flowSlope(material, middle + x * STEP));
            }
            knots[k] = knot(material, logSuction, potential);
        }
        return knots;
    }

    private static double flowSlope(Material material, double logSuction) {
        double suctionPa = Math.exp(logSuction);
        return material.liquid().conductivityS(suctionPa) * suctionPa;
    }

    private static double[] knot(Material material, double logSuction, double potential) {
        double suctionPa = Math.exp(logSuction);
        double water = material.retention().waterKgPerM3(suctionPa);
        double slope = material.retention().slopeKgPerM3(suctionPa);
        boolean closed = isClosed(material);
        double small = SMALL_STORE_SHARE * material.retention().freeSaturationKgPerM3();
        double store = closed
                ? CLOSED_STORE_KG_PER_M3 * (LARGEST_LOG_SUCTION - logSuction)
                : small * Math.log1p(SMALL_STORE_PA / suctionPa);
        double storeSlope = closed ? -CLOSED_STORE_KG_PER_M3 : -small * SMALL_STORE_PA / (SMALL_STORE_PA + suctionPa);
        double mobility = closed ? 0.0 : nearSaturationM2PerS(material);
        WaterFunction permeability = material.vapourPermeabilityKgPerMSPa();
        WaterFunction conductivity = material.conductivityWPerMK();
        return new double[] {
            water + store,
            slope + storeSlope,
            potential + mobility * store,
            -flowSlope(material, logSuction) + mobility * storeSlope,
            permeability.at(water),
            slopeByWater(permeability, water) * slope,
            conductivity.at(water),
            slopeByWater(conductivity, water) * slope
        };
    }

    /** Returns the diffusivity {@code K / |dw/dp|} close to saturation; 0 where the water is flat there. */
    private static double nearSaturationM2PerS(Material material) {
        double slope = material.retention().slopeKgPerM3(NEAR_SATURATION_PA);
        return slope < 0.0 ? flowSlope(material, Math.log(NEAR_SATURATION_PA)) / -slope : 0.0;
    }

    private static boolean isClosed(Material material) {
        return !(material.retention().freeSaturationKgPerM3() > 0.0);
    }

    private static double slopeByWater(WaterFunction function, double water) {
        double step = 1.0e-6 * (water + 1.0);
        double low = Math.max(0.0, water - step);
        return (function.at(water + step) - function.at(low)) / (water + step - low);
    }
}
