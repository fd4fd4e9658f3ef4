package org.limedry.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.limedry.cli.page.Caution;
import org.limedry.climate.Schedule;
import org.limedry.room.Plant;
import org.limedry.simulation.Warning;

final class CautionsTest {
    private static final String EYES = "Lime in the eye";
    private static final String CODES = "Local codes and competent persons come first";
    private static final String NO_UNFLUED = "No unflued gas or paraffin heater in a closed room";

    private static List<String> dangers(Findings findings) {
        return findings.cautions().stream().map(Caution::danger).toList();
    }

    private static Findings bare() {
        return Varied.plant(Varied.warnings(Invented.oneRoom()), List.of());
    }

    private static Plant heater(Plant.Fuel fuel) {
        return new Plant.Heater("heater", 2000.0, fuel, 0.3, OptionalDouble.empty(), false, Schedule.never());
    }

    @Test
    void everyRun_warnsOfLimeInEyesFirstAndOfCodesLast() {
        List<String> dangers = dangers(bare());

        assertEquals(EYES, dangers.get(0));
        assertEquals(CODES, dangers.get(dangers.size() - 1));
    }

    @Test
    void quicklime_isWarnedOf() {
        assertTrue(dangers(bare()).contains("Quicklime boils and spits when wetted"));
    }

    @Test
    void electricHeater_bringsFireAndElectrics() {
        assertEquals(
                List.of(
                        EYES,
                        "Quicklime boils and spits when wetted",
                        NO_UNFLUED,
                        "Heaters set fire to old buildings",
                        "Wet walls and electrics kill",
                        CODES),
                dangers(Varied.plant(bare(), List.of(heater(Plant.Fuel.ELECTRIC)))));
    }

    @Test
    void unfluedHeater_bringsCarbonMonoxideInPlainWords() {
        List<Caution> cautions =
                Varied.plant(bare(), List.of(heater(Plant.Fuel.UNFLUED_LPG))).cautions();

        assertTrue(cautions.stream()
                .anyMatch(caution -> caution.danger().contains("Carbon monoxide")
                        && caution.danger().contains("kills")
                        && caution.brief().contains("carbon monoxide")));
        assertTrue(cautions.stream().noneMatch(caution -> caution.danger().equals(NO_UNFLUED)));
    }

    @Test
    void frost_isWarnedOfWhenANightCrossesEitherLine() {
        for (Warning.Kind kind : List.of(Warning.Kind.FROST_AIR, Warning.Kind.FROST_WET_FACE)) {
            Warning warning = new Warning(kind, "store north", Invented.hour(1), Invented.hour(5), -1.0);

            assertTrue(dangers(Varied.warnings(bare(), warning)).contains("Frost breaks wet lime"));
        }
    }

    @Test
    void shutRoomWithADehumidifier_isDryButSoft() {
        Warning warning = new Warning(Warning.Kind.DRY_BUT_SOFT, "store", Invented.hour(1), Invented.hour(50), 260.0);

        assertTrue(dangers(Varied.warnings(bare(), warning)).contains("Dry is not hard"));
    }

    @Test
    void everyCaution_hasAFewWordsForTheConsole() {
        assertTrue(Invented.oneRoom().cautions().stream()
                .allMatch(caution -> caution.brief().matches("[\\x20-\\x7e]{5,70}[.]")));
    }
}
