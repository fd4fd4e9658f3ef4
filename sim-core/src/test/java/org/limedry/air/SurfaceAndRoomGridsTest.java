package org.limedry.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.limedry.reference.ReferenceTable;
import org.limedry.units.Units;

/** Computed grids of cold surfaces and of the steady vapour balance of a room in its three variants. */
class SurfaceAndRoomGridsTest {
    private static final double ONE_ATMOSPHERE_PA = 101_325.0;

    private static final List<ReferenceTable.Row> ISO =
            ReferenceTable.load("psychro/iso13788_reference").rows();

    // COMPUTED: psychro/surface_condensation_grid, formulas of ISO 13788; 0.001 K and 1e-5 as stated with the table.
    @Test
    void surfaceGrid_isMet() {
        Saturation iso = new Saturation(SaturationFormula.ISO13788, Phase.ICE, Enhancement.NONE);
        int checked = 0;
        for (ReferenceTable.Row row :
                ReferenceTable.load("psychro/surface_condensation_grid").rows()) {
            MoistAir air = new MoistAir(row.number("t_i_C"), row.number("rh_i_pct") / 100.0, ONE_ATMOSPHERE_PA, iso);
            double dew = air.surfaceCelsiusAt(1.0).orElseThrow();
            double mould = air.surfaceCelsiusAt(0.8).orElseThrow();

            Printed.assertSame(row, "p_i_Pa", air.vapourPressurePa(), 1e-6);
            Printed.assertNear(row, "t_si_at_100pct_C", dew, 0.001);
            Printed.assertNear(row, "t_si_at_80pct_C", mould, 0.001);
            Printed.assertNear(row, "fRsi_for_100pct", factor(row, dew), 1e-5);
            Printed.assertNear(row, "fRsi_for_80pct", factor(row, mould), 1e-5);
            // EXACT: the surface at its limit sees the limit. Rounding only.
            assertEquals(1.0, air.relativeHumidityAt(dew), 1e-12);
            assertEquals(0.8, air.relativeHumidityAt(mould), 1e-12);
            checked++;
        }

        assertEquals(44, checked);
    }

    // PUBLISHED: psychro/iso13788_reference, minimum requirement of DIN 4108-2: fRsi 0.70 at 20 °C, 50 % and -5 °C,
    // which is
    // the mould criterion of the row above it.
    @Test
    void minimumRequirement_isTheMouldCriterion() {
        assertTrue(iso("minimum requirement (Germany)").startsWith("fRsi >= 0.70 at t_i=20 C, RH=50 %, t_e=-5 C"));
        assertTrue(iso("mould criterion").startsWith("surface RH <= 0.8"));
        Saturation iso = new Saturation(SaturationFormula.ISO13788, Phase.ICE, Enhancement.NONE);

        double mould = new MoistAir(20.0, 0.50, ONE_ATMOSPHERE_PA, iso)
                .surfaceCelsiusAt(0.8)
                .orElseThrow();

        assertEquals(0.70, TemperatureFactor.ofSurface(mould, 20.0, -5.0), 0.005); // half of the last digit
    }

    // COMPUTED: psychro/iso13788_reference: a vapour excess in kg/m3 at 20 °C is the pressure excess beside it. The
    // limits
    // are FROM MEMORY in the table, so this shows only that its two columns agree.
    @Test
    void classLimits_agreeInPressureAndDensity() {
        double pascalPerDensity = AirConstants.VAPOUR_GAS_CONSTANT_J_PER_KG_K * Units.kelvin(20.0);
        for (int humidityClass = 1; humidityClass <= 4; humidityClass++) {
            String[] limits =
                    iso("humidity class " + humidityClass + " upper limit").split("[ /]+", -1);

            double pressurePa = Double.parseDouble(limits[0]);

            assertEquals(
                    pressurePa, Double.parseDouble(limits[2]) * pascalPerDensity, 0.005 * pressurePa); // 270.6 is 270
        }
        assertEquals(270.6, 0.002 * pascalPerDensity, 0.05); // half of the last digit
        assertTrue(iso("consistency of the class limits").endsWith("= 270.6 Pa"));
        assertEquals(16, ISO.size());
    }

    private static String iso(String item) {
        return ISO.stream()
                .filter(row -> row.text("item").equals(item))
                .findFirst()
                .orElseThrow()
                .text("value_or_formula");
    }

    private static double factor(ReferenceTable.Row row, double surfaceCelsius) {
        return TemperatureFactor.ofSurface(surfaceCelsius, row.number("t_i_C"), row.number("t_e_C"));
    }

