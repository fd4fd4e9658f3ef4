package org.limedry.material;

/**
 * Free uptake of water by a dry material, from its own functions: the self-similar solution of {@code dw/dt = d/dx(D
 * dw/dx)}, {@code D = K |dp/dw|}, by iteration on flux and concentration (Philip 1973; Bruce and Klute 1956).
 */
final class Uptake {
    private static final int POINTS = 20_000;
    private static final int ROUNDS = 60;

    private Uptake() {}

    /** Returns the water taken per root of time, kg/(m2 s^0.5). */
    static double absorptionKgPerM2SqrtS(Material material, VanGenuchten retention) {
        double step = retention.freeSaturationKgPerM3() / POINTS;
        double[] diffusivity = new double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            double suctionPa = retention.suctionPa((i + 0.5) / POINTS);
            double slope = -retention.slopeKgPerM3(suctionPa) / suctionPa;
            diffusivity[i] = material.liquid().conductivityS(suctionPa) / slope;
        }
        double[] phi = new double[POINTS];
        java.util.Arrays.fill(phi, Math.sqrt(diffusivity[POINTS - 1]));
        for (int round = 0; round < ROUNDS; round++) {
            phi = improved(phi, diffusivity, step);
        }
        return java.util.Arrays.stream(phi).sum() * step;
    }

    /** One round: flux {@code q(w) = 1/2 int_0^w phi}, then {@code phi(w) = int_w^wf D/q}, averaged with the last. */
    private static double[] improved(double[] phi, double[] diffusivity, double step) {
        double[] flux = new double[POINTS];
        double sum = 0.0;
        for (int i = 0; i < POINTS; i++) {
            flux[i] = 0.5 * (sum + 0.5 * phi[i] * step);
            sum += phi[i] * step;
        }
        double[] next = new double[POINTS];
        double above = 0.0;
        for (int i = POINTS - 1; i >= 0; i--) {
            double cell = diffusivity[i] / flux[i] * step;
            next[i] = Math.sqrt(phi[i] * (above + 0.5 * cell));
            above += cell;
        }
        return next;
    }
}
