package org.limedry.cli.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.limedry.cli.Cli;
import org.limedry.cli.site.Site;
import org.limedry.cli.site.SiteReader;
import org.limedry.study.Draw;
import org.limedry.study.Ensemble;
import org.limedry.study.Uncertain;

/**
 * Files that must not become dates: what is said of each, and that nothing is learnt from it. EXACT: exit codes are those of the
 * command line (0 done, 1 ran but no date, 2 bad input); sentences are our own, PINNED. The figures put into the files are made up.
 */
final class FitCommandTest {
    private static final LocalDate LAST = LocalDate.of(2026, 10, 30);

    @TempDir
    Path folder;

    @BeforeEach
    void writeGoodFiles() throws IOException {
        Files.writeString(folder.resolve("plan.yaml"), TwinCase.SITE);
        Site plan = ((SiteReader.Good) SiteReader.read(folder.resolve("plan.yaml"))).site();
        Twin twin = Twin.of(plan, Draw.likely(), 3);
        twin.writeLoggers(folder, LAST);
        twin.writeDiary(folder.resolve("diary.csv"), LAST);
        Files.writeString(folder.resolve("site.yaml"), TwinCase.SITE + TwinCase.READINGS);
    }

    private Cli fit() {
        return Cli.run("fit", folder.resolve("site.yaml"), "--out", folder.resolve("out"), "--members", "4");
    }

    private boolean somethingLearnt() {
        return Files.exists(folder.resolve("out").resolve(FitFiles.FITTED));
    }

    private void edit(String file, UnaryOperator<String> change) throws IOException {
        Path path = folder.resolve(file);
        String before = Files.readString(path);
        String after = change.apply(before);
        assertFalse(before.equals(after), "nothing was changed in " + file);
        Files.writeString(path, after);
    }

    /** Changes the figures of every line below the heading: temperature and humidity. */
    private void editFigures(UnaryOperator<double[]> change) throws IOException {
        edit(
                "room.csv",
                text -> text.lines()
                        .map(line -> line.startsWith("20") ? figures(line, change) : line)
                        .collect(Collectors.joining("\n")));
    }

    private static String figures(String line, UnaryOperator<double[]> change) {
        String[] cells = line.split(";", -1);
        double[] now = change.apply(new double[] {Double.parseDouble(cells[1]), Double.parseDouble(cells[2])});
        return String.format(Locale.ROOT, "%s;%.1f;%.1f", cells[0], now[0], now[1]);
    }

