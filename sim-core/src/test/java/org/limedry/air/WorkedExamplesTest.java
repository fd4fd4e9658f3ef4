package org.limedry.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleSupplier;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.limedry.reference.ReferenceTable;

/** Numbered worked examples of books, papers and class notes, each by the functions of this package. */
class WorkedExamplesTest {
    private static final double ONE_ATMOSPHERE_PA = 101_325.0;
    private static final MagnusForm FAO = new MagnusForm(610.8, 17.27, 237.3);
    private static final Saturation ASHRAE =
            new Saturation(SaturationFormula.HYLAND_WEXLER_1983, Phase.ICE, Enhancement.NONE);
    private static final Saturation ISO = new Saturation(SaturationFormula.ISO13788, Phase.ICE, Enhancement.NONE);
    private static final Saturation IAPWS =
            new Saturation(SaturationFormula.WAGNER_PRUSS_AUX, Phase.WATER, Enhancement.NONE);

    /** Examples that only divide or multiply figures of their own: no function of this package is in them. */
    private static final Set<String> ARITHMETIC =
            Set.of("FAO-2b", "GEOCAT-60", "GEOCAT-80", "GEOCAT-100", "STULL-1", "BAL-6", "BAL-7", "BAL-8");

    /** Inputs as the rows of psychro/worked_examples give them. */
    private static final Map<String, DoubleSupplier> AIR = Map.ofEntries(
            Map.entry("FAO-2a", () -> StandardAtmosphere.fao56PressurePa(1800.0) / 1000.0),
            Map.entry("FAO-3a", () -> fao(15.0)),
            Map.entry("FAO-3b", () -> fao(24.5)),
            Map.entry("FAO-3c", () -> (fao(15.0) + fao(24.5)) / 2.0),
            Map.entry("FAO-4a", () -> fao(19.5)),
            Map.entry(
                    "FAO-4b",
                    () -> new Psychrometer(0.000662, 0.0)
                                    .vapourPressurePa(25.6, 19.5, 87_900.0, Phase.WATER, SaturationFormula.FAO56)
                            / 1000.0),
            Map.entry("FAO-5a", () -> fao(18.0)),
            Map.entry("FAO-5b", () -> fao(25.0)),
            Map.entry("FAO-5c", () -> (0.82 * fao(18.0) + 0.54 * fao(25.0)) / 2.0),
            Map.entry("FAO-5d", () -> 0.82 * fao(18.0)),
            Map.entry("FAO-5e", () -> 0.68 * (fao(18.0) + fao(25.0)) / 2.0),
            Map.entry("FAO-17", () -> FAO.slopePaPerK(30.2) / 1000.0),
            Map.entry("FAO-18", () -> FAO.slopePaPerK(16.9) / 1000.0),
            Map.entry("FAO-20", () -> fao(14.8)),
            Map.entry("ASHRAE-1a", () -> example1().humidityRatio()),
            Map.entry("ASHRAE-1b", () -> example1().dewPointCelsius().orElseThrow()),
            Map.entry("ASHRAE-1c", () -> 100.0 * example1().relativeHumidity()),
            Map.entry("ASHRAE-1d", () -> example1().enthalpyKJPerKg()),
            Map.entry("ASHRAE-1e", () -> example1().specificVolumeM3PerKg()),
            Map.entry("PSY-1", () -> HumidityRatio.ofVapourPressure(3169.7, 95_461.0)),
            Map.entry("PSY-2", () -> AdiabaticSaturation.humidityRatio(30.0, 25.0, 95_461.0, Phase.WATER, ASHRAE)),
            Map.entry("PSY-3", () -> AdiabaticSaturation.humidityRatio(-1.0, -5.0, 95_461.0, Phase.ICE, ASHRAE)),
            Map.entry("PSY-4", () -> ofRatio(30.0, 0.02, 95_461.0).enthalpyKJPerKg()),
            Map.entry("PSY-5", () -> ofRatio(30.0, 0.02, 95_461.0).specificVolumeM3PerKg()),
            Map.entry("PSY-6", () -> ofRatio(30.0, 0.02, 95_461.0).densityKgPerM3()),
            Map.entry(
                    "PSY-7",
                    () -> new MoistAir(25.0, 0.80, ONE_ATMOSPHERE_PA, ASHRAE)
                            .dewPointCelsius()
                            .orElseThrow()),
            Map.entry(
                    "STULL-2",
                    () -> MoistAir.of(20.0, 0.50, ONE_ATMOSPHERE_PA)
                            .wetBulbCelsius()
                            .orElseThrow()),
            Map.entry("CENGEL-a", () -> classroom().vapourPressurePa() / 1000.0),
            Map.entry("CENGEL-b", () -> (100_000.0 - classroom().vapourPressurePa()) / 1000.0),
            Map.entry("CENGEL-c", () -> classroom().humidityRatio()),
            Map.entry("CENGEL-d", () -> 75.0 / classroom().specificVolumeM3PerKg()),
            Map.entry("CENGEL-e", () -> 75.0 * classroom().absoluteHumidityKgPerM3()),
            Map.entry("CENGEL-f", () -> classroom().dewPointCelsius().orElseThrow()),
            Map.entry("CENGEL-g", () -> ofRatio(25.0, 0.0152, 100_000.0).enthalpyKJPerKg()),
            Map.entry(
                    "UNIV-1",
                    () -> 1000.0 * MoistAir.of(18.0, 0.68, ONE_ATMOSPHERE_PA).absoluteHumidityKgPerM3()),
            Map.entry(
                    "UNIV-2",
                    () -> MoistAir.of(18.0, 0.68, ONE_ATMOSPHERE_PA)
                            .dewPointCelsius()
                            .orElseThrow()),
            Map.entry(
                    "CHART-1",
                    () -> MoistAir.of(19.5, 0.70, ONE_ATMOSPHERE_PA)
                            .dewPointCelsius()
                            .orElseThrow()),
            Map.entry(
                    "TBAS-x",
                    () -> 1000.0 * MoistAir.of(20.0, 0.50, ONE_ATMOSPHERE_PA).humidityRatio()));

