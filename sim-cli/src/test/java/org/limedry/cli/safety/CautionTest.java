package org.limedry.cli.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The matrix: each caution with situations that are due it and with the nearest that is not. */
final class CautionTest {
    /** A situation, and whether a caution is due in it. */
    private record Row(Caution caution, boolean due, Set<Has> has, Set<Advised> advised) {}

    private static final Set<Has> NOTHING = EnumSet.noneOf(Has.class);
    private static final Set<Advised> NO_ADVICE = EnumSet.noneOf(Advised.class);

    private static Row due(Caution caution, Set<Has> has, Set<Advised> advised) {
        return new Row(caution, true, has, advised);
    }

    private static Row not(Caution caution, Set<Has> has, Set<Advised> advised) {
        return new Row(caution, false, has, advised);
    }

    /** Air, fuel and flues. */
    private static List<Row> fumes() {
        return List.of(
                due(Caution.BAD_AIR, Set.of(Has.BAD_AIR), NO_ADVICE),
                not(Caution.BAD_AIR, Set.of(Has.DRY_BUT_SOFT), NO_ADVICE),
                due(Caution.UNFLUED, Set.of(Has.UNFLUED_GAS), NO_ADVICE),
                due(Caution.UNFLUED, Set.of(Has.UNFLUED_PARAFFIN), NO_ADVICE),
                not(Caution.UNFLUED, Set.of(Has.FLUED_HEATER, Has.ELECTRIC_HEATER), NO_ADVICE),
                due(Caution.GAS_BOTTLE, Set.of(Has.UNFLUED_GAS), NO_ADVICE),
                not(Caution.GAS_BOTTLE, Set.of(Has.UNFLUED_PARAFFIN), NO_ADVICE),
                due(Caution.PARAFFIN, Set.of(Has.UNFLUED_PARAFFIN), NO_ADVICE),
                not(Caution.PARAFFIN, Set.of(Has.UNFLUED_GAS), NO_ADVICE),
                due(Caution.NO_UNFLUED, NOTHING, Set.of(Advised.HEAT)),
                due(Caution.NO_UNFLUED, Set.of(Has.FROST), NO_ADVICE),
                due(Caution.NO_UNFLUED, Set.of(Has.COLD), NO_ADVICE),
                due(Caution.NO_UNFLUED, Set.of(Has.ELECTRIC_HEATER), NO_ADVICE),
                not(Caution.NO_UNFLUED, Set.of(Has.UNFLUED_GAS), Set.of(Advised.HEAT)),
                not(Caution.NO_UNFLUED, Set.of(Has.LIME), Set.of(Advised.OPEN)),
                due(Caution.FLUE, Set.of(Has.FLUED_HEATER), NO_ADVICE),
                not(Caution.FLUE, Set.of(Has.ELECTRIC_HEATER), Set.of(Advised.HEAT)),
                due(Caution.SPILLAGE, Set.of(Has.FLUED_HEATER, Has.FAN), NO_ADVICE),
                due(Caution.SPILLAGE, Set.of(Has.FLUED_HEATER), Set.of(Advised.BLOW)),
                due(Caution.SPILLAGE, Set.of(Has.FLUED_HEATER), Set.of(Advised.SHUT)),
                due(Caution.SPILLAGE, Set.of(Has.FLUED_HEATER), Set.of(Advised.SHEET)),
                not(Caution.SPILLAGE, Set.of(Has.FLUED_HEATER), Set.of(Advised.OPEN)),
                not(Caution.SPILLAGE, Set.of(Has.ELECTRIC_HEATER, Has.FAN), NO_ADVICE),
                due(Caution.VENTS, NOTHING, Set.of(Advised.SHUT)),
                due(Caution.VENTS, NOTHING, Set.of(Advised.SHEET)),
                not(Caution.VENTS, NOTHING, Set.of(Advised.OPEN)));
    }

