package org.limedry.cli.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.limedry.cli.chart.DryingChart.Coat;
import org.limedry.cli.chart.DryingChart.ShutSite;
import org.limedry.cli.chart.DryingChart.Upright;
import org.limedry.cli.chart.ProgrammeChart.Programme;
import org.limedry.cli.chart.ProgrammeChart.Row;
import org.limedry.cli.chart.WaterAccountChart.OnTheWay;
import org.limedry.cli.chart.WaterAccountChart.Part;
import org.limedry.cli.chart.WaterAccountChart.Term;

/** Charts nobody thought of: whatever the data, texts stand clear. */
final class RandomChartsTest {
    private static final List<Fill> FILLS = List.of(Fill.values());
    private static final List<String> WORDS =
            List.of("north", "wall", "gable", "of", "the", "dairy", "coat", "second", "in", "harbourmaster's", "2 kW");

    @Property(tries = 40)
    void drying_anyCoats_textsStandClear(@ForAll long seed, @ForAll @IntRange(min = 1, max = 9) int coats) {
        Random random = new Random(seed);
        int days = 2 + random.nextInt(250);
        Timeline t = DryingSamples.timeline("2026-09-20T06:00:00Z", days);
        List<Coat> some =
                IntStream.range(0, coats).mapToObj(i -> coat(random, t, days)).toList();
        List<Upright> uprights = IntStream.range(0, random.nextInt(4))
                .mapToObj(i -> new Upright(DryingSamples.day(t, random.nextDouble() * days), words(random)))
                .toList();
        List<ShutSite> shut = IntStream.range(0, random.nextInt(3))
                .mapToObj(i -> {
                    double from = random.nextDouble() * days;
                    return new ShutSite(
                            DryingSamples.day(t, from),
                            DryingSamples.day(t, from + 1 + random.nextInt(9)),
                            "site shut");
                })
                .toList();

        assertClear(new DryingChart("drying", words(random), t, some, shut, uprights));
    }

    private static Coat coat(Random random, Timeline t, int days) {
        double laid = random.nextInt(3) * days / 4.0;
        double first = laid + random.nextDouble() * (days - laid);
        double second = first + random.nextDouble() * days / 3;
        double[] curve = {1 + 4 * random.nextDouble(), random.nextDouble(), 1 + days * random.nextDouble() / 2};
        Ready ready = random.nextInt(5) == 0
                ? new Ready.ByHand(DryingSamples.day(t, first))
                : DryingSamples.range(t, first, second, second + random.nextDouble() * days / 3);
        return new Coat(
                words(random),
                words(random),
                Optional.of(DryingSamples.day(t, laid)),
                DryingSamples.falling(t, laid, days, curve),
                ready);
    }

    @Property(tries = 100)
    void account_anyTerms_textsStandClear(@ForAll long seed) {
        Random random = new Random(seed);

        assertClear(AccountSamples.chart(
                terms(random),
                terms(random),
                terms(random),
                new OnTheWay(
                        random.nextInt(3) * 90.7 * random.nextDouble(),
                        List.of(new Part(words(random), 30 * random.nextDouble())),
                        "dried off again")));
    }

    @Property(tries = 100)
    void seasons_anyStarts_textsStandClear(@ForAll long seed, @ForAll @IntRange(min = 1, max = 24) int starts) {
        Random random = new Random(seed);

        assertClear(ProgrammeSamples.seasons(IntStream.range(0, starts)
                .mapToObj(i -> ProgrammeSamples.bar("2" + i % 9 + " Sep", random.nextInt(3) == 0, anyWeeks(random)))
                .toList()));
    }

    @Property(tries = 60)
    void programme_anyCoats_textsStandClear(@ForAll long seed, @ForAll @IntRange(min = 1, max = 9) int coats) {
        Random random = new Random(seed);
        List<Row> rows = IntStream.range(0, coats)
                .mapToObj(i -> random.nextInt(6) == 0
                        ? new Row(words(random), List.of(), anyWeeks(random), "not laid by 4 Jul")
                        : ProgrammeSamples.row(
                                words(random), 39 * random.nextDouble(), anyWeeks(random), "not by 4 Jul"))
                .toList();

        assertClear(
                ProgrammeSamples.programmes(new Programme(words(random), rows), new Programme(words(random), rows)));
    }

    private static Weeks anyWeeks(Random random) {
        double earliest = 50 * random.nextDouble() * random.nextDouble();
        double likely = earliest + 20 * random.nextDouble();
        return random.nextBoolean()
                ? ProgrammeSamples.weeks(earliest, likely, likely + 20 * random.nextDouble())
                : Weeks.likelyOnly(ProgrammeSamples.known(likely));
    }

    @Property(tries = 60)
    void airing_anyLevels_textsStandClear(@ForAll long seed) {
        assertClear(AiringSamples.random(new Random(seed)));
    }

    private static List<Term> terms(Random random) {
        List<Term> terms = new ArrayList<>();
        int count = random.nextInt(6);
        for (int i = 0; i < count; i++) {
            double litres = Math.pow(10, 3 * random.nextDouble() - 1) * (random.nextInt(6) == 0 ? -1 : 1);
            terms.add(new Term(words(random), words(random), litres, FILLS.get(random.nextInt(FILLS.size()))));
        }
        return terms;
    }

    @Property(tries = 60)
    void doors_anyWeek_textsStandClear(@ForAll long seed) {
        Random random = new Random(seed);

        assertClear(DoorsSamples.random(random, words(random)));
    }

    @Property(tries = 60)
    void delay_anyCauses_textsStandClear(@ForAll long seed, @ForAll @IntRange(max = 6) int causes) {
        Random random = new Random(seed);
        int days = 20 + random.nextInt(300);
        Timeline t = DryingSamples.timeline("2026-09-01T06:00:00Z", days);
        double ready = 2 + random.nextDouble() * days / 3;
        List<DelayChart.Cause> some = IntStream.range(0, causes)
                .mapToObj(i -> new DelayChart.Cause(
                        words(random), random.nextInt(200) + " days", (random.nextDouble() - 0.2) * days / 6))
                .toList();

        assertClear(new DelayChart(
                "delay",
                words(random),
                t,
                words(random),
                DelaySamples.side(t, words(random), 0.5, ready),
                DelaySamples.side(t, words(random), random.nextDouble() * days / 2, days * 0.9),
                "some days late, by cause",
                some,
                words(random)));
    }

    @Property(tries = 60)
    void fits_anyData_textsStandClear(@ForAll long seed, @ForAll @IntRange(min = 1, max = 4) int count) {
        Random random = new Random(seed);
        int days = 1 + random.nextInt(120);
        Timeline t = DryingSamples.timeline("2026-09-20T06:00:00Z", days);

        assertClear(ResidualSamples.random(random, t, days, () -> words(random)));
        assertClear(NarrowingSamples.random(random, t, days, () -> words(random)));
        assertClear(CoverageSamples.random(random, 2 * count, () -> words(random)));
    }

    private static String words(Random random) {
        StringBuilder words = new StringBuilder(WORDS.get(random.nextInt(WORDS.size())));
        int more = random.nextInt(8);
        for (int i = 0; i < more; i++) {
            words.append(' ').append(WORDS.get(random.nextInt(WORDS.size())));
        }
        return words.toString();
    }

    private static void assertClear(Chart chart) {
        for (Size size : Size.values()) {
            assertEquals(List.of(), DrawnTexts.of(Charts.svg(chart, size)).faults());
        }
    }
}
