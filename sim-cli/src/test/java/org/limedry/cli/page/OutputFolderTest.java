package org.limedry.cli.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.limedry.cli.problem.BadInputException;

/** EXACT: names and counts are those that each test puts in. */
final class OutputFolderTest {
    private static final List<Path> FILES = List.of(Path.of("report.html"), Path.of("room", "hours.csv"));

    @TempDir
    Path temp;

    @Test
    void newFolder_isThereOnlyOnceItIsPublished() throws IOException {
        Path target = temp.resolve("jobs").resolve("out");

        try (OutputFolder folder = OutputFolder.open(target, FILES)) {
            write(folder.aside(), "report.html", "new");
            assertFalse(Files.exists(target.getParent()));
            folder.publish();
        }

        assertEquals("new", Files.readString(target.resolve("report.html")));
        assertEquals(List.of("jobs"), names(temp));
    }

    @Test
    void runThatIsGivenUp_leavesTheEarlierFilesAsTheyWere() throws IOException {
        Path target = Files.createDirectory(temp.resolve("out"));
        write(target, "report.html", "old");

        try (OutputFolder folder = OutputFolder.open(target, FILES)) {
            write(folder.aside(), "report.html", "half of the n");
        }

        assertEquals("old", Files.readString(target.resolve("report.html")));
        assertEquals(List.of("report.html"), names(target));
        assertEquals(List.of("out"), names(temp));
    }

    @Test
    void publish_replacesOursAndKeepsOthers() throws IOException {
        Path target = Files.createDirectory(temp.resolve("out"));
        write(target, "report.html", "old");
        write(target, "photo.jpg", "theirs");

        try (OutputFolder folder = OutputFolder.open(target, FILES)) {
            write(folder.aside(), "report.html", "new");
            write(Files.createDirectory(folder.aside().resolve("room")), "hours.csv", "rows");
            folder.publish();
        }

        assertEquals("new", Files.readString(target.resolve("report.html")));
        assertEquals("theirs", Files.readString(target.resolve("photo.jpg")));
        assertEquals("rows", Files.readString(target.resolve("room").resolve("hours.csv")));
        assertEquals(List.of("photo.jpg", "report.html", "room"), names(target));
    }

    @Test
    void fileInPlaceOfTheFolder_isRefused() throws IOException {
        write(temp, "out", "a file");

        BadInputException refused =
                assertThrows(BadInputException.class, () -> OutputFolder.open(temp.resolve("out"), FILES));

        assertEquals(1, refused.problems().size());
        assertTrue(refused.problems().get(0).text().contains("is a file"), refused.getMessage());
        assertEquals(List.of("out"), names(temp));
    }

    @Test
    void fileAboveTheFolder_isRefused() throws IOException {
        write(temp, "out", "a file");

        assertThrows(
                BadInputException.class,
                () -> OutputFolder.open(temp.resolve("out").resolve("deeper"), FILES));
    }

    @Test
    void folderInPlaceOfAFile_isRefused() throws IOException {
        Files.createDirectories(temp.resolve("out").resolve("report.html"));

        BadInputException refused =
                assertThrows(BadInputException.class, () -> OutputFolder.open(temp.resolve("out"), FILES));

        assertTrue(refused.problems().get(0).text().contains("report.html is a folder"), refused.getMessage());
    }

    private static void write(Path folder, String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }
}
