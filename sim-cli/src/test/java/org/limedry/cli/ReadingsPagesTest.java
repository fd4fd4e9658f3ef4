package org.limedry.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.limedry.cli.ask.ExitCode;

/** What the pages on readings and on the diary show is what the commands print; and what else the commands promise. */
final class ReadingsPagesTest {
    private static final Path DOCS = Path.of("..", "docs");
    private static final Path READINGS = DOCS.resolve("examples").resolve("readings");
    private static final String SITE =
            DOCS.resolve("examples").resolve("net-loft.yaml").toString();

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return Main.run(args, new PrintWriter(out, true), new PrintWriter(err, true));
    }

    private String printed() {
        return (err.toString() + out)
                .replace("\r\n", "\n")
                .replace(folder.toString(), "out")
                .replace('\\', '/')
                .replace("../docs", "docs")
                .strip();
    }

    private static void assertShown(String page, String marker, String printed) throws IOException {
        Path file = DOCS.resolve(page);
        Pattern block = Pattern.compile("<!-- " + marker + " -->\n```text\n(.*?)```\n", Pattern.DOTALL);
        String fresh = "<!-- " + marker + " -->\n```text\n" + printed + "\n```\n";
        if (Boolean.getBoolean("limedry.write")) {
            String text = Files.readString(file);
            Files.writeString(file, block.matcher(text).replaceFirst(Matcher.quoteReplacement(fresh)));
        }
        Matcher shown = block.matcher(Files.readString(file));
        assertTrue(shown.find(), page);
        assertEquals(shown.group(1).strip(), printed);
    }

    // PINNED: our own output; it moves only in a commit that says why.
    @Test
    void readingsPage_showsWhatIsPrinted() throws IOException {
        int code = run(
                "readings",
                READINGS.resolve("store.csv").toString(),
                "--zone",
                "Europe/Dublin",
                "--out",
                folder.toString());

        assertEquals(ExitCode.DONE.code(), code);
        assertShown("readings.md", "readings:output", printed());
        assertTrue(Files.readString(folder.resolve("store-hourly.csv"))
                .startsWith("timeUtc,celsius,rhPercent\n2026-11-09T08:00:00Z,"));
        assertTrue(Files.readString(folder.resolve("store.svg")).contains("% of the time"));
    }

    // PINNED: our own output; it moves only in a commit that says why.
    @Test
    void diaryPage_showsWhatIsPrinted() throws IOException {
        int code = run(
                "diary",
                SITE,
                "--check",
                DOCS.resolve("examples/diary/net-loft-diary.csv").toString());

        assertEquals(ExitCode.BAD_INPUT.code(), code);
        assertShown("diary.md", "diary:output", printed());
    }

    // EXACT: the form that is printed is a diary without mistakes; the page has its 28 days and every door.
    @Test
    void diary_formOfASite_canBeCheckedAndPrinted() throws IOException {
        int code = run("diary", SITE, "--out", folder.toString());
        Path saved = Files.writeString(folder.resolve("diary.csv"), out.toString());
        String page = Files.readString(folder.resolve("diary.html"));

        assertEquals(ExitCode.DONE.code(), code);
        assertEquals(ExitCode.DONE.code(), run("diary", SITE, "--check", saved.toString()), err.toString());
        assertEquals(29, page.split("<tr", -1).length - 1, "28 days and the heading");
        for (String name :
                new String[] {"yard door", "inner door", "sea window", "partition", "Mon 12 Oct", "Sun 8 Nov"}) {
            assertTrue(page.contains(">" + name + "<"), name);
        }
    }

    @Test
    void diary_withoutSiteOrDay_asksForTheDay() {
        assertEquals(ExitCode.BAD_INPUT.code(), run("diary"));
        assertTrue(err.toString().contains("--from: needed"), err.toString());
    }

    // PINNED: our own words; the code is that of bad input.
    @Test
    void diary_fromWhatIsNoDay_saysHowADayIsWritten() {
        assertEquals(ExitCode.BAD_INPUT.code(), run("diary", "--from", "9/11/2026"));
        assertEquals(
                "error: Invalid value for option '--from': \"9/11/2026\" is no day; must be a day such as 2026-11-09; "
                        + "see limedry diary --help",
                err.toString().strip());
    }

    // EXACT: the night was made with 0.42 C and 2.3 % between the loggers and 0.1 C and 0.5 % noise on each.
    @Test
    void sideBySide_ofTheExampleNight_findsWhatWasPutIn() {
        int code = run(
                "readings",
                READINGS.resolve("night-a.csv").toString(),
                READINGS.resolve("night-b.csv").toString(),
                "--side-by-side",
                "--zone",
                "UTC");

        assertEquals(ExitCode.DONE.code(), code, err.toString());
        assertTrue(out.toString().contains("temperatureOffsetK: -0.40"), out.toString());
        assertTrue(out.toString().contains("humidityOffsetPercent: -2.3"), out.toString());
        assertTrue(out.toString().contains("0.9 +- 0.4 g/m3: about half of it. That is normal."), out.toString());
    }

    // EXACT: a plan is written once, is used from then on, and an option overrules it.
    @Test
    void plan_writtenBesideAFile_isUsedFromThenOn() throws IOException {
        Path file = Files.writeString(
                folder.resolve("x.csv"), "time,temp,rh\n2026-07-03 08:00,8.5,85\n2026-07-03 09:00,8.6,85\n");

        run("readings", file.toString(), "--zone", "Europe/Dublin", "--write-plan");
        run("readings", file.toString(), "--write-plan");
        run("readings", file.toString(), "--zone", "UTC");

        assertTrue(out.toString().contains("Wrote " + folder.resolve("x.plan.yaml")), out.toString());
        assertTrue(out.toString().contains("Kept " + folder.resolve("x.plan.yaml")), out.toString());
        assertEquals(2, out.toString().split("from Fri 3 Jul 2026 08:00:00 \\+01:00", -1).length - 1, out.toString());
        assertTrue(out.toString().contains("from Fri 3 Jul 2026 08:00:00 +00:00"), out.toString());
    }
}
