package org.limedry.cli.readings;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Splits single lines, so that a stray quotation mark spoils its line and not the rest of the file. */
public final class CsvCells {
    private static final CsvFactory FACTORY =
            CsvFactory.builder().enable(CsvParser.Feature.TRIM_SPACES).build();

    private CsvCells() {}

    /** Returns the cells of a line without blanks around them; nothing when its quotation marks do not pair. */
    public static Optional<List<String>> of(String line, char separator) {
        if (line.isBlank()) {
            return Optional.of(List.of());
        }
        try (CsvParser parser = FACTORY.createParser(line)) {
            parser.setSchema(CsvSchema.emptySchema().withColumnSeparator(separator));
            List<String> cells = new ArrayList<>();
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                if (token == JsonToken.VALUE_STRING) {
                    cells.add(parser.getText().strip());
                }
            }
            return Optional.of(List.copyOf(cells));
        } catch (JsonProcessingException e) {
            return Optional.empty();
        } catch (IOException e) {
            // A line in memory cannot fail to be read.
            throw new UncheckedIOException(e);
        }
    }
}
