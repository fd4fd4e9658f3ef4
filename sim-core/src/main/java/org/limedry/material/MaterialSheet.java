package org.limedry.material;

import org.limedry.units.Check;

/**
 * The few figures from which a material's functions are closed; see {@link #material}.
 *
 * @param name what a report calls it; not blank
 * @param storage water held
 * @param transport water moved
 * @param thermal heat held and moved
 */
public record MaterialSheet(String name, Storage storage, Transport transport, Thermal thermal) {
    /**
     * Suction that belongs to 80 % relative humidity at 10 C, Pa: {@code -ln(0.8) rho_w R_v T} with 1000 kg/m3 and 461.5
     * J/(kg K). The entry suctions of the material table were set at 10 C.
     */
    public static final double SUCTION_AT_80_PERCENT_PA = -Math.log(0.8) * 1000.0 * 461.5 * 283.15;

    /**
     * Factor on the saturated diffusivity with which an uptake from dry still returns the absorption coefficient although
     * the liquid path ends at the dry end: one number for all materials, since the diffusivity over its saturated value is
     * one function of saturation. COMPUTED from the self-similar solution of nonlinear diffusion.
     */
    public static final double DRY_END_RESCALE = 1.0515;

    /**
     * Water held.
     *
     * @param freeSaturationKgPerM3 water at zero suction w_f, kg/m3; above {@code waterAt80KgPerM3}
     * @param waterAt80KgPerM3 water at 80 % relative humidity w_80, kg/m3; above 0
     * @param entrySuctionPa inverse of van Genuchten's scale, Pa; above 0, below the suction at 80 %
     */
    public record Storage(double freeSaturationKgPerM3, double waterAt80KgPerM3, double entrySuctionPa) {
        public Storage {
            Check.positive(freeSaturationKgPerM3, "freeSaturationKgPerM3", "kg/m3");
            Check.inOpen(waterAt80KgPerM3, 0.0, freeSaturationKgPerM3, "waterAt80KgPerM3", "kg/m3");
            Check.inOpen(entrySuctionPa, 0.0, SUCTION_AT_80_PERCENT_PA, "entrySuctionPa", "Pa");
        }

        /** Returns the retention through these three numbers. */
        public VanGenuchten retention() {
            return VanGenuchten.through(
                    freeSaturationKgPerM3, waterAt80KgPerM3, SUCTION_AT_80_PERCENT_PA, entrySuctionPa);
        }
    }

    /**
     * Water moved.
     *
     * @param absorptionKgPerM2SqrtS water absorption coefficient A, kg/(m2 s^0.5); at least 0
     * @param vapourResistance vapour resistance factor mu when dry; at least 1
     */
    public record Transport(double absorptionKgPerM2SqrtS, double vapourResistance) {
        public Transport {
            Check.nonNegative(absorptionKgPerM2SqrtS, "absorptionKgPerM2SqrtS", "kg/(m2 s^0.5)");
            Check.atLeast(vapourResistance, 1.0, "vapourResistance", "");
        }
    }

    /**
     * Heat held and moved.
     *
     * @param densityKgPerM3 dry density, kg/m3; above 0
     * @param heatCapacityJPerKgK specific heat when dry, J/(kg K); above 0
     * @param dryConductivityWPerMK thermal conductivity when dry, W/(m K); above 0
     * @param conductivityGrowthM3PerKg share by which it grows for each kg of water in a m3, m3/kg; at least 0
     */
    public record Thermal(
            double densityKgPerM3,
            double heatCapacityJPerKgK,
            double dryConductivityWPerMK,
            double conductivityGrowthM3PerKg) {
        public Thermal {
            Check.positive(densityKgPerM3, "densityKgPerM3", "kg/m3");
            Check.positive(heatCapacityJPerKgK, "heatCapacityJPerKgK", "J/(kg K)");
            Check.positive(dryConductivityWPerMK, "dryConductivityWPerMK", "W/(m K)");
            Check.nonNegative(conductivityGrowthM3PerKg, "conductivityGrowthM3PerKg", "m3/kg");
        }
    }

    public MaterialSheet {
        Check.notBlank(name, "name");
    }

    /** Returns the same material under another name. */
    public MaterialSheet named(String other) {
        return new MaterialSheet(other, storage, transport, thermal);
    }

    /** Returns the same material with another free saturation, kg/m3; the water at 80 % stays, the exponent follows. */
    public MaterialSheet withFreeSaturation(double kgPerM3) {
        Storage changed = new Storage(kgPerM3, storage.waterAt80KgPerM3(), storage.entrySuctionPa());
        return new MaterialSheet(name, changed, transport, thermal);
    }

    /** Returns the same material with another entry suction, Pa; the water at 80 % stays, the exponent follows. */
    public MaterialSheet withEntrySuction(double pa) {
        Storage changed = new Storage(storage.freeSaturationKgPerM3(), storage.waterAt80KgPerM3(), pa);
        return new MaterialSheet(name, changed, transport, thermal);
    }

    /** Returns the same material with another water absorption coefficient, kg/(m2 s^0.5). */
    public MaterialSheet withAbsorption(double kgPerM2SqrtS) {
        return new MaterialSheet(name, storage, new Transport(kgPerM2SqrtS, transport.vapourResistance()), thermal);
    }

    /** Returns the same material with another vapour resistance factor. */
    public MaterialSheet withVapourResistance(double mu) {
        return new MaterialSheet(name, storage, new Transport(transport.absorptionKgPerM2SqrtS(), mu), thermal);
    }

    /**
     * Returns the material's functions: van Genuchten retention through w_f, w_80 and the entry suction; {@link
     * CapillaryLaw} with the dry-end factor, rescaled to return A; {@link VapourResistance} of still air over mu times (1 -
     * S); conductivity {@code lambda_dry (1 + b w)}.
     */
    public Material material() {
        VanGenuchten retention = storage.retention();
        double growth = thermal.conductivityGrowthM3PerKg();
        double dry = thermal.dryConductivityWPerMK();
        return new Material(
                name,
                retention,
                new CapillaryLaw(retention, transport.absorptionKgPerM2SqrtS(), true, DRY_END_RESCALE),
                new VapourResistance(
                        VapourResistance.STILL_AIR_KG_PER_M_S_PA,
                        transport.vapourResistance(),
                        storage.freeSaturationKgPerM3()),
                water -> dry * (1.0 + growth * water),
                thermal.densityKgPerM3() * thermal.heatCapacityJPerKgK());
    }
}
