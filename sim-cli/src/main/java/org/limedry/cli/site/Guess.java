package org.limedry.cli.site;

import org.limedry.material.Assumed;
import org.limedry.study.Draw;
import org.limedry.study.Uncertain;

/**
 * A figure that nobody on site can know.
 *
 * @param key its kind; all figures of one kind lie at the same place of their ranges in a draw
 * @param assumed the figure with its range and ground
 */
record Guess(String key, Assumed assumed) {
    /** Tells whether its range is more than one value. */
    boolean isOpen() {
        return assumed.estimate().low() < assumed.estimate().high();
    }

    /** Returns it as an unknown of a study. */
    Uncertain uncertain() {
        return new Uncertain(
                key,
                assumed.words(),
                assumed.unit(),
                assumed.estimate().low(),
                assumed.estimate().likely(),
                assumed.estimate().high(),
                assumed.byFactor(),
                assumed.status(),
                assumed.basis());
    }

    /** Returns its value in a draw. */
    double in(Draw draw) {
        return uncertain().in(draw);
    }
}
