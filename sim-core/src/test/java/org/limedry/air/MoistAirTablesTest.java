package org.limedry.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.limedry.reference.ReferenceTable;

/** Computed grids of moist air: every column of every row. */
class MoistAirTablesTest {
    private static final Saturation MAGNUS_BOTH =
            new Saturation(SaturationFormula.WMO8_MAGNUS, Phase.ICE, Enhancement.NONE);
    private static final Saturation ASHRAE =
            new Saturation(SaturationFormula.HYLAND_WEXLER_1983, Phase.ICE, Enhancement.NONE);

    private static final List<ReferenceTable.Row> LIBRARY =
            ReferenceTable.load("psychro/oracle_library_grid").rows();

    // COMPUTED: psychro/magnus_grid, same formulas and constants; 1e-6 relative as stated, and the rounding of the
    // print.
    @Test
    void magnusGrid_isMet() {
        int rows = 0;
        int frostPoints = 0;
        int wetBulbs = 0;
        for (ReferenceTable.Row row : ReferenceTable.load("psychro/magnus_grid").rows()) {
            MoistAir air = MoistAir.of(
                    row.number("t_C"), row.number("rh_over_water_pct") / 100.0, row.number("p_kPa") * 1000.0);

            Printed.assertSame(row, "e_sat_water_Pa", air.saturationPressurePa(), 1e-6);
            Printed.assertSame(row, "e_Pa", air.vapourPressurePa(), 1e-6);
            Printed.assertSame(row, "dewpoint_water_C", air.dewPointCelsius().orElseThrow(), 1e-6);
            Printed.assertSame(row, "W_kg_per_kg", air.humidityRatio(), 1e-6);
            Printed.assertSame(row, "abs_humidity_g_per_m3", 1000.0 * air.absoluteHumidityKgPerM3(), 1e-6);
            Printed.assertSame(row, "h_kJ_per_kg_dry", air.enthalpyKJPerKg(), 1e-6);
            Printed.assertSame(row, "v_m3_per_kg_dry", air.specificVolumeM3PerKg(), 1e-6);
            frostPoints += frostPoint(row, air);
            wetBulbs += wetBulb(row, air);
            rows++;
        }

        assertEquals(390, rows);
        assertEquals(184, frostPoints);
        assertEquals(251, wetBulbs);
    }

    private static int frostPoint(ReferenceTable.Row row, MoistAir air) {
        if (row.text("frostpoint_ice_C").isEmpty()) {
            // EXACT: left blank in the table where the dew point is 0 °C or above.
            assertTrue(air.frostPointCelsius().orElse(0.0) >= 0.0, "line " + row.line());
            return 0;
        }
        Printed.assertSame(row, "frostpoint_ice_C", air.frostPointCelsius().orElseThrow(), 1e-6);
        return 1;
    }

    private static int wetBulb(ReferenceTable.Row row, MoistAir air) {
        double found = AdiabaticSaturation.wetBulbCelsius(air, Phase.WATER).orElseThrow();
        if (row.text("wetbulb_thermodynamic_C").isEmpty()) {
            // EXACT: left blank in the table where it is not above 0 °C; two rows are saturated at 0 °C.
            assertTrue(found < 1e-9, "line " + row.line()); // rounding
            return 0;
        }
        Printed.assertSame(row, "wetbulb_thermodynamic_C", found, 1e-6);
        Printed.assertSame(row, "wetbulb_thermodynamic_C", air.wetBulbCelsius().orElseThrow(), 1e-6);
        return 1;
    }