    /** Inputs as the rows of psychro/surface_condensation and psychro/vapour_balance give them. */
    private static final Map<String, DoubleSupplier> SURFACES_AND_ROOMS = Map.ofEntries(
            Map.entry("FRSI-1", () -> TemperatureFactor.ofSurface(12.6, 20.0, -5.0)),
            Map.entry("FRSI-2", () -> normalRoom().surfaceCelsiusAt(0.80).orElseThrow()),
            Map.entry("FRSI-3", () -> normalRoom().dewPointCelsius().orElseThrow()),
            Map.entry("FRSI-4", () -> 100.0 * normalRoom().relativeHumidityAt(12.6)),
            Map.entry("FRSI-5", () -> TemperatureFactor.ofTransmittance(0.2899, 0.25)),
            Map.entry("FRSI-6", () -> TemperatureFactor.ofTransmittance(0.2843, 0.25)),
            Map.entry("FRSI-7", () -> TemperatureFactor.ofTransmittance(0.2553, 0.25)),
            Map.entry("FRSI-8", () -> TemperatureFactor.ofSurface(20.6, 25.0, -20.0)),
            Map.entry("FRSI-9", () -> TemperatureFactor.ofSurface(20.7, 25.0, -20.0)),
            Map.entry(
                    "RULE-1",
                    () -> 3.0
                            + MoistAir.of(20.0, 0.70, ONE_ATMOSPHERE_PA)
                                    .dewPointCelsius()
                                    .orElseThrow()),
            Map.entry(
                    "RULE-2",
                    () -> 3.0
                            + MoistAir.of(10.0, 0.90, ONE_ATMOSPHERE_PA)
                                    .dewPointCelsius()
                                    .orElseThrow()),
            Map.entry("BAL-1", () -> gPerM3(20.0, 0.60) - gPerM3(10.0, 0.70)),
            Map.entry("BAL-2", () -> gPerM3(20.0, 0.60) - gPerM3(0.0, 0.70)),
            Map.entry("BAL-3", () -> 30.0 * (gPerM3(20.0, 0.60) - gPerM3(10.0, 0.70))),
            Map.entry("BAL-4", () -> 30.0 * (gPerM3(20.0, 0.60) - gPerM3(0.0, 0.70))),
            Map.entry("BAL-5", () -> gPerM3(20.0, 0.50) - gPerM3(4.0, 0.80)),
            Map.entry("BAL-9", () -> 10_000.0 / 24.0 / 250.0 / (iapwsGPerM3(20.0, 0.50) - iapwsGPerM3(4.0, 0.80))));

    /** Room for rounded constants inside an example, where its own tolerance leaves none. */
    private static final Map<String, Double> ROUNDED_CONSTANTS = Map.of(
            "CENGEL-d", 0.06, // R 0.287 and 298 K for 0.287042 and 298.15 K: 0.065 % of 85.6 kg
            "CENGEL-g", 0.03, // c_p 1.005 and h_g 2547.2 for 1.006 and 2547.5
            "UNIV-1", 0.07); // saturation density printed as 15.4 g/m3, WMO Magnus 0.25 % low

