package org.limedry.cli.report;

import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvGenerator;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.Writer;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import org.limedry.simulation.History;
import org.limedry.simulation.Series;
import org.limedry.units.Units;

/** {@code hours.csv}: one row for each hour, every state with its unit in the heading, seven figures. */
final class HoursCsv {
    private static final double PERCENT = Units.percentFromFraction(1.0);
    private static final double PER_HOUR = Units.SECONDS_PER_HOUR;
    private static final double MM = Units.mmFromMetres(1.0);
    private static final double KPA = 1e-3;

    private final List<Column> columns = new ArrayList<>();

    private HoursCsv() {}

    /**
     * A column.
     *
     * @param heading what and where, with its unit
     * @param series the figures as they are inside
     * @param factor from the unit inside to that of the heading
     */
    private record Column(String heading, Series series, double factor) {
        /** Returns a figure with the seven digits of single precision, more than any state is good for. */
        float at(int hour) {
            return (float) (series.at(hour) * factor);
        }
    }

    /** Writes the file. */
    static void write(Findings findings, Writer out) throws IOException {
        History history = findings.outcome().history();
        HoursCsv csv = new HoursCsv();
        csv.add("outdoors.celsius", history.outdoorCelsius(), 1.0);
        csv.add("outdoors.rhPercent", history.outdoorRelativeHumidity(), PERCENT);
        history.rooms().forEach(csv::addRoom);
        FaceNames names = FaceNames.of(findings.outcome().faces());
        history.faces().forEach(face -> csv.addFace(face, names));
        history.coats().forEach(csv::addCoat);
        csv.writeRows(findings, out);
    }

    private void addRoom(History.RoomHours room) {
        String name = room.room() + ".";
        add(name + "airCelsius", room.airCelsius(), 1.0);
        add(name + "rhPercent", room.relativeHumidity(), PERCENT);
        add(name + "dewPointCelsius", room.dewPointCelsius(), 1.0);
        add(name + "carbonDioxidePpm", room.carbonDioxidePpm(), 1.0);
        add(name + "freshAirM3PerH", room.freshAirM3PerS(), PER_HOUR);
        add(name + "openPercentOfHour", room.openShare(), PERCENT);
        add(name + "heaterW", room.heaterWatts(), 1.0);
        add(name + "dehumidifierKgPerH", room.dehumidifierKgPerS(), PER_HOUR);
    }

    private void addFace(History.FaceHours face, FaceNames names) {
        String name = names.name(face.wall(), face.room()) + ".";
        add(name + "faceCelsius", face.celsius(), 1.0);
        add(name + "faceRhPercent", face.relativeHumidity(), PERCENT);
        add(name + "filmKgPerM2", face.filmKgPerM2(), 1.0);
        add(name + "vapourIntoFaceKgPerM2H", face.vapourKgPerM2S(), PER_HOUR);
    }

    private void addCoat(History.CoatHours coat) {
        String name = coat.wall() + " coat " + coat.number() + ".";
        add(name + "waterKgPerM2", coat.waterKgPerM2(), 1.0);
        add(name + "meanSuctionKPa", coat.meanSuctionPa(), KPA);
        add(name + "equivalentAgeDays", coat.equivalentAgeDays(), 1.0);
        add(name + "hardThroughMm", coat.carbonatedM(), MM);
    }

    private void add(String heading, Series series, double factor) {
        columns.add(new Column(heading, series, factor));
    }

    private void writeRows(Findings findings, Writer out) throws IOException {
        CsvSchema.Builder schema = CsvSchema.builder().addColumn("timeUtc").addColumn("timeOnSite");
        columns.forEach(column -> schema.addColumn(column.heading()));
        DateTimeFormatter onSite =
                DateTimeFormatter.ISO_OFFSET_DATE_TIME.withZone(findings.notes().zone());
        History history = findings.outcome().history();
        try (CsvGenerator rows = new CsvFactory().createGenerator(out)) {
            rows.setSchema(schema.setUseHeader(true).setLineSeparator("\n").build());
            // Without this the writer puts quotes around any text longer than some two dozen letters.
            rows.enable(CsvGenerator.Feature.STRICT_CHECK_FOR_QUOTING);
            for (int hour = 0; hour < history.times().size(); hour++) {
                rows.writeStartArray();
                rows.writeString(history.times().get(hour).toString());
                rows.writeString(onSite.format(history.times().get(hour)));
                for (Column column : columns) {
                    rows.writeNumber(column.at(hour));
                }
                rows.writeEndArray();
            }
        }
    }
}
