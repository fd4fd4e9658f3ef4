package org.limedry.proof.tables;

import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.limedry.air.AdiabaticSaturation;
import org.limedry.air.MoistAir;
import org.limedry.air.Phase;
import org.limedry.air.Saturation;
import org.limedry.air.SaturationFormula;
import org.limedry.proof.figure.Label;
import org.limedry.proof.figure.Proof;
import org.limedry.reference.ReferenceTable;
import org.limedry.units.Units;

/** Computed grids of moist air: every column of every row. */
final class GridTables {
    private static final Saturation ASHRAE = Rows.overIce(SaturationFormula.HYLAND_WEXLER_1983);
    private static final Saturation MAGNUS = Rows.overIce(SaturationFormula.WMO8_MAGNUS);
    private static final String AS_STATED = ", stated with the table";

    private GridTables() {}

    static List<Proof> all() {
        return List.of(magnus(), library());
    }

    private static Proof magnus() {
        return new TableProof(
                "psychro/magnus_grid",
                List.of("t_C", "rh_over_water_pct", "p_kPa"),
                "The same formulas and constants, coded a second time.",
                List.of(
                        own("e_sat_water_Pa", "Pa", MoistAir::saturationPressurePa),
                        own("e_Pa", "Pa", MoistAir::vapourPressurePa),
                        own(
                                "dewpoint_water_C",
                                "C",
                                air -> air.dewPointCelsius().orElseThrow()),
                        own(
                                "frostpoint_ice_C",
                                "C",
                                air -> air.frostPointCelsius().orElseThrow()),
                        own("W_kg_per_kg", "kg/kg", MoistAir::humidityRatio),
                        own("abs_humidity_g_per_m3", "g/m3", air -> 1000.0 * air.absoluteHumidityKgPerM3()),
                        own("h_kJ_per_kg_dry", "kJ/kg", MoistAir::enthalpyKJPerKg),
                        own("v_m3_per_kg_dry", "m3/kg", MoistAir::specificVolumeM3PerKg),
                        own(
                                        "wetbulb_thermodynamic_C",
                                        "C",
                                        air -> AdiabaticSaturation.wetBulbCelsius(air, Phase.WATER)
                                                .orElseThrow())
                                .by("liquid branch"),
                        own(
                                        "wetbulb_thermodynamic_C",
                                        "C",
                                        air -> air.wetBulbCelsius().orElseThrow())
                                .by("whichever branch")));
    }

    private static Comparison own(String column, String unit, ToDoubleFunction<MoistAir> found) {
        return new Comparison(
                column,
                Label.COMPUTED,
                unit,
                row -> found.applyAsDouble(MoistAir.of(
                        Rows.celsius(row),
                        Units.fractionFromPercent(row.number("rh_over_water_pct")),
                        1000.0 * row.number("p_kPa"))),
                Tolerance.printed(column, 1.0e-6, "1e-6" + AS_STATED + ", and the rounding of the print"));
    }

    private static Proof library() {
        return new TableProof(
                "psychro/oracle_library_grid",
                List.of("t_C", "rh_fraction", "p_Pa"),
                "A general-purpose library (psychrolib 1.1.1): by the same equations, and by WMO Magnus. Where a wet and a frozen"
                        + " wick both satisfy the equations, the branch is the one that the library took.",
                Stream.of(sameEquations(), byMagnus()).flatMap(List::stream).toList());
    }

    private static List<Comparison> sameEquations() {
        return List.of(
                equations("p_sat_Pa", "Pa", row -> saturationPa(row)),
                equations("p_v_Pa", "Pa", row -> air(row).vapourPressurePa()),
                equations(
                        "dewpoint_refined_C",
                        "C",
                        row -> air(row).surfaceCelsiusAt(1.0).orElseThrow()),
                equations("W_kg_per_kg", "kg/kg", row -> air(row).humidityRatio()),
                equations("h_J_per_kg_dry", "J/kg", row -> 1000.0 * air(row).enthalpyKJPerKg()),
                equations("v_m3_per_kg_dry", "m3/kg", row -> air(row).specificVolumeM3PerKg()),
                equations("rho_kg_per_m3", "kg/m3", row -> air(row).densityKgPerM3()),
                bulb("wetbulb_refined_C", 0.001, "0.001 K" + AS_STATED),
                bulb("wetbulb_psychrolib_C", 0.0015, "the library stops at 0.001 K, and rounding"),
                new Comparison(
                        "dewpoint_psychrolib_C",
                        Label.COMPUTED,
                        "C",
                        row -> air(row).surfaceCelsiusAt(1.0).orElseThrow(),
                        Tolerance.of(0.001, "the library stops at 0.001 K")));
    }

