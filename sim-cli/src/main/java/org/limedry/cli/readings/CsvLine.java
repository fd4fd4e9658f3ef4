package org.limedry.cli.readings;

import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * One line of a CSV file.
 *
 * @param number its number in the file, from 1
 * @param cells its cells as they stand
 */
record CsvLine(int number, List<String> cells) {
    /** Reads the line that the parser has just entered. */
    static CsvLine next(CsvParser parser) throws IOException {
        List<String> cells = new ArrayList<>();
        int number = parser.currentTokenLocation().getLineNr();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            number = parser.currentTokenLocation().getLineNr();
            cells.add(parser.getText());
        }
        return new CsvLine(number, cells);
    }
}
