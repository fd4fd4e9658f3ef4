package org.limedry.cli.wallcase;

import org.limedry.simulation.Outcome;
import org.limedry.simulation.Progress;
import org.limedry.wall.WallColumn;
import org.limedry.wall.WallPlan;

/**
 * What a case gave on two grids.
 *
 * @param wallCase the case
 * @param written the finer run, which is written
 * @param coarser the run on half the cells and four times the tolerance
 * @param difference how far they lie apart
 * @param computeSeconds time for both, s
 */
record CaseResult(
        WallCase wallCase,
        CaseRun.Result written,
        CaseRun.Result coarser,
        GridDifference difference,
        double computeSeconds) {
    private static final double NANOS_PER_SECOND = 1.0e9;
    private static final double COARSER_GRID = 0.5;
    private static final double COARSER_TOLERANCE = 4.0;
    private static final double LOOSEST_TOLERANCE = 0.1;
    private static final int HALVINGS = 40;
    private static final double LEAST_FACTOR = 1.0e-3;
    private static final double LARGEST_FACTOR = 32.0;

    /**
     * Runs a case on both grids.
     *
     * @param progress told of every simulated hour of both runs
     */
    static CaseResult of(WallCase wallCase, Progress progress) {
        long started = System.nanoTime();
        double factor = gridFactor(wallCase);
        CaseRun.Result written = CaseRun.run(wallCase, factor, wallCase.relative(), progress);
        CaseRun.Result coarser = CaseRun.run(wallCase, COARSER_GRID * factor, coarseTolerance(wallCase), progress);
        double seconds = (System.nanoTime() - started) / NANOS_PER_SECOND;
        GridDifference difference = GridDifference.between(written.snapshots(), coarser.snapshots());
        return new CaseResult(wallCase, written, coarser, difference, seconds);
    }

    /** Tells whether both runs reached the end. */
    boolean isComplete() {
        return written.outcome().ending() instanceof Outcome.Ending.Complete
                && coarser.outcome().ending() instanceof Outcome.Ending.Complete;
    }

    /** Returns the hours that both runs do, for a bar of progress. */
    static long hoursOfBoth(WallCase wallCase) {
        return 2 * (long) Math.ceil(wallCase.hours());
    }

    /** Returns the tolerance of the coarser run. */
    static double coarseTolerance(WallCase wallCase) {
        return Math.min(LOOSEST_TOLERANCE, COARSER_TOLERANCE * wallCase.relative());
    }

    /** Returns the last output hour that was reached. */
    Snapshot last() {
        return written.snapshots().get(written.snapshots().size() - 1);
    }

    /** Returns water in and laid less water gained, kg/m2: rounding, if the run is sound. */
    double waterResidualKgPerM2() {
        return written.outcome().account().residualKg();
    }

    /** Returns the hour that the written run reached. */
    double reachedHour() {
        return WallCase.hour(written.outcome().reached());
    }

    /** Returns 1, or the factor on the grid that comes nearest to the cells asked for. */
    private static double gridFactor(WallCase wallCase) {
        if (wallCase.cells() == 0) {
            return 1.0;
        }
        WallPlan plan = wallCase.plan();
        double low = Math.log(LEAST_FACTOR);
        double high = Math.log(LARGEST_FACTOR);
        for (int k = 0; k < HALVINGS; k++) {
            double middle = 0.5 * (low + high);
            boolean tooMany = WallColumn.cells(plan, Math.exp(middle)) > wallCase.cells();
            low = tooMany ? low : middle;
            high = tooMany ? middle : high;
        }
        return Math.exp(low);
    }
}
