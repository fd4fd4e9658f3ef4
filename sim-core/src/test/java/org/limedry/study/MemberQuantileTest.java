package org.limedry.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

/** EXACT: definition 6, {@code h = share (n + 1)}, worked by hand. */
final class MemberQuantileTest {
    private static final double ROUNDING = 1e-12;

    @Test
    void quantile_betweenTwoMembers_liesOnTheLineBetweenThem() {
        double[] values = {9.0, 2.0, 5.0, 3.0}; // sorted 2, 3, 5, 9; h = 1 and h = 4

        assertEquals(2.0, MemberQuantile.of(values, MemberQuantile.ONE_IN_FIVE), ROUNDING);
        assertEquals(9.0, MemberQuantile.of(values, MemberQuantile.FOUR_IN_FIVE), ROUNDING);
        assertEquals(4.0, MemberQuantile.of(values, 0.5), ROUNDING); // h = 2.5
    }

    @Test
    void quantile_ofNoMember_isRefused() {
        assertThrows(IllegalArgumentException.class, () -> MemberQuantile.of(new double[0], 0.5));
    }
}
