package org.limedry.proof.tables;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.limedry.air.AirConstants;
import org.limedry.air.HumidityRatio;
import org.limedry.air.MagnusForm;
import org.limedry.air.MoistAir;
import org.limedry.air.Phase;
import org.limedry.air.Saturation;
import org.limedry.air.SaturationFormula;
import org.limedry.air.StandardAtmosphere;
import org.limedry.air.TemperatureFactor;
import org.limedry.proof.figure.Label;
import org.limedry.proof.figure.Proof;
import org.limedry.reference.ReferenceTable;
import org.limedry.units.Units;

/** Air pressure by height, cold surfaces, and the steady vapour balance of a room. */
final class SurroundingsTables {
    private static final String PRINT = "the same formula: rounding of the table";

    private SurroundingsTables() {}

    static List<Proof> all() {
        return List.of(barometric(), surfaces(), balance());
    }

    private static Proof barometric() {
        return new TableProof(
                "psychro/barometric_published",
                List.of("source_id", "quantity", "altitude_m"),
                "Published heights, and a computed set of them.",
                List.of(
                        new Comparison(
                                "published_value",
                                Label.PUBLISHED,
                                "",
                                row -> row.text("quantity").equals("p_station_FAO_eq7")
                                        ? StandardAtmosphere.fao56PressurePa(row.number("altitude_m"))
                                        : standard(row),
                                Tolerance.of(
                                        row -> row.number("tolerance"),
                                        "that of the row: rounding of the print, three figures for FAO-56")),
                        height("isa_ussa1976", SurroundingsTables::standard),
                        height(
                                "ashrae_eq3_or_eq4",
                                row -> isTemperature(row)
                                        ? standard(row)
                                        : StandardAtmosphere.ashraePressurePa(row.number("altitude_m"))),
                        height("fao56_eq7", row -> StandardAtmosphere.fao56PressurePa(row.number("altitude_m")))));
    }

    private static Comparison height(String column, ToDoubleFunction<ReferenceTable.Row> found) {
        return new Comparison(column, Label.COMPUTED, "", found, Tolerance.printed(column, 0.0, PRINT));
    }

    private static boolean isTemperature(ReferenceTable.Row row) {
        return row.text("quantity").startsWith("t_");
    }

    private static double standard(ReferenceTable.Row row) {
        double altitudeM = row.number("altitude_m");
        return isTemperature(row) ? StandardAtmosphere.celsius(altitudeM) : StandardAtmosphere.pressurePa(altitudeM);
    }

    private static Proof surfaces() {
        Tolerance kelvin = Tolerance.of(0.001, "0.001 K for the same formulas, stated with the table");
        Tolerance factor = Tolerance.of(1.0e-5, "1e-5 for the same formulas, stated with the table");
        Tolerance other = Tolerance.of(0.06, "0.06 K for another Magnus formula, stated with the table");
        Saturation iso = Rows.overIce(SaturationFormula.ISO13788);
        Saturation wmo = Rows.overIce(SaturationFormula.WMO8_MAGNUS);
        return new TableProof(
                "psychro/surface_condensation_grid",
                List.of("t_i_C", "rh_i_pct", "t_e_C"),
                "Surface temperatures at 100 % and at 80 % humidity and their factors, by ISO 13788 and by WMO Magnus.",
                List.of(
                        new Comparison(
                                "p_i_Pa",
                                Label.COMPUTED,
                                "Pa",
                                row -> inside(row, iso).vapourPressurePa(),
                                Tolerance.printed("p_i_Pa", 1.0e-6, PRINT)),
                        surface("t_si_at_100pct_C", "C", row -> surfaceCelsius(row, iso, 1.0), kelvin),
                        surface("t_si_at_80pct_C", "C", row -> surfaceCelsius(row, iso, 0.8), kelvin),
                        surface("fRsi_for_100pct", "-", row -> factor(row, surfaceCelsius(row, iso, 1.0)), factor),
                        surface("fRsi_for_80pct", "-", row -> factor(row, surfaceCelsius(row, iso, 0.8)), factor),
                        surface("t_si_at_100pct_C", "C", row -> surfaceCelsius(row, wmo, 1.0), other)
                                .by("WMO8_MAGNUS"),
                        surface("t_si_at_80pct_C", "C", row -> surfaceCelsius(row, wmo, 0.8), other)
                                .by("WMO8_MAGNUS")));
    }

    private static Comparison surface(
            String column, String unit, ToDoubleFunction<ReferenceTable.Row> found, Tolerance tolerance) {
        return new Comparison(column, Label.COMPUTED, unit, found, tolerance).by("ISO13788");
    }

