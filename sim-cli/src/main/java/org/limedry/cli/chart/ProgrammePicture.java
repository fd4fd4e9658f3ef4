package org.limedry.cli.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.limedry.cli.chart.ProgrammeChart.Programme;
import org.limedry.cli.chart.ProgrammeChart.Row;

/** Programmes one below the other on the same weeks: work black, waiting hatched, the spread of the ready date dashed. */
final class ProgrammePicture implements Picture {
    private static final double SAMPLES_PX = 34;
    private static final double HEADING_PX = 30;
    private static final double AXIS_PX = 40;
    private static final double FOOT_PX = 18;
    private static final double RIGHT_PX = 14;
    private static final double MOST_NAMES_PX = 250;
    private static final double NAME_GAP_PX = 10;

    private final ProgrammeChart chart;
    private final Size size;
    private final WeekScale weeks;
    private final double left;

    ProgrammePicture(ProgrammeChart chart, Size size) {
        this.chart = chart;
        this.size = size;
        double last = rows(chart)
                .flatMap(row ->
                        Stream.concat(row.ready().known(), row.work().stream().map(ProgrammeChart.Work::toWeek)))
                .max(Comparator.naturalOrder())
                .orElse(chart.runWeeks());
        this.weeks = WeekScale.reaching(Math.max(last, 1));
        double widest = rows(chart)
                .mapToDouble(row -> Text.plain(row.name(), size.textPx()).widthPx())
                .max()
                .orElse(0);
        this.left = size.pick(Math.min(widest, MOST_NAMES_PX) + NAME_GAP_PX, 2.0);
    }

    private static Stream<Row> rows(ProgrammeChart chart) {
        return chart.programmes().stream().flatMap(programme -> programme.rows().stream());
    }

    @Override
    public double widthPx() {
        return size.widthPx();
    }

    @Override
    public double heightPx() {
        return chart.programmes().stream().mapToDouble(this::blockPx).sum() + SAMPLES_PX + FOOT_PX;
    }

    private double blockPx(Programme programme) {
        return headingPx(programme) + programme.rows().size() * rowPx() + AXIS_PX;
    }

    private double headingPx(Programme programme) {
        return HEADING_PX + heading(programme).heightPx() - heading(programme).pitchPx();
    }

    private Paragraph heading(Programme programme) {
        return Paragraph.wrapped(Text.bold(programme.heading(), size.headPx()), size.widthPx());
    }

    private double rowPx() {
        return size.pick(25, 44);
    }

    @Override
    public String story() {
        return chart.programmes().stream()
                .map(programme -> programme.heading() + ": "
                        + programme.rows().stream().map(this::told).collect(Collectors.joining("; ")))
                .collect(Collectors.joining(". ", "", "."));
    }

    private String told(Row row) {
        String laid = row.work().isEmpty() ? "not laid" : "laid in week " + Weeks.half(lastWork(row));
        Weeks ready = row.ready();
        String spread = ready.ranged()
                ? ", week " + ready.earliest().map(Weeks::half).orElse("unknown") + " to "
                        + ready.latest().map(Weeks::half).orElse("unknown")
                : "";
        return row.name() + ", " + laid + ", ready "
                + ready.likely().map(week -> "in week " + Weeks.half(week)).orElse("after the run") + spread;
    }

    @Override
    public void draw(Canvas canvas) {
        drawSamples(canvas);
        double top = SAMPLES_PX;
        for (Programme programme : chart.programmes()) {
            drawProgramme(canvas, programme, top);
            top += blockPx(programme);
        }
        Text foot = Text.plain("weeks from the first day of work", size.textPx());
        canvas.text(foot, size.widthPx(), top + 4, Align.END);
    }

    private void drawSamples(Canvas canvas) {
        boolean ranged = rows(chart).anyMatch(row -> row.ready().ranged());
        canvas.fill(new Rectangle2D.Double(0, 6, 22, 14), Ink.BLACK);
        canvas.text(Text.plain("working", size.textPx()), 27, 18, Align.START);
        canvas.bar(new Rectangle2D.Double(100, 6, 44, 14), Fill.LIGHT, Ink.line(1.3));
        canvas.text(Text.plain("waiting", size.textPx()), 150, 18, Align.START);
        double at = size.pick(222, 214);
        if (ranged) {
            ProgrammeBar.drawSpread(canvas, new Rectangle2D.Double(at, 6, size.pick(50, 40), 14));
            String words = size.pick("may be ready from here to here; thick tick likely", "may be ready");
            canvas.text(Text.plain(words, size.textPx()), size.pick(278, 259), 18, Align.START);
        } else {
            canvas.line(new Line2D.Double(at + 4, 3, at + 4, 23), Ink.line(ProgrammeBar.TICK_PX));
            canvas.text(Text.plain("likely ready", size.textPx()), at + 14, 18, Align.START);
        }
    }

    private void drawProgramme(Canvas canvas, Programme programme, double top) {
        canvas.paragraph(heading(programme), 0, top, Align.START);
        double first = top + headingPx(programme);
        double last = first + programme.rows().size() * rowPx();
        for (double tick : weeks.ticks()) {
            canvas.draw(new Line2D.Double(x(tick), first, x(tick), last), Ink.line(1), Ink.GRID);
            drawTick(canvas, tick, last + 18);
        }
        for (int i = 0; i < programme.rows().size(); i++) {
            drawRow(canvas, programme.rows().get(i), first + i * rowPx());
        }
    }

    private void drawTick(Canvas canvas, double tick, double baseline) {
        Text text = Text.plain(tick == 0 ? "week 0" : Weeks.half(tick), size.textPx());
        double start = tick == 0 ? left : x(tick) - text.widthPx() / 2;
        canvas.text(text, Math.min(start, size.widthPx() - text.widthPx()), baseline, Align.START);
    }

    private double x(double week) {
        return left + (size.widthPx() - RIGHT_PX - left) * week / weeks.end();
    }

    private static double lastWork(Row row) {
        return row.work().stream()
                .mapToDouble(ProgrammeChart.Work::toWeek)
                .max()
                .orElse(0);
    }

    private void drawRow(Canvas canvas, Row row, double top) {
        double barTop = top + size.pick(4, 22);
        new ProgrammeBar(row, this::x, barTop, size).draw(canvas);
        Text name = Text.plain(row.name(), size.textPx());
        if (size == Size.WIDE) {
            canvas.text(name.cutTo(left - NAME_GAP_PX), left - NAME_GAP_PX, top + 18, Align.END);
        } else {
            canvas.boxed(name.cutTo(size.widthPx() - left), left, top + 15, Align.START);
        }
    }
}
