package org.limedry.proof.tables;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.limedry.air.AirConstants;
import org.limedry.air.Enhancement;
import org.limedry.air.HumidityRatio;
import org.limedry.air.MoistAir;
import org.limedry.air.Phase;
import org.limedry.air.Saturation;
import org.limedry.air.SaturationFormula;
import org.limedry.proof.figure.Label;
import org.limedry.proof.figure.Proof;
import org.limedry.reference.ReferenceTable;
import org.limedry.units.Units;

/** Humidity ratio, enthalpy, volume and density of vapour, published and of the real gas. */
final class MoistAirTables {
    private static final double GRAMS = 1000.0;
    private static final String PUBLISHED = "published_value";

    private MoistAirTables() {}

    static List<Proof> all() {
        return List.of(published(), realGas(), absoluteHumidity());
    }

    private static Proof published() {
        return new TableProof(
                "psychro/moist_air_published",
                List.of("source_id", "quantity", "t_C"),
                "Saturated air at one atmosphere: ideal air by WMO Magnus against print, the same equations against the column"
                        + " that was computed with them. Rows flagged FAILS are unreliable, left in.",
                List.of(printed(), unreliable(), sameEquations()));
    }

    private static Comparison printed() {
        return new Comparison(
                        PUBLISHED,
                        Label.PUBLISHED,
                        "",
                        row -> property(row, Rows.overIce(SaturationFormula.WMO8_MAGNUS)),
                        Tolerance.of(
                                row -> idealTolerance(row) + Tolerance.halfUnit(row, PUBLISHED),
                                "W 1.0 %, h 0.3 kJ/kg or 1.0 %, v 0.2 %, stated with the table for ideal air without"
                                        + " enhancement factor; rounding of the print"))
                .by("WMO8_MAGNUS")
                .flagged("");
    }

    private static Comparison unreliable() {
        Saturation enhanced = new Saturation(SaturationFormula.HYLAND_WEXLER_1983, Phase.ICE, Enhancement.WMO8);
        return new Comparison(
                        PUBLISHED,
                        Label.PUBLISHED,
                        "",
                        row -> property(row, enhanced),
                        Tolerance.of(row -> row.number("tolerance_used"), "that of the rows that are sound"))
                .by("HYLAND_WEXLER_1983 with enhancement factor, rows flagged FAILS")
                .flagged("FAILS")
                .inError(row -> "engineering table of mixed origin: the real gas is nearer to us than to it");
    }

    private static Comparison sameEquations() {
        String ideal = "ideal_gas_ASHRAE_eqs_COMPUTED";
        return new Comparison(
                        ideal,
                        Label.COMPUTED,
                        "",
                        row -> property(row, Rows.overIce(SaturationFormula.HYLAND_WEXLER_1983)),
                        new Tolerance(
                                (row, found) -> Tolerance.halfUnit(row, ideal)
                                        + (Rows.celsius(row) == 0.0 ? 1.2e-4 : 1.0e-6) * Math.abs(found),
                                "1e-6, the same equations; at 0 C 1.2e-4: over water here, over ice there"))
                .by("HYLAND_WEXLER_1983");
    }

    private static double property(ReferenceTable.Row row, Saturation saturation) {
        String quantity = row.text("quantity");
        double humidity = quantity.endsWith("_dry") ? 0.0 : 1.0;
        MoistAir air = new MoistAir(Rows.celsius(row), humidity, Rows.ONE_ATMOSPHERE_PA, saturation);
        return switch (quantity.charAt(0)) {
            case 'W' -> air.humidityRatio();
            case 'h' -> air.enthalpyKJPerKg();
            default -> air.specificVolumeM3PerKg();
        };
    }

    private static double idealTolerance(ReferenceTable.Row row) {
        double published = Math.abs(row.number(PUBLISHED));
        return switch (row.text("quantity").charAt(0)) {
            case 'W' -> 0.010 * published;
            case 'h' -> Math.max(0.3, 0.010 * published);
            default -> 0.002 * published;
        };
    }

    private static Proof realGas() {
        return new TableProof(
                "psychro/moist_air_realgas",
                List.of("t_C", "p_kPa"),
                "Saturated real air: with the enhancement factor it is met, without it missed by as much as is stated.",
                List.of(
                        enhanced(SaturationFormula.HYLAND_WEXLER_1983, 0.0005),
                        enhanced(SaturationFormula.WMO8_MAGNUS, 0.0035),
                        factor(
                                "enhancement_factor_WMO8",
                                Tolerance.printed("enhancement_factor_WMO8", 0.0, "rounding of the table")),
                        factor(
                                "enhancement_factor_realgas",
                                Tolerance.of(0.0007, "largest difference of the two factors, stated with the table")),
                        new Comparison(
                                "ideal_W_error_pct",
                                Label.COMPUTED,
                                "%",
                                MoistAirTables::idealErrorPercent,
                                Tolerance.of(0.00055, "half of the last digit, and rounding of W")),
                        ideal("v_sat_m3_per_kg_dry", "m3/kg", MoistAir::specificVolumeM3PerKg, 0.002, 0.0),
                        ideal("h_sat_kJ_per_kg_dry", "kJ/kg", MoistAir::enthalpyKJPerKg, 0.007, 0.3)));
    }

    private static Comparison factor(String column, Tolerance tolerance) {
        return new Comparison(column, Label.COMPUTED, "-", row -> Enhancement.WMO8.factor(pressurePa(row)), tolerance);
    }

