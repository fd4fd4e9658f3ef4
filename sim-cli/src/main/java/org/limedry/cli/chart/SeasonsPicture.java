package org.limedry.cli.chart;

import java.awt.Rectangle;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.limedry.cli.chart.SeasonsChart.Bar;

/** A bar for each start: from earliest to latest with a thick tick at likely, or from the ground where nothing else is known. */
final class SeasonsPicture extends Picture {
    private static final int TOP_PX = 45;
    private static final int GROUND_PX = 28;
    private static final int RIGHT_PX = 6;
    private static final double BAR_SHARE = 0.5;
    private static final double TICK_PROUD_PX = 4;
    private static final double TICK_PX = 4.5;
    private static final double ARROW_PX = 8;
    private static final double WORDS_GAP_PX = 9;

    private final SeasonsChart chart;
    private final ValueScale scale;
    private final Panel panel;

    SeasonsPicture(SeasonsChart chart, Size size) {
        super(size);
        this.chart = chart;
        double highest = chart.bars().stream()
                .flatMap(bar -> bar.weeks().known())
                .max(Comparator.naturalOrder())
                .orElse(chart.runWeeks());
        ValueScale weeks = ValueScale.weeksTo(highest);
        this.scale = ValueScale.upTo(weeks.high(), weeks.step());
        int left = size.pick(34, 28);
        int height = (int) heightPx() - GROUND_PX - TOP_PX;
        Rectangle area = new Rectangle(left, TOP_PX, size.widthPx() - RIGHT_PX - left, height);
        ValueScale starts = new ValueScale(0, chart.bars().size(), 1);
        this.panel = new Panel.Plain(starts, scale, area);
    }

    @Override
    double heightPx() {
        return size.pick(264, 304);
    }

    @Override
    String story() {
        return chart.bars().stream().map(this::sentence).collect(Collectors.joining("; ", "By day of start: ", "."));
    }

    private String sentence(Bar bar) {
        Weeks weeks = bar.weeks();
        String likely = "likely " + words(weeks.likely()) + " weeks";
        return bar.name() + " "
                + (weeks.ranged() ? words(weeks.earliest()) + " to " + words(weeks.latest()) + ", " + likely : likely);
    }

    private String words(Optional<Double> weeks) {
        return weeks.map(Weeks::half).orElse("more than " + Weeks.half(chart.runWeeks()));
    }

    @Override
    void draw(Canvas canvas) {
        canvas.text(plain("weeks from first coat until the last coat is ready"), 0, 16, Align.START);
        panel.draw(canvas, size);
        IntStream.range(0, chart.bars().size()).forEach(i -> drawBar(canvas, i));
        // The compared ones first: where not all words have room, theirs have.
        List<Integer> order = IntStream.range(0, chart.bars().size())
                .boxed()
                .sorted(Comparator.comparing(i -> !chart.bars().get(i).compared()))
                .toList();
        order.forEach(i -> drawWords(canvas, i));
    }

    private double middle(int i) {
        return panel.x(i + 0.5);
    }

    private void drawBar(Canvas canvas, int i) {
        Bar bar = chart.bars().get(i);
        Weeks weeks = bar.weeks();
        double width = BAR_SHARE * Math.min(panel.x(1) - panel.x(0), 60);
        double low = weeks.ranged() ? panel.y(weeks.earliest().orElse(scale.top())) : panel.y(0);
        double high = panel.y(weeks.latest().orElse(scale.top()));
        Rectangle2D box = new Rectangle2D.Double(middle(i) - width / 2, high, width, Math.max(low - high, 1));
        canvas.bar(box, bar.compared() ? Fill.GREY : Fill.LIGHT, Ink.line(1.5));
        if (weeks.latest().isEmpty()) {
            Marks.goesUp(canvas, new Point2D.Double(middle(i), high), ARROW_PX);
        }
        weeks.likely().ifPresent(likely -> {
            double reach = width / 2 + TICK_PROUD_PX;
            canvas.line(
                    new Line2D.Double(middle(i) - reach, panel.y(likely), middle(i) + reach, panel.y(likely)),
                    Ink.line(TICK_PX));
        });
    }

    private void drawWords(Canvas canvas, int i) {
        Bar bar = chart.bars().get(i);
        whereFree(canvas, text(size.pick(bar.name(), bar.shortName()), bar), middle(i), panel.y(0) + 20);
        Weeks weeks = bar.weeks();
        if (size == Size.WIDE || bar.compared()) {
            String figure = weeks.likely().map(Weeks::half).orElse(">" + Weeks.half(chart.runWeeks()));
            double above = weeks.latest().isEmpty() ? ARROW_PX : 0;
            double y = panel.y(weeks.latest().orElse(scale.top())) - above - WORDS_GAP_PX;
            whereFree(canvas, text(figure, bar), middle(i), y);
        }
    }

    private Text text(String words, Bar bar) {
        return new Text(words, size.textPx(), bar.compared());
    }

    private void whereFree(Canvas canvas, Text text, double x, double baseline) {
        double start = leftAbout(x, text);
        Rectangle2D box = text.box(start, baseline);
        if (canvas.texts().stream().noneMatch(other -> other.box().intersects(box))) {
            canvas.boxed(text, start, baseline, Align.START);
        }
    }
}
