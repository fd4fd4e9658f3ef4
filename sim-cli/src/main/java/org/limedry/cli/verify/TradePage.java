package org.limedry.cli.verify;

import java.util.List;
import java.util.Locale;
import org.limedry.proof.figure.Expected;
import org.limedry.proof.figure.Figure;
import org.limedry.proof.figure.Verdict;
import org.limedry.proof.trade.ReadyDays;

/** The page of the trade: each saying with its band and what the model finds, and ready days against room air. */
final class TradePage {
    private static final String HEAD = """
            # What the trade says, and what the model finds

            Written by `limedry check --pages docs`; a test fails if the page is stale. Most rows are one coat on one square metre
            of wall in air that never changes, by the default values. Bands are wide on purpose; a row outside its band stays. The
            rule is green-hard, and its limits were fitted to T3 to T8: what that leaves of the proof stands below the table.
            Figures are given to two or three digits. S numbers: table `materials/sources` of `reference-data`.

            """;

    private static final String FITTED = """
            ## What the ready rule was fitted to

            - Fitted to: T3 to T8. The limits of `green-hard` (mean suction 300 kPa, age 2 days at 20 C) were chosen from 78 rules,
              in a calculation with the same equations that came before this program, to come near these figures; three of the
              78 came equally near. How it weighed them is not on record. T3 to T8 inside their bands therefore prove nothing of
              the rule; T4 and T7 lie outside although it was fitted to them. Of T6 only "weeks to months" comes from practice: its
              other rows compare with a calculation by the same equations.
            - Kept from it to test it with: nothing. No saying about waiting was put aside for that.
            - Others that use the rule: T10, T18 and T20, of which no record says that they were fitted to. T10 is half built in:
              the 30 kJ/mol by which age counts was taken from one of its two sources. T18 is common practice. T20 compares with a
              calculation by the same equations.
            - Without the rule: the rest. T11, T13, T14 and T19 are the same formulas worked out elsewhere and test the coding. T15
              is built in: the curve of the machine was fitted to that supplier's figures.
            - The two limits have not been moved since to meet a band.

            """;

    private static final String BEFORE_CHART = """
            ## Days until the next coat, by background and room air

            A base coat of 10 mm, quicklime 1 to sand 2.5 by volume, on a damp background, in room air that never changes. Does that
            look like your own sites? Where it does not, trust your hand: a hand test overrules the model.

            """;

    private TradePage() {}

    static String render(List<CaseRun> runs, List<ReadyDays.Cell> days) {
        StringBuilder page = new StringBuilder(HEAD);
        page.append(Markdown.head("#", "scenario", "label and source of the band", "band", "found", "unit", "verdict"));
        runs.forEach(run -> run.figures().forEach(figure -> page.append(row(figure))));
        page.append("\nWhat is said:\n\n");
        runs.forEach(run -> page.append("- ")
                .append(run.proof().name())
                .append(": ")
                .append(run.proof().setUp())
                .append('\n'));
        page.append('\n').append(FITTED).append(BEFORE_CHART);
        page.append(Markdown.chart(ReadyDaysChart.NAME, ReadyDaysChart.title(days)));
        page.append(Markdown.head("background", "humidity", "5 C", "10 C", "15 C", "20 C"));
        int temperatures = ReadyDays.CELSIUS.size();
        for (int first = 0; first < days.size(); first += temperatures) {
            page.append(row(days.subList(first, first + temperatures)));
        }
        return page.append("\nDays; a dash would be more than 60.\n").toString();
    }

    private static String row(Figure figure) {
        String why = figure.verdict() == Verdict.IN
                ? "in"
                : "**outside**: " + figure.claim().standing().reason();
        return Markdown.row(
                figure.proof(),
                figure.claim().quantity(),
                figure.claim().source().words(),
                band(figure.claim().expected()),
                text(figure.found()),
                figure.claim().unit(),
                why);
    }

    private static String band(Expected expected) {
        if (Double.isInfinite(expected.above())) {
            return "at least " + text(expected.value());
        }
        if (Double.isInfinite(expected.below())) {
            return "at most " + text(expected.value());
        }
        String low = text(expected.value() - expected.below());
        String high = text(expected.value() + expected.above());
        return low.equals(high) ? low : low + " to " + high;
    }

    /** Two or three digits, so that the last digit of a library cannot stale the page. */
    private static String text(double value) {
        if (Double.isNaN(value)) {
            return "not in 60 days";
        }
        double size = Math.abs(value);
        int decimals = size < 0.2 ? 3 : size < 10.0 ? 2 : 1;
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }

    private static String row(List<ReadyDays.Cell> cells) {
        ReadyDays.Cell first = cells.get(0);
        Object[] texts = new Object[cells.size() + 2];
        texts[0] = first.background().words();
        texts[1] = String.format(Locale.ROOT, "%.0f %%", 100.0 * first.relativeHumidity());
        for (int k = 0; k < cells.size(); k++) {
            var days = cells.get(k).days();
            texts[k + 2] = days.isPresent() ? String.format(Locale.ROOT, "%.1f", days.getAsDouble()) : "-";
        }
        return Markdown.row(texts);
    }
}