    /** Fire, electrics, lime. */
    private static List<Row> work() {
        return List.of(
                due(Caution.FIRE, Set.of(Has.ELECTRIC_HEATER), NO_ADVICE),
                due(Caution.FIRE, Set.of(Has.FLUED_HEATER), NO_ADVICE),
                due(Caution.FIRE, Set.of(Has.UNFLUED_GAS), NO_ADVICE),
                due(Caution.FIRE, NOTHING, Set.of(Advised.HEAT)),
                not(Caution.FIRE, Set.of(Has.DEHUMIDIFIER), NO_ADVICE),
                due(Caution.LEFT_ON, Set.of(Has.RUNS_BY_NIGHT), NO_ADVICE),
                due(Caution.LEFT_ON, NOTHING, Set.of(Advised.RUN_BY_NIGHT)),
                not(Caution.LEFT_ON, Set.of(Has.ELECTRIC_HEATER, Has.FAN), Set.of(Advised.HEAT)),
                due(Caution.ELECTRICS, Set.of(Has.ELECTRIC_HEATER), NO_ADVICE),
                due(Caution.ELECTRICS, Set.of(Has.FAN), NO_ADVICE),
                due(Caution.ELECTRICS, Set.of(Has.DEHUMIDIFIER), NO_ADVICE),
                due(Caution.ELECTRICS, NOTHING, Set.of(Advised.DEHUMIDIFY)),
                not(Caution.ELECTRICS, Set.of(Has.FLUED_HEATER), NO_ADVICE),
                due(Caution.SPRAY, Set.of(Has.MISTING), NO_ADVICE),
                due(Caution.SPRAY, NOTHING, Set.of(Advised.MIST)),
                not(Caution.SPRAY, Set.of(Has.LIME), Set.of(Advised.TOUCH)),
                due(Caution.LIME, Set.of(Has.LIME), NO_ADVICE),
                due(Caution.LIME, NOTHING, Set.of(Advised.TOUCH)),
                not(Caution.LIME, Set.of(Has.ELECTRIC_HEATER), Set.of(Advised.OPEN)),
                due(Caution.QUICKLIME, Set.of(Has.QUICKLIME), NO_ADVICE),
                not(Caution.QUICKLIME, Set.of(Has.LIME), NO_ADVICE));
    }

    /** The old building and the plaster. */
    private static List<Row> building() {
        return List.of(
                due(Caution.DUST, Set.of(Has.OLD_PAINT), NO_ADVICE),
                due(Caution.DUST, NOTHING, Set.of(Advised.DRILL)),
                due(Caution.DUST, NOTHING, Set.of(Advised.OPEN_UP)),
                not(Caution.DUST, Set.of(Has.LIME), Set.of(Advised.TOUCH)),
                due(Caution.CONSENT, NOTHING, Set.of(Advised.DRILL)),
                due(Caution.CONSENT, NOTHING, Set.of(Advised.OPEN_UP)),
                due(Caution.CONSENT, NOTHING, Set.of(Advised.FINISH)),
                not(Caution.CONSENT, NOTHING, Set.of(Advised.HEAT)),
                due(Caution.HEIGHT, Set.of(Has.HEIGHT), NO_ADVICE),
                not(Caution.HEIGHT, Set.of(Has.LIME), NO_ADVICE),
                due(Caution.OPEN_DOORS, NOTHING, Set.of(Advised.OPEN)),
                due(Caution.OPEN_DOORS, NOTHING, Set.of(Advised.OPEN_BY_NIGHT)),
                due(Caution.OPEN_DOORS, Set.of(Has.OPEN_BY_NIGHT), NO_ADVICE),
                not(Caution.OPEN_DOORS, NOTHING, Set.of(Advised.SHUT)),
                due(Caution.BATS, NOTHING, Set.of(Advised.OPEN_BY_NIGHT)),
                due(Caution.BATS, NOTHING, Set.of(Advised.SHEET)),
                due(Caution.BATS, Set.of(Has.OPEN_BY_NIGHT), NO_ADVICE),
                not(Caution.BATS, NOTHING, Set.of(Advised.OPEN)),
                due(Caution.FROST, Set.of(Has.FROST), NO_ADVICE),
                not(Caution.FROST, Set.of(Has.COLD), NO_ADVICE),
                due(Caution.SOFT, Set.of(Has.DRY_BUT_SOFT), NO_ADVICE),
                due(Caution.SOFT, NOTHING, Set.of(Advised.DEHUMIDIFY, Advised.SHUT)),
                not(Caution.SOFT, NOTHING, Set.of(Advised.DEHUMIDIFY)),
                due(Caution.ROT, Set.of(Has.WET_LATHS), NO_ADVICE),
                not(Caution.ROT, Set.of(Has.MOULD), NO_ADVICE),
                due(Caution.MOULD, Set.of(Has.MOULD), NO_ADVICE),
                not(Caution.MOULD, Set.of(Has.WET_LATHS), NO_ADVICE),
                due(Caution.CODES, NOTHING, NO_ADVICE));
    }

