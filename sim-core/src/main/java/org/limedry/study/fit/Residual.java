package org.limedry.study.fit;

/**
 * One reading and what the likely run and the fitted run say of it, in the unit of {@link Reading#measured()}: C, fraction,
 * litres. Of a hand test the runs say how far the coat is past the nearest limit of the ready rule, e-folds; measured is
 * that limit, 0.
 *
 * @param reading the reading
 * @param before what the likely run says; NaN if it gave up before
 * @param after what the fitted run says; NaN if it gave up before
 * @param offset what its logger reads too much, as found; 0 where no offset is shared
 * @param sigma error of the reading, one sigma, as given
 * @param share root of the share of the reading's own error that is still to be seen in what the fit left over: 1 of a reading that
 *     had no say, near 0 of one that the fit had to follow
 */
public record Residual(Reading reading, double before, double after, double offset, double sigma, double share) {
    /** Returns what was read, nothing taken off. */
    public double measured() {
        return reading.measured();
    }

    /** Returns how far the reading lies above the likely run, sigma; 0 of a hand test on the right side. */
    public double sigmasBefore() {
        return hinged((measured() - before) / sigma);
    }

    /** Returns how far the reading, its offset taken off, lies above the fitted run, sigma; 0 of a hand test on the right side. */
    public double sigmasAfter() {
        return hinged((measured() - offset - after) / sigma);
    }

    /**
     * Returns how far the reading lies above what the beliefs and all other readings foretell, in sigmas of that difference:
     * what the fit left over is too small by the share that the fit followed this very reading. Deletion residual of a
     * linear regression, Cook and Weisberg 1982, Residuals and influence in regression, section 2.2, FROM MEMORY.
     */
    public double sigmasFromTheOthers() {
        return sigmasAfter() / share;
    }

    private double hinged(double above) {
        return Double.isNaN(above) || FitReadings.differs(reading, above) ? above : 0.0;
    }
}
