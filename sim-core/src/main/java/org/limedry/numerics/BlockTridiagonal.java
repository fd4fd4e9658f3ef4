package org.limedry.numerics;

/**
 * A block-tridiagonal system of 2x2 blocks: {@code A_i x_(i-1) + D_i x_i + B_i x_(i+1) = r_i}.
 *
 * <p>Blocks are stored row by row, four numbers each; vectors hold two numbers a row. There is no pivoting between
 * blocks: rows must be led by their own block, as the rows of implicit transport steps are.
 */
public final class BlockTridiagonal {
    private final int size;
    private final double[] lower;
    private final double[] diagonal;
    private final double[] upper;
    private final double[] inverse;
    private final double[] factor;

    /**
     * Makes a system with all blocks zero.
     *
     * @param size number of block rows; at least 1
     */
    public BlockTridiagonal(int size) {
        this.size = size;
        lower = new double[4 * size];
        diagonal = new double[4 * size];
        upper = new double[4 * size];
        inverse = new double[4 * size];
        factor = new double[4 * size];
    }

    /** Returns the block below the diagonal of each row, to be filled by the caller. */
    public double[] lower() {
        return lower;
    }

    /** Returns the diagonal block of each row, to be filled by the caller. */
    public double[] diagonal() {
        return diagonal;
    }

    /** Returns the block above the diagonal of each row, to be filled by the caller. */
    public double[] upper() {
        return upper;
    }

    /**
     * Factors the system as filled.
     *
     * @return false if a pivot block was singular or not finite
     */
    public boolean factor() {
        for (int row = 0; row < size; row++) {
            int at = 4 * row;
            double d0 = diagonal[at];
            double d1 = diagonal[at + 1];
            double d2 = diagonal[at + 2];
            double d3 = diagonal[at + 3];
            if (row > 0) {
                int before = at - 4;
                multiply(lower, inverse, before, factor, at);
                d0 -= factor[at] * upper[before] + factor[at + 1] * upper[before + 2];
                d1 -= factor[at] * upper[before + 1] + factor[at + 1] * upper[before + 3];
                d2 -= factor[at + 2] * upper[before] + factor[at + 3] * upper[before + 2];
                d3 -= factor[at + 2] * upper[before + 1] + factor[at + 3] * upper[before + 3];
            }
            double determinant = d0 * d3 - d1 * d2;
            if (!(Math.abs(determinant) > 0.0) || Double.isInfinite(determinant)) {
                return false;
            }
            double scale = 1.0 / determinant;
            inverse[at] = d3 * scale;
            inverse[at + 1] = -d1 * scale;
            inverse[at + 2] = -d2 * scale;
            inverse[at + 3] = d0 * scale;
        }
        return true;
    }

    /**
     * Carries a right-hand side down to the last row.
     *
     * @param r right-hand side, overwritten; length twice the size
     */
    public void forward(double[] r) {
        for (int row = 1; row < size; row++) {
            int at = 4 * row;
            int here = 2 * row;
            r[here] -= factor[at] * r[here - 2] + factor[at + 1] * r[here - 1];
            r[here + 1] -= factor[at + 2] * r[here - 2] + factor[at + 3] * r[here - 1];
        }
    }

    /**
     * Solves from the last row back, after {@link #forward(double[])}.
     *
     * @param r carried right-hand side, overwritten by the solution
     */
    public void backward(double[] r) {
        double next0 = 0.0;
        double next1 = 0.0;
        for (int row = size - 1; row >= 0; row--) {
            int at = 4 * row;
            int here = 2 * row;
            double r0 = r[here] - (upper[at] * next0 + upper[at + 1] * next1);
            double r1 = r[here + 1] - (upper[at + 2] * next0 + upper[at + 3] * next1);
            next0 = inverse[at] * r0 + inverse[at + 1] * r1;
            next1 = inverse[at + 2] * r0 + inverse[at + 3] * r1;
            r[here] = next0;
            r[here + 1] = next1;
        }
    }

    /**
     * Returns one number of the inverse of the last pivot block: what the last row answers to its own right-hand side.
     *
     * @param row 0 or 1
     * @param column 0 or 1
     */
    public double lastInverse(int row, int column) {
        return inverse[4 * (size - 1) + 2 * row + column];
    }

    /** Writes block {@code at} of {@code a} times block {@code atB} of {@code b} into block {@code at} of {@code to}. */
    private static void multiply(double[] a, double[] b, int atB, double[] to, int at) {
        to[at] = a[at] * b[atB] + a[at + 1] * b[atB + 2];
        to[at + 1] = a[at] * b[atB + 1] + a[at + 1] * b[atB + 3];
        to[at + 2] = a[at + 2] * b[atB] + a[at + 3] * b[atB + 2];
        to[at + 3] = a[at + 2] * b[atB + 1] + a[at + 3] * b[atB + 3];
    }
}
