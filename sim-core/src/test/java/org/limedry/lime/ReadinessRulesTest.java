package org.limedry.lime;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class ReadinessRulesTest {
    // EXACT: the limits as defined: 300 kPa and 2.0 days at 20 C; the face below 98 %; days by the calendar.
    @ParameterizedTest
    @CsvSource({ // rule, suction Pa, age at 20 C, face, days, met
        "green-hard, 300e3, 2.0, 0.99, 3, true",
        "green-hard, 299e3, 2.0, 0.99, 3, false",
        "green-hard, 300e3, 1.9, 0.99, 30, false",
        "dry-white, 300e3, 2.0, 0.979, 3, true",
        "dry-white, 300e3, 2.0, 0.98, 3, false",
        "dry-white, 200e3, 2.0, 0.979, 3, false",
        "days:7, 1, 0, 1, 7, true",
        "days:7, 900e3, 9, 0.5, 6.9, false",
        "days: 2.5, 1, 0, 1, 2.6, true"
    })
    void named_isMetAtItsLimits(ArgumentsAccessor row) {
        CoatState state = new CoatState(row.getDouble(1), row.getDouble(2), row.getDouble(3), row.getDouble(4));

        boolean met = ReadinessRules.named(row.getString(0)).isMetBy(state);

        assertEquals(row.getBoolean(5), met);
    }

    @ParameterizedTest
    @ValueSource(strings = {"green-hard", "dry-white", "days:7", "days:2.5"})
    void named_keepsItsName(String name) {
        assertEquals(name, ReadinessRules.named(name).name());
    }

    @ParameterizedTest
    @ValueSource(strings = {"green", "days:", "days:-3", "days:x", "", "Green-Hard"})
    void named_unknown_isToldWhatIsAllowed(String name) {
        String message = assertThrows(IllegalArgumentException.class, () -> ReadinessRules.named(name))
                .getMessage();

        assertTrue(message.startsWith("rule: must be green-hard, dry-white, days:N"), message);
        assertTrue(message.endsWith("was \"" + name + "\""), message);
    }

    @Test
    void limitsThatCannotBe_areRefused() {
        assertThrows(IllegalArgumentException.class, () -> ReadinessRules.named("days:0"));
        assertThrows(IllegalArgumentException.class, () -> ReadinessRules.greenHard(Double.NaN, 2.0));
        assertThrows(IllegalArgumentException.class, () -> ReadinessRules.dryWhite(300e3, 2.0, 0.0));
    }

    // EXACT: a firm's own rule is a rule like the others.
    @Test
    void firmsOwnRule_isARuleWithItsName() {
        ReadinessRule own = new ReadinessRule(
                "Smith's",
                OptionalDouble.of(200e3),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(4.0));

        assertTrue(own.isMetBy(new CoatState(201e3, 0.0, 1.0, 4.0)));
    }
}
