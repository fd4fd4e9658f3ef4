package org.limedry.simulation;

import java.util.Arrays;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.limedry.air.MagnusForm;
import org.limedry.material.Material;

/**
 * The equations of a coat on a wall with a sealed middle, written once more for a general integrator: nodes on faces and
 * contact, half a link of store on either side, the liquid flow by the integral of the conductivity.
 *
 * <p>Nothing is shared with the solver but the materials and the places of the nodes. Unknowns are ln p and T of every
 * node, not water: a general integrator conserves water only as well as it integrates.
 */
final class PlainWall implements FirstOrderDifferentialEquations {
    private static final double GAS_J_PER_KG_K = 461.5;
    private static final double LATENT_J_PER_KG = 2.5e6;
    private static final double WATER_J_PER_KG_K = 4187.0;
    private static final double FROM_LOG = 0.0;
    private static final double TO_LOG = 25.0;
    private static final int KNOTS = 2000;

    /** What the face looks at. */
    record Air(double celsius, double relativeHumidity, double heatWPerM2K, double vapourSPerM) {
        double vapourPa() {
            return relativeHumidity * MagnusForm.ISO_WATER.pressurePa(celsius);
        }
    }

    private final double[] linkM;
    private final Material[] material;
    private final PolynomialSplineFunction[] potential;
    private final Air air;

    PlainWall(double[] linkM, int oldLinks, Material old, Material coat, Air air) {
        this.linkM = linkM.clone();
        this.air = air;
        material = new Material[linkM.length];
        potential = new PolynomialSplineFunction[linkM.length];
        PolynomialSplineFunction ofOld = potential(old);
        PolynomialSplineFunction ofCoat = potential(coat);
        for (int link = 0; link < linkM.length; link++) {
            material[link] = link < oldLinks ? old : coat;
            potential[link] = link < oldLinks ? ofOld : ofCoat;
        }
    }

    @Override
    public int getDimension() {
        return 2 * linkM.length + 2;
    }

    /** Returns the water between two nodes, kg/m2. */
    double waterKgPerM2(double[] y, int firstLink, int lastLink) {
        double sum = 0.0;
        for (int link = firstLink; link < lastLink; link++) {
            sum += 0.5 * linkM[link] * (water(link, y[2 * link]) + water(link, y[2 * link + 2]));
        }
        return sum;
    }

    @Override
    public void computeDerivatives(double t, double[] y, double[] rate) {
        Arrays.fill(rate, 0.0);
        int last = linkM.length;
        double[] store = new double[getDimension()];
        for (int link = 0; link < last; link++) {
            store(link, y, store);
            flow(link, y, rate);
        }
        double vapour = air.vapourSPerM() * (air.vapourPa() - vapourPa(y, last));
        rate[2 * last] += vapour;
        rate[2 * last + 1] += air.heatWPerM2K() * (air.celsius() - y[2 * last + 1]) + LATENT_J_PER_KG * vapour;
        // The film that stands on a face, 0.02 ln(1 + 10 Pa / p) and 2e-7 kg/m2 per e-fold.
        store[2 * last] -= 0.02 * 10.0 / (10.0 + Math.exp(y[2 * last])) + 2.0e-7;
        for (int k = 0; k < rate.length; k++) {
            rate[k] /= store[k];
        }
    }

    private void store(int link, double[] y, double[] store) {
        double half = 0.5 * linkM[link];
        for (int node = link; node <= link + 1; node++) {
            double suctionPa = Math.exp(y[2 * node]);
            store[2 * node] += half * material[link].retention().slopeKgPerM3(suctionPa);
            store[2 * node + 1] +=
                    half * (material[link].dryHeatCapacityJPerM3K() + WATER_J_PER_KG_K * water(link, y[2 * node]));
        }
    }

    private void flow(int link, double[] y, double[] rate) {
        int left = 2 * link;
        int right = left + 2;
        Material here = material[link];
        double leftWater = water(link, y[left]);
        double rightWater = water(link, y[right]);
        double liquid = (potential[link].value(y[left]) - potential[link].value(y[right])) / linkM[link];
        double delta = 0.5
                * (here.vapourPermeabilityKgPerMSPa().at(leftWater)
                        + here.vapourPermeabilityKgPerMSPa().at(rightWater));
        double vapour = delta * (vapourPa(y, link) - vapourPa(y, link + 1)) / linkM[link];
        double lambda = 0.5
                * (here.conductivityWPerMK().at(leftWater)
                        + here.conductivityWPerMK().at(rightWater));
        double heat = lambda * (y[left + 1] - y[right + 1]) / linkM[link] + LATENT_J_PER_KG * vapour;
        rate[left] -= liquid + vapour;
        rate[right] += liquid + vapour;
        rate[left + 1] -= heat;
        rate[right + 1] += heat;
    }

    private double water(int link, double logSuction) {
        return material[link].retention().waterKgPerM3(Math.exp(logSuction));
    }

    /** Kelvin: phi = exp(-p / (rho_w R_v T)). */
    static double vapourPa(double[] y, int node) {
        double celsius = y[2 * node + 1];
        double dryness = Math.exp(y[2 * node]) / (1000.0 * GAS_J_PER_KG_K * (celsius + 273.15));
        return MagnusForm.ISO_WATER.pressurePa(celsius) * Math.exp(-dryness);
    }

    /** Returns the integral of the conductivity from a suction to a very large one, by Simpson's rule between knots. */
    private static PolynomialSplineFunction potential(Material material) {
        UnivariateFunction slope = log -> material.liquid().conductivityS(Math.exp(log)) * Math.exp(log);
        SimpsonIntegrator simpson = new SimpsonIntegrator(1.0e-10, 1.0e-30, 3, 20);
        double[] logs = new double[KNOTS + 1];
        double[] sums = new double[KNOTS + 1];
        double step = (TO_LOG - FROM_LOG) / KNOTS;
        logs[KNOTS] = TO_LOG;
        for (int k = KNOTS - 1; k >= 0; k--) {
            logs[k] = FROM_LOG + k * step;
            sums[k] = sums[k + 1] + simpson.integrate(10_000, slope, logs[k], logs[k + 1]);
        }
        return new SplineInterpolator().interpolate(logs, sums);
    }
}