    private static MoistAir inside(ReferenceTable.Row row, Saturation saturation) {
        double humidity = Units.fractionFromPercent(row.number("rh_i_pct"));
        return new MoistAir(row.number("t_i_C"), humidity, Rows.ONE_ATMOSPHERE_PA, saturation);
    }

    private static double surfaceCelsius(ReferenceTable.Row row, Saturation saturation, double limit) {
        return inside(row, saturation).surfaceCelsiusAt(limit).orElseThrow();
    }

    private static double factor(ReferenceTable.Row row, double surfaceCelsius) {
        return TemperatureFactor.ofSurface(surfaceCelsius, row.number("t_i_C"), row.number("t_e_C"));
    }

    private static Proof balance() {
        return new TableProof(
                "psychro/vapour_balance_grid",
                List.of("t_i_C", "t_e_C", "V_m3", "G_kg_per_h", "n_per_h"),
                "The steady balance in three variants: A partial pressure at room temperature, B equal volumes, C mass of dry air.",
                List.of(
                        room("p_e_Pa", "Pa", row -> outdoors(row).vapourPressurePa()),
                        room("p_sat_t_i_Pa", "Pa", row -> saturationPa(row.number("t_i_C"))),
                        room("p_i_A_Pa", "Pa", SurroundingsTables::partialPressurePa),
                        room(
                                "p_i_B_Pa",
                                "Pa",
                                row -> (outdoors(row).absoluteHumidityKgPerM3() + sourceKgPerM3(row))
                                        * vapourConstantTimesKelvin(row)),
                        room("p_i_C_Pa", "Pa", SurroundingsTables::dryAirMassPa),
                        room("dewpoint_A_C", "C", row -> MagnusForm.WMO_WATER.celsius(partialPressurePa(row))),
                        room(
                                "n_needed_A_per_h",
                                "1/h",
                                row -> sourceKgPerM3H(row)
                                        * vapourConstantTimesKelvin(row)
                                        / (wallPa(row) - outdoors(row).vapourPressurePa())),
                        room(
                                "n_needed_B_per_h",
                                "1/h",
                                row -> sourceKgPerM3H(row)
                                        / (wallPa(row) / vapourConstantTimesKelvin(row)
                                                - outdoors(row).absoluteHumidityKgPerM3())),
                        room(
                                "n_needed_C_per_h",
                                "1/h",
                                row -> sourceKgPerM3H(row)
                                        * outdoors(row).specificVolumeM3PerKg()
                                        / (HumidityRatio.ofVapourPressure(wallPa(row), Rows.ONE_ATMOSPHERE_PA)
                                                - outdoors(row).humidityRatio()))));
    }

    private static Comparison room(String column, String unit, ToDoubleFunction<ReferenceTable.Row> found) {
        return new Comparison(
                column,
                Label.COMPUTED,
                unit,
                found,
                Tolerance.printed(column, 1.0e-6, "1e-6 for the same variant, stated with the table, and the print"));
    }

    private static MoistAir outdoors(ReferenceTable.Row row) {
        double humidity = Units.fractionFromPercent(row.number("rh_e_pct"));
        return MoistAir.of(row.number("t_e_C"), humidity, Rows.ONE_ATMOSPHERE_PA);
    }

    private static double saturationPa(double celsius) {
        return SaturationFormula.WMO8_MAGNUS.pressurePa(Phase.WATER, celsius);
    }

    private static double wallPa(ReferenceTable.Row row) {
        return saturationPa(row.number("wall_C"));
    }

    private static double sourceKgPerM3H(ReferenceTable.Row row) {
        return row.number("G_kg_per_h") / row.number("V_m3");
    }

    private static double sourceKgPerM3(ReferenceTable.Row row) {
        return sourceKgPerM3H(row) / row.number("n_per_h");
    }

    private static double vapourConstantTimesKelvin(ReferenceTable.Row row) {
        return AirConstants.VAPOUR_GAS_CONSTANT_J_PER_KG_K * Units.kelvin(row.number("t_i_C"));
    }

    private static double partialPressurePa(ReferenceTable.Row row) {
        return outdoors(row).vapourPressurePa() + sourceKgPerM3(row) * vapourConstantTimesKelvin(row);
    }

    private static double dryAirMassPa(ReferenceTable.Row row) {
        double ratio = outdoors(row).humidityRatio()
                + sourceKgPerM3(row) * outdoors(row).specificVolumeM3PerKg();
        return HumidityRatio.vapourPressurePa(ratio, Rows.ONE_ATMOSPHERE_PA);
    }
}
