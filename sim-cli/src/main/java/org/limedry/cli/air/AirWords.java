package org.limedry.cli.air;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.limedry.air.MoistAir;
import org.limedry.air.Phase;
import org.limedry.air.Saturation;
import org.limedry.units.Units;

/** One state of air told on the console: what it means first, then the figures with their units. */
final class AirWords {
    private static final double GRAMS_PER_KG = 1000.0;

    private final MoistAir air;
    private final List<String> lines = new ArrayList<>();

    private AirWords(MoistAir air) {
        this.air = air;
    }

    /** Returns the lines for air and, if one is named, a wall. */
    static List<String> of(MoistAir air, OptionalDouble wallCelsius) {
        AirWords words = new AirWords(air);
        words.addMeaning();
        wallCelsius.ifPresent(words::addWallMeaning);
        words.lines.add("");
        words.addFigures();
        wallCelsius.ifPresent(wall -> words.figure(
                "relative humidity at the wall", Units.percentFromFraction(air.relativeHumidityAt(wall)), "%", 1));
        words.lines.add("");
        words.addBasis();
        return List.copyOf(words.lines);
    }

    private void addMeaning() {
        MoistAir full = new MoistAir(air.celsius(), 1.0, air.pressurePa(), air.saturation());
        double room = GRAMS_PER_KG * (full.absoluteHumidityKgPerM3() - air.absoluteHumidityKgPerM3());
        String takesUp = air.relativeHumidity() < 1.0
                ? say("can take up %s g more water per m3 before it is full", fixed(room, 1))
                : "is full: it takes up no more water";
        lines.add(say(
                "Air at %s C and %s %% relative humidity %s.",
                fixed(air.celsius(), 1), fixed(Units.percentFromFraction(air.relativeHumidity()), 0), takesUp));
        dewOrFrostCelsius()
                .ifPresent(dew -> lines.add(
                        say("%s forms on everything at %s C or colder.", dew < 0.0 ? "Frost" : "Dew", fixed(dew, 1))));
        air.wetBulbCelsius()
                .ifPresent(wet -> lines.add(say("A wet face in a draught cools towards %s C.", fixed(wet, 1))));
    }

    private void addWallMeaning(double wallCelsius) {
        double percent = Units.percentFromFraction(air.relativeHumidityAt(wallCelsius));
        boolean wet = air.condensesOn(wallCelsius)
                || wallCelsius <= dewOrFrostCelsius().orElse(Double.NaN);
        String meaning = wet
                ? (wallCelsius < 0.0 ? "frost forms on it" : "dew forms on it; it takes water from the air")
                : say("it stays free of dew; the air at its face is at %s %%", fixed(percent, 0));
        lines.add(say("A wall at %s C: %s.", fixed(wallCelsius, 1), meaning));
    }

    /** Frost begins before dew would: it forms at the frost point, even when humidity is counted over water. */
    private OptionalDouble dewOrFrostCelsius() {
        OptionalDouble frost = air.frostPointCelsius();
        return frost.orElse(0.0) < 0.0 ? frost : air.surfaceCelsiusAt(1.0);
    }

    private void addFigures() {
        figure("saturation pressure", air.saturationPressurePa(), "Pa", 2);
        figure("vapour pressure", air.vapourPressurePa(), "Pa", 2);
        figure("dew point over water", air.dewPointCelsius(), "C");
        figure("frost point over ice", air.frostPointCelsius(), "C");
        figure("wet bulb", air.wetBulbCelsius(), "C");
        figure("humidity ratio", GRAMS_PER_KG * air.humidityRatio(), "g/kg dry air", 3);
        figure("absolute humidity", GRAMS_PER_KG * air.absoluteHumidityKgPerM3(), "g/m3", 3);
        figure("enthalpy", air.enthalpyKJPerKg(), "kJ/kg dry air", 2);
        figure("specific volume", air.specificVolumeM3PerKg(), "m3/kg dry air", 4);
        figure("density", air.densityKgPerM3(), "kg/m3", 4);
    }

    private void addBasis() {
        Saturation saturation = air.saturation();
        lines.add(say(
                "Saturation by %s, %s.",
                saturation.formula(), saturation.formula().source()));
        String below = saturation.belowZero() == Phase.WATER ? "water" : "ice";
        lines.add(say(
                "Below 0 C humidity and wet bulb are counted over %s; ideal air at %s Pa.",
                below, fixed(air.pressurePa(), 0)));
    }

    private void figure(String name, OptionalDouble value, String unit) {
        value.ifPresentOrElse(
                number -> figure(name, number, unit, 2), () -> lines.add(say("  %-30s %12s", name, "none")));
    }

    private void figure(String name, double value, String unit, int decimals) {
        lines.add(say("  %-30s %12s %s", name, fixed(value, decimals), unit));
    }

    /** Returns a number without the sign of a zero that rounding made. */
    private static String fixed(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
    }

    private static String say(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }
}
