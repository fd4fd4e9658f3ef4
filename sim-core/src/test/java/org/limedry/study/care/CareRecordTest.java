package org.limedry.study.care;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.limedry.simulation.History;
import org.limedry.simulation.Series;

/** EXACT: rooms made up so that every answer is read off them. */
final class CareRecordTest {
    private static final int HOURS = 97;
    private static final Instant FROM = Instant.parse("2026-11-02T00:00:00Z");
    private static final CareRecord.Limits LIMITS = new CareRecord.Limits(5.0, 0.40, 5.0);

    private final double[] celsius = all(10.0);
    private final double[] humidity = all(0.7);
    private final double[] watts = all(0.0);

    private static double[] all(double value) {
        double[] values = new double[HOURS];
        Arrays.fill(values, value);
        return values;
    }

    private CareRecord.Room room(int hours) {
        Series steady = Series.of(all(0.0));
        History.RoomHours room = new History.RoomHours(
                "store",
                Series.of(celsius),
                Series.of(humidity),
                steady,
                steady,
                steady,
                steady,
                Series.of(watts),
                steady);
        List<Instant> times =
                IntStream.range(0, hours).mapToObj(CareRecordTest::hour).toList();
        return CareRecord.of(new History(times, steady, steady, List.of(room), List.of(), List.of()), LIMITS)
                .rooms()
                .get(0);
    }

    private static Instant hour(int hour) {
        return FROM.plus(Duration.ofHours(hour));
    }

    @Test
    void of_everythingHeld_tellsTheFiguresAndNoSpell() {
        celsius[50] = 12.0;
        humidity[60] = 0.45;

        CareRecord.Room room = room(HOURS);

        assertEquals(Optional.of(new CareRecord.Extreme(2.0, hour(50))), room.fastest());
        assertEquals(new CareRecord.Extreme(0.45, hour(60)), room.driest());
        assertEquals(new CareRecord.Extreme(10.0, hour(0)), room.coldest());
        assertEquals(List.of(), room.spells());
    }

    @Test
    void of_aHeaterThatWarmsBySixKelvin_isAHeatedSpellOfADay() {
        Arrays.fill(celsius, 40, HOURS, 16.0);
        Arrays.fill(watts, 40, HOURS, 2000.0);

        List<CareRecord.Spell> spells = room(HOURS).spells();

        CareRecord.Extreme worst = new CareRecord.Extreme(6.0, hour(40));
        assertEquals(List.of(new CareRecord.Spell(CareRecord.Kind.WARMED, hour(40), hour(63), worst, true)), spells);
    }

    @Test
    void of_hoursAtTheLimit_areInsideIt() {
        Arrays.fill(celsius, 40, HOURS, 15.0);
        celsius[10] = 15.0;
        humidity[20] = 0.40;

        assertEquals(List.of(), room(HOURS).spells());
    }

    @Test
    void of_twoColdNights_areTwoSpellsAndAShortPauseIsNone() {
        for (int hour : new int[] {20, 21, 27, 50}) {
            celsius[hour] = 4.0;
        }
        celsius[27] = 3.5;
        Arrays.fill(celsius, 51, HOURS, 8.0);

        List<CareRecord.Spell> cold = room(HOURS).spells().stream()
                .filter(spell -> spell.kind() == CareRecord.Kind.COLD)
                .toList();

        assertEquals(2, cold.size());
        assertEquals(hour(20), cold.get(0).from());
        assertEquals(hour(27), cold.get(0).until());
        assertEquals(new CareRecord.Extreme(3.5, hour(27)), cold.get(0).worst());
        assertFalse(cold.get(0).heated());
        assertEquals(hour(50), cold.get(1).from());
    }

    @Test
    void of_lessThanADay_saysNothingOfWarming() {
        assertTrue(room(24).fastest().isEmpty());
        assertTrue(room(25).fastest().isPresent());
    }

    @Test
    void limits_badValues_areRefused() {
        assertThrows(IllegalArgumentException.class, () -> new CareRecord.Limits(0.0, 0.4, 5.0));
        assertThrows(IllegalArgumentException.class, () -> new CareRecord.Limits(5.0, Double.NaN, 5.0));
        assertThrows(IllegalArgumentException.class, () -> new CareRecord.Limits(5.0, 0.4, Double.NaN));
    }
}
