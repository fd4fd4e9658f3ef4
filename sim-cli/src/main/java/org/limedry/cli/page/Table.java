package org.limedry.cli.page;

import java.util.List;
import org.limedry.units.Check;

/**
 * A table: its first column names the row.
 *
 * @param caption what it shows
 * @param columns headings
 * @param rows cells, as many in each row as there are columns
 */
public record Table(String caption, List<Column> columns, List<List<String>> rows) {
    /**
     * A column.
     *
     * @param heading its heading, with the unit
     * @param number whether its cells are numbers, to stand flush right
     */
    public record Column(String heading, boolean number) {
        /** Returns a column of words. */
        public static Column words(String heading) {
            return new Column(heading, false);
        }

        /** Returns a column of numbers. */
        public static Column number(String heading) {
            return new Column(heading, true);
        }
    }

    public Table {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<String> row : rows) {
            Check.that(row.size() == columns.size(), "rows", "as long as there are columns", row.size());
        }
    }
}
