package org.limedry.cli.site;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.limedry.simulation.Accuracy;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Scenario;
import org.limedry.simulation.Simulation;
import org.limedry.simulation.WaterAccount;
import org.limedry.study.Draw;

/** How far dates and litres of a site move when grid, tolerance and step are refined. */
final class AccuracyStudy {
    /** A tenth of the ordinary tolerance and less, half of every cell, a quarter of an hour at most. */
    static final Accuracy FINE = new Accuracy(1.0e-4, 2.0, 900.0);

    private static final double LITRES_THAT_COUNT = 0.02;
    private static final double SECONDS_PER_HOUR = 3600.0;

    /** How two runs of a site differ. */
    record Moved(double hours, double percentOfWait, double percentOfTerm, double percentOfIn) {}

    private final Scenario site;
    private final Outcome fine;
    private final Map<Accuracy, Outcome> runs = new HashMap<>();

    private AccuracyStudy(Scenario site) {
        this.site = site;
        fine = Simulation.run(site.with(FINE));
    }

    /** Returns the study of an example. */
    static AccuracyStudy of(String example) {
        Site read = Examples.good(SiteReader.read(Examples.FOLDER.resolve(example)));
        return new AccuracyStudy(read.scenario(Draw.likely()));
    }

    String name() {
        return site.site();
    }

    /** Returns the outcome on an accuracy, run once. */
    Outcome run(Accuracy accuracy) {
        return runs.computeIfAbsent(accuracy, other -> Simulation.run(site.with(other)));
    }

    /** Returns by how much an outcome differs from the fine one, at most. */
    Moved against(Outcome outcome) {
        double hours = 0.0;
        double percentOfWait = 0.0;
        for (int coat = 0; coat < fine.coats().size(); coat++) {
            double expected = waitHours(fine.coats().get(coat));
            double found = waitHours(outcome.coats().get(coat));
            hours = Math.max(hours, Math.abs(found - expected));
            percentOfWait = Math.max(percentOfWait, 100.0 * Math.abs(found - expected) / expected);
        }
        List<Double> terms = terms(fine.account());
        List<Double> others = terms(outcome.account());
        double gross = fine.account().grossInKg();
        double percentOfTerm = 0.0;
        double percentOfIn = 0.0;
        for (int k = 0; k < terms.size(); k++) {
            double move = Math.abs(others.get(k) - terms.get(k));
            boolean counts = Math.abs(terms.get(k)) > LITRES_THAT_COUNT * gross;
            percentOfTerm = Math.max(percentOfTerm, counts ? 100.0 * move / Math.abs(terms.get(k)) : 0.0);
            percentOfIn = Math.max(percentOfIn, 100.0 * move / gross);
        }
        return new Moved(hours, percentOfWait, percentOfTerm, percentOfIn);
    }

    private static double waitHours(Outcome.CoatResult coat) {
        Optional<Instant> laid = coat.laid();
        Optional<Instant> ready = coat.ready();
        if (laid.isEmpty() || ready.isEmpty()) {
            throw new IllegalStateException("no date for coat " + coat.number() + " of " + coat.wall());
        }
        return Duration.between(laid.get(), ready.get()).toMillis() / (1000.0 * SECONDS_PER_HOUR);
    }

    private static List<Double> terms(WaterAccount account) {
        List<Double> terms = new ArrayList<>();
        DoubleStream.of(
                        account.groundKg(),
                        account.plantAddedKg(),
                        account.chemicalReleasedKg(),
                        account.outByAirKg(),
                        account.throughWallsKg(),
                        account.dehumidifierKg(),
                        account.runOffKg(),
                        account.changeInCoatsKg(),
                        account.changeInWallsKg(),
                        account.condensedKg(),
                        account.suckedBackKg())
                .forEach(terms::add);
        return terms;
    }

    /** Returns a row of the table in docs. */
    String row(String words, Accuracy accuracy) {
        Outcome outcome = run(accuracy);
        Moved moved = against(outcome);
        return String.format(
                Locale.ROOT,
                "| %s | %s | %.0e | %s | %.0f | %d | %.1f | %.1f | %.2f | %.2f |",
                name(),
                words,
                accuracy.tolerance(),
                accuracy.gridFactor(),
                accuracy.maxStepS(),
                outcome.statistics().cells(),
                moved.hours(),
                moved.percentOfWait(),
                moved.percentOfTerm(),
                moved.percentOfIn());
    }
}
