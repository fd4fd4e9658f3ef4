package org.limedry.cli.page;

import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvGenerator;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.stream.Collectors;
import org.limedry.units.Check;

/**
 * Rows of figures with their units in the headings.
 *
 * @param headings one for each column
 * @param rows texts, numbers, dates, truths and lists of texts; an empty {@link java.util.Optional} of any kind is an empty cell
 */
public record CsvSheet(List<String> headings, List<List<?>> rows) {
    public CsvSheet {
        headings = List.copyOf(headings);
        rows = List.copyOf(rows);
        for (List<?> row : rows) {
            Check.that(row.size() == headings.size(), "rows", "as long as there are headings", row.size());
        }
    }

    /** Returns the file's text; numbers in full. */
    public String text() {
        CsvSchema.Builder schema = CsvSchema.builder();
        headings.forEach(schema::addColumn);
        StringWriter out = new StringWriter();
        try (CsvGenerator cells = new CsvFactory().createGenerator(out)) {
            cells.setSchema(schema.setUseHeader(true).setLineSeparator("\n").build());
            cells.enable(CsvGenerator.Feature.STRICT_CHECK_FOR_QUOTING);
            for (List<?> row : rows) {
                cells.writeStartArray();
                for (Object cell : row) {
                    write(cells, cell);
                }
                cells.writeEndArray();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString();
    }

    private static void write(CsvGenerator cells, Object value) throws IOException {
        Object cell = Value.of(value).map(Object.class::cast).orElse("");
        if (cell instanceof Integer || cell instanceof Long) {
            cells.writeNumber(((Number) cell).longValue());
        } else if (cell instanceof Number number) {
            cells.writeNumber(number.doubleValue());
        } else if (cell instanceof Boolean truth) {
            cells.writeBoolean(truth);
        } else if (cell instanceof List<?> several) {
            cells.writeString(several.stream().map(Object::toString).collect(Collectors.joining(" ")));
        } else {
            cells.writeString(cell.toString());
        }
    }
}