    private static List<Comparison> byMagnus() {
        return List.of(
                magnus("p_sat_Pa", "Pa", share("p_sat_Pa", 0.0035), MoistAir::saturationPressurePa),
                magnus(
                        "dewpoint_refined_C",
                        "C",
                        kelvin(),
                        air -> air.surfaceCelsiusAt(1.0).orElseThrow()),
                magnus("W_kg_per_kg", "kg/kg", share("W_kg_per_kg", 0.0035), MoistAir::humidityRatio),
                magnus("h_J_per_kg_dry", "J/kg", enthalpy(), air -> 1000.0 * air.enthalpyKJPerKg()),
                magnus("v_m3_per_kg_dry", "m3/kg", share("v_m3_per_kg_dry", 3.0e-4), MoistAir::specificVolumeM3PerKg),
                magnus(
                                "wetbulb_refined_C",
                                "C",
                                kelvin(),
                                air -> air.wetBulbCelsius().orElseThrow())
                        .where(row -> Math.abs(row.number("wetbulb_refined_C")) > 0.1
                                && row.number("wetbulb_ambiguous") == 0.0));
    }

    private static Comparison equations(String column, String unit, ToDoubleFunction<ReferenceTable.Row> found) {
        return new Comparison(
                        column,
                        Label.COMPUTED,
                        unit,
                        found,
                        Tolerance.printed(column, 1.0e-6, "1e-6" + AS_STATED + ", and the rounding of the print"))
                .by("the same equations");
    }

    private static Comparison bulb(String column, double tolerance, String reason) {
        return new Comparison(column, Label.COMPUTED, "C", GridTables::wetBulb, Tolerance.of(tolerance, reason))
                .by("the same equations");
    }

    private static Comparison magnus(
            String column, String unit, Tolerance tolerance, ToDoubleFunction<MoistAir> found) {
        Function<ReferenceTable.Row, MoistAir> air =
                row -> new MoistAir(Rows.celsius(row), row.number("rh_fraction"), row.number("p_Pa"), MAGNUS);
        return new Comparison(column, Label.COMPUTED, unit, row -> found.applyAsDouble(air.apply(row)), tolerance)
                .by("WMO8_MAGNUS");
    }

    private static Tolerance share(String column, double share) {
        return Tolerance.of(row -> share * row.number(column), 100.0 * share + " %" + AS_STATED);
    }

    private static Tolerance kelvin() {
        return Tolerance.of(0.06, "0.06 K" + AS_STATED);
    }

    private static Tolerance enthalpy() {
        return Tolerance.of(
                row -> Rows.celsius(row) <= 30.0 ? 400.0 : 600.0, "0.4 kJ/kg to 30 C, 0.6 kJ/kg above" + AS_STATED);
    }

    private static Phase phase(String word) {
        return word.equals("ice") ? Phase.ICE : Phase.WATER;
    }

    private static double saturationPa(ReferenceTable.Row row) {
        return ASHRAE.formula().pressurePa(phase(row.text("sat_over")), Rows.celsius(row));
    }

    private static MoistAir air(ReferenceTable.Row row) {
        return MoistAir.ofVapourPressure(
                Rows.celsius(row), row.number("rh_fraction") * saturationPa(row), row.number("p_Pa"), ASHRAE);
    }

    private static double wetBulb(ReferenceTable.Row row) {
        MoistAir air = air(row);
        return row.number("wetbulb_ambiguous") == 0.0
                ? air.wetBulbCelsius().orElseThrow()
                : AdiabaticSaturation.wetBulbCelsius(air, phase(row.text("wetbulb_branch")))
                        .orElseThrow();
    }
}
