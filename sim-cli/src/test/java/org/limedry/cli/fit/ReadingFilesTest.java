package org.limedry.cli.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.limedry.cli.Cli;
import org.limedry.cli.site.Site;
import org.limedry.cli.site.SiteReader;

/**
 * The files that a site names under readings, before anything is fitted to them: the shipped boat store with its second week changed.
 * EXACT: exit code 2 is that of bad input. PINNED: sentences are our own.
 */
final class ReadingFilesTest {
    private static final Path BOAT_STORE = Path.of("..", "docs", "examples", "boat-store");
    private static final String LOGGER = "    - {file: week2/store.csv, room: store}\n";

    @TempDir
    Path folder;

    @BeforeEach
    void copyTheBoatStore() throws IOException {
        Files.createDirectory(folder.resolve("week2"));
        for (String file : List.of("week2.yaml", "week2/store.csv", "week2/yard.csv", "week2/diary.csv")) {
            Files.copy(BOAT_STORE.resolve(file), folder.resolve(file));
        }
    }

    private void edit(String file, UnaryOperator<String> change) throws IOException {
        Path path = folder.resolve(file);
        String before = Files.readString(path);
        String after = change.apply(before);
        assertFalse(before.equals(after), "nothing was changed in " + file);
        Files.writeString(path, after);
    }

    private Cli fit() {
        return Cli.run("fit", folder.resolve("week2.yaml"));
    }

    private Site site() {
        SiteReader.Result result = SiteReader.read(folder.resolve("week2.yaml"));
        assertTrue(result instanceof SiteReader.Good, () -> ((SiteReader.Bad) result).problems().toString());
        return ((SiteReader.Good) result).site();
    }

    private ReadingsToFit readings() {
        Site site = site();
        return ReadingsToFit.of(site, site.readings().orElseThrow());
    }

    private void assertBadInput(String sentence) {
        Cli fitted = fit();
        assertEquals(2, fitted.code(), fitted.out() + fitted.err());
        assertTrue(fitted.err().contains(sentence), fitted.err());
    }

    @Test
    void sameFile_namedTwiceInARoom_isRefusedWithItsPlace() throws IOException {
        edit("week2.yaml", text -> text.replace(LOGGER, LOGGER + LOGGER));

        assertBadInput("week2.yaml:36: readings.loggers[1].file: \"week2/store.csv\", named at readings.loggers[0].file"
                + " already; must be named only once");
    }

    @Test
    void sameFile_byAnotherWayOrAsTheYard_isRefused() throws IOException {
        edit("week2.yaml", text -> text.replace(LOGGER, LOGGER + LOGGER.replace("week2/", "./week2/../week2/")));
        assertBadInput("readings.loggers[1].file: \"./week2/../week2/store.csv\", named at readings.loggers[0].file already");

        edit("week2.yaml", text -> text.replace("outdoors: week2/yard.csv", "outdoors: week2/store.csv"));
        assertBadInput("readings.outdoors: \"week2/store.csv\", named at readings.loggers[0].file already");
    }

    @Test
    void filesOfOneName_inTwoFolders_areTwoLoggers() throws IOException {
        Files.createDirectory(folder.resolve("attic"));
        Files.copy(folder.resolve("week2/store.csv"), folder.resolve("attic/store.csv"));
        edit("week2.yaml", text -> text.replace(LOGGER, LOGGER + LOGGER.replace("week2/", "attic/")));

        List<String> channels = readings().list().stream()
                .map(reading -> reading.channel())
                .filter(channel -> channel.startsWith("room humidity"))
                .distinct()
                .toList();

        // EXACT: named as the site file writes them.
        assertEquals(List.of("room humidity, week2/store.csv", "room humidity, attic/store.csv"), channels);
    }
}
