package org.limedry.cli.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.limedry.cli.chart.DelayChart.Cause;
import org.limedry.cli.chart.DelayChart.Point;
import org.limedry.cli.chart.DelayChart.Side;

/** Invented delays. */
final class DelaySamples {
    private DelaySamples() {}

    /** Five causes, one of which helped. */
    static DelayChart fiveCauses() {
        Timeline t = DryingSamples.timeline("2026-09-01T06:00:00Z", 180);
        return new DelayChart(
                "delay",
                "74 days of the 113 come from one cause: room released 2 Nov, not 7 Sep",
                t,
                "litres in the plaster of the north wall",
                side(t, "planned: first coat 7 Sep", 6, 31),
                side(t, "actual: first coat 2 Nov", 62, 144),
                "113 days late, by cause",
                List.of(
                        new Cause("Room released 2 Nov, not 7 Sep", "74 days", 74.2),
                        new Cause("Doors open 2 hours a day, not 8", "21 days", 20.7),
                        new Cause("Heat from 30 Nov, not 1 Oct", "17 days", 17.4),
                        new Cause("Wall found wet, stated damp", "4 days", 4.1),
                        new Cause("Weather as recorded, not that of the plan", "\u22123 days", -3.4)),
                "74 + 21 + 17 + 4 \u2212 3 = 113 days");
    }

    /** One cause, and the run ended before the plaster was ready. */
    static DelayChart notReady() {
        Timeline t = DryingSamples.timeline("2026-10-01T06:00:00Z", 60);
        Side actual = side(t, "actual: first coat 12 Oct", 11, 58);
        return new DelayChart(
                "delay",
                "40 days of the 40 come from one cause",
                t,
                "litres in the plaster of the gable behind the old bread oven",
                side(t, "planned: first coat 2 Oct", 1, 18),
                new Side(actual.name(), actual.left(), Optional.empty(), "not ready by 28 Nov"),
                "at least 40 days late, by cause",
                List.of(new Cause("No heat before ready; agreed from 1 Oct", "40 days", 40)),
                "40 = 40 days");
    }

    /** A line that jumps up when a coat is laid and falls off until a little after it is ready. */
    static Side side(Timeline t, String name, double laidDay, double readyDay) {
        List<Point> points = new ArrayList<>();
        points.add(new Point(DryingSamples.day(t, laidDay), 0));
        for (int i = 0; i <= 40; i++) {
            double day = laidDay + (readyDay - laidDay) * i / 40.0;
            points.add(new Point(DryingSamples.day(t, day), 30 + 60 * Math.exp(-i / 12.0)));
        }
        return new Side(name, points, Optional.of(DryingSamples.day(t, readyDay)), "ready then");
    }
}
