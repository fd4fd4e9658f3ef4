package org.limedry.cli.chart;

import java.awt.Color;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Strips of hours under each other. Wide, for A4 landscape, the night and the reason stand beside each strip; narrow,
 * over and under it.
 */
final class DoorsPicture extends Picture {
    /** Wider than other charts: it fills a landscape sheet, and 30 px come out as 24 points. */
    private static final double WIDE_PX = 1000;

    private static final double WIDE_STRIP_LEFT_PX = 84;
    private static final double WIDE_STRIP_WIDTH_PX = 430;
    private static final double WIDE_NIGHT_LEFT_PX = 532;
    private static final double WIDE_WHY_LEFT_PX = 648;
    private static final double WIDE_ROW_GAP_PX = 5;
    private static final double NARROW_ROW_GAP_PX = 16;
    private static final double HEAD_GAP_PX = 8;
    private static final double LEAST_STRIP_PX = 55;
    private static final int HOURS_PER_TICK = 2;

    private final DoorsChart chart;
    private final Columns columns;
    private final List<Row> rows = new ArrayList<>();
    private final double bottom;

    /** Where the strip, the night and the reason stand. */
    private record Columns(double stripLeft, double stripWidth, double whyLeft, double whyWidth) {}

    /** A day as laid out. */
    private record Row(
            DoorsChart.Day day, double top, double stripTop, double stripHeight, Paragraph night, Paragraph why) {}

    DoorsPicture(DoorsChart chart, Size size) {
        super(size);
        this.chart = chart;
        columns = size.pick(
                new Columns(WIDE_STRIP_LEFT_PX, WIDE_STRIP_WIDTH_PX, WIDE_WHY_LEFT_PX, WIDE_PX - WIDE_WHY_LEFT_PX),
                new Columns(2, size.widthPx() - 4, 2, size.widthPx() - 4));
        double top = headPx();
        for (DoorsChart.Day day : chart.days()) {
            Row row = row(day, top);
            rows.add(row);
            top = size.pick(
                            row.stripTop() + row.stripHeight(),
                            row.stripTop()
                                    + row.stripHeight()
                                    + HEAD_GAP_PX
                                    + row.why().heightPx())
                    + size.pick(WIDE_ROW_GAP_PX, NARROW_ROW_GAP_PX);
        }
        bottom = top;
    }

    private double headPx() {
        return hourText(chart.firstHour()).heightPx() + HEAD_GAP_PX;
    }

    private Row row(DoorsChart.Day day, double top) {
        Paragraph why = Paragraph.wrapped(Text.plain(day.why(), size.pick(16, 15)), columns.whyWidth());
        double stripTop = top + size.pick(0.0, weekday(day).heightPx() + HEAD_GAP_PX);
        Paragraph night =
                Paragraph.wrapped(Text.bold(day.night(), 18), WIDE_WHY_LEFT_PX - WIDE_NIGHT_LEFT_PX - HEAD_GAP_PX);
        double height = size.pick(Math.max(LEAST_STRIP_PX, Math.max(why.heightPx(), night.heightPx())), 52.0);
        return new Row(day, top, stripTop, height, night, why);
    }

    @Override
    double widthPx() {
        return size.pick(WIDE_PX, (double) size.widthPx());
    }

    @Override
    double heightPx() {
        return bottom;
    }

    @Override
    String story() {
        return chart.days().stream()
                .map(day -> day.weekday() + " " + day.date() + ": "
                        + day.blocks().stream().map(DoorsPicture::sentence).collect(Collectors.joining(", "))
                        + "; night " + day.night() + ". " + day.why())
                .collect(Collectors.joining(" "));
    }

    private static String sentence(DoorsChart.Block block) {
        String word = switch (block.word()) {
            case OPEN -> "open";
            case SHUT -> "shut";
            case NO_DIFFERENCE -> "no difference";
        };
        return word + " " + block.fromHour() + " to " + block.untilHour();
    }

    @Override
    void draw(Canvas canvas) {
        double headBaseline = hourText(chart.firstHour()).ascentPx();
        drawHours(canvas, headBaseline);
        if (size == Size.WIDE) {
            canvas.text(Text.bold("Night", 17), WIDE_NIGHT_LEFT_PX, headBaseline, Align.START);
            canvas.text(Text.bold("Why", 17), WIDE_WHY_LEFT_PX, headBaseline, Align.START);
        }
        for (Row row : rows) {
            drawNames(canvas, row);
            row.day().blocks().forEach(block -> drawBlock(canvas, row, block));
            double whyTop = size.pick(
                    row.stripTop() + 0.5 * (row.stripHeight() - row.why().heightPx()),
                    row.stripTop() + row.stripHeight() + HEAD_GAP_PX);
            canvas.paragraph(row.why(), columns.whyLeft(), whyTop, Align.START);
        }
    }

