package org.limedry.cli.chart;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.limedry.cli.chart.NarrowingChart.Came;
import org.limedry.cli.chart.NarrowingChart.Row;

/** Ranges that narrow, all dates invented. */
final class NarrowingSamples {
    private NarrowingSamples() {}

    static NarrowingChart closing() {
        Timeline t = DryingSamples.WINTER;
        return new NarrowingChart(
                "narrowing",
                "The range of the ready date went from 56 days to 9",
                t,
                "Store north, coat 1",
                List.of(
                        row(t, "before any reading", 0, 28, 52, 84),
                        row(t, "readings to 14 Nov", 12, 31, 48, 67),
                        row(t, "readings to 28 Nov", 26, 39, 46, 58),
                        row(t, "readings to 12 Dec", 40, 44, 47, 53)),
                Optional.of(new Came("what came", DryingSamples.day(t, 49.4))));
    }

    /** Forecasts that end past the run, one of which has no date at all; no row says when it was made. */
    static NarrowingChart openEnded(int days) {
        Timeline t = DryingSamples.timeline("2026-11-02T00:00:00Z", days);
        return new NarrowingChart(
                "narrowing",
                "Readings to 28 November leave 20 days",
                t,
                "North wall of the harbourmaster's dairy behind the old bread oven, second coat",
                List.of(
                        undated("before any reading, with what the site file says", t),
                        undated("readings of the week to 7 Nov", t, days * 0.8),
                        undated("readings to 14 Nov", t, days * 0.7, days * 0.9),
                        undated("readings to 28 Nov", t, days * 0.7, days * 0.7, days * 0.7)),
                Optional.empty());
    }

    /** What came lies past the end of the run. */
    static NarrowingChart cameLate() {
        Timeline t = DryingSamples.timeline("2026-11-02T00:00:00Z", 30);
        return new NarrowingChart(
                "narrowing",
                "It came after all ranges",
                t,
                "Store north, coat 1",
                List.of(row(t, "before any reading", 0, 10, 20), row(t, "readings to 14 Nov", 12, 12.2, 16, 22)),
                Optional.of(new Came("what came, by the plasterer's own test", DryingSamples.day(t, 40))));
    }

    static Row row(Timeline t, String words, double issued, double... days) {
        return new Row(words, Optional.of(DryingSamples.day(t, issued)), (Ready.Range) DryingSamples.range(t, days));
    }

    private static Row undated(String words, Timeline t, double... days) {
        return new Row(words, Optional.<Instant>empty(), (Ready.Range) DryingSamples.range(t, days));
    }

    static NarrowingChart random(Random random, Timeline t, int days, Supplier<String> words) {
        List<Row> rows = IntStream.range(0, 1 + random.nextInt(6))
                .mapToObj(i -> row(t, words.get(), days * i / 6.0, dates(random, days)))
                .toList();
        Optional<Came> came = random.nextBoolean()
                ? Optional.of(new Came(words.get(), DryingSamples.day(t, 1.3 * days * random.nextDouble())))
                : Optional.empty();
        return new NarrowingChart("narrowing", words.get(), t, words.get(), rows, came);
    }

    /** None to three dates in order, some past the end. */
    private static double[] dates(Random random, int days) {
        return random.doubles(random.nextInt(4))
                .map(share -> 1.2 * days * share)
                .sorted()
                .toArray();
    }
}
