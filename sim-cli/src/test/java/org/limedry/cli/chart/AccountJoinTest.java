package org.limedry.cli.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.limedry.cli.chart.ShownAccount.ShownTerm;

final class AccountJoinTest {
    private static final BigDecimal HUNDRED = new BigDecimal("100");

    private static ShownTerm term(String name, String litres) {
        return new ShownTerm(name, new BigDecimal(litres), Fill.GREY);
    }

    private static List<String> joined(ShownTerm... terms) {
        return AccountJoin.joined(List.of(terms), HUNDRED).stream()
                .map(ShownTerm::text)
                .toList();
    }

    // EXACT: terms under 2 % are joined, as the page standard asks; 2 of 100 is not under it.
    @Test
    void joined_termsUnderTwoPercent_becomeOneAtTheEnd() {
        assertEquals(
                List.of("in walls 2", "in coats 96", "in air, on glass 2"),
                joined(term("in air", "1"), term("in walls", "2"), term("on glass", "1"), term("in coats", "96")));
    }

    @Test
    void joined_manySmallTerms_areNotListedByName() {
        assertEquals(List.of("small amounts, see the table 3"), joined(term("a", "1"), term("b", "1"), term("c", "1")));
    }

    @Test
    void joined_termsShownAsNothing_areLeftOut() {
        assertEquals(List.of("in coats 99"), joined(term("in coats", "99"), term("in air", "0")));
    }

    @Test
    void filledApart_termsFilledAlike_differFromTheirNeighbours() {
        List<ShownTerm> apart = AccountJoin.filledApart(
                List.of(term("a", "20"), term("b", "20"), term("c", "20"), term("d", "20"), term("e", "20")));

        IntStream.range(1, apart.size())
                .forEach(i ->
                        assertNotEquals(apart.get(i - 1).fill(), apart.get(i).fill()));
    }
}
