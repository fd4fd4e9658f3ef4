package org.limedry.cli.chart;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.limedry.units.Check;

/**
 * When a coat is ready in each of many runs: of ten such jobs, how many are ready by a day.
 *
 * @param id tells it from the other charts on its page
 * @param title the sentence over it
 * @param timeline the time it covers
 * @param coat what the coat is called
 * @param ready the 1-in-5, the middle and the 4-in-5 date
 * @param dates one for each run, in any order; empty where the coat was not ready by the end
 */
public record ChancesChart(
        String id, String title, Timeline timeline, String coat, Ready.Range ready, List<Optional<Instant>> dates)
        implements Chart {
    public ChancesChart {
        Chart.check(id, title);
        Check.notBlank(coat, "coat");
        dates = List.copyOf(dates);
        Check.notEmpty(dates, "dates");
    }
}
