package org.limedry.cli.chart;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lays out the chances: the range over a stair that climbs from none to ten of ten. */
final class ChancesPicture extends Picture {
    private static final int HEAD_BASELINE_PX = 14;
    private static final int FIRST_ROW_PX = 24;
    private static final int AXIS_TITLE_PX = 24;
    private static final int DATES_PX = 28;
    private static final double JOBS = 10.0;
    private static final String AXIS_TITLE = "of ten such jobs, ready";

    private final ChancesChart chart;
    private final ReadyRow row;
    private final TimePanel plot;
    private final TimeScale times;

    ChancesPicture(ChancesChart chart, Size size) {
        super(size);
        this.chart = chart;
        times = new TimeScale(chart.timeline(), size.pick(46, 34), size.pick(666, 346));
        DryingChart.Coat coat = new DryingChart.Coat(
                chart.coat(), "ready", Optional.of(chart.timeline().from()), List.of(), chart.ready());
        row = ReadyRow.saying(chart.coat() + ": " + middle(), FIRST_ROW_PX, coat, times, size);
        int top = (int) Math.ceil(row.bottom()) + AXIS_TITLE_PX;
        plot = new TimePanel(times, new ValueScale(0, JOBS * 1.02, 2), top, top + size.pick(170, 190));
    }

    private String middle() {
        return chart.ready()
                .likely()
                .map(at ->
                        "even chance by " + DateWords.unbroken(chart.timeline().day(at)))
                .orElse("under an even chance in this time");
    }

    @Override
    double heightPx() {
        return plot.area().getMaxY() + DATES_PX;
    }

    @Override
    void draw(Canvas canvas) {
        plot.addTimes(stair(), Ink.line(2.8));
        plot.draw(canvas, size);
        TimeTick.draw(canvas, times, plot.area().getMaxY(), size);
        row.dropTo(plot.area().getMaxY()).ifPresent(drop -> canvas.line(drop, Ink.drop()));
        row.drawBar(canvas);
        row.drawWords(canvas);
        canvas.text(bold("1 in 5, the middle, 4 in 5"), 0, HEAD_BASELINE_PX, Align.START);
        canvas.boxed(plain(AXIS_TITLE), 0, plot.area().getMinY() - 10, Align.START);
    }

    private List<TimedValue> stair() {
        Timeline timeline = chart.timeline();
        List<Instant> known = chart.dates().stream()
                .flatMap(Optional::stream)
                .map(timeline::clamp)
                .sorted()
                .toList();
        double rise = JOBS / chart.dates().size();
        List<TimedValue> stair = new ArrayList<>();
        stair.add(new TimedValue(timeline.from(), 0));
        for (int i = 0; i < known.size(); i++) {
            stair.add(new TimedValue(known.get(i), i * rise));
            stair.add(new TimedValue(known.get(i), (i + 1) * rise));
        }
        stair.add(new TimedValue(timeline.to(), known.size() * rise));
        return stair;
    }

    @Override
    String story() {
        long known = chart.dates().stream().flatMap(Optional::stream).count();
        return "Of %s runs %s are ready by %s. %s."
                .formatted(
                        chart.dates().size(),
                        known,
                        DateWords.longDayWithYear(chart.timeline().lastDay()),
                        chart.coat() + ": " + middle());
    }
}
