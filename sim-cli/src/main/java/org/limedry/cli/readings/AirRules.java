package org.limedry.cli.readings;

import java.util.Locale;
import java.util.Optional;
import org.limedry.air.MoistAir;
import org.limedry.air.Phase;
import org.limedry.air.Saturation;
import org.limedry.air.SaturationFormula;
import org.limedry.units.Units;

/** What a state of air must be so that a saturation formula can answer: each rule in words, empty when it is kept. */
public final class AirRules {
    private final Saturation saturation;

    /** Takes what the states will be counted by. */
    public AirRules(Saturation saturation) {
        this.saturation = saturation;
    }

    /** Says what is wrong with a temperature of air or wall, °C. */
    public Optional<String> brokenByCelsius(double celsius) {
        SaturationFormula formula = saturation.formula();
        Phase phase = saturation.phaseAt(celsius);
        if (!formula.covers(phase)) {
            String side = phase == Phase.ICE ? "0 °C or above" : "below 0 °C";
            return Optional.of("must be " + side + ": " + formula + " has no formula over " + word(phase));
        }
        double low = formula.minCelsius(phase);
        double high = formula.maxCelsius(phase);
        boolean kept = celsius >= low && celsius <= high;
        return kept
                ? Optional.empty()
                : Optional.of(range(low, high) + " °C, the range of " + formula + " over " + word(phase));
    }

    /** Says what is wrong with a relative humidity, percent. */
    public Optional<String> brokenByRhPercent(double rhPercent) {
        boolean kept = rhPercent >= 0.0 && rhPercent <= 100.0;
        return kept ? Optional.empty() : Optional.of("must be 0 to 100 %");
    }

    /** Says what is wrong with a barometric pressure, Pa. */
    public Optional<String> brokenByPressurePa(double pressurePa) {
        double low = MoistAir.LOWEST_PRESSURE_PA;
        double high = MoistAir.HIGHEST_PRESSURE_PA;
        boolean kept = pressurePa >= low && pressurePa <= high;
        return kept ? Optional.empty() : Optional.of(range(low, high) + " Pa");
    }

    /** Says what is wrong with a temperature and a pressure that are each in order: whether water would boil. */
    public Optional<String> brokenByBoth(double celsius, double pressurePa) {
        boolean kept = saturation.pressurePa(celsius, pressurePa) < pressurePa;
        return kept ? Optional.empty() : Optional.of("must be above the saturation pressure at this temperature");
    }

    /** Returns the state that keeps all rules. */
    public MoistAir air(double celsius, double rhPercent, double pressurePa) {
        return new MoistAir(celsius, Units.fractionFromPercent(rhPercent), pressurePa, saturation);
    }

    private static String range(double low, double high) {
        return "must be " + plain(low) + " to " + plain(high);
    }

    private static String plain(double bound) {
        return bound == Math.rint(bound)
                ? String.format(Locale.ROOT, "%.0f", bound)
                : String.format(Locale.ROOT, "%s", bound);
    }

    private static String word(Phase phase) {
        return phase.name().toLowerCase(Locale.ROOT);
    }
}
