package org.limedry.simulation;

/**
 * One number of a proof.
 *
 * @param expected what it should be
 * @param ordinary what the ordinary grid gave
 * @param half what half of every cell gave
 */
record Figure(ProofCase.Expected expected, double ordinary, double half) {
    /** Returns how far half of every cell is off, as a share of the band. */
    double shareOfBand() {
        return Math.abs(half - expected.value()) / expected.band();
    }

    /** Returns how far the ordinary grid is off, as a share of the band. */
    double ordinaryShareOfBand() {
        return Math.abs(ordinary - expected.value()) / expected.band();
    }

    boolean passes() {
        // Written so that NaN fails.
        return shareOfBand() <= 1.0;
    }

    boolean passesOnBoth() {
        return passes() && ordinaryShareOfBand() <= 1.0;
    }
}
