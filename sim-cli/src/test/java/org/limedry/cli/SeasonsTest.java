package org.limedry.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code limedry seasons}, on a small invented site. EXACT: which days are taken follows from the calendar. */
final class SeasonsTest {
    private static final String SITE = """
            site: Kiln house (invented)
            place: {weather: mullingar-2017, timeZone: Europe/Dublin}
            rooms:
              kiln:
                size: {lengthM: 4.0, widthM: 3.0, heightM: 2.4}
                floor: boards
                openings:
                  - {name: door, widthM: 0.9, heightM: 2.0, open: "daily 08:00-18:00"}
                walls:
                  north: {areaM2: 6.0, background: old brick, thicknessMm: 220, wetness: dry}
                plant:
                  - {kind: electric heater, kW: 1, on: always, from: 2026-11-12}
            mixes:
              base: {lime: putty, limeParts: 1, sandParts: 3}
            coats:
              - {wall: north, mix: base, thicknessMm: 10, laid: 2026-11-09}
            """;

    private static final List<String> FILES = List.of(
            "programmes.csv",
            "programmes.png",
            "programmes.svg",
            "seasons.csv",
            "seasons.html",
            "seasons.json",
            "seasons.png",
            "seasons.svg");

    @TempDir
    Path temp;

    private Path site(String text) throws IOException {
        return Files.writeString(temp.resolve("kiln.yaml"), text);
    }

    private static List<String> starts(JsonNode json) {
        return IntStream.range(0, json.at("/starts").size())
                .mapToObj(i -> json.at("/starts/" + i + "/start").asText())
                .toList();
    }

    // 9 November 2026 is a Monday: the first Monday of each month from November 2026 on, January first.
    @Test
    void seasons_ofASite_beginsItInEachMonth() throws IOException {
        Path results = temp.resolve("results");

        Cli cli = Cli.run("seasons", site(SITE), "--out", results);

        assertEquals(0, cli.code(), cli.err());
        assertTrue(cli.lines().get(1).matches("Start in \\w+: .* weeks?. Start in \\w+: .* weeks?."), cli.out());
        assertTrue(cli.lines().size() <= 25, cli.out());
        assertTrue(cli.lines().stream().allMatch(line -> line.length() <= 80), cli.out());
        assertEquals(FILES, names(results));
        JsonNode json = Cli.json(results.resolve("seasons.json"));
        assertEquals(
                List.of(
                        "2027-01-04",
                        "2027-02-01",
                        "2027-03-01",
                        "2027-04-05",
                        "2027-05-03",
                        "2027-06-07",
                        "2027-07-05",
                        "2027-08-02",
                        "2027-09-06",
                        "2027-10-04",
                        "2026-11-02",
                        "2026-12-07"),
                starts(json));
        assertEquals(
                2,
                json.findValuesAsText("compared").stream()
                        .filter("true"::equals)
                        .count());
    }

    // The file's own start is the programme of the file itself: same coats on the same days.
    @Test
    void ownStart_isTheProgrammeOfTheFile() throws IOException {
        Cli seasons = Cli.run("seasons", site(SITE), "--start", "2026-11-09", "--out", temp.resolve("s"));
        Cli programme = Cli.run("programme", temp.resolve("kiln.yaml"), "--out", temp.resolve("p"));

        assertEquals(0, seasons.code() + programme.code(), seasons.err() + programme.err());
        assertEquals(
                Cli.json(temp.resolve("p").resolve("programme.json")).at("/coats"),
                Cli.json(temp.resolve("s").resolve("seasons.json")).at("/starts/0/coats"));
    }

    // Tuesday 4 and Wednesday 5 May 2027 are nearest to Monday 3 May, Wednesday 4 November 2026 to Monday 2 November.
    @Test
    void startsOfYourOwn_keepTheWeekday() throws IOException {
        Path results = temp.resolve("results");

        Cli cli = Cli.run(
                "seasons",
                site(SITE),
                "--start",
                "2027-05-05",
                "--start",
                "2026-11-04",
                "--start",
                "2027-05-04",
                "--out",
                results);

        assertEquals(0, cli.code(), cli.err());
        JsonNode json = Cli.json(results.resolve("seasons.json"));
        assertEquals(List.of("2026-11-02", "2027-05-03"), starts(json));
    }

