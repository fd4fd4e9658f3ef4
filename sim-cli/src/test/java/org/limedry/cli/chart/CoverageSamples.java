package org.limedry.cli.chart;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.limedry.cli.chart.CoverageChart.Row;

/** Cases inside their ranges, all figures invented. */
final class CoverageSamples {
    private CoverageSamples() {}

    static CoverageChart weeks() {
        return chart(
                new Row("before any reading", 84, 100, 0.72, 0.88, OptionalDouble.of(43)),
                new Row("week 1", 81, 100, 0.72, 0.88, OptionalDouble.of(21)),
                new Row("week 2", 78, 100, 0.72, 0.88, OptionalDouble.of(14.2)),
                new Row("week 4", 81, 100, 0.72, 0.88, OptionalDouble.of(9)),
                new Row("week 6", 69, 100, 0.72, 0.88, OptionalDouble.of(5.5)));
    }

    static CoverageChart uneven() {
        return chart(
                new Row("rooms with a logger, doors as in the diary, week 1", 2, 9, 0.55, 1, OptionalDouble.empty()),
                new Row("week 2", 412, 512, 0.765, 0.835, OptionalDouble.of(1)),
                new Row("no case", 0, 1, 0, 1, OptionalDouble.of(0)),
                new Row("all cases", 1200, 1200, 0.78, 0.82, OptionalDouble.of(120)));
    }

    static CoverageChart chart(Row... rows) {
        return new CoverageChart(
                "coverage",
                "Of 100 made-up jobs 78 to 84 came inside the stated range up to week 4",
                0.8,
                List.of(rows));
    }

    static CoverageChart random(Random random, int rows, Supplier<String> words) {
        List<Row> some = IntStream.range(0, rows)
                .mapToObj(i -> {
                    int cases = 1 + random.nextInt(2000);
                    double low = random.nextDouble();
                    return new Row(
                            words.get(),
                            random.nextInt(cases + 1),
                            cases,
                            low,
                            low + (1 - low) * random.nextDouble(),
                            random.nextInt(4) == 0
                                    ? OptionalDouble.empty()
                                    : OptionalDouble.of(200 * random.nextDouble()));
                })
                .toList();
        return new CoverageChart("coverage", words.get(), 0.01 + 0.98 * random.nextDouble(), some);
    }
}
