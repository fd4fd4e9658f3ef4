package org.limedry.cli.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/**
 * Twin experiments: whether what a fit states holds where the truth is known, because we made it up. A hundred take an hour on two
 * cores, so the build makes one anew and the page from those that were made; {@code -Dlimedry.twins=101-200} makes those of
 * these seeds and puts them into docs/fit-twins.csv.
 */
final class TwinExperimentsTest {
    private static final int WEEKS = 4;
    private static final int MEMBERS = SiteFit.POINTS;
    private static final Path DOCS = Path.of("..", "docs");
    private static final Path FILE = DOCS.resolve("fit-twins.csv");

    /** Another machine rounds otherwise, and a fit that ends elsewhere by a little moves a date from one hour to the next. */
    private static final double SAME_DAYS = 0.1;

    @TempDir
    Path folder;

    /** COMPUTED: by the command in docs/fit.md. The first of them; two weeks of four, for their time. */
    @Test
    void file_isWhatTheFitSaysToday() throws IOException {
        TwinCase kept = TwinFile.read(FILE).get(0);

        TwinCase made = TwinCase.of(kept.seed(), 2, MEMBERS, folder);

        assertSame(kept.ready(), made.ready());
        for (int week = 0; week < made.weeks().size(); week++) {
            TwinCase.Week then = kept.weeks().get(week);
            TwinCase.Week now = made.weeks().get(week);
            assertSame(then.likely(), now.likely());
            assertSame(then.oneInTen(), now.oneInTen());
            assertSame(then.half(), now.half());
            assertSame(then.nineInTen(), now.nineInTen());
            assertEquals(then.told(), now.told());
        }
    }

    private static void assertSame(Instant kept, Instant made) {
        assertEquals(0.0, TwinCase.days(kept, made), SAME_DAYS, "stale: make the twins anew, as docs/fit.md says");
    }

    /** EXACT: the page holds what the file holds. {@code -Dlimedry.write=true} writes both anew. */
    @Test
    void page_isMadeFromTheFile() throws IOException {
        TwinReport report = new TwinReport(TwinFile.read(FILE));
        if (Boolean.getBoolean("limedry.write")) {
            report.write(DOCS);
        }

        assertEquals(report.page(), Files.readString(DOCS.resolve("fit-twins.md")));
        assertEquals(report.chart(), Files.readString(DOCS.resolve("demo/fit-coverage.svg")));
    }

    /** The claim itself: each week the share that lies inside, of all that were ever made. */
    @Test
    void statedRanges_holdWhatTheyState_andNarrow() throws IOException {
        assertEquals(List.of(), new TwinReport(TwinFile.read(FILE)).broken());
    }

    @Test
    @EnabledIfSystemProperty(named = "limedry.twins", matches = "\\d+-\\d+")
    void twins_areMade() throws IOException {
        int[] seeds = Stream.of(System.getProperty("limedry.twins").split("-"))
                .mapToInt(Integer::parseInt)
                .toArray();
        List<TwinCase> cases = IntStream.rangeClosed(seeds[0], seeds[1])
                .parallel()
                .mapToObj(seed -> TwinCase.of(seed, WEEKS, MEMBERS, folder(seed)))
                .toList();
        TwinFile.add(FILE, cases);
        assertEquals(
                cases.size(),
                TwinFile.read(FILE).stream()
                        .filter(one -> one.seed() >= seeds[0] && one.seed() <= seeds[1])
                        .count());
    }

    private Path folder(int seed) {
        try {
            return Files.createDirectories(folder.resolve("twin-" + seed));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
