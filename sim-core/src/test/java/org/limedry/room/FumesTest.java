package org.limedry.room;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.limedry.climate.Schedule;

/** EXACT throughout: whether one span of time lies in another, and which rooms doors join. */
final class FumesTest {
    private static final Instant DAWN = Instant.parse("2026-11-09T06:00:00Z");
    private static final Instant NOON = Instant.parse("2026-11-09T12:00:00Z");
    private static final Instant DUSK = Instant.parse("2026-11-09T17:00:00Z");

    private static Plant heater(Plant.Fuel fuel, Schedule on) {
        return new Plant.Heater("heater", 2000.0, fuel, 0.3, OptionalDouble.empty(), false, on);
    }

    private static Opening door(Optional<String> to, Schedule open) {
        return new Opening("door", 0.9, 2.0, 0.0, "", to, open);
    }

    private static RoomPlan room(String name, List<Opening> openings, List<Plant> plant) {
        return new RoomPlan(name, 48.0, 20.0, 2.4, 5e4, 0.6, 0.0, openings, plant, 8.0, 0.8);
    }

    private static List<RoomPlan> one(Plant plant, Schedule open) {
        return List.of(room("store", List.of(door(Optional.empty(), open)), List.of(plant)));
    }

    @Test
    void fuelBurntBehindOpenDoors_isNotShutInButReaches() {
        Schedule morning = Schedule.always(DAWN, NOON);
        List<RoomPlan> rooms = one(heater(Plant.Fuel.UNFLUED_LPG, morning), Schedule.always(DAWN, DUSK));

        assertTrue(Fumes.reach("store", rooms));
        assertFalse(Fumes.areShutIn("store", rooms));
    }

    @Test
    void fuelBurntLongerThanTheDoorStandsOpen_isShutIn() {
        List<RoomPlan> rooms =
                one(heater(Plant.Fuel.UNFLUED_PARAFFIN, Schedule.always(DAWN, DUSK)), Schedule.always(DAWN, NOON));

        assertTrue(Fumes.areShutIn("store", rooms));
    }

    @Test
    void electricFluedAndUnlitHeaters_giveNone() {
        Schedule day = Schedule.always(DAWN, DUSK);
        for (Plant plant : List.of(
                heater(Plant.Fuel.ELECTRIC, day),
                heater(Plant.Fuel.FLUED, day),
                heater(Plant.Fuel.UNFLUED_LPG, Schedule.never()))) {
            assertFalse(Fumes.reach("store", one(plant, Schedule.never())), plant.toString());
            assertFalse(Fumes.areShutIn("store", one(plant, Schedule.never())), plant.toString());
        }
    }

    @Test
    void roomsJoinedByDoors_shareThem() {
        Plant gas = heater(Plant.Fuel.UNFLUED_LPG, Schedule.always(DAWN, DUSK));
        RoomPlan burns = room("kiln", List.of(door(Optional.of("passage"), Schedule.never())), List.of(gas));
        RoomPlan passage = room("passage", List.of(door(Optional.of("store"), Schedule.never())), List.of());
        RoomPlan store = room("store", List.of(door(Optional.empty(), Schedule.never())), List.of());
        RoomPlan apart = room("loft", List.of(), List.of());
        List<RoomPlan> rooms = List.of(burns, passage, store, apart);

        assertTrue(Fumes.reach("store", rooms));
        assertTrue(Fumes.areShutIn("store", rooms));
        assertFalse(Fumes.reach("loft", rooms));
        assertEquals(
                List.of(),
                Fumes.without("store", rooms).get(0).plant(),
                "the heater two doors away is taken out as well");
        assertEquals(rooms, Fumes.without("loft", rooms));
    }
}
