package org.limedry.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.limedry.reference.ReferenceTable;

/** Which branch is taken about 0 C, row by row of the grids of moist air. */
class WetAndFrozenTest {
    private static final Saturation ASHRAE =
            new Saturation(SaturationFormula.HYLAND_WEXLER_1983, Phase.ICE, Enhancement.NONE);

    private static List<ReferenceTable.Row> magnusGridWithout(String column) {
        return ReferenceTable.load("psychro/magnus_grid").rows().stream()
                .filter(row -> row.text(column).isEmpty())
                .toList();
    }

    private static MoistAir magnus(ReferenceTable.Row row) {
        return MoistAir.of(row.number("t_C"), row.number("rh_over_water_pct") / 100.0, row.number("p_kPa") * 1000.0);
    }

    // EXACT: psychro/magnus_grid leaves the frost point blank where the dew point is 0 C or above.
    @Test
    void frostPoint_whereTheDewPointIsNotBelowZero_isNotBelowZero() {
        List<ReferenceTable.Row> rows = magnusGridWithout("frostpoint_ice_C");

        rows.forEach(row -> assertTrue(magnus(row).frostPointCelsius().orElse(0.0) >= 0.0, "line " + row.line()));

        assertEquals(390 - 184, rows.size());
    }

    // EXACT: psychro/magnus_grid leaves the wet bulb blank where it is not above 0 C; two rows are saturated at 0 C.
    @Test
    void wetBulb_whereTheTableIsBlank_isNotAboveZero() {
        List<ReferenceTable.Row> rows = magnusGridWithout("wetbulb_thermodynamic_C");

        for (ReferenceTable.Row row : rows) {
            double found =
                    AdiabaticSaturation.wetBulbCelsius(magnus(row), Phase.WATER).orElseThrow();
            assertTrue(found < 1e-9, "line " + row.line()); // rounding
        }

        assertEquals(390 - 251, rows.size());
    }

    // COMPUTED: psychro/oracle_library_grid, rows flagged wetbulb_ambiguous: a wet and a frozen wick both satisfy them.
    @Test
    void wetBulb_whereBothWicksAreRight_isThatOfTheWetOne() {
        int rows = 0;
        for (ReferenceTable.Row row :
                ReferenceTable.load("psychro/oracle_library_grid").rows()) {
            if (row.number("wetbulb_ambiguous") == 1.0) {
                Phase phase = row.text("sat_over").equals("ice") ? Phase.ICE : Phase.WATER;
                double saturated = ASHRAE.formula().pressurePa(phase, row.number("t_C"));
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
