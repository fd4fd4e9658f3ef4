package org.limedry.cli.chart;

import java.util.List;
import org.limedry.units.Check;

/**
 * When to open and shut the doors, a strip of hours for each day: for the wall of the site hut, to be read from two
 * metres.
 *
 * @param id tells it from the other charts on its page
 * @param title the sentence over it
 * @param firstHour hour of the day at which the strips begin
 * @param lastHour hour at which they end
 * @param days one strip for each
 */
public record DoorsChart(String id, String title, int firstHour, int lastHour, List<Day> days) implements Chart {
    public DoorsChart {
        Chart.check(id, title);
        days = List.copyOf(days);
        Check.notEmpty(days, "days");
        Check.that(firstHour >= 0 && firstHour < lastHour && lastHour <= 24, "lastHour", "after the first", lastHour);
        for (Day day : days) {
            int first = day.blocks().get(0).fromHour();
            int last = day.blocks().get(day.blocks().size() - 1).untilHour();
            Check.that(first == firstHour && last == lastHour, "blocks", "from the first hour to the last", day.date());
        }
    }

    /** What to do. */
    public enum Word {
        OPEN,
        SHUT,
        NO_DIFFERENCE
    }

    /**
     * Hours with the same word.
     *
     * @param fromHour hour of the day at which they begin
     * @param untilHour hour at which they end, later
     * @param word what to do
     */
    public record Block(int fromHour, int untilHour, Word word) {
        public Block {
            Check.that(fromHour < untilHour, "untilHour", "after " + fromHour, untilHour);
        }

        /** Returns "9–16", with the dash of a span. */
        public String span() {
            return fromHour + "\u2013" + untilHour;
        }
    }

    /**
     * A day.
     *
     * @param weekday "Mon"
     * @param date "16 Nov"
     * @param blocks what to do, in order, without gaps
     * @param night what to do at night: "SHUT"
     * @param why the reason, some twelve words
     */
    public record Day(String weekday, String date, List<Block> blocks, String night, String why) {
        public Day {
            Check.notBlank(weekday, "weekday");
            Check.notBlank(date, "date");
            blocks = List.copyOf(blocks);
            Check.notEmpty(blocks, "blocks");
            Check.notBlank(night, "night");
            Check.notBlank(why, "why");
            for (int i = 1; i < blocks.size(); i++) {
                int begins = blocks.get(i).fromHour();
                Check.that(begins == blocks.get(i - 1).untilHour(), "blocks", "without gaps", begins);
            }
        }
    }
}
