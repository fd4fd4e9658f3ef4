package org.limedry.cli.readings.diary;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Set;

/**
 * One day of the diary. An empty list says "none" where the column is written, and nothing at all where it is not.
 *
 * @param line its line in the file
 * @param date the day
 * @param written the columns that have something in them
 * @param doors when what stood open
 * @param plant what ran and what it took or gave
 * @param care what was done to the walls and what was seen on them
 * @param by who wrote it; may be empty
 * @param note anything else; may be empty
 */
public record DiaryDay(
        int line,
        LocalDate date,
        Set<Column> written,
        List<DoorSpell> doors,
        Plant plant,
        Care care,
        String by,
        String note) {
    /**
     * What ran.
     *
     * @param heaterHours hours for which heaters ran
     * @param dehumidifierHours hours for which dehumidifiers ran
     * @param litres water emptied from them, litres
     * @param gasKg gas burnt, kg
     */
    public record Plant(
            List<Amount> heaterHours, List<Amount> dehumidifierHours, List<Amount> litres, List<Amount> gasKg) {
        public Plant {
            heaterHours = List.copyOf(heaterHours);
            dehumidifierHours = List.copyOf(dehumidifierHours);
            litres = List.copyOf(litres);
            gasKg = List.copyOf(gasKg);
        }
    }

    /**
     * What was done and seen.
     *
     * @param misted when the walls were misted
     * @param handTests what the hand found
     * @param runningWet walls on which water ran; {@code yes} if the diary does not name them
     * @param covered what was covered; {@code yes} if the diary does not name it
     */
    public record Care(
            List<LocalTime> misted, List<HandMark> handTests, List<String> runningWet, List<String> covered) {
        public Care {
            misted = List.copyOf(misted);
            handTests = List.copyOf(handTests);
            runningWet = List.copyOf(runningWet);
            covered = List.copyOf(covered);
        }
    }

    public DiaryDay {
        written = Set.copyOf(written);
        doors = List.copyOf(doors);
    }
}
