package org.limedry.proof.tables;

import java.util.ArrayList;
import java.util.List;
import org.limedry.air.AirConstants;
import org.limedry.air.MoistAir;
import org.limedry.air.Saturation;
import org.limedry.air.SaturationFormula;
import org.limedry.air.TemperatureFactor;
import org.limedry.proof.figure.Claim;
import org.limedry.proof.figure.Expected;
import org.limedry.proof.figure.Figure;
import org.limedry.proof.figure.Label;
import org.limedry.proof.figure.Proof;
import org.limedry.proof.figure.Source;
import org.limedry.proof.figure.Standing;
import org.limedry.reference.ReferenceTable;
import org.limedry.units.Units;

/** What can be computed of the definitions and criteria of ISO 13788 and DIN 4108-2. */
final class RoomClimateClasses implements Proof {
    private static final String TABLE = "psychro/iso13788_reference";
    private static final int CLASSES = 4;

    @Override
    public String name() {
        return "iso13788_reference";
    }

    @Override
    public Kind kind() {
        return Kind.TABLE;
    }

    @Override
    public String setUp() {
        return "The minimum requirement is the mould criterion of 80 % at 20 C, 50 % and -5 C; a vapour excess in kg/m3 at 20 C is"
                + " the pressure excess beside it. The other rows are definitions in words.";
    }

    @Override
    public String source() {
        return ReferenceTable.load(TABLE).provenance().source();
    }

    @Override
    public String bands() {
        return "half of the printed digit; class limits 0.5 %, since 270.6 is printed as 270 (the limits are FROM MEMORY: this"
                + " shows only that the two columns agree)";
    }

    @Override
    public List<Figure> figures() {
        List<Figure> figures = new ArrayList<>();
        Saturation iso = Rows.overIce(SaturationFormula.ISO13788);
        double mould = new MoistAir(20.0, 0.50, Rows.ONE_ATMOSPHERE_PA, iso)
                .surfaceCelsiusAt(0.8)
                .orElseThrow();
        ReferenceTable.Row minimum = row("minimum requirement (Germany)");
        // "fRsi >= 0.70 at t_i=20 C, ..."
        double required = Double.parseDouble(text(minimum).replaceAll("fRsi >= | at .*", ""));
        figures.add(figure(
                "fRsi for 80 % at 20 C, 50 %, -5 C",
                "-",
                new Source(Label.PUBLISHED, TABLE + " line " + minimum.line()),
                Expected.near(required, 0.005),
                TemperatureFactor.ofSurface(mould, 20.0, -5.0)));
        double pascalPerDensity = AirConstants.VAPOUR_GAS_CONSTANT_J_PER_KG_K * Units.kelvin(20.0);
        for (int humidityClass = 1; humidityClass <= CLASSES; humidityClass++) {
            ReferenceTable.Row row = row("humidity class " + humidityClass + " upper limit");
            String[] limits = text(row).split("[ /]+", -1);
            double pressurePa = Double.parseDouble(limits[0]);
            figures.add(figure(
                    "upper limit of humidity class " + humidityClass,
                    "Pa",
                    new Source(
                            Label.COMPUTED,
                            TABLE + " line " + row.line() + ", two columns FROM MEMORY against each other"),
                    Expected.near(pressurePa, 0.005 * pressurePa),
                    Double.parseDouble(limits[2]) * pascalPerDensity));
        }
        return List.copyOf(figures);
    }

    private Figure figure(String quantity, String unit, Source source, Expected expected, double found) {
        Claim claim = new Claim(quantity, unit, source, expected, bands(), new Standing.Sound());
        return new Figure(name(), "value_or_formula", claim, found);
    }

    private static String text(ReferenceTable.Row row) {
        return row.text("value_or_formula");
    }

    private static ReferenceTable.Row row(String item) {
        return ReferenceTable.load(TABLE).rows().stream()
                .filter(row -> row.text("item").equals(item))
                .findFirst()
                .orElseThrow();
    }
}
