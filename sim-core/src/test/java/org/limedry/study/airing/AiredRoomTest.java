package org.limedry.study.airing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.limedry.air.MagnusForm;
import org.limedry.climate.Schedule;
import org.limedry.lime.CoatMortar;
import org.limedry.lime.CoatPlan;
import org.limedry.lime.HandTest;
import org.limedry.lime.Laying;
import org.limedry.material.Catalogue;
import org.limedry.reference.MaterialTable;
import org.limedry.room.Opening;
import org.limedry.room.Plant;
import org.limedry.room.RoomPlan;
import org.limedry.simulation.Accuracy;
import org.limedry.simulation.History;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Physics;
import org.limedry.simulation.Scenario;
import org.limedry.simulation.Series;
import org.limedry.study.Draw;
import org.limedry.study.StudyFixture;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.Side;
import org.limedry.wall.WallPlan;

/** EXACT throughout: what an invented site of two rooms becomes, and sums by hand. */
final class AiredRoomTest {
    private static final Instant FROM = StudyFixture.FROM;
    private static final Schedule ALWAYS = Schedule.always(FROM, FROM.plus(Duration.ofDays(StudyFixture.RUN_DAYS)));
    private static final Catalogue CATALOGUE = Catalogue.of(MaterialTable.load());
    private static final Plant HEATER =
            new Plant.Heater("gas", 3000.0, Plant.Fuel.FLUED, 0.3, OptionalDouble.empty(), false, ALWAYS);
    private static final Plant FAN = new Plant.Fan("old fan", 0.1, ALWAYS);
    private static final Plant MACHINE = new Plant.Dehumidifier(
            "machine", Plant.Drying.DESICCANT, 1e-4, Plant.Rating.AT_20C_60, 500.0, OptionalDouble.empty(), ALWAYS);
    private static final Plant PEOPLE = new Plant.People("people", 2.0, ALWAYS);
    private static final AiredRoom STORE = new AiredRoom("store", ZoneOffset.UTC, false);
    private static final AiringLevel LEVEL = AiringLevel.daily(new Airing(4.0, 0.05), AiringFixture.HEATED);

    @Test
    void with_level_takesThePlaceOfHeatersFansAndDoorHoursOfTheRoomOnly() {
        Scenario aired = STORE.with(site(), LEVEL);

        assertEquals(List.of("machine", "people", "fan", "electric heater"), plant(aired, "store"));
        assertEquals(List.of("gas", "old fan", "machine", "people"), plant(aired, "loft"));
        Opening door = opening(aired, "door");
        assertFalse(door.open().isOn(FROM.plus(Duration.ofHours(10))));
        assertTrue(door.open().isOn(FROM.plus(Duration.ofHours(12))));
        assertEquals(ALWAYS, opening(aired, "stair door").open());
        assertEquals(List.of(), aired.handTests());
    }

    @Test
    void with_bareBuilding_leavesNoMachineAnywhere() {
        AiredRoom bare = new AiredRoom("store", ZoneOffset.UTC, true);

        Scenario aired = bare.with(site(), AiringLevel.daily(Airing.SHUT, AiringFixture.COLD));

        assertEquals(List.of("people"), plant(aired, "store"));
        assertEquals(List.of("people"), plant(aired, "loft"));
    }

    @Test
    void wallsAndFirstCoat_areThoseOfTheRoom() {
        assertEquals(Set.of("north"), STORE.plasteredWalls(site()));
        assertEquals(Optional.of(FROM.plus(Duration.ofDays(2))), STORE.firstLaid(site()));
        assertEquals(Optional.empty(), new AiredRoom("cellar", ZoneOffset.UTC, false).firstLaid(site()));
        assertThrows(IllegalArgumentException.class, () -> new AiredRoom("cellar", ZoneOffset.UTC, false).plan(site()));
    }

    @Test
    void longestWaiting_isTheRoomOfTheCoatThatWaitsLongest() {
        Outcome outcome = StudyFixture.outcome(
                new Outcome.Ending.Complete(),
                StudyFixture.coat(1, StudyFixture.ready(9.0), false),
                StudyFixture.coat(2, StudyFixture.ready(4.0), false));

        assertEquals(Optional.of("store"), AiredRoom.longestWaiting(site(), outcome));
    }

    // 10 m2 of 12 mm and 8 mm with 200 kg/m3, 85 % of it turned, 0.594 kg for each kg: 20.2 kg.
    @Test
    void wholeKg_twoCoats_isAreaTimesThicknessTimesLime() {
        double rounding = 0.01; // 0.594 is 44.009 / 74.092 rounded to three figures

        assertEquals(10.0 * 0.020 * 200.0 * 0.85 * 0.594, Hardening.wholeKg(site(), Set.of("north")), rounding);
        assertEquals(0.0, Hardening.wholeKg(site(), Set.of("south")));
    }

