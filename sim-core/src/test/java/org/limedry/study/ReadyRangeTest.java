package org.limedry.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import org.apache.commons.math3.stat.descriptive.rank.Percentile.EstimationType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.limedry.simulation.Outcome.CoatResult;

final class ReadyRangeTest {
    private static final int NEVER = StudyFixture.RUN_DAYS;

    // EXACT: 16 members on days 1 to 16: h = 0.2 * 17 = 3.4 and 0.8 * 17 = 13.6 days; the likely run on day 7.
    @Test
    void of_sixteenMembersADayApart_isTheOneInFiveAndFourInFiveDate() {
        ReadyRange range = ReadyRange.of(likely(7), members(1, 16));

        assertEquals(StudyFixture.ready(3.4), range.earliest());
        assertEquals(StudyFixture.ready(7.0), range.likely());
        assertEquals(StudyFixture.ready(13.6), range.latest());
        assertFalse(range.widened());
    }

    // EXACT: h = 13.6 leans on the 14th of 16: with three or more members missing there is no date, with two there is.
    @ParameterizedTest
    @CsvSource({"45, true", "46, true", "47, false", "52, false", "59, false"})
    void of_membersThatAreNeverReady_hasADateOnlyBeforeThem(int firstDay, boolean dated) {
        ReadyRange range = ReadyRange.of(likely(firstDay), members(firstDay, firstDay + 15));

        assertEquals(dated, range.latest().isPresent());
    }

    // EXACT: h = 3.4 leans on the 4th of 16: with thirteen or more members missing there is no earliest date but the
    // likely.
    @ParameterizedTest
    @CsvSource({"56, true", "57, false"})
    void of_mostMembersNeverReady_hasAnEarliestDateOnlyBeforeThem(int firstDay, boolean dated) {
        ReadyRange range = ReadyRange.of(likely(NEVER), members(firstDay, firstDay + 15));

        assertEquals(dated, range.earliest().isPresent());
    }

    // EXACT: with none ready every date is missing, and nothing is widened.
    @Test
    void of_nothingReady_isEmpty() {
        ReadyRange range = ReadyRange.of(likely(NEVER), members(NEVER, NEVER + 15));

        assertEquals(Optional.empty(), range.earliest());
        assertEquals(Optional.empty(), range.likely());
        assertEquals(Optional.empty(), range.latest());
        assertFalse(range.widened());
    }

    // EXACT: a likely date before or after both quantiles takes the place of the nearer one.
    @Test
    void of_aLikelyDateOutsideTheMembers_isWidenedToIt() {
        ReadyRange early = ReadyRange.of(likely(2), members(10, 25));
        ReadyRange late = ReadyRange.of(likely(40), members(10, 25));

        assertTrue(early.widened() && late.widened());
        assertEquals(StudyFixture.ready(2.0), early.earliest());
        assertEquals(StudyFixture.ready(22.6), early.latest());
        assertEquals(StudyFixture.ready(12.4), late.earliest());
        assertEquals(StudyFixture.ready(40.0), late.latest());
    }

    // EXACT: a likely run that is never ready lies past every date: no latest date is claimed.
    @Test
    void of_aLikelyRunThatIsNeverReady_hasNoLatestDate() {
        ReadyRange range = ReadyRange.of(likely(NEVER), members(10, 25));

        assertEquals(StudyFixture.ready(12.4), range.earliest());
        assertEquals(Optional.empty(), range.likely());
        assertEquals(Optional.empty(), range.latest());
        assertTrue(range.widened());
    }

    // EXACT: a hand test that passed is one date, whatever the members say.
    @Test
    void of_aHandTestThatPassed_collapses() {
        CoatResult passed = StudyFixture.coat(1, StudyFixture.ready(9.0), true);

        ReadyRange range = ReadyRange.of(passed, members(1, 16));

        assertEquals(StudyFixture.ready(9.0), range.earliest());
        assertEquals(StudyFixture.ready(9.0), range.likely());
        assertEquals(StudyFixture.ready(9.0), range.latest());
        assertTrue(range.byHand());
        assertFalse(range.widened());
    }

    @Property
    void of_anyDates_keepsTheirOrder(
            @ForAll @IntRange(min = 0, max = 70) int likelyDay,
            @ForAll @Size(min = 1, max = 20) List<@IntRange(min = 0, max = 70) Integer> days) {
        ReadyRange range = ReadyRange.of(
                likely(likelyDay), days.stream().map(ReadyRangeTest::coat).toList());

        Instant earliest = range.earliest().orElse(Instant.MAX);
        Instant likely = range.likely().orElse(Instant.MAX);
        Instant latest = range.latest().orElse(Instant.MAX);
        assertFalse(earliest.isAfter(likely) || likely.isAfter(latest));
        assertEquals(StudyFixture.ready(likelyDay), range.likely());
    }

    // COMPUTED: Commons Math 3.6.1, Percentile with EstimationType.R_6, on days.
    @Property
    void quantile_ofDates_isDefinitionSix(
            @ForAll @IntRange(min = 1, max = 99) int percent,
            @ForAll @Size(min = 1, max = 30) List<@IntRange(min = 0, max = 59) Integer> days) {
        double[] values = days.stream().mapToDouble(Integer::doubleValue).toArray();
        double expectedDays =
                new Percentile().withEstimationType(EstimationType.R_6).evaluate(values, percent);

        Optional<Instant> found =
                ReadyRange.quantile(days.stream().map(StudyFixture::ready).toList(), percent / 100.0);

        double foundDays =
                Duration.between(StudyFixture.FROM, found.orElseThrow()).toMillis() / 86.4e6;
        assertEquals(expectedDays, foundDays, 1e-6); // milliseconds in days, and roundings of the place
    }

    private static CoatResult likely(int day) {
        return coat(day);
    }

    private static List<CoatResult> members(int firstDay, int lastDay) {
        // From the last to the first: the order of the members must not matter.
        return IntStream.rangeClosed(firstDay, lastDay)
                .mapToObj(day -> coat(firstDay + lastDay - day))
                .toList();
    }

    private static CoatResult coat(int day) {
        return StudyFixture.coat(1, StudyFixture.ready(day), false);
    }
}
