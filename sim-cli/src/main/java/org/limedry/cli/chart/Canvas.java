package org.limedry.cli.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** A surface that remembers where its texts stand. */
final class Canvas {
    private static final double BOX_MARGIN_PX = 2;

    private final Graphics2D g2;
    private final Lettering lettering;
    private final List<TextBox> texts = new ArrayList<>();

    private Canvas(Graphics2D g2, Lettering lettering) {
        this.g2 = g2;
        this.lettering = lettering;
    }

    /**
     * A text that was drawn.
     *
     * @param text the text
     * @param box where it stands
     */
    record TextBox(Text text, Rectangle2D box) {}

    /** How letters get onto a drawing. */
    @FunctionalInterface
    private interface Lettering {
        /** Draws a text from its left end. */
        void draw(Graphics2D g2, Text text, double left, double baseline);
    }

    /** Returns a canvas that leaves the letters to whoever shows the drawing. */
    static Canvas withText(Graphics2D surface) {
        return new Canvas(surface, (g2, text, left, baseline) -> {
            g2.setFont(new Font(Font.SANS_SERIF, style(text), text.sizePx()));
            g2.drawString(text.words(), (float) left, (float) baseline);
        });
    }

    /** Returns a canvas that stretches or squeezes letters to the width they were placed with, whatever fonts there are. */
    static Canvas withShapes(Graphics2D surface) {
        Font sans = installedSans();
        return new Canvas(surface, (g2, text, left, baseline) -> {
            Font natural = sans.deriveFont(style(text), text.sizePx());
            double naturalWidthPx = natural.getStringBounds(text.words(), g2.getFontRenderContext())
                    .getWidth();
            double stretch = naturalWidthPx > 0 ? text.widthPx() / naturalWidthPx : 1;
            g2.setFont(natural.deriveFont(AffineTransform.getScaleInstance(stretch, 1)));
            g2.drawString(text.words(), (float) left, (float) baseline);
        });
    }

    private static int style(Text text) {
        return text.bold() ? Font.BOLD : Font.PLAIN;
    }

    private static Font installedSans() {
        return Stream.of("Arial", "Liberation Sans", "Helvetica")
                .map(name -> new Font(name, Font.PLAIN, 1))
                .filter(font -> font.getFamily(Locale.ROOT).equals(font.getName()))
                .findFirst()
                .orElseGet(() -> new Font(Font.SANS_SERIF, Font.PLAIN, 1));
    }

    Graphics2D graphics() {
        return g2;
    }

    /** Returns the texts drawn so far. */
    List<TextBox> texts() {
        return Collections.unmodifiableList(texts);
    }

    /** Draws a picture with its top left corner at the given place, and takes its texts over. */
    void drawInside(Picture picture, double left, double top) {
        Canvas inside = new Canvas(g2, lettering);
        AffineTransform before = g2.getTransform();
        g2.translate(left, top);
        picture.draw(inside);
        g2.setTransform(before);
        for (TextBox text : inside.texts) {
            Rectangle2D box = text.box();
            texts.add(new TextBox(
                    text.text(),
                    new Rectangle2D.Double(box.getX() + left, box.getY() + top, box.getWidth(), box.getHeight())));
        }
    }

    void draw(Shape shape, Stroke stroke, Color color) {
        g2.setStroke(stroke);
        g2.setColor(color);
        g2.draw(shape);
    }

    void line(Line2D line, Stroke stroke) {
        draw(line, stroke, Ink.BLACK);
    }

    void fill(Shape shape, Color color) {
        g2.setColor(color);
        g2.fill(shape);
    }

    /** Draws a bar: its fill, then its outline. */
    void bar(Rectangle2D bar, Fill fill, Stroke outline) {
        Hatching.fill(this, bar, fill);
        draw(bar, outline, Ink.BLACK);
    }

    /** Draws a text. */
    void text(Text text, double x, double baseline, Align align) {
        text(text, align.left(x, text.widthPx()), baseline, Ink.BLACK);
    }

    private void text(Text text, double left, double baseline, Color color) {
        g2.setColor(color);
        lettering.draw(g2, text, left, baseline);
        texts.add(new TextBox(text, text.box(left, baseline)));
    }

    /** Draws a text on a white box, for places where lines or a hatch run below it. */
    void boxed(Text text, double x, double baseline, Align align) {
        Paragraph line = Paragraph.of(text);
        boxed(line, align.left(x, text.widthPx()), baseline - text.ascentPx(), Align.START);
    }

    /** Draws lines of text on white boxes, from their top left corner. */
    void boxed(Paragraph paragraph, double left, double top, Align align) {
        paper(paragraph, new Point2D.Double(left, top), align, Ink.PAPER);
        paragraph(paragraph, left, top, align);
    }

    /** Draws lines of text in the middle of their box, on paper of the given colour. */
    void boxed(Paragraph paragraph, Rectangle2D box, Color paper) {
        paper(paragraph, new Point2D.Double(box.getX(), box.getY()), Align.MIDDLE, paper);
        paragraph(paragraph, box.getX(), box.getY(), Align.MIDDLE);
    }

    private void paper(Paragraph paragraph, Point2D topLeft, Align align, Color color) {
        double baseline = topLeft.getY() + paragraph.lines().get(0).ascentPx();
        double x = align.place(topLeft.getX(), paragraph.widthPx());
        for (Text line : paragraph.lines()) {
            Rectangle2D box = line.box(align.left(x, line.widthPx()), baseline);
            fill(grown(box, BOX_MARGIN_PX), color);
            baseline += paragraph.pitchPx();
        }
    }

    /** Draws lines of text from their top left corner. */
    void paragraph(Paragraph paragraph, double left, double top, Align align) {
        paragraph(paragraph, new Point2D.Double(left, top), align, Ink.BLACK);
    }

    /** Draws lines of text in another colour, from their top left corner. */
    void paragraph(Paragraph paragraph, Point2D topLeft, Align align, Color color) {
        double baseline = topLeft.getY() + paragraph.lines().get(0).ascentPx();
        double x = align.place(topLeft.getX(), paragraph.widthPx());
        for (Text line : paragraph.lines()) {
            text(line, align.left(x, line.widthPx()), baseline, color);
            baseline += paragraph.pitchPx();
        }
    }

    static Rectangle2D grown(Rectangle2D box, double byPx) {
        return new Rectangle2D.Double(
                box.getX() - byPx, box.getY() - byPx, box.getWidth() + 2 * byPx, box.getHeight() + 2 * byPx);
    }
}
