package org.limedry.room;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.limedry.room.Plant.Drying;
import org.limedry.room.Plant.Fuel;
import org.limedry.room.Plant.Rating;
import org.limedry.wall.Constants;

final class PlantStateTest {
    private static final Plant HEATER = new Plant.Heater(
            "gas heater", 3600.0, Fuel.UNFLUED_LPG, 0.25, OptionalDouble.empty(), true, RoomFixture.BY_DAY);
    private static final Plant SECOND = new Plant.Heater(
            "electric heater", 800.0, Fuel.ELECTRIC, 0.5, OptionalDouble.empty(), false, RoomFixture.BY_DAY);
    private static final Plant MACHINE = new Plant.Dehumidifier(
            "machine", Drying.DESICCANT, 1e-4, Rating.AT_20C_60, 300.0, OptionalDouble.empty(), RoomFixture.BY_DAY);
    private static final Plant GANG = new Plant.People("gang", 3.0, RoomFixture.BY_DAY);
    private static final Plant MIST = new Plant.Misting("mist", "north", 2e-4, RoomFixture.BY_DAY);
    private static final Plant MORE_MIST = new Plant.Misting("hose", "north", 3e-4, RoomFixture.BY_DAY);
    private static final Plant FAN = new Plant.Fan("fan", 0.04, RoomFixture.BY_DAY);

    private static final RoomPlan ROOM =
            RoomFixture.with(List.of(), List.of(HEATER, SECOND, MACHINE, GANG, MIST, MORE_MIST, FAN), 0.5);

    // EXACT: 3 people of 75 W and 90 g/h (materials/defaults), 2700 and 400 W from the heaters to the air, 900 and 400
    // W to the radiant node, and the machine at its rating: 300 W and 2.5 MJ/kg times 1e-4 kg/s.
    @Test
    void gains_byDay_addUp() {
        PlantState.Gains gains =
                PlantState.of(ROOM, RoomFixture.NOON).gains(Constants.ordinary(), 101_325.0, 20.0, 0.0121);

        assertEquals(4400.0, gains.heaterW(), 1e-9); // a few roundings
        assertEquals(225.0 + 3100.0 + 300.0 + 250.0, gains.airW(), 1e-9); // a few roundings
        assertEquals(1300.0, gains.radiantW(), 1e-9); // a few roundings
        assertEquals(0.270 / 3600.0, gains.peopleWaterKgPerS(), 1e-18); // a few roundings
        assertEquals(1e-4, gains.caughtKgPerS(), 1e-18); // a few roundings
        assertEquals(
                1e-3 * HeaterOutput.waterKgPerKwh(Fuel.UNFLUED_LPG),
                gains.burntWaterKgPerS(),
                1e-18); // a few roundings
        double carbonDioxideKgPerS = 1e-3 * HeaterOutput.carbonDioxideKgPerKwh(Fuel.UNFLUED_LPG) + 3.0 * 0.034 / 3600.0;
        assertEquals(carbonDioxideKgPerS, gains.carbonDioxideKgPerS(), 1e-17); // a few roundings
    }

    // EXACT: at night all of it is off.
    @Test
    void gains_byNight_areZero() {
        PlantState night = PlantState.of(ROOM, RoomFixture.NIGHT);

        assertEquals(
                new PlantState.Gains(0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0),
                night.gains(Constants.ordinary(), 101_325.0, 20.0, 0.0121));
        assertEquals(0.0, night.mistOnKgPerM2S("north"));
        assertFalse(night.aimedAtWall());
    }

    // EXACT: the sum of the two mists on that wall.
    @Test
    void mist_onOneWall_addsUpAndStaysThere() {
        PlantState day = PlantState.of(ROOM, RoomFixture.NOON);

        assertEquals(5e-4, day.mistOnKgPerM2S("north"), 1e-19); // one rounding
        assertEquals(0.0, day.mistOnKgPerM2S("spine"));
    }

    @Test
    void aimed_withOneHeaterAtTheWall_isTrue() {
        assertTrue(PlantState.of(ROOM, RoomFixture.NOON).aimedAtWall());
    }

    // PUBLISHED: S51 of materials/sources, table 10.1.1: a person of average activity gives off 60 to 120 g/h.
    @Test
    void people_giveWaterOfAverageActivity() {
        double gramsPerHour = PeopleOutput.of(1.0).waterKgPerS() * 3.6e6;

        assertTrue(gramsPerHour >= 60.0 && gramsPerHour <= 120.0);
    }
}
