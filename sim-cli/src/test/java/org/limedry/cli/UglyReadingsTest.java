package org.limedry.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.limedry.cli.ask.ExitCode;

/** What is printed for each ugly logger file is what its README shows. */
final class UglyReadingsTest {
    private static final Path FOLDER = Path.of("..", "docs", "examples", "readings", "ugly");
    private static final Path README = FOLDER.resolve("README.md");
    private static final String INTRODUCTION = """
            # Ugly logger files and what they print

            FILES files as loggers and their programs write them, all invented, and what `limedry readings FILE --zone
            Europe/Dublin` prints for each, word for word: a test compares, and writes this page anew with
            `-Dlimedry.write=true`. A file that leaves a question open is not guessed at: the question is printed and the
            command ends with exit code 2.
            """;

    private record Answer(int code, String text) {}

    private static List<Path> files() throws IOException {
        try (Stream<Path> all = Files.list(FOLDER)) {
            return all.filter(file -> !file.equals(README)).sorted().toList();
        }
    }

    private static Answer answer(Path file) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Main.run(
                new String[] {"readings", file.toString(), "--zone", "Europe/Dublin"},
                new PrintWriter(out, true),
                new PrintWriter(err, true));
        String text =
                (out.toString() + err).replace(FOLDER + File.separator, "").replace("\r\n", "\n");
        return new Answer(code, text.strip());
    }

    private static String readme() throws IOException {
        List<Path> files = files();
        return INTRODUCTION.replace("FILES", Integer.toString(files.size()))
                + files.stream()
                        .map(file -> "\n## " + file.getFileName() + "\n\n```text\n"
                                + answer(file).text() + "\n```\n")
                        .collect(Collectors.joining());
    }

    // PINNED: our own words, whatever they say; they move only in a commit that says why.
    @Test
    void readings_ofEachUglyFile_printWhatTheReadmeShows() throws IOException {
        String readme = readme();
        if (Boolean.getBoolean("limedry.write")) {
            Files.writeString(README, readme);
        }

        assertEquals(Files.readString(README), readme);
        assertTrue(files().size() >= 20, "only " + files().size());
    }

    // EXACT: these leave a question open or are no logger files; all others are read.
    @Test
    void readings_endWithBadInput_onlyWhereAQuestionIsOpen() throws IOException {
        List<String> refused = files().stream()
                .filter(file -> answer(file).code() == ExitCode.BAD_INPUT.code())
                .map(file -> file.getFileName().toString().substring(0, 2))
                .toList();
        List<String> broken = files().stream()
                .filter(file -> answer(file).code() == ExitCode.INTERNAL_ERROR.code())
                .map(Path::toString)
                .toList();

        assertEquals(List.of("03", "05", "07", "08", "09", "18", "20", "23", "24"), refused);
        assertEquals(List.of(), broken);
    }
}