    @Test
    void goodFiles_giveDatesAndAFileThatTheNextRunGoesBy() throws IOException {
        Cli fitted = fit();

        assertEquals(0, fitted.code(), fitted.err());
        assertTrue(somethingLearnt());
        Files.copy(folder.resolve("out").resolve(FitFiles.FITTED), folder.resolve("fitted.json"));
        edit("site.yaml", text -> text + "fitted: fitted.json\n");
        Cli run = Cli.run("run", folder.resolve("site.yaml"), "--quick", "--out", folder.resolve("run"));
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("What moved north wall, coat 1"), run.out());
        assertTrue(
                Files.readString(folder.resolve("run/report.html")).contains("fitted to the readings"), "assumptions");
        oddsGoByWhatTheFitLeftOpen();
    }

    /** EXACT: every run of the odds has the dehumidifier where one of the points of the fit has it, and each point is asked. */
    private void oddsGoByWhatTheFitLeftOpen() throws IOException {
        Cli odds = Cli.run("odds", folder.resolve("site.yaml"), "--runs", "32", "--out", folder.resolve("odds"));

        assertEquals(0, odds.code(), odds.err());
        Site site = ((SiteReader.Good) SiteReader.read(folder.resolve("site.yaml"))).site();
        Uncertain output = site.fittable().stream()
                .filter(unknown -> unknown.key().equals("dehumidifierOutput"))
                .findFirst()
                .orElseThrow();
        List<Double> points = Ensemble.over(site.uncertain(), SiteFit.POINTS).draws().stream()
                .map(draw -> output.in(site.oneByOne(draw)))
                .sorted()
                .toList();
        List<String> lines = Files.readAllLines(folder.resolve("odds/odds-members.csv"));
        int column = List.of(lines.get(0).split(",", -1)).indexOf("dehumidifierOutput.times");
        List<Double> drawn = lines.stream()
                .skip(1)
                .map(line -> Double.valueOf(line.split(",", -1)[column]))
                .sorted()
                .toList();
        assertEquals(points, drawn);
        assertEquals(site.members(4), SiteFit.POINTS);
    }

    @Test
    void fittedFile_ofOtherRangesOrAnotherBuilding_isRefused() throws IOException {
        assertEquals(0, fit().code());
        Files.copy(folder.resolve("out").resolve(FitFiles.FITTED), folder.resolve("fitted.json"));
        Files.writeString(
                folder.resolve("larger.yaml"),
                (TwinCase.SITE + TwinCase.READINGS + "fitted: fitted.json\n").replace("lengthM: 5.0", "lengthM: 15.0"));
        edit(
                "site.yaml",
                text -> text + "fitted: fitted.json\nassume: {openingFlowFactor: {low: 0.7, likely: 1, high: 2}}\n");

        Cli run = Cli.run("run", folder.resolve("site.yaml"), "--quick", "--out", folder.resolve("run"));

        assertEquals(2, run.code());
        assertTrue(run.err().contains("fitted: the range of openingFlow was 0.5 to 1.0 to 2.0"), run.err());
        Cli larger = Cli.run("run", folder.resolve("larger.yaml"), "--quick", "--out", folder.resolve("run"));
        assertEquals(2, larger.code());
        assertTrue(larger.err().contains("fitted: it was made with room room of 20.00 m2, 2.40 m high"), larger.err());
    }

    @Test
    void fittedFile_thatIsNone_isRefusedWithItsLine() throws IOException {
        Files.writeString(folder.resolve("fitted.json"), "{\n  \"site\": 3,\n");
        edit("site.yaml", text -> text + "fitted: fitted.json\n");

        Cli run = fit();

        assertEquals(2, run.code());
        assertTrue(run.err().contains("fitted.json:"), run.err());
        assertTrue(run.err().contains("must be a file as limedry fit writes it"), run.err());
    }

    @Test
    void fahrenheit_unsaid_isRefused() throws IOException {
        editFigures(figures -> new double[] {figures[0] * 1.8 + 32.0, figures[1]});

        Cli fitted = fit();

        assertTrue(fitted.code() == 1 || fitted.code() == 2, fitted.out());
        assertFalse(somethingLearnt());
    }

    @Test
    void loggerOnAHeater_isNotBelieved() throws IOException {
        editFigures(figures -> new double[] {figures[0] + 5.0, figures[1] - 25.0});

        Cli fitted = fit();

        assertEquals(1, fitted.code(), fitted.err());
        assertTrue(fitted.out().contains("errors off all the time"), fitted.out());
        assertTrue(fitted.out().contains("C too warm"), fitted.out());
        assertFalse(somethingLearnt());
    }

    @Test
    void humidityAsFraction_isRefused() throws IOException {
        edit(
                "room.csv",
                text -> text.lines()
                        .map(line -> line.startsWith("20") ? line.replaceAll(";(\\d+)\\.(\\d)$", ";0.$1$2") : line)
                        .collect(Collectors.joining("\n")));

        Cli fitted = fit();

        assertTrue(fitted.code() == 1 || fitted.code() == 2, fitted.out());
        assertFalse(somethingLearnt());
    }

    @Test
    void columnsSwapped_areRefused() throws IOException {
        editFigures(figures -> new double[] {figures[1], figures[0]});

        Cli fitted = fit();

        assertTrue(fitted.code() == 1 || fitted.code() == 2, fitted.out());
        assertFalse(somethingLearnt());
    }

    @Test
    void roomAndYardSwapped_isRefused() throws IOException {
        edit(
                "site.yaml",
                text -> text.replace("outdoors: yard.csv", "outdoors: room.csv")
                        .replace("file: room.csv", "file: yard.csv"));

        Cli fitted = fit();

        assertEquals(1, fitted.code(), fitted.out());
        assertTrue(fitted.out().contains("no date is drawn from them"), fitted.out());
        assertFalse(somethingLearnt());
    }

    @Test
    void sensorThatStandsStill_isLeftOutAndNamed() throws IOException {
        edit(
                "room.csv",
                text -> text.lines()
                        .map(line -> line.compareTo("2026-10-25") > 0 && line.startsWith("20")
                                ? line.substring(0, line.indexOf(';')) + ";9.3;81.0"
                                : line)
                        .collect(Collectors.joining("\n")));

        Cli fitted = fit();

        assertEquals(0, fitted.code(), fitted.out() + fitted.err());
        assertTrue(fitted.out().contains("stuck sensor?"), fitted.out());
    }

    @Test
    void twoLoggers_onOneWall_areFittedAndDrawn() throws IOException {
        edit(
                "room.csv",
                text -> text.lines()
                        .map(line -> line.startsWith("20")
                                ? line + line.substring(line.indexOf(';'), line.lastIndexOf(';'))
                                : line + ";wall surface C")
                        .collect(Collectors.joining("\n")));
        Files.copy(folder.resolve("room.csv"), folder.resolve("gun.csv"));
        edit(
                "site.yaml",
                text -> text.replace(
                        "{file: room.csv, room: room}",
                        "{file: room.csv, room: room, wall: north}\n    - {file: gun.csv, room: room, wall: north}"));

        Cli fitted = fit();

        assertTrue(fitted.code() == 0 || fitted.code() == 1, fitted.out() + fitted.err());
        assertTrue(Files.exists(folder.resolve("out").resolve("fit.html")), fitted.err());
    }

    @Test
    void shippedWeather_withoutAYard_isRefused() throws IOException {
        edit("site.yaml", text -> text.replace("  outdoors: yard.csv\n", ""));

        Cli fitted = fit();

        assertEquals(2, fitted.code());
        assertTrue(
                fitted.err().contains("readings.outdoors: the weather of valentia-2017 is not that of these days"),
                fitted.err());
    }

    @Test
    void siteWithoutReadings_isRefused() {
        Cli fitted = Cli.run("fit", folder.resolve("plan.yaml"));

        assertEquals(2, fitted.code());
        assertTrue(fitted.err().contains("readings: missing; must name what was read"), fitted.err());
    }

    @Test
    void everythingWrongWithTheFiles_isToldAtOnce() throws IOException {
        edit("diary.csv", text -> text.replace("room 24;", "room 25;"));
        edit(
                "site.yaml",
                text -> text.replace("room: room}", "room: roof, wall: noth}").replace("yard.csv", "gone.csv"));

        Cli fitted = fit();

        assertEquals(2, fitted.code());
        assertTrue(fitted.err().contains("readings.loggers[0].room: no room \"roof\"; there are: room"), fitted.err());
        assertTrue(fitted.err().contains("readings.loggers[0].wall: no wall \"noth\""), fitted.err());
        assertTrue(fitted.err().contains("gone.csv"), fitted.err());
        assertTrue(fitted.err().contains("diary.csv:3"), fitted.err());
        assertFalse(fitted.err().contains(folder.toString() + "/diary.csv"), "shown as the site file names it");
    }
}
