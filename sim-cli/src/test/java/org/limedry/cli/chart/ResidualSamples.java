package org.limedry.cli.chart;

import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.limedry.cli.chart.ResidualChart.Channel;
import org.limedry.cli.chart.ResidualChart.Marks;
import org.limedry.cli.chart.ResidualChart.Reading;

/** Readings against the model, all figures invented. */
final class ResidualSamples {
    private static final List<Marks> MARKS = List.of(Marks.values());

    private ResidualSamples() {}

    /** Readings on the hour with a gap of five days, if the run is long enough, and noise of the usual error. */
    static Channel humidity(Timeline timeline, int days) {
        return channel(
                timeline,
                days,
                new String[] {"room humidity, store.csv", "% RH", "within 2 % RH mostly"},
                2.0,
                day -> 88 - 12 * day / days + 3 * Math.sin(6.28 * day) - 4 * Math.sin(day / 2));
    }

    static Channel temperature(Timeline timeline, int days) {
        return channel(
                timeline,
                days,
                new String[] {"room air temperature, store.csv", "degrees C", "within 0.4 K mostly"},
                0.4,
                day -> 6 - 4.5 * Math.sin(day / 20) + 1.2 * Math.sin(6.28 * day));
    }

    private static Channel channel(
            Timeline timeline, int days, String[] words, double error, DoubleUnaryOperator byDay) {
        Random noise = new Random(7);
        List<Reading> readings = IntStream.rangeClosed(0, 24 * days)
                .filter(hour -> hour < 24 * 20 || hour > 24 * 25)
                .mapToObj(hour -> {
                    double after = byDay.applyAsDouble(hour / 24.0);
                    double before = after + 4 * error * Math.min(1, hour / 100.0);
                    return new Reading(
                            DryingSamples.day(timeline, hour / 24.0),
                            after + error * noise.nextGaussian(),
                            before,
                            after);
                })
                .toList();
        return new Channel(words[0], words[1], Marks.LINE, error, words[2], readings);
    }

    /** A bucket emptied every so many days. */
    static Channel bucket(Timeline timeline, double days, double every) {
        List<Reading> readings = IntStream.rangeClosed(1, (int) Math.floor(days / every))
                .mapToObj(n -> {
                    double after = 11 * Math.exp(-n * every / days) * every / 3;
                    double measured = Math.max(0, after + 0.9 * Math.sin(n * 2.1));
                    return new Reading(DryingSamples.day(timeline, n * every), measured, 0.55 * after, after);
                })
                .toList();
        return new Channel(
                "dehumidifier bucket, by hand", "litres", Marks.BARS, 0.6, "within a litre mostly", readings);
    }

    /** Tests by hand: at nought the model says ready on the day the test passed. */
    static Channel tests(Timeline timeline, double... days) {
        List<Reading> readings = IntStream.range(0, days.length)
                .mapToObj(n ->
                        new Reading(DryingSamples.day(timeline, days[n]), 0, -9 + 2.0 * n, n % 2 == 0 ? -1.4 : 1.9))
                .toList();
        return new Channel(
                "hand tests of the north wall and of the gable",
                "days past ready",
                Marks.DOTS,
                2,
                "within 2 days",
                readings);
    }

    static ResidualChart chart(Timeline timeline, Channel... channels) {
        return new ResidualChart(
                "residuals",
                "Brought to 2,017 readings, the model meets 95 of 100; before it met 41",
                timeline,
                List.of(channels));
    }

    /** All four kinds on one chart. */
    static ResidualChart four(Timeline timeline, int days) {
        return chart(
                timeline,
                humidity(timeline, days),
                temperature(timeline, days),
                bucket(timeline, days, days / 8.0),
                tests(timeline, days / 4.0, days / 2.0, days * 0.9));
    }

    static ResidualChart random(Random random, Timeline t, int days, Supplier<String> words) {
        List<Channel> channels = Stream.generate(() -> anyChannel(random, t, days, words))
                .limit(1 + random.nextInt(4))
                .toList();
        return new ResidualChart("residuals", words.get(), t, channels);
    }

    private static Channel anyChannel(Random random, Timeline t, int days, Supplier<String> words) {
        Marks marks = MARKS.get(random.nextInt(MARKS.size()));
        int count = 1 + random.nextInt(300);
        double size = Math.pow(10, 5 * random.nextDouble() - 2);
        double level = marks == Marks.BARS ? 2 * size : size * (random.nextInt(7) - 3);
        List<Reading> readings = IntStream.rangeClosed(1, count)
                .filter(i -> random.nextInt(4) > 0 || i == 1)
                .mapToObj(i -> new Reading(
                        DryingSamples.day(t, days * (double) i / count),
                        level + size * random.nextDouble(),
                        level + size * random.nextDouble(),
                        level + size * random.nextDouble()))
                .toList();
        double error = size * (0.01 + random.nextDouble());
        return new Channel(words.get(), "% RH", marks, error, words.get(), readings);
    }
}
