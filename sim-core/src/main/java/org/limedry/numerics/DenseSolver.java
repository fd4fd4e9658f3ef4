package org.limedry.numerics;

/**
 * A small dense linear system, factored once and solved for several right-hand sides without making objects.
 *
 * <p>Gaussian elimination with row pivoting. For the border of the coupled system (three unknowns a room); use Commons
 * Math for everything that is not solved ten thousand times a run.
 */
public final class DenseSolver {
    private final int size;
    private final double[] matrix;
    private final int[] pivot;

    /**
     * Makes a system with all entries zero.
     *
     * @param size number of unknowns; at least 0
     */
    public DenseSolver(int size) {
        this.size = size;
        matrix = new double[size * size];
        pivot = new int[size];
    }

    /** Returns the matrix, row by row, to be filled by the caller; {@link #factor()} overwrites it. */
    public double[] matrix() {
        return matrix;
    }

    /**
     * Factors the matrix as filled.
     *
     * @return false if it is singular or not finite
     */
    public boolean factor() {
        for (int column = 0; column < size; column++) {
            int best = largestBelow(column);
            double lead = matrix[best * size + column];
            if (!(Math.abs(lead) > 0.0) || Double.isInfinite(lead)) {
                return false;
            }
            pivot[column] = best;
            swapRows(column, best);
            for (int row = column + 1; row < size; row++) {
                eliminate(row, column);
            }
        }
        return true;
    }

    /**
     * Solves for one right-hand side.
     *
     * @param r right-hand side, overwritten by the solution
     */
    public void solve(double[] r) {
        for (int row = 0; row < size; row++) {
            double held = r[pivot[row]];
            r[pivot[row]] = r[row];
            r[row] = held;
        }
        for (int row = 0; row < size; row++) {
            for (int column = 0; column < row; column++) {
                r[row] -= matrix[row * size + column] * r[column];
            }
        }
        for (int row = size - 1; row >= 0; row--) {
            for (int column = row + 1; column < size; column++) {
                r[row] -= matrix[row * size + column] * r[column];
            }
            r[row] /= matrix[row * size + row];
        }
    }

    private int largestBelow(int column) {
        int best = column;
        for (int row = column + 1; row < size; row++) {
            if (Math.abs(matrix[row * size + column]) > Math.abs(matrix[best * size + column])) {
                best = row;
            }
        }
        return best;
    }

    private void swapRows(int a, int b) {
        for (int column = 0; a != b && column < size; column++) {
            double held = matrix[a * size + column];
            matrix[a * size + column] = matrix[b * size + column];
            matrix[b * size + column] = held;
        }
    }

    private void eliminate(int row, int column) {
        double share = matrix[row * size + column] / matrix[column * size + column];
        matrix[row * size + column] = share;
        for (int k = column + 1; k < size; k++) {
            matrix[row * size + k] -= share * matrix[column * size + k];
        }
    }
}
