package org.limedry.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the README shows of the demo is what the command prints. */
class ReadmeTest {
    private static final Path README = Path.of("..", "README.md");
    private static final Path SHOWN_CHARTS = Path.of("..", "docs", "demo");
    private static final String SITE = "docs/examples/net-loft.yaml";
    private static final String FOLDER = "out/net-loft";
    private static final Pattern SHOWN = Pattern.compile("<!-- demo:output -->\n```text\n(.*?)```\n", Pattern.DOTALL);
    private static final Pattern TITLE = Pattern.compile("<title[^>]*>(.*?)</title>", Pattern.DOTALL);
    private static final List<String> CHARTS = List.of("drying.svg", "wall-and-dew-point.svg", "water-account.svg");

    // PINNED: our own output, whatever it says; it moves only in a commit that says why.
    @Test
    void readme_ofTheDemo_showsWhatTheCommandPrints(@TempDir Path folder) throws IOException {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Path site = Path.of("..").resolve(SITE);

        int code = Main.run(
                new String[] {"run", site.toString(), "--out", folder.toString()},
                new PrintWriter(out, true),
                new PrintWriter(err, true));

        assertEquals(0, code, err.toString());
        String answer = withoutFolder(out.toString().replace("\r\n", "\n"));
        if (Boolean.getBoolean("limedry.write")) {
            write(answer, folder);
        }
        Matcher shown = SHOWN.matcher(Files.readString(README));
        assertEquals(true, shown.find(), "README.md must have a block after <!-- demo:output -->");
        assertEquals(withoutFolder(shown.group(1)), answer);
        for (String chart : CHARTS) {
            assertEquals(title(folder.resolve(chart)), title(SHOWN_CHARTS.resolve(chart)), chart);
        }
    }

    /** Leaves out the last lines, which tell where the files went. */
    private static String withoutFolder(String answer) {
        int wrote = answer.indexOf("Wrote ");
        return wrote < 0 ? answer : answer.substring(0, wrote);
    }

    private static String title(Path svg) throws IOException {
        Matcher title = TITLE.matcher(Files.readString(svg));
        return title.find() ? title.group(1) : "no title";
    }

    private static void write(String answer, Path folder) throws IOException {
        Matcher shown = SHOWN.matcher(Files.readString(README));
        String block = "<!-- demo:output -->\n```text\n" + answer + "Wrote " + FOLDER
                + ": report.html, 3 charts (svg, png), hours.csv, summary.json\n```\n";
        Files.writeString(README, shown.replaceFirst(Matcher.quoteReplacement(block)));
        Files.createDirectories(SHOWN_CHARTS);
        for (String chart : CHARTS) {
            Files.writeString(SHOWN_CHARTS.resolve(chart), Files.readString(folder.resolve(chart)));
        }
    }
}
