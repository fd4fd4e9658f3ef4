package org.limedry.air;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.limedry.units.Check;

/** One saturation formula over one phase, with its range and its inverse. */
final class SaturationBranch {
    /** No dew point is sought below this, °C. */
    static final double LOWEST_CELSIUS = -100.0;

    // The root is sought in ln p, where every formula is nearly straight: a few steps reach the last digits.
    private static final double ROOT_ACCURACY_K = 1e-12;
    private static final int MAX_ROOT_EVALUATIONS = 200;

    private final DoubleUnaryOperator pressurePa;
    private final DoubleUnaryOperator inverseCelsius;
    private final double minCelsius;
    private final double maxCelsius;
    private final Optional<MagnusForm> magnus;

    private SaturationBranch(
            DoubleUnaryOperator pressurePa,
            DoubleUnaryOperator inverseCelsius,
            double minCelsius,
            double maxCelsius,
            Optional<MagnusForm> magnus) {
        this.magnus = magnus;
        this.pressurePa = pressurePa;
        this.inverseCelsius = inverseCelsius;
        this.minCelsius = minCelsius;
        this.maxCelsius = maxCelsius;
    }

    /** A branch of the Magnus form, inverted in closed form. */
    static SaturationBranch of(MagnusForm form, double minCelsius, double maxCelsius) {
        return new SaturationBranch(form::pressurePa, form::celsius, minCelsius, maxCelsius, Optional.of(form));
    }

    /** A branch that is inverted by a bracketed root. */
    static SaturationBranch of(DoubleUnaryOperator pressurePa, double minCelsius, double maxCelsius) {
        double low = lowest(minCelsius);
        return new SaturationBranch(
                pressurePa,
                pressure -> root(pressurePa, pressure, low, maxCelsius),
                minCelsius,
                maxCelsius,
                Optional.empty());
    }

    private static double root(DoubleUnaryOperator pressurePa, double pressure, double low, double high) {
        return new BrentSolver(ROOT_ACCURACY_K)
                .solve(
                        MAX_ROOT_EVALUATIONS,
                        celsius -> Math.log(pressurePa.applyAsDouble(celsius) / pressure),
                        low,
                        high);
    }

    /** Returns the Magnus form behind the branch, if it is one. */
    Optional<MagnusForm> magnus() {
        return magnus;
    }

    double minCelsius() {
        return minCelsius;
    }

    double maxCelsius() {
        return maxCelsius;
    }

    double lowestCelsius() {
        return lowest(minCelsius);
    }

    double pressurePa(double celsius) {
        Check.inClosed(celsius, minCelsius, maxCelsius, "celsius", "°C");
        return extrapolatedPressurePa(celsius);
    }

    double extrapolatedPressurePa(double celsius) {
        return pressurePa.applyAsDouble(celsius);
    }

    OptionalDouble extrapolatedCelsius(double pressure) {
        return between(lowestCelsius(), pressure);
    }

    private OptionalDouble between(double low, double pressure) {
        boolean within = pressure >= extrapolatedPressurePa(low) && pressure <= extrapolatedPressurePa(maxCelsius);
        return within ? OptionalDouble.of(inverseCelsius.applyAsDouble(pressure)) : OptionalDouble.empty();
    }

    /** A formula that goes below 0 °C was made for that side and may be followed down; one that ends there may not. */
    private static double lowest(double minCelsius) {
        return minCelsius < 0.0 ? LOWEST_CELSIUS : minCelsius;
    }
}
