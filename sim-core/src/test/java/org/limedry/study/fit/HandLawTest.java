package org.limedry.study.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.math3.analysis.differentiation.DerivativeStructure;
import org.apache.commons.math3.analysis.differentiation.FiniteDifferencesDifferentiator;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

/** The law of a hand that errs, against the normal law of Commons Math 3.6.1 and against a table. */
final class HandLawTest {
    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0.0, 1.0);

    /** COMPUTED: Commons Math 3.6.1, NormalDistribution. */
    @Property(tries = 200)
    void cost_isThatOfTheNormalChance(@ForAll @DoubleRange(min = -30.0, max = 6.0) double u) {
        double expected = -2.0 * Math.log(NORMAL.cumulativeProbability(u));

        assertEquals(expected, HandLaw.cost(u), 1e-9 * (1.0 + expected));
    }

    /** FROM MEMORY: Abramowitz and Stegun, table 26.2, -log10 Q(x) at x = 50, 100 and 500. */
    @Test
    void cost_farOnTheWrongSide_isThatOfTheTable() {
        assertEquals(2.0 * Math.log(10.0) * 544.96634, HandLaw.cost(-50.0), 1e-4);
        assertEquals(2.0 * Math.log(10.0) * 2173.87154, HandLaw.cost(-100.0), 1e-4);
        assertEquals(2.0 * Math.log(10.0) * 54289.90830, HandLaw.cost(-500.0), 1e-4);
    }

    /** EXACT: pull is minus half the slope of the cost, information half its curve; differences of five points by Commons Math. */
    @Property(tries = 200)
    void pullAndInformation_areSlopeAndCurve(@ForAll @DoubleRange(min = -60.0, max = 5.0) double u) {
        DerivativeStructure cost = new FiniteDifferencesDifferentiator(7, 0.05)
                .differentiate(HandLaw::cost)
                .value(new DerivativeStructure(1, 2, 0, u));

        assertEquals(-0.5 * cost.getPartialDerivative(1), HandLaw.pull(u), 1e-6 * (1.0 + Math.abs(u)));
        assertEquals(0.5 * cost.getPartialDerivative(2), HandLaw.information(u), 1e-5);
    }

    /** EXACT: an even chance at the limit costs 2 ln 2, pulls by the root of 2 / pi and tells 2 / pi. */
    @Test
    void atTheLimit_chancesAreEven() {
        assertEquals(2.0 * Math.log(2.0), HandLaw.cost(0.0), 1e-15);
        assertEquals(Math.sqrt(2.0 / Math.PI), HandLaw.pull(0.0), 1e-15);
        assertEquals(2.0 / Math.PI, HandLaw.information(0.0), 1e-15);
    }

    /** EXACT: far on the right side nothing is told, far on the wrong one as much as by a reading. */
    @Test
    void farAway_tellsNothingOrAll() {
        assertEquals(0.0, HandLaw.cost(60.0));
        assertEquals(0.0, HandLaw.pull(60.0));
        assertEquals(0.0, HandLaw.information(60.0));
        assertTrue(HandLaw.information(-1e8) >= 0.0 && HandLaw.information(-1e8) <= 1.0);
        assertEquals(1.0, HandLaw.information(-1e3), 1e-5);
        assertEquals(1e16, HandLaw.cost(-1e8), 1e3);
    }
}
