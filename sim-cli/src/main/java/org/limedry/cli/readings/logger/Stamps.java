package org.limedry.cli.readings.logger;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Finds date and time in a line, in one cell or in several. The same date is read once and remembered. */
final class Stamps {
    private static final Pattern BARE = Pattern.compile("\\d{1,4}");
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
        Optional<Stamp.Parts> parts =
                dates.isEmpty() ? Stamp.Parts.of(row.cell(times.get(0))) : Optional.of(apart(row));
        return parts.flatMap(this::stamp);
    }

    /** Year, month and day are joined as in a date, hour and minute as in a time. */
    private Stamp.Parts apart(Row row) {
        String date = dates.stream().map(row::cell).collect(Collectors.joining("-"));
        String time = times.stream()
                .map(row::cell)
                .map(cell -> times.size() > 1 && cell.length() == 1 ? "0" + cell : cell)
                .collect(Collectors.joining(":"));
        return Stamp.Parts.of(date, dates.size() > 1 ? withMinutes(time) : time);
    }

    /** An hour alone, such as 8 or 24, or with its minutes behind it, such as 0830. */
    private static String withMinutes(String time) {
        if (!BARE.matcher(time).matches()) {
            return time;
        }
        int hours = time.length() <= 2 ? time.length() : time.length() - 2;
        return time.substring(0, hours) + ":" + (hours == time.length() ? "00" : time.substring(hours));
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
