package org.limedry.study;

import org.limedry.units.Check;

/**
 * Electric heat with a thermostat, day and night.
 *
 * @param watts heat at full power, W; above 0
 * @param holdsCelsius air temperature that it holds as far as its power goes, C
 */
public record SteadyHeat(double watts, double holdsCelsius) {
    public SteadyHeat {
        Check.positive(watts, "watts", "W");
        Check.finite(holdsCelsius, "holdsCelsius", "C");
    }
}
