package org.limedry.lime;

import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.limedry.material.Assumed;
import org.limedry.reference.Estimate;
import org.limedry.units.Check;

/**
 * The named rules for when the next coat may go on. A firm's own rule is a {@link ReadinessRule} with its own name.
 *
 * <p>Fitted to loose figures of practice, not validated; three of 78 rules tried fitted equally well.
 */
public final class ReadinessRules {
    /** Geometric mean suction of a coat that is green hard, kPa. */
    public static final Assumed GREEN_HARD_SUCTION = new Assumed(
            "green-hard, mean suction of the coat",
            "kPa",
            new Estimate(300.0, 100.0, 1000.0),
            true,
            "assumed",
            "fitted to loose figures of practice; not validated");

    /** Age at 20 C of a coat that is green hard, days. */
    public static final Assumed GREEN_HARD_AGE = new Assumed(
            "green-hard, age at 20 C", "days", new Estimate(2.0, 1.0, 3.0), false, "assumed", "as the suction");

    /** Relative humidity at the face of a coat that is dry and white, percent. */
    public static final Assumed DRY_WHITE_FACE = new Assumed(
            "dry-white, humidity at the face", "%", new Estimate(98.0, 95.0, 99.0), false, "assumed", "judgement");

    private static final String GREEN_HARD = "green-hard";
    private static final String DRY_WHITE = "dry-white";
    private static final Pattern DAYS = Pattern.compile("days:\\s*(\\d+(?:\\.\\d+)?)");
    private static final double PA_PER_KPA = 1000.0;

    private ReadinessRules() {}

    /**
     * Returns the rule of that name at its likely limits.
     *
     * @param name "green-hard", "dry-white" or "days:N" with N days on the calendar
     * @throws IllegalArgumentException if there is none of that name
     */
    public static ReadinessRule named(String name) {
        Matcher days = DAYS.matcher(name);
        if (days.matches()) {
            return days(Double.parseDouble(days.group(1)));
        }
        double suctionPa = GREEN_HARD_SUCTION.estimate().likely() * PA_PER_KPA;
        double ageDays = GREEN_HARD_AGE.estimate().likely();
        return switch (name) {
            case GREEN_HARD -> greenHard(suctionPa, ageDays);
            case DRY_WHITE ->
                dryWhite(suctionPa, ageDays, DRY_WHITE_FACE.estimate().likely() / 100.0);
            default ->
                throw new IllegalArgumentException("rule: must be " + GREEN_HARD + ", " + DRY_WHITE
                        + ", days:N with a number of days, or a rule of your own, was \"" + name + "\"");
        };
    }

    /**
     * Returns green hard: the coat pulls water as hard as this on average, and has set for so long.
     *
     * @param suctionPa geometric mean suction, Pa; above 0
     * @param equivalentAgeDays age at 20 C, days; at least 0
     */
    public static ReadinessRule greenHard(double suctionPa, double equivalentAgeDays) {
        return new ReadinessRule(
                GREEN_HARD,
                limit(suctionPa, "suctionPa", "Pa"),
                limit(equivalentAgeDays, "equivalentAgeDays", "days"),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    /**
     * Returns dry and white: green hard, and the face has lost its wet look.
     *
     * @param suctionPa geometric mean suction, Pa; above 0
     * @param equivalentAgeDays age at 20 C, days; at least 0
     * @param faceRelativeHumidity relative humidity at the face, fraction; above 0
     */
    public static ReadinessRule dryWhite(double suctionPa, double equivalentAgeDays, double faceRelativeHumidity) {
        return new ReadinessRule(
                DRY_WHITE,
                limit(suctionPa, "suctionPa", "Pa"),
                limit(equivalentAgeDays, "equivalentAgeDays", "days"),
                limit(faceRelativeHumidity, "faceRelativeHumidity", ""),
                OptionalDouble.empty());
    }

    /**
     * Returns a wait by the calendar.
     *
     * @param days days since the coat was laid; above 0
     */
    public static ReadinessRule days(double days) {
        return new ReadinessRule(
                "days:" + (days == Math.rint(days) ? Long.toString(Math.round(days)) : Double.toString(days)),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                limit(days, "days", "days"));
    }

    private static OptionalDouble limit(double value, String name, String unit) {
        Check.positive(value, name, unit);
        return OptionalDouble.of(value);
    }
}
