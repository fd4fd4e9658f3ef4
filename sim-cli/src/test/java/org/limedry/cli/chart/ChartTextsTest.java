package org.limedry.cli.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.RenderingHints;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.jfree.svg.SVGGraphics2D;
import org.jfree.svg.ViewBox;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** No text of any chart lies on another, leaves the image or is too small to read. */
final class ChartTextsTest {
    static Stream<Arguments> everyChartAtEachSize() {
        return Samples.all().entrySet().stream()
                .flatMap(entry ->
                        Arrays.stream(Size.values()).map(size -> Arguments.of(entry.getKey(), entry.getValue(), size)));
    }

    @ParameterizedTest(name = "{0}, {2}")
    @MethodSource("everyChartAtEachSize")
    void svg_anyData_textsStandClear(String name, Chart chart, Size size) {
        DrawnTexts drawn = DrawnTexts.of(Charts.svg(chart, size));

        assertEquals(List.of(), drawn.faults());
    }

    @ParameterizedTest(name = "{0}, {2}")
    @MethodSource("everyChartAtEachSize")
    void svgFile_anyData_textsStandClearOfTheTitleToo(String name, Chart chart, Size size) {
        DrawnTexts drawn = DrawnTexts.of(Charts.svgFile(chart, size));

        assertEquals(List.of(), drawn.faults());
    }

    @ParameterizedTest(name = "{0}, {2}")
    @MethodSource("everyChartAtEachSize")
    void canvas_anyData_remembersEveryTextDrawn(String name, Chart chart, Size size) {
        Picture picture = new Charts.Titled(chart, size);
        SVGGraphics2D g2 = new SVGGraphics2D(picture.widthPx(), picture.heightPx());
        g2.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_DEFAULT);
        Canvas canvas = Canvas.withText(g2);

        picture.draw(canvas);

        List<String> remembered =
                canvas.texts().stream().map(text -> text.text().words()).toList();
        List<String> drawn = DrawnTexts.of(Charts.svgFile(chart, size)).words();
        assertEquals(
                drawn.stream().sorted().toList(), remembered.stream().sorted().toList());
    }

    // EXACT: 15 px in wide charts and 14 px in narrow ones are what the page standard asks; 13 px for a line that would
    // else break.
    @ParameterizedTest(name = "{0}, {2}")
    @MethodSource("everyChartAtEachSize")
    void svg_anyData_typeIsAsLargeAsThePagesAsk(String name, Chart chart, Size size) {
        DrawnTexts drawn = DrawnTexts.of(Charts.svg(chart, size));

        double smallest = drawn.texts().stream()
                .mapToDouble(DrawnTexts.Drawn::sizePx)
                .min()
                .orElseThrow();
        assertTrue(smallest >= size.pick(15, 13), () -> "smallest type " + smallest);
    }

    @Test
    void faults_textsOnEachOtherOutsideAndTooSmall_areAllFound() {
        SVGGraphics2D g2 = new SVGGraphics2D(100, 50);
        Canvas canvas = Canvas.withText(g2);
        canvas.text(Text.plain("first", 15), 10, 20, Align.START);
        canvas.text(Text.plain("second", 15), 30, 25, Align.START);
        canvas.text(Text.plain("tiny", 12), 10, 45, Align.START);
        canvas.text(Text.plain("over the edge", 15), 60, 45, Align.START);

        List<String> faults = DrawnTexts.of(g2.getSVGElement(null, false, new ViewBox(0, 0, 100, 50), null, null))
                .faults();

        assertEquals(
                List.of("overlap", "too small", "outside the image"),
                faults.stream().map(fault -> fault.split(":", 2)[0]).toList());
    }
}
