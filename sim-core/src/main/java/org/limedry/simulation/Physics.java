package org.limedry.simulation;

import org.limedry.room.AirExchange;
import org.limedry.room.Surfaces;
import org.limedry.wall.Constants;

/**
 * Constants and coefficients of a run.
 *
 * @param constants constants of moist porous materials
 * @param surfaces transfer at faces
 * @param air how air carries vapour and heat
 * @param outdoorCarbonDioxidePpm carbon dioxide outdoors, parts per million
 */
public record Physics(Constants constants, Surfaces surfaces, AirExchange air, double outdoorCarbonDioxidePpm) {
    /** Returns the constants and coefficients used for sites, as listed in the physics notes. */
    public static Physics ordinary() {
        return new Physics(Constants.ordinary(), Surfaces.ordinary(), AirExchange.ordinary(), 420.0);
    }
}