    /** Ideal air without enhancement: a share of the figure, and not less than an amount. */
    private static Comparison ideal(
            String column, String unit, ToDoubleFunction<MoistAir> found, double share, double least) {
        return new Comparison(
                column,
                Label.COMPUTED,
                unit,
                row -> found.applyAsDouble(saturated(row, Enhancement.NONE, SaturationFormula.HYLAND_WEXLER_1983)),
                Tolerance.of(
                        row -> Math.max(least, share * row.number(column)),
                        "v 0.2 %, h 0.3 kJ/kg or 0.7 % for ideal air, stated with the table"));
    }

    private static Comparison enhanced(SaturationFormula formula, double formulaError) {
        return new Comparison(
                        "W_sat_kg_per_kg",
                        Label.COMPUTED,
                        "kg/kg",
                        row -> saturated(row, Enhancement.WMO8, formula).humidityRatio(),
                        // Saturation pressure enters W by 1/(1 - e/p), which is 1.2 at 50 C and 70 kPa.
                        Tolerance.of(
                                row -> (0.001 + 1.22 * formulaError) * row.number("W_sat_kg_per_kg"),
                                "0.1 % and the largest error of the formula, " + 100.0 * formulaError + " %"))
                .by(formula.name() + " with enhancement factor");
    }

    private static double pressurePa(ReferenceTable.Row row) {
        return 1000.0 * row.number("p_kPa");
    }

    private static MoistAir saturated(ReferenceTable.Row row, Enhancement enhancement, SaturationFormula formula) {
        return new MoistAir(Rows.celsius(row), 1.0, pressurePa(row), new Saturation(formula, Phase.ICE, enhancement));
    }

    /** The column was formed with the IAPWS references, over ice at 0 C. */
    private static double idealErrorPercent(ReferenceTable.Row row) {
        Phase phase = Rows.celsius(row) > 0.0 ? Phase.WATER : Phase.ICE;
        double saturationPa = Rows.iapws(phase).pressurePa(phase, Rows.celsius(row));
        double ideal = HumidityRatio.ofVapourPressure(saturationPa, pressurePa(row));
        return 100.0 * (ideal / row.number("W_sat_kg_per_kg") - 1.0);
    }

    private static Proof absoluteHumidity() {
        String column = "published_g_per_m3";
        Tolerance sound = new Tolerance(
                (row, found) -> (Rows.celsius(row) < 40.0 ? 0.006 : 0.009) * found + Tolerance.halfUnit(row, column),
                "half print unit and 0.6 %, stated with the table; 0.9 % at 40 C, where real vapour is 0.3 % denser");
        Tolerance same =
                Tolerance.printed("wmo8_magnus_water_g_per_m3", 5.1e-5, "the same formula, Rv 461.523 for 461.5");
        return new TableProof(
                "psychro/absolute_humidity_published",
                List.of("source_id", "phase", "t_C", "rh_pct"),
                "Vapour per volume by WMO Magnus; rough rows by the IAPWS references. One row is published over the wrong phase,"
                        + " left in.",
                List.of(
                        new Comparison(column, Label.PUBLISHED, "g/m3", MoistAirTables::vapour, sound)
                                .by("WMO8_MAGNUS")
                                .flagged(""),
                        new Comparison(column, Label.PUBLISHED, "g/m3", MoistAirTables::vapour, sound)
                                .by("WMO8_MAGNUS over ice, row flagged FAILS")
                                .flagged("FAILS")
                                .inError(row -> "right for supercooled water, printed as over ice"),
                        new Comparison(column, Label.PUBLISHED, "g/m3", MoistAirTables::vapourOverWater, sound)
                                .by("WMO8_MAGNUS over water, row flagged FAILS")
                                .flagged("FAILS"),
                        new Comparison(
                                        column,
                                        Label.PUBLISHED,
                                        "g/m3",
                                        MoistAirTables::vapourByReference,
                                        new Tolerance(
                                                (row, found) -> 0.0115 * found,
                                                "rough rows: up to 1.1 % off, as stated"))
                                .by("IAPWS, rough rows")
                                .flagged("LOOSE"),
                        new Comparison(
                                "wmo8_magnus_water_g_per_m3",
                                Label.COMPUTED,
                                "g/m3",
                                MoistAirTables::vapourOverWater,
                                same)));
    }

    private static double vapour(ReferenceTable.Row row) {
        Saturation saturation = new Saturation(SaturationFormula.WMO8_MAGNUS, Rows.phase(row), Enhancement.NONE);
        double humidity = Units.fractionFromPercent(row.number("rh_pct"));
        return GRAMS
                * new MoistAir(Rows.celsius(row), humidity, Rows.ONE_ATMOSPHERE_PA, saturation)
                        .absoluteHumidityKgPerM3();
    }

    private static double vapourOverWater(ReferenceTable.Row row) {
        return GRAMS * Rows.air(row).absoluteHumidityKgPerM3();
    }

    private static double vapourByReference(ReferenceTable.Row row) {
        Phase phase = Rows.phase(row);
        return GRAMS
                * Rows.iapws(phase).pressurePa(phase, Rows.celsius(row))
                / (AirConstants.VAPOUR_GAS_CONSTANT_J_PER_KG_K * Units.kelvin(Rows.celsius(row)));
    }
}
