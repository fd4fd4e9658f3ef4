package org.limedry.proof.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.limedry.proof.figure.Claim;
import org.limedry.proof.figure.Expected;
import org.limedry.proof.figure.Figure;
import org.limedry.proof.figure.Proof;
import org.limedry.proof.figure.Source;
import org.limedry.proof.figure.Standing;

/** One sheet: what is expected, and what the solver finds on a grid. */
interface Benchmark extends Proof {
    /** The grid of a site. */
    double ORDINARY_GRID = 1.0;

    /** The same with two cells for one. */
    double HALF_CELLS = 2.0;

    /**
     * One expected number.
     *
     * @param quantity what it is, unique within the case
     * @param unit its unit
     * @param value the number
     * @param band how far a finding may lie from it, in the same unit
     */
    record Aim(String quantity, String unit, double value, double band) {}

    /** Returns what a column of a sheet is called at an hour. */
    static String quantity(String column, double hour) {
        return column + ", " + Math.round(hour) + " h";
    }

    /** Returns where the expected numbers come from. */
    Source origin();

    /** Returns every expected number. */
    List<Aim> aims();

    /**
     * Runs the case.
     *
     * @param gridFactor 2 for half of every cell of the ordinary grid
     * @return one number for each expected quantity
     */
    Map<String, Double> found(double gridFactor);

    /** Returns what is known of a quantity on a grid before it is found. */
    default Standing standing(String quantity, double gridFactor) {
        return new Standing.Sound();
    }

    @Override
    default Kind kind() {
        return Kind.BENCHMARK;
    }

    @Override
    default String source() {
        return origin().words();
    }

    @Override
    default List<Figure> figures() {
        List<Figure> figures = new ArrayList<>();
        for (double gridFactor : new double[] {ORDINARY_GRID, HALF_CELLS}) {
            Map<String, Double> found = found(gridFactor);
            for (Aim aim : aims()) {
                Claim claim = new Claim(
                        aim.quantity(),
                        aim.unit(),
                        origin(),
                        Expected.near(aim.value(), aim.band()),
                        bands(),
                        standing(aim.quantity(), gridFactor));
                double value = found.getOrDefault(aim.quantity(), Double.NaN);
                figures.add(new Figure(name(), partOf(gridFactor), claim, value));
            }
        }
        return List.copyOf(figures);
    }

    /** Returns the name of a grid as a part of the case. */
    static String partOf(double gridFactor) {
        return gridFactor == ORDINARY_GRID ? Benchmarks.ORDINARY_GRID : Benchmarks.HALF_CELLS;
    }
}
