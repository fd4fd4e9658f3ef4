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
            of wall in air that never changes, by the default values; nothing has been tuned to them. Bands are wide on purpose; a
            row outside its band stays. The rule is green-hard. Figures are given to two or three digits.

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
        page.append('\n').append(BEFORE_CHART);
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
