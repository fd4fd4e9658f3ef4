package org.limedry.proof.tables;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.limedry.air.MoistAir;
import org.limedry.air.Phase;
import org.limedry.air.SaturationFormula;
import org.limedry.proof.figure.Label;
import org.limedry.proof.figure.Proof;
import org.limedry.reference.ReferenceTable;
import org.limedry.units.Units;

/** Dew and frost points. */
final class DewPointTables {
    private static final String COLUMN = "dewpoint_published_C";
    private static final double COLDEST_CELSIUS = -40.0;
    private static final int HALVINGS = 60;

    private DewPointTables() {}

    static List<Proof> all() {
        return List.of(published(), deviation());
    }

    private static Proof published() {
        return new TableProof(
                "psychro/dewpoint_published",
                List.of("source_id", "t_C", "rh_pct"),
                "Trade tables, by WMO Magnus. Below 0 C such tables print frost points: the nearer of dew and frost point is"
                        + " taken. Two rows are misprints, left in.",
                List.of(
                        dewPoint("", Tolerance.of(0.06, "0.06 K, stated with the table: rows within the print")),
                        dewPoint("LOOSE", Tolerance.of(0.25, "0.25 K, stated with the table: rounded by hand"))
                                .by("WMO8_MAGNUS, rough rows"),
                        dewPoint("FAILS", Tolerance.of(0.25, "0.25 K, as for rough rows"))
                                .by("WMO8_MAGNUS, rows flagged FAILS")
                                .inError(row -> "misprint: should be "
                                        + (row.number("t_C") == 16.0 ? "15.2, printed 15.5" : "22.7, printed 23.7")),
                        own(
                                "wmo8_dewpoint_water_C",
                                row -> Rows.air(row).dewPointCelsius().orElseThrow()),
                        own(
                                "wmo8_frostpoint_ice_C",
                                row -> Rows.air(row).frostPointCelsius().orElseThrow())));
    }

    private static Comparison dewPoint(String flag, Tolerance tolerance) {
        return new Comparison(COLUMN, Label.PUBLISHED, "C", DewPointTables::nearest, tolerance)
                .by("WMO8_MAGNUS")
                .flagged(flag);
    }

    private static Comparison own(String column, ToDoubleFunction<ReferenceTable.Row> found) {
        return new Comparison(
                column, Label.COMPUTED, "C", found, Tolerance.printed(column, 1.0e-9, "the same formula: rounding"));
    }

    private static double nearest(ReferenceTable.Row row) {
        MoistAir air = Rows.air(row);
        double water = air.dewPointCelsius().orElseThrow();
        double ice = air.frostPointCelsius().orElse(water);
        double printed = row.number(COLUMN);
        return Math.abs(water - printed) < Math.abs(ice - printed) ? water : ice;
    }

    private static Proof deviation() {
        SaturationFormula reference = SaturationFormula.WAGNER_PRUSS_AUX;
        Comparison own = own("iapws_dewpoint_C", row -> dewPoint(reference, row));
        Comparison furthest = new Comparison(
                "max_dev_K",
                Label.COMPUTED,
                "K",
                row -> dewPoint(SaturationFormula.valueOf(row.text("formula_id")), row) - dewPoint(reference, row),
                Tolerance.printed("max_dev_K", 0.0, "the same formula: rounding"));
        return new TableProof(
                "psychro/dewpoint_deviation",
                List.of("formula_id", "air_t_range_C", "rh_min_pct"),
                "Largest deviation of each formula's dew point from IAPWS, at the point where it is largest.",
                List.of(own, furthest));
    }

    /** The same formula forwards and backwards over water, out of its range too, by bisection. */
    private static double dewPoint(SaturationFormula formula, ReferenceTable.Row row) {
        double low = COLDEST_CELSIUS;
        double high = row.number("at_t_C");
        double pressure =
                Units.fractionFromPercent(row.number("at_rh_pct")) * formula.extrapolatedPressurePa(Phase.WATER, high);
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (low + high);
            boolean below = formula.extrapolatedPressurePa(Phase.WATER, middle) < pressure;
            low = below ? middle : low;
            high = below ? high : middle;
        }
        return low;
    }
}