    private Text hourText(int hour) {
        return Text.bold(Integer.toString(hour), size.pick(18, 15));
    }

    private void drawHours(Canvas canvas, double baseline) {
        for (int hour = chart.firstHour(); hour <= chart.lastHour(); hour += HOURS_PER_TICK) {
            Align align = hour == chart.firstHour() ? Align.START : hour == chart.lastHour() ? Align.END : Align.MIDDLE;
            canvas.text(hourText(hour), x(hour), baseline, align);
        }
    }

    private double x(int hour) {
        return columns.stripLeft()
                + columns.stripWidth() * (hour - chart.firstHour()) / (chart.lastHour() - chart.firstHour());
    }

    private Text weekday(DoorsChart.Day day) {
        return size.pick(Text.bold(day.weekday(), 32), Text.bold(day.weekday() + " " + day.date(), 19));
    }

    private void drawNames(Canvas canvas, Row row) {
        Text weekday = weekday(row.day());
        if (size == Size.NARROW) {
            double baseline = row.top() + weekday.ascentPx();
            canvas.text(weekday, columns.stripLeft(), baseline, Align.START);
            Text night = Text.bold("night " + row.day().night(), 15);
            canvas.text(night, columns.stripLeft() + columns.stripWidth(), baseline, Align.END);
            return;
        }
        double middle = row.stripTop() + 0.5 * row.stripHeight();
        canvas.text(weekday, 0, middle, Align.START);
        canvas.text(Text.plain(row.day().date(), 17), 0, middle + 22, Align.START);
        canvas.paragraph(
                row.night(), WIDE_NIGHT_LEFT_PX, middle - 0.5 * row.night().heightPx(), Align.START);
    }

    private void drawBlock(Canvas canvas, Row row, DoorsChart.Block block) {
        Rectangle2D bar = new Rectangle2D.Double(
                x(block.fromHour()), row.stripTop(), x(block.untilHour()) - x(block.fromHour()), row.stripHeight());
        if (block.word() == DoorsChart.Word.SHUT) {
            canvas.fill(bar, Ink.BLACK);
            canvas.draw(bar, Ink.line(1.5), Ink.BLACK);
        } else if (block.word() == DoorsChart.Word.OPEN) {
            canvas.bar(Canvas.grown(bar, -1.5), Fill.WHITE, Ink.line(3));
        } else {
            Hatching.fill(canvas, bar, Fill.LIGHT);
            canvas.draw(bar, Ink.line(1), Ink.MIDDLE);
        }
        drawWord(canvas, bar, block);
    }

    /** Writes the word in the largest setting that fits; a bar too narrow for any speaks by its fill. */
    private void drawWord(Canvas canvas, Rectangle2D bar, DoorsChart.Block block) {
        settings(block).stream()
                .filter(words -> words.widthPx() <= bar.getWidth() - 6 && words.heightPx() <= bar.getHeight() - 4)
                .findFirst()
                .ifPresent(words -> {
                    Point2D topLeft = new Point2D.Double(
                            bar.getCenterX() - 0.5 * words.widthPx(), bar.getCenterY() - 0.5 * words.heightPx());
                    if (block.word() == DoorsChart.Word.NO_DIFFERENCE) {
                        canvas.boxed(words, topLeft.getX(), topLeft.getY(), Align.MIDDLE);
                    } else {
                        Color ink = block.word() == DoorsChart.Word.SHUT ? Ink.PAPER : Ink.BLACK;
                        canvas.paragraph(words, topLeft, Align.MIDDLE, ink);
                    }
                });
    }

    private List<Paragraph> settings(DoorsChart.Block block) {
        int big = size.pick(31, 22);
        int middle = size.pick(25, 18);
        int small = size.pick(18, 14);
        return switch (block.word()) {
            case OPEN ->
                List.of(
                        one("OPEN " + block.span(), big),
                        one("OPEN " + block.span(), middle),
                        two("OPEN", block.span(), middle),
                        two("OPEN", block.span(), small),
                        one(block.span(), small));
            case SHUT -> List.of(one("SHUT", big), one("SHUT", middle), one("SHUT", small));
            case NO_DIFFERENCE ->
                List.of(
                        Paragraph.of(Text.plain("no difference", middle)),
                        Paragraph.of(Text.plain("no difference", small)),
                        new Paragraph(List.of(Text.plain("no", small), Text.plain("diff.", small))));
        };
    }

    private static Paragraph one(String words, int sizePx) {
        return Paragraph.of(Text.bold(words, sizePx));
    }

    private static Paragraph two(String first, String second, int sizePx) {
        return new Paragraph(List.of(Text.bold(first, sizePx), Text.bold(second, sizePx)));
    }
}
