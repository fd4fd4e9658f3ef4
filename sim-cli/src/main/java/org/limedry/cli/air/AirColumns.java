package org.limedry.cli.air;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvGenerator;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.limedry.air.MoistAir;
import org.limedry.cli.readings.AirRow;
import org.limedry.cli.readings.AirTable;
import org.limedry.units.Units;

/** The columns that {@code limedry air --table} adds to a table, in full double precision; blank where there is no value. */
final class AirColumns {
    /** The results for the air. */
    static final List<String> OF_AIR = List.of(
            "saturationPressurePa",
            "vapourPressurePa",
            "dewPointCelsius",
            "frostPointCelsius",
            "wetBulbCelsius",
            "humidityRatioKgPerKg",
            "absoluteHumidityGPerM3",
            "enthalpyKJPerKg",
            "specificVolumeM3PerKg");

    /** The results for a wall, when the table has wall temperatures. */
    static final List<String> OF_WALL = List.of("surfaceRhPercent", "condenses");

    private static final double GRAMS_PER_KG = 1000.0;

    private AirColumns() {}

    /** Every name that the table may not have itself. */
    static List<String> names() {
        return Stream.concat(OF_AIR.stream(), OF_WALL.stream()).toList();
    }

    /** Writes the table with its results. */
    static void write(AirTable table, Writer out) throws IOException {
        CsvFactory factory = CsvFactory.builder()
                .enable(CsvGenerator.Feature.STRICT_CHECK_FOR_QUOTING)
                .build();
        // The results go where the caller says; closing is the caller's too.
        factory.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
        try (CsvGenerator csv = factory.createGenerator(out)) {
            csv.setSchema(CsvSchema.emptySchema());
            writeRow(csv, heading(table));
            for (AirRow row : table.rows()) {
                writeRow(csv, cells(row, table.hasWalls()));
            }
        }
    }

    private static List<String> heading(AirTable table) {
        List<String> heading = new ArrayList<>(table.header());
        heading.addAll(OF_AIR);
        if (table.hasWalls()) {
            heading.addAll(OF_WALL);
        }
        return heading;
    }

    private static void writeRow(CsvGenerator csv, List<String> cells) throws IOException {
        csv.writeStartArray();
        for (String cell : cells) {
            csv.writeString(cell);
        }
        csv.writeEndArray();
    }

    private static List<String> cells(AirRow row, boolean withWall) {
        MoistAir air = row.air();
        List<String> cells = new ArrayList<>(row.cells());
        cells.add(text(air.saturationPressurePa()));
        cells.add(text(air.vapourPressurePa()));
        cells.add(text(air.dewPointCelsius()));
        cells.add(text(air.frostPointCelsius()));
        cells.add(text(air.wetBulbCelsius()));
        cells.add(text(air.humidityRatio()));
        cells.add(text(GRAMS_PER_KG * air.absoluteHumidityKgPerM3()));
        cells.add(text(air.enthalpyKJPerKg()));
        cells.add(text(air.specificVolumeM3PerKg()));
        if (withWall) {
            addWall(row, cells);
        }
        return cells;
    }

    private static void addWall(AirRow row, List<String> cells) {
        if (row.wallCelsius().isEmpty()) {
            cells.addAll(List.of("", ""));
            return;
        }
        double wallCelsius = row.wallCelsius().getAsDouble();
        cells.add(text(Units.percentFromFraction(row.air().relativeHumidityAt(wallCelsius))));
        cells.add(Boolean.toString(row.air().condensesOn(wallCelsius)));
    }

    private static String text(OptionalDouble value) {
        return value.isPresent() ? text(value.getAsDouble()) : "";
    }

    private static String text(double value) {
        return Double.toString(value);
    }
}
