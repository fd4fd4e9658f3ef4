package org.limedry.study.airing;

/**
 * What came of one level.
 *
 * @param level what was tried
 * @param waiting how long the room keeps its plasterer waiting
 * @param freshAir fresh air over the wait
 * @param hardening carbon dioxide over the wait
 * @param watch what the watch over the coats said
 * @param wallCelsius mean temperature of the plastered faces over the wait, C
 * @param water where the water of the room went over the run
 * @param heatKwh heat given in the room, kWh
 */
public record AiringFinding(
        AiringLevel level,
        RoomWait waiting,
        FreshAir freshAir,
        Hardening hardening,
        Watch watch,
        double wallCelsius,
        Water water,
        double heatKwh) {
    /**
     * Water of the room.
     *
     * @param outByAirKg carried out by air, net, kg
     * @param condensedKg condensed on its faces on the way, kg
     * @param dehumidifierKg caught by dehumidifiers, kg
     */
    public record Water(double outByAirKg, double condensedKg, double dehumidifierKg) {}

    /**
     * What the watch over the coats said.
     *
     * @param tooFast whether a coat of the room lost water faster than lime can in its first days
     * @param dryButSoft whether a machine dried the room while it was shut and starved of carbon dioxide
     */
    public record Watch(boolean tooFast, boolean dryButSoft) {}

    /** Returns the wait, days; infinity if it did not end. */
    public double days() {
        return waiting.likelyDays().orElse(Double.POSITIVE_INFINITY);
    }

    /** Tells whether the lime neither dries too fast nor dries without hardening. */
    public boolean isSound() {
        return !watch.tooFast() && !watch.dryButSoft();
    }
}