    // COMPUTED (ideal gas, 44.009 g/mol): 420 ppm at 5 C and 101,325 Pa are 0.8096 g/m3, so 120 ppm are 0.2313 g/m3.
    @Test
    void needed_oneGramAnHour_isThatOverWhatEachM3CanGive() {
        double tolerance = 0.005; // four figures

        double m3PerH = 3600.0 * Hardening.neededM3PerS(1.0e-3 / 3600.0, 420.0, 300.0, 5.0, 101_325.0);

        assertEquals(1.0 / 0.2313, m3PerH, tolerance);
    }

    // Face at 8 C. Noon of day 1 outside: 12 C full, water for the wall; of day 2: 12 C at half, none.
    @Test
    void wetDays_dewPointAboveTheWall_areFound() {
        History history = history();
        Schedule open = Airing.doors(4.0).openings(ZoneOffset.UTC, FROM, FROM.plus(Duration.ofDays(2)), Set.of());
        WetDays days = new WetDays(history, Set.of("north"), MagnusForm.WMO_WATER);

        Set<LocalDate> wet = days.in(new HourSpan(1, 49), open, ZoneOffset.UTC);

        assertEquals(Set.of(LocalDate.of(2026, 10, 5)), wet);
    }

    private static History history() {
        double[] humidity = new double[49];
        double[] outdoors = new double[49];
        double[] face = new double[49];
        for (int hour = 0; hour < 49; hour++) {
            boolean firstDay = hour <= 24;
            outdoors[hour] = 12.0;
            humidity[hour] = firstDay ? 1.0 : 0.5;
            face[hour] = 8.0;
        }
        Series any = Series.of(face);
        return new History(
                IntStream.range(0, 49)
                        .mapToObj(hour -> FROM.plus(Duration.ofHours(hour)))
                        .toList(),
                Series.of(outdoors),
                Series.of(humidity),
                List.of(),
                List.of(new History.FaceHours("north", "store", any, any, any, any)),
                List.of());
    }

    private static Scenario site() {
        Scenario one = StudyFixture.scenario(Draw.likely());
        Opening door = new Opening("door", 0.95, 2.0, 0.0, "N", Optional.empty(), ALWAYS);
        Opening inner = new Opening("stair door", 0.8, 2.0, 0.0, "", Optional.of("loft"), ALWAYS);
        return new Scenario(
                one.site(),
                one.from(),
                one.until(),
                one.outdoors(),
                Map.of(),
                List.of(room("store", List.of(door, inner)), room("loft", List.of())),
                List.of(wall("north", "store"), wall("south", "store"), wall("east", "loft")),
                List.of(coat(1, 0.012, new Laying.On(FROM.plus(Duration.ofDays(2)))), coat(2, 0.008, whenReady())),
                one.rule(),
                List.of(new HandTest("north", 1, FROM, HandTest.Result.DENTS)),
                Physics.ordinary(),
                Accuracy.ordinary());
    }

    private static Laying whenReady() {
        return new Laying.WhenReady(ZoneOffset.UTC, Set.of(DayOfWeek.MONDAY), LocalTime.of(8, 0), 5.0);
    }

    private static RoomPlan room(String name, List<Opening> openings) {
        return new RoomPlan(
                name, 45.0, 18.0, 2.5, 0.0, 0.6, 0.0, openings, List.of(HEATER, FAN, MACHINE, PEOPLE), 8.0, 0.85);
    }

    private static WallPlan wall(String name, String room) {
        LayerPlan brick = new LayerPlan("brick", CATALOGUE.material(Catalogue.OLD_BRICK), 0.23, 5.0, 1.0e6);
        return new WallPlan(
                name, WallPlan.Kind.LISTED, 10.0, List.of(brick), new Side.Outdoors(), new Side.Room(room), 0.0);
    }

    private static CoatPlan coat(int number, double thicknessM, Laying laying) {
        CoatMortar mortar = new CoatMortar(
                "base", CATALOGUE.material(Catalogue.NHL_PLASTER), 240.0, 200.0, 0.0, 30_000.0, true, 4.8e-6);
        return new CoatPlan("north", number, mortar, thicknessM, 8.0, 0.0, laying);
    }

    private static List<String> plant(Scenario scenario, String room) {
        return new AiredRoom(room, ZoneOffset.UTC, false)
                .plan(scenario).plant().stream().map(Plant::name).toList();
    }

    private static Opening opening(Scenario scenario, String name) {
        return scenario.rooms().get(0).openings().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
