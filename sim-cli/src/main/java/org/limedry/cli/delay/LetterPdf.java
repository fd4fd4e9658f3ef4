package org.limedry.cli.delay;

import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.FSObjectDrawerFactory;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.awt.Font;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.limedry.cli.chart.Chart;
import org.limedry.cli.chart.Charts;
import org.limedry.cli.chart.Size;
import org.w3c.dom.Element;

/** The letter as PDF: its chart in it as vectors, its text as text, its fonts inside. */
final class LetterPdf {
    private static final String CHART_TYPE = "limedry/chart";
    private static final String FONTS = "/liberation/LiberationSans-";
    private static final int REGULAR_WEIGHT = 400;
    private static final int BOLD_WEIGHT = 700;

    private final byte[] file;
    private final int pages;
    private final Letter.Room room;

    private LetterPdf(byte[] file, int pages, Letter.Room room) {
        this.file = file;
        this.pages = pages;
        this.room = room;
    }

    /** Returns the file. */
    byte[] file() {
        return file.clone();
    }

    /** Returns how many pages it has. */
    int pages() {
        return pages;
    }

    /** Returns how much of the story is on it. */
    Letter.Room room() {
        return room;
    }

    /** Returns the fullest letter that fits one page, or the shortest if none does. */
    static LetterPdf of(DelayStory story) {
        LetterPdf pdf = of(story, Letter.Room.ALL);
        for (Letter.Room room : Letter.Room.values()) {
            if (pdf.pages() > 1) {
                pdf = of(story, room);
            }
        }
        return pdf;
    }

    private static LetterPdf of(DelayStory story, Letter.Room room) {
        byte[] bytes = rendered(new Letter(story, room), DelayCharts.of(story));
        try (PDDocument document = Loader.loadPDF(bytes)) {
            return new LetterPdf(bytes, document.getNumberOfPages(), room);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] rendered(Letter letter, Chart chart) {
        XRLog.setLoggingEnabled(false);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfRendererBuilder builder = new PdfRendererBuilder();
        // The family under which charts ask for their letters, too.
        builder.useFont(() -> font("Regular"), Font.SANS_SERIF, REGULAR_WEIGHT, FontStyle.NORMAL, true);
        builder.useFont(() -> font("Bold"), Font.SANS_SERIF, BOLD_WEIGHT, FontStyle.NORMAL, true);
        builder.useObjectDrawerFactory(new Drawers(chart));
        // A tagged file, which a screen reader can read; also the only kind that looks for no fonts on the machine.
        builder.usePdfUaAccessibility(true);
        builder.withProducer("limedry");
        builder.withHtmlContent(letter.forPrint(element(chart)), null);
        builder.toStream(out);
        try {
            builder.run();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private static InputStream font(String style) {
        return Objects.requireNonNull(LetterPdf.class.getResourceAsStream(FONTS + style + ".ttf"), style);
    }

    private static String element(Chart chart) {
        return String.format(
                Locale.ROOT,
                "<object type=\"%s\" alt=\"chart\" style=\"display:block;width:%dpx;height:%.0fpx\"></object>",
                CHART_TYPE,
                Size.WIDE.widthPx(),
                Math.ceil(Charts.heightPx(chart, Size.WIDE)));
    }

    /** Draws the chart where its element stands. */
    private record Drawers(Chart chart) implements FSObjectDrawerFactory {
        @Override
        public FSObjectDrawer createDrawer(Element element) {
            return (e, x, y, width, height, device, context, dotsPerPixel) -> {
                device.drawWithGraphics(
                        (float) x,
                        (float) y,
                        (float) width / dotsPerPixel,
                        (float) height / dotsPerPixel,
                        g2 -> Charts.draw(chart, Size.WIDE, g2));
                return Map.of();
            };
        }

        @Override
        public boolean isReplacedObject(Element element) {
            return CHART_TYPE.equals(element.getAttribute("type"));
        }
    }
}
