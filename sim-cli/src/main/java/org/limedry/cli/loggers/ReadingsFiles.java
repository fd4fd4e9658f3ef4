package org.limedry.cli.loggers;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.limedry.cli.chart.Charts;
import org.limedry.cli.chart.ReadingsChart;
import org.limedry.cli.chart.Size;
import org.limedry.cli.page.OutputFolder;
import org.limedry.cli.problem.BadInputException;
import org.limedry.cli.problem.InputProblem;
import org.limedry.cli.readings.logger.CleanCsv;
import org.limedry.cli.readings.logger.Found;
import org.limedry.cli.readings.logger.Joined;
import org.limedry.cli.readings.logger.LoggerFile;
import org.limedry.climate.Readings;

/** Writes what a look at logger files gives. */
final class ReadingsFiles {
    private static final int PNG_SCALE = 2;
    private static final String JOINED = "joined";

    private ReadingsFiles() {}

    /** What there is to write: files, and what they come to when they are joined. */
    record Job(List<LoggerFile> files, List<Joined> joined) {}

    /** Writes the files and returns lines that say so. */
    static List<String> write(Job job, Path out) throws IOException {
        Map<String, LoggerFile> named = named(job.files());
        List<Path> paths = new ArrayList<>();
        named.keySet().forEach(name -> names(name).forEach(file -> paths.add(Path.of(file))));
        names(JOINED).forEach(file -> paths.add(Path.of(file)));
        List<String> told = new ArrayList<>();
        try (OutputFolder folder = OutputFolder.open(out, paths)) {
            for (Map.Entry<String, LoggerFile> entry : named.entrySet()) {
                LoggerFile file = entry.getValue();
                Files.writeString(folder.aside().resolve(entry.getKey() + "-found.csv"), found(file));
                boolean drawn = writeReadings(file.readings(), file, folder.aside(), entry.getKey());
                told.add("Wrote " + out.resolve(entry.getKey()) + "-clean.csv, -hourly.csv, -found.csv"
                        + (drawn ? ", chart (svg, png)" : ""));
            }
            for (Joined joined : job.joined()) {
                writeReadings(joined.readings(), job.files().get(0), folder.aside(), JOINED);
                told.add("Wrote " + out.resolve(JOINED) + "-clean.csv, -hourly.csv, chart (svg, png)");
            }
            folder.publish();
        }
        return told;
    }

    private static List<String> names(String name) {
        return List.of(name + "-clean.csv", name + "-hourly.csv", name + "-found.csv", name + ".svg", name + ".png");
    }

    private static Map<String, LoggerFile> named(List<LoggerFile> files) {
        Map<String, LoggerFile> named = new LinkedHashMap<>();
        for (LoggerFile file : files) {
            String name = String.valueOf(Path.of(file.shown()).getFileName()).replaceFirst("\\.[^.]*$", "");
            if (named.putIfAbsent(name, file) != null || name.equals(JOINED)) {
                throw new BadInputException(List.of(new InputProblem(
                        file.shown(), 0, "", "must have a name of its own, for the results bear it", "named " + name)));
            }
        }
        return named;
    }

    private static boolean writeReadings(Readings readings, LoggerFile file, Path folder, String name)
            throws IOException {
        Files.writeString(folder.resolve(name + "-clean.csv"), CleanCsv.all(readings));
        Files.writeString(folder.resolve(name + "-hourly.csv"), CleanCsv.hourly(readings));
        Optional<ReadingsChart> chart = ReadingsPictures.chart(readings, file.zone());
        if (chart.isPresent()) {
            Files.writeString(folder.resolve(name + ".svg"), Charts.svgFile(chart.get(), Size.WIDE));
            Files.write(folder.resolve(name + ".png"), Charts.png(chart.get(), Size.WIDE, PNG_SCALE));
        }
        return chart.isPresent();
    }

    private static String found(LoggerFile file) {
        StringBuilder text = new StringBuilder("line,lastLine,what,words\n");
        for (Found one : file.found()) {
            text.append(one.line()).append(',').append(one.lastLine()).append(',');
            text.append(quoted(one.kind().words()))
                    .append(',')
                    .append(quoted(one.words()))
                    .append('\n');
        }
        return text.toString();
    }

    private static String quoted(String words) {
        return '"' + words.replace("\"", "\"\"").replaceAll("\\p{Cntrl}", " ") + '"';
    }
}
