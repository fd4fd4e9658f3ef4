package org.limedry.cli.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.limedry.cli.safety.Has;
import org.limedry.cli.safety.Situation;

/** Pages and sheets. EXACT: every text looked for is one that the test put in. */
final class PageHtmlTest {
    private static final Block CARE = new Block.Cautions(Situation.withoutSite());

    private static Page page(List<Block> blocks, boolean invented) {
        return new Page(
                new Page.Head("Salt <house>", "airing, in June", invented, "Open the door & wait"),
                blocks,
                new Page.Foot(
                        List.of("from 7 runs"), List.of("no wind"), List.of("weather: a station"), "limedry 0.9"));
    }

    @Test
    void page_withEveryKindOfBlock_showsEach() {
        List<Block> blocks = List.of(
                new Block.Heading("Levels", true),
                Block.words("plain words"),
                new Block.Words("the one sentence", Block.Weight.STRONG),
                new Block.Lines("What to do", true, List.of("first thing", "second thing")),
                new Block.Cautions(new Situation(Set.of(Has.FROST), Set.of())),
                new Block.Figures(new Table(
                        "What each buys",
                        List.of(Table.Column.words("level"), Table.Column.number("days")),
                        List.of(List.of("shut", "39")))));

        String html = PageHtml.of(page(blocks, true));

        for (String text : List.of(
                "Salt &lt;house&gt;",
                "Open the door &amp; wait",
                "<h2 class=\"sheet\">Levels</h2>",
                "<p class=\"why\">the one sentence</p>",
                "<li>second thing</li>",
                "<b>Frost breaks wet lime</b>: cover",
                "<td data-label=\"days\" class=\"number\">39</td>",
                "invented scenario",
                "<li>no wind</li>",
                "forecast, not a measurement",
                "weather: a station",
                "limedry 0.9")) {
            assertTrue(html.contains(text), text + " in " + html);
        }
    }

    @Test
    void page_ofARealSite_isNotMarkedAsInvented() {
        String html = PageHtml.of(page(List.of(CARE), false));

        assertFalse(html.contains("invented"), html);
    }

    @Test
    void table_withARowTooShort_isRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new Table("x", List.of(Table.Column.words("a"), Table.Column.words("b")), List.of(List.of("1"))));
    }

    @Test
    void sheet_writesNumbersInFullAndEmptyCells() {
        CsvSheet sheet = new CsvSheet(
                List.of("level", "days", "date"),
                List.of(List.of("shut, cold", 0.1 + 0.2, Optional.empty()), List.of("open", 7, "2026-10-12")));

        assertEquals("level,days,date\n\"shut, cold\",0.30000000000000004,\nopen,7,2026-10-12\n", sheet.text());
    }
}
