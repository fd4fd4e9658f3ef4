package org.limedry.climate;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * How much of the wind at the weather station reaches the building. The factors are judgement, without a source.
 */
public enum Shelter {
    /** Among houses or trees. */
    SHELTERED(0.3),
    /** Some neighbours. */
    ORDINARY(0.6),
    /** On a hill, by the sea, alone. */
    EXPOSED(1.0);

    private final double windFactor;

    Shelter(double windFactor) {
        this.windFactor = windFactor;
    }

    /** Returns the wind at the building over the wind at the station. */
    public double windFactor() {
        return windFactor;
    }

    /**
     * Returns the shelter of that name.
     *
     * @param word "sheltered", "ordinary" or "exposed"
     * @throws IllegalArgumentException if there is none of that name
     */
    public static Shelter named(String word) {
        for (Shelter shelter : values()) {
            if (shelter.word().equals(word)) {
                return shelter;
            }
        }
        String allowed = Arrays.stream(values()).map(Shelter::word).collect(Collectors.joining(", "));
        throw new IllegalArgumentException("shelter: must be one of " + allowed + ", was \"" + word + "\"");
    }

    private String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
