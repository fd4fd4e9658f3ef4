package org.limedry.wall;

import org.limedry.material.Material;
import org.limedry.material.SuctionTable;

/**
 * A material's functions for the solver, over the moisture variable u of its wall (see {@link SuctionScale}), each with
 * its slope by u.
 */
sealed interface Transport permits TransportTable, TabulatedTransport {
    /** Numbers written by {@link #evaluate}: water, potential, permeability, conductivity, each followed by its slope. */
    int WIDTH = 8;

    /** Returns what the solver makes of a material: pieces of its curves, or its own table to the letter. */
    static Transport of(Material material) {
        return material.retention() instanceof SuctionTable
                ? new TabulatedTransport(material)
                : new TransportTable(material);
    }

    /** Returns the heat capacity without water, J/(m3 K). */
    double dryHeatCapacityJPerM3K();

    /** Tells whether the material neither holds nor passes water. */
    boolean isClosed();

    /** Writes all eight numbers at u into {@code out} from {@code at}. */
    void evaluate(double u, double[] out, int at);

    /** Returns the water at u, small stores of the solver included, kg/m3. */
    double waterKgPerM3(double u);

    /** Returns the slope of that water by u, kg/m3; below 0. */
    double waterSlopeKgPerM3(double u);

    /** Writes the water at u and its slope into {@code to}. */
    void water(double u, double[] to);

    /** Returns the correction of u that one Newton step makes towards a given water. */
    double newtonMove(double u, double waterKgPerM3);

    /** Returns the water that the material's own curve tells at u, kg/m3. */
    double ownKgPerM3(double u);

    /** Returns the water by which a share of filling is told, kg/m3. */
    double fullKgPerM3();

    /** Returns the water added to the water held in the weight of an error, kg/m3. */
    double errorFloorKgPerM3();
}
