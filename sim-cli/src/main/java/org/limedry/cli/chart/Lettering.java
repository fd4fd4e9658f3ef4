package org.limedry.cli.chart;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.util.Locale;
import java.util.stream.Stream;

/** How letters get onto a drawing. */
@FunctionalInterface
interface Lettering {
    /** Draws a text from its left end. */
    void draw(Graphics2D g2, Text text, double left, double baseline);

    /** Leaves the letters to whoever shows the drawing. */
    static Lettering asText() {
        return (g2, text, left, baseline) -> {
            g2.setFont(new Font(Font.SANS_SERIF, style(text), text.sizePx()));
            g2.drawString(text.words(), (float) left, (float) baseline);
        };
    }

    /** Draws the letters, stretched or squeezed to the width they were placed with, whatever fonts there are. */
    static Lettering asShapes() {
        Font sans = installedSans();
        return (g2, text, left, baseline) -> {
            Font natural = sans.deriveFont(style(text), text.sizePx());
            double naturalWidthPx = natural.getStringBounds(text.words(), g2.getFontRenderContext())
                    .getWidth();
            double stretch = naturalWidthPx > 0 ? text.widthPx() / naturalWidthPx : 1;
            g2.setFont(natural.deriveFont(AffineTransform.getScaleInstance(stretch, 1)));
            g2.drawString(text.words(), (float) left, (float) baseline);
        };
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
}
