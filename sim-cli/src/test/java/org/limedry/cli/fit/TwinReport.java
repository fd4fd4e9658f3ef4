package org.limedry.cli.fit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.descriptive.rank.Median;
import org.limedry.cli.chart.Charts;
import org.limedry.cli.chart.CoverageChart;
import org.limedry.cli.chart.Size;
import org.limedry.cli.fit.TwinCase.Week;

/** What a hundred twin experiments say, as a page of the documents. */
final class TwinReport {
    private static final double LOW = 0.72;
    private static final double HIGH = 0.88;

    private final List<TwinCase> cases;
    private final int weeks;

    TwinReport(List<TwinCase> cases) {
        this.cases = cases;
        this.weeks = cases.get(0).weeks().size();
    }

    private List<TwinCase> open(int week) {
        return cases.stream()
                .filter(one ->
                        one.weeks().get(week).usable() && !one.weeks().get(week).byHand())
                .toList();
    }

    private int inside(int week) {
        return (int) open(week).stream()
                .filter(one -> one.weeks().get(week).holds(one.ready()))
                .count();
    }

    private double share(int week) {
        return (double) inside(week) / open(week).size();
    }

    private long count(int week, Predicate<Week> test) {
        return cases.stream().map(one -> one.weeks().get(week)).filter(test).count();
    }

    /** The middle width of all cases; where the hand has found the coat ready there is nothing left open. */
    private double medianWidthDays(int week) {
        return new Median()
                .evaluate(cases.stream()
                        .mapToDouble(one -> one.weeks().get(week).widthDays())
                        .toArray());
    }

    private double medianOpenDays(int week) {
        return new Median()
                .evaluate(open(week).stream()
                        .mapToDouble(one -> one.weeks().get(week).widthDays())
                        .toArray());
    }

    /** Returns what does not hold, a line each. */
    List<String> broken() {
        List<String> broken = new ArrayList<>();
        for (int week = 0; week < weeks; week++) {
            if (!(share(week) >= LOW && share(week) <= HIGH)) {
                broken.add("week " + (week + 1) + ": " + inside(week) + " of "
                        + open(week).size() + " inside");
            }
            if (week > 0 && !(medianWidthDays(week) < medianWidthDays(week - 1))) {
                broken.add(String.format(Locale.ROOT, "week %d: %.1f days wide", week + 1, medianWidthDays(week)));
            }
        }
        return broken;
    }

    void write(Path docs) throws IOException {
        Files.writeString(docs.resolve("demo/fit-coverage.svg"), Charts.svgFile(chart(), Size.WIDE));
        Files.writeString(docs.resolve("fit-twins.md"), page());
    }

    private CoverageChart chart() {
        List<CoverageChart.Row> rows = IntStream.range(0, weeks)
                .mapToObj(week -> new CoverageChart.Row(
                        "readings of " + weeks(week + 1),
                        inside(week),
                        open(week).size(),
                        LOW,
                        HIGH,
                        OptionalDouble.of(medianOpenDays(week))))
                .toList();
        String title = broken().isEmpty()
                ? "A stated range of four in five holds four in five, and narrows week by week"
                : "A stated range of four in five against how many it held";
        return new CoverageChart("fit-coverage", title, 0.8, rows);
    }

    private String page() {
        return intro() + "![Coverage](demo/fit-coverage.svg)\n\n" + dateTable() + unknownTable()
                + (broken().isEmpty()
                        ? "\nAll of it is as it should be.\n"
                        : "\nNot as it should be: " + String.join("; ", broken()) + ".\n")
                + "\n```yaml\n" + TwinCase.SITE + "```\n";
    }

    private String intro() {
        return String.format(Locale.ROOT, """
                # Twin experiments: does a fit hold what it states?

                Made by the command in [fit.md](fit.md), not by hand. %d made-up truths of one room (its site file stands at the
                end), each with its unknowns drawn from the ranges of the site, weather of the same station taken earlier or later,
                a logger with an offset and with noise that hangs together over hours, a yard with wind, a bucket and a hand
                that err. At the end of each of %d weeks the files are read and fitted as a user's would be.

                """, cases.size(), weeks);
    }

    private String dateTable() {
        StringBuilder table = new StringBuilder("""
                | readings | ready by hand | fit refused | date still open | truth inside the 80 % range | accepted |\
                 median width of those open, days | median width of all, days |
                |---|---|---|---|---|---|---|---|
                """);
        for (int week = 0; week < weeks; week++) {
            table.append(String.format(
                    Locale.ROOT,
                    "| %s | %d | %d | %d | %d (%.0f %%) | 72 to 88 %% | %.1f | %.1f |\n",
                    weeks(week + 1),
                    count(week, Week::byHand),
                    count(week, one -> !one.usable()),
                    open(week).size(),
                    inside(week),
                    100.0 * share(week),
                    medianOpenDays(week),
                    medianWidthDays(week)));
        }
        return table.toString();
    }

    private String unknownTable() {
        StringBuilder table = new StringBuilder(
                "\nOf each unknown of which the readings told something, while the date was open: how often the truth lay in its"
                        + " 80 % range.\n\n");
        table.append("| unknown | ")
                .append(heads())
                .append(" |\n|---|")
                .append("---|".repeat(weeks))
                .append("\n");
        unknowns()
                .forEach((key, row) -> table.append("| ")
                        .append(key)
                        .append(" | ")
                        .append(String.join(" | ", row))
                        .append(" |\n"));
        return table.toString();
    }

    private static String weeks(int count) {
        return count + (count == 1 ? " week" : " weeks");
    }

    private String heads() {
        return String.join(
                " | ",
                IntStream.rangeClosed(1, weeks).mapToObj(TwinReport::weeks).toList());
    }

    private Map<String, List<String>> unknowns() {
        Map<String, List<String>> rows = new TreeMap<>();
        for (int week = 0; week < weeks; week++) {
            Map<String, int[]> counts = new TreeMap<>();
            for (TwinCase one : open(week)) {
                one.weeks().get(week).told().forEach((key, inside) -> {
                    int[] count = counts.computeIfAbsent(key, any -> new int[2]);
                    count[0] += inside ? 1 : 0;
                    count[1]++;
                });
            }
            for (String key : counts.keySet()) {
                List<String> row = rows.computeIfAbsent(key, any -> new ArrayList<>());
                while (row.size() < week) {
                    row.add("");
                }
                row.add(counts.get(key)[0] + " of " + counts.get(key)[1]);
            }
        }
        rows.values().forEach(row -> {
            while (row.size() < weeks) {
                row.add("");
            }
        });
        return rows;
    }
}
