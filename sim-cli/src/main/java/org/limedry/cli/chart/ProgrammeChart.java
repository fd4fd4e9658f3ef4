package org.limedry.cli.chart;

import java.util.List;
import org.limedry.units.Check;

/**
 * Bars for work and for waiting, one programme or several on the same scale of weeks.
 *
 * @param id tells it from the other charts on its page
 * @param title the sentence over it
 * @param programmes one below the other; at least one
 * @param runWeeks length of the runs: what comes later is not known
 */
public record ProgrammeChart(String id, String title, List<Programme> programmes, double runWeeks) implements Chart {
    public ProgrammeChart {
        Chart.check(id, title);
        Check.notEmpty(programmes, "programmes");
        Check.positive(runWeeks, "runWeeks", "weeks");
        programmes = List.copyOf(programmes);
    }

    /**
     * One programme.
     *
     * @param heading its start and how long it takes
     * @param rows one for each coat
     */
    public record Programme(String heading, List<Row> rows) {
        public Programme {
            Check.notBlank(heading, "heading");
            rows = List.copyOf(rows);
        }
    }

    /**
     * One coat, in weeks from the first day of work.
     *
     * @param name wall and coat
     * @param work when the gang is at it, if it ever is
     * @param ready when it is ready
     * @param words the likely date, or what to say instead
     */
    public record Row(String name, List<Work> work, Weeks ready, String words) {
        public Row {
            Check.notBlank(name, "name");
            Check.notBlank(words, "words");
            work = List.copyOf(work);
        }
    }

    /**
     * Work on end.
     *
     * @param fromWeek its start
     * @param toWeek its end; not before its start
     */
    public record Work(double fromWeek, double toWeek) {
        public Work {
            Check.finite(fromWeek, "fromWeek", "weeks");
            Check.that(toWeek >= fromWeek, "toWeek", "at least " + fromWeek, toWeek);
        }
    }
}
