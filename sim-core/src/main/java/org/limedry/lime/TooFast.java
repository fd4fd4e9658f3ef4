package org.limedry.lime;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.limedry.units.Check;

/**
 * The watch for a coat that dries too fast in its first days: lime that loses its water too soon shrinks, cracks, dusts and
 * lets go.
 *
 * <p>Every limit is judgement without a source (material notes E, "drivers to flag"); shrinkage itself is not computed.
 */
public final class TooFast {
    /** Age up to which the watch is kept, days. */
    public static final double WATCHED_DAYS = 3.0;

    /** Loss that an unhaired coat stands, kg/(m2 h). */
    public static final double MOST_LOSS_KG_PER_M2_H = 0.5;

    /** Loss that a haired coat stands, kg/(m2 h): hair holds fine cracks together. */
    public static final double MOST_LOSS_HAIRED_KG_PER_M2_H = 0.7;

    /** Relative humidity of the room below which the air is too dry, fraction. */
    public static final double DRY_AIR = 0.50;

    /** Relative humidity below which a draught counts, fraction: moving damp air is what a coat needs. */
    public static final double DRAUGHT_COUNTS_BELOW = 0.65;

    /** Share of the mix water drawn by the wall in the first hour above which the wall should have been wetted. */
    public static final double MOST_SUCTION = 0.60;

    private TooFast() {}

    /**
     * What a coat goes through.
     *
     * @param ageDays days since it was laid; at least 0
     * @param lossKgPerM2H water leaving its face, kg/(m2 h)
     * @param relativeHumidity of the room air, fraction; at least 0
     * @param draught whether a door or fan moves the air before it
     * @param heaterAimed whether a heater or its draught meets it
     * @param drawnInFirstHour share of its mix water that the wall drew in the first hour, fraction; 0 if not known
     * @param haired whether it is haired
     */
    public record Exposure(
            double ageDays,
            double lossKgPerM2H,
            double relativeHumidity,
            boolean draught,
            boolean heaterAimed,
            double drawnInFirstHour,
            boolean haired) {
        public Exposure {
            Check.nonNegative(ageDays, "ageDays", "days");
            Check.finite(lossKgPerM2H, "lossKgPerM2H", "kg/(m2 h)");
            Check.nonNegative(relativeHumidity, "relativeHumidity", "");
            Check.inClosed(drawnInFirstHour, 0.0, 1.0, "drawnInFirstHour", "");
        }
    }

    /** How loud the watch speaks. */
    public enum Level {
        /** Nothing to say. */
        QUIET,
        /** One thing is against the coat. */
        WATCH,
        /** It is losing too much, or several things come together. */
        ACT
    }

    /** What a plasterer can do about it. */
    public enum Remedy {
        /** Mist the coat. */
        MIST,
        /** Hang damp hessian or sheeting before it. */
        SCREEN,
        /** Turn the heat down. */
        TURN_DOWN,
        /** Turn the heater or fan away from the plaster. */
        TURN_AWAY,
        /** Shut the draught out. */
        SHUT,
        /** Wet the wall before the next coat, until it stays damp but not glossy. */
        WET_THE_WALL
    }

    /** What is against the coat. */
    public enum Cause {
        /** The loss itself. */
        LOSS,
        /** Dry air. */
        DRY_AIR,
        /** Moving air that is not damp. */
        DRAUGHT,
        /** A heater aimed at it. */
        AIMED_HEATER,
        /** A thirsty wall. */
        SUCTION;

        private List<Remedy> remedies() {
            return switch (this) {
                case LOSS -> List.of(Remedy.MIST, Remedy.SCREEN, Remedy.TURN_DOWN);
                case DRY_AIR -> List.of(Remedy.MIST, Remedy.TURN_DOWN);
                case DRAUGHT -> List.of(Remedy.SHUT, Remedy.SCREEN);
                case AIMED_HEATER -> List.of(Remedy.TURN_AWAY);
                case SUCTION -> List.of(Remedy.MIST, Remedy.WET_THE_WALL);
            };
        }
    }

    /**
     * What the watch says.
     *
     * @param level how loud
     * @param causes what is against the coat
     * @param remedies what to do, each once
     */
    public record Finding(Level level, List<Cause> causes, List<Remedy> remedies) {
        public Finding {
            causes = List.copyOf(causes);
            remedies = List.copyOf(remedies);
        }
    }

    /** Looks at a coat. */
    public static Finding look(Exposure exposure) {
        List<Cause> causes = exposure.ageDays() <= WATCHED_DAYS ? causes(exposure) : List.of();
        Set<Remedy> remedies = new LinkedHashSet<>();
        causes.forEach(cause -> remedies.addAll(cause.remedies()));
        return new Finding(level(causes), causes, List.copyOf(remedies));
    }

    private static List<Cause> causes(Exposure exposure) {
        List<Cause> causes = new ArrayList<>();
        if (exposure.lossKgPerM2H() > (exposure.haired() ? MOST_LOSS_HAIRED_KG_PER_M2_H : MOST_LOSS_KG_PER_M2_H)) {
            causes.add(Cause.LOSS);
        }
        if (exposure.relativeHumidity() < DRY_AIR) {
            causes.add(Cause.DRY_AIR);
        }
        if (exposure.draught() && exposure.relativeHumidity() < DRAUGHT_COUNTS_BELOW) {
            causes.add(Cause.DRAUGHT);
        }
        if (exposure.heaterAimed()) {
            causes.add(Cause.AIMED_HEATER);
        }
        if (exposure.drawnInFirstHour() > MOST_SUCTION) {
            causes.add(Cause.SUCTION);
        }
        return causes;
    }

    private static Level level(List<Cause> causes) {
        if (causes.isEmpty()) {
            return Level.QUIET;
        }
        boolean grave = causes.contains(Cause.LOSS) || causes.contains(Cause.AIMED_HEATER);
        return grave || causes.size() > 1 ? Level.ACT : Level.WATCH;
    }
}
