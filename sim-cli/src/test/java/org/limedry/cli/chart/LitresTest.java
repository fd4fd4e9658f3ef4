package org.limedry.cli.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.NotEmpty;
import org.junit.jupiter.api.Test;

final class LitresTest {
    // EXACT: 1.5 + 1.5 + 1.2 = 4.2; all rounded down give 3; the unit left goes to the first of the two that lost most.
    @Test
    void shares_partsThatWouldRoundUpTogether_addUpToTheTotal() {
        List<BigDecimal> shares = Litres.shares(List.of(1.5, 1.5, 1.2), new BigDecimal("4"));

        assertEquals(List.of(new BigDecimal("2"), new BigDecimal("1"), new BigDecimal("1")), shares);
    }

    // EXACT: the parts are whole tenths already.
    @Test
    void shares_totalWithOneDecimal_areTenths() {
        List<BigDecimal> shares = Litres.shares(List.of(0.3, 4.4), new BigDecimal("4.7"));

        assertEquals(List.of(new BigDecimal("0.3"), new BigDecimal("4.4")), shares);
    }

    @Test
    void shares_allZero_areZero() {
        assertEquals(List.of(new BigDecimal("0")), Litres.shares(List.of(0.0), new BigDecimal("0")));
    }

    @Test
    void shares_negativePartOrNaN_areRefused() {
        BigDecimal total = new BigDecimal("4");

        assertThrows(IllegalArgumentException.class, () -> Litres.shares(List.of(5.0, -1.0), total));
        assertThrows(IllegalArgumentException.class, () -> Litres.shares(List.of(Double.NaN), total));
    }

    @Property(tries = 300)
    void shares_anyParts_addUpAndStayWithinOneUnit(
            @ForAll @NotEmpty List<@DoubleRange(min = 0, max = 5000) Double> parts) {
        double sum = parts.stream().mapToDouble(Double::doubleValue).sum();
        BigDecimal total = Litres.shown(sum);
        double unit = Math.pow(10, -total.scale());

        List<BigDecimal> shares = Litres.shares(parts, total);

        boolean shown = total.signum() > 0;
        assertEquals(shown ? total : BigDecimal.ZERO.setScale(total.scale()), Litres.sum(shares, total));
        for (int i = 0; i < parts.size(); i++) {
            // The total is off by half a unit at most, which moves a part by less; rounding moves it by less than one.
            assertTrue(Math.abs(shares.get(i).doubleValue() - parts.get(i)) < 1.5 * unit + 1e-9);
        }
    }

    // EXACT: whole litres, below 10 litres one decimal, as the page standard asks.
    @Test
    void shown_belowAndFromTenLitres_hasOneDecimalAndNone() {
        assertEquals("9.9", Litres.text(Litres.shown(9.94)));
        assertEquals("10", Litres.text(Litres.shown(10.04)));
        assertEquals("1,235", Litres.text(Litres.shown(1234.5)));
        assertEquals("\u22123.2", Litres.text(Litres.shown(-3.2)));
    }

    @Test
    void shown_notANumber_isRefused() {
        assertThrows(IllegalArgumentException.class, () -> Litres.shown(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Litres.shown(Double.POSITIVE_INFINITY));
    }
}
