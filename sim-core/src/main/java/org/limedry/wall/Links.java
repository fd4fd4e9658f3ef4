package org.limedry.wall;

/**
 * Flows over the links of a wall, and their slopes.
 *
 * <p>Moisture flow {@code g = (Phi_l - Phi_r)/dx + delta (pv_l - pv_r)/dx}: the first part is the exact Kirchhoff mean
 * of the liquid conductivity. Heat flow {@code q = lambda (T_l - T_r)/dx + L g_v}. Permeability and conductivity are
 * means of both ends. Flows are positive from the outside to the inside.
 */
final class Links {
    private static final int POTENTIAL = 2;
    private static final int PERMEABILITY = 4;
    private static final int CONDUCTIVITY = 6;

    private final WallMesh mesh;
    private final double latentHeatJPerKg;

    /** Moisture flow of each link, kg/(m2 s), and heat flow, W/m2. */
    final double[] water;

    final double[] heat;

    /** Slopes of each link: water by (ln p, T) on the left, on the right, then heat likewise; eight a link. */
    final double[] slopes;

    Links(WallMesh mesh, double latentHeatJPerKg) {
        this.mesh = mesh;
        this.latentHeatJPerKg = latentHeatJPerKg;
        int links = mesh.nodes() - 1;
        water = new double[links];
        heat = new double[links];
        slopes = new double[8 * links];
    }

    void flows(WallProperties p, WallState state) {
        for (int k = 0; k < water.length; k++) {
            int left = k * Transport.WIDTH;
            int right = left + Transport.WIDTH;
            double perM = 1.0 / mesh.linkM(k);
            double delta = 0.5
                    * (p.after[left + PERMEABILITY] * p.airFactor[k]
                            + p.before[right + PERMEABILITY] * p.airFactor[k + 1]);
            double vapour = delta * (p.vapourPa[k] - p.vapourPa[k + 1]) * perM;
            double lambda = 0.5 * (p.after[left + CONDUCTIVITY] + p.before[right + CONDUCTIVITY]);
            water[k] = (p.after[left + POTENTIAL] - p.before[right + POTENTIAL]) * perM + vapour;
            heat[k] = lambda * (state.celsius[k] - state.celsius[k + 1]) * perM + latentHeatJPerKg * vapour;
        }
    }

    void slopes(WallProperties p, WallState state) {
        for (int k = 0; k < water.length; k++) {
            int left = k * Transport.WIDTH;
            int right = left + Transport.WIDTH;
            double perM = 1.0 / mesh.linkM(k);
            double drop = (p.vapourPa[k] - p.vapourPa[k + 1]) * perM;
            double warm = (state.celsius[k] - state.celsius[k + 1]) * perM;
            double deltaLeft = 0.5 * p.after[left + PERMEABILITY] * p.airFactor[k];
            double deltaRight = 0.5 * p.before[right + PERMEABILITY] * p.airFactor[k + 1];
            double delta = (deltaLeft + deltaRight) * perM;
            double lambda = 0.5 * (p.after[left + CONDUCTIVITY] + p.before[right + CONDUCTIVITY]) * perM;
            double byLogLeft =
                    0.5 * p.after[left + PERMEABILITY + 1] * p.airFactor[k] * drop + delta * p.vapourByLog[k];
            double byLogRight =
                    0.5 * p.before[right + PERMEABILITY + 1] * p.airFactor[k + 1] * drop - delta * p.vapourByLog[k + 1];
            double byCelsiusLeft =
                    0.5 * p.after[left + PERMEABILITY] * p.airFactorByCelsius[k] * drop + delta * p.vapourByCelsius[k];
            double byCelsiusRight = 0.5 * p.before[right + PERMEABILITY] * p.airFactorByCelsius[k + 1] * drop
                    - delta * p.vapourByCelsius[k + 1];
            int at = 8 * k;
            slopes[at] = p.after[left + POTENTIAL + 1] * perM + byLogLeft;
            slopes[at + 1] = byCelsiusLeft;
            slopes[at + 2] = -p.before[right + POTENTIAL + 1] * perM + byLogRight;
            slopes[at + 3] = byCelsiusRight;
            slopes[at + 4] = 0.5 * p.after[left + CONDUCTIVITY + 1] * warm + latentHeatJPerKg * byLogLeft;
            slopes[at + 5] = lambda + latentHeatJPerKg * byCelsiusLeft;
            slopes[at + 6] = 0.5 * p.before[right + CONDUCTIVITY + 1] * warm + latentHeatJPerKg * byLogRight;
            slopes[at + 7] = -lambda + latentHeatJPerKg * byCelsiusRight;
        }
    }
}
