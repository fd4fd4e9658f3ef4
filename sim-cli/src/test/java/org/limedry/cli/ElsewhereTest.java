package org.limedry.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.TimeZone;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo gives the same files wherever the machine stands: a site has its own time zone, and numbers have points. */
final class ElsewhereTest {
    private static final Path SITE = Path.of("..", "docs", "examples", "net-loft.yaml");
    private static final String COMPUTE_SECONDS = "\"computeSeconds\" : [0-9.E-]+";

    private final TimeZone zone = TimeZone.getDefault();
    private final Locale locale = Locale.getDefault();

    @AfterEach
    void comeBack() {
        TimeZone.setDefault(zone);
        Locale.setDefault(locale);
    }

    // EXACT: the same bytes but for the seconds that the computer took.
    @Test
    void run_onMachinesElsewhere_writesTheSameFiles(@TempDir Path folder) throws IOException {
        Path here = run("UTC", "en-GB", folder.resolve("here"));
        Path farEast = run("Pacific/Kiritimati", "ar-EG-u-nu-arab", folder.resolve("farEast"));
        Path farWest = run("America/St_Johns", "tr-TR", folder.resolve("farWest"));

        assertTrue(summary(here).contains("\"computeSeconds\" : 0"), "the seconds must be masked");
        assertEquals(-1, Files.mismatch(here.resolve("hours.csv"), farEast.resolve("hours.csv")));
        assertEquals(-1, Files.mismatch(here.resolve("hours.csv"), farWest.resolve("hours.csv")));
        assertEquals(summary(here), summary(farEast));
        assertEquals(summary(here), summary(farWest));
    }

    private static Path run(String zone, String language, Path folder) {
        TimeZone.setDefault(TimeZone.getTimeZone(zone));
        Locale.setDefault(Locale.forLanguageTag(language));
        StringWriter err = new StringWriter();
        int code = Main.run(
                new String[] {"run", SITE.toString(), "--out", folder.toString(), "--quick"},
                new PrintWriter(new StringWriter(), true),
                new PrintWriter(err, true));
        assertEquals(0, code, err.toString());
        return folder;
    }

    private static String summary(Path folder) throws IOException {
        return Files.readString(folder.resolve("summary.json")).replaceAll(COMPUTE_SECONDS, "\"computeSeconds\" : 0");
    }
}
