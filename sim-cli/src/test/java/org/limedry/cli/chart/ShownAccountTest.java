package org.limedry.cli.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.limedry.cli.chart.ShownAccount.ShownTerm;
import org.limedry.cli.chart.WaterAccountChart.OnTheWay;
import org.limedry.cli.chart.WaterAccountChart.Part;
import org.limedry.cli.chart.WaterAccountChart.Term;

final class ShownAccountTest {
    private static final OnTheWay NONE = new OnTheWay(0, List.of(), "dried off again");

    private static List<String> lines(List<ShownTerm> terms) {
        return terms.stream().map(ShownTerm::text).toList();
    }

    // EXACT: sums of the sample's terms: 235.1 in, 186.2 gone, 48.9 still here; 235 shown on both sides.
    @Test
    void of_theStall_showsPartsThatAddUp() {
        ShownAccount shown = AccountSamples.stall().shown();

        assertEquals(new BigDecimal("235"), shown.totalIn());
        assertEquals(new BigDecimal("235"), shown.totalNow());
        assertEquals(new BigDecimal("186"), shown.totalGone());
        assertEquals(new BigDecimal("49"), shown.totalStillHere());
    }

    @Test
    void of_airThatBringsWaterIn_movesItToTheOtherBarUnderItsOtherName() {
        ShownAccount shown = AccountSamples.wetOutside().shown();

        // EXACT: 80 + 12.4 + 1.3 = 93.7, shown as 94; the unit left goes to 12.4, which lost most.
        assertEquals(
                List.of("laid in the coats 80", "taken in from outside air 13", "given up by the walls 1"),
                lines(shown.putIn()));
        assertEquals(List.of("dehumidifier 30"), lines(shown.gone()));
        assertEquals(List.of("still in the coats 64"), lines(shown.stillHere()));
    }

    @Test
    void of_floorThatDrinks_movesItToWhatIsGone() {
        Term laid = AccountSamples.term("laid in the coats", 30, Fill.GREY);
        Term floor = new Term("from the floor", "drunk by the floor", -12, Fill.CROSS);
        Term coats = AccountSamples.term("still in the coats", 18, Fill.GREY);

        ShownAccount shown = AccountSamples.chart(List.of(laid, floor), List.of(), List.of(coats), NONE)
                .shown();

        assertEquals(List.of("laid in the coats 30"), lines(shown.putIn()));
        assertEquals(List.of("drunk by the floor 12"), lines(shown.gone()));
    }

    // EXACT: both sums are 20.5 but for rounding, and lie on either side of the half litre.
    @Test
    void of_sumsOnEitherSideOfAHalfLitre_showsOneTotal() {
        Term laid = AccountSamples.term("laid in the coats", 20.5 - 1e-9, Fill.GREY);
        Term coats = AccountSamples.term("still in the coats", 20.5 + 1e-9, Fill.GREY);

        ShownAccount shown = AccountSamples.chart(List.of(laid), List.of(), List.of(coats), NONE)
                .shown();

        assertEquals(shown.totalIn(), shown.totalNow());
    }

    // EXACT: 20 litres came in, 15 are accounted for.
    @Test
    void of_anAccountThatDoesNotClose_hidesNothing() {
        Term laid = AccountSamples.term("laid in the coats", 20, Fill.GREY);
        Term coats = AccountSamples.term("still in the coats", 15, Fill.GREY);

        ShownAccount shown = AccountSamples.chart(List.of(laid), List.of(), List.of(coats), NONE)
                .shown();

        assertEquals(new BigDecimal("20"), shown.totalIn());
        assertEquals(new BigDecimal("15"), shown.totalNow());
    }

    // EXACT: 40.7 = 27.9 + 8.6 + 4.2; shown 41 = 28 + 9 + 4.
    @Test
    void of_waterThatCondensed_givesTheRestItsName() {
        ShownAccount shown = AccountSamples.stall().shown();

        assertEquals(
                List.of("sucked back by plaster and stone 28", "ran off the glass 9", "dried off again 4"),
                lines(shown.onTheWay()));
        assertEquals(new BigDecimal("41"), shown.totalOnTheWay());
    }

    // EXACT: the parts claim 12 of 10 litres; the second gets what the first leaves.
    @Test
    void of_partsThatClaimMoreThanCondensed_areHeldToIt() {
        OnTheWay way = new OnTheWay(10, List.of(new Part("sucked back", 8), new Part("ran off", 4)), "dried off again");
        Term laid = AccountSamples.term("laid in the coats", 30, Fill.GREY);

        ShownAccount shown = AccountSamples.chart(
                        List.of(laid), List.of(), List.of(AccountSamples.term("in the coats", 30, Fill.GREY)), way)
                .shown();

        assertEquals(List.of("sucked back 8", "ran off 2"), lines(shown.onTheWay()));
    }

    @Property(tries = 200)
    void of_anySigns_showsNoNegativeTermAndClosedSums(
            @ForAll @Size(min = 7, max = 7) List<@DoubleRange(min = -300, max = 300) Double> litres) {
        double balance = litres.get(0)
                + litres.get(1)
                + litres.get(2)
                - litres.get(3)
                - litres.get(4)
                - litres.get(5)
                - litres.get(6);
        List<Term> in = terms("in", litres.subList(0, 3));
        List<Term> gone = terms("gone", litres.subList(3, 5));
        List<Term> here = Stream.concat(
                        terms("here", litres.subList(5, 7)).stream(),
                        Stream.of(AccountSamples.term("balance", balance, Fill.GREY)))
                .toList();

        ShownAccount shown = AccountSamples.chart(in, gone, here, NONE).shown();

        assertEquals(shown.totalIn(), shown.totalNow());
        assertEquals(shown.totalIn(), sum(shown.putIn(), shown.totalIn()));
        assertEquals(shown.totalNow(), shown.totalGone().add(shown.totalStillHere()));
        Stream.of(shown.putIn(), shown.gone(), shown.stillHere())
                .flatMap(List::stream)
                .forEach(term -> assertTrue(term.litres().signum() >= 0));
    }

    private static List<Term> terms(String name, List<Double> litres) {
        return litres.stream()
                .map(some -> AccountSamples.term(name, some, Fill.GREY))
                .toList();
    }

    private static BigDecimal sum(List<ShownTerm> terms, BigDecimal like) {
        return Litres.sum(terms.stream().map(ShownTerm::litres).toList(), like);
    }
}
