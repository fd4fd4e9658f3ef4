package org.limedry.cli.loggers;

import java.util.List;
import java.util.Locale;
import org.limedry.cli.readings.logger.InsideOutside;
import org.limedry.cli.readings.logger.Joined;
import org.limedry.cli.readings.logger.LoggerFile;
import org.limedry.cli.readings.logger.SideBySide;
import org.limedry.cli.readings.logger.Spans;
import org.limedry.climate.DryingPower;
import org.limedry.climate.SensorError;
import org.limedry.units.Units;

/** Two loggers told on the console. */
final class PairWords {
    private static final double GRAMS_PER_KG = 1000.0;
    private static final long SHORT_HOURS = 8;

    private PairWords() {}

    static List<String> sideBySide(SideBySide both, LoggerFile first, LoggerFile second) {
        double kelvin = both.temperatureK().median();
        double percent = Units.percentFromFraction(both.relativeHumidity().median());
        SensorError error = both.sensorError();
        String brief = both.span().toHours() < SHORT_HOURS ? " That is short: leave them together overnight." : "";
        return List.of(
                say("Side by side: %d readings of both, over %s.%s", both.pairs(), Spans.words(both.span()), brief),
                say(
                        "  %s reads %.2f C %s and %.1f %% %s than %s",
                        second.shown(),
                        Math.abs(kelvin),
                        kelvin < 0 ? "colder" : "warmer",
                        Math.abs(percent),
                        percent < 0 ? "drier" : "damper",
                        first.shown()),
                say("  to take that off, put into the reading plan of %s:", second.shown()),
                say("    temperatureOffsetK: %.2f", withoutMinusZero(second.temperatureOffsetK() - kelvin)),
                say("    humidityOffsetPercent: %.1f", withoutMinusZero(second.humidityOffsetPercent() - percent)),
                say(
                        "  what remains is the error of each sensor: %.2f C and %.1f %% (one standard deviation)",
                        error.temperatureK(), Units.percentFromFraction(error.relativeHumidity())),
                "  It cannot show what both get wrong together, nor what changes in other air or with time.",
                "",
                winter(error),
                say(
                        "  With two loggers never compared (0.5 C and 3 %%) it is %s: about half of it. That is normal.",
                        power(InsideOutside.ofAWinterDay(SensorError.usual()))),
                "  Believe bucket litres and hand tests before a difference of humidities.");
    }

    private static String winter(SensorError error) {
        return say(
                "Drying power on a winter day, 8 C and 85 %% in the room, 5 C and 90 %% outdoors: %s with these two.",
                power(InsideOutside.ofAWinterDay(error)));
    }

    private static String power(DryingPower power) {
        return say("%.1f +- %.1f g/m3", GRAMS_PER_KG * power.kgPerM3(), GRAMS_PER_KG * power.errorKgPerM3());
    }

    private static double withoutMinusZero(double value) {
        return Math.abs(value) < 0.005 ? 0.0 : value;
    }

    static List<String> insideOutside(InsideOutside both, SensorError error) {
        long unclear = both.pairs() - both.drier() - both.wetter();
        return List.of(
                say(
                        "Drying power of the air outdoors, by %d readings of both: %.1f +- %.1f g/m3 on the mean",
                        both.pairs(), GRAMS_PER_KG * both.meanKgPerM3(), GRAMS_PER_KG * both.errorKgPerM3()),
                say(
                        "  error of each sensor: %.2f C and %.1f %% (one standard deviation)",
                        error.temperatureK(), Units.percentFromFraction(error.relativeHumidity())),
                say("  drier outdoors, opening helps       %4d of %d readings", both.drier(), both.pairs()),
                say("  wetter outdoors, opening harms      %4d of %d readings", both.wetter(), both.pairs()),
                say("  no difference these loggers can tell %3d of %d readings", unclear, both.pairs()));
    }

    static List<String> joined(Joined joined, long toleranceSeconds) {
        return List.of(say(
                "Joined: %d pairs no more than %d s apart; %d readings stand alone, %d were there already, %d contradict (first file kept)",
                joined.matched(), toleranceSeconds, joined.alone(), joined.repeated(), joined.contradicting()));
    }

    private static String say(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }
}
