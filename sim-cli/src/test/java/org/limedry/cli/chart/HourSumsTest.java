package org.limedry.cli.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.limedry.cli.chart.WallAndDewPointChart.Hour;

final class HourSumsTest {
    /** Hour by hour from the start of the run; the doors stand open in the last hour of each day. */
    private static HourSums sums(int days) {
        Timeline timeline = DryingSamples.timeline("2026-11-02T00:00:00Z", days);
        List<Hour> hours = IntStream.rangeClosed(0, 24 * days)
                .mapToObj(i ->
                        new Hour(timeline.from().plus(Duration.ofHours(i)), i, 0.5 * i + 10, i % 24 == 0 ? 1 : 0, 0, 0))
                .toList();
        return new HourSums(timeline, hours);
    }

    // EXACT: hour by hour up to 21 days, means of each day above, as the page standard asks.
    @Test
    void line_upToTwentyOneDays_isHourByHour() {
        assertEquals(21 * 24 + 1, sums(21).line(Hour::wallCelsius).size());
        assertEquals(22, sums(22).line(Hour::wallCelsius).size());
    }

    // EXACT: the second day holds the values 25 to 48, whose mean is 36.5; it stands at noon.
    @Test
    void line_longRun_isTheMeanOfEachDayAtNoon() {
        TimedValue second = sums(30).line(Hour::wallCelsius).get(1);

        assertEquals(new TimedValue(Instant.parse("2026-11-03T12:00:00Z"), 36.5), second);
    }

    // EXACT: the hour that ends at midnight is the last of its day, and the first entry is no hour at all.
    @Test
    void hoursByDay_hourEndingAtMidnight_belongsToTheDayBefore() {
        assertEquals(1.0, sums(22).hoursByDay(Hour::doorsOpenShare).get(LocalDate.of(2026, 11, 2)));
        assertEquals(22, sums(22).hoursByDay(Hour::doorsOpenShare).size());
    }

    // EXACT: the first open hour is 23:00 to 24:00 on the first day; in a long run the whole day counts, and all join.
    @Test
    void stretches_shortAndLongRun_areHoursAndDays() {
        List<HourSums.Stretch> ofHours = sums(3).stretches(hour -> hour.doorsOpenShare() > 0);
        List<HourSums.Stretch> ofDays = sums(30).stretches(hour -> hour.doorsOpenShare() > 0);

        assertEquals(
                new HourSums.Stretch(Instant.parse("2026-11-02T23:00:00Z"), Instant.parse("2026-11-03T00:00:00Z")),
                ofHours.get(0));
        assertEquals(3, ofHours.size());
        assertEquals(
                List.of(new HourSums.Stretch(
                        Instant.parse("2026-11-02T00:00:00Z"), Instant.parse("2026-12-02T00:00:00Z"))),
                ofDays);
    }

    // EXACT: 0.5 i + 10 is at or above i up to i = 20; the first entry is no hour.
    @Test
    void wetHours_dewPointAtTheWall_countsAsWet() {
        Timeline timeline = DryingSamples.timeline("2026-11-02T00:00:00Z", 2);
        List<Hour> hours = IntStream.rangeClosed(0, 48)
                .mapToObj(i -> new Hour(timeline.from().plus(Duration.ofHours(i)), i, 0.5 * i + 10, 0, 0, 0))
                .toList();

        WallAndDewPointChart chart = new WallAndDewPointChart(
                "wall", "A wall", timeline, "north", hours, new WallAndDewPointChart.PlantWords("", ""));

        assertEquals(20, chart.wetHours());
    }
}
