package org.limedry.numerics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

final class Rodas3Test {
    private static final double END = 1.2;

    /** What one run gave: end of both unknowns, integral of the rate of the first, and the sum of the error estimates. */
    private record Run(double y, double z, double integral, double largestEstimate) {}

    // EXACT: y = exp(sin 0.8t), z = cos 0.5t solve
    //   y' = 0.8 cos(0.8t) y - 3 (y^2 - e^(2 sin 0.8t)),   0 = z^3 + 0.7 z + y - (cos^3 0.5t + 0.7 cos 0.5t + e^(sin
    // 0.8t)):
    // nonlinear, time-dependent, the second row without a store. Halving the step must divide the error by 8.
    @Test
    void method_withAnAlgebraicRow_isOfThirdOrder() {
        Run coarse = run(640);
        Run fine = run(1280);
        double y = Math.exp(Math.sin(0.8 * END));
        double z = Math.cos(0.5 * END);

        // The next term of the series: found 2.993 and 2.983.
        assertEquals(3.0, order(coarse.y() - y, fine.y() - y), 0.05);
        assertEquals(3.0, order(coarse.z() - z, fine.z() - z), 0.05);
    }

    // EXACT: the integral of the rate of y is the change of y, by the same linear formula. Tolerance: rounding.
    @Test
    void integral_ofTheRate_isTheChangeOfTheState() {
        Run run = run(640);

        assertEquals(run.y() - 1.0, run.integral(), 1.0e-13);
    }

    // EXACT: the embedded method is of second order, so the estimate of one step falls with the cube of the step.
    @Test
    void errorEstimate_ofHalfTheStep_isAnEighth() {
        double order = order(run(640).largestEstimate(), run(1280).largestEstimate());

        assertEquals(3.0, order, 0.05);
        assertTrue(run(640).largestEstimate() > 1.0e-9);
    }

    // EXACT: a stage looks at a new state where its place in the step or its weights differ from the stage before.
    @Test
    void newState_isTold_whereTheStageLooksElsewhere() {
        for (int i = 1; i < Rodas3.STAGES; i++) {
            double move = Math.abs(Rodas3.alpha(i) - Rodas3.alpha(i - 1)) + Math.abs(Rodas3.a(i, i - 1));
            for (int j = 0; j < i - 1; j++) {
                move += Math.abs(Rodas3.a(i, j) - Rodas3.a(i - 1, j));
            }

            assertEquals(move > 0.0, Rodas3.isNewState(i), "stage " + i);
        }
    }

    private static double order(double coarse, double fine) {
        return Math.log(Math.abs(coarse / fine)) / Math.log(2.0);
    }

    private static Run run(int steps) {
        double h = END / steps;
        double[] state = {1.0, 1.0};
        double integral = 0.0;
        double largest = 0.0;
        for (int step = 0; step < steps; step++) {
            double[] result = step(step * h, state, h);
            integral += result[2];
            largest = Math.max(largest, Math.abs(result[3]));
            state = new double[] {result[0], result[1]};
        }
        return new Run(state[0], state[1], integral, largest);
    }

    private static double[] step(double t, double[] y, double h) {
        double[] jacobian = jacobian(t, y);
        double[] byTime = byTime(t, y);
        DenseSolver solver = new DenseSolver(2);
        double perGammaStep = 1.0 / (Rodas3.DIAGONAL * h);
        double[] matrix = {perGammaStep - jacobian[0], -jacobian[1], -jacobian[2], -jacobian[3]};
        System.arraycopy(matrix, 0, solver.matrix(), 0, 4);
        assertTrue(solver.factor());
        double[][] stages = new double[Rodas3.STAGES][];
        Rodas3.Integral integral = new Rodas3.Integral();
        double[] f = rates(t, y);
        for (int i = 0; i < Rodas3.STAGES; i++) {
            if (Rodas3.isNewState(i)) {
                f = rates(t + Rodas3.alpha(i) * h, stageState(y, stages, i));
            }
            double[] u = {f[0] + Rodas3.gamma(i) * h * byTime[0], f[1] + Rodas3.gamma(i) * h * byTime[1]};
            for (int j = 0; j < i; j++) {
                // Only the first row stores.
                u[0] += Rodas3.c(i, j) / h * stages[j][0];
            }
            solver.solve(u);
            stages[i] = u;
            double linear = jacobian[0] * u[0] + jacobian[1] * u[1] + Rodas3.gamma(i) * h * byTime[0];
            integral.stage(i, h, f[0] + linear);
        }
        double[] end = y.clone();
        for (int i = 0; i < Rodas3.STAGES; i++) {
            end[0] += Rodas3.m(i) * stages[i][0];
            end[1] += Rodas3.m(i) * stages[i][1];
        }
        return new double[] {end[0], end[1], integral.overStep(), stages[Rodas3.STAGES - 1][0]};
    }

    private static double[] stageState(double[] y, double[][] stages, int i) {
        double[] state = y.clone();
        for (int j = 0; j < i; j++) {
            state[0] += Rodas3.a(i, j) * stages[j][0];
            state[1] += Rodas3.a(i, j) * stages[j][1];
        }
        return state;
    }

    private static double[] rates(double t, double[] y) {
        double e = Math.exp(Math.sin(0.8 * t));
        double c = Math.cos(0.5 * t);
        return new double[] {
            0.8 * Math.cos(0.8 * t) * y[0] - 3.0 * (y[0] * y[0] - e * e),
            y[1] * y[1] * y[1] + 0.7 * y[1] + y[0] - (c * c * c + 0.7 * c + e)
        };
    }

    private static double[] jacobian(double t, double[] y) {
        return new double[] {0.8 * Math.cos(0.8 * t) - 6.0 * y[0], 0.0, 1.0, 3.0 * y[1] * y[1] + 0.7};
    }

    private static double[] byTime(double t, double[] y) {
        double e = Math.exp(Math.sin(0.8 * t));
        double slope = 0.8 * Math.cos(0.8 * t) * e;
        double c = Math.cos(0.5 * t);
        double s = 0.5 * Math.sin(0.5 * t);
        return new double[] {-0.64 * Math.sin(0.8 * t) * y[0] + 6.0 * e * slope, 3.0 * c * c * s + 0.7 * s - slope};
    }
}
