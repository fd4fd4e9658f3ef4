package org.limedry.study.fit;

import java.util.List;
import java.util.stream.IntStream;

/** A run of the fit: its unknowns, what it says of the readings, and how that moves with the unknowns. */
final class FitPoint {
    private static final double UNTOLD_SPREAD = 0.98;

    private final double[] z;
    private final double[] predicted;
    private final FitSlopes slopes;

    FitPoint(double[] z, double[] predicted, FitSlopes slopes) {
        this.z = z.clone();
        this.predicted = predicted.clone();
        this.slopes = slopes;
    }

    double[] z() {
        return z.clone();
    }

    double[] predicted() {
        return predicted.clone();
    }

    FitSlopes slopes() {
        return slopes;
    }

    /**
     * Returns this point with just those unknowns counted as flat of which the readings can tell next to nothing: they would keep
     * {@value #UNTOLD_SPREAD} of their spread or more if all others were known. No further slopes are taken of them, and they
     * keep their range.
     */
    FitPoint told(FitReadings readings) {
        FitLaw law = new FitLaw(readings, with(slopes.withFlat(List.of())));
        List<Integer> untold = IntStream.range(0, z.length)
                .filter(k -> 1.0 / Math.sqrt(1.0 + law.information(k)) > UNTOLD_SPREAD)
                .boxed()
                .toList();
        return with(slopes.withFlat(untold));
    }

    FitPoint with(FitSlopes others) {
        return new FitPoint(z, predicted, others);
    }
}
