package org.limedry.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.limedry.cli.safety.Advised;
import org.limedry.climate.Schedule;
import org.limedry.room.Plant;
import org.limedry.simulation.Warning;
import org.limedry.units.Units;

final class AdviceTest {
    private static List<DoLine> of(Findings findings) {
        Optional<Coat> worst = PageModels.worstFirst(findings).stream()
                .filter(coat -> coat.result().laid().isPresent())
                .findFirst();
        return Advice.of(findings, worst);
    }

    private static Warning warning(Warning.Kind kind, String subject, double value) {
        return new Warning(kind, subject, Invented.hour(30), Invented.hour(80), value);
    }

    static Stream<Arguments> warnings() {
        return Stream.of(
                Arguments.of(
                        warning(Warning.Kind.CARBON_DIOXIDE, "store", 6100.0),
                        "Keep out of the store: fuel off and opened up from outside, the air tested by a competent person",
                        "carbon dioxide up to 6,100 ppm on 3 Nov, and carbon monoxide is not worked out"),
                Arguments.of(
                        warning(Warning.Kind.FROST_AIR, "store north", -2.25),
                        "Cover or gently warm the north wall on frost nights, first 3 Nov",
                        "room air down to \u22122.3 \u00b0C"),
                Arguments.of(
                        warning(Warning.Kind.FROST_WET_FACE, "store north", -0.4),
                        "Cover or gently warm the north wall on frost nights, first 3 Nov",
                        "the wet face fell to \u22120.4 \u00b0C though the air did not freeze"),
                Arguments.of(
                        warning(Warning.Kind.UNFLUED_HEATER, "store", 90.0),
                        "Put the unflued heater in the store out and use an electric one",
                        "it burnt 90 litres of water into the room air"),
                Arguments.of(
                        warning(Warning.Kind.TOO_FAST, "store north", 0.125),
                        "Mist the north wall twice a day and screen it from draught, 3 Nov to 5 Nov",
                        "it lost up to 0.125 litres a m\u00b2 an hour, more than lime can give"),
                Arguments.of(
                        warning(Warning.Kind.HEAT_WITHOUT_AIR, "store", 17.0),
                        "Open a door or window whenever the heat is on",
                        "17 litres condensed on cold faces in the heated store"));
    }

    @ParameterizedTest
    @MethodSource("warnings")
    void warning_comesFirstWithItsFigure(Warning warning, String what, String why) {
        List<DoLine> lines = of(Varied.warnings(Invented.oneRoom(), warning));

        assertEquals(what, lines.get(0).what());
        assertEquals(why, lines.get(0).why());
    }

    @ParameterizedTest
    @EnumSource(value = Warning.Kind.class, mode = EnumSource.Mode.EXCLUDE, names = "CARBON_DIOXIDE")
    void anyOtherWarning_leavesTwoOrThreeLinesTheLastOfThemTheHandTest(Warning.Kind kind) {
        List<DoLine> lines = of(Varied.warnings(Invented.oneRoom(), warning(kind, "store north", 1.0)));

        assertTrue(lines.size() == 2 || lines.size() == 3, lines::toString);
        assertEquals(
                "Test the north wall, coat 1 by hand from 17 December",
                lines.get(lines.size() - 1).what());
    }

    @Test
    void shutRoomWithADehumidifier_asksForFreshAir() {
        Warning soft = warning(Warning.Kind.DRY_BUT_SOFT, "store", 260.0);
        Findings findings = Varied.openAllDay(Varied.plant(Varied.warnings(Invented.oneRoom(), soft), List.of()));

        assertEquals(
                new DoLine(
                        "Air the shut store for an hour a day",
                        "its carbon dioxide fell to 260 ppm, and lime needs it to harden",
                        Advised.OPEN),
                of(findings).get(0));
    }

    @Test
    void plantThatCameLate_isAskedForSooner() {
        List<DoLine> lines = of(Varied.openAllDay(Varied.warnings(Invented.oneRoom())));

        assertEquals(
                new DoLine(
                        "Bring the electric heater in sooner than 30 Nov, and let the wet air out",
                        "the air was full or the north wall wet for 663 hours before it came",
                        Advised.HEAT),
                lines.get(0));
    }

    // EXACT: three things are urgent.
    @Test
    void severalUrgentThings_areToldInOrderOfDanger() {
        List<DoLine> lines = of(Varied.warnings(
                Invented.oneRoom(),
                warning(Warning.Kind.TOO_FAST, "store north", 0.125),
                warning(Warning.Kind.UNFLUED_HEATER, "store", 90.0),
                warning(Warning.Kind.CARBON_DIOXIDE, "store", 6100.0)));

        // Nothing else: whatever it is, somebody would go in to do it.
        assertEquals(2, lines.size());
        assertTrue(lines.get(0).what().startsWith("Keep out of the store"));
        assertTrue(lines.get(1).what().startsWith("Put the unflued heater"));
    }

    @Test
    void coldWallWithoutHeat_asksForGentleHeatAndAir() {
        Findings findings = Varied.history(Varied.plant(Invented.oneRoom(), List.of()), Varied::withoutHeat);

        List<DoLine> lines = of(findings);

        assertEquals(
                new DoLine(
                        "Bring gentle electric heat into the store, and let the wet air out",
                        "the north wall stood at 7 \u00b0C, at or below the dew point for 664 hours",
                        Advised.HEAT,
                        Advised.OPEN),
                lines.get(1));
    }

    @Test
    void refrigerantMachineInTheCold_isToldForWhatItCatches() {
        Plant machine = new Plant.Dehumidifier(
                "dehumidifier",
                Plant.Drying.REFRIGERANT,
                20.0 / Units.SECONDS_PER_DAY,
                Plant.Rating.AT_30C_80,
                400.0,
                OptionalDouble.empty(),
                Schedule.always(Invented.hour(42 * 24), Invented.UNTIL));
        Findings findings = Varied.openAllDay(Varied.plant(Varied.warnings(Invented.oneRoom()), List.of(machine)));

        // EXACT: the fixture catches 69.6 litres in its last 49 days.
        assertTrue(
                of(findings)
                        .contains(new DoLine(
                                "Change the dehumidifier for a desiccant one, or warm the room first",
                                "in this cold it catches 1.4 litres a day, not the 20 on its plate",
                                Advised.DEHUMIDIFY,
                                Advised.HEAT)),
                () -> of(findings).toString());
    }

    @Test
    void gainInDays_isNeverTold() {
        for (Warning.Kind kind : Warning.Kind.values()) {
            List<DoLine> lines = of(Varied.warnings(Invented.oneRoom(), warning(kind, "store north", 1.0)));

            assertTrue(lines.stream().noneMatch(line -> (line.what() + line.why()).matches(".*\\d+ days? sooner.*")));
        }
    }
}
