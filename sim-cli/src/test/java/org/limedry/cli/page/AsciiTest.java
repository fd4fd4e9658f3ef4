package org.limedry.cli.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class AsciiTest {
    // EXACT: a half is 0.5, after a whole number only its decimals.
    @ParameterizedTest
    @CsvSource({"\u00bd, 0.5", "5\u00bd, 5.5", "10\u201315\u00bd, 10-15.5", "\u00bd (\u00bd\u20131), 0.5 (0.5-1)"})
    void of_aHalf_isWrittenWithItsNought(String text, String ascii) {
        assertEquals(ascii, Ascii.of(text));
    }
}
