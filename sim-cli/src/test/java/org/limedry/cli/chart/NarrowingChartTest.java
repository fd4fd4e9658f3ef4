package org.limedry.cli.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.limedry.cli.chart.NarrowingChart.Came;
import org.limedry.cli.chart.NarrowingChart.Row;

final class NarrowingChartTest {
    /** To the end of 31 January. */
    private static final Timeline RUN = DryingSamples.WINTER;

    private static String found(double... days) {
        return new NarrowingPicture.Forecast(NarrowingSamples.row(RUN, "row", 0, days), RUN)
                .outcome()
                .replace('\u00a0', ' ');
    }

    // EXACT: days counted from 2 November, day 0.
    @Test
    void found_anyDates_saysTheLikelyOneAndTheWidth() {
        assertEquals("likely 24 Dec, 56 days wide", found(28, 52, 84));
        assertEquals("likely 3 Nov, 1 day wide", found(0.9, 1.1, 1.2));
        assertEquals("likely 12 Dec, within a day", found(40.1, 40.2, 40.9));
    }

    // EXACT: the run ends with 31 January, day 90; from 5 January, day 64, it goes on for another 26 days.
    @Test
    void found_datesPastTheRun_saysSo() {
        assertEquals("likely 15 Jan, over 26 days wide", found(64, 74));
        assertEquals("likely after 31 Jan, over 26 days wide", found(64));
        assertEquals("likely after 31 Jan, over 26 days wide", found(64, 95, 99));
        assertEquals("likely after 31 Jan, its end after 31 Jan", found(90.5));
        assertEquals("not by 31 Jan, the end of the run", found());
        assertEquals("not by 31 Jan, the end of the run", found(95, 96, 97));
    }

    @ParameterizedTest
    @EnumSource(Size.class)
    void svg_rows_haveTheirWordsAndDates(Size size) {
        String words = words(NarrowingSamples.closing(), size);

        for (String each : List.of(
                "Store north, coat 1",
                "before any reading",
                "readings to 12 Dec",
                "30 Nov",
                "25 Jan",
                "16 Dec",
                "25 Dec",
                "likely 19 Dec, 9 days wide",
                "what came, 21 Dec",
                "Circle: the day of a forecast.")) {
            assertTrue(words.contains(each), () -> each + " in " + words);
        }
    }

    private static String words(Chart chart, Size size) {
        return String.join(" ", DrawnTexts.of(Charts.svg(chart, size)).words()).replace('\u00a0', ' ');
    }

    @Test
    void svg_openEnd_saysAfterTheRunAndNothingOfWhatDidNotCome() {
        String words = words(NarrowingSamples.openEnded(60), Size.WIDE);

        assertTrue(words.contains("after 31 Dec"), words);
        assertTrue(words.contains("not by 31 Dec, the end of the run"), words);
        assertFalse(words.contains("what came"), words);
        assertFalse(words.contains("Circle"), words);
    }

    @Test
    void story_rows_tellsEachAndWhatCame() {
        String story =
                Picture.of(NarrowingSamples.closing(), Size.NARROW).story().replace('\u00a0', ' ');

        assertTrue(
                story.startsWith("Store north, coat 1. before any reading: likely 24 Dec, 56 days wide, from 30 Nov to"
                        + " 25 Jan."),
                story);
        assertTrue(story.endsWith("from 16 Dec to 25 Dec. what came, 21 Dec."), story);
    }

    // EXACT: a date at midnight and nothing else still gives an axis of a day, which has a noon.
    @Test
    void svg_oneDateAtMidnight_isDrawn() {
        Row row = new Row("one", Optional.empty(), (Ready.Range) DryingSamples.range(RUN, 40, 40, 40));
        NarrowingChart chart = new NarrowingChart("narrowing", "title", RUN, "coat", List.of(row), Optional.empty());

        for (Size size : Size.values()) {
            assertEquals(List.of(), DrawnTexts.of(Charts.svg(chart, size)).faults());
            assertTrue(words(chart, size).contains("12:00"), words(chart, size));
        }
    }

    @Test
    void chart_badData_isRefused() {
        Row early = NarrowingSamples.row(RUN, "early", 3, 10, 20, 30);
        Row late = NarrowingSamples.row(RUN, "late", 5, 10, 20, 30);

        assertThrows(IllegalArgumentException.class, () -> chart("coat", List.of()));
        assertThrows(IllegalArgumentException.class, () -> chart("coat", List.of(late, early)));
        assertThrows(IllegalArgumentException.class, () -> chart(" ", List.of(early, late)));
        assertThrows(IllegalArgumentException.class, () -> NarrowingSamples.row(RUN, " ", 3, 10, 20, 30));
        assertThrows(IllegalArgumentException.class, () -> NarrowingSamples.row(RUN, "row", 3, 20, 10));
        assertThrows(IllegalArgumentException.class, () -> new Came("", RUN.from()));
    }

    private static NarrowingChart chart(String what, List<Row> rows) {
        return new NarrowingChart("narrowing", "title", RUN, what, rows, Optional.empty());
    }
}
