package org.limedry.cli.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.limedry.cli.site.PlannedJob.Cause;
import org.limedry.lime.Laying;
import org.limedry.room.Opening;
import org.limedry.room.Plant;
import org.limedry.simulation.Scenario;
import org.limedry.study.Draw;

/**
 * What had been agreed, what happened, and every mixture.
 *
 * <p>EXACT: dates, hours and counts are those written in the file below, moved by its 56 days or 8 weeks.
 */
final class PlannedJobTest {
    private static final String FILE = """
            site: Two sides (invented)
            place: {weather: valentia-2017}
            until: 2027-02-28
            rooms:
              store:
                released: 2026-11-02
                size: {lengthM: 5.0, widthM: 4.0, heightM: 2.4}
                openings:
                  - {name: door, widthM: 0.9, heightM: 2.0, open: "2026-11-02 to 2027-02-28 Mon-Fri 08:00-10:00"}
                walls:
                  north: {areaM2: 10, background: old brick, wetness: wet}
                plant:
                  - {kind: people, count: 2, on: "Mon-Fri 08:00-16:00", from: 2026-11-02, until: 2026-11-06}
                  - {kind: electric heater, kW: 2, on: always, from: 2026-12-07}
            mixes:
              base: {lime: putty, sandParts: 3}
            coats:
              - {wall: north, mix: base, thicknessMm: 12, dubbingOutMm: 3, laid: 2026-11-03}
              - {wall: north, mix: base, thicknessMm: 10, laid: 2026-12-14}
            handTests: [{wall: north, coat: 2, date: 2027-01-20, result: hard}]
            planned:
              weather: mullingar-2017
              rooms:
                store:
                  released: 2026-09-07
                  openings: [{name: door, open: "Mon-Fri 08:00-16:00"}]
                  plant: [{kind: electric heater, kW: 3, on: always, from: 2026-10-01}]
                  walls: {north: {wetness: damp}}
              coats: [{wall: north, coat: 1, thicknessMm: 11}]
            """;
    private static final Duration EIGHT_WEEKS = Duration.ofDays(56);

    private final Site site = Examples.site(FILE);
    private final PlannedJob job = site.planned().orElseThrow();

    private Scenario scenario(Set<Cause> happened) {
        return job.site(happened).scenario(Draw.likely());
    }

    private static Instant laid(Scenario scenario) {
        return ((Laying.On) scenario.coats().get(0).laying()).instant();
    }

    private static Opening door(Scenario scenario) {
        return scenario.rooms().get(0).openings().get(0);
    }

    private static List<Plant> heaters(Scenario scenario) {
        return scenario.rooms().get(0).plant().stream()
                .filter(Plant.Heater.class::isInstance)
                .toList();
    }

    @Test
    void causes_everythingWentAnotherWay_areAllFive() {
        assertEquals(List.of(Cause.values()), job.causes());
    }

    @Test
    void site_allAsItHappened_isTheFileButForLaterDatesAndHandTests() {
        Scenario asItIs = site.scenario(Draw.likely());
        Scenario all = scenario(EnumSet.allOf(Cause.class));

        assertEquals(asItIs.from(), all.from());
        assertEquals(asItIs.rooms(), all.rooms());
        assertEquals(laid(asItIs), laid(all));
        assertTrue(all.coats().get(1).laying() instanceof Laying.WhenReady);
        assertEquals(List.of(), all.handTests());
        assertTrue(job.recordOverrules());
    }

    @Test
    void site_roomReleasedAsAgreed_beginsAsManyDaysEarlier() {
        Scenario late = scenario(EnumSet.allOf(Cause.class));
        Scenario early = scenario(EnumSet.complementOf(EnumSet.of(Cause.ROOM)));

        // The clock goes back in between: the hour of the day is the same, the days are 56 and an hour.
        assertEquals(EIGHT_WEEKS.plusHours(1), Duration.between(laid(early), laid(late)));
        assertEquals(EIGHT_WEEKS.plusHours(1), Duration.between(early.from(), late.from()));
        assertEquals(late.until(), early.until());
    }

    @Test
    void site_roomReleasedAsAgreed_takesDoorLogAndPeopleWithIt() {
        Scenario early = scenario(EnumSet.complementOf(EnumSet.of(Cause.ROOM)));

        assertEquals(
                Instant.parse("2026-09-08T07:00:00Z"),
                door(early).open().spans().get(0).from());
        Plant people = early.rooms().get(0).plant().get(0);
        assertEquals(
                Instant.parse("2026-09-08T07:00:00Z"),
                people.on().spans().get(0).from());
        assertEquals(
                Instant.parse("2026-12-07T00:00:00Z"),
                heaters(early).get(0).on().spans().get(0).from());
    }

    @Test
    void site_doorsAsAgreed_standOpenAllDay() {
        Scenario agreed = scenario(EnumSet.complementOf(EnumSet.of(Cause.DOORS)));

        assertEquals(
                Duration.ofHours(8),
                Duration.between(
                        door(agreed).open().spans().get(0).from(),
                        door(agreed).open().spans().get(0).until()));
    }

    @Test
    void site_plantAsAgreed_comesOnItsOwnDate() {
        Scenario agreed = scenario(EnumSet.complementOf(EnumSet.of(Cause.PLANT, Cause.ROOM)));

        assertEquals(1, heaters(agreed).size());
        assertEquals(
                Instant.parse("2026-09-30T23:00:00Z"),
                heaters(agreed).get(0).on().spans().get(0).from());
    }

    @Test
    void site_wallAsStated_isDampUnderThinnerCoats() {
        Site agreed = job.site(EnumSet.complementOf(EnumSet.of(Cause.WALL)));

        assertEquals("damp", agreed.wetnessOf("store north"));
        assertEquals("wet", site.wetnessOf("store north"));
        assertEquals(0.011, agreed.scenario(Draw.likely()).coats().get(0).thicknessM(), 1e-12); // m from mm
        assertEquals(0.015, scenario(EnumSet.allOf(Cause.class)).coats().get(0).thicknessM(), 1e-12); // m from mm
    }

    @Test
    void site_weatherOfThePlan_isTheOtherYear() {
        Site agreed = job.site(EnumSet.complementOf(EnumSet.of(Cause.WEATHER)));

        assertEquals("mullingar-2017", agreed.weatherName());
        assertEquals(site.zone(), agreed.zone());
    }

    @Test
    void site_plannedDayOnASunday_isMovedToTheNextWorkingDay() {
        PlannedJob other = Examples.site(FILE.replace("released: 2026-09-07", "released: 2026-09-05"))
                .planned()
                .orElseThrow();

        Instant laid = laid(other.site(Set.of()).scenario(Draw.likely()));

        assertEquals(LocalDate.of(2026, 9, 7), laid.atZone(site.zone()).toLocalDate());
    }

    @Test
    void causes_plannedAsItHappened_areNone() {
        String planned = FILE.substring(FILE.indexOf("planned:"));
        String same = FILE.replace(planned, """
                planned:
                  rooms:
                    store:
                      released: 2026-11-02
                      walls: {north: {wetness: wet}}
                  coats: [{wall: north, coat: 1, thicknessMm: 15}]
                """);

        assertEquals(List.of(), Examples.site(same).planned().orElseThrow().causes());
    }

    @Test
    void weatherOf_aMonth_isWholeAndThatOfTheFile() {
        assertEquals(
                YearMonth.of(2026, 12),
                job.weatherOf(YearMonth.of(2026, 12)).orElseThrow().month());
        assertTrue(job.normals().isEmpty());
    }
}
