package org.limedry.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What docs/doors.md shows of its example is what the command prints. */
final class DoorsExampleTest {
    private static final Path PAGE = Path.of("..", "docs", "doors.md");
    private static final Path CHART = Path.of("..", "docs", "demo", "doors-trap.svg");
    private static final Path SITE = Path.of("..", "docs", "examples", "doors-trap.yaml");
    private static final Pattern SHOWN = Pattern.compile("<!-- doors:output -->\n```text\n(.*?)```\n", Pattern.DOTALL);

    // PINNED: our own output, whatever it says; it moves only in a commit that says why.
    @Test
    void page_ofTheTrapWeek_showsWhatTheCommandPrints(@TempDir Path folder) throws IOException {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();

        int code = Main.run(
                new String[] {"doors", SITE.toString(), "--from", "2026-11-16", "--out", folder.toString()},
                new PrintWriter(out, true),
                new PrintWriter(err, true));

        assertEquals(0, code, err.toString());
        String printed = out.toString().replace("\r\n", "\n");
        String answer = printed.substring(0, printed.indexOf("Wrote "));
        if (Boolean.getBoolean("limedry.write")) {
            Matcher block = SHOWN.matcher(Files.readString(PAGE));
            String fresh = "<!-- doors:output -->\n```text\n" + answer + "```\n";
            Files.writeString(PAGE, block.replaceFirst(Matcher.quoteReplacement(fresh)));
            Files.copy(folder.resolve("doors.svg"), CHART, StandardCopyOption.REPLACE_EXISTING);
        }
        Matcher shown = SHOWN.matcher(Files.readString(PAGE));
        assertTrue(shown.find(), "docs/doors.md must have a block after <!-- doors:output -->");
        assertEquals(shown.group(1), answer);
        assertEquals(story(CHART), story(folder.resolve("doors.svg")));
    }

    private static String story(Path svg) throws IOException {
        Matcher story =
                Pattern.compile("<desc[^>]*>(.*?)</desc>", Pattern.DOTALL).matcher(Files.readString(svg));
        return story.find() ? story.group(1) : "no story";
    }
}
