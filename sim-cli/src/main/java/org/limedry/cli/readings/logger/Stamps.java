package org.limedry.cli.readings.logger;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds date and time in a line, in one cell or in several. The same date is read once and remembered. */
final class Stamps {
    private static final int MOST_REMEMBERED = 10_000;

    private final List<Integer> dates;
    private final List<Integer> times;
    private final Map<String, Optional<Day>> days = new HashMap<>();
    private final Map<String, Optional<Hour>> hours = new HashMap<>();

    Stamps(Places places) {
        dates = places.all(Role.DATE);
        times = places.has(Role.TIME) ? places.all(Role.TIME) : List.of(0);
    }

    Optional<Stamp> of(Row row) {
        String time = row.cell(times.get(0));
        Optional<Stamp.Parts> parts =
                dates.isEmpty() ? Stamp.Parts.of(time) : Optional.of(new Stamp.Parts(row.cell(dates.get(0)), time, ""));
        return parts.flatMap(this::stamp);
    }

    private Optional<Stamp> stamp(Stamp.Parts parts) {
        if (days.size() + hours.size() > MOST_REMEMBERED) {
            days.clear();
            hours.clear();
        }
        Optional<Day> day = days.computeIfAbsent(parts.date(), Stamp::date);
        return day.isEmpty()
                ? Optional.empty()
                : hours.computeIfAbsent(parts.time(), Hour::of).map(hour -> new Stamp(day.get(), hour, parts.offset()));
    }
}
