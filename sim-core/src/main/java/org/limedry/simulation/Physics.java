package org.limedry.simulation;

import org.limedry.room.AirExchange;
import org.limedry.room.Surfaces;
import org.limedry.room.VapourExchange;
import org.limedry.wall.Constants;

/**
 * Constants and coefficients of a run.
 *
 * @param constants constants of moist porous materials
 * @param surfaces transfer at faces
 * @param air how air carries vapour and heat
 * @param airHeat heat that a volume of air carries
 * @param outdoorCarbonDioxidePpm carbon dioxide outdoors, parts per million
 * @param fogFalls whether vapour above saturation falls out of the air of a room; benchmark sheets know no fog
 */
public record Physics(
        Constants constants,
        Surfaces surfaces,
        AirExchange air,
        VapourExchange.HeatCapacity airHeat,
        double outdoorCarbonDioxidePpm,
        boolean fogFalls) {
    /** Returns the constants and coefficients used for sites, as listed in the physics notes. */
    public static Physics ordinary() {
        return new Physics(
                Constants.ordinary(),
                Surfaces.ordinary(),
                AirExchange.ordinary(),
                new VapourExchange.HeatCapacity.OfIncomingAir(),
                420.0,
                true);
    }
}
