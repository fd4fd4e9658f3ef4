package org.limedry.cli.seasons;

import java.time.LocalDate;

/**
 * A day on which the job might begin.
 *
 * @param day the day; the same day of the week as in the site file
 * @param movedDays days from the day in the site file, whole weeks
 * @param name month or day, short: "May", "4 May"
 * @param shortName the same for a telephone: "M"
 * @param words the same in a sentence: "in May", "on 4 May 2026"
 */
record Start(LocalDate day, int movedDays, String name, String shortName, String words) {}
