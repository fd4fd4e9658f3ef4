package org.limedry.material;

/** What glass and metal do with water: hold none, pass none. */
public final class Closed implements Retention, LiquidTransport, WaterFunction {
    /** Returns the retention, liquid transport and vapour permeability of a closed material. */
    public static Closed instance() {
        return new Closed();
    }

    private Closed() {}

    @Override
    public double waterKgPerM3(double suctionPa) {
        return 0.0;
    }

    @Override
    public double slopeKgPerM3(double suctionPa) {
        return 0.0;
    }

    @Override
    public double freeSaturationKgPerM3() {
        return 0.0;
    }

    @Override
    public double conductivityS(double suctionPa) {
        return 0.0;
    }

    @Override
    public double at(double waterKgPerM3) {
        return 0.0;
    }
}
