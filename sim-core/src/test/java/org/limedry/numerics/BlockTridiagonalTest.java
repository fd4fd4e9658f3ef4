package org.limedry.numerics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;

final class BlockTridiagonalTest {
    // COMPUTED: Commons Math 3.6.1, LUDecomposition of the same system as a full matrix. Tolerance: rounding of systems
    // whose rows are led by their own block.
    @Property(tries = 200)
    void solve_ofARandomSystem_agreesWithTheFullMatrix(
            @ForAll @IntRange(min = 1, max = 30) int size, @ForAll @LongRange(min = 0, max = 1L << 40) long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        BlockTridiagonal system = new BlockTridiagonal(size);
        RealMatrix full = new Array2DRowRealMatrix(2 * size, 2 * size);
        fill(system, full, size, random);
        double[] right = random.doubles(2L * size, -3.0, 5.0).toArray();
        double[] expected = new LUDecomposition(full)
                .getSolver()
                .solve(new ArrayRealVector(right))
                .toArray();

        boolean regular = system.factor();
        double[] found = right.clone();
        system.forward(found);
        double[] reduced = found.clone();
        system.backward(found);

        assertTrue(regular);
        for (int k = 0; k < found.length; k++) {
            assertEquals(expected[k], found[k], 1.0e-11 * (1.0 + Math.abs(expected[k])));
        }
        int end = 2 * size - 2;
        for (int row = 0; row < 2; row++) {
            double last = system.lastInverse(row, 0) * reduced[end] + system.lastInverse(row, 1) * reduced[end + 1];
            assertEquals(expected[end + row], last, 1.0e-11 * (1.0 + Math.abs(expected[end + row])));
        }
    }

    @Test
    void factor_ofASingularPivotBlock_isRefused() {
        BlockTridiagonal system = new BlockTridiagonal(2);
        System.arraycopy(new double[] {1.5, 3.0, 0.5, 1.0, 2.0, 0.3, 0.1, 1.7}, 0, system.diagonal(), 0, 8);

        assertFalse(system.factor());
    }

    // EXACT: 1.5 times 1 less 3 times 0.5 is 0, in the last block too, where nothing follows that would notice.
    @Test
    void factor_ofASingularLastBlock_isRefused() {
        BlockTridiagonal system = new BlockTridiagonal(1);
        System.arraycopy(new double[] {1.5, 3.0, 0.5, 1.0}, 0, system.diagonal(), 0, 4);

        assertFalse(system.factor());
    }

    @Test
    void factor_ofABlockThatIsNotANumber_isRefused() {
        BlockTridiagonal system = new BlockTridiagonal(1);
        System.arraycopy(new double[] {1.5, 3.0, Double.NaN, 1.0}, 0, system.diagonal(), 0, 4);

        assertFalse(system.factor());
    }

    // EXACT: 1e200 times 1e200 is beyond the range of numbers; so is the inverse then.
    @Test
    void factor_ofABlockBeyondTheRangeOfNumbers_isRefused() {
        BlockTridiagonal system = new BlockTridiagonal(1);
        System.arraycopy(new double[] {1.0e200, 3.0, 2.0, 1.0e200}, 0, system.diagonal(), 0, 4);

        assertFalse(system.factor());
    }

    private static void fill(BlockTridiagonal system, RealMatrix full, int size, SplittableRandom random) {
        for (int row = 0; row < size; row++) {
            for (int k = 0; k < 4; k++) {
                double lead = k == 0 || k == 3 ? 6.0 : 0.0;
                system.diagonal()[4 * row + k] = lead + random.nextDouble(-1.0, 1.0);
                system.lower()[4 * row + k] = row > 0 ? random.nextDouble(-1.0, 1.0) : 0.0;
                system.upper()[4 * row + k] = row < size - 1 ? random.nextDouble(-1.0, 1.0) : 0.0;
            }
            put(system.diagonal(), row, full, row);
            if (row > 0) {
                put(system.lower(), row, full, row - 1);
            }
            if (row < size - 1) {
                put(system.upper(), row, full, row + 1);
            }
        }
    }

    private static void put(double[] blocks, int row, RealMatrix full, int column) {
        for (int k = 0; k < 4; k++) {
            full.setEntry(2 * row + k / 2, 2 * column + k % 2, blocks[4 * row + k]);
        }
    }
}
