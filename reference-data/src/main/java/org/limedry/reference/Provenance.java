package org.limedry.reference;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Where the figures of a table come from: the lines {@code # key: value} at the head of its file. */
public final class Provenance {
    private static final String SEPARATOR = ": ";

    private final Map<String, List<String>> lines;

    private Provenance(Map<String, List<String>> lines) {
        this.lines = lines;
    }

    /**
     * Reads the head of a file.
     *
     * @param head the comment lines, without the comment sign
     * @throws IllegalStateException if a line is not {@code key: value}
     */
    static Provenance of(List<String> head) {
        Map<String, List<String>> lines = head.stream()
                .collect(Collectors.groupingBy(
                        Provenance::key,
                        LinkedHashMap::new,
                        Collectors.mapping(
                                line -> line.substring(line.indexOf(SEPARATOR) + SEPARATOR.length())
                                        .strip(),
                                Collectors.toUnmodifiableList())));
        return new Provenance(lines);
    }

    private static String key(String line) {
        int end = line.indexOf(SEPARATOR);
        if (end < 0) {
            throw new IllegalStateException("head of a table: must be \"# key: value\", was \"" + line + "\"");
        }
        return line.substring(0, end).strip();
    }

    /** Author, year, title, table or page. */
    public String source() {
        return one("source");
    }

    /** How the figures were obtained: READ, COMPUTED, FROM MEMORY, or the column that says so for each row. */
    public String read() {
        return one("read");
    }

    /** Units of the columns. */
    public String units() {
        return one("units");
    }

    /** What else a reader must know; empty when there is nothing. */
    public List<String> notes() {
        return all("note");
    }

    /** The licence with every statement that must go with the figures; empty when none is given. */
    public List<String> licence() {
        return all("licence");
    }

    /** The only line with this key. */
    String one(String key) {
        List<String> found = all(key);
        if (found.size() != 1) {
            throw new IllegalStateException("head of a table: must have one line \"# " + key + ":\", was " + found);
        }
        return found.get(0);
    }

    private List<String> all(String key) {
        return lines.getOrDefault(key, List.of());
    }
}
