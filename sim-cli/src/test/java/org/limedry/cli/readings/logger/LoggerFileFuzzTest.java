package org.limedry.cli.readings.logger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.limedry.climate.LoggedReading;
import org.limedry.climate.Readings;

/** Whatever is done to a file, it is read or refused in words, and what was not touched is not lost. */
final class LoggerFileFuzzTest {
    private static final int LINES = 60;

    private static List<String> sound() {
        List<String> lines = new ArrayList<>(List.of("time,temp,rh"));
        Instant start = Instant.parse("2026-11-09T00:00:00Z");
        for (int i = 0; i < LINES; i++) {
            Instant at = start.plus(30L * i, ChronoUnit.MINUTES);
            lines.add(
                    String.format(Locale.ROOT, "%s,%.1f,%.1f", at, 8 + Math.sin(i / 5.0), 85 + 4 * Math.cos(i / 7.0)));
        }
        return lines;
    }

    @Provide
    Arbitrary<String> junk() {
        return Arbitraries.strings()
                .withChars(",;\t\"'#/:.- 0189TZaF%\u00b0\0\uFFFD\u2028")
                .ofMaxLength(30);
    }

    /** A few lines of many are overwritten with anything: all others are read, to the last digit. */
    @Property(tries = 400)
    void read_fewLinesOverwritten_keepsAllOthers(
            @ForAll @Size(max = 3) List<@IntRange(min = 2, max = LINES) Integer> places, @ForAll("junk") String junk) {
        List<String> lines = sound();
        places.forEach(place -> lines.set(place, junk));

        LoggerFile file = Logs.good(String.join("\n", lines));

        Map<Instant, LoggedReading> read =
                file.readings().all().stream().collect(Collectors.toMap(LoggedReading::at, reading -> reading));
        List<LoggedReading> untouched =
                Logs.good(String.join("\n", sound())).readings().all();
        Set<Integer> spoilt = new HashSet<>(places);
        IntStream.rangeClosed(1, LINES)
                .filter(line -> !spoilt.contains(line))
                .forEach(line -> assertEquals(
                        untouched.get(line - 1),
                        read.get(untouched.get(line - 1).at())));
    }

    /** Letters are struck out, doubled or swapped anywhere: words or readings, never an exception. */
    @Property(tries = 400)
    void read_anyMangling_neverThrows(
            @ForAll @Size(max = 40) List<@IntRange(min = 0, max = 2000) Integer> places, @ForAll("junk") String junk) {
        StringBuilder text = new StringBuilder(String.join("\n", sound()));
        for (int place : places) {
            int at = place % text.length();
            text.replace(
                    at, Math.min(text.length(), at + place % 3), junk.substring(0, Math.min(junk.length(), place % 5)));
        }

        LoggerFile.Result result = Logs.read(text.toString(), Asked.nothing());

        assertTrue(result instanceof LoggerFile.Good || !Logs.problems(result).isBlank());
    }

    /** Pure junk in many lines. */
    @Property(tries = 300)
    void read_pureJunk_neverThrows(@ForAll @Size(max = 12) List<@From("junk") String> lines) {
        LoggerFile.Result result = Logs.read(String.join("\n", lines), Asked.nothing());

        assertTrue(result instanceof LoggerFile.Good || !Logs.problems(result).isBlank());
    }

    /** What is written clean is read again to the digits written. */
    @Property(tries = 200)
    void clean_anyReadings_comeBack(
            @ForAll @Size(min = 2, max = 40) List<@IntRange(min = -400, max = 340) Integer> tenths,
            @ForAll @IntRange(min = 20, max = 1000) int permille) {
        List<LoggedReading> all = IntStream.range(0, tenths.size())
                .mapToObj(i -> Logs.reading(
                        Instant.parse("2026-03-28T22:10:00Z")
                                .plus(17L * i, ChronoUnit.MINUTES)
                                .toString(),
                        tenths.get(i) / 10.0,
                        permille / 1000.0))
                .toList();

        LoggerFile again = Logs.good(CleanCsv.all(new Readings(all)));

        for (int i = 0; i < all.size(); i++) {
            LoggedReading expected = all.get(i);
            LoggedReading found = again.readings().all().get(i);
            assertEquals(expected.at(), found.at());
            assertEquals(expected.celsius(), found.celsius());
            // 1e-12: a percentage and back
            assertEquals(
                    expected.relativeHumidity().orElseThrow(),
                    found.relativeHumidity().orElseThrow(),
                    1e-12);
        }
    }
}
