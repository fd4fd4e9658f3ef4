package org.limedry.cli.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.limedry.cli.Cli;
import org.limedry.cli.site.Site;
import org.limedry.cli.site.SiteReader;

/**
 * The files that a site names under readings, before anything is fitted to them: the shipped boat store with its second week changed.
 * EXACT: exit code 2 is that of bad input. PINNED: sentences are our own.
 */
final class ReadingFilesTest {
    private static final Path BOAT_STORE = Path.of("..", "docs", "examples", "boat-store");
    private static final String LOGGER = "    - {file: week2/store.csv, room: store}\n";

    @TempDir
    Path folder;

    @BeforeEach
    void copyTheBoatStore() throws IOException {
        Files.createDirectory(folder.resolve("week2"));
        for (String file : List.of("week2.yaml", "week2/store.csv", "week2/yard.csv", "week2/diary.csv")) {
            Files.copy(BOAT_STORE.resolve(file), folder.resolve(file));
        }
    }

    private void edit(String file, UnaryOperator<String> change) throws IOException {
        Path path = folder.resolve(file);
        String before = Files.readString(path);
        String after = change.apply(before);
        assertFalse(before.equals(after), "nothing was changed in " + file);
        Files.writeString(path, after);
    }

    private Cli fit() {
        return Cli.run("fit", folder.resolve("week2.yaml"));
    }

    private Site site() {
        SiteReader.Result result = SiteReader.read(folder.resolve("week2.yaml"));
        assertTrue(
                result instanceof SiteReader.Good,
                () -> ((SiteReader.Bad) result).problems().toString());
        return ((SiteReader.Good) result).site();
    }

    private ReadingsToFit readings() {
        Site site = site();
        return ReadingsToFit.of(site, site.readings().orElseThrow());
    }

    private void assertBadInput(String sentence) {
        Cli fitted = fit();
        assertEquals(2, fitted.code(), fitted.out() + fitted.err());
        assertTrue(fitted.err().contains(sentence), fitted.err());
    }

    @Test
    void sameFile_namedTwiceInARoom_isRefusedWithItsPlace() throws IOException {
        edit("week2.yaml", text -> text.replace(LOGGER, LOGGER + LOGGER));

        assertBadInput("week2.yaml:36: readings.loggers[1].file: \"week2/store.csv\", named at readings.loggers[0].file"
                + " already; must be named only once");
    }

    @Test
    void sameFile_byAnotherWayOrAsTheYard_isRefused() throws IOException {
        edit("week2.yaml", text -> text.replace(LOGGER, LOGGER + LOGGER.replace("week2/", "./week2/../week2/")));
        assertBadInput(
                "readings.loggers[1].file: \"./week2/../week2/store.csv\", named at readings.loggers[0].file already");

        edit("week2.yaml", text -> text.replace("outdoors: week2/yard.csv", "outdoors: week2/store.csv"));
        assertBadInput("readings.outdoors: \"week2/store.csv\", named at readings.loggers[0].file already");
    }

    @Test
    void filesOfOneName_inTwoFolders_areTwoLoggers() throws IOException {
        Files.createDirectory(folder.resolve("attic"));
        Files.copy(folder.resolve("week2/store.csv"), folder.resolve("attic/store.csv"));
        edit("week2.yaml", text -> text.replace(LOGGER, LOGGER + LOGGER.replace("week2/", "attic/")));

        List<String> channels = readings().list().stream()
                .map(reading -> reading.channel())
                .filter(channel -> channel.startsWith("room humidity"))
                .distinct()
                .toList();

        // EXACT: named as the site file writes them.
        assertEquals(List.of("room humidity, week2/store.csv", "room humidity, attic/store.csv"), channels);
    }

    /** Takes the lines of some hours out of the yard's file. */
    private void forgetYard(String fromUtc, String untilUtc) throws IOException {
        edit(
                "week2/yard.csv",
                text -> text.lines()
                        .filter(line ->
                                line.compareTo(fromUtc) < 0 || line.compareTo(untilUtc) >= 0 || !line.startsWith("2"))
                        .collect(Collectors.joining("\n")));
    }

    // EXACT: six hours are bridged, seven are not (docs/fit.md); the run has 24 hours of 14 days and one of the day
    // after.
    @Test
    void holeInTheYard_ofMoreThanSixHours_isToldByFitAndRun() throws IOException {
        forgetYard("2026-10-24T00", "2026-10-24T06");
        assertEquals(List.of(), site().outdoorRemarks());

        forgetYard("2026-10-24T06", "2026-10-24T07");
        String hole =
                "week2/yard.csv: no outdoor air for 7 of 337 hours (7 h from 24 Oct 2026 01:00); that of valentia-2017"
                        + " stands in, and it is that of another year";
        String wind = hole.replace("outdoor air", "wind");
        assertEquals(List.of(hole, wind), site().outdoorRemarks());
        assertEquals(List.of(hole, wind), readings().remarks());
        Cli run = Cli.run("run", folder.resolve("week2.yaml"), "--quick", "--out", folder.resolve("out"));
        assertTrue(run.code() < 2, run.err());
        assertTrue(Files.readString(folder.resolve("out/report.html")).contains(hole), "what the page rests on");
    }

    // EXACT: 33 hours of 337 are less than a tenth, 34 are more.
    @Test
    void holesInTheYard_ofMoreThanATenth_areRefusedByFitOnly() throws IOException {
        forgetYard("2026-10-24T00", "2026-10-25T09");
        assertEquals(Optional.empty(), site().weatherDoubt(readings().until()));

        forgetYard("2026-10-25T09", "2026-10-25T10");
        assertBadInput(
                "readings.outdoors: nothing for 34 of 337 hours (34 h from 24 Oct 2026 01:00), more than one in ten;"
                        + " the weather of valentia-2017 is not that of these days; must be the outdoor air from the first day of the run on");
    }

