package org.limedry.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class TimetableTest {
    private static final ZoneId DUBLIN = ZoneId.of("Europe/Dublin");
    private static final Instant MONDAY = Instant.parse("2026-11-09T00:00:00Z");
    private static final Instant NEXT_MONDAY = Instant.parse("2026-11-16T00:00:00Z");

    private static String spans(Timetable timetable, Instant from, Instant until) {
        return timetable.over(DUBLIN, from, until).spans().stream()
                .map(span -> span.from() + "/" + span.until())
                .collect(Collectors.joining(" "));
    }

    private static String week(String text) {
        return spans(Timetable.parse(text), MONDAY, NEXT_MONDAY);
    }

    // EXACT: hours on in the week of Monday 9 November 2026, when Dublin keeps UTC.
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Mon-Fri 09:00-15:30 | 32.5",
                "daily 07:00-19:00 | 84",
                "always | 168",
                "never | 0",
                "Sat | 24",
                "Sat, Sun 10:00-12:00 | 4",
                "Mon-Fri 9:00-12:00, 13:00-16:00 | 30",
                "mon–fri 08:00 – 10:00 ; SATURDAY 08:00-09:00 | 11",
                "daily 22:00-06:00 | 56",
                "Sat-Mon 00:00-24:00 | 72",
                "daily 20:00-00:00 | 28"
            })
    void parse_addsUpToTheHoursOfAWeek(String text, double hours) {
        Duration sum = Timetable.parse(text).over(DUBLIN, MONDAY, NEXT_MONDAY).spans().stream()
                .map(span -> Duration.between(span.from(), span.until()))
                .reduce(Duration.ZERO, Duration::plus);

        assertEquals(Duration.ofMinutes(Math.round(60.0 * hours)), sum);
    }

    // EXACT: a night belongs to the evening on which it begins; the run's ends cut it.
    @Test
    void nightOfFriday_endsOnSaturday() {
        assertEquals("2026-11-13T22:00:00Z/2026-11-14T06:00:00Z", week("Fri 22:00-06:00"));
        assertEquals(
                "2026-11-09T00:00:00Z/2026-11-09T06:00:00Z 2026-11-15T22:00:00Z/2026-11-16T00:00:00Z",
                week("Sun 22:00-06:00"));
    }

    // PUBLISHED: tz database: in Ireland clocks go forward on 29 March 2026 at 01:00 UTC and back on 25 October 2026 at
    // 01:00 UTC. EXACT: the same clock times then lie an hour apart in UTC, and the nights last 7 and 9 hours.
    @Test
    void daytime_followsTheClockOnTheWall() {
        Timetable timetable = Timetable.parse("daily 09:00-10:00");

        assertEquals(
                "2026-03-28T09:00:00Z/2026-03-28T10:00:00Z 2026-03-29T08:00:00Z/2026-03-29T09:00:00Z",
                spans(timetable, Instant.parse("2026-03-28T00:00:00Z"), Instant.parse("2026-03-29T23:00:00Z")));
        assertEquals(
                "2026-10-24T08:00:00Z/2026-10-24T09:00:00Z 2026-10-25T09:00:00Z/2026-10-25T10:00:00Z",
                spans(timetable, Instant.parse("2026-10-24T00:00:00Z"), Instant.parse("2026-10-26T00:00:00Z")));
    }

    @ParameterizedTest
    @CsvSource({ // night of, what it is in UTC: EXACT by the clock changes above
        "2026-03-28, 2026-03-28T22:00:00Z/2026-03-29T05:00:00Z",
        "2026-10-24, 2026-10-24T21:00:00Z/2026-10-25T06:00:00Z"
    })
    void nightOfAClockChange_isAnHourShorterOrLonger(LocalDate night, String expected) {
        Timetable timetable = Timetable.parse("daily 22:00-06:00").from(night).until(night);

        assertEquals(
                expected,
                spans(timetable, Instant.parse("2026-01-01T00:00:00Z"), Instant.parse("2026-12-31T00:00:00Z")));
    }

    // EXACT: the clock never shows 01:00 to 02:00 on 29 March, and shows it twice on 25 October; the earlier counts.
    @ParameterizedTest
    @CsvSource({
        "Sun 01:10-01:50, 2026-03-29, ''",
        "Sun 00:30-01:30, 2026-03-29, 2026-03-29T00:30:00Z/2026-03-29T01:00:00Z",
        "Sun 01:30-02:30, 2026-03-29, 2026-03-29T01:00:00Z/2026-03-29T01:30:00Z",
        "Sun 01:15-01:45, 2026-10-25, 2026-10-25T00:15:00Z/2026-10-25T00:45:00Z",
        "Sun 01:30-02:30, 2026-10-25, 2026-10-25T00:30:00Z/2026-10-25T02:30:00Z"
    })
    void timesWithinAClockChange_areSettled(String text, LocalDate day, String expected) {
        Timetable timetable = Timetable.parse(text).from(day).until(day);

        assertEquals(
                expected,
                spans(timetable, Instant.parse("2026-01-01T00:00:00Z"), Instant.parse("2026-12-31T00:00:00Z")));
    }

    // EXACT: from Wednesday to Thursday, both with their day.
    @Test
    void dates_boundTheTimetable() {
        Timetable timetable = Timetable.parse("daily 08:00-09:00")
                .from(LocalDate.of(2026, 11, 11))
                .until(LocalDate.of(2026, 11, 12));

        assertEquals(
                "2026-11-11T08:00:00Z/2026-11-11T09:00:00Z 2026-11-12T08:00:00Z/2026-11-12T09:00:00Z",
                spans(timetable, MONDAY, NEXT_MONDAY));
        IllegalArgumentException wrong =
                assertThrows(IllegalArgumentException.class, () -> timetable.until(LocalDate.of(2026, 11, 10)));
        assertEquals("until: must not be before 2026-11-11, was 2026-11-10", wrong.getMessage());
    }

    @Test
    void always_isOnFromEndToEndOverAClockChange() {
        Instant from = Instant.parse("2026-03-20T12:34:00Z");
        Instant until = Instant.parse("2026-04-02T01:02:00Z");

        assertEquals(Schedule.always(from, until), Timetable.always().over(DUBLIN, from, until));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Mon-Fry 09:00-15:30 | found \"Fry\" for a day, allowed are Mon Tue Wed Thu Fri Sat Sun",
                "Mon-Fri 09:00-25:30 | found \"25:30\", allowed are times from 00:00 to 24:00",
                "Mon-Fri 09:70-15:30 | found \"09:70\"",
                "Mon-Fri 9-15 | found \"9-15\" for the times, allowed is HH:MM-HH:MM such as 09:00-15:30",
                "Mon 09:00-10:00 please | found \"please\" after days and times",
                "Mon 09:00-09:00 | the end must differ from the beginning",
                "Mon 24:00-09:00 | 24:00 may only be an end",
                "'' | found nothing, allowed is",
                "Mon 09:00-10:00; | found nothing, allowed is",
                "09:00-10:00 | found \"09:00\" for a day",
                "Mon- 09:00-10:00 | found \"09:00-10:00\" for a day"
            })
    void parse_nonsense_isToldWhatIsAllowed(String text, String expected) {
        String message = assertThrows(IllegalArgumentException.class, () -> Timetable.parse(text))
                .getMessage();

        assertTrue(message.startsWith("timetable \"" + text + "\": "), message);
        assertTrue(message.contains(expected), message);
    }

    // Any other exception than the one promised fails here.
    @Property
    void parse_anyText_isReadOrRefusedInOneLine(@ForAll String text) {
        try {
            Timetable.parse(text);
        } catch (IllegalArgumentException e) {
            assertTrue(e.getMessage().startsWith("timetable"), e.getMessage());
        }
    }

    @Test
    void line_outsideTheDay_isRefused() {
        var days = Timetable.always().lines().get(0).days();

        assertThrows(IllegalArgumentException.class, () -> new Timetable.Line(days, 1440, 60));
        assertThrows(IllegalArgumentException.class, () -> new Timetable.Line(days, -1, 60));
        assertThrows(IllegalArgumentException.class, () -> new Timetable.Line(days, 0, 1441));
        assertThrows(IllegalArgumentException.class, () -> new Timetable.Line(java.util.Set.of(), 0, 60));
    }
}
