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

/** What the document of {@code airing} shows is what the command prints. */
final class AiringDocumentTest {
    private static final Path DOCS = Path.of("..", "docs");
    private static final Path PAGE = DOCS.resolve("airing.md");
    private static final Path SHOWN_CHART = DOCS.resolve("demo").resolve("airing.svg");
    private static final Pattern SHOWN = Pattern.compile("<!-- airing:output -->\n```text\n(.*?)```\n", Pattern.DOTALL);
    private static final Pattern TITLE = Pattern.compile("<title[^>]*>(.*?)</title>", Pattern.DOTALL);

    // PINNED: our own output, whatever it says; it moves only in a commit that says why.
    @Test
    void document_ofTheDemo_showsWhatTheCommandPrints(@TempDir Path folder) throws IOException {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String site = DOCS.resolve("examples").resolve("net-loft.yaml").toString();
        String[] args = {"airing", site, "--room", "store", "--out", folder.toString()};

        int code = Main.run(args, new PrintWriter(out, true), new PrintWriter(err, true));

        assertEquals(0, code, err.toString());
        String printed = out.toString().replace("\r\n", "\n");
        String answer = printed.substring(0, printed.indexOf("Wrote "));
        Path chart = folder.resolve("airing.svg");
        if (Boolean.getBoolean("limedry.write")) {
            String block = "<!-- airing:output -->\n```text\n" + answer + "```\n";
            String page = SHOWN.matcher(Files.readString(PAGE)).replaceFirst(Matcher.quoteReplacement(block));
            Files.writeString(PAGE, page);
            Files.copy(chart, SHOWN_CHART, StandardCopyOption.REPLACE_EXISTING);
        }
        Matcher shown = SHOWN.matcher(Files.readString(PAGE));
        assertTrue(shown.find(), "airing.md must have a block after <!-- airing:output -->");
        assertEquals(shown.group(1), answer);
        assertEquals(title(SHOWN_CHART), title(chart));
    }

    private static String title(Path svg) throws IOException {
        Matcher title = TITLE.matcher(Files.readString(svg));
        assertTrue(title.find(), svg.toString());
        return title.group(1);
    }
}
