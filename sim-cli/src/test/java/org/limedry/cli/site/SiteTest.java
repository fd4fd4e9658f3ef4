package org.limedry.cli.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.limedry.climate.Schedule;
import org.limedry.lime.CoatPlan;
import org.limedry.lime.HandTest;
import org.limedry.lime.Laying;
import org.limedry.room.Opening;
import org.limedry.room.Plant;
import org.limedry.room.RoomPlan;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Scenario;
import org.limedry.simulation.Simulation;
import org.limedry.study.Draw;
import org.limedry.study.Uncertain;
import org.limedry.wall.Side;
import org.limedry.wall.WallPlan;

/** What a site file becomes. */
final class SiteTest {
    private static final double ULPS = 1e-12; // a few roundings

    private final Site full = Examples.site(FullFile.TEXT);
    private final Scenario run = full.scenario(Draw.likely());

    private WallPlan wall(String name) {
        return run.walls().stream()
                .filter(wall -> wall.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private RoomPlan room(String name) {
        return run.rooms().stream()
                .filter(room -> room.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private <T extends Plant> T plant(Class<T> kind) {
        return room("store").plant().stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .findFirst()
                .orElseThrow();
    }

    // EXACT: days of the file by the clock of New York, five hours behind UTC in winter.
    @Test
    void run_isFromTheFirstDayToTheEndOfTheLast() {
        assertEquals(Instant.parse("2026-11-02T05:00:00Z"), full.from());
        assertEquals(Instant.parse("2026-12-30T05:00:00Z"), full.until());
        assertEquals(full.from(), run.from());
        assertEquals(full.until(), run.until());
    }

    // EXACT: first coat 14 June 2027, Irish summer time; the file says until 31 July.
    @Test
    void runWithoutFrom_beginsOnTheDayOfTheFirstCoat() {
        Site summer = Examples.good(SiteReader.read(Examples.FOLDER.resolve("summer-room.yaml")));

        assertEquals(Instant.parse("2027-06-13T23:00:00Z"), summer.from());
        assertEquals(Instant.parse("2027-07-31T23:00:00Z"), summer.until());
    }

    // EXACT: 90 days and the first day, from 9 November 2026, no change of the clock in Ireland in between.
    @Test
    void runWithoutUntil_lastsNinetyDays() {
        Site starter = Examples.site(Starter.text());

        assertEquals(Duration.ofDays(91), Duration.between(starter.from(), starter.until()));
    }

    // EXACT: 2 (5.2 + 4.1) 2.4 m2 of wall, less openings 0.95 x 2.0, 0.8 x 1.1, 0.9 x 1.9 and the walls listed.
    @Test
    void faces_notListed_fillUpTheRoom() {
        double restM2 = 2.0 * (5.2 + 4.1) * 2.4 - 0.95 * 2.0 - 0.8 * 1.1 - 0.9 * 1.9 - 4.6 * 2.4 - 9.0 - 6.0 - 3.0;

        assertEquals(restM2, wall("store rest of the walls").areaM2(), restM2 * ULPS);
        assertEquals(5.2 * 4.1, wall("store ceiling (not listed)").areaM2(), 21.32 * ULPS);
        assertEquals(5.2 * 4.1, wall("store floor (not listed)").areaM2(), 21.32 * ULPS);
        assertEquals(WallPlan.Kind.REST, wall("store rest of the walls").kind());
        assertEquals(
                "historic hand-made clay brick",
                wall("store rest of the walls").layers().get(0).name());
        assertEquals(5, full.madeUpFaces().size(), full.madeUpFaces().toString());
    }

    // EXACT: the loft is 16 m2 and 2.5 m high, taken as square; the shared wall counts for it too, and so does the
    // door.
    @Test
    void faces_ofTheNeighbour_leaveOutTheSharedWallAndTheDoor() {
        double restM2 = 4.0 * 4.0 * 2.5 - 0.9 * 1.9 - 9.0 - 10.0;

        assertEquals(restM2, wall("loft rest of the walls").areaM2(), restM2 * ULPS);
        assertTrue(run.walls().stream().noneMatch(wall -> wall.name().equals("loft ceiling (not listed)")));
        assertEquals(WallPlan.Kind.CEILING, wall("loft ceiling").kind());
    }

    @Test
    void otherSides_areAsSaid() {
        assertEquals(new Side.Outdoors(), wall("store north").outside());
        assertEquals(new Side.Room("loft"), wall("store spine").outside());
        assertEquals(new Side.Room("store"), wall("store spine").inside());
        assertEquals(new Side.Sealed(), wall("store paint").outside());
        assertTrue(wall("store lath").outside() instanceof Side.Air air && air.celsius() == 12.0);
        assertTrue(wall("store floor (not listed)").outside() instanceof Side.Soil);
        assertEquals("old paint", wall("store paint").layers().get(2).name());
    }

    // EXACT: 1/2.8 - 1/8 - 1/25 m2 K/W in 4 mm.
    @Test
    void pane_hasTheResistanceLeftBesideItsFilms() {
        WallPlan pane = wall("store window pane");

        double lambda = pane.layers().get(0).material().conductivityWPerMK().at(0.0);

        assertEquals(0.004 / (1.0 / 2.8 - 1.0 / 8.0 - 1.0 / 25.0), lambda, 0.0208 * ULPS);
        assertEquals(0.8 * 1.1, pane.areaM2(), ULPS);
        assertEquals(WallPlan.Kind.PANE, pane.kind());
    }

    // EXACT: 1.1 litres a day and metre over 4.6 m.
    @Test
    void risingDamp_isOfTheWholeWall() {
        assertEquals(1.1 * 4.6 / 86_400.0, wall("store north").risingDampKgPerS(), 5.9e-5 * ULPS);
    }

    // EXACT: 9:00 to 15:30 on 42 weekdays from 2 November to 29 December 2026, and two hours on a Saturday.
    @Test
    void opening_followsTimetableAndDiary() {
        Opening door = room("store").openings().get(0);

        double hours = hoursOf(door.open());

        assertEquals(42 * 6.5 + 2.0, hours, 1e-9); // seconds of a sum of whole half hours
        assertTrue(door.open().isOn(Instant.parse("2026-11-14T16:00:00Z")));
        assertEquals("N", door.facing());
    }

    // EXACT: three whole days.
    @Test
    void opening_betweenTwoDates_isOpenOnEachOfThem() {
        Opening inner = room("store").openings().get(2);

        assertEquals(72.0, hoursOf(inner.open()), 1e-9); // whole hours
        assertEquals("loft", inner.toRoom().orElseThrow());
    }

    // EXACT: this weather has no 31 December (its file ends on the 30th). A run in late December can be moved by 21
    // days
    // either way and misses it, but not by 5: then no move may be drawn at all.
    @Test
    void uncertain_withAHoleWithinTheMoves_doesNotMoveTheWeather() {
        String text = """
                site: Late December
                place: {weather: jfk-2013, timeZone: America/New_York}
                from: 2026-12-21
                until: 2026-12-29
                rooms:
                  store:
                    size: {lengthM: 5, widthM: 4, heightM: 2.4}
                    walls:
                      north: {areaM2: 11, background: old brick, thicknessMm: 340}
                mixes:
                  base: {lime: putty, limeParts: 1, sandParts: 3}
                coats:
                  - {wall: north, mix: base, thicknessMm: 10, laid: 2026-12-21}
                """;
        Site site = Examples.site(text);

        boolean moves =
                site.uncertain().stream().anyMatch(unknown -> unknown.key().contains("weather"));

        assertEquals(false, moves);
    }

    private static double hoursOf(Schedule schedule) {
        return schedule.spans().stream()
                .mapToDouble(span -> Duration.between(span.from(), span.until()).toSeconds() / 3600.0)
                .sum();
    }

    // EXACT: conversions of the figures of the file.
    @Test
    void plant_isInUnitsOfTheLibrary() {
        Plant.Heater heater = plant(Plant.Heater.class);
        Plant.Dehumidifier desiccant = plant(Plant.Dehumidifier.class);
        Plant.Misting misting = plant(Plant.Misting.class);

        assertEquals(2000.0, heater.watts());
        assertEquals(0.2, heater.radiantShare(), ULPS);
        assertEquals(OptionalDouble.of(14.0), heater.thermostatCelsius());
        assertTrue(heater.aimedAtWall());
        assertEquals(40 * 12.0, hoursOf(heater.on()), 1e-9); // whole hours, from 20 November
        assertEquals(14.0 / 86_400.0, desiccant.ratedKgPerS(), ULPS);
        assertEquals(OptionalDouble.of(0.6), desiccant.humidistat());
        assertEquals("store north", misting.wall());
        assertEquals(0.3, misting.kgPerM2S() * 600.0, ULPS);
        assertEquals(6 * 10.0 / 60.0, hoursOf(misting.on()), 1e-9); // six times ten minutes
        assertEquals(180.0 / 3600.0, plant(Plant.Fan.class).flowM3PerS(), ULPS);
        assertEquals(2.0, plant(Plant.People.class).count());
    }

    // EXACT: 11 + 6 mm; 8 in the morning in New York; the second coat on that wall has no date.
    @Test
    void coats_areNumberedOnTheirWall() {
        List<CoatPlan> coats = run.coats();

        assertEquals("store north", coats.get(0).wall());
        assertEquals(1, coats.get(0).number());
        assertEquals(0.017, coats.get(0).thicknessM(), ULPS);
        assertEquals(0.5, coats.get(0).prewettingKgPerM2());
        assertEquals(
                new Laying.On(Instant.parse("2026-11-09T13:00:00Z")),
                coats.get(0).laying());
        assertEquals(2, coats.get(1).number());
        assertTrue(coats.get(1).laying() instanceof Laying.WhenReady ready
                && ready.coldLineCelsius() == 8.0
                && ready.workingDays().size() == 6);
        assertEquals("loft ceiling", coats.get(2).wall());
        assertEquals(450.0, coats.get(2).mortar().freeWaterKgPerM3());
    }

    @Test
    void ruleAndHandTest_areAsSaid() {
        assertEquals("our rule", run.rule().name());
        assertEquals(OptionalDouble.of(250_000.0), run.rule().suctionPa());
        assertEquals(OptionalDouble.of(2.5), run.rule().equivalentAgeDays());
        assertEquals(OptionalDouble.of(0.97), run.rule().faceRelativeHumidity());
        assertEquals(OptionalDouble.of(4.0), run.rule().days());
        assertEquals(
                List.of(new HandTest(
                        "store north", 1, Instant.parse("2026-11-21T13:00:00Z"), HandTest.Result.NAIL_NOT_KNUCKLE)),
                run.handTests());
    }

    // EXACT: own figures of the file; 120 m above the sea lowers the pressure by about 14 hPa (barometric formula).
    @Test
    void ownFigures_replaceOurs() {
        assertEquals(
                290.0,
                wall("store north").layers().get(0).material().retention().freeSaturationKgPerM3());
        assertEquals(9.0, room("store").startCelsius());
        assertEquals(0.8, room("store").startRelativeHumidity(), ULPS);
        assertEquals(0.8, room("store").leakagePerHour());
        assertEquals(99_900.0, run.physics().air().pressurePa(), 100.0); // 14.4 hPa by the formula, rounded
    }

    static Stream<Site> sites() {
        return Stream.concat(
                Stream.of(Examples.site(FullFile.TEXT), Examples.site(Starter.text())),
                Examples.good().stream().map(SiteReader::read).map(Examples::good));
    }

    @ParameterizedTest
    @MethodSource("sites")
    void unknowns_areFewAndEachMovesTheScenario(Site site) {
        List<Uncertain> unknowns = site.uncertain();
        String likely = fingerprint(site.scenario(Draw.likely()));

        assertTrue(unknowns.size() <= 12, "there are " + unknowns.size());
        Set<String> keys = unknowns.stream().map(Uncertain::key).collect(Collectors.toSet());
        assertEquals(unknowns.size(), keys.size());
        for (String key : keys) {
            assertNotEquals(likely, fingerprint(site.scenario(new Draw(Map.of(key, 0.9)))), key);
        }
        assertEquals(likely, fingerprint(site.scenario(new Draw(Map.of("no such key", 0.9)))));
    }

    /** A few figures from every part of a scenario that a draw may move. */
    private static String fingerprint(Scenario scenario) {
        StringBuilder text = new StringBuilder();
        scenario.rooms().forEach(room -> text.append(room.plant()));
        scenario.walls()
                .forEach(wall -> wall.layers()
                        .forEach(layer -> text.append(layer.startSuctionPa())
                                .append(' ')
                                .append(layer.material().retention().waterKgPerM3(1e5))
                                .append(' ')
                                .append(layer.material().liquid().conductivityS(1e5))
                                .append(' ')));
        scenario.coats()
                .forEach(coat -> text.append(coat.thicknessM())
                        .append(' ')
                        .append(coat.mortar().freeWaterKgPerM3())
                        .append(' ')
                        .append(coat.mortar().material().retention().waterKgPerM3(1e5)));
        scenario.rooms().forEach(room -> text.append(room.leakagePerHour()).append(' '));
        return text.append(scenario.rule())
                .append(scenario.physics())
                .append(scenario.outdoors()
                        .over(scenario.from(), scenario.from().plusSeconds(3600)))
                .toString();
    }

    @ParameterizedTest
    @MethodSource("sites")
    void assumptions_nameValueAndSource(Site site) {
        assertTrue(site.assumptions().size() > site.uncertain().size());
        site.assumptions().forEach(assumption -> {
            assertTrue(!assumption.words().isBlank() && !assumption.value().isBlank(), assumption.toString());
            assertTrue(!assumption.source().isBlank(), assumption.toString());
        });
    }

    // The starter and the summer room are small enough to run whole; a residual is rounding only.
    @Test
    void examples_canBeRun() {
        for (Site site : List.of(
                Examples.site(Starter.text()),
                Examples.good(SiteReader.read(Examples.FOLDER.resolve("summer-room.yaml"))))) {
            Outcome outcome = Simulation.run(site.scenario(Draw.likely()));

            assertEquals(new Outcome.Ending.Complete(), outcome.ending());
            assertTrue(outcome.coats().stream().allMatch(coat -> coat.ready().isPresent()), outcome.coats()::toString);
            assertEquals(
                    0.0,
                    outcome.account().residualKg(),
                    1e-9 * outcome.account().laidKg()); // rounding
        }
    }

    @Test
    void attribution_ofAShippedYear_isCarried() {
        Site starter = Examples.site(Starter.text());

        assertTrue(starter.attribution().stream().anyMatch(line -> line.contains("Met Éireann")));
        assertEquals("mullingar-2017", starter.weatherName());
        assertEquals("north", starter.wallWords("store north"));
        assertEquals("store north", full.wallWords("store north"));
    }
}
