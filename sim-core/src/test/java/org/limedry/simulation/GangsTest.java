package org.limedry.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.limedry.climate.Outdoors;
import org.limedry.lime.CoatMortar;
import org.limedry.lime.CoatPlan;
import org.limedry.lime.Laying;
import org.limedry.lime.ReadinessRule;
import org.limedry.material.Catalogue;
import org.limedry.material.Material;
import org.limedry.reference.MaterialTable;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.Side;
import org.limedry.wall.WallPlan;

/**
 * Who lays what when, on walls that are ready by the calendar alone, so that every date is known beforehand.
 *
 * <p>EXACT throughout: the rule for gangs, worked out by hand. The run begins on Monday 1 January 2001.
 */
final class GangsTest {
    private static final Catalogue CATALOGUE = Catalogue.of(MaterialTable.load());
    private static final Material PLASTER = CATALOGUE.material(Catalogue.AIR_LIME_PLASTER);
    private static final CoatMortar MORTAR = new CoatMortar(
            "inert", PLASTER, 0.5 * PLASTER.retention().freeSaturationKgPerM3(), 0.0, 0.0, 30_000.0, false, 0.0);
    private static final Instant START = Instant.parse("2001-01-01T00:00:00Z");
    private static final Set<DayOfWeek> WEEKDAYS = EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY);
    private static final Laying.WhenReady MORNINGS =
            new Laying.WhenReady(ZoneOffset.UTC, WEEKDAYS, LocalTime.of(8, 0), 5.0);
    /** Ready at 20:00 on the day after the coat was laid. */
    private static final double READY_DAYS = 1.5;

    private static final double ROUNDING = 1.0e-9;

    private final List<CoatPlan> coats = new ArrayList<>();

    private GangsTest coat(String wall, int number, double days, String... gangs) {
        return coat(wall, number, morning(1), days, gangs);
    }

    private GangsTest coat(String wall, int number, Instant earliest, double days, String... gangs) {
        List<Laying.Gang> hands = new ArrayList<>();
        for (String gang : gangs) {
            hands.add(new Laying.Gang(gang, days));
        }
        Laying laying = new Laying.ByGang(MORNINGS, earliest, hands);
        coats.add(new CoatPlan(wall, number, MORTAR, 0.01, 8.0, 0.0, laying));
        return this;
    }

    private static Instant morning(int day) {
        return START.plus(Duration.ofHours(24L * (day - 1) + 8));
    }

    private Outcome run(int days, double celsius) {
        LayerPlan granite = new LayerPlan("granite", CATALOGUE.material(Catalogue.GRANITE), 0.1, celsius, 1.0e7);
        List<WallPlan> walls = coats.stream()
                .map(CoatPlan::wall)
                .distinct()
                .map(wall -> new WallPlan(
                        wall,
                        WallPlan.Kind.LISTED,
                        1.0,
                        List.of(granite),
                        new Side.Outdoors(),
                        new Side.Outdoors(),
                        0.0))
                .toList();
        ReadinessRule rule = new ReadinessRule(
                "calendar",
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(READY_DAYS));
        return Simulation.run(new Scenario(
                "gangs",
                START,
                START.plus(Duration.ofDays(days)),
                (from, until) -> new Outdoors.Piece(celsius, celsius, 600.0, 600.0, 0.0, 0.0),
                Map.of(),
                List.of(),
                walls,
                coats,
                rule,
                List.of(),
                Physics.ordinary(),
                Accuracy.quick()));
    }

    /** Returns "day begun - day laid, gang" for each coat, by its wall and number. */
    private static List<String> told(Outcome outcome) {
        return outcome.coats().stream()
                .map(coat -> coat.wall() + coat.number() + ": "
                        + coat.work().map(work -> day(work.begun()) + "-").orElse("") + day(coat.laid())
                        + coat.work().map(work -> " " + work.gang()).orElse(""))
                .toList();
    }

    private static String day(Optional<Instant> instant) {
        return instant.map(GangsTest::day).orElse("never");
    }

    private static String day(Instant instant) {
        assertEquals(LocalTime.of(8, 0), instant.atZone(ZoneOffset.UTC).toLocalTime());
        return String.valueOf(1 + Duration.between(START, instant).toDays());
    }

    // Monday: a, then d, which fits into what is left of the day; b and c do not. Tuesday: b; c needs whole days.
    // Wednesday to Friday: c, half of Friday is left for the second coat of a, ready since Tuesday night.
    @Test
    void oneGang_fillsItsDaysInTheOrderOfTheList() {
        coat("a", 1, 0.6, "x").coat("b", 1, 0.5, "x").coat("c", 1, 2.5, "x");
        coat("d", 1, 0.4, "x").coat("a", 2, 0.5, "x");

        Outcome outcome = run(8, 10.0);

        assertEquals(List.of("a1: 1-1 x", "b1: 2-2 x", "c1: 3-5 x", "d1: 1-1 x", "a2: 5-5 x"), told(outcome));
        assertEquals(Optional.of(morning(3)), outcome.coats().get(4).work().map(Outcome.Work::offered));
    }

    // Three days of work begun on a Thursday end on the Monday after: nobody works on days 6 and 7.
    @Test
    void longWork_rests_onDaysOff() {
        coat("a", 1, morning(4), 3.0, "x");

        assertEquals(List.of("a1: 4-8 x"), told(run(9, 10.0)));
    }

    // The first coat goes to the gang named first; the next to whoever is free.
    @Test
    void twoGangs_workSideBySide() {
        coat("a", 1, 1.0, "x", "y").coat("b", 1, 1.0, "x", "y").coat("c", 1, 1.0, "x");

        assertEquals(List.of("a1: 1-1 x", "b1: 1-1 y", "c1: 2-2 x"), told(run(3, 10.0)));
    }

    // A coat ready at 20:00 on day 2 goes on in the morning of day 3; one that is ready on a Saturday waits for Monday.
    @Test
    void secondCoat_waitsForTheFirst() {
        coat("a", 1, 1.0, "x").coat("a", 2, 1.0, "x");
        coat("b", 1, morning(5), 1.0, "x").coat("b", 2, 1.0, "x");

        assertEquals(List.of("a1: 1-1 x", "a2: 3-3 x", "b1: 5-5 x", "b2: 8-8 x"), told(run(10, 10.0)));
    }

    @Test
    void coldSite_hasNoCoatBegun() {
        coat("a", 1, 1.0, "x");

        Outcome outcome = run(3, 4.0);

        assertEquals(List.of("a1: never"), told(outcome));
    }

    @Test
    void gangsThatBeginAtDifferentTimes_areRefused() {
        coat("a", 1, 1.0, "x");
        Laying late = new Laying.ByGang(
                new Laying.WhenReady(ZoneOffset.UTC, WEEKDAYS, LocalTime.of(9, 0), 5.0),
                morning(1),
                List.of(new Laying.Gang("x", 1.0)));
        coats.add(new CoatPlan("b", 1, MORTAR, 0.01, 8.0, 0.0, late));

        assertThrows(IllegalArgumentException.class, () -> run(2, 10.0));
    }

    @Property(tries = 20)
    void anyGangs_areNeverInTwoPlacesAndNeverIdleBesideWork(@ForAll long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        coats.clear();
        for (int wall = 0; wall < 2 + random.nextInt(4); wall++) {
            Instant earliest = morning(1 + random.nextInt(4));
            for (int number = 1; number <= 1 + random.nextInt(3); number++) {
                String[] gangs = random.nextBoolean() ? new String[] {"x"} : new String[] {"y", "x"};
                coat("wall" + wall, number, earliest, 0.1 * (1 + random.nextInt(25)), gangs);
            }
        }

        Outcome outcome = run(28, 10.0);

        Map<String, Map<LocalDate, Double>> used = used(outcome);
        used.values().forEach(days -> days.values().forEach(share -> assertTrue(share <= 1.0 + ROUNDING, "" + used)));
        for (int i = 0; i < coats.size(); i++) {
            assertRight(i, outcome, used);
        }
    }

    private void assertRight(int index, Outcome outcome, Map<String, Map<LocalDate, Double>> used) {
        Outcome.CoatResult coat = outcome.coats().get(index);
        Laying.ByGang laying = (Laying.ByGang) coats.get(index).laying();
        Outcome.Work work = coat.work().orElseThrow();
        assertTrue(!work.begun().isBefore(laying.earliest()), told(outcome)::toString);
        if (coat.number() > 1) {
            Instant under = outcome.coats().get(index - 1).ready().orElseThrow();
            assertTrue(work.offered().isAfter(under), told(outcome)::toString);
        }
        double left = work.days();
        for (LocalDate day = date(work.begun()); !day.isAfter(date(coat.laid().orElseThrow())); day = day.plusDays(1)) {
            left -= WEEKDAYS.contains(day.getDayOfWeek()) ? Math.min(1.0, left) : 0.0;
        }
        assertEquals(0.0, left, ROUNDING); // days; all its work lies between begun and laid
        for (LocalDate day = date(work.offered()); day.isBefore(date(work.begun())); day = day.plusDays(1)) {
            assertNobodyFree(laying, day, used);
        }
    }

    private static void assertNobodyFree(
            Laying.ByGang laying, LocalDate day, Map<String, Map<LocalDate, Double>> used) {
        for (Laying.Gang gang : laying.gangs()) {
            double free = 1.0 - used.getOrDefault(gang.name(), Map.of()).getOrDefault(day, 0.0);
            boolean couldBegin = free >= Math.min(1.0, gang.days()) - ROUNDING;
            assertTrue(!WEEKDAYS.contains(day.getDayOfWeek()) || !couldBegin, day + " " + gang);
        }
    }

    /** Returns the share of each day that each gang works. */
    private static Map<String, Map<LocalDate, Double>> used(Outcome outcome) {
        Map<String, Map<LocalDate, Double>> used = new HashMap<>();
        for (Outcome.CoatResult coat : outcome.coats()) {
            Outcome.Work work = coat.work().orElseThrow();
            double left = work.days();
            for (LocalDate day = date(work.begun()); left > ROUNDING; day = day.plusDays(1)) {
                if (WEEKDAYS.contains(day.getDayOfWeek())) {
                    double share = Math.min(1.0, left);
                    used.computeIfAbsent(work.gang(), gang -> new HashMap<>()).merge(day, share, Double::sum);
                    left -= share;
                }
            }
        }
        return used;
    }

    private static LocalDate date(Instant instant) {
        return instant.atZone(ZoneOffset.UTC).toLocalDate();
    }
}
