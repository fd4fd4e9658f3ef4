package org.limedry.cli.seasons;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.limedry.cli.chart.Weeks;
import org.limedry.cli.job.WeekWords;
import org.limedry.cli.page.Figures;
import org.limedry.cli.page.Names;
import org.limedry.lime.CoatPlan;
import org.limedry.simulation.Scenario;
import org.limedry.study.job.JobFigures;
import org.limedry.study.options.Options;

/** The quicker and the slower start in words. */
final class PairWords {
    private static final double DAYS_PER_WEEK = 7.0;
    private static final double TWICE = 2.0;
    private static final int MOST_NAMED = 6;

    private PairWords() {}

    /** Returns how much longer the slower takes, in a sentence; nothing for one alone. */
    static List<String> difference(List<Begun> pair) {
        return pair.size() > 1 ? List.of(longer(pair.get(0), pair.get(1))) : List.of();
    }

    /** Returns what tells them apart, a sentence each. */
    static List<String> sentences(List<Begun> pair) {
        List<String> sentences = new ArrayList<>(difference(pair));
        for (Begun begun : pair) {
            sentences.add(Names.capital(begun.start().words()) + ": " + brings(begun.figures()) + ".");
        }
        return sentences;
    }

    private static String longer(Begun quick, Begun slow) {
        Scenario scenario = slow.job().scenario();
        Set<String> walls = scenario.coats().stream().map(CoatPlan::wall).collect(Collectors.toSet());
        Options options = new Options(slow.job().result(), walls, scenario.until());
        Options.Saved saved = options.saved(quick.job().result(), 0);
        if (saved.atMost()) {
            return "Neither is ready within the runs.";
        }
        if (options.isTie(quick.job().result(), slow.job().result())) {
            return "Which of the two is quicker is too close to call.";
        }
        String range = saved.low().isPresent() && saved.high().isPresent()
                ? " (" + half(saved.low().getAsDouble()) + " to "
                        + half(saved.high().getAsDouble()) + ")"
                : "";
        return "The difference is " + (saved.atLeast() ? "at least " : "")
                + WeekWords.weeks(saved.likely() / DAYS_PER_WEEK) + range + ".";
    }

    private static String half(double days) {
        return Weeks.half(days / DAYS_PER_WEEK);
    }

    /** What does not come is left out. */
    private static String brings(JobFigures figures) {
        List<String> parts = new ArrayList<>();
        add(parts, figures.frostNights(), Figures.count(figures.frostNights(), "frost night"));
        add(parts, figures.wetHours(), Figures.count(figures.wetHours(), "wet hour"));
        add(parts, figures.suckedBackKg(), Figures.litres(figures.suckedBackKg()) + " litres sucked back");
        add(parts, figures.hasteDays(), Figures.count(figures.hasteDays(), "day") + " to mist and damp down");
        add(parts, figures.heaterKwh(), Figures.whole(figures.heaterKwh()) + " kWh of heat");
        return parts.isEmpty() ? "no frost night, no wet hour" : String.join(", ", parts);
    }

    private static void add(List<String> parts, double figure, String words) {
        if (Math.round(figure) > 0) {
            parts.add(words);
        }
    }

    /** Returns the sentence over the chart. */
    static String title(List<Begun> all, List<Begun> pair) {
        Begun best = all.stream().min(Begun.BY_WEEKS).orElseThrow();
        double least = best.job().weeks().likely().orElse(Double.POSITIVE_INFINITY);
        List<String> slow = all.stream()
                .filter(begun -> begun.job().weeks().likely().orElse(Double.MAX_VALUE) > TWICE * least)
                .map(begun -> begun.start().name())
                .toList();
        if (!slow.isEmpty() && slow.size() <= MOST_NAMED) {
            return "Begun in " + listed(slow) + " it takes more than twice as long as "
                    + best.start().words();
        }
        if (!slow.isEmpty()) {
            return slow.size() + " of " + all.size() + " starts take more than twice as long as "
                    + best.start().words();
        }
        return pair.stream()
                .map(begun -> WeekWords.likely(begun.job()) + " begun "
                        + begun.start().words())
                .collect(Collectors.joining(", "));
    }

    private static String listed(List<String> names) {
        int last = names.size() - 1;
        return last == 0 ? names.get(0) : String.join(", ", names.subList(0, last)) + " or " + names.get(last);
    }
}
