package org.limedry.cli.seasons;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.limedry.cli.chart.Weeks;
import org.limedry.cli.job.WeekWords;
import org.limedry.cli.page.Ascii;
import org.limedry.cli.page.CsvSheet;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Figures;
import org.limedry.cli.page.Table;
import org.limedry.study.job.JobFigures;

/** The starts as rows: on the console, in the table and in the CSV. */
final class StartRows {
    private static final int DAY_COLUMNS = 13;
    private static final int WEEK_COLUMNS = 18;
    private static final String NUMBERS = "%8s%8s%9s%8s%8s";

    private StartRows() {}

    static List<String> lines(List<Begun> all) {
        List<String> lines = new ArrayList<>();
        lines.add(Ascii.cell("start", DAY_COLUMNS)
                + Ascii.cell("WEEKS", WEEK_COLUMNS)
                + String.format(NUMBERS, "frost", "wet", "sucked", "days to", "heat"));
        lines.add(" ".repeat(DAY_COLUMNS + WEEK_COLUMNS)
                + String.format(NUMBERS, "nights", "hours", "back, l", "mist", "kWh"));
        for (Begun begun : all) {
            lines.add(Ascii.cell(Days.full(begun.start().day()), DAY_COLUMNS)
                    + Ascii.cell(WeekWords.cell(begun.job()), WEEK_COLUMNS)
                    + String.format(
                            NUMBERS, numbers(begun.figures()).map(Ascii::of).toArray()));
        }
        return lines;
    }

    private static Stream<String> numbers(JobFigures figures) {
        return Stream.of(
                Figures.whole(figures.frostNights()),
                Figures.whole(figures.wetHours()),
                Figures.litres(figures.suckedBackKg()),
                Figures.whole(figures.hasteDays()),
                Figures.whole(figures.heaterKwh()));
    }

    static Table table(List<Begun> all) {
        return new Table(
                "What each start brings, until the last coat is ready",
                List.of(
                        Table.Column.words("Start"),
                        Table.Column.number(
                                all.get(0).job().weeks().ranged() ? "weeks, likely (range)" : "weeks, likely"),
                        Table.Column.number("frost nights"),
                        Table.Column.number("wet hours"),
                        Table.Column.number("sucked back, litres"),
                        Table.Column.number("days to mist"),
                        Table.Column.number("heat, kWh")),
                all.stream().map(StartRows::row).toList());
    }

    private static List<String> row(Begun begun) {
        List<String> row = new ArrayList<>();
        row.add(begun.start().name().replace(' ', '\u00a0'));
        row.add(WeekWords.cell(begun.job()));
        numbers(begun.figures()).forEach(row::add);
        return row;
    }

    static CsvSheet sheet(List<Begun> all) {
        return new CsvSheet(
                List.of(
                        "start",
                        "weeksEarliest",
                        "weeksLikely",
                        "weeksLatest",
                        "readyLikely",
                        "frostNights",
                        "wetHours",
                        "suckedBackLitres",
                        "daysToMist",
                        "heaterKwh"),
                all.stream().map(StartRows::cells).toList());
    }

    private static List<?> cells(Begun begun) {
        Weeks weeks = begun.job().weeks();
        JobFigures figures = begun.figures();
        return List.of(
                begun.start().day().toString(),
                weeks.ranged() ? weeks.earliest() : Optional.empty(),
                weeks.likely(),
                weeks.ranged() ? weeks.latest() : Optional.empty(),
                begun.job().result().jobReady().map(at -> begun.job().date(at).toString()),
                figures.frostNights(),
                figures.wetHours(),
                figures.suckedBackKg(),
                figures.hasteDays(),
                figures.heaterKwh());
    }
}
