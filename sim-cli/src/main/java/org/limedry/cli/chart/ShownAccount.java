package org.limedry.cli.chart;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.limedry.cli.chart.WaterAccountChart.OnTheWay;
import org.limedry.cli.chart.WaterAccountChart.Part;
import org.limedry.cli.chart.WaterAccountChart.Term;

/**
 * A water account as it is printed: no term negative, and parts that add up to their totals.
 *
 * @param putIn what came in
 * @param gone what left for good
 * @param stillHere what is still here
 * @param onTheWay what became of the water that condensed
 * @param totalIn sum of {@code putIn}
 * @param totalNow sum of {@code gone} and {@code stillHere}; the same as {@code totalIn} when the account closes
 * @param totalOnTheWay sum of {@code onTheWay}
 */
public record ShownAccount(
        List<ShownTerm> putIn,
        List<ShownTerm> gone,
        List<ShownTerm> stillHere,
        List<ShownTerm> onTheWay,
        BigDecimal totalIn,
        BigDecimal totalNow,
        BigDecimal totalOnTheWay) {
    private static final List<Fill> ON_THE_WAY_FILLS = List.of(Fill.HEAVY, Fill.DOTS, Fill.LIGHT, Fill.CROSS);

    public ShownAccount {
        putIn = List.copyOf(putIn);
        gone = List.copyOf(gone);
        stillHere = List.copyOf(stillHere);
        onTheWay = List.copyOf(onTheWay);
    }

    /**
     * One term as printed.
     *
     * @param name what to call it
     * @param litres litres, 0 or above, with the decimals to print
     * @param fill how its bar is filled
     */
    public record ShownTerm(String name, BigDecimal litres, Fill fill) {
        /** Returns name and figure in one line: "from the floor 14". */
        public String text() {
            return name + " " + Litres.text(litres);
        }
    }

    /** Returns what is gone. */
    public BigDecimal totalGone() {
        return total(gone);
    }

    /** Returns what is still here. */
    public BigDecimal totalStillHere() {
        return total(stillHere);
    }

    private BigDecimal total(List<ShownTerm> terms) {
        return Litres.sum(terms.stream().map(ShownTerm::litres).toList(), totalNow);
    }

    static ShownAccount of(WaterAccountChart chart) {
        List<Term> now =
                Stream.concat(chart.gone().stream(), chart.stillHere().stream()).toList();
        List<Term> in = withTurned(chart.putIn(), now);
        List<Term> gone = withTurned(chart.gone(), chart.putIn());
        List<Term> here =
                chart.stillHere().stream().filter(ShownAccount::positive).toList();
        List<Term> goneAndHere = Stream.concat(gone.stream(), here.stream()).toList();
        BigDecimal totalIn = Litres.shown(litres(in));
        BigDecimal totalNow = totalNow(litres(in), litres(goneAndHere));
        List<ShownTerm> shownNow = shown(goneAndHere, totalNow);
        OnTheWay way = chart.onTheWay();
        BigDecimal totalWay = Litres.shown(way.litres(), totalIn.scale());
        return new ShownAccount(
                shown(in, totalIn),
                shownNow.subList(0, gone.size()),
                shownNow.subList(gone.size(), shownNow.size()),
                shown(parts(way), totalWay),
                totalIn,
                totalNow,
                totalWay);
    }

    /** A closed account shows one total, though its two sums may lie on either side of a half litre. */
    private static BigDecimal totalNow(double inLitres, double nowLitres) {
        BigDecimal totalIn = Litres.shown(inLitres);
        double unit = Math.pow(10, -totalIn.scale());
        boolean closed = Math.abs(inLitres - nowLitres) < 0.1 * unit;
        return closed ? totalIn : Litres.shown(nowLitres, totalIn.scale());
    }

    /** Returns the terms of one side, with those of the other side that are negative and so belong here. */
    private static List<Term> withTurned(List<Term> own, List<Term> others) {
        return Stream.concat(own.stream(), others.stream().map(Term::turned))
                .filter(ShownAccount::positive)
                .toList();
    }

    private static boolean positive(Term term) {
        return term.litres() > 0;
    }

    private static double litres(List<Term> terms) {
        return terms.stream().mapToDouble(Term::litres).sum();
    }

    private static List<ShownTerm> shown(List<Term> terms, BigDecimal total) {
        List<BigDecimal> shares = Litres.shares(terms.stream().map(Term::litres).toList(), total);
        return IntStream.range(0, terms.size())
                .mapToObj(i -> new ShownTerm(
                        terms.get(i).name(), shares.get(i), terms.get(i).fill()))
                .toList();
    }

    private static List<Term> parts(OnTheWay way) {
        List<Term> terms = new ArrayList<>();
        double rest = way.litres();
        for (Part part : way.parts()) {
            double litres = Math.min(part.litres(), rest);
            Fill fill = ON_THE_WAY_FILLS.get(terms.size() % ON_THE_WAY_FILLS.size());
            terms.add(new Term(part.name(), part.name(), litres, fill));
            rest -= litres;
        }
        terms.add(new Term(way.restName(), way.restName(), Math.max(0, rest), Fill.WHITE));
        return terms.stream().filter(ShownAccount::positive).toList();
    }
}
