package org.limedry.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** EXACT: spans cut and put together by hand. */
final class ScheduleTest {
    private static Instant at(int hour) {
        return Instant.ofEpochSecond(3600L * hour);
    }

    private static Schedule.Span span(int from, int until) {
        return new Schedule.Span(at(from), at(until));
    }

    @Test
    void between_cutsWhatWasThereAndWhatComesIn() {
        Schedule usual = new Schedule(List.of(span(1, 4), span(5, 6), span(8, 12)));
        Schedule inside = new Schedule(List.of(span(0, 4), span(7, 20)));

        Schedule changed = usual.between(at(3), at(10), inside);

        assertEquals(new Schedule(List.of(span(1, 4), span(7, 12))), changed);
    }

    @Test
    void joinedWeather_givesTheForecastForItsHoursOnly() {
        Outdoors usual = (from, until) -> new Outdoors.Piece(1.0, 1.0, 600.0, 600.0, 2.0, 2.0);
        Outdoors forecast = (from, until) -> new Outdoors.Piece(9.0, 9.0, 900.0, 900.0, 3.0, 3.0);
        JoinedWeather joined = new JoinedWeather(usual, forecast, at(2), at(4));

        assertEquals(1.0, joined.over(at(1), at(2)).startCelsius());
        assertEquals(9.0, joined.over(at(2), at(3)).startCelsius());
        assertEquals(9.0, joined.over(at(3), at(4)).startCelsius());
        assertEquals(1.0, joined.over(at(4), at(5)).startCelsius());
    }
}
