package org.limedry.cli.chart;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.limedry.cli.chart.ShownAccount.ShownTerm;

/** Makes bars out of terms: terms too small to be seen are joined, and no two neighbours are filled alike. */
final class AccountJoin {
    private static final double TINY_SHARE = 0.02;
    private static final int MOST_NAMES = 2;
    private static final String OTHERS = "small amounts, see the table";

    private AccountJoin() {}

    /** Returns the terms of one group, those under 2 % of the total joined at its end. */
    static List<ShownTerm> joined(List<ShownTerm> terms, BigDecimal total) {
        List<ShownTerm> seen =
                terms.stream().filter(term -> term.litres().signum() > 0).toList();
        List<ShownTerm> tiny = seen.stream().filter(term -> tiny(term, total)).toList();
        Stream<ShownTerm> large = seen.stream().filter(term -> !tiny(term, total));
        return tiny.isEmpty()
                ? seen
                : Stream.concat(large, Stream.of(join(tiny, total))).toList();
    }

    private static boolean tiny(ShownTerm term, BigDecimal total) {
        return term.litres().doubleValue() < TINY_SHARE * total.doubleValue();
    }

    private static ShownTerm join(List<ShownTerm> tiny, BigDecimal total) {
        String name = tiny.size() <= MOST_NAMES
                ? tiny.stream().map(ShownTerm::name).collect(Collectors.joining(", "))
                : OTHERS;
        BigDecimal litres = Litres.sum(tiny.stream().map(ShownTerm::litres).toList(), total);
        return new ShownTerm(name, litres, tiny.get(0).fill());
    }

    /** Returns the same terms, each filled unlike the one before it. */
    static List<ShownTerm> filledApart(List<ShownTerm> terms) {
        List<ShownTerm> apart = new ArrayList<>();
        for (ShownTerm term : terms) {
            boolean alike = !apart.isEmpty() && apart.get(apart.size() - 1).fill() == term.fill();
            apart.add(alike ? new ShownTerm(term.name(), term.litres(), other(apart)) : term);
        }
        return apart;
    }

    /** Returns the fill that the bars so far have used least, the last one apart. */
    private static Fill other(List<ShownTerm> apart) {
        Fill last = apart.get(apart.size() - 1).fill();
        return Stream.of(Fill.HEAVY, Fill.DOTS, Fill.CROSS, Fill.LIGHT, Fill.WHITE, Fill.GREY)
                .filter(fill -> fill != last)
                .min((a, b) -> Long.compare(uses(apart, a), uses(apart, b)))
                .orElseThrow();
    }

    private static long uses(List<ShownTerm> terms, Fill fill) {
        return terms.stream().filter(term -> term.fill() == fill).count();
    }
}
