package org.limedry.proof.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.limedry.air.Phase;
import org.limedry.air.SaturationFormula;
import org.limedry.proof.figure.Label;
import org.limedry.proof.figure.Proof;
import org.limedry.reference.ReferenceTable;
import org.limedry.units.Units;

/** Saturation pressures. */
final class SaturationTables {
    private static final String PUBLISHED = "psychro/sat_published";
    private static final String SAME_EQUATION = "the same equation: rounding of the table";

    private SaturationTables() {}

    static List<Proof> all() {
        return List.of(computed(), published(), deviation(), otherHand(), checkpoints());
    }

    private static Proof computed() {
        String table = "psychro/sat_computed";
        List<String> header = ReferenceTable.load(table).header();
        List<Comparison> columns = header.subList(1, header.size()).stream()
                .map(column -> new Comparison(
                        column,
                        Label.COMPUTED,
                        "Pa",
                        row -> formula(column).extrapolatedPressurePa(phaseOf(column), Rows.celsius(row)),
                        new Tolerance((row, found) -> 1.0e-8 * found, "1e-8: nine digits, the same formula")))
                .toList();
        return new TableProof(
                table,
                List.of("t_C"),
                "All formulas over water (w_) and ice (i_), also outside their own range as the table is.",
                columns);
    }

    private static Phase phaseOf(String column) {
        return column.startsWith("w_") ? Phase.WATER : Phase.ICE;
    }

    private static SaturationFormula formula(String column) {
        return SaturationFormula.valueOf(column.replaceAll("^[wi]_|_Pa$", ""));
    }

    private static Proof published() {
        List<Comparison> all = new ArrayList<>(List.of(
                pressure(SaturationFormula.WMO8_MAGNUS, percent(0.35, 0.35, "the formula is 0.31 % low near 28 C")),
                pressure(SaturationFormula.ISO13788, percent(0.25, 0.55, "0.25 % over water, 0.55 % over ice"))));
        Tolerance accurate = Tolerance.of(
                row -> 0.01 * accuratePercent(row.text("source_id")) * row.number("p_Pa")
                        + row.number("half_print_unit_Pa"),
                "0.1 % and the rounding of the print; DIN 0.115 % (a power law), mm Hg table 0.12 %, instrument maker's ice"
                        + " table 0.34 %: these are as far from IAPWS themselves");
        Stream.of(SaturationFormula.SONNTAG, SaturationFormula.HYLAND_WEXLER_1983, SaturationFormula.BUCK_1996)
                .forEach(formula -> all.add(pressure(formula, accurate)));
        all.add(rough());
        all.add(misprinted());
        all.add(new Comparison(
                "iapws_ref_Pa",
                Label.COMPUTED,
                "Pa",
                row -> Rows.iapws(Rows.phase(row)).extrapolatedPressurePa(Rows.phase(row), Rows.celsius(row)),
                Tolerance.printed("iapws_ref_Pa", 0.0, SAME_EQUATION)));
        all.add(difference("wmo8_magnus_minus_published_pct", SaturationFormula.WMO8_MAGNUS));
        all.add(difference("hyland_wexler_minus_published_pct", SaturationFormula.HYLAND_WEXLER_1983));
        return new TableProof(
                PUBLISHED,
                List.of("source_id", "phase", "t_C"),
                "Nine printed tables. Rows flagged FAILS are misprints or bad values, left in; rows flagged LOOSE are rough.",
                all);
    }

    private static Comparison pressure(SaturationFormula formula, Tolerance tolerance) {
        return new Comparison(
                        "p_Pa",
                        Label.PUBLISHED,
                        "Pa",
                        row -> formula.pressurePa(Rows.phase(row), Rows.celsius(row)),
                        tolerance)
                .by(formula.name())
                .flagged("")
                .where(row -> Rows.celsius(row) >= formula.minCelsius(Rows.phase(row))
                        && Rows.celsius(row) <= formula.maxCelsius(Rows.phase(row)));
    }

    private static Tolerance percent(double water, double ice, String reason) {
        return Tolerance.of(
                row -> 0.01 * (Rows.phase(row) == Phase.WATER ? water : ice) * row.number("p_Pa"),
                reason + " (stated with the table)");
    }

    private static double accuratePercent(String source) {
        return switch (source) {
            case "DIN4108_TAB", "ETB_MOIST" -> 0.115;
            case "UNU_CRC62" -> 0.12;
            case "GE_ICE" -> 0.34;
            default -> 0.1;
        };
    }

    private static Comparison rough() {
        return new Comparison(
                        "p_Pa",
                        Label.PUBLISHED,
                        "Pa",
                        row -> SaturationFormula.IAPWS_R14_08.pressurePa(Phase.ICE, Rows.celsius(row)),
                        Tolerance.of(row -> 0.0085 * row.number("p_Pa"), "rough rows: up to 0.8 % off, as stated"))
                .by("IAPWS_R14_08, rough rows")
                .flagged("LOOSE");
    }

