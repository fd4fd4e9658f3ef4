package org.limedry.cli.chart;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.limedry.cli.chart.DryingChart.Coat;
import org.limedry.cli.chart.DryingChart.Point;

/** Lays out the drying chart: all coats in one plot, or one small plot for each wall when there are many. */
final class DryingPicture extends Picture {
    private static final int MOST_IN_ONE_PLOT = 4;
    private static final int HEAD_BASELINE_PX = 14;
    private static final int FIRST_ROW_PX = 24;
    private static final int PANEL_GAP_PX = 10;

    private final DryingChart chart;
    private final List<DryingPanel> panels;

    DryingPicture(DryingChart chart, Size size) {
        super(size);
        this.chart = chart;
        this.panels = panels();
    }

    private List<DryingPanel> panels() {
        TimeScale times = new TimeScale(chart.timeline(), size.pick(46, 34), size.pick(666, 346));
        double highest = chart.coats().stream()
                .flatMap(coat -> coat.left().stream())
                .mapToDouble(Point::litresPerM2)
                .max()
                .orElse(0);
        Frame frame = new Frame(chart, size, times, ValueScale.fromZero(highest));
        if (chart.coats().size() <= MOST_IN_ONE_PLOT) {
            return List.of(DryingPanel.whole(frame, FIRST_ROW_PX));
        }
        List<DryingPanel> small = new ArrayList<>();
        int top = FIRST_ROW_PX;
        for (List<Coat> wall : byWall().values()) {
            DryingPanel panel = DryingPanel.ofWall(frame, wall, top);
            small.add(panel);
            top = panel.bottom() + PANEL_GAP_PX;
        }
        return small;
    }

    /**
     * What all plots of one drying chart share.
     *
     * @param chart the chart
     * @param size the size
     * @param times the time axis
     * @param litres the value axis
     */
    record Frame(DryingChart chart, Size size, TimeScale times, ValueScale litres) {}

    private Map<String, List<Coat>> byWall() {
        return chart.coats().stream()
                .collect(Collectors.groupingBy(Coat::wall, LinkedHashMap::new, Collectors.toList()));
    }

    @Override
    double heightPx() {
        return panels.get(panels.size() - 1).bottom();
    }

    @Override
    void draw(Canvas canvas) {
        canvas.text(bold(heading()), 0, HEAD_BASELINE_PX, Align.START);
        panels.forEach(panel -> panel.draw(canvas));
    }

    private String heading() {
        boolean ranges = chart.coats().stream().anyMatch(coat -> coat.ready() instanceof Ready.Range);
        return ranges ? "Ready: earliest, likely, latest" : "Ready";
    }

    @Override
    String story() {
        Timeline timeline = chart.timeline();
        ReadyWords ready = new ReadyWords(timeline);
        String span = String.format(
                "Litres of water left in each square metre, %s to %s.",
                DateWords.longDayWithYear(timeline.firstDay()), DateWords.longDayWithYear(timeline.lastDay()));
        return chart.coats().stream()
                .map(coat -> coat.fullName() + ": " + water(coat) + ready.sentence(coat) + ".")
                .collect(Collectors.joining(" ", span + " ", ""));
    }

    private static String water(Coat coat) {
        if (coat.left().isEmpty()) {
            return "";
        }
        double first = coat.left().get(0).litresPerM2();
        double last = coat.left().get(coat.left().size() - 1).litresPerM2();
        String likely = coat.ready()
                .likely()
                .map(at -> TimedValue.between(DryingPanel.values(coat), at))
                .filter(OptionalDouble::isPresent)
                .map(value -> litres(value.getAsDouble()) + " on the likely date, ")
                .orElse("");
        return litres(first) + " litres at first, " + likely + litres(last) + " at the end; ";
    }

    private static String litres(double litresPerM2) {
        return Litres.text(Litres.shown(litresPerM2, 1));
    }
}