    private static List<Row> rows() {
        return Stream.of(fumes(), work(), building()).flatMap(List::stream).toList();
    }

    @TestFactory
    Stream<DynamicTest> eachRow_isDueOrNot() {
        return rows().stream()
                .map(row -> DynamicTest.dynamicTest(
                        row.caution() + (row.due() ? " due: " : " not due: ") + row.has() + row.advised(),
                        () -> assertEquals(
                                row.due(),
                                new Situation(row.has(), row.advised())
                                        .cautions()
                                        .contains(row.caution()))));
    }

    @Test
    void everyCaution_hasARowThatIsDueAndOneThatIsNot() {
        Set<Caution> due = rows().stream().filter(Row::due).map(Row::caution).collect(Collectors.toSet());
        Set<Caution> not =
                rows().stream().filter(row -> !row.due()).map(Row::caution).collect(Collectors.toSet());

        assertEquals(EnumSet.allOf(Caution.class), due);
        // Local codes are due always.
        assertEquals(EnumSet.complementOf(EnumSet.of(Caution.CODES)), not);
    }

    @Test
    void everythingThatASiteHasOrAnAnswerAdvises_bringsACaution() {
        Set<Caution> usual = Set.copyOf(new Situation(NOTHING, NO_ADVICE).cautions());

        assertTrue(Arrays.stream(Has.values())
                .noneMatch(has -> Set.copyOf(new Situation(Set.of(has), NO_ADVICE).cautions())
                        .equals(usual)));
        assertTrue(Arrays.stream(Advised.values())
                .noneMatch(advised -> Set.copyOf(new Situation(NOTHING, Set.of(advised)).cautions())
                        .equals(usual)));
    }

    @Test
    void codes_comeLastAndAlways() {
        List<Caution> all = new Situation(EnumSet.allOf(Has.class), EnumSet.allOf(Advised.class)).cautions();

        assertEquals(Caution.CODES, all.get(all.size() - 1));
        assertEquals(
                "Care: Local codes and the competent person first.",
                Situation.withoutSite().line());
    }

    @Test
    void dangers_standAboveTheAnswerWhereFuelBurnsOrTheAirIsBad() {
        assertTrue(new Situation(Set.of(Has.FLUED_HEATER), NO_ADVICE).dangers().isEmpty());
        assertTrue(new Situation(Set.of(Has.UNFLUED_PARAFFIN), NO_ADVICE)
                .dangers()
                .get(0)
                .contains("carbon monoxide kills"));
        String badAir = new Situation(Set.of(Has.BAD_AIR), NO_ADVICE).dangers().get(0);
        assertTrue(badAir.contains("Keep out") && badAir.contains("from outside"));
    }

    // EXACT: a row of the page is the danger in the words of the caution.
    @Test
    void everyCaution_hasARowOnThePage() throws IOException {
        String page = Files.readString(Path.of("..", "docs", "cautions.md"));

        for (Caution caution : Caution.values()) {
            assertTrue(page.contains("| " + caution.danger() + " |"), caution.danger());
        }
    }

    @Test
    void everyCaution_hasAFewWordsForTheConsole() {
        for (Caution caution : Caution.values()) {
            assertTrue(caution.brief().matches("[\\x20-\\x7e]{5,80}[.]"), caution.brief());
            assertFalse(caution.danger().isBlank());
        }
    }
}
