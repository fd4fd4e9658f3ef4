package org.limedry.proof.tables;

import java.util.List;
import java.util.Map;
import java.util.function.DoubleSupplier;
import org.limedry.air.AdiabaticSaturation;
import org.limedry.air.Enhancement;
import org.limedry.air.HumidityRatio;
import org.limedry.air.MagnusForm;
import org.limedry.air.MoistAir;
import org.limedry.air.Phase;
import org.limedry.air.Psychrometer;
import org.limedry.air.Saturation;
import org.limedry.air.SaturationFormula;
import org.limedry.air.StandardAtmosphere;
import org.limedry.air.TemperatureFactor;
import org.limedry.proof.figure.Label;
import org.limedry.proof.figure.Proof;

/** Numbered worked examples of books, papers and class notes. */
final class WorkedExamples {
    private static final MagnusForm FAO = new MagnusForm(610.8, 17.27, 237.3);
    private static final Saturation ASHRAE = Rows.overIce(SaturationFormula.HYLAND_WEXLER_1983);
    private static final Saturation ISO = Rows.overIce(SaturationFormula.ISO13788);
    private static final Saturation IAPWS =
            new Saturation(SaturationFormula.WAGNER_PRUSS_AUX, Phase.WATER, Enhancement.NONE);

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
                    () -> new MoistAir(25.0, 0.80, Rows.ONE_ATMOSPHERE_PA, ASHRAE)
                            .dewPointCelsius()
                            .orElseThrow()),
            Map.entry(
                    "STULL-2",
                    () -> MoistAir.of(20.0, 0.50, Rows.ONE_ATMOSPHERE_PA)
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
                    () -> 1000.0
                            * MoistAir.of(18.0, 0.68, Rows.ONE_ATMOSPHERE_PA).absoluteHumidityKgPerM3()),
            Map.entry(
                    "UNIV-2",
                    () -> MoistAir.of(18.0, 0.68, Rows.ONE_ATMOSPHERE_PA)
                            .dewPointCelsius()
                            .orElseThrow()),
            Map.entry(
                    "CHART-1",
                    () -> MoistAir.of(19.5, 0.70, Rows.ONE_ATMOSPHERE_PA)
                            .dewPointCelsius()
                            .orElseThrow()),
            Map.entry(
                    "TBAS-x",
                    () -> 1000.0
                            * MoistAir.of(20.0, 0.50, Rows.ONE_ATMOSPHERE_PA).humidityRatio()));

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
                            + MoistAir.of(20.0, 0.70, Rows.ONE_ATMOSPHERE_PA)
                                    .dewPointCelsius()
                                    .orElseThrow()),
            Map.entry(
                    "RULE-2",
                    () -> 3.0
                            + MoistAir.of(10.0, 0.90, Rows.ONE_ATMOSPHERE_PA)
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

    private WorkedExamples() {}

    static List<Proof> all() {
        return List.of(
                proof("psychro/worked_examples", "example_id", AIR),
                proof("psychro/surface_condensation", "case_id", SURFACES_AND_ROOMS),
                proof("psychro/vapour_balance", "case_id", SURFACES_AND_ROOMS));
    }

    private static Proof proof(String table, String id, Map<String, DoubleSupplier> examples) {
        Comparison printed = new Comparison(
                        "published_value",
                        Label.PUBLISHED,
                        "",
                        row -> found(examples, row.text(id)),
                        Tolerance.of(
                                row -> row.number("tolerance") + ROUNDED_CONSTANTS.getOrDefault(row.text(id), 0.0),
                                "that of the row; more where the example rounds its own constants (CENGEL-d 0.06, CENGEL-g"
                                        + " 0.03, UNIV-1 0.07)"))
                .where(row -> examples.containsKey(row.text(id)));
        Comparison own = new Comparison(
                        "own_value_COMPUTED",
                        Label.COMPUTED,
                        "",
                        row -> found(examples, row.text(id)),
                        Tolerance.printed("own_value_COMPUTED", 1.0e-6, "the same formula"))
                .where(row -> examples.containsKey(row.text(id))
                        && row.text("published_value").isEmpty());
        return new TableProof(
                table,
                List.of(id, "quantity"),
                "Each example by the functions of this library. Left out: examples that only divide or multiply figures of their"
                        + " own, and an empirical fit for the wet bulb that this library does not use (STULL-1).",
                List.of(
                        printed.where(row -> !row.text("flag").equals("FAILS")),
                        printed.by("this library, rows flagged FAILS")
                                .flagged("FAILS")
                                .inError(row -> row.text("note")),
                        own));
    }

    private static double found(Map<String, DoubleSupplier> examples, String id) {
        return examples.getOrDefault(id, () -> Double.NaN).getAsDouble();
    }

    private static double fao(double celsius) {
        return SaturationFormula.FAO56.pressurePa(Phase.WATER, celsius) / 1000.0;
    }

    private static MoistAir example1() {
        double ratio = AdiabaticSaturation.humidityRatio(40.0, 20.0, Rows.ONE_ATMOSPHERE_PA, Phase.WATER, ASHRAE);
        return MoistAir.ofVapourPressure(
                40.0, HumidityRatio.vapourPressurePa(ratio, Rows.ONE_ATMOSPHERE_PA), Rows.ONE_ATMOSPHERE_PA, ASHRAE);
    }

    private static MoistAir ofRatio(double celsius, double humidityRatio, double pressurePa) {
        return MoistAir.ofVapourPressure(
                celsius, HumidityRatio.vapourPressurePa(humidityRatio, pressurePa), pressurePa, ASHRAE);
    }

    private static MoistAir classroom() {
        return new MoistAir(25.0, 0.75, 100_000.0, IAPWS);
    }

    private static MoistAir normalRoom() {
        return new MoistAir(20.0, 0.50, Rows.ONE_ATMOSPHERE_PA, ISO);
    }

    private static double gPerM3(double celsius, double relativeHumidity) {
        return 1000.0
                * MoistAir.of(celsius, relativeHumidity, Rows.ONE_ATMOSPHERE_PA).absoluteHumidityKgPerM3();
    }

    private static double iapwsGPerM3(double celsius, double relativeHumidity) {
        return 1000.0
                * new MoistAir(celsius, relativeHumidity, Rows.ONE_ATMOSPHERE_PA, IAPWS).absoluteHumidityKgPerM3();
    }
}