    @Test
    void comparedStarts_takeThePlaceOfTheirMonths() throws IOException {
        Path results = temp.resolve("results");

        Cli cli = Cli.run("seasons", site(SITE), "--compare", "2026-05-11,2026-11-09", "--out", results);

        assertEquals(0, cli.code(), cli.err());
        List<String> starts = starts(Cli.json(results.resolve("seasons.json")));
        assertEquals(12, starts.size());
        assertEquals(List.of("2026-05-11", "2026-11-09"), List.of(starts.get(4), starts.get(10)));
        assertTrue(
                cli.lines().get(1).contains("11 May 2026") && cli.lines().get(1).contains("9 Nov 2026"), cli.out());
    }

    // The heater comes three days after the start, whenever that is: no heat would mean that its date stayed behind.
    @Test
    void plant_movesAlongWithTheStart() throws IOException {
        Path results = temp.resolve("results");

        Cli.run("seasons", site(SITE + "readyRule: days:9\n"), "--start", "2027-06-07", "--out", results);

        // EXACT: ready 9 days after 08:00, the heater on from midnight 3 days after the start: 6 days and 8 hours of 1
        // kW,
        // to the hour after.
        JsonNode json = Cli.json(results.resolve("seasons.json"));
        assertEquals(6 * 24 + 8, json.at("/starts/0/heaterKwh").asDouble(), 1.0); // kWh; one hour more or less
    }

    @Test
    void withRanges_likelyLiesWithinThem() throws IOException {
        Path results = temp.resolve("results");

        Cli cli = Cli.run(
                "seasons",
                site(SITE),
                "--start",
                "2027-05-03",
                "--start",
                "2026-11-02",
                "--ranges",
                "--members",
                "4",
                "--out",
                results);

        assertEquals(0, cli.code(), cli.err());
        JsonNode weeks = Cli.json(results.resolve("seasons.json")).at("/starts/0");
        assertTrue(
                weeks.at("/weeksEarliest").asDouble()
                        <= weeks.at("/weeksLikely").asDouble(),
                weeks.toString());
        assertTrue(
                weeks.at("/weeksLikely").asDouble() <= weeks.at("/weeksLatest").asDouble(), weeks.toString());
    }

    @Test
    void badDates_areRefused() throws IOException {
        Path file = site(SITE);

        assertRefused("--start: must be a date such as 2027-05-03, was \"soon\"", file, "--start", "soon");
        assertRefused("--start: must be a date such as 2027-05-03, was \"2027-02-30\"", file, "--start", "2027-02-30");
        assertRefused(
                "--start: must be within a year of the start in the file, 2026-11-09, was 2028-05-01",
                file,
                "--start",
                "2028-05-01");
        assertRefused("--compare: must be two dates, DATE,DATE, was 2026-11-02", file, "--compare", "2026-11-02");
    }

    private static void assertRefused(String problem, Path file, String... options) {
        Object[] args =
                Stream.concat(Stream.of("seasons", file), Stream.of(options)).toArray();
        Cli cli = Cli.run(args);
        assertEquals(2, cli.code(), cli.err());
        assertTrue(cli.err().contains(problem), cli.err());
        assertEquals("", cli.out());
    }

    // Weather from November to March only: May cannot be told, the other months are left out and named.
    @Test
    void ownWeatherOfAWinter_leavesTheOtherMonthsOut() throws IOException {
        Instant first = Instant.parse("2026-10-01T00:00:00Z");
        String rows = IntStream.range(0, 24 * 190)
                .mapToObj(hour -> String.format(
                        Locale.ROOT,
                        "%s,8.0,75,2",
                        first.plus(hour, ChronoUnit.HOURS).toString().replace(":00Z", "Z")))
                .collect(Collectors.joining("\n", "timeUtc,celsius,rhPercent,windMPerS\n", "\n"));
        Files.writeString(temp.resolve("winter.csv"), rows);
        Path file = site(SITE.replace("mullingar-2017", "winter.csv")
                .replace("rooms:\n  kiln", "until: 2026-12-20\nrooms:\n  kiln"));

        Cli months = Cli.run("seasons", file);
        Cli may = Cli.run("seasons", file, "--start", "2027-05-03");

        assertEquals(0, months.code(), months.err());
        assertTrue(months.out().contains("Left out, for the weather does not reach: in "), months.out());
        assertTrue(months.out().contains("in May"), months.out());
        assertEquals(2, may.code(), may.out());
        assertTrue(may.err().contains("weather: winter.csv must reach from the start on"), may.err());
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }
}
