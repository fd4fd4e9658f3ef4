package org.limedry.proof.benchmarks;

import org.limedry.material.LiquidTransport;
import org.limedry.material.Retention;

/**
 * Liquid that moves with one diffusivity at every water content.
 *
 * @param retention the material's retention
 * @param diffusivityM2PerS the diffusivity, m2/s
 */
record ConstantDiffusivity(Retention retention, double diffusivityM2PerS) implements LiquidTransport {
    @Override
    public double conductivityS(double suctionPa) {
        return diffusivityM2PerS * -retention.slopeKgPerM3(suctionPa) / suctionPa;
    }
}
