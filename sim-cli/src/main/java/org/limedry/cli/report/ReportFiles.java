package org.limedry.cli.report;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
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

    /** 680 px at 180 mm become 288 dots per inch: fit for print. */
    private static final int PNG_SCALE = 3;

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

    /**
     * Writes the files.
     *
     * @param findings what was found
     * @param folder where to; exists
     */
    public static void write(Findings findings, Path folder) throws IOException {
        PageModel page = PageModels.of(findings);
        Pictures pictures = new Pictures(findings);
        Files.writeString(folder.resolve(REPORT), HtmlPage.of(findings, page, pictures));
        Files.writeString(folder.resolve(SUMMARY), SummaryJson.of(findings));
        try (Writer out = Files.newBufferedWriter(folder.resolve(HOURS))) {
            HoursCsv.write(findings, out);
        }
        for (Map.Entry<String, Chart> chart : charts(findings, page, pictures).entrySet()) {
            Files.writeString(folder.resolve(chart.getKey() + ".svg"), Charts.svgFile(chart.getValue(), Size.WIDE));
            Files.write(folder.resolve(chart.getKey() + ".png"), Charts.png(chart.getValue(), Size.WIDE, PNG_SCALE));
        }
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
