package org.limedry.cli.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.limedry.cli.chart.CoverageChart.Row;

final class CoverageChartTest {
    private static Row row(int inside, int cases, double low, double high) {
        return new Row("week 1", inside, cases, low, high, OptionalDouble.of(9));
    }

    // EXACT: both ends of what is accepted are accepted.
    @Test
    void accepted_shareAgainstItsBand_countsBothEnds() {
        assertTrue(row(72, 100, 0.72, 0.88).accepted());
        assertTrue(row(88, 100, 0.72, 0.88).accepted());
        assertFalse(row(71, 100, 0.72, 0.88).accepted());
        assertFalse(row(89, 100, 0.72, 0.88).accepted());
        assertEquals(0.8, row(4, 5, 0, 1).share(), 1e-15); // one rounding
    }

    private static String words(Chart chart, Size size) {
        return String.join(" ", DrawnTexts.of(Charts.svg(chart, size)).words()).replace('\u00a0', ' ');
    }

    @ParameterizedTest
    @EnumSource(Size.class)
    void svg_rows_sayCasesAndWidth(Size size) {
        String words = words(CoverageSamples.weeks(), size);

        for (String each : List.of(
                "before any reading",
                "week 4",
                "81 of 100, median width 9 days",
                "69 of 100, outside; median width 5.5 days",
                "hatched: accepted, 72 to 88",
                "stated: 80")) {
            assertTrue(words.contains(each), () -> each + " in " + words);
        }
    }

    @Test
    void svg_bandsThatDiffer_areNotToldAsOne() {
        String words = words(CoverageSamples.uneven(), Size.WIDE);

        assertTrue(words.contains("hatched: accepted"), words);
        assertFalse(words.contains("accepted,"), words);
        assertTrue(words.contains("2 of 9, outside; most ranges past the run"), words);
        assertTrue(words.contains("1,200 of 1,200, outside; median width 120 days"), words);
        assertTrue(words.contains("412 of 512, median width 1 day"), words);
    }

    // EXACT: a share of 0.22 needs an axis from 10; shares and bands above 54 leave it at 50.
    @Test
    void svg_axis_startsBelowTheLowest() {
        Row low = row(22, 100, 0.72, 0.88);

        List<String> near =
                DrawnTexts.of(Charts.svg(CoverageSamples.weeks(), Size.WIDE)).words();
        List<String> far =
                DrawnTexts.of(Charts.svg(CoverageSamples.chart(low), Size.WIDE)).words();

        assertTrue(near.contains("50") && !near.contains("40"), near::toString);
        assertTrue(far.contains("10") && !far.contains("0"), far::toString);
    }

    @Test
    void story_rows_tellsAll() {
        String story = Picture.of(CoverageSamples.chart(row(69, 100, 0.72, 0.88)), Size.WIDE)
                .story();

        assertEquals(
                "week 1: 69 of 100 came inside, stated 80 of 100, accepted 72 to 88, median width 9 days, outside what is"
                        + " accepted.",
                story);
    }

    @Test
    void chart_badData_isRefused() {
        Row good = row(81, 100, 0.72, 0.88);

        assertThrows(IllegalArgumentException.class, () -> row(-1, 100, 0.72, 0.88));
        assertThrows(IllegalArgumentException.class, () -> row(101, 100, 0.72, 0.88));
        assertThrows(IllegalArgumentException.class, () -> row(0, 0, 0.72, 0.88));
        assertThrows(IllegalArgumentException.class, () -> row(81, 100, 0.89, 0.88));
        assertThrows(IllegalArgumentException.class, () -> row(81, 100, 0.72, 1.01));
        assertThrows(IllegalArgumentException.class, () -> row(81, 100, Double.NaN, 0.88));
        assertThrows(IllegalArgumentException.class, () -> new Row(" ", 8, 10, 0.7, 0.9, OptionalDouble.empty()));
        assertThrows(IllegalArgumentException.class, () -> new Row("week", 8, 10, 0.7, 0.9, OptionalDouble.of(-1)));
        assertThrows(IllegalArgumentException.class, () -> CoverageSamples.chart(new Row[0]));
        assertThrows(IllegalArgumentException.class, () -> new CoverageChart("coverage", "title", 1, List.of(good)));
    }
}
