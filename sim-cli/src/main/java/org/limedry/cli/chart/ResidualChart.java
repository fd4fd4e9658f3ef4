package org.limedry.cli.chart;

import java.time.Instant;
import java.util.List;
import org.limedry.units.Check;

/**
 * Readings against the model, before and after it was brought to them: one strip for each thing that was read.
 *
 * @param id tells it from the other charts on its page
 * @param title the sentence over it
 * @param timeline the time it covers
 * @param channels what was read, from top to bottom; 1 to 4
 */
public record ResidualChart(String id, String title, Timeline timeline, List<Channel> channels) implements Chart {
    /** More strips than that do not fit a telephone. */
    public static final int MOST_CHANNELS = 4;

    /** How the readings of a channel are drawn. */
    public enum Marks {
        /** A logger: a thin line, open at gaps; in a chart of over 21 days the mean and the range of each day. */
        LINE,
        /** Single readings and hand tests: a dot each. */
        DOTS,
        /** Something gathered since the reading before, as the water in a bucket: a bar each, from nought. */
        BARS
    }

    /**
     * One reading and what the model says for its moment, all in the unit of the channel.
     *
     * @param at when it was read
     * @param measured what was read
     * @param before what the model said before it was brought to the readings
     * @param after what it says now
     */
    public record Reading(Instant at, double measured, double before, double after) {
        public Reading {
            Check.finite(measured, "measured", "");
            Check.finite(before, "before", "");
            Check.finite(after, "after", "");
        }
    }

    /**
     * One thing that was read.
     *
     * @param name what it is and where it is from: "room humidity, store.csv"
     * @param unit the unit as shown: "% RH"
     * @param marks how its readings are drawn
     * @param usualError the usual error of one reading, one standard deviation, in the unit of the channel; above 0
     * @param verdict how well the model now meets it, in a few words: "within 0.4 K mostly"
     * @param readings in time order; at least one; two at one time only as dots; none below 0 where they are bars
     */
    public record Channel(
            String name, String unit, Marks marks, double usualError, String verdict, List<Reading> readings) {
        public Channel {
            Check.notBlank(name, "name");
            Check.notBlank(unit, "unit");
            Check.positive(usualError, "usualError", unit);
            Check.notBlank(verdict, "verdict");
            readings = List.copyOf(readings);
            Check.notEmpty(readings, "readings");
            for (int i = 1; i < readings.size(); i++) {
                Instant before = readings.get(i - 1).at();
                Instant at = readings.get(i).at();
                boolean inOrder = marks == Marks.DOTS ? !at.isBefore(before) : at.isAfter(before);
                Check.that(inOrder, "readings", "in time order, after " + before, at);
            }
            if (marks == Marks.BARS) {
                for (Reading reading : readings) {
                    Check.nonNegative(reading.measured(), "measured", unit);
                    Check.nonNegative(reading.before(), "before", unit);
                    Check.nonNegative(reading.after(), "after", unit);
                }
            }
        }

        /** Returns how far a reading may usually lie from the model: twice its usual error, in the unit of the channel. */
        double reach() {
            return 2 * usualError;
        }
    }

    public ResidualChart {
        Chart.check(id, title);
        channels = List.copyOf(channels);
        Check.that(
                !channels.isEmpty() && channels.size() <= MOST_CHANNELS,
                "channels",
                "1 to " + MOST_CHANNELS,
                channels.size());
        for (Channel channel : channels) {
            for (Reading reading : channel.readings()) {
                Check.that(
                        timeline.holds(reading.at()),
                        "readings",
                        "from " + timeline.from() + " to " + timeline.to(),
                        reading.at());
            }
        }
    }
}