    // COMPUTED: psychro/oracle_library_grid, by the library psychrolib 1.1.1; same equations, so 1e-6 relative, and
    // 0.001 K for the wet bulb, both as stated with the table.
    @Test
    void libraryGrid_isMet_byTheSameEquations() {
        int rows = 0;
        for (ReferenceTable.Row row : LIBRARY) {
            double saturated = ASHRAE.formula().pressurePa(phase(row), row.number("t_C"));
            MoistAir air = MoistAir.ofVapourPressure(
                    row.number("t_C"), row.number("rh_fraction") * saturated, row.number("p_Pa"), ASHRAE);

            Printed.assertSame(row, "p_sat_Pa", saturated, 1e-6);
            Printed.assertSame(row, "p_v_Pa", air.vapourPressurePa(), 1e-6);
            Printed.assertSame(
                    row, "dewpoint_refined_C", air.surfaceCelsiusAt(1.0).orElseThrow(), 1e-6);
            Printed.assertSame(row, "W_kg_per_kg", air.humidityRatio(), 1e-6);
            Printed.assertSame(row, "h_J_per_kg_dry", 1000.0 * air.enthalpyKJPerKg(), 1e-6);
            Printed.assertSame(row, "v_m3_per_kg_dry", air.specificVolumeM3PerKg(), 1e-6);
            Printed.assertSame(row, "rho_kg_per_m3", air.densityKgPerM3(), 1e-6);
            Printed.assertNear(row, "wetbulb_refined_C", wetBulb(air, row), 0.001);
            // The library stops its iterations at 0.001 K.
            Printed.assertNear(
                    row, "dewpoint_psychrolib_C", air.surfaceCelsiusAt(1.0).orElseThrow(), 0.001);
            Printed.assertNear(row, "wetbulb_psychrolib_C", wetBulb(air, row), 0.0015);
            rows++;
        }

        assertEquals(630, rows);
    }

    private static Phase phase(ReferenceTable.Row row) {
        return row.text("sat_over").equals("ice") ? Phase.ICE : Phase.WATER;
    }

    /** Our wet bulb; by the branch that the library took where both satisfy the equations. */
    private static double wetBulb(MoistAir air, ReferenceTable.Row row) {
        if (row.number("wetbulb_ambiguous") == 0.0) {
            return air.wetBulbCelsius().orElseThrow();
        }
        Phase branch = row.text("wetbulb_branch").equals("ice") ? Phase.ICE : Phase.WATER;
        return AdiabaticSaturation.wetBulbCelsius(air, branch).orElseThrow();
    }

    // COMPUTED: the same grid by WMO Magnus; the tolerances stated with the table.
    @Test
    void libraryGrid_isMet_byMagnus() {
        int rows = 0;
        int wetBulbs = 0;
        for (ReferenceTable.Row row : LIBRARY) {
            double celsius = row.number("t_C");
            MoistAir air = new MoistAir(celsius, row.number("rh_fraction"), row.number("p_Pa"), MAGNUS_BOTH);

            Printed.assertNear(row, "p_sat_Pa", air.saturationPressurePa(), 0.0035 * row.number("p_sat_Pa"));
            Printed.assertNear(
                    row, "dewpoint_refined_C", air.surfaceCelsiusAt(1.0).orElseThrow(), 0.06);
            Printed.assertNear(row, "W_kg_per_kg", air.humidityRatio(), 0.0035 * row.number("W_kg_per_kg"));
            Printed.assertNear(row, "h_J_per_kg_dry", 1000.0 * air.enthalpyKJPerKg(), celsius <= 30.0 ? 400.0 : 600.0);
            Printed.assertNear(
                    row, "v_m3_per_kg_dry", air.specificVolumeM3PerKg(), 0.0003 * row.number("v_m3_per_kg_dry"));
            if (Math.abs(row.number("wetbulb_refined_C")) > 0.1 && row.number("wetbulb_ambiguous") == 0.0) {
                Printed.assertNear(
                        row, "wetbulb_refined_C", air.wetBulbCelsius().orElseThrow(), 0.06);
                wetBulbs++;
            }
            rows++;
        }

        assertEquals(630, rows);
        assertEquals(624, wetBulbs);
    }

    // COMPUTED: psychro/oracle_library_grid, rows flagged wetbulb_ambiguous: a wet and a frozen wick both satisfy them.
    @Test
    void ambiguousWetBulbs_haveBothRoots_andWaterIsTaken() {
        int rows = 0;
        for (ReferenceTable.Row row : LIBRARY) {
            if (row.number("wetbulb_ambiguous") == 1.0) {
                double saturated = ASHRAE.formula().pressurePa(phase(row), row.number("t_C"));
                MoistAir air = MoistAir.ofVapourPressure(
                        row.number("t_C"), row.number("rh_fraction") * saturated, row.number("p_Pa"), ASHRAE);
                double wet =
                        AdiabaticSaturation.wetBulbCelsius(air, Phase.WATER).orElseThrow();

                assertTrue(AdiabaticSaturation.wetBulbCelsius(air, Phase.ICE).orElseThrow() < 0.0);
                assertTrue(wet >= 0.0);
                assertEquals(wet, air.wetBulbCelsius().orElseThrow());
                rows++;
            }
        }

        assertEquals(3, rows);
    }
}
