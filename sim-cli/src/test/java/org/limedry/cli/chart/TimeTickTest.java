package org.limedry.cli.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

final class TimeTickTest {
    private static List<String> words(Timeline timeline, Size size) {
        TimeScale scale = new TimeScale(timeline, size.pick(46, 34), size.pick(666, 346));
        return TimeTick.closest(scale, size).stream().map(TimeTick::words).toList();
    }

    // EXACT: 2 November 2026 is a Monday; every 14 days wide and 28 narrow, as the page standard asks.
    @Test
    void closest_threeMonths_areMondaysTwoOrFourWeeksApart() {
        assertEquals(
                List.of("2 Nov", "16 Nov", "30 Nov", "14 Dec", "28 Dec", "11 Jan", "25 Jan"),
                words(DryingSamples.WINTER, Size.WIDE));
        assertEquals(List.of("2 Nov", "30 Nov", "28 Dec", "25 Jan"), words(DryingSamples.WINTER, Size.NARROW));
    }

    // EXACT: a run of two days from 08:00 has these hours in it that are multiples of six.
    @Test
    void closest_twoDays_areHours() {
        assertEquals(
                List.of("12:00", "18:00", "3 Nov", "06:00", "12:00", "18:00", "4 Nov", "06:00"),
                words(DryingSamples.timeline("2026-11-02T08:00:00Z", 2), Size.WIDE));
    }

    // EXACT: Irish clocks go back on 25 October 2026, so that midnight is 23:00 UTC before and 00:00 UTC after.
    @Test
    void closest_clockChange_ticksStayAtLocalMidnight() {
        Timeline timeline = DryingSamples.timeline("2026-10-23T23:00:00Z", 4);
        TimeScale scale = new TimeScale(timeline, 0, 680);

        List<TimeTick> midnights = TimeTick.closest(scale, Size.WIDE).stream()
                .filter(tick -> tick.words().contains("Oct"))
                .toList();

        assertEquals(
                List.of("2026-10-23T23:00:00Z", "2026-10-24T23:00:00Z", "2026-10-26T00:00:00Z", "2026-10-27T00:00:00Z"),
                midnights.stream().map(tick -> tick.at().toString()).toList());
    }

    // EXACT: words that would begin left of the chart begin at its edge, and those after them still stand 6 px clear.
    @Test
    void closest_firstWordsMovedIn_nextStandClear() {
        for (int days = 2; days <= 120; days++) {
            TimeScale scale = new TimeScale(DryingSamples.timeline("2026-09-20T06:00:00Z", days), 0, 346);
            List<TimeTick> ticks = TimeTick.closest(scale, Size.NARROW);
            double first = Text.plain(ticks.get(0).words(), 14).widthPx();
            double next = Text.plain(ticks.get(1).words(), 14).widthPx();

            double end = Math.max(first, scale.x(ticks.get(0).at()) + first / 2);
            assertTrue(scale.x(ticks.get(1).at()) - next / 2 >= end + 6.0 - 1e-9, "days " + days);
        }
    }

    @Test
    void closest_anyLength_wordsStayApart() {
        for (int days = 1; days <= 400; days += 7) {
            TimeScale scale = new TimeScale(DryingSamples.timeline("2026-01-01T10:00:00Z", days), 34, 346);
            List<TimeTick> ticks = TimeTick.closest(scale, Size.NARROW);

            assertTrue(ticks.size() >= 2, "days " + days);
            for (int i = 1; i < ticks.size(); i++) {
                double pitch =
                        scale.x(ticks.get(i).at()) - scale.x(ticks.get(i - 1).at());
                assertTrue(pitch > Text.plain(ticks.get(i).words(), 14).widthPx(), "days " + days);
            }
        }
    }
}
