package org.limedry.proof.benchmarks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.limedry.air.Phase;
import org.limedry.air.SaturationFormula;
import org.limedry.proof.figure.Label;
import org.limedry.proof.figure.Source;
import org.limedry.reference.ReferenceTable;
import org.limedry.units.Units;
import org.limedry.wall.WallView;

/** STEADY: U value, temperatures, vapour flow and condensation at contacts of three walls that have come to rest. */
final class SteadyProof implements Benchmark {
    private static final String TABLE = "benchmarks/STEADY";
    private static final Pattern CLIMATE = Pattern.compile("in (\\S+) C (\\S+) % out (\\S+) C (\\S+) %");
    private static final Pattern CONTACT = Pattern.compile("interface (\\d)");
    private static final double DAYS_OF_CONDENSATE = 30.0;

    @Override
    public String name() {
        return "STEADY";
    }

    @Override
    public String setUp() {
        return "Each wall and climate a run of 120 days from rest, judged over the last 30. No liquid, no latent heat, sorption of"
                + " 0.3 kg/m3: the pores hold more only from 99.99 % humidity up, so that what condenses gathers at its"
                + " contact. Vapour films of 1e-5 s/m stand for none; saturation is over ice where the contact that gets wet is"
                + " below 0 C.";
    }

    @Override
    public Source origin() {
        return new Source(
                Label.EXACT,
                "table benchmarks/STEADY, closed forms (U value as in ISO 6946, fRsi and condensation at contacts as in ISO 13788; formulae"
                        + " FROM MEMORY)");
    }

    @Override
    public String bands() {
        return "U and fRsi 0.1 %, temperatures 0.02 K, vapour flow and condensation 1 % (stated with the table); humidity 0.005, as in"
                + " ROOM_COATS; saturation pressures half of the printed digit";
    }

    @Override
    public List<Aim> aims() {
        return ReferenceTable.load(TABLE).rows().stream()
                .map(row -> new Aim(key(row), row.text("unit"), row.number("value"), band(row)))
                .toList();
    }

    private static String key(ReferenceTable.Row row) {
        String wall = row.text("case").replaceFirst("^([ABC]) .*?(; |$)", "$1 ").strip();
        return wall + ": " + row.text("quantity").replaceFirst(" \\(vapour pressure.*", "");
    }

    private static double band(ReferenceTable.Row row) {
        double value = row.number("value");
        return switch (row.text("unit")) {
            case "C" -> 0.02;
            case "W/m2K" -> 1.0e-3 * value;
            case "kg/m2s", "kg/m2" -> 0.01 * value;
            case "Pa" -> 5.1e-4 * Math.pow(10.0, Math.floor(Math.log10(value)) - 2.0);
            default -> row.text("quantity").startsWith("RH") ? 0.005 : 1.0e-3 * value;
        };
    }

    @Override
    public Map<String, Double> found(double gridFactor) {
        Map<String, Double> found = new HashMap<>();
        Map<String, SteadyWall.Rest> rests = new HashMap<>();
        List<ReferenceTable.Row> rows =
                new ArrayList<>(ReferenceTable.load(TABLE).rows());
        for (ReferenceTable.Row row : rows) {
            String text = row.text("case");
            if (text.startsWith("saturation")) {
                found.put(key(row), saturationPa(row.text("quantity")));
            } else if (row.text("quantity").startsWith("U ")) {
                found.put(key(row), SteadyWall.named(text).transmittance(gridFactor, 0.13));
            } else if (row.text("quantity").startsWith("f_Rsi")) {
                // Inside 1 C, outside 0 C: the temperature of the inner face is the factor.
                found.put(key(row), 1.0 - 0.25 * SteadyWall.named(text).transmittance(gridFactor, 0.25));
            } else {
                SteadyWall.Rest rest = rests.computeIfAbsent(text, climate -> rest(climate, gridFactor));
                found.put(key(row), value(rest, row.text("quantity")));
            }
        }
        return found;
    }

    private static double saturationPa(String quantity) {
        double celsius = Double.parseDouble(quantity.replaceAll("p_sat | C", ""));
        return SaturationFormula.ISO13788.pressurePa(celsius < 0.0 ? Phase.ICE : Phase.WATER, celsius);
    }

    private static SteadyWall.Rest rest(String text, double gridFactor) {
        Matcher climate = CLIMATE.matcher(text);
        if (!climate.find()) {
            throw new IllegalStateException("no climate in " + text);
        }
        return SteadyWall.named(text)
                .atRest(
                        gridFactor,
                        new SteadyWall.Air(
                                Double.parseDouble(climate.group(1)),
                                Units.fractionFromPercent(Double.parseDouble(climate.group(2)))),
                        new SteadyWall.Air(
                                Double.parseDouble(climate.group(3)),
                                Units.fractionFromPercent(Double.parseDouble(climate.group(4)))));
    }

    private static double value(SteadyWall.Rest rest, String quantity) {
        Matcher contact = CONTACT.matcher(quantity);
        boolean isAtContact = contact.find();
        WallView wall = rest.wall();
        if (quantity.startsWith("T ")) {
            double face = quantity.contains("inner") ? wall.innerCelsius() : wall.outerCelsius();
            return isAtContact ? rest.contactCelsius(Integer.parseInt(contact.group(1))) : face;
        }
        if (quantity.startsWith("RH")) {
            return rest.contactHumidity(Integer.parseInt(contact.group(1)));
        }
        if (quantity.startsWith("condensation rate")) {
            return rest.gainedKgPerM2() / Units.secondsFromDays(DAYS_OF_CONDENSATE);
        }
        return quantity.startsWith("condensate")
                ? rest.gainedKgPerM2()
                : wall.innerFlow().vapourKgPerM2S();
    }
}
