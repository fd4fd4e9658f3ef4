package org.limedry.simulation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** One benchmark: what is expected, and what the solver finds on a grid. */
interface ProofCase {
    /**
     * One expected number.
     *
     * @param quantity what it is, unique within the case
     * @param unit its unit
     * @param value the number
     * @param band how far a finding may lie from it, in the same unit
     */
    record Expected(String quantity, String unit, double value, double band) {}

    /** Returns the name of the benchmark. */
    String name();

    /** Returns what was run and how, in a sentence or two. */
    String setUp();

    /** Returns where the expected numbers come from: label and source. */
    String source();

    /** Returns the accepted bands in words, with their reason. */
    String bands();

    /** Returns every expected number. */
    List<Expected> expected();

    /**
     * Runs the case.
     *
     * @param gridFactor 2 for half of every cell of the ordinary grid
     * @return one number for each expected quantity
     */
    Map<String, Double> found(double gridFactor);

    /** Tells whether the sheet's band is meant for a finer grid than the ordinary one. */
    default boolean isForFinerGrid() {
        return false;
    }

    /** Returns quantities known to miss their band, each with the reason; a test holds that they do. */
    default Map<String, String> knownShort() {
        return Map.of();
    }

    /** Runs the case on the ordinary grid and on half of every cell. */
    default List<Figure> figures() {
        Map<String, Double> ordinary = found(1.0);
        Map<String, Double> half = found(2.0);
        List<Figure> figures = new ArrayList<>();
        for (Expected expected : expected()) {
            figures.add(new Figure(expected, ordinary.get(expected.quantity()), half.get(expected.quantity())));
        }
        return figures;
    }
}
