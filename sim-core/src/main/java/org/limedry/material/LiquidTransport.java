package org.limedry.material;

/** Liquid conductivity: liquid flow = conductivity times gradient of suction, towards higher suction. */
public interface LiquidTransport {
    /**
     * Returns the conductivity.
     *
     * @param suctionPa suction, Pa; above 0
     * @return conductivity, s (kg/(m s Pa))
     */
    double conductivityS(double suctionPa);
}
