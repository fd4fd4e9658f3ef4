package org.limedry.cli.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.limedry.cli.chart.DryingChart.Coat;

/** The wording of dates, in a run that ends with 31 January. */
final class ReadyWordsTest {
    private static final Timeline T = DryingSamples.WINTER;

    private static Coat coat(Optional<Instant> laid, Ready ready) {
        return new Coat("North wall", "first coat", laid, List.of(), ready);
    }

    private static String words(Ready ready) {
        return new ReadyWords(T).shortForm(coat(Optional.of(T.from()), ready)).replace('\u00a0', ' ');
    }

    private static String sentence(Ready ready) {
        return new ReadyWords(T).sentence(coat(Optional.of(T.from()), ready));
    }

    // EXACT: day 45 of a run from 2 November is 17 December, day 66 is 7 January, day 81 is 22 January.
    @Test
    void shortForm_rangeWithinTheRun_saysTheLikelyDate() {
        Ready range = DryingSamples.range(T, 45, 66, 81);

        assertEquals("likely 7 Jan", words(range));
        assertEquals(
                "likely ready on 7 January, on 17 December if all goes well, on 22 January if not", sentence(range));
    }

    @Test
    void shortForm_lateEndPastTheRun_saysSo() {
        Ready range = DryingSamples.range(T, 45, 66);

        assertEquals("likely 7 Jan, after 31 Jan if not", words(range));
        assertEquals(
                "likely ready on 7 January, on 17 December if all goes well, after 31 January if not", sentence(range));
    }

    @Test
    void shortForm_likelyDatePastTheRun_keepsTheEarliest() {
        Ready range = DryingSamples.range(T, 45);

        assertEquals("likely after 31 Jan, 17 Dec if all goes well", words(range));
        assertEquals("not likely ready by 31 January, on 17 December if all goes well", sentence(range));
    }

    @Test
    void shortForm_noDate_neverIsADash() {
        assertEquals("not by 31 Jan, the end of the run", words(DryingSamples.range(T)));
        assertEquals("not by 31 Jan, the end of the run", words(new Ready.LikelyOnly(Optional.empty())));
        assertEquals(
                "not laid by 31\u00a0Jan", new ReadyWords(T).shortForm(coat(Optional.empty(), DryingSamples.range(T))));
    }

    @Test
    void shortForm_handTest_overrules() {
        assertEquals("your test, 17 Dec", words(new Ready.ByHand(DryingSamples.day(T, 45))));
        assertEquals("ready by your test on 17 December", sentence(new Ready.ByHand(DryingSamples.day(T, 45))));
    }

    @Test
    void shortForm_dateAfterTheRun_countsAsPastIt() {
        assertEquals("not by 31 Jan, the end of the run", words(DryingSamples.range(T, 100, 120, 140)));
    }

    @Test
    void range_datesOutOfOrder_areRefused() {
        assertThrows(IllegalArgumentException.class, () -> DryingSamples.range(T, 66, 45, 81));
        assertThrows(
                IllegalArgumentException.class,
                () -> new Ready.Range(Optional.empty(), Optional.of(T.from()), Optional.empty()));
    }
}
