package org.limedry.cli.chart;

import java.util.List;
import org.limedry.units.Check;

/**
 * Where the water came from and where it is now, in litres.
 *
 * <p>Terms may be negative: such a term is shown on the other side under its other name.
 *
 * @param id tells it from the other charts on its page
 * @param title the sentence over it
 * @param putIn what came in
 * @param gone what left for good
 * @param stillHere what the stores hold more than at the start
 * @param onTheWay what condensed, wherever it went afterwards; no part of the sum
 */
public record WaterAccountChart(
        String id, String title, List<Term> putIn, List<Term> gone, List<Term> stillHere, OnTheWay onTheWay)
        implements Chart {
    public WaterAccountChart {
        Chart.check(id, title);
        putIn = List.copyOf(putIn);
        gone = List.copyOf(gone);
        stillHere = List.copyOf(stillHere);
    }

    /** Returns the account as it is printed, for the chart, its title and the table beside it. */
    public ShownAccount shown() {
        return ShownAccount.of(this);
    }

    /**
     * One term.
     *
     * @param name what to call it: "laid in the coats"
     * @param otherName what to call it on the other side when it is negative: "taken in from the air outside"
     * @param litres litres, of either sign
     * @param fill how its bar is filled, if its neighbour is not filled so
     */
    public record Term(String name, String otherName, double litres, Fill fill) {
        public Term {
            Check.notBlank(name, "name");
            Check.notBlank(otherName, "otherName");
            Check.finite(litres, "litres", "litres");
        }

        /** Returns the same water seen from the other side. */
        Term turned() {
            return new Term(otherName, name, -litres, fill);
        }
    }

    /**
     * Water that condensed on the way.
     *
     * @param litres all of it
     * @param parts what became of it: "sucked back by plaster and stone"
     * @param restName what to call the water that no part accounts for: "dried off again"
     */
    public record OnTheWay(double litres, List<Part> parts, String restName) {
        public OnTheWay {
            Check.nonNegative(litres, "litres", "litres");
            Check.notBlank(restName, "restName");
            parts = List.copyOf(parts);
        }
    }

    /**
     * One part of it.
     *
     * @param name what became of it
     * @param litres litres, 0 or above
     */
    public record Part(String name, double litres) {
        public Part {
            Check.notBlank(name, "name");
            Check.nonNegative(litres, "litres", "litres");
        }
    }
}
