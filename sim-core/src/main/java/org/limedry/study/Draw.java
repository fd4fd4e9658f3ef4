package org.limedry.study;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.limedry.units.Check;

/**
 * One way the unknowns may lie: for each key of an {@link Uncertain} the chance that the truth is lower.
 *
 * @param quantiles by key; each in [0, 1]; a key left out is at its likely value
 */
public record Draw(Map<String, Double> quantiles) {
    public Draw {
        quantiles = Map.copyOf(quantiles);
        quantiles.forEach((key, value) -> Check.inClosed(value, 0.0, 1.0, key, ""));
    }

    /** Returns the draw with every unknown at its likely value. */
    public static Draw likely() {
        return new Draw(Map.of());
    }

    /** Returns this draw with one unknown at its likely value. */
    public Draw without(String key) {
        Map<String, Double> others = new HashMap<>(quantiles);
        others.remove(key);
        return new Draw(others);
    }

    /** Returns the quantile of {@code key}; one half is the likely value. */
    public double quantile(String key) {
        return quantiles.getOrDefault(key, 0.5);
    }

    /** Returns the draw with every unknown but these at its likely value. */
    public Draw of(Set<String> keys) {
        return new Draw(quantiles.entrySet().stream()
                .filter(entry -> keys.contains(entry.getKey()))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue)));
    }
}
