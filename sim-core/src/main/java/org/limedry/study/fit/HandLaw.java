package org.limedry.study.fit;

import org.apache.commons.math3.special.Erf;

/**
 * How likely a hand finds what it found: a hand with a normal error feels a coat as ready as it is, give or take, and says on which
 * side of the limit that lies.
 *
 * <p>The chance of what was found is {@code Phi(u)}, u how far on that side the coat is, in errors of the hand; its cost beside sums
 * of squares is {@code -2 ln Phi(u)}: near nothing far on the right side, 1.4 at the limit, and near {@code u^2} far on the
 * wrong one.
 *
 * <p><b>Source:</b> probit law, Bliss 1935, The calculation of the dosage-mortality curve, Annals of Applied Biology 22, 134-167, FROM
 * MEMORY; far tail by the asymptotic series of the normal integral (Abramowitz and Stegun 26.2.12, FROM MEMORY). <b>Valid:</b> any
 * finite u. <b>Accuracy:</b> 1e-9 of the cost.
 */
final class HandLaw {
    private static final double LOG_ROOT_TWO_PI = 0.5 * Math.log(2.0 * Math.PI);

    /** Below this the integral is taken from its series, whose next term is 2e-12 there. */
    private static final double FAR = -30.0;

    private HandLaw() {}

    /** Returns what it costs that a hand found a coat on the side on which it lies u of its errors. */
    static double cost(double u) {
        return 0.0 - 2.0 * logChance(u); // not -0
    }

    private static double logChance(double u) {
        if (u > FAR) {
            return Math.log(0.5 * Erf.erfc(-u / Math.sqrt(2.0)));
        }
        return -0.5 * u * u - LOG_ROOT_TWO_PI - Math.log(-u) + Math.log(series(u));
    }

    private static double series(double u) {
        double square = 1.0 / (u * u);
        return 1.0 - square * (1.0 - 3.0 * square * (1.0 - 5.0 * square * (1.0 - 7.0 * square)));
    }

    /** Returns minus half the slope of the cost: how hard the finding pulls the coat to its side. */
    static double pull(double u) {
        return u > FAR ? Math.exp(-0.5 * u * u - LOG_ROOT_TWO_PI - logChance(u)) : -u / series(u);
    }

    /** Returns half the second derivative of the cost, within 0 and 1: what the finding tells there, against a reading of error 1. */
    static double information(double u) {
        double pull = pull(u);
        return Math.max(0.0, Math.min(1.0, pull * (pull + u)));
    }
}
