package org.limedry.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What the user guide shows of a question is what the command prints. PINNED: our own output, whatever it says; it moves only
 * in a commit that says why. {@code -Dlimedry.write=true} writes it anew.
 */
final class QuestionDocsTest {
    private static final Path DOCS = Path.of("..", "docs");
    private static final Pattern TITLE = Pattern.compile("<title[^>]*>(.*?)</title>", Pattern.DOTALL);

    @TempDir
    Path results;

    @Test
    void programmePage_showsWhatTheCommandPrints() throws IOException {
        assertShown("programme", List.of("programme.svg"), "--ranges");
    }

    @Test
    void seasonsPage_showsWhatTheCommandPrints() throws IOException {
        assertShown("seasons", List.of("seasons.svg", "programmes.svg"));
    }

    @Test
    void handoverPage_showsWhatTheCommandPrints() throws IOException {
        assertShown("handover", List.of("care.svg"), "--warming", "4");
    }

    @Test
    void delayPage_showsWhatTheCommandPrints() throws IOException {
        assertShownOf("net-loft-delay.yaml", "delay", List.of("delay.svg"));
    }

    private void assertShown(String command, List<String> charts, String... options) throws IOException {
        assertShownOf("two-rooms.yaml", command, charts, options);
    }

    private void assertShownOf(String example, String command, List<String> charts, String... options)
            throws IOException {
        List<Object> args =
                new ArrayList<>(List.of(command, DOCS.resolve("examples").resolve(example)));
        args.addAll(List.of("--out", results));
        args.addAll(List.of(options));

        Cli cli = Cli.run(args.toArray());

        assertEquals(0, cli.code(), cli.err());
        String answer = cli.out().substring(0, cli.out().indexOf("Wrote "));
        Path page = DOCS.resolve(command + ".md");
        Pattern block = Pattern.compile("(<!-- " + command + ":output -->\n```text\n)(.*?)(```\n)", Pattern.DOTALL);
        if (Boolean.getBoolean("limedry.write")) {
            write(page, block, answer, charts);
        }
        Matcher shown = block.matcher(Files.readString(page));
        assertTrue(shown.find(), page::toString);
        assertEquals(shown.group(2), answer);
        for (String chart : charts) {
            assertEquals(title(DOCS.resolve("demo").resolve(chart)), title(results.resolve(chart)));
        }
    }

    private void write(Path page, Pattern block, String answer, List<String> charts) throws IOException {
        Matcher shown = block.matcher(Files.readString(page));
        Files.writeString(page, shown.replaceFirst("$1" + Matcher.quoteReplacement(answer) + "$3"));
        for (String chart : charts) {
            Files.copy(
                    results.resolve(chart), DOCS.resolve("demo").resolve(chart), StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static String title(Path svg) throws IOException {
        Matcher title = TITLE.matcher(Files.readString(svg));
        assertTrue(title.find(), svg::toString);
        return title.group(1);
    }
}
