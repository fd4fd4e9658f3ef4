package org.limedry.cli.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.limedry.cli.chart.SeasonsChart.Bar;

/** A bar for each start: from earliest to latest with a thick tick at likely, or from the ground where nothing else is known. */
final class SeasonsPicture implements Picture {
    private static final double TOP_PX = 46;
    private static final double RIGHT_PX = 6;
    private static final double BAR_SHARE = 0.5;
    private static final double TICK_PROUD_PX = 4;
    private static final double TICK_PX = 4.5;
    private static final double ARROW_PX = 8;
    private static final double WORDS_GAP_PX = 9;

    private final SeasonsChart chart;
    private final Size size;
    private final WeekScale scale;
    private final double left;
    private final double ground;

    SeasonsPicture(SeasonsChart chart, Size size) {
        this.chart = chart;
        this.size = size;
        double highest = chart.bars().stream()
                .flatMap(bar -> bar.weeks().known())
                .max(Comparator.naturalOrder())
                .orElse(chart.runWeeks());
        this.scale = WeekScale.reaching(highest);
        this.left = size.pick(34, 28);
        this.ground = heightPx() - 28;
    }

    @Override
    public double widthPx() {
        return size.widthPx();
    }

    @Override
    public double heightPx() {
        return size.pick(264, 304);
    }

    @Override
    public String story() {
        return chart.bars().stream().map(this::told).collect(Collectors.joining("; ", "By day of start: ", "."));
    }

    private String told(Bar bar) {
        Weeks weeks = bar.weeks();
        String likely = "likely " + words(weeks.likely()) + " weeks";
        return bar.name() + " "
                + (weeks.ranged() ? words(weeks.earliest()) + " to " + words(weeks.latest()) + ", " + likely : likely);
    }

    private String words(Optional<Double> weeks) {
        return weeks.map(Weeks::half).orElse("more than " + Weeks.half(chart.runWeeks()));
    }

    @Override
    public void draw(Canvas canvas) {
        canvas.text(
                Text.plain("weeks from first coat until the last coat is ready", size.textPx()), 0, 16, Align.START);
        for (double tick : scale.ticks()) {
            double y = y(tick);
            canvas.draw(
                    new Line2D.Double(left, y, size.widthPx() - RIGHT_PX, y),
                    Ink.line(1),
                    tick == 0 ? Ink.BLACK : Ink.GRID);
            canvas.text(Text.plain(Weeks.half(tick), size.textPx()), left - 8, y + 5, Align.END);
        }
        IntStream.range(0, chart.bars().size()).forEach(i -> drawBar(canvas, i));
        // The compared ones first: where not all words have room, theirs have.
        List<Integer> order = IntStream.range(0, chart.bars().size())
                .boxed()
                .sorted(Comparator.comparing(i -> !chart.bars().get(i).compared()))
                .toList();
        order.forEach(i -> drawWords(canvas, i));
    }

    private double y(double weeks) {
        return ground - (ground - TOP_PX) * weeks / scale.end();
    }

    private double slotPx() {
        return (size.widthPx() - RIGHT_PX - left) / chart.bars().size();
    }

    private double middle(int i) {
        return left + (i + 0.5) * slotPx();
    }

    private void drawBar(Canvas canvas, int i) {
        Bar bar = chart.bars().get(i);
        Weeks weeks = bar.weeks();
        double width = BAR_SHARE * Math.min(slotPx(), 60);
        double low = weeks.ranged() ? y(weeks.earliest().orElse(scale.end())) : ground;
        double high = y(weeks.latest().orElse(scale.end()));
        Rectangle2D box = new Rectangle2D.Double(middle(i) - width / 2, high, width, Math.max(low - high, 1));
        canvas.bar(box, bar.compared() ? Fill.GREY : Fill.LIGHT, Ink.line(1.5));
        if (weeks.latest().isEmpty()) {
            arrow(canvas, middle(i), high);
        }
        weeks.likely().ifPresent(likely -> {
            double reach = width / 2 + TICK_PROUD_PX;
            canvas.line(
                    new Line2D.Double(middle(i) - reach, y(likely), middle(i) + reach, y(likely)), Ink.line(TICK_PX));
        });
    }

    private static void arrow(Canvas canvas, double x, double y) {
        Path2D head = new Path2D.Double();
        head.moveTo(x - ARROW_PX, y);
        head.lineTo(x, y - ARROW_PX);
        head.lineTo(x + ARROW_PX, y);
        head.closePath();
        canvas.fill(head, Ink.PAPER);
        canvas.draw(head, Ink.line(1.5), Ink.BLACK);
    }

    private void drawWords(Canvas canvas, int i) {
        Bar bar = chart.bars().get(i);
        whereFree(canvas, text(size.pick(bar.name(), bar.shortName()), bar), middle(i), ground + 20);
        Weeks weeks = bar.weeks();
        if (size == Size.WIDE || bar.compared()) {
            String figure = weeks.likely().map(Weeks::half).orElse(">" + Weeks.half(chart.runWeeks()));
            double above = weeks.latest().isEmpty() ? ARROW_PX : 0;
            double y = y(weeks.latest().orElse(scale.end())) - above - WORDS_GAP_PX;
            whereFree(canvas, text(figure, bar), middle(i), y);
        }
    }

    private Text text(String words, Bar bar) {
        return new Text(words, size.textPx(), bar.compared());
    }

    private void whereFree(Canvas canvas, Text text, double x, double baseline) {
        double start = Math.max(0, Math.min(x - text.widthPx() / 2, size.widthPx() - text.widthPx()));
        Rectangle2D box = text.box(start, baseline);
        if (canvas.texts().stream().noneMatch(other -> other.box().intersects(box))) {
            canvas.boxed(text, start, baseline, Align.START);
        }
    }
}