    // EXACT: ten hours on each of two days without a temperature, humidity or none.
    @Test
    void holeInOneFigure_isAHole() throws IOException {
        edit("week2/yard.csv", text -> text.replaceAll("(2026-10-2[34]T1.:00:00Z);[^;]*;", "$1;;"));

        assertEquals(
                List.of(
                        "week2/yard.csv: no outdoor air for 20 of 337 hours (10 h from 23 Oct 2026 11:00, 10 h from 24 Oct 2026"
                                + " 11:00); that of valentia-2017 stands in, and it is that of another year"),
                site().outdoorRemarks());
    }

    // EXACT: weather of these very days is as good as the yard's.
    @Test
    void holesInTheYard_withWeatherOfTheseDays_areToldAndNotRefused() throws IOException {
        Instant first = Instant.parse("2026-10-18T22:00:00Z");
        String hours = IntStream.range(0, 24 * 110)
                .mapToObj(hour -> first.plus(hour, ChronoUnit.HOURS) + ",8.0,85,1.0\n")
                .collect(Collectors.joining());
        Files.writeString(folder.resolve("own.csv"), "timeUtc,celsius,rhPercent,windMPerS\n" + hours);
        edit("week2.yaml", text -> text.replace("weather: valentia-2017", "weather: own.csv, timeZone: Europe/Dublin"));
        forgetYard("2026-10-24T00", "2026-10-27T00");

        assertEquals(
                "week2/yard.csv: no outdoor air for 72 of 337 hours (3 days from 24 Oct 2026 01:00); that of own.csv stands in",
                site().outdoorRemarks().get(0));
        assertEquals(Optional.empty(), site().weatherDoubt(readings().until()));
    }

    /** Writes times of the clock on the wall in place of those of UTC. */
    private void writeLocalTimes(String file) throws IOException {
        edit(file, text -> text.replace("time UTC", "time").replaceAll("(\\d{2}:\\d{2}):00Z", "$1"));
    }

    // EXACT: in October Ireland is an hour before UTC; a plan says the clock once for good.
    @Test
    void timesWithoutAClock_areOfThePlaceAndTold() throws IOException {
        assertEquals(List.of(), readings().remarks());

        writeLocalTimes("week2/yard.csv");
        writeLocalTimes("week2/store.csv");
        assertEquals(
                List.of(
                        "week2/store.csv, week2/yard.csv: times as Europe/Dublin, the clock of the place, for neither the file nor"
                                + " a reading plan says one"),
                site().readings().orElseThrow().remarks());
        assertEquals(
                Instant.parse("2026-10-18T22:00:00Z"),
                site().readings().orElseThrow().outdoors().orElseThrow().from());

        Files.writeString(folder.resolve("week2/yard.plan.yaml"), "zone: UTC\n");
        Files.writeString(folder.resolve("week2/store.plan.yaml"), "zone: UTC\n");
        assertEquals(List.of(), readings().remarks());
    }

    @Test
    void roomLoggerWithoutHumidity_isTold() throws IOException {
        edit("week2/store.csv", text -> text.replace("humidity %", "Feuchte"));

        assertEquals(
                List.of(
                        "week2/store.csv: no humidity was read, nothing is learnt from it; not used: column 3 \"Feuchte\": if that"
                                + " is humidity, limedry readings " + folder.resolve("week2/store.csv")
                                + " --humidity COLUMN --write-plan"),
                readings().remarks());
    }

    @Test
    void windInAnotherUnit_isToldWithItsColumn() throws IOException {
        edit("week2/yard.csv", text -> text.replace("wind m/s", "wind km/h"));
        Path plan = Files.writeString(folder.resolve("week2/yard.plan.yaml"), "decimals: point\n");

        List<String> remarks = readings().remarks();

        assertEquals(
                "week2/yard.csv: column 4 \"wind km/h\" looks like wind and is not used, wind is taken in m/s only: if it is,"
                        + " say wind: 4 in " + plan,
                remarks.get(0));
        assertTrue(remarks.get(1).startsWith("no wind was read outdoors"), remarks.get(1));
    }

    @Test
    void fahrenheitUnsaid_isRefusedWithTheCommandThatKeepsIt() throws IOException {
        edit("week2/store.csv", text -> text.replaceAll("Z;(\\d)\\d?\\.", "Z;5$1."));
        Path store = folder.resolve("week2/store.csv");

        assertBadInput(
                "say --temperature-unit F, or C if they are right; a site file has no such options, they are kept in"
                        + " store.plan.yaml: limedry readings " + store
                        + " --temperature-unit F --write-plan (and --zone Europe/Dublin"
                        + " if its times do not say their clock)");

        // EXACT: the command that was named, and the fit no longer asks.
        Cli plan = Cli.run("readings", store, "--temperature-unit", "F", "--write-plan");
        assertEquals(0, plan.code(), plan.err());
        assertEquals(List.of(), readings().remarks());
    }

    @Test
    void fahrenheitUnsaid_besideAPlan_isRefusedWithThePlan() throws IOException {
        edit("week2/store.csv", text -> text.replaceAll("Z;(\\d)\\d?\\.", "Z;5$1."));
        Path plan = Files.writeString(folder.resolve("week2/store.plan.yaml"), "decimals: point\n");

        assertBadInput(
                "say --temperature-unit F, or C if they are right; a site file has no such options, say it in " + plan);
    }
}
