package org.limedry.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class HtmlPageTest {
    static List<Findings> many() {
        Findings one = Invented.oneRoom();
        return List.of(
                one, Varied.quick(one), Varied.twoRooms(), Varied.nineCoats(), Varied.gaveUp(one, Invented.hour(1700)));
    }

    @Test
    void page_opensWithTheAnswer() {
        String page = page(Invented.oneRoom());

        int answer =
                page.indexOf("<h1>North wall ready for its second coat: likely Thursday 7 January; 17 December if all"
                        + " goes well, 22 January if not</h1>");
        assertTrue(answer > 0 && answer < page.indexOf("<table") && answer < page.indexOf("<svg"));
    }

    @Test
    void textOfTheUser_isEscapedEverywhere() {
        Findings findings = Varied.site(Invented.oneRoom(), "<script>alert('x')</script> & \"Sons\"");

        String page = page(findings);

        assertFalse(page.contains("<script"));
        assertTrue(page.contains("&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt; &amp; &quot;Sons&quot;"));
    }

    @Test
    void nameOfAWall_isEscapedInTextAndCharts() {
        Findings findings = Varied.renamedWall(Invented.oneRoom(), "store north", "store <script>");

        String page = page(findings);

        assertFalse(page.contains("<script"));
        assertTrue(page.contains("&lt;script&gt;"));
    }

    @ParameterizedTest
    @MethodSource("many")
    void page_asksNothingOfANetwork(Findings findings) {
        String page = page(findings);

        assertFalse(Pattern.compile("<(link|script|img|iframe|object|embed)\\b")
                .matcher(page)
                .find());
        assertFalse(
                Pattern.compile("(src|href)\\s*=\\s*['\"]?(?!#)").matcher(page).find());
        assertFalse(
                Pattern.compile("url\\(\\s*['\"]?(?!#)|@import").matcher(page).find());
    }

    @ParameterizedTest
    @MethodSource("many")
    void page_canBeReadAloud(Findings findings) {
        String page = page(findings);

        assertTrue(page.contains("<html lang=\"en-GB\">"));
        assertEquals(count("<table", page), count("<caption", page));
        assertEquals(count("<th\\b", page), count("<th scope=\"(col|row)\"", page));
        assertEquals(count("<svg", page), count("<svg [^>]*role='img'", page));
        assertEquals(count("<svg", page), count("<desc", page));
    }

    @ParameterizedTest
    @MethodSource("many")
    void ids_onAPage_areDifferent(Findings findings) {
        List<String> ids = Pattern.compile("\\bid=['\"]([^'\"]+)['\"]")
                .matcher(page(findings))
                .results()
                .map(match -> match.group(1))
                .toList();

        assertFalse(ids.isEmpty());
        assertEquals(ids.size(), ids.stream().distinct().count());
    }

    @ParameterizedTest
    @MethodSource("many")
    void page_carriesMarkLimitsAndCautions(Findings findings) {
        String page = page(findings);

        assertTrue(page.contains("invented scenario"));
        assertTrue(page.contains("forecast, not a measurement"));
        assertTrue(page.contains("Lime burns eyes and skin"));
        assertTrue(page.contains("Local codes and the competent person come first"));
        assertTrue(page.contains("dates come out too early"));
        assertTrue(page.contains("dates come out mostly too late"));
        assertTrue(page.contains("Source www.met.ie."));
    }

    @Test
    void realSite_isNotMarkedAsInvented() {
        String page = page(Varied.site(Varied.notes(Invented.oneRoom(), Invented.notes(false)), "Kiln house"));

        assertFalse(page.contains("invented"));
    }

    @Test
    void assumption_isShownWithValueRangeAndSource() {
        String page = page(Invented.oneRoom());

        assertTrue(page.contains("<th scope=\"row\">Air through cracks of the store</th>"
                + "<td data-label=\"value\">0.6 room-fulls an hour</td>"
                + "<td data-label=\"range tried\">0.2 to 2</td><td data-label=\"where from\">from memory</td>"));
        assertTrue(
                page.contains(
                        "<li><b>Wetness of the north wall</b>: half full of water <span class=\"from\">(you: wet)</span></li>"));
    }

    @Test
    void severalRooms_listAllCoatsWorstFirstThenRoomByRoom() {
        String page = page(Varied.twoRooms());

        assertTrue(page.contains("<h1>Loft spine wall, coat 1 not ready by 31 January, the end of the run;"
                + " 20 January if all goes well</h1>"));
        assertTrue(page.indexOf("Loft spine wall, first coat") < page.indexOf("Store north wall, first coat"));
        assertTrue(page.contains("Room: store") && page.contains("Room: loft"));
        assertTrue(page.contains("From other rooms by doors"));
        assertTrue(page.contains("The water account of the whole site"));
    }

    @Test
    void quickRun_showsNoEndsOfARange() {
        String page = page(Varied.quick(Invented.oneRoom()));

        assertFalse(page.contains(">Earliest<") || page.contains(">Latest<"));
        assertTrue(page.contains("quick run without ranges"));
    }

    @Test
    void runThatGaveUp_saysSoFirst() {
        String page = page(Varied.gaveUp(Invented.oneRoom(), Invented.hour(1700)));

        assertTrue(page.contains("<p class=\"small\">The calculation stopped early, on Monday 11 January:"));
    }

    private static int count(String pattern, String text) {
        return Math.toIntExact(Pattern.compile(pattern)
                .matcher(text)
                .results()
                .map(MatchResult::group)
                .count());
    }

    private static String page(Findings findings) {
        return HtmlPage.of(findings, PageModels.of(findings), new Pictures(findings));
    }
}
