package org.limedry.study.fit;

import java.util.List;
import java.util.function.Predicate;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealVector;

/**
 * What would have been found without some of the readings, by one step of the straight law about the fitted run: no run is made.
 *
 * <p>Exact where what is read moves straight with the unknowns; errors of channels stay as they were found with all readings.
 */
public final class LeaveOut {
    private final List<String> keys;
    private final List<Reading> readings;
    private final FitLaw law;
    private final RealVector mean;

    LeaveOut(List<String> keys, List<Reading> readings, FitLaw law, double[] mean) {
        this.keys = List.copyOf(keys);
        this.readings = List.copyOf(readings);
        this.law = law;
        this.mean = new ArrayRealVector(mean);
    }

    /** Returns what would have been found without the readings that the test names. */
    public Fitted without(Predicate<Reading> leftOut) {
        boolean[] kept = new boolean[readings.size()];
        for (int i = 0; i < kept.length; i++) {
            kept[i] = !leftOut.test(readings.get(i));
        }
        FitLaw.Minimum minimum = law.minimum(kept);
        RealVector moved = minimum.step().subtract(law.minimum().step()); // 0 if nothing is left out
        return new Fitted(keys, mean.add(moved), minimum.root());
    }
}
