package org.limedry.numerics;

/**
 * Coefficients of the linearly implicit Rosenbrock method RODAS3: four stages, third order, stiffly accurate, embedded
 * second order.
 *
 * <p><b>Source:</b> Sandu, Verwer, Blom, Spee, Carmichael, Potra and Dekker 1997, Atmos. Environ. 31, 3459; coefficients
 * FROM MEMORY, checked by an order test. In the form without products of the Jacobian: for stage i solve
 * {@code (M/(g h) - J) U_i = f(t + alpha_i h, y + sum a_ij U_j) + M sum c_ij U_j / h + gamma_i h f_t}; the new state is
 * {@code y + sum m_i U_i} and its error estimate {@code U_4}. Algebraic rows (M = 0) are allowed.
 */
public final class Rodas3 {
    /** Number of stages. */
    public static final int STAGES = 4;

    /** The coefficient g of the diagonal. */
    public static final double DIAGONAL = 0.5;

    private static final double[][] A = {{}, {0.0}, {2.0, 0.0}, {2.0, 0.0, 1.0}};
    private static final double[][] C = {{}, {4.0}, {1.0, -1.0}, {1.0, -1.0, -8.0 / 3.0}};
    private static final double[] M = {2.0, 0.0, 1.0, 1.0};
    private static final double[] ALPHA = {0.0, 0.0, 1.0, 1.0};
    private static final double[] GAMMA = {0.5, 1.5, 0.0, 0.0};

    private Rodas3() {}

    /** Returns a_ij: the weight of stage {@code j} in the state of stage {@code i}. */
    public static double a(int i, int j) {
        return A[i][j];
    }

    /** Returns c_ij: the weight of stage {@code j} in the right-hand side of stage {@code i}. */
    public static double c(int i, int j) {
        return C[i][j];
    }

    /** Returns m_i: the weight of stage {@code i} in the new state. */
    public static double m(int i) {
        return M[i];
    }

    /** Returns alpha_i: the place in the step at which stage {@code i} looks, 0 to 1. */
    public static double alpha(int i) {
        return ALPHA[i];
    }

    /** Returns gamma_i: the weight of the time slope in stage {@code i}. */
    public static double gamma(int i) {
        return GAMMA[i];
    }

    /** Tells whether stage {@code i} looks at a new state; the others share that of the stage before. */
    public static boolean isNewState(int i) {
        return i != 1;
    }

    /** An integral over a step, carried through the stages by the same linear formula as the state. */
    public static final class Integral {
        private final double[] stages = new double[STAGES];

        /** Makes an integral of zero. */
        public Integral() {}

        /**
         * Records a stage.
         *
         * @param i the stage
         * @param stepS the step, s
         * @param rate the linearised rate of the stage: its value plus slopes times stage plus gamma_i h times its time
         *     slope
         */
        public void stage(int i, double stepS, double rate) {
            double sum = stepS * rate;
            for (int j = 0; j < i; j++) {
                sum += c(i, j) * stages[j];
            }
            stages[i] = DIAGONAL * sum;
        }

        /** Returns the integral over the step, once all stages are recorded. */
        public double overStep() {
            double sum = 0.0;
            for (int i = 0; i < STAGES; i++) {
                sum += m(i) * stages[i];
            }
            return sum;
        }
    }
}
