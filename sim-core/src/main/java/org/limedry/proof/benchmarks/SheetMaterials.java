package org.limedry.proof.benchmarks;

import org.limedry.lime.CoatMortar;
import org.limedry.material.CapillaryLaw;
import org.limedry.material.LiquidTransport;
import org.limedry.material.Material;
import org.limedry.material.MualemLaw;
import org.limedry.material.VanGenuchten;
import org.limedry.material.VapourResistance;

/** Made-up materials of the FRESH_COAT, WALL_YEAR and ROOM_COATS sheets. */
public final class SheetMaterials {
    private static final double AIR = VapourResistance.STILL_AIR_KG_PER_M_S_PA;

    private SheetMaterials() {}

    public static Material freshBrick() {
        VanGenuchten retention = new VanGenuchten(280.0, 1.0 / 3.0e-5, 1.8);
        return mualem("brick", retention, 2.0e-9, 12.0, 1600.0 * 850.0).with(0.6, 1.5e-3);
    }

    public static Material freshCoat() {
        VanGenuchten retention = new VanGenuchten(380.0, 1.0 / 8.0e-6, 1.5);
        return mualem("coat", retention, 1.0e-10, 10.0, 1500.0 * 850.0).with(0.6, 1.2e-3);
    }

    public static Material freshRender() {
        VanGenuchten retention = new VanGenuchten(360.0, 1.0 / 1.0e-5, 1.5);
        return mualem("render", retention, 2.0e-10, 9.0, 1650.0 * 850.0).with(0.7, 1.2e-3);
    }

    public static Material roomBrick() {
        VanGenuchten retention = new VanGenuchten(280.0, 1.0 / 1.6e-5, 1.62);
        return capillary("brick", retention, 0.25, 16.0, 1650.0 * 850.0).with(0.6, 6.0e-3);
    }

    public static Material roomCoat() {
        VanGenuchten retention = new VanGenuchten(310.0, 1.0 / 3.1e-5, 1.40);
        return capillary("coat", retention, 0.15, 9.0, 1750.0 * 850.0).with(0.7, 4.0e-3);
    }

    public static Material roomStone() {
        VanGenuchten retention = new VanGenuchten(150.0, 1.0 / 1.8e-5, 1.40);
        return capillary("stone", retention, 0.06, 30.0, 2000.0 * 900.0).with(1.5, 12.0e-3);
    }

    /** Returns a mortar that neither sets nor carbonates, laid at a saturation. */
    public static CoatMortar inertMortar(Material material, double saturation) {
        double water = saturation * material.retention().freeSaturationKgPerM3();
        return new CoatMortar("inert", material, water, 0.0, 0.0, 30_000.0, false, 0.0);
    }

    /** Returns the material with another liquid transport. */
    public static Material withLiquid(Material material, LiquidTransport liquid) {
        return new Material(
                material.name(),
                material.retention(),
                liquid,
                material.vapourPermeabilityKgPerMSPa(),
                material.conductivityWPerMK(),
                material.dryHeatCapacityJPerM3K());
    }

    private record Half(
            String name, VanGenuchten retention, LiquidTransport liquid, double resistance, double heatCapacity) {
        Material with(double dryConductivity, double byWater) {
            return new Material(
                    name,
                    retention,
                    liquid,
                    new VapourResistance(AIR, resistance, retention.freeSaturationKgPerM3()),
                    water -> dryConductivity + byWater * water,
                    heatCapacity);
        }
    }

    private static Half mualem(String name, VanGenuchten retention, double saturatedS, double mu, double heatCapacity) {
        return new Half(name, retention, new MualemLaw(retention, saturatedS), mu, heatCapacity);
    }

    private static Half capillary(String name, VanGenuchten retention, double a, double mu, double heatCapacity) {
        return new Half(name, retention, new CapillaryLaw(retention, a, false, 1.0), mu, heatCapacity);
    }
}
