package org.limedry.study;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;
import org.limedry.simulation.Scenario;

/** Makes the runs of a fit, several at once, and counts them. */
final class FitRuns {
    /** No C, fraction, litre or e-fold comes near this. */
    private static final double SENSELESS = 1e6;

    private final List<Uncertain> unknowns;
    private final List<Reading> readings;
    private final Fit.Runs runs;
    private int made;

    FitRuns(List<Uncertain> unknowns, List<Reading> readings, Fit.Runs runs) {
        this.unknowns = unknowns;
        this.readings = readings;
        this.runs = runs;
    }

    int unknowns() {
        return unknowns.size();
    }

    /** Returns the runs made so far. */
    int made() {
        return made;
    }

    /** Returns what the run with these unknowns says of each reading; NaN where the solver gave up before. */
    double[] at(double[] z) {
        made++;
        return predicted(z);
    }

    /** Returns the same for many runs; in the order asked for, whatever the number of threads. */
    List<double[]> at(List<double[]> points) {
        made += points.size();
        ForkJoinPool pool = new ForkJoinPool(runs.threads());
        try {
            return pool.submit(() -> IntStream.range(0, points.size())
                            .parallel()
                            .mapToObj(i -> predicted(points.get(i)))
                            .toList())
                    .join();
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
