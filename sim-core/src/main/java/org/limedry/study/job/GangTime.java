package org.limedry.study.job;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.limedry.simulation.Outcome;

/**
 * What a job takes of a gang's time.
 *
 * @param gang its name
 * @param daysOnSite days on the calendar on which it lays something
 * @param free stretches between two of its days on site that are long enough to work elsewhere, in time order
 */
public record GangTime(String gang, int daysOnSite, List<Stretch> free) {
    public GangTime {
        free = List.copyOf(free);
    }

    /**
     * Days on end.
     *
     * @param first first day
     * @param last last day, not before the first
     */
    public record Stretch(LocalDate first, LocalDate last) {}

    /**
     * Returns the time of each gang that laid a coat, the gang that laid the first coat listed first.
     *
     * @param outcome what was found
     * @param zone clock of the place
     * @param leastFreeDays days on the calendar from which on a stretch is worth going elsewhere; at least 1
     */
    public static List<GangTime> of(Outcome outcome, ZoneId zone, int leastFreeDays) {
        Map<String, TreeSet<LocalDate>> onSite = new LinkedHashMap<>();
        for (Outcome.CoatResult coat : outcome.coats()) {
            if (coat.work().isPresent() && coat.laid().isPresent()) {
                Outcome.Work work = coat.work().get();
                onSite.computeIfAbsent(work.gang(), gang -> new TreeSet<>())
                        .addAll(days(work.begun(), coat.laid().get(), zone));
            }
        }
        List<GangTime> times = new ArrayList<>();
        onSite.forEach((gang, dates) -> times.add(new GangTime(gang, dates.size(), gaps(dates, leastFreeDays))));
        return times;
    }

    /** A gang that goes on after a Sunday was not free on it: the whole span counts as on site. */
    private static List<LocalDate> days(Instant begun, Instant laid, ZoneId zone) {
        LocalDate first = begun.atZone(zone).toLocalDate();
        return first.datesUntil(laid.atZone(zone).toLocalDate().plusDays(1)).toList();
    }

    private static List<Stretch> gaps(TreeSet<LocalDate> dates, int least) {
        List<Stretch> gaps = new ArrayList<>();
        for (LocalDate day : dates) {
            LocalDate next = dates.higher(day);
            if (next != null && ChronoUnit.DAYS.between(day, next) > least) {
                gaps.add(new Stretch(day.plusDays(1), next.minusDays(1)));
            }
        }
        return gaps;
    }
}
