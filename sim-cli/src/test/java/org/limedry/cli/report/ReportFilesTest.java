package org.limedry.cli.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class ReportFilesTest {
    @TempDir
    Path temp;

    @Test
    void write_makesAllTheFilesThatAreNamed() throws IOException {
        ReportFiles.write(Invented.oneRoom(), temp);

        try (Stream<Path> all = Files.list(temp)) {
            List<String> found =
                    all.map(path -> path.getFileName().toString()).sorted().toList();
            assertEquals(ReportFiles.names().stream().sorted().toList(), found);
        }
        assertTrue(ImageIO.read(temp.resolve("drying.png").toFile()).getWidth() > 1000);
        assertTrue(Files.readString(temp.resolve("water-account.svg")).contains("Of 235 litres put in"));
    }

    @Test
    void write_twice_makesTheSameBytes() throws IOException {
        Path one = Files.createDirectory(temp.resolve("one"));
        Path two = Files.createDirectory(temp.resolve("two"));

        ReportFiles.write(Varied.twoRooms(), one);
        ReportFiles.write(Varied.twoRooms(), two);

        for (String name : ReportFiles.names()) {
            assertArrayEquals(Files.readAllBytes(one.resolve(name)), Files.readAllBytes(two.resolve(name)), name);
        }
    }

    @Test
    void write_ofSeveralRooms_showsWallAndDewPointOfTheWorstCoat() throws IOException {
        ReportFiles.write(Varied.twoRooms(), temp);

        assertTrue(Files.readString(temp.resolve("wall-and-dew-point.svg")).contains("Loft spine wall"));
    }

    @Test
    void write_intoAFolderThatIsNotThere_isTold() {
        assertThrows(UncheckedIOException.class, () -> ReportFiles.write(Invented.oneRoom(), temp.resolve("nowhere")));
    }
}
