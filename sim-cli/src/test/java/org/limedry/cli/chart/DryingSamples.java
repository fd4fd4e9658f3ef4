package org.limedry.cli.chart;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.limedry.cli.chart.DryingChart.Coat;
import org.limedry.cli.chart.DryingChart.Point;
import org.limedry.cli.chart.DryingChart.ShutSite;
import org.limedry.cli.chart.DryingChart.Upright;

/** Drying charts to draw, all figures invented. */
final class DryingSamples {
    static final ZoneId DUBLIN = ZoneId.of("Europe/Dublin");
    static final Timeline WINTER = timeline("2026-11-02T00:00:00Z", 91);

    private DryingSamples() {}

    static Timeline timeline(String from, int days) {
        Instant start = Instant.parse(from);
        return new Timeline(start, start.plus(Duration.ofDays(days)), DUBLIN);
    }

    static Instant day(Timeline timeline, double days) {
        return timeline.from().plusSeconds(Math.round(days * 86400));
    }

    /** Returns hourly points that fall towards {@code end} litres, with a half-life of some days and a daily ripple. */
    static List<Point> falling(Timeline timeline, double fromDay, double toDay, double[] startEndHalfLife) {
        List<Point> points = new ArrayList<>();
        double start = startEndHalfLife[0];
        double end = startEndHalfLife[1];
        for (int hour = 0; hour <= Math.round((toDay - fromDay) * 24); hour++) {
            double days = hour / 24.0;
            double ripple = 0.008 * Math.sin(2 * Math.PI * days) * Math.min(1, days);
            double litres = end + (start - end) * Math.pow(0.5, days / startEndHalfLife[2]) + ripple;
            points.add(new Point(day(timeline, fromDay + days), Math.max(0, litres)));
        }
        return points;
    }

    static Ready range(Timeline timeline, double... days) {
        return new Ready.Range(when(timeline, days, 0), when(timeline, days, 1), when(timeline, days, 2));
    }

    private static Optional<Instant> when(Timeline timeline, double[] days, int n) {
        return n < days.length ? Optional.of(day(timeline, days[n])) : Optional.empty();
    }

    /** The story of the demo: stalled to 30 November, moved by heat, a second coat laid on the first. */
    static DryingChart stall() {
        Timeline t = WINTER;
        List<Point> north = new ArrayList<>(falling(t, 0, 28, new double[] {3.3, 2.6, 14}));
        north.addAll(falling(t, 28, 66.5, new double[] {2.77, 0.4, 24}));
        north.addAll(falling(t, 66.7, 91, new double[] {1.8, 0.2, 16}));
        Coat first = new Coat("North wall", "first coat", Optional.of(t.from()), north, range(t, 45, 66, 81));
        Coat ceiling = new Coat(
                "Ceiling",
                "first coat",
                Optional.of(day(t, 2)),
                falling(t, 2, 91, new double[] {3.0, 0.1, 15}),
                range(t, 22, 30, 37));
        Coat second = new Coat(
                "North wall",
                "second coat",
                Optional.of(day(t, 66.6)),
                falling(t, 66.6, 91, new double[] {3.0, 0.3, 10}),
                range(t, 70, 88));
        return new DryingChart(
                "drying",
                "The north wall lost only half a litre a square metre in November; heat from 30 November moved it",
                t,
                List.of(first, ceiling, second),
                List.of(new ShutSite(day(t, 47), day(t, 63), "site shut")),
                List.of(new Upright(day(t, 28), "heater in, 30 Nov")));
    }

    static DryingChart oneCoat() {
        Timeline t = timeline("2026-06-01T07:00:00Z", 30);
        Coat coat = new Coat(
                "Kitchen wall",
                "first coat",
                Optional.of(t.from()),
                falling(t, 0, 30, new double[] {2.4, 0.1, 6}),
                new Ready.LikelyOnly(Optional.of(day(t, 9))));
        return new DryingChart(
                "drying", "The kitchen wall was ready in nine days", t, List.of(coat), List.of(), List.of());
    }

    /** Six coats on three walls: one small plot for each wall. */
    static DryingChart sixCoats() {
        Timeline t = WINTER;
        List<Coat> coats = new ArrayList<>();
        for (String wall : List.of("North wall", "Gable behind the old bread oven", "Ceiling")) {
            double slow = 8 + 2.5 * coats.size();
            coats.add(new Coat(
                    wall,
                    "first coat",
                    Optional.of(day(t, 1)),
                    falling(t, 1, 91, new double[] {3.1, 0.2, slow}),
                    range(t, 2 * slow - 6, 2 * slow, 2 * slow + 9)));
            coats.add(new Coat(
                    wall,
                    "second coat",
                    Optional.of(day(t, 2 * slow + 1)),
                    falling(t, 2 * slow + 1, 91, new double[] {2.7, 0.1, slow}),
                    range(t, 4 * slow - 6, 4 * slow)));
        }
        return new DryingChart(
                "drying",
                "Six coats on three walls: the ceiling is last",
                t,
                coats,
                List.of(new ShutSite(day(t, 47), day(t, 63), "site shut")),
                List.of(new Upright(day(t, 28), "heater in, 30 Nov"), new Upright(day(t, 31), "window mended")));
    }

    /** Long names, many events, no dates, dates past the end, a hand test, a coat never laid. */
    static DryingChart nasty(Timeline t, double length) {
        String wall = "North-west gable of the former harbour master's dairy and its <annexe> & porch";
        Coat first = new Coat(
                wall,
                "scat coat & dubbing out",
                Optional.of(t.from()),
                falling(t, 0, length, new double[] {6.2, 5.9, length}),
                new Ready.ByHand(day(t, 0.4 * length)));
        Coat second = new Coat(
                wall,
                "float coat",
                Optional.of(day(t, 0.45 * length)),
                falling(t, 0.45 * length, length, new double[] {4, 3.9, length}),
                range(t));
        Coat third = new Coat(wall, "finish", Optional.empty(), List.of(), range(t));
        Coat fourth = new Coat(
                "\u0141azienka",
                "first coat",
                Optional.of(day(t, 0.1 * length)),
                falling(t, 0.1 * length, length, new double[] {4.1, 3.9, length}),
                range(t, 0.97 * length));
        List<Upright> uprights = IntStream.range(0, 7)
                .mapToObj(i -> new Upright(day(t, length * (0.3 + 0.02 * i)), "event number " + i + " of many"))
                .toList();
        return new DryingChart(
                "drying",
                "A long title that runs on and on, so that it must be broken over more than one line, or two if narrow",
                t,
                List.of(first, second, third, fourth),
                List.of(
                        new ShutSite(day(t, 0.6 * length), day(t, 0.62 * length), "site shut for the holiday"),
                        new ShutSite(day(t, 0.9 * length), day(t, 2 * length), "closed")),
                uprights);
    }
}
