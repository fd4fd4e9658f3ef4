package org.limedry.cli.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.limedry.cli.chart.Chart;
import org.limedry.cli.chart.Charts;
import org.limedry.cli.chart.Size;
import org.limedry.room.RoomPlan;

/** The files of one run. */
public final class ReportFiles {
    private static final String REPORT = "report.html";
    private static final String SUMMARY = "summary.json";
    private static final String HOURS = "hours.csv";
    private static final String DRYING = "drying";
    private static final String WALL = "wall-and-dew-point";
    private static final String ACCOUNT = "water-account";

    /** For screens and messages; print has the SVG. */
    private static final int PNG_SCALE = 2;

    private ReportFiles() {}

    /** Returns the names of all files that may be written. */
    public static List<String> names() {
        return List.of(
                REPORT,
                SUMMARY,
                HOURS,
                DRYING + ".svg",
                DRYING + ".png",
                WALL + ".svg",
                WALL + ".png",
                ACCOUNT + ".svg",
                ACCOUNT + ".png");
    }

    /** Something that writes a file or two. */
    private interface Part {
        void write() throws IOException;
    }

    /**
     * Writes the files, several at a time.
     *
     * @param findings what was found
     * @param folder where to; exists
     * @throws UncheckedIOException if one cannot be written
     */
    public static void write(Findings findings, Path folder) {
        PageModel page = PageModels.of(findings);
        Pictures pictures = new Pictures(findings);
        List<Part> parts = new ArrayList<>();
        parts.add(() -> Files.writeString(folder.resolve(REPORT), HtmlPage.of(findings, page, pictures)));
        parts.add(() -> writeHours(findings, folder.resolve(HOURS)));
        parts.add(() -> Files.writeString(folder.resolve(SUMMARY), SummaryJson.of(findings, page.situation())));
        charts(findings, page, pictures).forEach((name, chart) -> parts.add(() -> writeChart(chart, folder, name)));
        parts.parallelStream().forEach(ReportFiles::write);
    }

    private static void write(Part part) {
        try {
            part.write();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void writeHours(Findings findings, Path file) throws IOException {
        try (Writer out = Files.newBufferedWriter(file)) {
            HoursCsv.write(findings, out);
        }
    }

    private static void writeChart(Chart chart, Path folder, String name) throws IOException {
        Files.writeString(folder.resolve(name + ".svg"), Charts.svgFile(chart, Size.WIDE));
        Files.write(folder.resolve(name + ".png"), Charts.png(chart, Size.WIDE, PNG_SCALE));
    }

    /** The charts of the whole site; wall and dew point is that of the room whose coat waits longest. */
    private static Map<String, Chart> charts(Findings findings, PageModel page, Pictures pictures) {
        List<RoomPlan> rooms = findings.scenario().rooms();
        List<Coat> worstFirst = PageModels.worstFirst(findings);
        RoomPlan worstRoom = worstFirst.stream()
                .findFirst()
                .map(coat -> Waiting.roomOf(findings.wall(coat.plan().wall())))
                .flatMap(name ->
                        rooms.stream().filter(room -> room.name().equals(name)).findFirst())
                .orElse(rooms.get(0));
        Map<String, Chart> charts = new LinkedHashMap<>();
        pictures.drying(DRYING, worstFirst, rooms).ifPresent(chart -> charts.put(DRYING, chart));
        pictures.wallAndDewPoint(WALL, worstRoom).ifPresent(chart -> charts.put(WALL, chart));
        charts.put(ACCOUNT, page.account().chart());
        return charts;
    }
}
