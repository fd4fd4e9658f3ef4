package org.limedry.cli.readings.logger;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;

/**
 * Which columns are what, counted from 0. Date and time may each take several; a figure stands in one.
 *
 * @param columns columns of each role that the file has
 */
record Places(Map<Role, List<Integer>> columns) {
    Places {
        columns = Map.copyOf(columns);
    }

    /** Returns the column of a role, or the first of several. */
    Optional<Integer> of(Role role) {
        return Optional.ofNullable(columns.get(role)).map(all -> all.get(0));
    }

    List<Integer> all(Role role) {
        return columns.getOrDefault(role, List.of());
    }

    boolean has(Role role) {
        return columns.containsKey(role);
    }

    /** Returns every column that is something. */
    Set<Integer> used() {
        return columns.values().stream().flatMap(List::stream).collect(Collectors.toSet());
    }

    /** Hands out the roles in their own order. */
    void forEach(BiConsumer<Role, List<Integer>> taker) {
        if (!columns.isEmpty()) {
            new EnumMap<>(columns).forEach(taker);
        }
    }
}
