package org.limedry.study.airing;

import java.util.Set;
import org.limedry.air.CarbonDioxideContent;
import org.limedry.lime.Carbonation;
import org.limedry.lime.CoatPlan;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Scenario;
import org.limedry.wall.WallPlan;

/**
 * The fresh air that lime needs to harden, whether or not it is dry: it takes its carbon dioxide from it.
 *
 * @param takenKg carbon dioxide taken up by the coats over the wait, kg
 * @param needM3PerS fresh air that keeps the room at {@link Carbonation#STARVED_PPM} while they take that, m3/s
 * @param lowestPpm lowest content of the room air over the wait, parts per million
 * @param meanPpm mean content, parts per million
 */
public record Hardening(double takenKg, double needM3PerS, double lowestPpm, double meanPpm) {
    /** Returns the pace of hardening against open air, fraction: the front moves with the content of the air. */
    public double pace(double outdoorPpm) {
        return meanPpm / outdoorPpm;
    }

    /**
     * Returns the carbon dioxide that all coats on some walls take up until they are hard right through.
     *
     * <p>{@code sum A d w_CH D 0.594}, with the share D of the lime that turns to carbonate, {@link Carbonation#DEGREE}.
     *
     * @return kg
     */
    public static double wholeKg(Scenario scenario, Set<String> walls) {
        return scenario.coats().stream()
                .filter(coat -> walls.contains(coat.wall()))
                .mapToDouble(coat -> areaM2(scenario, coat) * takenKgPerM2(coat, coat.thicknessM()))
                .sum();
    }

    /** Returns the carbon dioxide that the coats on some walls took up over a run, kg. */
    static double takenKg(Scenario scenario, Outcome outcome, Set<String> walls) {
        double sum = 0.0;
        for (int i = 0; i < scenario.coats().size(); i++) {
            CoatPlan coat = scenario.coats().get(i);
            if (walls.contains(coat.wall())) {
                sum += areaM2(scenario, coat)
                        * takenKgPerM2(coat, outcome.coats().get(i).carbonatedM());
            }
        }
        return sum;
    }

    /**
     * Returns the fresh air that brings carbon dioxide as fast as it is taken while the room stands at a lower content than
     * outdoors: {@code G = g / (c(C_o) - c(C))}, the steady balance of the room.
     *
     * @param takenKgPerS taken up, kg/s; at least 0
     * @param outdoorPpm outdoors, parts per million
     * @param roomPpm content at which the room is held, parts per million; below {@code outdoorPpm}
     * @param celsius temperature at which the air is counted, C
     * @param pressurePa air pressure, Pa
     * @return m3/s
     */
    public static double neededM3PerS(
            double takenKgPerS, double outdoorPpm, double roomPpm, double celsius, double pressurePa) {
        return takenKgPerS / CarbonDioxideContent.kgPerM3(outdoorPpm - roomPpm, celsius, pressurePa);
    }

    private static double takenKgPerM2(CoatPlan coat, double depthM) {
        return Carbonation.carbonDioxideTakenKgPerM2(
                Carbonation.carbonatedKgPerM2(coat.mortar().calciumHydroxideKgPerM3(), depthM));
    }

    private static double areaM2(Scenario scenario, CoatPlan coat) {
        return scenario.walls().stream()
                .filter(wall -> wall.name().equals(coat.wall()))
                .mapToDouble(WallPlan::areaM2)
                .findFirst()
                .orElseThrow();
    }
}
