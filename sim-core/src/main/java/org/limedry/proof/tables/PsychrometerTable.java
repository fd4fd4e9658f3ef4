package org.limedry.proof.tables;

import java.util.ArrayList;
import java.util.List;
import org.limedry.air.AdiabaticSaturation;
import org.limedry.air.HumidityRatio;
import org.limedry.air.Phase;
import org.limedry.air.Psychrometer;
import org.limedry.air.Saturation;
import org.limedry.air.SaturationFormula;
import org.limedry.proof.figure.Claim;
import org.limedry.proof.figure.Expected;
import org.limedry.proof.figure.Figure;
import org.limedry.proof.figure.Label;
import org.limedry.proof.figure.Proof;
import org.limedry.proof.figure.Source;
import org.limedry.proof.figure.Standing;
import org.limedry.reference.ReferenceTable;
import org.limedry.units.Units;

/** Readings of dry and wet bulb. */
record PsychrometerTable(TableProof rows) implements Proof {
    private static final String TABLE = "psychro/psychrometer_published";
    private static final String SCHOOL = "RH_FOSS";
    private static final String BUREAU = "RH_WB1071";
    private static final String COLUMN = "rh_published_pct";
    private static final Psychrometer PLAIN = new Psychrometer(6.62e-4, 0.0);

    PsychrometerTable() {
        this(new TableProof(
                TABLE,
                List.of("source_id", "t_dry_C", "depression_K"),
                "A school table over water, and a Weather Bureau table over ice with a frozen wick. The latter is met by a"
                        + " psychrometer and not by adiabatic saturation: how far that is away is a figure of its own.",
                List.of(
                        published(SCHOOL, 2.0, "2 % RH").by("adiabatic saturation, WMO8_MAGNUS"),
                        reading(SCHOOL, 3.3, "3.3 % RH").by("psychrometer A = 6.62e-4, WMO8_MAGNUS"),
                        reading(BUREAU, 1.3, "1.3 % RH").by("Ferrel's psychrometer, WMO8_MAGNUS"),
                        new Comparison(
                                "rh_psychrometer_formula_pct",
                                Label.COMPUTED,
                                "%",
                                row -> psychrometer(row, reference(row)),
                                same("rh_psychrometer_formula_pct")),
                        new Comparison(
                                "rh_thermodynamic_wetbulb_pct",
                                Label.COMPUTED,
                                "%",
                                row -> adiabatic(row, reference(row)),
                                same("rh_thermodynamic_wetbulb_pct")))));
    }

    @Override
    public String name() {
        return rows.name();
    }

    @Override
    public Kind kind() {
        return rows.kind();
    }

    @Override
    public String setUp() {
        return rows.setUp();
    }

    @Override
    public String source() {
        return rows.source();
    }

    @Override
    public String bands() {
        return rows.bands();
    }

    @Override
    public List<Figure> figures() {
        List<Figure> figures = new ArrayList<>(rows.figures());
        double furthest = ReferenceTable.load(TABLE).rows().stream()
                .filter(row -> row.text("source_id").equals(BUREAU))
                .mapToDouble(row -> Math.abs(adiabatic(row, SaturationFormula.WMO8_MAGNUS) - row.number(COLUMN)))
                .max()
                .orElse(Double.NaN);
        Claim claim = new Claim(
                "largest difference, " + BUREAU,
                "%",
                new Source(Label.COMPUTED, TABLE + ", its note, worked out with the table"),
                Expected.near(8.0, 0.5),
                "\"up to 8 %\", a whole number",
                new Standing.Sound());
        figures.add(new Figure(name(), COLUMN + " by adiabatic saturation, which does not meet it", claim, furthest));
        return List.copyOf(figures);
    }

    private static Comparison published(String source, double tolerance, String words) {
        return new Comparison(
                        COLUMN,
                        Label.PUBLISHED,
                        "%",
                        row -> adiabatic(row, SaturationFormula.WMO8_MAGNUS),
                        Tolerance.of(tolerance, words + ", stated with the table"))
                .where(row -> row.text("source_id").equals(source));
    }

    private static Comparison reading(String source, double tolerance, String words) {
        return new Comparison(
                        COLUMN,
                        Label.PUBLISHED,
                        "%",
                        row -> psychrometer(row, SaturationFormula.WMO8_MAGNUS),
                        Tolerance.of(tolerance, words + ", stated with the table"))
                .where(row -> row.text("source_id").equals(source));
    }

    private static Tolerance same(String column) {
        return Tolerance.printed(column, 5.0e-6, "the same formula; the pressure is printed to 5 digits");
    }

    private static boolean isFrozen(ReferenceTable.Row row) {
        return row.text("rh_relative_to").equals("ice");
    }

    private static SaturationFormula reference(ReferenceTable.Row row) {
        return Rows.iapws(wick(row));
    }

    private static Phase wick(ReferenceTable.Row row) {
        return isFrozen(row) ? Phase.ICE : Phase.WATER;
    }

    /** The pressure of the school table is assumed and stands as text in its rows. */
    private static double pressurePa(ReferenceTable.Row row) {
        return isFrozen(row) ? 1000.0 * row.number("p_kPa") : Rows.ONE_ATMOSPHERE_PA;
    }

    private static double psychrometer(ReferenceTable.Row row, SaturationFormula formula) {
        Psychrometer psychrometer = isFrozen(row) ? Psychrometer.FERREL : PLAIN;
        double vapourPa = psychrometer.vapourPressurePa(
                row.number("t_dry_C"), row.number("t_wet_C"), pressurePa(row), wick(row), formula);
        return Units.percentFromFraction(vapourPa / formula.pressurePa(wick(row), row.number("t_dry_C")));
    }

    private static double adiabatic(ReferenceTable.Row row, SaturationFormula formula) {
        Saturation saturation = Rows.overIce(formula);
        double ratio = AdiabaticSaturation.humidityRatio(
                row.number("t_dry_C"), row.number("t_wet_C"), pressurePa(row), wick(row), saturation);
        return Units.percentFromFraction(HumidityRatio.vapourPressurePa(ratio, pressurePa(row))
                / saturation.pressurePa(row.number("t_dry_C"), pressurePa(row)));
    }
}