    // COMPUTED: psychro/surface_condensation_grid by another Magnus formula, 0.06 K as stated with the table.
    @Test
    void surfaceGrid_isNearlyMet_byWmoMagnus() {
        Saturation wmo = new Saturation(SaturationFormula.WMO8_MAGNUS, Phase.ICE, Enhancement.NONE);
        int checked = 0;
        for (ReferenceTable.Row row :
                ReferenceTable.load("psychro/surface_condensation_grid").rows()) {
            MoistAir air = new MoistAir(row.number("t_i_C"), row.number("rh_i_pct") / 100.0, ONE_ATMOSPHERE_PA, wmo);

            Printed.assertNear(
                    row, "t_si_at_100pct_C", air.surfaceCelsiusAt(1.0).orElseThrow(), 0.06);
            Printed.assertNear(row, "t_si_at_80pct_C", air.surfaceCelsiusAt(0.8).orElseThrow(), 0.06);
            checked++;
        }

        assertEquals(44, checked);
    }

    /** A row of psychro/vapour_balance_grid: one room, its source and the air outdoors. */
    private record Room(ReferenceTable.Row row) {
        double insideCelsius() {
            return row.number("t_i_C");
        }

        MoistAir outdoors() {
            return MoistAir.of(row.number("t_e_C"), row.number("rh_e_pct") / 100.0, ONE_ATMOSPHERE_PA);
        }

        double sourcePerVolumeKgPerM3() {
            return row.number("G_kg_per_h") / row.number("n_per_h") / row.number("V_m3");
        }

        double vapourGasConstantTimesKelvin() {
            return AirConstants.VAPOUR_GAS_CONSTANT_J_PER_KG_K * Units.kelvin(insideCelsius());
        }

        /** Vapour pressure inside for one air change, by variant; what it must reach to wet the wall, for the inverse. */
        double partialPressurePa() {
            return outdoors().vapourPressurePa() + sourcePerVolumeKgPerM3() * vapourGasConstantTimesKelvin();
        }

        double equalVolumesPa() {
            return (outdoors().absoluteHumidityKgPerM3() + sourcePerVolumeKgPerM3()) * vapourGasConstantTimesKelvin();
        }

        double dryAirMassPa() {
            double ratio = outdoors().humidityRatio()
                    + sourcePerVolumeKgPerM3() * outdoors().specificVolumeM3PerKg();
            return HumidityRatio.vapourPressurePa(ratio, ONE_ATMOSPHERE_PA);
        }

        private double wallPa() {
            return SaturationFormula.WMO8_MAGNUS.pressurePa(Phase.WATER, row.number("wall_C"));
        }

        double neededPartialPressurePerH() {
            return sourceKgPerM3H()
                    * vapourGasConstantTimesKelvin()
                    / (wallPa() - outdoors().vapourPressurePa());
        }

        double neededEqualVolumesPerH() {
            return sourceKgPerM3H()
                    / (wallPa() / vapourGasConstantTimesKelvin() - outdoors().absoluteHumidityKgPerM3());
        }

        double neededDryAirMassPerH() {
            return sourceKgPerM3H()
                    * outdoors().specificVolumeM3PerKg()
                    / (HumidityRatio.ofVapourPressure(wallPa(), ONE_ATMOSPHERE_PA)
                            - outdoors().humidityRatio());
        }

        private double sourceKgPerM3H() {
            return row.number("G_kg_per_h") / row.number("V_m3");
        }
    }

    // COMPUTED: psychro/vapour_balance_grid, 1e-6 relative as stated with the table, and the rounding of the print.
    @Test
    void vapourBalanceGrid_isMet_inAllThreeVariants() {
        int checked = 0;
        for (ReferenceTable.Row row :
                ReferenceTable.load("psychro/vapour_balance_grid").rows()) {
            Room room = new Room(row);
            double saturated = SaturationFormula.WMO8_MAGNUS.pressurePa(Phase.WATER, room.insideCelsius());

            Printed.assertSame(row, "p_e_Pa", room.outdoors().vapourPressurePa(), 1e-6);
            Printed.assertSame(row, "p_sat_t_i_Pa", saturated, 1e-6);
            Printed.assertSame(row, "p_i_A_Pa", room.partialPressurePa(), 1e-6);
            Printed.assertSame(row, "p_i_B_Pa", room.equalVolumesPa(), 1e-6);
            Printed.assertSame(row, "p_i_C_Pa", room.dryAirMassPa(), 1e-6);
            Printed.assertSame(row, "dewpoint_A_C", MagnusForm.WMO_WATER.celsius(room.partialPressurePa()), 1e-6);
            Printed.assertSame(row, "n_needed_A_per_h", room.neededPartialPressurePerH(), 1e-6);
            Printed.assertSame(row, "n_needed_B_per_h", room.neededEqualVolumesPerH(), 1e-6);
            Printed.assertSame(row, "n_needed_C_per_h", room.neededDryAirMassPerH(), 1e-6);
            assertEquals(row.text("A_above_saturation"), room.partialPressurePa() > saturated ? "yes" : "no");
            checked++;
        }

        assertEquals(16, checked);
    }
}
