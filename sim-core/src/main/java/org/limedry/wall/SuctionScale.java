package org.limedry.wall;

/**
 * The moisture variable of a wall, {@code u = ln(p + shift)} of the suction p.
 *
 * <p>Sites have no shift: u is the logarithm of suction. Walls of tabulated materials have one of 1000 Pa: u is the
 * logarithm of suction when dry and as good as linear in it near saturation, where a table holds water and conductivity
 * constant and the logarithm would let every slope vanish at once. Suction then may pass below 0 by less than the shift,
 * as the pressure of water standing in full pores.
 *
 * @param shiftPa the shift, Pa; at least 0
 */
record SuctionScale(double shiftPa) {
    static final SuctionScale LOGARITHM = new SuctionScale(0.0);
    static final SuctionScale SHIFTED = new SuctionScale(1000.0);

    /** Returns the suction at u, Pa. */
    double suctionPa(double u) {
        return Math.exp(u) - shiftPa;
    }

    /** Returns u at a suction, Pa. */
    double of(double suctionPa) {
        return Math.log(suctionPa + shiftPa);
    }
}
