package org.limedry.cli.seasons;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import org.limedry.cli.job.JobColumns;
import org.limedry.cli.job.WeekWords;
import org.limedry.cli.page.Ascii;
import org.limedry.cli.page.Columns;
import org.limedry.cli.page.CsvSheet;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Figures;
import org.limedry.cli.page.Table;

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
                    + String.format(NUMBERS, numbers(begun).toArray()));
        }
        return lines;
    }

    /** The last five columns of the page. */
    private static List<String> numbers(Begun begun) {
        List<String> row = columns(true).cells(begun);
        return row.subList(2, row.size()).stream().map(Ascii::of).toList();
    }

    private static Columns<Begun> columns(boolean ranged) {
        return Columns.<Begun>of()
                .words("Start", begun -> begun.start().name().replace(' ', '\u00a0'))
                .number(ranged ? "weeks, likely (range)" : "weeks, likely", begun -> WeekWords.cell(begun.job()))
                .number("frost nights", begun -> Figures.whole(begun.figures().frostNights()))
                .number("wet hours", begun -> Figures.whole(begun.figures().wetHours()))
                .number(
                        "sucked back, litres",
                        begun -> Figures.litres(begun.figures().suckedBackKg()))
                .number("days to mist", begun -> Figures.whole(begun.figures().hasteDays()))
                .number("heat, kWh", begun -> Figures.whole(begun.figures().heaterKwh()))
                .key("start", begun -> begun.start().day())
                .and(JobColumns.weeks().through(Begun::job))
                .key("frostNights", begun -> begun.figures().frostNights())
                .key("wetHours", begun -> begun.figures().wetHours())
                .key("suckedBackLitres", begun -> begun.figures().suckedBackKg())
                .key("daysToMist", begun -> begun.figures().hasteDays())
                .key("heaterKwh", begun -> begun.figures().heaterKwh());
    }

    static Table table(List<Begun> all) {
        return columns(all.get(0).job().weeks().ranged())
                .table("What each start brings, until the last coat is ready", all);
    }

    static CsvSheet sheet(List<Begun> all) {
        return columns(true).csv(all);
    }

    static ObjectNode json(Begun begun) {
        return columns(true).json(begun);
    }
}
