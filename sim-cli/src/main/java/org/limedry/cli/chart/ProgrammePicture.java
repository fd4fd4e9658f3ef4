package org.limedry.cli.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.limedry.cli.chart.ProgrammeChart.Programme;
import org.limedry.cli.chart.ProgrammeChart.Row;

/** Programmes one below the other on the same weeks: work black, waiting hatched, the spread of the ready date dashed. */
final class ProgrammePicture extends Picture {
    private static final double SAMPLES_PX = 34;
    private static final double HEADING_PX = 30;
    private static final double AXIS_PX = 40;
    private static final double FOOT_PX = 18;
    private static final double RIGHT_PX = 14;
    private static final double MOST_NAMES_PX = 250;
    private static final double NAME_GAP_PX = 10;
    private static final double TICK_PX = 4.5;
    private static final double BAR_PX = 16;
    private static final double LEAST_WORK_PX = 8;
    private static final double WORDS_GAP_PX = 7;
    private static final double ARROW_PX = 9;

    private final ProgrammeChart chart;
    private final ValueScale weeks;
    private final double left;

    ProgrammePicture(ProgrammeChart chart, Size size) {
        super(size);
        this.chart = chart;
        double last = rows(chart)
                .flatMap(row ->
                        Stream.concat(row.ready().known(), row.work().stream().map(ProgrammeChart.Work::toWeek)))
                .max(Comparator.naturalOrder())
                .orElse(chart.runWeeks());
        this.weeks = ValueScale.weeksTo(Math.max(last, 1));
        double widest = rows(chart)
                .mapToDouble(row -> plain(row.name()).widthPx())
                .max()
                .orElse(0);
        this.left = size.pick(Math.min(widest, MOST_NAMES_PX) + NAME_GAP_PX, 2.0);
    }

    private static Stream<Row> rows(ProgrammeChart chart) {
        return chart.programmes().stream().flatMap(programme -> programme.rows().stream());
    }