    private static Comparison misprinted() {
        return new Comparison(
                        "p_Pa",
                        Label.PUBLISHED,
                        "Pa",
                        row -> SaturationFormula.HYLAND_WEXLER_1983.pressurePa(Rows.phase(row), Rows.celsius(row)),
                        Tolerance.of(row -> 0.001 * row.number("p_Pa"), "0.1 %, as for the rows that are sound"))
                .by("HYLAND_WEXLER_1983, rows flagged FAILS")
                .flagged("FAILS")
                .inError(row -> row.text("source_id").equals("CRC73")
                        ? "misprint in the copy that was read: 6.6398 for about 6.630 kPa"
                        : "bad value in the source: no formula comes near it, its neighbours are met");
    }

    private static Comparison difference(String column, SaturationFormula formula) {
        return new Comparison(
                column,
                Label.COMPUTED,
                "%",
                row -> 100.0
                        * (formula.extrapolatedPressurePa(Rows.phase(row), Rows.celsius(row)) / row.number("p_Pa")
                                - 1.0),
                // The column was formed from p_Pa before that was rounded.
                Tolerance.of(
                        row -> Tolerance.halfUnit(row, column)
                                + 101.0 * Tolerance.halfUnit(row, "p_Pa") / row.number("p_Pa"),
                        "rounding of the column and of p_Pa, from which it was formed"));
    }

    private static Proof deviation() {
        return new TableProof(
                "psychro/sat_deviation",
                List.of("formula_id", "phase", "range_C"),
                "Extremes of each formula against IAPWS at steps of 0.1 K.",
                List.of(extreme("min_dev_pct", -1.0), extreme("max_dev_pct", 1.0)));
    }

    private static Comparison extreme(String column, double sign) {
        return new Comparison(
                column,
                Label.COMPUTED,
                "%",
                row -> sign * largest(row, sign),
                Tolerance.of(5.1e-5, "half of the last digit"));
    }

    private static double largest(ReferenceTable.Row row, double sign) {
        Phase phase = Rows.phase(row);
        SaturationFormula formula = SaturationFormula.valueOf(row.text("formula_id"));
        String[] ends = row.text("range_C").split(" ", -1)[0].split("\\.\\.", -1);
        long first = Math.round(10.0 * Double.parseDouble(ends[0]));
        long last = Math.round(10.0 * Double.parseDouble(ends[1]));
        double largest = Double.NEGATIVE_INFINITY;
        for (long tenth = first; tenth <= last; tenth++) {
            double celsius = tenth / 10.0;
            double ratio = formula.extrapolatedPressurePa(phase, celsius)
                    / Rows.iapws(phase).extrapolatedPressurePa(phase, celsius);
            largest = Math.max(largest, sign * Units.percentFromFraction(ratio - 1.0));
        }
        return largest;
    }

    private static Proof otherHand() {
        return new TableProof(
                "psychro/formula_crosscheck",
                List.of("formula_id", "t_C"),
                "Six formulas as an unrelated third party evaluated them.",
                List.of(new Comparison(
                        "third_party_hPa_READ",
                        Label.PUBLISHED,
                        "hPa",
                        row -> 0.01
                                * SaturationFormula.valueOf(row.text("formula_id"))
                                        .extrapolatedPressurePa(Phase.WATER, Rows.celsius(row)),
                        Tolerance.of(1.0e-5, "the last printed digit"))));
    }

    private static Proof checkpoints() {
        String column = "published_value";
        return new TableProof(
                "psychro/iapws_checkpoints",
                List.of("equation", "quantity", "T", "T_unit"),
                "Verification values. IF97 and IAPWS-95 are other equations for the same curve: they are met by SR1-86 as nearly"
                        + " as that is stated to agree.",
                List.of(
                        checkpoint("IAPWS_R14_08", SaturationFormula.IAPWS_R14_08, Phase.ICE)
                                .apply(Tolerance.of(1.0e-5, "the exponent 1/300 is kept to 12 digits")),
                        checkpoint("IAPWS_SR1", SaturationFormula.WAGNER_PRUSS_AUX, Phase.WATER)
                                .apply(Tolerance.printed(
                                        column, 2.0e-7, "611.6571 for 611.657, 101325.015 for 101325")),
                        checkpoint("WMO8_MAGNUS", SaturationFormula.WMO8_MAGNUS, Phase.WATER)
                                .apply(Tolerance.printed(column, 0.0, "the prefactor itself")),
                        new Comparison(
                                        column,
                                        Label.PUBLISHED,
                                        "",
                                        row -> 1.0e-6
                                                * SaturationFormula.WAGNER_PRUSS_AUX.pressurePa(
                                                        Phase.WATER, Units.celsius(row.number("T"))),
                                        Tolerance.of(
                                                row -> (row.number("T") < 323.0 ? 1.0e-4 : 1.3e-4) * row.number(column),
                                                "0.0099 % stated to 50 C; nothing is stated at 450 and 500 K, where 0.012 % is"
                                                        + " found"))
                                .by("WAGNER_PRUSS_AUX for another equation")
                                .where(row -> row.text("equation").matches("IF97.*|IAPWS-95"))));
    }

    private static Function<Tolerance, Comparison> checkpoint(String equation, SaturationFormula formula, Phase phase) {
        return tolerance -> new Comparison(
                        "published_value",
                        Label.PUBLISHED,
                        "",
                        row -> formula.pressurePa(phase, Units.celsius(row.number("T"))),
                        tolerance)
                .by(formula.name())
                .where(row -> row.text("equation").equals(equation));
    }
}
