package org.limedry.cli.fit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.BinomialDistribution;
import org.limedry.cli.chart.Charts;
import org.limedry.cli.chart.CoverageChart;
import org.limedry.cli.chart.Size;

/** What twin experiments say, as a page of the documents: each hundred and all together. */
final class TwinReport {
    private static final int HUNDRED = 100;

    private final TwinCounts all;
    private final List<TwinCounts> groups = new ArrayList<>();

    TwinReport(List<TwinCase> cases) {
        cases.stream()
                .collect(Collectors.groupingBy(one -> (one.seed() - 1) / HUNDRED))
                .values()
                .forEach(hundred -> groups.add(new TwinCounts(seeds(hundred), hundred)));
        this.all = new TwinCounts("all " + cases.size(), cases);
        if (groups.size() > 1) {
            groups.add(all);
        }
    }

    private static String seeds(List<TwinCase> cases) {
        return "seeds " + cases.get(0).seed() + " to "
                + cases.get(cases.size() - 1).seed();
    }

    /** Returns what does not hold, a line each. */
    List<String> broken() {
        List<String> broken = new ArrayList<>();
        for (int week = 0; week < all.weeks(); week++) {
            if (!all.isAccepted(week)) {
                broken.add("week " + (week + 1) + ": " + all.inside(week) + " of " + all.open(week) + " inside");
            }
            if (week > 0 && !(all.medianWidthDays(week) < all.medianWidthDays(week - 1))) {
                broken.add(String.format(Locale.ROOT, "week %d: %.1f days wide", week + 1, all.medianWidthDays(week)));
            }
        }
        return broken;
    }

    void write(Path docs) throws IOException {
        Files.writeString(docs.resolve("demo/fit-coverage.svg"), chart());
        Files.writeString(docs.resolve("fit-twins.md"), page());
    }

    String chart() {
        List<CoverageChart.Row> rows = IntStream.range(0, all.weeks())
                .mapToObj(week -> new CoverageChart.Row(
                        "readings of " + weeks(week + 1),
                        all.inside(week),
                        all.open(week),
                        TwinCounts.LOW,
                        TwinCounts.HIGH,
                        OptionalDouble.of(all.medianOpenDays(week))))
                .toList();
        String title = broken().isEmpty()
                ? "A stated range of four in five holds four in five, and narrows week by week"
                : "A stated range of four in five against how many it held";
        return Charts.svgFile(new CoverageChart("fit-coverage", title, 0.8, rows), Size.WIDE);
    }

    String page() {
        return intro() + dateTable() + middleTable() + unknownTable() + verdict() + "\n```yaml\n" + TwinCase.SITE
                + "```\n";
    }

    private String intro() {
        return String.format(Locale.ROOT, """
                # Twin experiments: does a fit hold what it states?

                Made from [fit-twins.csv](fit-twins.csv), not by hand; [fit.md](fit.md) has the command that makes that file. Made-up
                truths of one room (its site file stands at the end), each with its unknowns drawn from the ranges of the site,
                weather of the same station taken earlier or later, a logger with an offset and with noise that hangs together over
                hours, a yard with wind, a bucket and a hand that err. At the end of each of %d weeks the files are read and fitted
                as a user's would be. The claim is judged on all of them: inside in 72 to 88 %%, and the median width of all narrows.

                ![Coverage](demo/fit-coverage.svg)

                """, all.weeks());
    }

    private String dateTable() {
        StringBuilder table = new StringBuilder("""
                | truths | readings | ready by hand | fit refused | date still open | truth inside the 80 % range | before it \
                | after it | median width of those open, days | median width of all, days |
                |---|---|---|---|---|---|---|---|---|---|
                """);
        for (TwinCounts group : groups) {
            for (int week = 0; week < group.weeks(); week++) {
                table.append(String.format(
                        Locale.ROOT,
                        "| %s | %s | %d | %d | %d | %d (%.0f %%) | %d | %d | %.1f | %.1f |\n",
                        group.words(),
                        weeks(week + 1),
                        group.byHand(week),
                        group.refused(week),
                        group.open(week),
                        group.inside(week),
                        100.0 * group.share(week),
                        group.before(week),
                        group.open(week) - group.inside(week) - group.before(week),
                        group.medianOpenDays(week),
                        group.medianWidthDays(week)));
            }
        }
        return table.toString();
    }

