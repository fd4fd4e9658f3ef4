package org.limedry.study.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.limedry.climate.Schedule;
import org.limedry.lime.CoatMortar;
import org.limedry.lime.CoatPlan;
import org.limedry.lime.Laying;
import org.limedry.material.Closed;
import org.limedry.material.Material;
import org.limedry.room.Opening;
import org.limedry.room.RoomPlan;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Outcome.CoatResult;
import org.limedry.simulation.Scenario;
import org.limedry.study.Draw;
import org.limedry.study.StudyFixture;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.Side;
import org.limedry.wall.WallPlan;

/** Two rooms and a cupboard. EXACT: what is kept, left out and subtracted follows from the rule alone. */
final class NextDoorTest {
    private static final Material NONE =
            new Material("none", Closed.instance(), Closed.instance(), Closed.instance(), Closed.instance(), 1.6e6);
    private static final CoatMortar MORTAR = new CoatMortar("base", NONE, 300.0, 180.0, 0.0, 30_000.0, true, 4.0e-6);
    private static final Schedule ALWAYS =
            Schedule.always(StudyFixture.FROM, StudyFixture.FROM.plusSeconds(86_400L * StudyFixture.RUN_DAYS));

    private static Instant day(int day) {
        return StudyFixture.FROM.plusSeconds(86_400L * day);
    }

    private static RoomPlan room(String name, String... doorsTo) {
        List<Opening> openings = List.of(doorsTo).stream()
                .map(to -> new Opening(
                        "door " + to, 0.9, 2.0, 0.0, "", to.equals("out") ? Optional.empty() : Optional.of(to), ALWAYS))
                .toList();
        return new RoomPlan(name, 45.0, 18.0, 2.5, 0.0, 0.5, 0.0, openings, List.of(), 8.0, 0.85);
    }

    private static WallPlan wall(String name, String room) {
        return new WallPlan(
                name,
                WallPlan.Kind.LISTED,
                9.0,
                List.of(new LayerPlan("brick", NONE, 0.3, 8.0, 1.0e6)),
                new Side.Outdoors(),
                new Side.Room(room),
                0.0);
    }

    private static CoatPlan coat(String wall, int number) {
        return new CoatPlan(wall, number, MORTAR, 0.01, 8.0, 0.0, new Laying.On(StudyFixture.FROM));
    }

    private static Scenario scenario() {
        Scenario one = StudyFixture.scenario(Draw.likely());
        return new Scenario(
                        one.site(),
                        one.from(),
                        one.until(),
                        one.outdoors(),
                        Map.of(),
                        List.of(room("store", "office", "out"), room("office", "cupboard"), room("cupboard")),
                        List.of(wall("north", "store"), wall("lath", "office"), wall("shelf", "cupboard")),
                        List.of(),
                        one.rule(),
                        List.of(),
                        one.physics(),
                        one.accuracy())
                .withCoats(List.of(coat("north", 1), coat("lath", 1), coat("north", 2), coat("north", 3)));
    }

    private static CoatResult found(String wall, int number, int laid, int ready) {
        return new CoatResult(
                wall,
                number,
                laid < 0 ? Optional.empty() : Optional.of(day(laid)),
                ready < 0 ? Optional.empty() : Optional.of(day(ready)),
                false,
                Optional.empty(),
                3.0,
                1.0,
                0.0);
    }

    private static Outcome outcome(CoatResult... coats) {
        return StudyFixture.outcome(new Outcome.Ending.Complete(), coats);
    }

    // The cupboard has no coat, so its door joins no two plastered rooms.
    @Test
    void joinedRooms_areThoseWithCoatsOnBothSidesOfADoor() {
        assertEquals(Set.of("store", "office"), NextDoor.joinedRooms(scenario()));
    }

    @Test
    void alone_keepsTheRoomsCoatsOnTheirDays() {
        Outcome found = outcome(
                found("north", 1, 1, 5), found("lath", 1, 2, 9), found("north", 2, 6, 20), found("north", 3, -1, -1));

        List<CoatPlan> kept = NextDoor.alone(scenario(), found, "store").coats();

        assertEquals(
                List.of(
                        coat("north", 1).with(new Laying.On(day(1))),
                        coat("north", 2).with(new Laying.On(day(6)))),
                kept);
    }

    // 9 - 7 = 2 days longer; the coat that is not ready alone has no delay.
    @Test
    void delays_subtractCoatByCoat() {
        Outcome all = outcome(found("north", 1, 1, 5), found("lath", 1, 2, 9), found("lath", 2, 10, 15));
        Outcome alone = outcome(found("lath", 1, 2, 7), found("lath", 2, 10, -1));

        assertEquals(List.of(new NextDoor.Delay("lath", 1, 2.0)), NextDoor.delays(all, alone));
    }

    @Test
    void innerOpeningsShut_leavesTheDoorOutdoorsAsItIs() {
        List<RoomPlan> rooms = NextDoor.innerOpeningsShut(scenario()).rooms();

        Map<String, Boolean> open = Map.of("office", false, "out", true, "cupboard", false);
        rooms.stream()
                .flatMap(room -> room.openings().stream())
                .forEach(opening -> assertEquals(
                        open.get(opening.name().substring(5)), opening.open().isOn(day(3)), opening.name()));
        assertTrue(scenario().rooms().get(1).openings().get(0).open().isOn(day(3)));
    }
}
