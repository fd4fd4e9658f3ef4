package org.limedry.cli.readings.diary;

import java.time.LocalDate;
import java.util.List;
import org.limedry.units.Check;

/**
 * A diary that was read.
 *
 * @param days its days in time order, each once
 */
public record Diary(List<DiaryDay> days) {
    public Diary {
        days = List.copyOf(days);
        for (int i = 1; i < days.size(); i++) {
            LocalDate before = days.get(i - 1).date();
            Check.that(
                    days.get(i).date().isAfter(before),
                    "days",
                    "in time order, each once",
                    days.get(i).date());
        }
    }
}
