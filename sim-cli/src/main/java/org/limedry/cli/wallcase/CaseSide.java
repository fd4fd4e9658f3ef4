package org.limedry.cli.wallcase;

import org.limedry.climate.AirSeries;

/** What a face of a wall case looks at. */
sealed interface CaseSide {
    /**
     * Air behind a film.
     *
     * @param air the air over the run
     * @param heatTransferWPerM2K heat transfer, W/(m2 K)
     * @param vapourTransferSPerM vapour transfer, kg/(m2 s Pa)
     */
    record Film(AirSeries air, double heatTransferWPerM2K, double vapourTransferSPerM) implements CaseSide {}

    /**
     * A face whose own state is given.
     *
     * @param state temperature and relative humidity in its pores over the run
     */
    record Fixed(AirSeries state) implements CaseSide {}

    /** Neither heat nor water passes. */
    record Sealed() implements CaseSide {}
}
