package org.limedry.cli.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.limedry.cli.chart.ProgrammeChart.Programme;
import org.limedry.cli.chart.ProgrammeChart.Row;
import org.limedry.cli.chart.ProgrammeChart.Work;
import org.limedry.cli.chart.SeasonsChart.Bar;

/** Invented starts and programmes. */
final class ProgrammeSamples {
    static final double RUN_WEEKS = 39.0;
    private static final List<String> MONTHS =
            List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");

    private ProgrammeSamples() {}

    static Weeks weeks(double earliest, double likely, double latest) {
        return new Weeks(known(earliest), known(likely), known(latest), true);
    }

    /** Weeks past the run are not known. */
    static Optional<Double> known(double weeks) {
        return Optional.of(weeks).filter(within -> within <= RUN_WEEKS);
    }

    static SeasonsChart months() {
        double[] likely = {10.5, 8.5, 6.5, 5, 4, 3.5, 3.5, 4, 5.5, 9, 12, 11.5};
        return seasons(IntStream.range(0, 12)
                .mapToObj(
                        i -> bar(MONTHS.get(i), i == 4 || i == 10, weeks(0.8 * likely[i], likely[i], 1.3 * likely[i])))
                .toList());
    }

    static SeasonsChart likelyOnly() {
        return seasons(IntStream.range(0, 12)
                .mapToObj(i -> bar(MONTHS.get(i), i > 9, Weeks.likelyOnly(known(5.0 + 0.1 * i))))
                .toList());
    }

    /** Two dozen days, some of which never come to an end. */
    static SeasonsChart crowded() {
        return seasons(IntStream.range(0, 24)
                .mapToObj(i -> bar("1" + i % 9 + " Nov", i % 7 == 0, weeks(2 + i, 4 + 2 * i, 6 + 3 * i)))
                .toList());
    }

    static SeasonsChart never() {
        return seasons(List.of(bar("4 May", true, weeks(99, 99, 99)), bar("2 Nov", true, Weeks.likelyOnly(known(99)))));
    }

    static SeasonsChart seasons(List<Bar> bars) {
        return new SeasonsChart("seasons", "From October to January the wait more than doubles", bars, RUN_WEEKS);
    }

    static Bar bar(String name, boolean compared, Weeks weeks) {
        return new Bar(name, name.substring(0, 1), compared, weeks);
    }

    static ProgrammeChart winterAndSummer() {
        return programmes(
                programme("Start 2 November: ready in 12 weeks (10 to 15\u00bd)", 3.0),
                programme("Start 3 May: ready in 4 weeks (3\u00bd to 5)", 1.0));
    }

    static Programme programme(String heading, double pace) {
        List<Row> rows = new ArrayList<>();
        rows.add(row("store north wall, first coat", 0, weeks(1.9 * pace, 2.5 * pace, 3.3 * pace), "25 Dec"));
        rows.add(row("store ceiling, first coat", 0.4, weeks(0.9 * pace, 1.1 * pace, 1.5 * pace), "26 Nov"));
        rows.add(row("store north wall, second coat", 3 * pace, weeks(1.2 * pace, 4 * pace, 5.1 * pace), "25 Jan"));
        rows.add(row("store ceiling, second coat", 1.2 * pace, Weeks.likelyOnly(known(2.2 * pace)), "20 Dec"));
        return new Programme(heading, rows);
    }

    static ProgrammeChart nasty() {
        return programmes(new Programme(
                "Start 28 September 2026, which is a Monday: ready in more than 39 weeks (12\u00bd to over 39)",
                List.of(
                        row(
                                "a wall whose name nobody would want to write on a chart, first coat",
                                0,
                                weeks(3, 99, 99),
                                "not by 4 Jul"),
                        row("gable, second coat", 38.5, weeks(2, 38.9, 39), "1 Jul"),
                        new Row("gable, third coat", List.of(), weeks(99, 99, 99), "not laid by 4 Jul"),
                        row("hatch, first coat", 0, Weeks.likelyOnly(known(0)), "28 Sep"))));
    }

    static Row row(String name, double from, Weeks ready, String words) {
        return new Row(name, List.of(new Work(from, from + 0.4)), ready, words);
    }

    static ProgrammeChart programmes(Programme... programmes) {
        return new ProgrammeChart(
                "programmes", "Six gang days of work either way; the rest is waiting", List.of(programmes), RUN_WEEKS);
    }
}
