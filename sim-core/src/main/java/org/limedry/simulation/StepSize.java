package org.limedry.simulation;

/** How long the next step should be, from the error of the last one (elementary controller, third order). */
final class StepSize {
    private static final double FIRST_S = 1.0;
    private static final double AFTER_SWITCH_S = 120.0;
    private static final double LEAST_S = 1.0e-6;
    private static final double SAFETY = 0.9;
    private static final double MOST_GROWTH = 8.0;
    private static final double MOST_SHRINK = 0.2;
    private static final double NEARLY_THERE = 0.93;
    private static final double SHRINK_WHEN_LOST = 0.25;
    private static final double LEAST_ERROR = 1.0e-9;

    private final double maxStepS;
    private double wantedS = FIRST_S;
    private boolean refused;

    StepSize(double maxStepS) {
        this.maxStepS = maxStepS;
    }

    /** Returns the step to try with {@code leftS} to go, s. */
    double next(double leftS) {
        double stepS = Math.min(Math.min(wantedS, maxStepS), leftS);
        if (stepS >= NEARLY_THERE * leftS) {
            return leftS;
        }
        // Two even steps serve better than a long one and a crumb.
        return stepS > 0.5 * leftS ? 0.5 * leftS : stepS;
    }

    void accept(double stepS, double error, boolean cutShort) {
        // A step that follows a refused one must not grow: it would be refused at the same place again.
        double growth = refused ? 1.0 : MOST_GROWTH;
        double grown = stepS * Math.min(growth, SAFETY / Math.cbrt(Math.max(error, LEAST_ERROR)));
        wantedS = cutShort ? Math.max(grown, Math.min(wantedS, growth * grown)) : grown;
        refused = false;
    }

    /**
     * Takes note of a step that was refused.
     *
     * @param error its error against 1, or NaN if it could not be made
     * @return whether a shorter one may be tried
     */
    boolean refuse(double stepS, double error) {
        refused = true;
        wantedS = stepS * (Double.isNaN(error) ? SHRINK_WHEN_LOST : Math.max(MOST_SHRINK, SAFETY / Math.cbrt(error)));
        return wantedS >= LEAST_S;
    }

    /** Starts small again after a coat was laid, or middling after something was switched. */
    void restart(boolean laid) {
        wantedS = laid ? FIRST_S : Math.min(wantedS, AFTER_SWITCH_S);
    }
}
