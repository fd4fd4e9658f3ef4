package org.limedry.cli.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/**
 * Twin experiments: whether what a fit states holds where the truth is known, because we made it up. A hundred take an hour on two
 * cores, so the build makes one and {@code -Dlimedry.twins=100} makes them all and writes docs/fit-twins.md.
 */
final class TwinExperimentsTest {
    private static final int WEEKS = 4;
    private static final int MEMBERS = SiteFit.POINTS;

    @TempDir
    Path folder;

    /** PINNED: the truth lies in a range of four in five for about four seeds in five; this is one of them. */
    @Test
    void oneTwin_isFound() {
        TwinCase twin = TwinCase.of(2, 2, MEMBERS, folder);

        TwinCase.Week last = twin.weeks().get(1);
        assertTrue(last.usable());
        assertFalse(last.told().isEmpty());
        assertTrue(last.holds(twin.ready()), twin + "");
    }

    @Test
    @EnabledIfSystemProperty(named = "limedry.twins", matches = "\\d+")
    void allTwins_holdWhatTheyState() throws IOException {
        int count = Integer.getInteger("limedry.twins");
        List<TwinCase> cases = IntStream.rangeClosed(1, count)
                .parallel()
                .mapToObj(seed -> TwinCase.of(seed, WEEKS, MEMBERS, folder(seed)))
                .toList();
        TwinReport report = new TwinReport(cases);
        report.write(Path.of("..", "docs"));
        assertEquals(List.of(), report.broken());
    }

    private Path folder(int seed) {
        try {
            return Files.createDirectories(folder.resolve("twin-" + seed));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
