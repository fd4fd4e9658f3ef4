package org.limedry.cli.delay;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Figures;
import org.limedry.cli.safety.Situation;

/** What is printed: the days late, by cause. */
public final class DelayAnswer {
    private DelayAnswer() {}

    /** Returns the lines, the answer first. */
    public static List<String> lines(DelayStory story) {
        List<String> lines = new ArrayList<>();
        lines.add(answer(story));
        story.causes().forEach(cause -> lines.add(line(story, cause)));
        if (!story.causes().isEmpty()) {
            lines.add(story.sum() + "; " + RangeWords.sentence(story));
        }
        RangeWords.cutOff(story).ifPresent(lines::add);
        lines.add(drying(story));
        lines.add("Litres laid in the room: " + Figures.litres(story.planned().laidLitres()) + " planned, "
                + Figures.litres(story.actual().laidLitres()) + " actual. The room carried off "
                + Figures.litres(story.planned().roomDays().totalLitres()) + " and "
                + Figures.litres(story.actual().roomDays().totalLitres()) + " until ready.");
        MonthRow.of(story).forEach(month -> lines.add(month.line()));
        lines.add("A model on " + weather(story) + ": no claim is made.");
        return situation(story).around(lines);
    }

    private static String answer(DelayStory story) {
        String ready = story.actual()
                .ready()
                .map(at -> story.readyBasis().ready() + " " + Days.full(story.actualReady()))
                .orElse("not yet ready on " + Days.full(story.actualReady()));
        String days = story.atLeast() + DelayWords.late(story.days()) + RangeWords.afterTotal(story);
        return days.substring(0, 1).toUpperCase(Locale.ROOT) + days.substring(1) + ": " + story.wallWords() + " "
                + ready + ", modelled plan " + story.dates().brief(story.plannedReady()) + ".";
    }

    private static String line(DelayStory story, CauseDays cause) {
        String range = story.reckonings().areMany()
                ? ": " + cause.range().words() + (cause.range().mayBeNothing() ? " (may have been nothing)" : "")
                : "";
        return String.format(
                Locale.ROOT, "%5s %-5s %s%s", Figures.whole(cause.shown()), unit(cause), cause.words(), range);
    }

    private static String unit(CauseDays cause) {
        return Math.abs(cause.shown()) == 1 ? "day" : "days";
    }

    private static String drying(DelayStory story) {
        return "Drying days (" + target(story) + "): planned " + dryingOf(story, story.planned()) + ", actual "
                + dryingOf(story, story.actual()) + ".";
    }

    /** Returns what makes a drying day. */
    static String target(DelayStory story) {
        return "the room carried off " + Figures.litres(story.targetLitres())
                + " litres or more, the mean of a day as planned";
    }

    /** Returns "18 of 25". */
    static String dryingOf(DelayStory story, JobSide side) {
        return side.roomDays().drying(story.targetLitres()) + " of "
                + side.roomDays().count();
    }

    private static String weather(DelayStory story) {
        String actual = story.actual().site().weatherName();
        String planned = story.planned().site().weatherName();
        return actual.equals(planned) ? "one weather year (" + actual + ")" : actual + " against " + planned;
    }

    /** Returns what the site has, as planned and as it is. */
    static Situation situation(DelayStory story) {
        Situation situation =
                Situation.at(story.runs().site()).with(story.actual().outcome());
        for (JobSide side : List.of(story.planned(), story.actual())) {
            situation = situation.with(side.scenario(), side.site().zone());
        }
        return situation;
    }
}
