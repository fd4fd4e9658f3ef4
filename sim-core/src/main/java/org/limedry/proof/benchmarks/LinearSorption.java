package org.limedry.proof.benchmarks;

import org.limedry.material.Retention;
import org.limedry.units.Units;

/**
 * Sorption in a straight line of the relative humidity.
 *
 * @param freeSaturationKgPerM3 water at 100 %, kg/m3
 * @param celsius temperature to which the line belongs, C
 */
record LinearSorption(double freeSaturationKgPerM3, double celsius) implements Retention {
    @Override
    public double waterKgPerM3(double suctionPa) {
        return freeSaturationKgPerM3 * Math.exp(-suctionPa / perHumidityPa());
    }

    @Override
    public double slopeKgPerM3(double suctionPa) {
        return -waterKgPerM3(suctionPa) * suctionPa / perHumidityPa();
    }

    private double perHumidityPa() {
        return 1000.0 * 461.5 * Units.kelvin(celsius);
    }
}
