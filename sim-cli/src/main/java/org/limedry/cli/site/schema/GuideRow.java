package org.limedry.cli.site.schema;

import java.util.List;

/**
 * One key in the user guide.
 *
 * @param path where it stands, such as {@code rooms.NAME.walls.NAME.areaM2}
 * @param value what may stand there
 * @param unsaid what happens when it is left out: "needed", a default, or empty
 * @param meaning what it means
 */
public record GuideRow(String path, String value, String unsaid, String meaning) {
    /** Returns the same row for a key that only some of several things have. */
    GuideRow of(List<String> things) {
        return new GuideRow(path, value, unsaid, "(" + String.join(", ", things) + ") " + meaning);
    }
}
