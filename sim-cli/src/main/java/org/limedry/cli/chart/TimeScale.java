package org.limedry.cli.chart;

import java.time.Duration;
import java.time.Instant;

/**
 * Where moments lie across a drawing.
 *
 * @param timeline the time it covers
 * @param left where the run starts, px
 * @param right where it ends, px
 */
record TimeScale(Timeline timeline, int left, int right) {
    double x(Instant moment) {
        return left + widthPx() * seconds(moment) / seconds(timeline.to());
    }

    int widthPx() {
        return right - left;
    }

    /** Returns the moment as seconds of the run, which is what the time axis of a plot counts. */
    double seconds(Instant moment) {
        Duration sinceStart = Duration.between(timeline.from(), moment);
        return sinceStart.toMillis() / 1000.0;
    }

    double lengthSeconds() {
        return seconds(timeline.to());
    }
}
