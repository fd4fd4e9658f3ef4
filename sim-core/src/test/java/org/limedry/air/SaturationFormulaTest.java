package org.limedry.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.limedry.reference.ReferenceTable;

class SaturationFormulaTest {
    private static Phase phase(ReferenceTable.Row row) {
        return row.text("phase").equals("ice") ? Phase.ICE : Phase.WATER;
    }

    // EXACT: the columns of psychro/sat_computed are all the branches that are published.
    @Test
    void branches_areThoseOfTheTable() {
        List<String> branches = new ArrayList<>();
        for (SaturationFormula formula : SaturationFormula.values()) {
            for (Phase phase : Phase.values()) {
                if (formula.covers(phase)) {
                    branches.add((phase == Phase.WATER ? "w_" : "i_") + formula + "_Pa");
                }
            }
            assertFalse(formula.source().isBlank());
        }
        List<String> columns = ReferenceTable.load("psychro/sat_computed").header();

        assertEquals(28, branches.size());
        assertEquals(
                columns.subList(1, columns.size()).stream().sorted().toList(),
                branches.stream().sorted().toList());
    }

    // PUBLISHED: psychro/sat_formulas, column range_C, where it gives two ends in °C.
    @Test
    void ranges_areThoseOfTheTable() {
        int checked = 0;
        for (ReferenceTable.Row row :
                ReferenceTable.load("psychro/sat_formulas").rows()) {
            String[] ends = row.text("range_C").split("\\.\\.", -1);
            if (ends.length == 2 && !row.text("range_C").contains("K")) {
                SaturationFormula formula = SaturationFormula.valueOf(row.text("formula_id"));
                assertEquals(Double.parseDouble(ends[0]), formula.minCelsius(phase(row)), row.text("formula_id"));
                // PUBLISHED 374 stands for the critical point, 647.096 K, past which the equation has no meaning.
                assertEquals(Double.parseDouble(ends[1]), formula.maxCelsius(phase(row)), 0.055); // 374 for 373.946
                checked++;
            }
        }

        assertEquals(19, checked);
    }

    // EXACT: a saturation pressure rises with temperature.
    @ParameterizedTest
    @EnumSource
    void pressure_rises_throughoutEachBranch(SaturationFormula formula) {
        for (Phase phase : phases(formula)) {
            double before = 0.0;
            for (double celsius = formula.lowestCelsius(phase); celsius <= formula.maxCelsius(phase); celsius += 0.1) {
                double pressure = formula.extrapolatedPressurePa(phase, celsius);
                assertTrue(pressure > before, formula + " at " + celsius);
                before = pressure;
            }
            assertTrue(before > 100.0, "the walk went through the branch");
        }
    }

    @ParameterizedTest
    @EnumSource
    void saturationTemperature_isTheInverse_ofEachBranch(SaturationFormula formula) {
        for (Phase phase : phases(formula)) {
            double low = formula.lowestCelsius(phase);
            double span = formula.maxCelsius(phase) - low;
            for (int i = 0; i <= 100; i++) {
                double celsius = low + span * i / 100.0;
                double pressure = formula.extrapolatedPressurePa(phase, celsius);

                OptionalDouble found = formula.extrapolatedSaturationCelsius(phase, pressure);

                // The last point may round to just outside. 1e-10 K: root accuracy and one ulp of the pressure.
                assertEquals(celsius, found.orElse(i == 100 ? celsius : Double.NaN), 1e-10, formula + " " + phase);
            }
        }
    }

    private static List<Phase> phases(SaturationFormula formula) {
        return List.of(Phase.values()).stream().filter(formula::covers).toList();
    }

    @ParameterizedTest
    @EnumSource
    void pressure_outsideTheRange_isRefused(SaturationFormula formula) {
        for (Phase phase : phases(formula)) {
            double min = formula.minCelsius(phase);
            double max = formula.maxCelsius(phase);
            assertTrue(formula.pressurePa(phase, min) < formula.pressurePa(phase, max));
            for (double bad : new double[] {Math.nextDown(min), Math.nextUp(max), Double.NaN}) {
                var e = assertThrows(IllegalArgumentException.class, () -> formula.pressurePa(phase, bad));
                assertTrue(e.getMessage().startsWith("celsius: must be in ["), e.getMessage());
            }
        }
    }

    @Test
    void water_belowZero_isNotFollowedByAFormulaThatEndsThere() {
        // EXACT: at -5 °C a formula that ends at 0 °C has no dew point, one made for supercooled water has.
        double pressure = SaturationFormula.WMO8_MAGNUS.pressurePa(Phase.WATER, -5.0);

        assertEquals(
                OptionalDouble.empty(),
                SaturationFormula.ISO13788.extrapolatedSaturationCelsius(Phase.WATER, pressure));
        assertEquals(
                -5.0,
                SaturationFormula.WMO8_MAGNUS
                        .extrapolatedSaturationCelsius(Phase.WATER, pressure)
                        .orElseThrow(),
                1e-12); // rounding
    }

    @Test
    void dryAir_isFollowedBelowTheRange_downToItsEnd() {
        double pressure = MagnusForm.WMO_WATER.pressurePa(-50.0);

        // EXACT: the same formula forwards and backwards.
        assertEquals(
                -50.0,
                SaturationFormula.WMO8_MAGNUS
                        .extrapolatedSaturationCelsius(Phase.WATER, pressure)
                        .orElseThrow(),
                1e-11); // rounding
        assertEquals(
                OptionalDouble.empty(), SaturationFormula.WMO8_MAGNUS.extrapolatedSaturationCelsius(Phase.WATER, 1e-4));
    }

    @Test
    void branch_thatIsNotPublished_isRefused() {
        var e = assertThrows(
                IllegalArgumentException.class, () -> SaturationFormula.WAGNER_1994.pressurePa(Phase.WATER, 10.0));

        assertEquals("phase: must be one over which WAGNER_1994 is published [ICE], was WATER", e.getMessage());
    }

    @Test
    void saturationTemperature_ofNoPressure_isRefused() {
        for (double bad : new double[] {0.0, -3.0, Double.NaN}) {
            assertThrows(
                    IllegalArgumentException.class,
                    () -> SaturationFormula.WMO8_MAGNUS.extrapolatedSaturationCelsius(Phase.WATER, bad));
        }
    }
}
