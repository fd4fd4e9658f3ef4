package org.limedry.study.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ForkJoinPool;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealVector;
import org.limedry.simulation.Scenario;
import org.limedry.study.Draw;
import org.limedry.study.Uncertain;

/** Makes the runs of a fit, several at once, and counts them. */
final class FitRuns {
    /** No C, fraction, litre or e-fold comes near this. */
    private static final double SENSELESS = 1e6;

    private final List<Uncertain> unknowns;
    private final List<Reading> readings;
    private final Fit.Runs runs;
    private final List<Run> made = new ArrayList<>();

    /** A run: its unknowns and what it says of each reading. */
    record Run(RealVector z, RealVector predicted) {
        static Run of(double[] z, double[] predicted) {
            return new Run(new ArrayRealVector(z), new ArrayRealVector(predicted));
        }
    }

    FitRuns(List<Uncertain> unknowns, List<Reading> readings, Fit.Runs runs) {
        this.unknowns = unknowns;
        this.readings = readings;
        this.runs = runs;
    }

    /** Returns the runs made so far. */
    int made() {
        return made.size();
    }

    /** Returns the runs made so far that say something of every reading, in the order asked for. */
    List<Run> whole() {
        return made.stream().filter(run -> isWhole(run.predicted().toArray())).toList();
    }

    /** Returns what the run with these unknowns says of each reading; NaN where the solver gave up before. */
    double[] at(double[] z) {
        double[] predicted = predicted(z);
        made.add(Run.of(z, predicted));
        return predicted;
    }

    /** Returns the same for many runs; in the order asked for, whatever the number of threads. */
    List<double[]> at(List<double[]> points) {
        ForkJoinPool pool = new ForkJoinPool(runs.threads());
        try {
            List<Run> fresh = pool.submit(() -> points.stream()
                            .parallel()
                            .map(z -> Run.of(z, predicted(z)))
                            .toList())
                    .join();
            made.addAll(fresh);
            return fresh.stream().map(run -> run.predicted().toArray()).toList();
        } finally {
            pool.shutdownNow();
        }
    }

    /** Tells whether a run says something of every reading that makes sense. */
    static boolean isWhole(double[] predicted) {
        for (double value : predicted) {
            if (!(Math.abs(value) < SENSELESS)) {
                return false;
            }
        }
        return true;
    }

    private double[] predicted(double[] z) {
        Scenario scenario = runs.scenarios().apply(draw(z));
        Predictions predictions = new Predictions(scenario, runs.simulation().apply(scenario));
        return readings.stream().mapToDouble(predictions::predicted).toArray();
    }

    private Draw draw(double[] z) {
        Map<String, Double> quantiles = new HashMap<>();
        for (int k = 0; k < z.length; k++) {
            quantiles.put(unknowns.get(k).key(), Fitted.quantile(z[k]));
        }
        return new Draw(quantiles);
    }
}
