package org.limedry.wall;

import org.limedry.air.MagnusForm;
import org.limedry.units.Units;

/** Everything the balance of one wall needs to know about its nodes in one state. */
final class WallProperties {
    private static final double REFERENCE_KELVIN = 293.15;

    private final WallMesh mesh;
    private final Constants constants;
    private final double kelvinFactor;
    private final boolean localKelvin;

    /** Look-ups by the material before a node, then by the material after it. */
    final double[] before;

    final double[] after;
    final double[] vapourPa;
    final double[] vapourByLog;
    final double[] vapourByCelsius;
    final double[] capacity;
    final double[] capacityByLog;
    final double[] airFactor;
    final double[] airFactorByCelsius;

    WallProperties(WallMesh mesh, Constants constants) {
        this.mesh = mesh;
        this.constants = constants;
        int nodes = mesh.nodes();
        before = new double[nodes * Transport.WIDTH];
        after = new double[nodes * Transport.WIDTH];
        vapourPa = new double[nodes];
        vapourByLog = new double[nodes];
        vapourByCelsius = new double[nodes];
        capacity = new double[nodes];
        capacityByLog = new double[nodes];
        airFactor = new double[nodes];
        airFactorByCelsius = new double[nodes];
        kelvinFactor = 1.0 / (constants.waterDensityKgPerM3() * constants.gasConstantVapourJPerKgK());
        localKelvin = constants.kelvinReferenceCelsius().isEmpty();
    }

    void evaluate(WallState state) {
        for (int node = 0; node < mesh.nodes(); node++) {
            evaluate(node, state);
        }
    }

    void evaluate(int node, WallState state) {
        tables(node, state.logSuction[node]);
        vapour(node, state.logSuction[node], state.celsius[node]);
    }

    /** Relative humidity in the pores of a node. */
    double relativeHumidity(int node, double celsius) {
        return vapourPa[node] / constants.saturation().pressurePa(celsius);
    }

    private void tables(int node, double logSuction) {
        int at = node * Transport.WIDTH;
        int last = mesh.nodes() - 1;
        double heat = 0.0;
        double heatByLog = 0.0;
        double waterHeat = constants.waterHeatCapacityJPerKgK();
        if (node > 0) {
            Transport table = mesh.table(node - 1);
            table.evaluate(logSuction, before, at);
            heat += mesh.halfBeforeM(node) * (table.dryHeatCapacityJPerM3K() + waterHeat * before[at]);
            heatByLog += mesh.halfBeforeM(node) * waterHeat * before[at + 1];
        }
        if (node < last) {
            Transport table = mesh.table(node);
            if (node > 0 && mesh.isUniform(node)) {
                System.arraycopy(before, at, after, at, Transport.WIDTH);
            } else {
                table.evaluate(logSuction, after, at);
            }
            heat += mesh.halfAfterM(node) * (table.dryHeatCapacityJPerM3K() + waterHeat * after[at]);
            heatByLog += mesh.halfAfterM(node) * waterHeat * after[at + 1];
        }
        capacity[node] = heat;
        capacityByLog[node] = heatByLog;
    }

    private void vapour(int node, double logSuction, double celsius) {
        double kelvin = localKelvin
                ? Units.kelvin(celsius)
                : Units.kelvin(constants.kelvinReferenceCelsius().getAsDouble());
        double bySuction = Math.exp(logSuction);
        double dryness = (bySuction - mesh.scale().shiftPa()) * kelvinFactor / kelvin;
        double pressure;
        double byCelsius;
        if (constants.saturation() instanceof MagnusForm form) {
            // One exponential for both factors: this is the hottest line of a run.
            double fromPole = form.offsetCelsius() + celsius;
            pressure = form.referencePa() * Math.exp(form.slope() * celsius / fromPole - dryness);
            byCelsius = form.slope() * form.offsetCelsius() / (fromPole * fromPole);
        } else {
            double full = constants.saturation().pressurePa(celsius);
            pressure = full * Math.exp(-dryness);
            byCelsius = constants.saturation().slopePaPerK(celsius) / full;
        }
        vapourPa[node] = pressure;
        vapourByLog[node] = -pressure * (bySuction * kelvinFactor / kelvin);
        vapourByCelsius[node] = pressure * (byCelsius + (localKelvin ? dryness / kelvin : 0.0));
        double exponent = constants.vapourPermeabilityExponent();
        double here = Units.kelvin(celsius);
        airFactor[node] = exponent == 0.0 ? 1.0 : Math.pow(here / REFERENCE_KELVIN, exponent);
        airFactorByCelsius[node] = exponent * airFactor[node] / here;
    }
}
