package org.limedry.cli.site;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.limedry.cli.problem.InputProblem;
import org.limedry.cli.readings.diary.DiaryFile;
import org.limedry.climate.Schedule;
import org.limedry.simulation.Scenario;
import org.limedry.study.Draw;

/**
 * Machines of a diary that are not on its site: hours that would go for nothing. EXACT: which are told follows from the plant put
 * in. PINNED: our own words.
 */
final class DiaryChecksTest {
    private static final String RULE =
            "; there is none in the site file: write it under plant of its room, on: never if only the diary says when";

    private static final String BARE = """
            site: Bare room (invented)
            place: {weather: valentia-2017}
            rooms:
              store:
                size: {lengthM: 4.0, widthM: 3.0, heightM: 2.4}
                openings: [{name: door, widthM: 0.9, heightM: 2.0, open: never}]
                walls: {north: {areaM2: 6.0, background: old brick, wetness: damp}}
            mixes: {base: {lime: putty, sandParts: 3}}
            coats: [{wall: north, mix: base, thicknessMm: 11, laid: 2026-11-03}]
            """;

    @TempDir
    Path folder;

    private List<String> problems(Site site, String lines) throws IOException {
        Path file = Files.writeString(
                folder.resolve("diary.csv"), "date;heater hours;dehumidifier hours;litres emptied\n" + lines);
        DiaryFile diary = DiaryFile.read(file, "diary.csv", site.diaryPlaces());
        assertEquals(List.of(), diary.problems());
        return site.doubts(diary.diary(), "diary.csv").stream()
                .map(InputProblem::text)
                .toList();
    }

    /** The store has a heater, the sail room a dehumidifier. */
    private static Site netLoft() {
        return Examples.good(SiteReader.read(Examples.FOLDER.resolve("net-loft.yaml")));
    }

    @Test
    void machines_thatAreThere_areNoProblem() throws IOException {
        assertEquals(
                List.of(),
                problems(netLoft(), "2026-11-16;store 10, sail room 0;sail room 24, store 0;\n2026-11-17;5;24;4\n"));
    }

    @Test
    void machines_inTheWrongRoom_areToldOnceEach() throws IOException {
        assertEquals(
                List.of(
                        "diary.csv:2: heater hours: a heater ran in sail room, and on 2 more days" + RULE,
                        "diary.csv:4: dehumidifier hours: a dehumidifier ran in store" + RULE),
                problems(
                        netLoft(),
                        "2026-11-16;sail room 10;;\n2026-11-17;sail room 1;24;\n2026-11-18;sail room 1;store 2;\n"));
    }

    @Test
    void machines_ofNoRoom_whereThereAreNone_areTold() throws IOException {
        assertEquals(
                List.of(
                        "diary.csv:2: heater hours: a heater ran" + RULE,
                        "diary.csv:2: dehumidifier hours: a dehumidifier ran" + RULE),
                problems(Examples.site(BARE), "2026-11-16;10;24;\n2026-11-17;0;no;\n"));
    }

    /** What the message advises: a heater that the timetable never runs and the diary does, from the start of work. */
    @Test
    void heaterThatNeverRuns_isRunByTheDiary() throws IOException {
        Files.writeString(folder.resolve("diary.csv"), "date;heater hours\n2026-11-16;10\n");
        String plant = "    plant: [{kind: electric heater, kW: 2, on: never}]\n";
        Path file = Files.writeString(
                folder.resolve("site.yaml"),
                BARE.replace("mixes:", plant + "mixes:") + "readings: {diary: diary.csv}\n");

        Scenario run = Examples.good(SiteReader.read(file)).scenario(Draw.likely());

        Instant eight = Instant.parse("2026-11-16T08:00:00Z");
        assertEquals(
                List.of(new Schedule.Span(eight, eight.plus(Duration.ofHours(10)))),
                run.rooms().get(0).plant().get(0).on().spans());
    }
}
