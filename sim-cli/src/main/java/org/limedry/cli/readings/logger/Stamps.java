package org.limedry.cli.readings.logger;

import java.util.Map;
import java.util.Optional;

/**
 * Finds date and time in a line, in one cell or in two.
 *
 * @param columns which column is what
 */
record Stamps(Map<Role, Integer> columns) {
    Optional<Stamp> of(Row row) {
        String time = row.cell(columns.getOrDefault(Role.TIME, 0));
        if (!columns.containsKey(Role.DATE)) {
            return Stamp.of(time);
        }
        return Stamp.of(row.cell(columns.get(Role.DATE)), time, "");
    }
}