    private String middleTable() {
        StringBuilder table = new StringBuilder("""

                Of all whose date was open: how many truths came later than the date told, and how far off it was, the middle case.

                | readings | later than the likely date | off, days | later than the date by which half of the runs are ready | off, days |
                |---|---|---|---|---|
                """);
        for (int week = 0; week < all.weeks(); week++) {
            table.append(String.format(
                    Locale.ROOT,
                    "| %s | %d of %d | %.1f | %d of %d | %.1f |\n",
                    weeks(week + 1),
                    all.later(week, TwinCase.Week::likely),
                    all.open(week),
                    all.medianOffDays(week, TwinCase.Week::likely),
                    all.later(week, TwinCase.Week::half),
                    all.open(week),
                    all.medianOffDays(week, TwinCase.Week::half)));
        }
        return table.toString();
    }

    private String unknownTable() {
        int weeks = all.weeks();
        StringBuilder table = new StringBuilder(
                "\nOf each unknown of which the readings told something, while the date was open: how often the truth lay in its"
                        + " 80 % range.\n\n| unknown | ");
        table.append(String.join(
                        " | ",
                        IntStream.rangeClosed(1, weeks)
                                .mapToObj(TwinReport::weeks)
                                .toList()))
                .append(" |\n|---|")
                .append("---|".repeat(weeks))
                .append("\n");
        for (String unknown : new TreeSet<>(all.told())) {
            table.append("| ").append(unknown);
            for (int week = 0; week < weeks; week++) {
                List<TwinCase.Truth> truths = all.told(week, unknown);
                int inside = Collections.frequency(truths, TwinCase.Truth.INSIDE);
                table.append(truths.isEmpty() ? " | " : " | " + inside + " of " + truths.size());
            }
            table.append(" |\n");
        }
        return table.toString();
    }

    private String verdict() {
        String dates = broken().isEmpty()
                ? "The dates meet the claim: each week's share of truths inside is accepted, and the middle width narrows."
                : "The dates do not meet the claim: " + String.join("; ", broken()) + ".";
        List<String> less = new ArrayList<>();
        List<String> more = new ArrayList<>();
        for (String unknown : new TreeSet<>(all.told())) {
            for (int week = 0; week < all.weeks(); week++) {
                Held held = Held.of(all.told(week, unknown));
                if (held.isSeldom() || held.isOften()) {
                    (held.isSeldom() ? less : more).add(unknown + " after " + weeks(week + 1) + ", " + held.words());
                }
            }
        }
        return "\n" + dates + """


                The ranges of single unknowns are not part of that claim. Against four in five, by more than chance would bring
                once in forty:

                """ + line("held too seldom (too narrow, or beside the truth)", less)
                + line("held too often (wider than they state)", more);
    }

    private static String line(String what, List<String> unknowns) {
        return "- " + what + ": " + (unknowns.isEmpty() ? "none" : String.join("; ", unknowns)) + ".\n";
    }

    /** How often a range of four in five held the truth. */
    private record Held(int inside, int of) {
        private static final double STATED = 0.8;
        private static final double CHANCE = 0.025;

        static Held of(List<TwinCase.Truth> truths) {
            return new Held(Collections.frequency(truths, TwinCase.Truth.INSIDE), truths.size());
        }

        boolean isSeldom() {
            return of > 0 && binomial().cumulativeProbability(inside) < CHANCE;
        }

        boolean isOften() {
            return of > 0 && 1.0 - binomial().cumulativeProbability(inside - 1) < CHANCE;
        }

        private BinomialDistribution binomial() {
            return new BinomialDistribution(null, of, STATED);
        }

        String words() {
            return String.format(Locale.ROOT, "%d of %d where %.0f are due", inside, of, STATED * of);
        }
    }

    private static String weeks(int count) {
        return count + (count == 1 ? " week" : " weeks");
    }
}
