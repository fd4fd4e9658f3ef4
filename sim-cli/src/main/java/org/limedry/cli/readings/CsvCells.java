package org.limedry.cli.readings;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Splits line by line, so that a stray quotation mark spoils its line and not the rest of the file. */
public final class CsvCells {
    private static final char QUOTE = '"';

    private final CSVFormat format;
    private final OneLine line = new OneLine();
    private final Iterator<CSVRecord> plain;

    /** Splits at a separator. */
    public CsvCells(char separator) {
        format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(separator)
                .setIgnoreSurroundingSpaces(true)
                .setIgnoreEmptyLines(false)
                .get();
        plain = parser(line).iterator();
    }

    private CSVParser parser(Reader reader) {
        try {
            return CSVParser.builder().setFormat(format).setReader(reader).get();
        } catch (IOException e) {
            // A line in memory cannot fail to be read.
            throw new UncheckedIOException(e);
        }
    }

    /** Returns the cells of a single line; see {@link #split}. */
    public static Optional<List<String>> of(String line, char separator) {
        return new CsvCells(separator).split(line);
    }

    /** Returns the cells of a line without blanks around them; nothing when its quotation marks do not pair. */
    public Optional<List<String>> split(String text) {
        if (text.isBlank()) {
            return Optional.of(List.of());
        }
        if (text.indexOf(QUOTE) < 0) {
            line.put(text);
            return Optional.of(cells(plain.next()));
        }
        OneLine quoted = new OneLine();
        quoted.put(text);
        try {
            return Optional.of(cells(parser(quoted).iterator().next()));
        } catch (UncheckedIOException e) {
            return Optional.empty();
        }
    }

    private static List<String> cells(CSVRecord row) {
        String[] cells = row.values();
        Arrays.setAll(cells, i -> cells[i].strip());
        return List.of(cells);
    }

    /** Hands one line at a time to a parser that outlives it: making a parser costs more than splitting a line. */
    private static final class OneLine extends Reader {
        private String text = "";
        private int next;

        void put(String line) {
            text = line + "\n";
            next = 0;
        }

        @Override
        public int read(char[] to, int offset, int length) {
            if (next >= text.length()) {
                return -1;
            }
            int count = Math.min(length, text.length() - next);
            text.getChars(next, next + count, to, offset);
            next += count;
            return count;
        }

        @Override
        public void close() {
            next = text.length();
        }
    }
}
