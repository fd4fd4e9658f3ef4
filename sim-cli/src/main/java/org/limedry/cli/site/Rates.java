package org.limedry.cli.site;

import java.util.Optional;

/**
 * The firm's own rates; none is shipped.
 *
 * @param currency what the money is called; may be empty
 * @param electricityPerKWh one kWh of electricity, if told
 * @param fuelPerKWh one kWh of heat from fuel, if told
 * @param labourPerHour one hour of labour
 * @param waitingPerDay one day of the job
 */
public record Rates(
        String currency,
        Optional<Double> electricityPerKWh,
        Optional<Double> fuelPerKWh,
        double labourPerHour,
        double waitingPerDay) {}
