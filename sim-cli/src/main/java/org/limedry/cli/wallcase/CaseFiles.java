package org.limedry.cli.wallcase;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvGenerator;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.limedry.units.Units;

/** The files of a wall case, in full double precision. */
final class CaseFiles {
    private static final String PROFILES = "profiles.csv";
    private static final String LAYERS = "layers.csv";
    private static final String FACES = "faces.csv";
    private static final String SUMMARY = "summary.json";
    private static final double FULL_PERCENT = 100.0;

    private CaseFiles() {}

    /** Returns the names of the files. */
    static List<Path> names() {
        return List.of(Path.of(PROFILES), Path.of(LAYERS), Path.of(FACES), Path.of(SUMMARY));
    }

    /** Writes all of them into a folder. */
    static void write(CaseResult result, String version, Path folder) throws IOException {
        writeProfiles(result, folder.resolve(PROFILES));
        writeLayers(result, folder.resolve(LAYERS));
        writeFaces(result, folder.resolve(FACES));
        ObjectMapper mapper = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);
        Files.writeString(folder.resolve(SUMMARY), mapper.writeValueAsString(CaseSummary.of(result, version)) + "\n");
    }

    private static void writeProfiles(CaseResult result, Path file) throws IOException {
        try (Table table = new Table(file, "hour", "xMm", "celsius", "rhPercent", "suctionPa", "waterKgPerM3")) {
            for (Snapshot snapshot : result.written().snapshots()) {
                for (Snapshot.Point point : snapshot.profile()) {
                    table.row(
                            number(snapshot.hour()),
                            number(point.positionMm()),
                            number(point.celsius()),
                            number(point.rhPercent()),
                            number(point.suctionPa()),
                            number(point.waterKgPerM3()));
                }
            }
        }
    }

    private static void writeLayers(CaseResult result, Path file) throws IOException {
        try (Table table = new Table(file, "hour", "layer", "waterKgPerM2")) {
            for (Snapshot snapshot : result.written().snapshots()) {
                for (int layer = 0; layer < snapshot.layerWaterKgPerM2().size(); layer++) {
                    table.row(
                            number(snapshot.hour()),
                            result.wallCase().layers().get(layer).name(),
                            number(snapshot.layerWaterKgPerM2().get(layer)));
                }
            }
        }
    }

    private static void writeFaces(CaseResult result, Path file) throws IOException {
        try (Table table = new Table(
                file,
                "hour",
                "face",
                "celsius",
                "rhPercent",
                "waterFluxKgPerM2S",
                "heatFluxWPerM2",
                "cumulativeWaterKgPerM2")) {
            for (Snapshot snapshot : result.written().snapshots()) {
                writeFace(table, snapshot.hour(), "outside", snapshot.outside());
                writeFace(table, snapshot.hour(), "inside", snapshot.inside());
            }
        }
    }

    private static void writeFace(Table table, double hour, String name, Snapshot.FaceState face) throws IOException {
        table.row(
                number(hour),
                name,
                number(face.now().celsius()),
                number(Math.min(
                        FULL_PERCENT, Units.percentFromFraction(face.now().relativeHumidity()))),
                number(face.now().waterKgPerM2S()),
                number(face.now().heatWPerM2()),
                number(face.cumulativeWaterKgPerM2()));
    }

    private static String number(double value) {
        return Double.toString(value);
    }

    /** A CSV file under its heading. */
    private static final class Table implements AutoCloseable {
        private final CsvGenerator csv;

        Table(Path file, String... heading) throws IOException {
            Writer out = Files.newBufferedWriter(file);
            csv = CsvFactory.builder()
                    .enable(CsvGenerator.Feature.STRICT_CHECK_FOR_QUOTING)
                    .build()
                    .createGenerator(out);
            csv.setSchema(CsvSchema.emptySchema().withLineSeparator("\n"));
            row(heading);
        }

        void row(String... cells) throws IOException {
            csv.writeStartArray();
            for (String cell : cells) {
                csv.writeString(cell);
            }
            csv.writeEndArray();
        }

        @Override
        public void close() throws IOException {
            csv.close();
        }
    }
}
