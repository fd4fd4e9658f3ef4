package org.limedry.study.delay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.limedry.simulation.History;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Series;
import org.limedry.study.StudyFixture;

final class RoomDaysTest {
    private static final Instant FROM = Instant.parse("2026-11-02T00:00:00Z");
    private static final int HOURS = 72;

    /** Three days at 10 C: the room full, outdoors half full; a machine that takes a litre an hour on the third day. */
    private static Outcome threeDays() {
        double[] machine = new double[HOURS];
        Arrays.fill(machine, 48, HOURS, 1.0 / 3600.0);
        History.RoomHours room = new History.RoomHours(
                "store", all(10.0), all(1.0), all(10.0), all(450.0), all(0.1), all(0.0), all(0.0), Series.of(machine));
        List<Instant> times = IntStream.range(0, HOURS)
                .mapToObj(hour -> FROM.plus(Duration.ofHours(hour)))
                .toList();
        History history = new History(times, all(10.0), all(0.5), List.of(room), List.of(), List.of());
        Outcome nothing = StudyFixture.outcome(new Outcome.Ending.Complete());
        return new Outcome(
                nothing.ending(),
                nothing.reached(),
                List.of(),
                nothing.account(),
                List.of(),
                List.of(),
                history,
                List.of(),
                nothing.statistics());
    }

    private static Series all(double value) {
        double[] values = new double[HOURS];
        Arrays.fill(values, value);
        return Series.of(values);
    }

    private static RoomDays days(ZoneId zone, int fromHour, int untilHour) {
        return RoomDays.of(
                threeDays(),
                "store",
                zone,
                FROM.plus(Duration.ofHours(fromHour)),
                FROM.plus(Duration.ofHours(untilHour)));
    }

    // PUBLISHED: saturated air at 10 C holds 9.40 g/m3 (reference-data, absolute_humidity_published.csv); half of it
    // times 0.1 m3/s is 40.6 litres a day, and 24 more by the machine.
    @Test
    void roomDays_freshAirAndAMachine_carryOffTheirLitres() {
        RoomDays days = days(ZoneOffset.UTC, 0, HOURS);

        double byAir = 0.5 * 9.40e-3 * 0.1 * 86_400.0;
        assertEquals(byAir, days.litres().get(LocalDate.of(2026, 11, 2)), 0.005 * byAir); // last figure of the table
        assertEquals(
                byAir + 24.0, days.litres().get(LocalDate.of(2026, 11, 4)), 0.005 * byAir); // last figure of the table
        assertEquals(3 * byAir + 24.0, days.totalLitres(), 0.015 * byAir); // the same, three times
    }

    // EXACT: two days carry off 40.6 litres, one 64.6.
    @Test
    void drying_daysThatReachTheTarget_areCounted() {
        RoomDays days = days(ZoneOffset.UTC, 0, HOURS);

        assertEquals(3, days.count());
        assertEquals(3, days.drying(40.0));
        assertEquals(1, days.drying(60.0));
        assertEquals(0, days.drying(70.0));
        assertThrows(IllegalArgumentException.class, () -> days.drying(Double.NaN));
    }

    // EXACT: hours before and after do not count, and days are those of the clock of the place.
    @Test
    void roomDays_betweenTwoInstants_areThoseOfTheLocalCalendar() {
        Map<LocalDate, Double> litres =
                days(ZoneId.of("America/New_York"), 0, 10).litres();

        assertEquals(
                List.of(LocalDate.of(2026, 11, 1), LocalDate.of(2026, 11, 2)),
                litres.keySet().stream().toList());
        assertThrows(
                IllegalArgumentException.class,
                () -> RoomDays.of(threeDays(), "attic", ZoneOffset.UTC, FROM, FROM.plusSeconds(3600)));
    }
}
