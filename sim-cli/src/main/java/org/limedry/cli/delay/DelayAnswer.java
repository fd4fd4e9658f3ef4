package org.limedry.cli.delay;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.limedry.cli.delay.DelayStory.Told;
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
        story.causes().forEach(told -> lines.add(line(told)));
        if (!story.causes().isEmpty()) {
            lines.add(story.sum() + "; " + shared(story));
        }
        lines.add(drying(story));
        lines.add("Litres laid in the room: " + Figures.litres(story.planned().laidLitres()) + " planned, "
                + Figures.litres(story.actual().laidLitres()) + " actual. The room carried off "
                + Figures.litres(story.planned().roomDays().totalLitres()) + " and "
                + Figures.litres(story.actual().roomDays().totalLitres()) + " until ready.");
        MonthRow.of(story).forEach(month -> lines.add(month.line()));
        lines.add(ranges(story));
        lines.add("A model on " + weather(story) + ", good to about 30 % a cause. Facts only: no claim is made.");
        return situation(story).around(lines);
    }

    private static String answer(DelayStory story) {
        Days dates = story.dates();
        String ready = story.actual()
                .ready()
                .map(at -> "ready " + Days.full(story.actualReady()))
                .orElse("not yet ready on " + Days.full(story.actualReady()));
        String late = DelayWords.late(story.days());
        String days = story.atLeast() + late;
        return days.substring(0, 1).toUpperCase(Locale.ROOT) + days.substring(1) + ": " + story.wallWords() + " "
                + ready + ", planned " + dates.brief(story.plannedReady()) + ".";
    }

    private static String line(Told told) {
        String range = told.range()
                .map(ends -> ", 3 in 5 runs from " + Figures.whole(ends.low()) + " to " + Figures.whole(ends.high()))
                .orElse("");
        return String.format(
                Locale.ROOT, "%5s %-5s %s%s", Figures.whole(told.shown()), unit(told), told.words(), range);
    }

    private static String unit(Told told) {
        return Math.abs(told.shown()) == 1 ? "day" : "days";
    }

    /** Returns how the days were shared out, in one plain line. */
    static String shared(DelayStory story) {
        int causes = story.runs().causes().size();
        return causes < 2
                ? "one cause, so all of it is its own (2 runs)."
                : "each figure is the average effect of that cause over every order of adding the " + causes + " ("
                        + story.runs().sets() + " runs), so they add up: shares, not periods.";
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

    private static String ranges(DelayStory story) {
        return story.totalRange()
                .map(ends -> "All together, 3 in 5 runs lie from " + Figures.whole(ends.low()) + " to "
                        + Figures.whole(ends.high()) + " days late.")
                .orElse("Likely dates only; --ranges for ranges.");
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
