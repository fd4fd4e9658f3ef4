package org.limedry.reference;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A material as the table {@code materials/materials_properties} gives it. What the table leaves open is empty here.
 *
 * <p>Most figures are FROM MEMORY with a wide range: run the low and the high end too, and print {@link #status()}.
 *
 * @param row the row of the table
 */
public record MaterialRow(ReferenceTable.Row row) {
    /** Name of the material, which is also its key. */
    public String name() {
        return row.text("material");
    }

    /** Dry density, kg/m³. */
    public double densityKgPerM3() {
        return row.number("density_kg_m3");
    }

    /** Open porosity, m³/m³. */
    public OptionalDouble openPorosity() {
        return row.optionalNumber("open_porosity_m3_m3");
    }

    /** Water held at 80 % relative humidity, kg/m³. */
    public OptionalDouble waterAt80PercentKgPerM3() {
        return row.optionalNumber("w80_kg_m3");
    }

    /** Water held at free saturation, kg/m³. */
    public OptionalDouble freeSaturationKgPerM3() {
        return row.optionalNumber("wf_kg_m3");
    }

    /** Water absorption coefficient A, kg/(m² s^0.5). */
    public Optional<Estimate> absorptionKgPerM2RootS() {
        return estimate("A_kg_m2_s05", "A_low", "A_high");
    }

    /** Vapour resistance factor µ when dry. */
    public Estimate vapourResistanceDry() {
        return row.estimate("mu_dry", "mu_low", "mu_high");
    }

    /** Vapour resistance factor µ when wet. */
    public double vapourResistanceWet() {
        return row.number("mu_wet");
    }

    /** Thermal conductivity when dry, W/(m K); a tabulated design value where the status says that it was read. */
    public double dryConductivityWPerMK() {
        return row.number("lambda_dry_W_mK");
    }

    /** Share by which conductivity grows per percent of water by volume; for softwood per percent by mass. */
    public OptionalDouble conductivityGrowthPerPercentWater() {
        return row.optionalNumber("lambda_supplement_per_vol_pct");
    }

    /** Specific heat when dry, J/(kg K). */
    public double heatCapacityJPerKgK() {
        return row.number("c_J_kgK");
    }

    /** Entry suction, the inverse of the scale of van Genuchten's retention curve, kPa. */
    public Optional<Estimate> entrySuctionKPa() {
        return estimate("entry_suction_kPa", "entry_suction_low_kPa", "entry_suction_high_kPa");
    }

    /** How the figures were obtained. */
    public String status() {
        return row.text("status");
    }

    /** Source number, to be looked up in {@code materials/sources}; empty when there is none. */
    public String source() {
        return row.text("source");
    }

    /** How the entry suction was obtained; empty when there is none. */
    public String entryStatus() {
        return row.text("entry_status");
    }

    private Optional<Estimate> estimate(String likely, String low, String high) {
        return row.text(likely).isEmpty() ? Optional.empty() : Optional.of(row.estimate(likely, low, high));
    }
}
