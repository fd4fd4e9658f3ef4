package org.limedry.cli.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.limedry.proof.figure.Claim;
import org.limedry.proof.figure.Expected;
import org.limedry.proof.figure.Figure;
import org.limedry.proof.figure.Label;
import org.limedry.proof.figure.Proof;
import org.limedry.proof.figure.Source;
import org.limedry.proof.figure.Standing;

final class CaseRunTest {
    /** A case that waits for another. */
    private record Waiting(String name, CountDownLatch before, CountDownLatch after, double found) implements Proof {
        @Override
        public Kind kind() {
            return Kind.TABLE;
        }

        @Override
        public String setUp() {
            return "made up";
        }

        @Override
        public String source() {
            return "made up";
        }

        @Override
        public String bands() {
            return "made up";
        }

        @Override
        public List<Figure> figures() {
            try {
                assertTrue(before.await(20, TimeUnit.SECONDS));
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
            after.countDown();
            return List.of(figure(name, found, new Standing.Sound()));
        }
    }

    private static Figure figure(String name, double found, Standing standing) {
        Source source = new Source(Label.EXACT, "made up");
        Claim claim = new Claim("length", "m", source, Expected.near(3.5, 0.5), "made up", standing);
        return new Figure(name, "part", claim, found);
    }

    @Test
    void all_whenTheFirstEndsLast_keepsTheOrderAndTellsOfEach() {
        CountDownLatch open = new CountDownLatch(0);
        CountDownLatch second = new CountDownLatch(1);
        AtomicInteger done = new AtomicInteger();

        List<CaseRun> runs = CaseRun.all(
                List.of(new Waiting("a", second, open, 3.6), new Waiting("b", open, second, 4.6)),
                2,
                done::incrementAndGet);

        assertEquals(
                List.of("a", "b"), runs.stream().map(run -> run.proof().name()).toList());
        assertEquals(2, done.get());
        assertTrue(runs.get(0).isMet());
        assertFalse(runs.get(1).isMet());
    }

    // EXACT: 0.4 and 0.45 of 0.5 off; a misprint is further off but not ours; not a number is furthest.
    @Test
    void worst_ofFigures_isTheFurthestOffThatIsNotAMisprint() {
        Standing sound = new Standing.Sound();
        Figure near = figure("a", 3.9, sound);
        Figure far = figure("a", 3.05, sound);
        Figure misprint = figure("a", 9.0, new Standing.SourceInError("a digit too many"));

        assertEquals(far, CaseRun.worst(List.of(near, misprint, far)));
        assertEquals(misprint, CaseRun.worst(List.of(misprint)));
        Figure none = figure("a", Double.NaN, sound);
        assertEquals(none, CaseRun.worst(List.of(far, none, near)));
    }
}