    @Override
    double heightPx() {
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
    String story() {
        return chart.programmes().stream()
                .map(programme -> programme.heading() + ": "
                        + programme.rows().stream().map(this::sentence).collect(Collectors.joining("; ")))
                .collect(Collectors.joining(". ", "", "."));
    }

    private String sentence(Row row) {
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
    void draw(Canvas canvas) {
        drawSamples(canvas);
        double top = SAMPLES_PX;
        for (Programme programme : chart.programmes()) {
            drawProgramme(canvas, programme, top);
            top += blockPx(programme);
        }
        Text foot = plain("weeks from the first day of work");
        canvas.text(foot, size.widthPx(), top + 4, Align.END);
    }

    private void drawSamples(Canvas canvas) {
        boolean ranged = rows(chart).anyMatch(row -> row.ready().ranged());
        canvas.fill(new Rectangle2D.Double(0, 6, 22, 14), Ink.BLACK);
        canvas.text(plain("working"), 27, 18, Align.START);
        canvas.bar(new Rectangle2D.Double(100, 6, 44, 14), Fill.LIGHT, Ink.line(1.3));
        canvas.text(plain("waiting"), 150, 18, Align.START);
        double at = size.pick(222, 214);
        if (ranged) {
            drawSpread(canvas, new Rectangle2D.Double(at, 6, size.pick(50, 40), 14));
            String words = size.pick("may be ready from here to here; thick tick likely", "may be ready");
            canvas.text(plain(words), size.pick(278, 259), 18, Align.START);
        } else {
            canvas.line(new Line2D.Double(at + 4, 3, at + 4, 23), Ink.line(TICK_PX));
            canvas.text(plain("likely ready"), at + 14, 18, Align.START);
        }
    }

    private static void drawSpread(Canvas canvas, Rectangle2D box) {
        canvas.fill(box, Ink.PAPER);
        canvas.draw(box, Ink.dashed(1.5, 4f, 3f), Ink.BLACK);
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
        Text text = plain(tick == 0 ? "week 0" : Weeks.half(tick));
        double start = tick == 0 ? left : x(tick) - text.widthPx() / 2;
        canvas.text(text, Math.min(start, size.widthPx() - text.widthPx()), baseline, Align.START);
    }

    private double x(double week) {
        return left + (size.widthPx() - RIGHT_PX - left) * week / weeks.high();
    }

    private static double lastWork(Row row) {
        return row.work().stream()
                .mapToDouble(ProgrammeChart.Work::toWeek)
                .max()
                .orElse(0);
    }

    private void drawRow(Canvas canvas, Row row, double top) {
        double barTop = top + size.pick(4, 22);
        new Bar(row, barTop).draw(canvas);
        Text name = plain(row.name());
        if (size == Size.WIDE) {
            canvas.text(name.cutTo(left - NAME_GAP_PX), left - NAME_GAP_PX, top + 18, Align.END);
        } else {
            canvas.boxed(name.cutTo(size.widthPx() - left), left, top + 15, Align.START);
        }
    }

    /** The bar of one coat: work, waiting, the spread of its ready date, and the likely date in words beside it. */
    private final class Bar {
        private final Row row;
        private final double top;
        private final double plotEnd = widthPx() - ARROW_PX - 1;

        Bar(Row row, double top) {
            this.row = row;
            this.top = top;
        }

        void draw(Canvas canvas) {
            if (!row.work().isEmpty()) {
                drawWaiting(canvas);
                row.work().forEach(work -> canvas.fill(box(workStart(work), workEnd(work)), Ink.BLACK));
                row.ready().likely().ifPresent(week -> Marks.likely(canvas, x(week), top + BAR_PX / 2, BAR_PX));
            }
            drawWords(canvas);
        }

        private void drawWaiting(Canvas canvas) {
            Weeks ready = row.ready();
            double waitsFrom =
                    row.work().stream().mapToDouble(this::workEnd).max().orElse(0);
            double earliest = ready.earliest().map(ProgrammePicture.this::x).orElse(plotEnd);
            if (earliest > waitsFrom) {
                canvas.bar(box(waitsFrom, earliest), Fill.LIGHT, Ink.line(1.2));
            }
            double latest = latest();
            if (ready.ranged() && latest > earliest) {
                drawSpread(canvas, box(earliest, latest));
            }
            if (ready.latest().isEmpty()) {
                Marks.goesOn(canvas, new Point2D.Double(plotEnd, top + BAR_PX / 2), BAR_PX / 2, ARROW_PX);
            }
        }

        private double latest() {
            return row.ready().latest().map(ProgrammePicture.this::x).orElse(plotEnd);
        }

        private double workStart(ProgrammeChart.Work work) {
            return x(work.fromWeek());
        }

        private double workEnd(ProgrammeChart.Work work) {
            return Math.max(x(work.toWeek()), workStart(work) + LEAST_WORK_PX);
        }

        private Rectangle2D box(double from, double to) {
            return new Rectangle2D.Double(from, top, to - from, BAR_PX);
        }

        /** Right of the bar if there is room, else left of it, else on its end. */
        private void drawWords(Canvas canvas) {
            Text text = plain(row.words());
            double first =
                    row.work().stream().mapToDouble(this::workStart).min().orElse(x(0));
            double start = Math.min(
                    first,
                    row.ready().ranged()
                            ? row.ready()
                                    .earliest()
                                    .map(ProgrammePicture.this::x)
                                    .orElse(first)
                            : first);
            double right = row.work().isEmpty() ? first : Math.max(latest(), first) + WORDS_GAP_PX + TICK_PX / 2;
            double before = start - WORDS_GAP_PX - text.widthPx();
            double at = size.widthPx() - text.widthPx() - ARROW_PX - WORDS_GAP_PX;
            if (right + text.widthPx() <= size.widthPx()) {
                at = right;
            } else if (before >= x(0)) {
                at = before;
            }
            canvas.boxed(text, at, top + 13, Align.START);
        }
    }
}
