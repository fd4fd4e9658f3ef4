package org.limedry.cli.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class TextTest {
    // FROM MEMORY: advance widths of Helvetica, in thousandths: space 278, a 556, W 944; bold a 556, bold ! 333. Fonts
    // with its metrics differ by rounding to 1/2048, hence 0.0005.
    @Test
    void inSizes_helveticaMetrics_areMet() {
        assertEquals(0.278, TextWidths.inSizes(" ", false), 5e-4);
        assertEquals(0.556 + 0.944, TextWidths.inSizes("aW", false), 1e-3); // two letters, twice that
        assertEquals(0.556, TextWidths.inSizes("a", true), 5e-4);
        assertEquals(0.333, TextWidths.inSizes("!", true), 5e-4);
    }

    // EXACT: a letter that the table does not hold counts as a whole type size, so that room is never too small.
    @Test
    void inSizes_letterNotListed_countsAsOneSize() {
        assertEquals(2, TextWidths.inSizes("\u6f06\u55b0", false));
    }

    @Test
    void cutTo_longWords_fitWithAnEllipsis() {
        Text cut = Text.plain("North-west gable of the dairy", 15).cutTo(100);

        assertTrue(cut.widthPx() <= 100, () -> cut.words());
        assertTrue(cut.words().startsWith("North-west") && cut.words().endsWith("\u2026"), () -> cut.words());
    }

    @Test
    void cutTo_wordsThatFit_areLeft() {
        assertEquals("gable", Text.plain("gable", 15).cutTo(100).words());
    }

    @Test
    void wrapped_longSentence_keepsAllWordsInOrder() {
        String sentence = "The wall was wet whenever the dew point reached it";

        Paragraph lines = Paragraph.wrapped(Text.bold(sentence, 18), 150);

        assertTrue(lines.widthPx() <= 150);
        assertEquals(
                sentence,
                String.join(" ", lines.lines().stream().map(Text::words).toList()));
    }

    // EXACT: of the two spaces the second leaves the narrower lines.
    @Test
    void inTwo_threeWords_breaksAtTheBetterSpace() {
        Paragraph lines = Paragraph.inTwo(Text.plain("in the dairy", 15)).orElseThrow();

        assertEquals(
                List.of("in the", "dairy"),
                lines.lines().stream().map(Text::words).toList());
    }

    @Test
    void inTwo_oneWord_cannotBeDone() {
        assertEquals(Optional.empty(), Paragraph.inTwo(Text.plain("dairy", 15)));
    }
}
