package org.limedry.cli.fit;

import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.limedry.cli.site.Site;
import org.limedry.cli.site.SiteReadings;
import org.limedry.simulation.Accuracy;
import org.limedry.simulation.Simulation;
import org.limedry.study.fit.Fit;
import org.limedry.study.fit.FitResult;
import org.limedry.study.fit.ReadingErrors;

/** Brings the unknowns of a site to its readings. */
final class SiteFit {
    /** Points drawn from what is left open: as many as a fit has members, so that each has its own. */
    static final int POINTS = 32;

    private SiteFit() {}

    /**
     * Fits; runs end with the last reading and are made on the quick grid.
     *
     * @param site the site with its readings; what an earlier fit said of it is not believed twice
     * @param readings the readings that count; at least one
     * @param threads threads to use
     */
    static FitResult of(Site site, ReadingsToFit readings, int threads) {
        SiteReadings read = site.readings().orElseThrow();
        Site unlearnt = site.knowing(Optional.of(read.known()), Optional.empty());
        Site observed = unlearnt.lasting(days(site, readings)).orElse(unlearnt);
        Fit.Runs runs = new Fit.Runs(draw -> observed.scenario(draw).with(Accuracy.quick()), Simulation::run, threads);
        return Fit.of(site.fittable(), readings.list(), ReadingErrors.of(read.error()), runs, POINTS);
    }

    /** Returns the days from the first of the run to that of the last reading. */
    private static int days(Site site, ReadingsToFit readings) {
        ZoneId zone = site.zone();
        long days = ChronoUnit.DAYS.between(
                site.from().atZone(zone).toLocalDate(),
                readings.until().minusNanos(1).atZone(zone).toLocalDate());
        return Math.toIntExact(days + 1);
    }
}
