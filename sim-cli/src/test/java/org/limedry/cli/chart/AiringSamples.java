package org.limedry.cli.chart;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.limedry.cli.chart.AiringChart.Line;
import org.limedry.cli.chart.AiringChart.Marks;
import org.limedry.cli.chart.AiringChart.Point;
import org.limedry.cli.chart.AiringChart.Spot;
import org.limedry.cli.chart.AiringChart.Tick;

/** Invented airing charts. */
final class AiringSamples {
    private static final double[] AIR = {30, 57, 84, 110, 137, 200, 300};
    private static final List<String> NAMES = List.of("shut", "2 h", "4 h", "6 h", "8 h", "fan 200", "fan 300");

    private AiringSamples() {}

    /** As sketched for the page: ranges, a line that turns, both zones. */
    static AiringChart sketch() {
        Line cold = line("cold room, no heat", false, 1.3, 0, 17, 14.2, 13, 12.5, 13, 14.2);
        Line heated = line("heated: 2 kW electric, held at 10 \u00b0C", true, 1.3, 9, 7.5, 6.3, 5.5, 5.1, 4.5, 4.2);
        return chart(
                List.of(heated, cold),
                new Marks(
                        OptionalDouble.of(45),
                        Optional.of(new Spot(0, 230, "with heat: dries too fast, mist it")),
                        Optional.of(new Spot(0, 110, "do this: 6 h on dry days")),
                        Optional.of(new Spot(1, 300, "more air cools the stone: slower, not quicker"))));
    }

    /** Likely dates only, everything ready within days, nothing stands out. */
    static AiringChart quick() {
        return chart(
                List.of(line("cold room, no heat", false, 0, 0.9, 0.8, 0.8, 0.7, 0.7, 0.7, 0.6)),
                new Marks(OptionalDouble.empty(), Optional.empty(), Optional.empty(), Optional.empty()));
    }

    /** Nothing is ever ready, at any heat. */
    static AiringChart never() {
        return chart(
                List.of(
                        line("cold room, no heat", false, 0, 0, 0, 0, 0, 0, 0, 0),
                        line("heated: 2 kW electric, held at 30 \u00b0C", true, 0, 0, 0, 0, 0, 0, 0, 0),
                        line("heated: 3 kW electric, held at 30 \u00b0C", true, 0, 0, 0, 0, 0, 0, 0, 0)),
                new Marks(OptionalDouble.of(300), Optional.empty(), Optional.empty(), Optional.empty()));
    }

    /** One room with cracks only. */
    static AiringChart onlyShut() {
        return new AiringChart(
                "airing",
                "One level is no curve",
                "weeks until every coat in the harbourmaster's old back kitchen and scullery is ready",
                List.of(line("cold room, no heat", false, 1.2, 6)),
                List.of(new Tick(30, "shut", true)),
                new Marks(
                        OptionalDouble.empty(),
                        Optional.empty(),
                        Optional.of(new Spot(0, 30, "do this: shut")),
                        Optional.empty()),
                20);
    }

    static AiringChart random(Random random) {
        int count = 1 + random.nextInt(3);
        List<Line> lines = IntStream.range(0, count)
                .mapToObj(i -> line(
                        i == 0 ? "cold room, no heat" : "heated: " + i + " kW electric, held at 14 \u00b0C",
                        i > 0,
                        random.nextInt(2) * 1.4,
                        DoubleStream.generate(() -> random.nextInt(4) == 0 ? 0 : 19 * random.nextDouble())
                                .limit(AIR.length)
                                .toArray()))
                .toList();
        return chart(
                lines,
                new Marks(
                        random.nextBoolean() ? OptionalDouble.of(300 * random.nextDouble()) : OptionalDouble.empty(),
                        spot(random, count, "with heat: dries too fast, mist it"),
                        spot(random, count, "do this: 6 h on dry days"),
                        spot(random, count, "damp air wets the wall: slower, not quicker")));
    }

    private static Optional<Spot> spot(Random random, int lines, String words) {
        return random.nextBoolean()
                ? Optional.of(new Spot(random.nextInt(lines), 30 + 270 * random.nextDouble(), words))
                : Optional.empty();
    }

    private static AiringChart chart(List<Line> lines, Marks marks) {
        List<Tick> ticks = IntStream.range(0, AIR.length)
                .mapToObj(i -> new Tick(AIR[i], NAMES.get(i), i < 5))
                .toList();
        return new AiringChart(
                "airing",
                "Air alone hardly helps",
                "weeks until every coat in the store is ready",
                lines,
                ticks,
                marks,
                20);
    }

    /** Weeks of 0 stand for a wait that does not end; a spread of 0 for no range. */
    private static Line line(String name, boolean heated, double spread, double... weeks) {
        List<Point> points = IntStream.range(0, weeks.length)
                .mapToObj(i -> new Point(
                        AIR[i] + (heated ? 3 : 0),
                        some(weeks[i]),
                        some(spread > 0 ? weeks[i] / spread : 0),
                        some(weeks[i] * spread)))
                .toList();
        String endless = points.stream().anyMatch(point -> point.weeks().isEmpty()) ? "not in 20 weeks" : "";
        return new Line(name, heated, points, endless);
    }

    private static OptionalDouble some(double weeks) {
        return weeks > 0 ? OptionalDouble.of(weeks) : OptionalDouble.empty();
    }
}
