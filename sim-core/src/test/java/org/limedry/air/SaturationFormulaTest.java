package org.limedry.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.limedry.reference.ReferenceTable;
import org.limedry.units.Units;

class SaturationFormulaTest {
    /** The prefix of a column of psychro/sat_computed. */
    private static Phase phaseOfColumn(String column) {
        return column.startsWith("w_") ? Phase.WATER : Phase.ICE;
    }

    private static SaturationFormula formulaOfColumn(String column) {
        return SaturationFormula.valueOf(column.substring(2, column.length() - "_Pa".length()));
    }

    private static Phase phase(ReferenceTable.Row row) {
        return row.text("phase").equals("ice") ? Phase.ICE : Phase.WATER;
    }

    // COMPUTED: psychro/sat_computed, nine digits.
    @Test
    void everyFormula_givesTheComputedPressures() {
        ReferenceTable table = ReferenceTable.load("psychro/sat_computed");
        int checked = 0;

        for (ReferenceTable.Row row : table.rows()) {
            for (String column : table.header().subList(1, table.header().size())) {
                if (row.optionalNumber(column).isPresent()) {
                    double found =
                            formulaOfColumn(column).extrapolatedPressurePa(phaseOfColumn(column), row.number("t_C"));
                    Printed.assertNear(row, column, found, 1e-8 * found); // nine digits printed; only rounding differs
                    checked++;
                }
            }
        }

        assertEquals(71 * 16 + 21 * 12, checked);
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

    // PUBLISHED: psychro/formula_crosscheck, column third_party_hPa_READ.
    @Test
    void sixFormulas_agreeWithAnotherHand() {
        int checked = 0;
        for (ReferenceTable.Row row :
                ReferenceTable.load("psychro/formula_crosscheck").rows()) {
            SaturationFormula formula = SaturationFormula.valueOf(row.text("formula_id"));

            double found = formula.extrapolatedPressurePa(Phase.WATER, row.number("t_C")) / 100.0;

            Printed.assertNear(row, "third_party_hPa_READ", found, 1e-5); // last printed digit
            checked++;
        }

        assertEquals(36, checked);
    }

    // PUBLISHED: psychro/iapws_checkpoints, rows of equations that this library has.
    @Test
    void referenceEquations_giveTheirCheckpoints() {
        int checked = 0;
        int others = 0;
        for (ReferenceTable.Row row :
                ReferenceTable.load("psychro/iapws_checkpoints").rows()) {
            double celsius = Units.celsius(row.number("T"));
            switch (row.text("equation")) {
                case "IAPWS_R14_08" -> {
                    double found = SaturationFormula.IAPWS_R14_08.pressurePa(Phase.ICE, celsius);
                    Printed.assertNear(row, "published_value", found, 1e-5); // the exponent 1/300 is kept to 12 digits
                    checked++;
                }
                case "IAPWS_SR1" -> {
                    double found = SaturationFormula.WAGNER_PRUSS_AUX.pressurePa(Phase.WATER, celsius);
                    Printed.assertSame(
                            row, "published_value", found, 2e-7); // 611.6571 for 611.657, 101325.015 for 101325
                    checked++;
                }
                case "WMO8_MAGNUS" -> {
                    double found = SaturationFormula.WMO8_MAGNUS.pressurePa(Phase.WATER, celsius);
                    Printed.assertSame(row, "published_value", found, 0.0); // the prefactor itself
                    checked++;
                }
                default -> {
                    // Other equations for the same curve. The auxiliary equation is stated to agree within 0.0099 %
                    // from 0
                    // to 50 °C; at 450 and 500 K nothing is stated and the difference is 0.012 % (PINNED).
                    double foundMPa = SaturationFormula.WAGNER_PRUSS_AUX.pressurePa(Phase.WATER, celsius) / 1e6;
                    Printed.assertSame(row, "published_value", foundMPa, celsius < 50.0 ? 1e-4 : 1.3e-4); // see above
                    others++;
                }
            }
        }

        assertEquals(4, checked);
        assertEquals(4, others);
    }

    // COMPUTED: psychro/sat_deviation: extremes of the deviation from IAPWS at steps of 0.1 K, percent.
    @Test
    void deviations_fromTheReference_areThoseStated() {
        int checked = 0;
        for (ReferenceTable.Row row :
                ReferenceTable.load("psychro/sat_deviation").rows()) {
            Phase phase = phase(row);
            SaturationFormula formula = SaturationFormula.valueOf(row.text("formula_id"));
            String[] ends = row.text("range_C").split(" ", -1)[0].split("\\.\\.", -1);
            long first = Math.round(10.0 * Double.parseDouble(ends[0]));
            long last = Math.round(10.0 * Double.parseDouble(ends[1]));
            double[] percent = IntStream.rangeClosed((int) first, (int) last)
                    .mapToDouble(tenth -> deviationPercent(formula, phase, tenth / 10.0))
                    .toArray();

            // Half of the last printed digit.
            Printed.assertNear(
                    row,
                    "min_dev_pct",
                    IntStream.range(0, percent.length)
                            .mapToDouble(i -> percent[i])
                            .min()
                            .orElseThrow(),
                    5.1e-5);
            Printed.assertNear(
                    row,
                    "max_dev_pct",
                    IntStream.range(0, percent.length)
                            .mapToDouble(i -> percent[i])
                            .max()
                            .orElseThrow(),
                    5.1e-5);
            checked++;
        }

        assertEquals(60, checked);
    }

    private static double deviationPercent(SaturationFormula formula, Phase phase, double celsius) {
        SaturationFormula reference =
                phase == Phase.WATER ? SaturationFormula.WAGNER_PRUSS_AUX : SaturationFormula.IAPWS_R14_08;
        return Units.percentFromFraction(
                formula.extrapolatedPressurePa(phase, celsius) / reference.extrapolatedPressurePa(phase, celsius)
                        - 1.0);
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
    void water_belowZero_isNotFollowedUnasked() {
        // EXACT: at -5 °C a formula that ends at 0 °C has no dew point, one made for supercooled water has.
        double pressure = SaturationFormula.WMO8_MAGNUS.pressurePa(Phase.WATER, -5.0);

        assertEquals(OptionalDouble.empty(), SaturationFormula.ISO13788.saturationCelsius(Phase.WATER, pressure));
        assertEquals(
                OptionalDouble.empty(),
                SaturationFormula.ISO13788.extrapolatedSaturationCelsius(Phase.WATER, pressure));
        assertEquals(
                -5.0,
                SaturationFormula.WMO8_MAGNUS
                        .saturationCelsius(Phase.WATER, pressure)
                        .orElseThrow(),
                1e-12); // rounding
    }

    @Test
    void dryAir_isFollowedBelowTheRange_onlyByTheMethodThatSaysSo() {
        double pressure = MagnusForm.WMO_WATER.pressurePa(-50.0);

        assertEquals(OptionalDouble.empty(), SaturationFormula.WMO8_MAGNUS.saturationCelsius(Phase.WATER, pressure));
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
                    () -> SaturationFormula.WMO8_MAGNUS.saturationCelsius(Phase.WATER, bad));
            assertThrows(
                    IllegalArgumentException.class,
                    () -> SaturationFormula.WMO8_MAGNUS.extrapolatedSaturationCelsius(Phase.WATER, bad));
        }
    }
}
