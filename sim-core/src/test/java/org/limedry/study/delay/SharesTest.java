package org.limedry.study.delay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class SharesTest {
    /** Rounding of some dozen sums of days. */
    private static final double ROUNDING = 1e-9;

    private static double[] randomGame(long seed, int causes) {
        Random random = new Random(seed);
        return IntStream.range(0, 1 << causes)
                .mapToDouble(set -> 200 * random.nextDouble() - 50)
                .toArray();
    }

    private static double sum(List<Double> shares) {
        return shares.stream().mapToDouble(Double::doubleValue).sum();
    }

    // EXACT: where causes do not touch one another, each has what it does alone.
    @Test
    void shares_causesThatSimplyAddUp_areWhatEachDoesAlone() {
        double[] alone = {74, 21, 17, 4, -3};

        List<Double> shares = Shares.of(
                5,
                set -> IntStream.range(0, 5)
                        .filter(i -> (set & 1 << i) != 0)
                        .mapToDouble(i -> alone[i])
                        .sum());

        for (int i = 0; i < 5; i++) {
            assertEquals(alone[i], shares.get(i), ROUNDING); // rounding of the weights
        }
    }

    // EXACT: where only the number of causes counts, all have the same: the total over their number.
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 8})
    void shares_causesThatAreAlike_areTheSame(int causes) {
        List<Double> shares = Shares.of(causes, set -> Math.pow(Integer.bitCount(set), 2.0));

        shares.forEach(share -> assertEquals(causes, share, ROUNDING)); // n^2 / n; rounding of the weights
    }

    // EXACT: by hand. A left glove and two right ones: orders in which the left one, or a right one, makes the pair.
    @Test
    void shares_leftGloveAndTwoRightOnes_areFourOneAndOneSixths() {
        List<Double> shares = Shares.of(3, set -> (set & 1) != 0 && (set & 6) != 0 ? 1.0 : 0.0);

        assertEquals(4.0 / 6.0, shares.get(0), ROUNDING); // rounding of the weights
        assertEquals(1.0 / 6.0, shares.get(1), ROUNDING); // rounding of the weights
        assertEquals(1.0 / 6.0, shares.get(2), ROUNDING); // rounding of the weights
    }

    // EXACT: two causes that do 30 days only together share them evenly, by hand over both orders.
    @Test
    void shares_twoThatWorkOnlyTogether_areHalfEach() {
        assertEquals(List.of(15.0, 15.0), Shares.of(2, set -> set == 3 ? 30.0 : 0.0));
    }

    // EXACT: the shares add up to what all causes do together.
    @Property
    void shares_ofAnything_addUpToTheTotal(@ForAll long seed, @ForAll @IntRange(max = 7) int causes) {
        double[] values = randomGame(seed, causes);

        double sum = sum(Shares.of(causes, set -> values[set]));

        assertEquals(values[values.length - 1] - values[0], sum, ROUNDING); // rounding of some hundred sums
    }

    // EXACT: a cause that changes nothing, whatever else happens, has no share.
    @Property
    void shares_causeThatDoesNothing_isNothing(@ForAll long seed, @ForAll @IntRange(max = 4) int idle) {
        double[] values = randomGame(seed, 5);
        IntToDoubleFunction withoutIdle = set -> values[set & ~(1 << idle)];

        assertEquals(0.0, Shares.of(5, withoutIdle).get(idle)); // no tolerance: differences of equal numbers
    }

    // EXACT: naming the causes in another order only reorders the shares.
    @Property
    void shares_causesInAnotherOrder_areTheSame(@ForAll long seed, @ForAll @IntRange(min = 1, max = 4) int turn) {
        double[] values = randomGame(seed, 5);
        List<Double> shares = Shares.of(5, set -> values[set]);

        List<Double> turned = Shares.of(5, set -> values[turned(set, turn)]);

        for (int i = 0; i < 5; i++) {
            assertEquals(shares.get((i + turn) % 5), turned.get(i), ROUNDING); // other order of summing
        }
    }

    private static int turned(int set, int turn) {
        return ((set << turn) | (set >>> (5 - turn))) & 31;
    }

    // EXACT: by hand: floors 73, 20, 17, 4, 2 make 116 of 119; the three that lost most get one more.
    @Test
    void whole_fiveShares_addUpToTheTotal() {
        List<Long> whole = Shares.whole(List.of(73.9, 20.8, 17.1, 4.3, 2.9), 119);

        assertEquals(List.of(74L, 21L, 17L, 4L, 3L), whole);
    }

    // EXACT: by hand: floors 10, -3 make 7; the total of 8 goes to the one that lost most, -2.4 over 10.2.
    @Test
    void whole_negativeShare_isRoundedToo() {
        assertEquals(List.of(10L, -2L), Shares.whole(List.of(10.2, -2.4), 8));
    }

    // EXACT: whole numbers that add up to the total, none further off than the total is.
    @Property
    void whole_anyShares_addUpAndStayClose(@ForAll long seed, @ForAll @IntRange(min = 1, max = 6) int count) {
        Random random = new Random(seed);
        List<Double> shares = IntStream.range(0, count)
                .mapToObj(i -> 80 * random.nextDouble() - 20)
                .toList();
        long total = Math.round(sum(shares)) + random.nextInt(3) - 1;

        List<Long> whole = Shares.whole(shares, total);

        assertEquals(total, whole.stream().mapToLong(Long::longValue).sum());
        for (int i = 0; i < count; i++) {
            // a unit by rounding, two more where the total is off by one and a half and there is one share to bear it
            assertEquals(shares.get(i), whole.get(i), 2.5);
        }
    }

    @Test
    void shares_wrongArguments_areRefused() {
        assertThrows(IllegalArgumentException.class, () -> Shares.of(17, set -> 0.0));
        assertThrows(IllegalArgumentException.class, () -> Shares.of(1, set -> Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Shares.whole(List.of(), 1));
        assertThrows(IllegalArgumentException.class, () -> Shares.whole(List.of(Double.NaN), 1));
    }
}