    private static double fao(double celsius) {
        return SaturationFormula.FAO56.pressurePa(Phase.WATER, celsius) / 1000.0;
    }

    private static MoistAir example1() {
        double ratio = AdiabaticSaturation.humidityRatio(40.0, 20.0, ONE_ATMOSPHERE_PA, Phase.WATER, ASHRAE);
        return MoistAir.ofVapourPressure(
                40.0, HumidityRatio.vapourPressurePa(ratio, ONE_ATMOSPHERE_PA), ONE_ATMOSPHERE_PA, ASHRAE);
    }

    private static MoistAir ofRatio(double celsius, double humidityRatio, double pressurePa) {
        return MoistAir.ofVapourPressure(
                celsius, HumidityRatio.vapourPressurePa(humidityRatio, pressurePa), pressurePa, ASHRAE);
    }

    private static MoistAir classroom() {
        return new MoistAir(25.0, 0.75, 100_000.0, IAPWS);
    }

    private static MoistAir normalRoom() {
        return new MoistAir(20.0, 0.50, ONE_ATMOSPHERE_PA, ISO);
    }

    private static double gPerM3(double celsius, double relativeHumidity) {
        return 1000.0
                * MoistAir.of(celsius, relativeHumidity, ONE_ATMOSPHERE_PA).absoluteHumidityKgPerM3();
    }

    private static double iapwsGPerM3(double celsius, double relativeHumidity) {
        return 1000.0 * new MoistAir(celsius, relativeHumidity, ONE_ATMOSPHERE_PA, IAPWS).absoluteHumidityKgPerM3();
    }

    private record Case(String id, ReferenceTable.Row row, DoubleSupplier found) {
        @Override
        public String toString() {
            return id;
        }
    }

    private static List<Case> cases(String table, String idColumn, Map<String, DoubleSupplier> examples) {
        return ReferenceTable.load(table).rows().stream()
                .filter(row -> examples.containsKey(row.text(idColumn)))
                .map(row -> new Case(row.text(idColumn), row, examples.get(row.text(idColumn))))
                .toList();
    }

    static List<Case> airCases() {
        return cases("psychro/worked_examples", "example_id", AIR);
    }

    static List<Case> surfaceCases() {
        return cases("psychro/surface_condensation", "case_id", SURFACES_AND_ROOMS);
    }

    static List<Case> roomCases() {
        return cases("psychro/vapour_balance", "case_id", SURFACES_AND_ROOMS);
    }

    // PUBLISHED: the row of psychro/worked_examples, psychro/surface_condensation or psychro/vapour_balance with that
    // id.
    @ParameterizedTest
    @MethodSource({"airCases", "surfaceCases", "roomCases"})
    void example_isMet_orIsTheSlipThatItIsSaidToBe(Case example) {
        ReferenceTable.Row row = example.row();
        double found = example.found().getAsDouble();

        if (row.text("published_value").isEmpty()) {
            Printed.assertSame(row, "own_value_COMPUTED", found, 1e-6); // the same formula
        } else if (row.text("flag").equals("FAILS")) {
            Printed.assertMisprint(row, "published_value", found, row.number("tolerance"));
        } else {
            double tolerance = row.number("tolerance") + ROUNDED_CONSTANTS.getOrDefault(example.id(), 0.0);
            Printed.assertNear(row, "published_value", found, tolerance); // stated with the row
        }
    }

    @Test
    void everyExample_isCheckedOrArithmetic() {
        Set<String> left = new HashSet<>(ids("psychro/worked_examples", "example_id"));
        left.addAll(ids("psychro/surface_condensation", "case_id"));
        left.addAll(ids("psychro/vapour_balance", "case_id"));
        assertEquals(43 + 11 + 9, left.size());

        left.removeAll(AIR.keySet());
        left.removeAll(SURFACES_AND_ROOMS.keySet());

        assertEquals(ARITHMETIC, left);
        assertEquals(38, airCases().size());
        assertEquals(11, surfaceCases().size());
        assertEquals(6, roomCases().size());
        assertTrue(airCases().stream()
                        .filter(c -> c.row().text("flag").equals("FAILS"))
                        .count()
                == 2);
    }

    private static Set<String> ids(String table, String column) {
        return ReferenceTable.load(table).rows().stream()
                .map(row -> row.text(column))
                .collect(Collectors.toSet());
    }
}
