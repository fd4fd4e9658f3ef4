package org.limedry.wall;

import org.limedry.material.VanGenuchten;
import org.limedry.units.Check;
import org.limedry.units.Units;

/** How much water a wall holds as the run begins. */
public interface StartWater {
    /**
     * Returns the suction from which a material starts, Pa.
     *
     * @param retention retention of the material
     * @param celsius its temperature, C
     * @param constants density of water and gas constant of vapour
     */
    double startSuctionPa(VanGenuchten retention, double celsius, Constants constants);

    /**
     * Told by the air in its pores: by Kelvin's law {@code p = -rho_w R_v T ln(phi)}.
     *
     * @param relativeHumidity relative humidity in its pores, fraction; in (0, 1)
     */
    record Humidity(double relativeHumidity) implements StartWater {
        public Humidity {
            Check.inOpen(relativeHumidity, 0.0, 1.0, "relativeHumidity", "");
        }

        @Override
        public double startSuctionPa(VanGenuchten retention, double celsius, Constants constants) {
            double scalePa =
                    constants.waterDensityKgPerM3() * constants.gasConstantVapourJPerKgK() * Units.kelvin(celsius);
            return -scalePa * Math.log(relativeHumidity);
        }
    }

    /**
     * Told by its water: from the retention of each material.
     *
     * @param saturation water over free saturation, fraction; in (0, 1)
     */
    record Saturation(double saturation) implements StartWater {
        public Saturation {
            Check.inOpen(saturation, 0.0, 1.0, "saturation", "");
        }

        @Override
        public double startSuctionPa(VanGenuchten retention, double celsius, Constants constants) {
            return retention.suctionPa(saturation);
        }
    }
}
