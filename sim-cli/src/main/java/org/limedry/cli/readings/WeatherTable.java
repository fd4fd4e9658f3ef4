package org.limedry.cli.readings;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.limedry.climate.WeatherReading;
import org.limedry.units.Units;

/** The rows of a weather file, cell by cell. */
final class WeatherTable {
    private static final String TIME = "timeUtc";
    private static final String CELSIUS = "celsius";
    private static final String HUMIDITY = "rhPercent";
    private static final String WIND = "windMPerS";
    private static final List<String> COLUMNS = List.of(TIME, CELSIUS, HUMIDITY, WIND);
    private static final Pattern NUMBER = Pattern.compile("[-+]?\\d{1,9}(\\.\\d{1,12})?");

    private final Report report;
    private final List<WeatherRow> rows = new ArrayList<>();
    private List<String> header = List.of();
    private int rowsSeen;

    private WeatherTable(Report report) {
        this.report = report;
    }

    /** Takes a problem. */
    @FunctionalInterface
    interface Report {
        void problem(int line, String found, String rule);
    }

    /** Returns the rows that can be read; reports every one that cannot. */
    static List<WeatherRow> parse(String text, Report report) {
        WeatherTable table = new WeatherTable(report);
        try (CsvParser parser = factory().createParser(text)) {
            parser.setSchema(CsvSchema.emptySchema().withComments());
            table.readAll(parser);
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? 0 : Math.max(e.getLocation().getLineNr(), 0);
            report.problem(line, "this is not CSV", String.valueOf(e.getOriginalMessage()));
        } catch (IOException e) {
            report.problem(0, "it cannot be read", String.valueOf(e.getMessage()));
        }
        return table.rows;
    }

    private static CsvFactory factory() {
        return CsvFactory.builder()
                .enable(CsvParser.Feature.SKIP_EMPTY_LINES)
                .enable(CsvParser.Feature.TRIM_SPACES)
                .build();
    }

    private void readAll(CsvParser parser) throws IOException {
        while (parser.nextToken() != null) {
            CsvLine row = CsvLine.next(parser);
            if (!header.isEmpty()) {
                readRow(row.number(), row.cells());
            } else if (!readHeader(row.number(), row.cells())) {
                return;
            }
        }
        if (header.isEmpty()) {
            report.problem(0, "there is nothing in it", headingRule());
        } else if (rowsSeen == 0) {
            report.problem(0, "there are no readings in it", "must have a row for each hour");
        }
    }

    private boolean readHeader(int line, List<String> cells) {
        header = cells;
        boolean known = COLUMNS.containsAll(cells) && cells.stream().distinct().count() == cells.size();
        if (!known || !cells.containsAll(COLUMNS.subList(0, 3))) {
            report.problem(line, "heading \"" + String.join(",", cells) + "\"", headingRule());
            return false;
        }
        return true;
    }

    private static String headingRule() {
        return "must begin with the heading " + String.join(",", COLUMNS) + " (the last may be left out)";
    }

    private void readRow(int line, List<String> cells) {
        rowsSeen++;
        if (cells.size() != header.size()) {
            report.problem(line, cells.size() + " cells", "must have " + header.size());
            return;
        }
        Optional<Instant> time = time(line, cell(cells, TIME));
        OptionalDouble celsius = number(line, cells, CELSIUS);
        OptionalDouble percent = number(line, cells, HUMIDITY);
        OptionalDouble wind = number(line, cells, WIND);
        OptionalDouble humidity =
                percent.isEmpty() ? percent : OptionalDouble.of(Units.fractionFromPercent(percent.getAsDouble()));
        time.ifPresent(at -> rows.add(new WeatherRow(line, new WeatherReading(at, celsius, humidity, wind))));
    }

    private String cell(List<String> cells, String column) {
        int index = header.indexOf(column);
        return index < 0 ? "" : cells.get(index);
    }

    private Optional<Instant> time(int line, String text) {
        String plain = text.replace(' ', 'T');
        String local = plain.endsWith("Z") ? plain.substring(0, plain.length() - 1) : plain;
        try {
            return Optional.of(LocalDateTime.parse(local).toInstant(ZoneOffset.UTC));
        } catch (DateTimeException e) {
            report.problem(line, TIME + " \"" + text + "\"", "must be an hour UTC, such as 2026-11-09T08:00");
            return Optional.empty();
        }
    }

    private OptionalDouble number(int line, List<String> cells, String column) {
        String text = cell(cells, column);
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        if (!NUMBER.matcher(text).matches()) {
            report.problem(
                    line, column + " \"" + text + "\"", "must be a plain number, or blank if there is no reading");
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(Double.parseDouble(text));
    }
}
