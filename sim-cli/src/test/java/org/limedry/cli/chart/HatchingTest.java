package org.limedry.cli.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.IntStream;
import org.jfree.svg.SVGGraphics2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

final class HatchingTest {
    private static final Rectangle2D BAR = new Rectangle2D.Double(20, 10, 90, 46);

    @ParameterizedTest
    @EnumSource(Fill.class)
    void fill_anyHatch_linesEndOnTheEdgeOfTheBar(Fill fill) {
        SVGGraphics2D g2 = new SVGGraphics2D(130, 70);

        Hatching.fill(Canvas.withText(g2), BAR, fill);

        NodeList lines = DrawnTexts.parsed(g2.getSVGElement()).getElementsByTagName("line");
        boolean lined = fill == Fill.LIGHT || fill == Fill.HEAVY || fill == Fill.CROSS;
        assertEquals(lined, lines.getLength() > 0);
        for (int i = 0; i < lines.getLength(); i++) {
            Element line = (Element) lines.item(i);
            assertOnEdge(number(line, "x1"), number(line, "y1"));
            assertOnEdge(number(line, "x2"), number(line, "y2"));
        }
    }

    private static double number(Element line, String name) {
        return Double.parseDouble(line.getAttribute(name));
    }

    private static void assertOnEdge(double x, double y) {
        double toEdge = Math.min(
                Math.min(Math.abs(x - BAR.getMinX()), Math.abs(x - BAR.getMaxX())),
                Math.min(Math.abs(y - BAR.getMinY()), Math.abs(y - BAR.getMaxY())));
        assertEquals(0, toEdge, 1e-6); // rounding of a few sums
        assertTrue(Canvas.grown(BAR, 1e-6).contains(x, y));
    }

    /** Ink in percent of the bar, as a fax would leave it. */
    private static double inkPercent(Fill fill) {
        BufferedImage image = new BufferedImage(130, 70, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D g2 = image.createGraphics();
        g2.setColor(Color.WHITE);
        g2.fillRect(0, 0, 130, 70);
        Hatching.fill(Canvas.withShapes(g2), BAR, fill);
        double light = IntStream.range(20, 110)
                .mapToDouble(x -> IntStream.range(10, 56)
                        .map(y -> image.getRaster().getSample(x, y, 0))
                        .sum())
                .sum();
        return 100 * (1 - light / (255 * BAR.getWidth() * BAR.getHeight()));
    }

    // EXACT: a line of width w every p px across itself, of ink i of 255, blackens w / p (1 - i / 255) of the area:
    // light 1.2 / 9 x 0.533 = 7.1 %; heavy 2.6 / 7 x 0.933 = 34.7 %; the tint d0 leaves 18.4 %.
    // Tolerance 4 %: lines without smoothing at the edges of a small bar.
    @ParameterizedTest
    @CsvSource({"WHITE, 0", "LIGHT, 7.1", "HEAVY, 34.7", "GREY, 18.4"})
    void fill_hatch_blackensItsShare(Fill fill, double percent) {
        assertEquals(percent, inkPercent(fill), 4);
    }

    @Test
    void fill_everyFill_leavesAnotherPicture() {
        Set<Long> inks = new HashSet<>();
        for (Fill fill : Fill.values()) {
            inks.add(Math.round(inkPercent(fill) * 10));
        }

        assertEquals(Fill.values().length, inks.size());
    }
}
