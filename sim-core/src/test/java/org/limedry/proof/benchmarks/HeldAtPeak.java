package org.limedry.proof.benchmarks;

import org.limedry.material.LiquidTransport;

/**
 * A liquid transport that keeps its largest conductivity below the suction where it peaks.
 *
 * @param own the material's own
 * @param peakPa suction of the peak, Pa
 */
record HeldAtPeak(LiquidTransport own, double peakPa) implements LiquidTransport {
    private static final int SAMPLES = 4000;
    private static final double LEAST_LOG_PA = Math.log(1.0e-4);
    private static final double LOG_STEP = Math.log(1.0e13) / SAMPLES;

    /** Returns the transport held at the peak between 1e-4 and 1e9 Pa. */
    static HeldAtPeak of(LiquidTransport own) {
        double peakPa = 0.0;
        double most = 0.0;
        for (int k = 0; k <= SAMPLES; k++) {
            double suctionPa = Math.exp(LEAST_LOG_PA + k * LOG_STEP);
            double conductivity = own.conductivityS(suctionPa);
            if (conductivity > most) {
                most = conductivity;
                peakPa = suctionPa;
            }
        }
        return new HeldAtPeak(own, peakPa);
    }

    @Override
    public double conductivityS(double suctionPa) {
        return own.conductivityS(Math.max(suctionPa, peakPa));
    }
}
