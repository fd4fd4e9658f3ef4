package org.limedry.study.airing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.limedry.climate.Schedule;
import org.limedry.study.Draw;
import org.limedry.study.StudyFixture;

/** EXACT throughout: hours on a clock. */
final class AiringTest {
    private static final ZoneId DUBLIN = ZoneId.of("Europe/Dublin");
    private static final Instant FROM = Instant.parse("2026-10-24T12:30:00Z"); // summer time ends on the next day
    private static final Instant UNTIL = Instant.parse("2026-10-27T00:00:00Z");

    @Test
    void openings_sixHours_areThreeEitherSideOfOneOClockOnTheWall() {
        Schedule open = Airing.doors(6.0).openings(DUBLIN, FROM, UNTIL, Set.of());

        assertEquals(LocalTime.of(10, 0), Airing.doors(6.0).opened());
        assertEquals(LocalTime.of(16, 0), Airing.doors(6.0).shut());
        assertEquals(
                new Schedule(List.of(
                        new Schedule.Span(FROM, Instant.parse("2026-10-24T15:00:00Z")),
                        new Schedule.Span(Instant.parse("2026-10-25T10:00:00Z"), Instant.parse("2026-10-25T16:00:00Z")),
                        new Schedule.Span(
                                Instant.parse("2026-10-26T10:00:00Z"), Instant.parse("2026-10-26T16:00:00Z")))),
                open);
    }

    @Test
    void openings_shutDay_isLeftOut() {
        Schedule open = Airing.doors(6.0).openings(DUBLIN, FROM, UNTIL, Set.of(LocalDate.of(2026, 10, 25)));

        assertEquals(2, open.spans().size());
    }

    @Test
    void openings_wholeDay_neverShut() {
        Schedule open = Airing.doors(24.0).openings(DUBLIN, FROM, UNTIL, Set.of());

        assertEquals(Schedule.always(FROM, UNTIL), open);
    }

    @Test
    void openings_shut_areNever() {
        assertEquals(Schedule.never(), Airing.SHUT.openings(DUBLIN, FROM, UNTIL, Set.of()));
        assertTrue(Airing.SHUT.isShut());
    }

    @Test
    void doors_moreThanADay_areRefused() {
        assertThrows(IllegalArgumentException.class, () -> Airing.doors(25.0));
        assertThrows(IllegalArgumentException.class, () -> Airing.doors(Double.NaN));
    }

    @Test
    void gentleHeat_isThirtyWattsForEachM3InWholeKilowatts() {
        assertEquals(1000.0, SteadyHeat.gentleWatts(10.0));
        assertEquals(2000.0, SteadyHeat.gentleWatts(51.84));
        assertEquals(3000.0, SteadyHeat.gentleWatts(500.0));
    }

    @Test
    void gentleHeat_isFourDegreesAboveOutdoorsWithinTenAndTwenty() {
        assertEquals(10.0, SteadyHeat.gentleCelsius(3.0));
        assertEquals(15.0, SteadyHeat.gentleCelsius(10.9));
        assertEquals(20.0, SteadyHeat.gentleCelsius(19.0));
    }

    @Test
    void meanCelsius_steadyWeather_isThatWeather() {
        assertEquals(
                6.0,
                SteadyHeat.meanCelsius(
                        StudyFixture.scenario(Draw.likely()).outdoors(), FROM, FROM.plus(Duration.ofDays(3))),
                1e-12); // rounding of a sum of 72 equal numbers
    }
}
