package org.limedry.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.limedry.cli.ask.ExitCode;
import org.limedry.cli.site.SiteReader;

/** {@code limedry new} and {@code limedry schema}. */
final class StarterCommandsTest {
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder;

    private int run(String... args) {
        return Main.run(args, new PrintWriter(out), new PrintWriter(err));
    }

    @Test
    void new_writesAFileThatCanBeRead() {
        Path file = folder.resolve("room.yaml");

        int code = run("new", file.toString());

        assertEquals(ExitCode.DONE.code(), code);
        assertEquals("", err.toString());
        assertTrue(out.toString().contains("limedry run " + file), out.toString());
        assertInstanceOf(SiteReader.Good.class, SiteReader.read(file));
    }

    @Test
    void new_fileThatIsThere_isLeftAlone() throws IOException {
        Path file = folder.resolve("room.yaml");
        Files.writeString(file, "mine");

        int code = run("new", file.toString());

        assertEquals(ExitCode.BAD_INPUT.code(), code);
        assertEquals("mine", Files.readString(file));
        assertTrue(err.toString().startsWith(file + ": it is there already; "), err.toString());
    }

    @Test
    void new_folderThatIsNotThere_isToldInOneLine() {
        int code = run("new", folder.resolve("no").resolve("room.yaml").toString());

        assertEquals(ExitCode.BAD_INPUT.code(), code);
        assertTrue(err.toString().contains("there is no such folder; "), err.toString());
    }

    @Test
    void schema_isPrintedAsJsonOrTable() {
        assertEquals(ExitCode.DONE.code(), run("schema"));
        assertEquals(ExitCode.DONE.code(), run("schema", "--table"));

        assertTrue(out.toString().startsWith("{\n  \"$schema\""), out.toString());
        assertTrue(out.toString().contains("| `site` | text | needed |"), out.toString());
        assertEquals("", err.toString());
    }
}
