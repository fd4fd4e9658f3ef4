package org.limedry.cli.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Pieces of a page. */
final class Markdown {
    private Markdown() {}

    /** Returns the heading of a table. */
    static String head(String... columns) {
        return row((Object[]) columns)
                + "|"
                + Stream.of(columns).map(column -> "---|").collect(Collectors.joining())
                + "\n";
    }

    /** Returns a row of a table; bars in its cells would be taken for borders. */
    static String row(Object... cells) {
        List<String> texts = new ArrayList<>();
        for (Object cell : cells) {
            texts.add(cell.toString().replace("|", "/"));
        }
        return "| " + String.join(" | ", texts) + " |\n";
    }

    /** Returns a chart in its two sizes, of which the page shows one. */
    static String chart(String name, String title) {
        return "<picture>\n  <source media=\"(max-width: 560px)\" srcset=\"" + ChartFiles.narrow(name)
                + "\">\n  <img alt=\""
                + title.replace("\"", "&quot;")
                + "\" src=\""
                + ChartFiles.wide(name)
                + "\">\n</picture>\n\n";
    }
}
