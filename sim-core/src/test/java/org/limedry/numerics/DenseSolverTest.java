package org.limedry.numerics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularValueDecomposition;
import org.junit.jupiter.api.Test;

final class DenseSolverTest {
    private static final double WORST_CONDITION = 1.0e6;

    // COMPUTED: Commons Math 3.6.1, SingularValueDecomposition of the same matrix. Tolerance: rounding times a
    // condition
    // number of 1e6 at most.
    @Property(tries = 200)
    void solve_ofARandomSystem_agreesWithCommonsMath(
            @ForAll @IntRange(min = 1, max = 9) int size, @ForAll @LongRange(min = 0, max = 1L << 40) long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        DenseSolver solver = new DenseSolver(size);
        RealMatrix matrix = new Array2DRowRealMatrix(size, size);
        for (int k = 0; k < size * size; k++) {
            double value = random.nextDouble(-1.0, 1.0);
            solver.matrix()[k] = value;
            matrix.setEntry(k / size, k % size, value);
        }
        SingularValueDecomposition reference = new SingularValueDecomposition(matrix);
        Assume.that(reference.getConditionNumber() < WORST_CONDITION);

        boolean regular = solver.factor();

        assertTrue(regular);
        for (int right = 0; right < 2; right++) {
            double[] found = random.doubles(size, -2.0, 7.0).toArray();
            double[] expected =
                    reference.getSolver().solve(new ArrayRealVector(found)).toArray();
            solver.solve(found);
            double scale = new ArrayRealVector(expected).getNorm();
            for (int k = 0; k < size; k++) {
                assertEquals(expected[k], found[k], 1.0e-9 * scale);
            }
        }
    }

    // EXACT: in each column one entry is 1e18 times the others, so any other pivot drowns the answer. Tolerance:
    // rounding.
    @Property(tries = 100)
    void solve_withOneLargeEntryAColumn_picksItAsPivot(
            @ForAll @IntRange(min = 2, max = 7) int size, @ForAll @LongRange(min = 0, max = 1L << 40) long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Integer> places = new ArrayList<>(IntStream.range(0, size).boxed().toList());
        Collections.shuffle(places, new Random(random.nextLong()));
        DenseSolver solver = new DenseSolver(size);
        double[] right = new double[size];
        double[] expected = random.doubles(size, 1.5, 7.0).toArray();
        for (int k = 0; k < size * size; k++) {
            boolean large = places.get(k % size) == k / size;
            double value = large ? random.nextDouble(-3.0, -2.0) : random.nextDouble(1.0e-19, 1.0e-18);
            solver.matrix()[k] = value;
            right[k / size] += value * expected[k % size];
        }

        boolean regular = solver.factor();
        solver.solve(right);

        assertTrue(regular);
        assertArrayEquals(expected, right, 1.0e-13);
    }

    // EXACT: rows 0.5 (1, 2) and 1.5 (1, 2) leave one direction open.
    @Test
    void factor_ofASingularMatrix_isRefused() {
        DenseSolver solver = new DenseSolver(2);
        System.arraycopy(new double[] {0.5, 1.0, 1.5, 3.0}, 0, solver.matrix(), 0, 4);

        assertFalse(solver.factor());
    }

    @Test
    void factor_ofAMatrixWithInfinity_isRefused() {
        DenseSolver solver = new DenseSolver(1);
        solver.matrix()[0] = Double.POSITIVE_INFINITY;

        assertFalse(solver.factor());
    }

    @Test
    void solve_withoutUnknowns_doesNothing() {
        DenseSolver solver = new DenseSolver(0);

        boolean regular = solver.factor();
        solver.solve(new double[0]);

        assertTrue(regular);
    }
}
