package org.limedry.cli.delay;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.limedry.cli.chart.Chart;
import org.limedry.cli.chart.DelayChart;
import org.limedry.cli.chart.DelayChart.Cause;
import org.limedry.cli.chart.DelayChart.Point;
import org.limedry.cli.chart.DelayChart.Side;
import org.limedry.cli.chart.Timeline;

/** The chart of a delay. */
final class DelayCharts {
    private static final Duration MARGIN = Duration.ofDays(3);
    /** A fifth of the days more, so that the words at the last mark have room beside it. */
    private static final int SHARE_FOR_WORDS = 5;

    private static final double SECONDS_PER_DAY = 86_400.0;

    private DelayCharts() {}

    static Chart of(DelayStory story) {
        List<Point> planned = story.planned().litres();
        List<Point> actual = story.actual().litres();
        List<Cause> causes = story.causes().stream()
                .map(cause -> new Cause(cause.words(), figure(story, cause), cause.days()))
                .toList();
        return new DelayChart(
                "delay",
                title(story),
                timeline(story, planned, actual),
                "litres in the plaster of the " + story.wallWords(),
                side(story, story.planned(), "plan", DateBasis.RECORD, planned),
                side(story, story.actual(), "actual", story.readyBasis(), actual),
                story.atLeast() + DelayWords.late(story.days()) + RangeWords.afterTotal(story) + ", by cause",
                causes,
                story.sum());
    }

    /** Returns "25 days (0 to 40)". */
    private static String figure(DelayStory story, CauseDays cause) {
        String likely = DelayWords.days(cause.shown());
        return story.reckonings().areMany() ? likely + " (" + cause.range().brief() + ")" : likely;
    }

    /** Returns the message: the largest cause and its likely days. */
    static String title(DelayStory story) {
        CauseDays largest = story.causes().get(0);
        return "Likely " + DelayWords.days(largest.shown()) + " of the " + story.days() + " come from one cause: "
                + largest.words().substring(0, 1).toLowerCase(Locale.ROOT)
                + largest.words().substring(1);
    }

    private static Side side(DelayStory story, JobSide side, String name, DateBasis basis, List<Point> points) {
        String ready = side.ready()
                .map(at -> basis.mark() + " " + story.dates().brief(side.day(at)))
                .orElse("not ready by " + story.dates().brief(story.actualReady()));
        return new Side(
                name + ": first coat " + story.dates().brief(side.day(side.laid())), points, side.ready(), ready);
    }

    /** From a little before the first coat to a little after the last bar. */
    private static Timeline timeline(DelayStory story, List<Point> planned, List<Point> actual) {
        Instant first = earlier(planned.get(0).at(), actual.get(0).at());
        Instant last = later(story.planned().end(), story.actual().end());
        Instant at = story.planned().end();
        for (CauseDays cause : story.causes()) {
            at = at.plusSeconds(Math.round(cause.days() * SECONDS_PER_DAY));
            first = earlier(first, at);
            last = later(last, at);
        }
        Duration forTheWords = Duration.between(first, last).dividedBy(SHARE_FOR_WORDS);
        return new Timeline(
                first.minus(MARGIN), last.plus(forTheWords), story.actual().zone());
    }

    private static Instant earlier(Instant a, Instant b) {
        return a.isBefore(b) ? a : b;
    }

    private static Instant later(Instant a, Instant b) {
        return a.isAfter(b) ? a : b;
    }
}
