package org.limedry.cli.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

final class ChartsTest {
    private static BufferedImage image(Chart chart, Size size, int scale) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(Charts.png(chart, size, scale)));
    }

    private static int grey(BufferedImage image, double x, double y) {
        return image.getRaster().getSample((int) Math.round(x), (int) Math.round(y), 0);
    }

    @Test
    void svg_anyChart_saysToThoseWhoCannotSeeItWhatItShows() {
        Document svg = DrawnTexts.parsed(Charts.svg(DryingSamples.stall(), Size.WIDE));

        Element root = svg.getDocumentElement();
        assertEquals("img", root.getAttribute("role"));
        assertEquals("en-GB", root.getAttribute("lang"));
        assertEquals("drying-wide-title drying-wide-story", root.getAttribute("aria-labelledby"));
        assertEquals(
                DryingSamples.stall().title(),
                svg.getElementsByTagName("title").item(0).getTextContent());
        String story = svg.getElementsByTagName("desc").item(0).getTextContent();
        assertTrue(story.contains("North wall, first coat: 3.3 litres at first, 1.2 on the likely date"), story);
        assertTrue(story.contains("likely ready on 7 January"), story);
    }

    @Test
    void svg_wallAndAccount_tellTheirFigures() {
        String wall = Charts.svg(WallSamples.stall(), Size.WIDE);
        String account = Charts.svg(AccountSamples.stall(), Size.WIDE);

        assertTrue(wall.contains(WallSamples.stall().wetHours() + " of 2,184 hours"), wall);
        assertTrue(account.contains("Put in: 235 litres: laid in the coats 199, from the floor 14"), account);
    }

    @Test
    void svg_titleWithMarkupAndControlCharacters_isPlainText() {
        WaterAccountChart chart = new WaterAccountChart(
                "account",
                "5 < 6 & \"so on\"\u0000\n again",
                List.of(),
                List.of(),
                List.of(),
                AccountSamples.nothing().onTheWay());

        Document svg = DrawnTexts.parsed(Charts.svg(chart, Size.NARROW));

        assertEquals(
                "5 < 6 & \"so on\" again",
                svg.getElementsByTagName("title").item(0).getTextContent());
    }

    @ParameterizedTest
    @EnumSource(Size.class)
    void svg_drawnTwice_isTheSameByteForByte(Size size) {
        for (Chart chart : Samples.all().values()) {
            assertEquals(Charts.svg(chart, size), Charts.svg(chart, size));
            assertEquals(Charts.svgFile(chart, size), Charts.svgFile(chart, size));
        }
    }

    @Test
    void svg_everyId_belongsToItsChart() {
        String svg = Charts.svg(WallSamples.stall(), Size.NARROW);

        Matcher ids = Pattern.compile(" id='([^']*)'").matcher(svg);
        List<String> found = new ArrayList<>();
        while (ids.find()) {
            found.add(ids.group(1));
        }

        assertTrue(found.size() >= 3, () -> "ids " + found);
        found.forEach(id -> assertTrue(id.startsWith("wall-and-dew-point-narrow-"), id));
    }

    @Test
    void svg_hatches_areLinesAndNoPicture() {
        String svg = Charts.svg(AccountSamples.stall(), Size.WIDE);

        assertFalse(svg.contains("<image"), "a picture inside");
        assertFalse(svg.contains("url(#account"), "a pattern inside");
        assertTrue(svg.contains("stroke-width:2.6"), "no heavy hatch");
    }

    // EXACT: black, white and greys only: red, green and blue are equal.
    @Test
    void svg_anyChart_hasNoColour() {
        for (Chart chart : Samples.all().values()) {
            Matcher colours = Pattern.compile("rgb\\((\\d+),(\\d+),(\\d+)\\)").matcher(Charts.svg(chart, Size.WIDE));
            while (colours.find()) {
                assertEquals(colours.group(1), colours.group(2), colours.group());
                assertEquals(colours.group(2), colours.group(3), colours.group());
            }
        }
    }

    // EXACT: 680 or 358 px and a margin of 12 on both sides, times the scale.
    @Test
    void png_twoScales_hasTheSizeAskedFor() throws IOException {
        assertEquals(2 * 704, image(AccountSamples.stall(), Size.WIDE, 2).getWidth());
        assertEquals(382, image(AccountSamples.stall(), Size.NARROW, 1).getWidth());
    }

    @Test
    void png_scaleOutOfRange_isRefused() {
        assertThrows(IllegalArgumentException.class, () -> Charts.png(AccountSamples.stall(), Size.WIDE, 0));
        assertThrows(IllegalArgumentException.class, () -> Charts.png(AccountSamples.stall(), Size.WIDE, 9));
    }

    // EXACT: the dew point stands at 24 degrees over a wall at 4; 14 lies between them. Ink is 17 of 255, paper 255;
    // the tolerance is for the grey conversion of the image.
    @Test
    void png_dewPointOverTheWall_isBlackBetween() throws IOException {
        Timeline timeline = DryingSamples.timeline("2026-11-02T00:00:00Z", 3);

        BufferedImage wet = image(WallSamples.flat(timeline, 4, 24), Size.WIDE, 1);
        BufferedImage dry = image(WallSamples.flat(timeline, 24, 4), Size.WIDE, 1);

        double titlePx = 12 + 18 * 1.02 + 12;
        double x = 12 + 122 + 200;
        double y = titlePx + 30 + 0.55 * (206 - 30);
        assertEquals(17, grey(wet, x, y), 8);
        assertEquals(255, grey(dry, x, y), 8);
    }

    @Test
    void models_wrongInput_isRefused() {
        Timeline t = DryingSamples.WINTER;

        assertThrows(IllegalArgumentException.class, () -> new Timeline(t.to(), t.from(), t.zone()));
        assertThrows(IllegalArgumentException.class, () -> new DryingChart.Point(t.from(), Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new DryingChart.Point(t.from(), -0.1));
        assertThrows(
                IllegalArgumentException.class, () -> new WallAndDewPointChart.Hour(t.from(), Double.NaN, 3, 0, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new WallAndDewPointChart.Hour(t.from(), 3, 4, 1.1, 0, 0));
        assertThrows(
                IllegalArgumentException.class,
                () -> new DryingChart("Bad Id", "title", t, List.of(), List.of(), List.of()));
        assertThrows(
                IllegalArgumentException.class,
                () -> new WaterAccountChart.Term("name", "other", Double.NaN, Fill.GREY));
    }

    @Test
    void svg_rangePastTheRun_saysAfterItsEnd() {
        List<String> words =
                DrawnTexts.of(Charts.svg(DryingSamples.stall(), Size.WIDE)).words();

        assertTrue(
                words.contains("North wall, second coat: likely 29\u00a0Jan, after 31\u00a0Jan if not"),
                () -> words.toString());
        assertTrue(words.contains("heater in, 30 Nov"), () -> words.toString());
        assertTrue(words.contains("site shut"), () -> words.toString());
    }

    @Test
    void svg_moreThanFourCoats_hasOnePlotForEachWall() {
        String svg = Charts.svg(DryingSamples.sixCoats(), Size.WIDE);

        List<String> words = DrawnTexts.of(svg).words();
        assertTrue(words.containsAll(List.of("North wall", "Gable behind the old bread oven", "Ceiling")));
        // EXACT: three plots, each with its dates.
        assertEquals(3, words.stream().filter("14 Dec"::equals).count());
        assertNotEquals(-1, svg.indexOf("drying-wide-clip-2"));
    }
}
