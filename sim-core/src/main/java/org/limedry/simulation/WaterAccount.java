package org.limedry.simulation;

/**
 * The water account, kg. Each term is integrated by itself; {@link #residualKg()} is what does not close.
 *
 * @param laidKg water in the coats as laid
 * @param wettingKg misting and prewetting
 * @param peopleKg given off by people
 * @param groundKg given by bare earth floors and rising damp
 * @param plantAddedKg made by burning fuel in the room
 * @param chemicalReleasedKg set free by carbonation
 * @param chemicalBoundKg bound by hydraulic set
 * @param outByAirKg carried out by air, net
 * @param betweenRoomsKg carried to other rooms by doors, net; 0 for the whole site
 * @param throughWallsKg lost by outer faces, net
 * @param dehumidifierKg caught by dehumidifiers
 * @param runOffKg run off faces, and fallen out of the air as fog
 * @param changeInCoatsKg more in the coats than at the start
 * @param changeInWallsKg more in the walls than at the start
 * @param changeInAirKg more in the room air than at the start
 * @param changeInFilmKg more on faces than at the start
 * @param condensedKg vapour taken up by faces at or above 98.5 % relative humidity; a throughput, not in the sum
 * @param suckedBackKg of that, drunk by absorbent faces; a throughput, not in the sum
 */
public record WaterAccount(
        double laidKg,
        double wettingKg,
        double peopleKg,
        double groundKg,
        double plantAddedKg,
        double chemicalReleasedKg,
        double chemicalBoundKg,
        double outByAirKg,
        double betweenRoomsKg,
        double throughWallsKg,
        double dehumidifierKg,
        double runOffKg,
        double changeInCoatsKg,
        double changeInWallsKg,
        double changeInAirKg,
        double changeInFilmKg,
        double condensedKg,
        double suckedBackKg) {

    /** Returns what came in, kg. */
    public double grossInKg() {
        return laidKg + wettingKg + peopleKg + groundKg + plantAddedKg + chemicalReleasedKg;
    }

    /** Returns what left or was bound, kg. */
    public double outKg() {
        return chemicalBoundKg + outByAirKg + betweenRoomsKg + throughWallsKg + dehumidifierKg + runOffKg;
    }

    /** Returns what the stores hold more than at the start, kg. */
    public double changeKg() {
        return changeInCoatsKg + changeInWallsKg + changeInAirKg + changeInFilmKg;
    }

    /** Returns in minus out minus change, kg: rounding only, if the run is sound. */
    public double residualKg() {
        return grossInKg() - outKg() - changeKg();
    }
}
