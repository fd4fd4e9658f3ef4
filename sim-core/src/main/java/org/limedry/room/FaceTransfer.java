package org.limedry.room;

/**
 * Picks the transfer coefficients of a face from {@link Surfaces}.
 *
 * <p>Does not model the difference between walls, floors and ceilings, or how long a draught takes to settle after a door
 * is shut: a coefficient jumps with the event.
 */
public final class FaceTransfer {
    private FaceTransfer() {}

    /**
     * Returns the convection at a face in a room: the largest of those that apply.
     *
     * <p><b>Source:</b> 3, 5 and 10 W/(m2 K), FROM MEMORY; one abstract (Bednar and Dreyer) has the moisture transfer 2.8
     * times as high with a window open in winter, against 1.7 here. <b>Valid:</b> rooms. <b>Accuracy:</b> 2 to 5 W/(m2 K) for
     * still.
     *
     * @param surfaces the coefficients
     * @param openingOpen whether an opening of the room stands open
     * @param aimed whether a fan or heater is aimed at plaster
     * @return convection, W/(m2 K)
     */
    public static double insideWPerM2K(Surfaces surfaces, boolean openingOpen, boolean aimed) {
        double open = openingOpen ? surfaces.doorOpenWPerM2K() : 0.0;
        double blown = aimed ? surfaces.aimedWPerM2K() : 0.0;
        return Math.max(surfaces.stillWPerM2K(), Math.max(open, blown));
    }

    /**
     * Returns the convection at an outer face, {@code 4 + 4 v} with the ordinary coefficients.
     *
     * <p><b>Source:</b> EN ISO 6946, FROM MEMORY. <b>Valid:</b> plane walls. <b>Accuracy:</b> not stated.
     *
     * @param surfaces the coefficients
     * @param windMPerS wind at the building, m/s; at least 0
     * @return convection, W/(m2 K)
     */
    public static double outsideWPerM2K(Surfaces surfaces, double windMPerS) {
        return surfaces.outsideStillWPerM2K() + surfaces.outsideWindWPerM2KPerMPerS() * windMPerS;
    }

    /**
     * Returns the vapour transfer of a face, {@code 7e-9 h_c} with the ordinary coefficients.
     *
     * <p><b>Source:</b> Lewis relation, FROM MEMORY; the exact group gives 6.7e-9. <b>Valid:</b> air near 20 °C.
     * <b>Accuracy:</b> 5 %.
     *
     * @param surfaces the coefficients
     * @param convectionWPerM2K convection at the face, W/(m2 K); at least 0
     * @return vapour transfer, kg/(m2 s Pa)
     */
    public static double vapourSPerM(Surfaces surfaces, double convectionWPerM2K) {
        return surfaces.vapourPerConvectionKPerJ() * convectionWPerM2K;
    }
}
