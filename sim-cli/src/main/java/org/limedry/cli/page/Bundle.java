package org.limedry.cli.page;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.limedry.cli.chart.Chart;
import org.limedry.cli.chart.Charts;
import org.limedry.cli.chart.Size;

/** The files of one answer, made when they are written. */
public final class Bundle {
    /** For screens and messages; print has the SVG. */
    private static final int PNG_SCALE = 2;

    private final Map<String, Supplier<byte[]>> files = new LinkedHashMap<>();

    /** Adds {@code NAME.html}. */
    public Bundle page(String name, Page page) {
        return text(name + ".html", () -> PageHtml.of(page));
    }

    /** Adds {@code NAME.svg} and {@code NAME.png}, both in the wide drawing. */
    public Bundle chart(String name, Chart chart) {
        text(name + ".svg", () -> Charts.svgFile(chart, Size.WIDE));
        return file(name + ".png", () -> Charts.png(chart, Size.WIDE, PNG_SCALE));
    }

    /** Adds {@code NAME.csv}. */
    public Bundle csv(String name, CsvSheet sheet) {
        return text(name + ".csv", sheet::text);
    }

    /** Adds {@code NAME.json}. */
    public Bundle json(String name, JsonNode root) {
        return text(name + ".json", () -> JsonText.of(root));
    }

    /** Adds a text file. */
    public Bundle text(String fileName, Supplier<String> text) {
        return file(fileName, () -> text.get().getBytes(StandardCharsets.UTF_8));
    }

    /** Adds a file. */
    public Bundle file(String fileName, Supplier<byte[]> bytes) {
        files.put(fileName, bytes);
        return this;
    }

    /** Returns the names of all files, in the order in which they were added. */
    public List<String> names() {
        return List.copyOf(files.keySet());
    }

    /**
     * Writes the files into a folder that exists, several at a time.
     *
     * @throws UncheckedIOException if one cannot be written
     */
    public void write(Path folder) {
        files.entrySet().parallelStream().forEach(file -> {
            try {
                Files.write(folder.resolve(file.getKey()), file.getValue().get());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }
}
