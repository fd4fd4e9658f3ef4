package org.limedry.study.fit;

import java.util.List;
import java.util.function.Function;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Scenario;
import org.limedry.study.Draw;
import org.limedry.study.Uncertain;
import org.limedry.units.Check;

/**
 * Brings the unknowns of a site to readings: regularised least squares.
 *
 * <p>Minimises {@code sum((reading - run - offset) / sigma)^2 + sum(offset / its sigma)^2 + sum(z^2)} over the unknowns z
 * and one offset for each logger and quantity, and for hand tests the law of {@link HandLaw} in place of the square; what is left open is the inverse of half the second derivative at the
 * minimum, with straight laws. The last sum is what was believed before; an unknown of which the readings tell next to
 * nothing at the likely values keeps its range and costs no further runs, though readings that only touch it far from there
 * could have told something.
 *
 * <p>It fits twice. The first time the errors are as given; what is then left over tells how far readings of a channel are
 * wrong together ({@link FitTogether}), and the second fit, which begins where the first ended, takes the errors so much
 * wider; once more if that then looks different. Whether the model explains the readings at all is judged by the errors as
 * given.
 *
 * <p>One wild reading is not weighted down, for a fit that bends round it would hide what a look at the sensor settles: it
 * is listed by {@link FitResult#wild()}, what it did to the answer is told by {@link FitResult#without}, and many of them
 * leave their channel unexplained.
 *
 * <p><b>Runs:</b> one, two for each unknown, one for each step, and two for each unknown that is told something at the end:
 * {@link FitResult#runs()}; points cost some hundred more. <b>Source:</b> maximum a posteriori estimate with Laplace's
 * approximation, Tarantola 2005, Inverse problem theory, sections 3.2 and 6.22, FROM MEMORY. <b>Valid:</b> without points, runs
 * that bend little within what is left open: walls that dry bend more, and a range of ready dates needs points ({@link FitDraws}).
 * <b>Accuracy:</b> COMPUTED, twin experiments with known truths: docs/fit-twins.md. On the demo site (11 unknowns, 28 days of hourly
 * readings) it took 27 to 53 runs; an ensemble smoother would need no slopes but some hundred.
 */
public final class Fit {
    private final List<Uncertain> unknowns;
    private final List<Reading> readings;
    private final FitReadings given;
    private final FitRuns runs;

    private Fit(List<Uncertain> unknowns, List<Reading> readings, ReadingErrors errors, Runs runs) {
        this.unknowns = List.copyOf(unknowns);
        this.readings = List.copyOf(readings);
        this.given = FitReadings.of(this.readings, errors);
        this.runs = new FitRuns(this.unknowns, this.readings, runs);
    }

    /**
     * How the runs are made.
     *
     * @param scenarios makes the scenario of a draw, up to the last reading or later; called from several threads
     * @param simulation runs it; called from several threads
     * @param threads threads; at least 1; without influence on the result
     */
    public record Runs(Function<Draw, Scenario> scenarios, Function<Scenario, Outcome> simulation, int threads) {
        public Runs {
            Check.atLeast(threads, 1, "threads");
        }
    }

    /**
     * Fits and, if the fit is good, draws points from what is left open; see {@link FitDraws}.
     *
     * @param unknowns what may move; each key once
     * @param readings what was read, within the run; at least one
     * @param errors how far readings may be off
     * @param runs how runs are made
     * @param points how many points; 0 for none, which leaves the straight law
     * @return what was found
     * @throws IllegalArgumentException if a reading names a room, wall or coat that is not there, or lies outside the run
     */
    public static FitResult of(
            List<Uncertain> unknowns, List<Reading> readings, ReadingErrors errors, Runs runs, int points) {
        Check.notEmpty(unknowns, "unknowns");
        Check.notEmpty(readings, "readings");
        Check.atLeast(points, 0, "points");
        return new Fit(unknowns, readings, errors, runs).run(points);
    }

    private FitResult run(int points) {
        double[] likely = new double[unknowns.size()];
        double[] before = runs.at(likely);
        if (!FitRuns.isWhole(before)) {
            FitPoint point = new FitPoint(likely, before, FitSlopes.none(likely, readings.size()));
            return new FitSummary(unknowns, given, point)
                    .result(before, new FitResult.Effort(FitResult.Ending.NO_LIKELY_RUN, runs.made(), 0));
        }
        FitSlopes slopes = FitSlopes.all(runs, likely, before);
        FitSearch search = new FitSearch(runs, new FitPoint(likely, before, slopes));
        FitReadings used = given.wrongTogether(search.near(given).predicted());
        FitPoint found = search.to(used);
        FitReadings after = given.wrongTogether(found.predicted());
        if (after.differsFrom(used)) { // the first walk had ended too far away to tell
            used = after;
            found = search.to(used);
        }
        FitResult.Ending ending = search.isConverged() ? FitResult.Ending.CONVERGED : FitResult.Ending.STOPPED;
        FitSummary summary = new FitSummary(unknowns, used, found);
        FitResult result = summary.result(before, new FitResult.Effort(ending, runs.made(), search.steps()));
        if (points == 0 || !result.isConverged() || !result.unexplained().isEmpty()) {
            return result;
        }
        List<double[]> drawn = new FitDraws(unknowns, runs, used, found).points(points);
        return result.with(result.fitted().with(drawn), runs.made());
    }
}
