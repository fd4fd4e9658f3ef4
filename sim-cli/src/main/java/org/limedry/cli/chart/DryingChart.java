package org.limedry.cli.chart;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.limedry.units.Check;

/**
 * Water left in each coat, with the dates on which the coats are ready.
 *
 * @param id tells it from the other charts on its page
 * @param title the sentence over it
 * @param timeline the time it covers
 * @param coats one line each, the most important first; at least one
 * @param shut when nobody was on site
 * @param uprights what happened when
 */
public record DryingChart(
        String id, String title, Timeline timeline, List<Coat> coats, List<ShutSite> shut, List<Upright> uprights)
        implements Chart {
    public DryingChart {
        Chart.check(id, title);
        Check.notEmpty(coats, "coats");
        coats = List.copyOf(coats);
        shut = List.copyOf(shut);
        uprights = List.copyOf(uprights);
    }

    /**
     * One coat.
     *
     * @param wall its wall, as the user calls it
     * @param name which coat of that wall: "first coat"
     * @param laid when it was laid; empty if it was not, and then {@code left} has no points
     * @param left water left in it, in time order
     * @param ready when it is ready for the next coat
     */
    public record Coat(String wall, String name, Optional<Instant> laid, List<Point> left, Ready ready) {
        public Coat {
            Check.notBlank(wall, "wall");
            Check.notBlank(name, "name");
            left = List.copyOf(left);
            Check.that(laid.isPresent() || left.isEmpty(), "left", "empty for a coat that was not laid", left.size());
        }

        String fullName() {
            return wall + ", " + name;
        }
    }

    /**
     * One point of a line.
     *
     * @param at when
     * @param litresPerM2 water left, litres in each m2; 0 or above
     */
    public record Point(Instant at, double litresPerM2) {
        public Point {
            Check.nonNegative(litresPerM2, "litresPerM2", "litres/m2");
        }
    }

    /**
     * A time when the site was shut.
     *
     * @param from its start
     * @param to its end; after {@code from}
     * @param words what to call it: "site shut"
     */
    public record ShutSite(Instant from, Instant to, String words) {
        public ShutSite {
            Check.that(to.isAfter(from), "to", "after " + from, to);
            Check.notBlank(words, "words");
        }
    }

    /**
     * Something that happened at one moment.
     *
     * @param at when
     * @param words what: "heater in, 30 Nov"
     */
    public record Upright(Instant at, String words) {
        public Upright {
            Check.notBlank(words, "words");
        }
    }
}
