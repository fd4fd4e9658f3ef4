package org.limedry.cli.chart;

import java.util.List;
import org.limedry.cli.chart.WaterAccountChart.OnTheWay;
import org.limedry.cli.chart.WaterAccountChart.Part;
import org.limedry.cli.chart.WaterAccountChart.Term;

/** Water accounts, all figures invented. */
final class AccountSamples {
    private AccountSamples() {}

    static Term term(String name, double litres, Fill fill) {
        return new Term(name, "from the other side: " + name, litres, fill);
    }

    /** 235 litres, of which 186 are gone; each term a little off the whole litre. */
    static WaterAccountChart stall() {
        return chart(
                List.of(
                        term("laid in the coats", 199.4, Fill.GREY),
                        term("from the floor", 13.8, Fill.CROSS),
                        term("people working", 10.7, Fill.LIGHT),
                        term("misting, wetting laths", 6.3, Fill.DOTS),
                        term("let go as lime hardens", 4.9, Fill.HEAVY)),
                List.of(
                        term("out by doors and leaks", 103.4, Fill.WHITE),
                        term("dehumidifier", 69.8, Fill.LIGHT),
                        term("ran off the glass", 8.6, Fill.DOTS),
                        term("through walls", 2.3, Fill.HEAVY),
                        term("bound in set", 2.1, Fill.HEAVY)),
                List.of(
                        term("still in the coats", 41.2, Fill.GREY),
                        term("in walls", 6.9, Fill.CROSS),
                        term("in room air", 0.8, Fill.CROSS)),
                new OnTheWay(
                        40.7,
                        List.of(new Part("sucked back by plaster and stone", 27.9), new Part("ran off the glass", 8.6)),
                        "dried off again"));
    }

    static WaterAccountChart chart(List<Term> in, List<Term> gone, List<Term> here, OnTheWay way) {
        return new WaterAccountChart(
                "water-account", "Of 235 litres put in, 186 are gone and 49 are still here", in, gone, here, way);
    }

    /** Moist air from outside puts water in, and nothing condenses. */
    static WaterAccountChart wetOutside() {
        return chart(
                List.of(term("laid in the coats", 80, Fill.GREY)),
                List.of(
                        new Term("out by doors and leaks", "taken in from outside air", -12.4, Fill.WHITE),
                        term("dehumidifier", 30.3, Fill.LIGHT)),
                List.of(
                        term("still in the coats", 63.4, Fill.GREY),
                        new Term("in walls", "given up by the walls", -1.3, Fill.CROSS)),
                new OnTheWay(0, List.of(new Part("sucked back by plaster and stone", 0)), "dried off again"));
    }

    /** A few litres in all, one decimal; much more condensed than was put in. */
    static WaterAccountChart small() {
        return chart(
                List.of(term("laid in the coats", 4.26, Fill.GREY), term("misting", 0.33, Fill.DOTS)),
                List.of(term("out by doors and leaks", 1.04, Fill.WHITE)),
                List.of(term("still in the coats", 3.55, Fill.GREY)),
                new OnTheWay(9.1, List.of(new Part("sucked back by plaster and stone", 9)), "dried off again"));
    }

    /** Many names, long ones, none large. */
    static WaterAccountChart crowded() {
        return chart(
                List.of(
                        term("small first: brought in by wet sand and by rain through the roof", 5, Fill.DOTS),
                        term("laid in the coats of the north wall, the gable and the ceiling", 20, Fill.GREY),
                        term("from the floor", 9, Fill.GREY),
                        term("people working", 11, Fill.GREY),
                        term("made by burning gas", 7, Fill.GREY),
                        term("misting", 3, Fill.GREY),
                        term("tiny one", 0.4, Fill.GREY),
                        term("tiny two", 0.4, Fill.GREY),
                        term("tiny three", 0.4, Fill.GREY),
                        term("tiny four", 0.1, Fill.GREY)),
                List.of(
                        term("out by doors and leaks", 0.2, Fill.WHITE),
                        term("dehumidifier", 0.2, Fill.LIGHT),
                        term("through walls", 0.1, Fill.LIGHT)),
                List.of(term("still in the coats", 50.1, Fill.GREY), term("in walls", 5.7, Fill.GREY)),
                new OnTheWay(
                        1234.5,
                        List.of(new Part("sucked back by plaster and stone", 1200), new Part("ran off the glass", 9)),
                        "dried off again"));
    }

    static WaterAccountChart nothing() {
        return chart(List.of(), List.of(), List.of(), new OnTheWay(0, List.of(), "dried off again"));
    }
}
