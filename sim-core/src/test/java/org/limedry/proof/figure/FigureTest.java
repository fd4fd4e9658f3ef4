package org.limedry.proof.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class FigureTest {
    private static Figure figure(Expected expected, Standing standing, double found) {
        Source source = new Source(Label.EXACT, "a sum");
        return new Figure("case", "part", new Claim("length", "m", source, expected, "a reason", standing), found);
    }

    // EXACT: 7.5 less or more 0.5.
    @ParameterizedTest
    @CsvSource({"7.0, IN, 1.0", "8.0, IN, 1.0", "7.25, IN, 0.5", "6.75, OUTSIDE, 1.5", "8.5, OUTSIDE, 2.0", "7.5, IN, 0"
    })
    void verdict_nearANumber_isInUpToTheTolerance(double found, Verdict verdict, double share) {
        Figure figure = figure(Expected.between(7.0, 8.0), new Standing.Sound(), found);

        assertEquals(verdict, figure.verdict());
        assertEquals(share, figure.share());
        assertEquals(found - 7.5, figure.difference());
    }

    @Test
    void verdict_ofOneSidedBands_isOutsideOnTheOtherSideOnly() {
        Standing sound = new Standing.Sound();

        assertEquals(Verdict.IN, figure(Expected.atLeast(2.5), sound, 2.5).verdict());
        assertEquals(Verdict.IN, figure(Expected.atLeast(2.5), sound, 1.0e9).verdict());
        assertEquals(0.0, figure(Expected.atLeast(2.5), sound, 1.0e9).share());
        assertEquals(Verdict.OUTSIDE, figure(Expected.atLeast(2.5), sound, 2.49).verdict());
        assertEquals(
                Double.POSITIVE_INFINITY,
                figure(Expected.atLeast(2.5), sound, 2.49).share());
        assertEquals(Verdict.IN, figure(Expected.atMost(2.5), sound, -3.0).verdict());
        assertEquals(Verdict.OUTSIDE, figure(Expected.atMost(2.5), sound, 2.51).verdict());
    }

    @Test
    void verdict_ofNotANumber_isOutsideWhateverIsAccepted() {
        assertEquals(
                Verdict.OUTSIDE,
                figure(Expected.near(2.5, 1.0e9), new Standing.Sound(), Double.NaN)
                        .verdict());
        assertEquals(
                Verdict.OUTSIDE,
                figure(Expected.atLeast(2.5), new Standing.Sound(), Double.NaN).verdict());
    }

    @Test
    void verdict_withSomethingKnown_saysWhetherTheSourceOrWeFallShort() {
        Standing misprint = new Standing.SourceInError("a digit swapped");
        Standing known = new Standing.KnownShort("too coarse");

        assertEquals(
                Verdict.SOURCE_IN_ERROR,
                figure(Expected.near(2.5, 0.5), misprint, 4.0).verdict());
        assertEquals(Verdict.IN, figure(Expected.near(2.5, 0.5), misprint, 2.6).verdict());
        assertEquals(
                Verdict.OUTSIDE, figure(Expected.near(2.5, 0.5), known, 4.0).verdict());
        assertEquals("a digit swapped", misprint.reason());
        assertEquals("too coarse", known.reason());
        assertEquals("", new Standing.Sound().reason());
    }

    @Test
    void expected_withoutANumber_isRefused() {
        assertThrows(IllegalArgumentException.class, () -> Expected.near(Double.NaN, 0.5));
        assertThrows(IllegalArgumentException.class, () -> Expected.near(2.5, -0.5));
        assertThrows(IllegalArgumentException.class, () -> Expected.near(2.5, Double.NaN));
    }
}
