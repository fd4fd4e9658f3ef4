package org.limedry.room;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.limedry.units.Check;
import org.limedry.units.Units;

/**
 * The ways between one room and outdoors at one instant, reduced to what {@link AirFlow} needs: which openings stand
 * open, leakage and fans. Made once at each event, then asked many times.
 *
 * <p>Holds no doors to other rooms ({@link DoorFlow}), no wind direction and no flow that enters by one room and leaves
 * by another.
 *
 * @param gaps openings to outdoors that stand open
 * @param stackCoefficientM3PerS stack flow for {@code dT / T = 1}, m3/s; at least 0
 * @param crossAreaM2 discharge area for wind across the room, {@code Cd A_eff sqrt(dCp)}, m2; at least 0
 * @param openingFactor factor on the flow of openings; above 0
 * @param leakageM3PerS air through cracks, m3/s; at least 0
 * @param fansM3PerS air moved by fans, m3/s; at least 0
 */
public record OpenState(
        List<Gap> gaps,
        double stackCoefficientM3PerS,
        double crossAreaM2,
        double openingFactor,
        double leakageM3PerS,
        double fansM3PerS) {
    private static final double LEVEL_ACCURACY_M = 1.0e-12;
    private static final int MOST_LEVELS_TRIED = 200;

    /**
     * An opening to outdoors that stands open.
     *
     * @param areaM2 clear area, m2; above 0
     * @param heightM clear height, m; above 0
     */
    public record Gap(double areaM2, double heightM) {
        public Gap {
            Check.positive(areaM2, "areaM2", "m2");
            Check.positive(heightM, "heightM", "m");
        }
    }

    public OpenState {
        gaps = List.copyOf(gaps);
        Check.nonNegative(stackCoefficientM3PerS, "stackCoefficientM3PerS", "m3/s");
        Check.nonNegative(crossAreaM2, "crossAreaM2", "m2");
        Check.positive(openingFactor, "openingFactor", "");
        Check.nonNegative(leakageM3PerS, "leakageM3PerS", "m3/s");
        Check.nonNegative(fansM3PerS, "fansM3PerS", "m3/s");
    }

    /** Returns the ways between {@code room} and outdoors at {@code instant}. */
    public static OpenState of(RoomPlan room, Instant instant, AirExchange air) {
        List<Opening> open = room.openings().stream()
                .filter(opening -> opening.toRoom().isEmpty() && opening.open().isOn(instant))
                .toList();
        List<Gap> gaps = open.stream()
                .map(opening -> new Gap(opening.areaM2(), opening.heightM()))
                .toList();
        return new OpenState(
                gaps,
                stackCoefficientM3PerS(open, air.dischargeCoefficient()),
                air.dischargeCoefficient() * crossAreaM2(open) * Math.sqrt(air.windPressureDifference()),
                air.openingFactor(),
                room.volumeM3() * Units.perSecondFromPerHour(room.leakagePerHour()),
                fansM3PerS(room, instant));
    }

    /** Tells whether any opening to outdoors stands open. */
    public boolean anyOpen() {
        return !gaps.isEmpty();
    }

    private static double fansM3PerS(RoomPlan room, Instant instant) {
        double flowM3PerS = 0.0;
        for (Plant plant : room.plant()) {
            if (plant instanceof Plant.Fan fan && fan.on().isOn(instant)) {
                flowM3PerS += fan.flowM3PerS();
            }
        }
        return flowM3PerS;
    }

    /**
     * Returns {@code Cd sqrt(2 g) sum A_i sqrt(z_i - z)} over the openings above the neutral level z, where as much comes in
     * below as goes out above. For two openings this is {@code Cd A sqrt(2 g H)} with A in series.
     *
     * <p><b>Source:</b> orifice flow about a neutral level, FROM MEMORY. <b>Valid:</b> openings low against the distance of
     * their middles, room air of one temperature. <b>Accuracy:</b> not stated.
     */
    private static double stackCoefficientM3PerS(List<Opening> open, double dischargeCoefficient) {
        double lowestM = open.stream().mapToDouble(OpenState::middleM).min().orElse(0.0);
        double highestM = open.stream().mapToDouble(OpenState::middleM).max().orElse(0.0);
        if (!(highestM - lowestM > LEVEL_ACCURACY_M)) {
            return 0.0;
        }
        double neutralM = new BrentSolver(LEVEL_ACCURACY_M)
                .solve(
                        MOST_LEVELS_TRIED,
                        levelM -> rootSum(open, 1.0, levelM) - rootSum(open, -1.0, levelM),
                        lowestM,
                        highestM);
        return dischargeCoefficient * Math.sqrt(2.0 * AirFlow.GRAVITY_M_PER_S2) * rootSum(open, 1.0, neutralM);
    }

    /** Returns {@code sum A_i sqrt(z_i - z)} over the openings above a level (side 1) or below it (side -1). */
    private static double rootSum(List<Opening> open, double side, double levelM) {
        return open.stream()
                .mapToDouble(opening -> opening.areaM2() * Math.sqrt(Math.max(0.0, side * (middleM(opening) - levelM))))
                .sum();
    }

    /** Returns the largest area in series of one side of the house against all others; openings that name no side take no part. */
    private static double crossAreaM2(List<Opening> open) {
        Map<String, Double> areaBySideM2 = new HashMap<>();
        double allM2 = 0.0;
        for (Opening opening : open) {
            if (!opening.facing().isBlank()) {
                areaBySideM2.merge(opening.facing(), opening.areaM2(), Double::sum);
                allM2 += opening.areaM2();
            }
        }
        double largestM2 = 0.0;
        for (double sideM2 : areaBySideM2.values()) {
            largestM2 = Math.max(largestM2, AirFlow.inSeriesM2(sideM2, allM2 - sideM2)); // 0 against no other side
        }
        return largestM2;
    }

    private static double middleM(Opening opening) {
        return opening.sillM() + 0.5 * opening.heightM();
    }
}
