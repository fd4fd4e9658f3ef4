package org.limedry.cli.chart;

import java.awt.geom.Rectangle2D;

/** A picture with its title over it and a margin all round, for a file that stands alone. */
final class TitledPicture implements Picture {
    private static final double MARGIN_PX = 12;

    private final Picture picture;
    private final Paragraph title;

    TitledPicture(Chart chart, Size size) {
        this.picture = Picture.of(chart, size);
        this.title = Paragraph.wrapped(Text.bold(chart.title(), size.headPx() + 2), picture.widthPx());
    }

    private double titlePx() {
        return title.heightPx() + 2 * MARGIN_PX;
    }

    @Override
    public double widthPx() {
        return picture.widthPx() + 2 * MARGIN_PX;
    }

    @Override
    public double heightPx() {
        return titlePx() + picture.heightPx() + MARGIN_PX;
    }

    @Override
    public String story() {
        return picture.story();
    }

    @Override
    public void draw(Canvas canvas) {
        canvas.fill(new Rectangle2D.Double(0, 0, widthPx(), heightPx()), Ink.PAPER);
        canvas.paragraph(title, MARGIN_PX, MARGIN_PX, Align.START);
        canvas.drawInside(picture, MARGIN_PX, titlePx());
    }
}
