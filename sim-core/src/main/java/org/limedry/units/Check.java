package org.limedry.units;

import java.util.Collection;
import java.util.Locale;

/**
 * Checks of arguments. Each check throws an {@link IllegalArgumentException} whose text is {@code name: must be RULE
 * UNIT, was VALUE}.
 *
 * <p>Every comparison of numbers is written so that NaN fails it: a comparison with NaN is false. Infinity passes no check that has finite
 * bounds or asks for a finite number.
 * A dimensionless quantity has the empty string as its unit.
 */
public final class Check {
    private Check() {}

    /** Requires a number that is neither NaN nor infinite. */
    public static void finite(double value, String name, String unit) {
        if (!Double.isFinite(value)) {
            throw broken(name, "a finite number", unit, value);
        }
    }

    /** Requires a finite number above zero. */
    public static void positive(double value, String name, String unit) {
        if (!(value > 0.0 && value < Double.POSITIVE_INFINITY)) {
            throw broken(name, "finite and above 0", unit, value);
        }
    }

    /** Requires a finite number that is zero or above. */
    public static void nonNegative(double value, String name, String unit) {
        atLeast(value, 0.0, name, unit);
    }

    /** Requires a finite number of at least {@code low}. */
    public static void atLeast(double value, double low, String name, String unit) {
        if (!(value >= low && value < Double.POSITIVE_INFINITY)) {
            throw broken(name, "finite and at least " + text(low), unit, value);
        }
    }

    /** Requires a whole number of at least {@code low}. */
    public static void atLeast(int value, int low, String name) {
        if (value < low) {
            throw broken(name, "at least " + low, "", value);
        }
    }

    /** Requires a number between {@code low} and {@code high}, both ends allowed. */
    public static void inClosed(double value, double low, double high, String name, String unit) {
        if (!(value >= low && value <= high)) {
            throw broken(name, "in [" + text(low) + ", " + text(high) + "]", unit, value);
        }
    }

    /** Requires a number between {@code low} and {@code high}, neither end allowed. */
    public static void inOpen(double value, double low, double high, String name, String unit) {
        if (!(value > low && value < high)) {
            throw broken(name, "in (" + text(low) + ", " + text(high) + ")", unit, value);
        }
    }

    /** Requires a number between {@code low} and {@code high}, only the upper end allowed. */
    public static void inOpenClosed(double value, double low, double high, String name, String unit) {
        if (!(value > low && value <= high)) {
            throw broken(name, "in (" + text(low) + ", " + text(high) + "]", unit, value);
        }
    }

    /** Requires a number between {@code low} and {@code high}, only the lower end allowed. */
    public static void inClosedOpen(double value, double low, double high, String name, String unit) {
        if (!(value >= low && value < high)) {
            throw broken(name, "in [" + text(low) + ", " + text(high) + ")", unit, value);
        }
    }

    /** Requires a text with at least one character that is not white space. */
    public static void notBlank(String value, String name) {
        if (value.isBlank()) {
            throw broken(name, "a text that is not blank", "", "\"" + value + "\"");
        }
    }

    /** Requires a collection with at least one element. */
    public static void notEmpty(Collection<?> value, String name) {
        if (value.isEmpty()) {
            throw broken(name, "not empty", "", "empty");
        }
    }

    /**
     * Requires a rule that no other check here states.
     *
     * @param holds whether the argument meets the rule; write the comparison so that NaN makes it false
     * @param name name of the argument
     * @param rule the rule with its unit, to follow the words "must be"
     * @param found the offending value
     */
    public static void that(boolean holds, String name, String rule, Object found) {
        if (!holds) {
            throw broken(name, rule, "", found);
        }
    }

    private static IllegalArgumentException broken(String name, String rule, String unit, Object found) {
        String ruleWithUnit = unit.isEmpty() ? rule : rule + " " + unit;
        return new IllegalArgumentException(
                String.format(Locale.ROOT, "%s: must be %s, was %s", name, ruleWithUnit, found));
    }

    /** Writes whole numbers without a decimal point: "in [0, 1]" reads better than "in [0.0, 1.0]". */
    private static String text(double bound) {
        boolean whole = bound == Math.rint(bound) && Math.abs(bound) < 1e6;
        return whole ? Long.toString(Math.round(bound)) : Double.toString(bound);
    }
}
