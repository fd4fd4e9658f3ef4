package org.limedry.cli.chart;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.jfree.svg.SVGGraphics2D;
import org.jfree.svg.SVGUtils;
import org.limedry.units.Check;

/** Draws charts. The same chart gives the same SVG byte for byte, whatever fonts the machine has. */
public final class Charts {
    private static final String FONTS = "Arial,\"Liberation Sans\",Helvetica,sans-serif";
    // The library writes single precision with all the digits of double precision.
    private static final Pattern LINE_WIDTH = Pattern.compile("stroke-width:([0-9.]+)");
    private static final int MAX_SCALE = 8;

    private Charts() {}

    /** Returns the chart as an element for a page whose caption carries the title; it fills the width it is given. */
    public static String svg(Chart chart, Size size) {
        Picture picture = Picture.of(chart, size);
        return element(chart, size, picture, "");
    }

    /** Returns the chart as a file of its own, with its title over it. */
    public static String svgFile(Chart chart, Size size) {
        Picture picture = new Titled(chart, size);
        String dimensions = String.format(
                Locale.ROOT, " width='%s' height='%s'", coordinate(picture.widthPx()), coordinate(picture.heightPx()));
        return "<?xml version='1.0' encoding='UTF-8'?>\n" + element(chart, size, picture, dimensions) + "\n";
    }

    /**
     * Returns the chart as a PNG file in greys, with its title over it.
     *
     * @param scale pixels of the file for each px of the drawing; 1 to 8
     */
    public static byte[] png(Chart chart, Size size, int scale) {
        Check.inClosed(scale, 1, MAX_SCALE, "scale", "");
        Picture picture = new Titled(chart, size);
        int width = (int) Math.ceil(picture.widthPx());
        int height = (int) Math.ceil(picture.heightPx());
        BufferedImage image = new BufferedImage(width * scale, height * scale, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D g2 = image.createGraphics();
        g2.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g2.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g2.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g2.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g2.scale(scale, scale);
        // Sizes were rounded up: no strip may stay black.
        g2.setColor(Ink.PAPER);
        g2.fillRect(0, 0, width, height);
        picture.draw(Canvas.withShapes(g2));
        g2.dispose();
        return encoded(image);
    }

    /** Returns the height of the chart without its title, px. */
    public static double heightPx(Chart chart, Size size) {
        return Picture.of(chart, size).heightPx();
    }

    /** Draws the chart without its title, letters as text in {@link java.awt.Font#SANS_SERIF}, at 0, 0. */
    public static void draw(Chart chart, Size size, Graphics2D g2) {
        // JFreeChart reads this hint and puts it back, which fails if there is none.
        g2.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_DEFAULT);
        Picture.of(chart, size).draw(Canvas.withText(g2));
    }

    /** A picture with its title over it and a margin all round, for a file that stands alone. */
    static final class Titled extends Picture {
        private static final double MARGIN_PX = 12;

        private final Picture picture;
        private final Paragraph title;

        Titled(Chart chart, Size size) {
            super(size);
            this.picture = Picture.of(chart, size);
            this.title = Paragraph.wrapped(Text.bold(chart.title(), size.headPx() + 2), picture.widthPx());
        }

        private double titlePx() {
            return title.heightPx() + 2 * MARGIN_PX;
        }

        @Override
        double widthPx() {
            return picture.widthPx() + 2 * MARGIN_PX;
        }

        @Override
        double heightPx() {
            return titlePx() + picture.heightPx() + MARGIN_PX;
        }

        @Override
        String story() {
            return picture.story();
        }

        @Override
        void draw(Canvas canvas) {
            canvas.fill(new Rectangle2D.Double(0, 0, widthPx(), heightPx()), Ink.PAPER);
            canvas.paragraph(title, MARGIN_PX, MARGIN_PX, Align.START);
            canvas.drawInside(picture, MARGIN_PX, titlePx());
        }
    }

    private static byte[] encoded(BufferedImage image) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            writer.setOutput(out);
            writer.write(image);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }

    private static String element(Chart chart, Size size, Picture picture, String dimensions) {
        String id = chart.id() + "-" + size.name().toLowerCase(Locale.ROOT);
        SVGGraphics2D g2 = new SVGGraphics2D(picture.widthPx(), picture.heightPx());
        // Left to itself the library names its clips by the clock.
        g2.setDefsKeyPrefix(id + "-");
        g2.setFontFunction(family -> "inherit");
        g2.setGeomDoubleConverter(Charts::coordinate);
        g2.setTransformDoubleConverter(Charts::coordinate);
        // JFreeChart reads this hint and puts it back, which fails if there is none.
        g2.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_DEFAULT);
        picture.draw(Canvas.withText(g2));
        String drawn = g2.getSVGElement();
        String head = String.format(
                Locale.ROOT,
                "<svg xmlns='http://www.w3.org/2000/svg' class='%s' viewBox='0 0 %s %s'%s role='img' lang='en-GB'"
                        + " aria-labelledby='%s-title %s-story' style='font-family:%s'>"
                        + "<title id='%s-title'>%s</title><desc id='%s-story'>%s</desc>",
                size.name().toLowerCase(Locale.ROOT),
                coordinate(picture.widthPx()),
                coordinate(picture.heightPx()),
                dimensions,
                id,
                id,
                FONTS,
                id,
                escaped(chart.title()),
                id,
                escaped(picture.story()));
        String body = LINE_WIDTH
                .matcher(drawn.substring(drawn.indexOf('>') + 1))
                .replaceAll(width -> "stroke-width:" + hundredths(width.group(1)));
        return head + body;
    }

    private static String escaped(String words) {
        return SVGUtils.escapeForXML(Text.printable(words));
    }

    private static String hundredths(String width) {
        return new BigDecimal(width)
                .setScale(2, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    /** Tenths of a px are finer than any printer. */
    private static String coordinate(double px) {
        double tenths = Math.round(px * 10) / 10.0;
        return tenths == Math.rint(tenths) ? Long.toString((long) tenths) : Double.toString(tenths);
    }
}
