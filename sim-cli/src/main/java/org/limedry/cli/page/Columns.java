package org.limedry.cli.page;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The columns of rows of one kind, declared once: the table on a page, the CSV file and the JSON file are all made from them,
 * so keys agree and a value that is not known looks the same everywhere: a dash on the page, empty in the CSV, null in the
 * JSON.
 *
 * @param shown columns on the page
 * @param kept columns in the files
 */
public record Columns<T>(List<Shown<T>> shown, List<Kept<T>> kept) {
    private static final String NOT_KNOWN = "\u2013";

    /**
     * A column on the page.
     *
     * @param column its heading, with the unit
     * @param cell returns its cell, as words; an {@link Optional} may be empty
     */
    public record Shown<T>(Table.Column column, Function<T, ?> cell) {
        private String text(T row) {
            return Value.of(cell.apply(row)).map(Object::toString).orElse(NOT_KNOWN);
        }
    }

    /**
     * A column in the files.
     *
     * @param key its heading in the CSV and its key in the JSON, with the unit
     * @param value returns its value: text, number, date, truth, or a list of these; any {@link Optional} may be empty
     */
    public record Kept<T>(String key, Function<T, ?> value) {}

    public Columns {
        shown = List.copyOf(shown);
        kept = List.copyOf(kept);
    }

    /** Returns no columns yet. */
    public static <T> Columns<T> of() {
        return new Columns<>(List.of(), List.of());
    }

    /** Adds a column of words to the page. */
    public Columns<T> words(String heading, Function<T, ?> cell) {
        return new Columns<>(and(shown, new Shown<>(Table.Column.words(heading), cell)), kept);
    }

    /** Adds a column of numbers, already written as words, to the page. */
    public Columns<T> number(String heading, Function<T, ?> cell) {
        return new Columns<>(and(shown, new Shown<>(Table.Column.number(heading), cell)), kept);
    }

    /** Adds a column to the files. */
    public Columns<T> key(String key, Function<T, ?> value) {
        return new Columns<>(shown, and(kept, new Kept<>(key, value)));
    }

    /** Returns these columns for rows of which each has one of these. */
    public <R> Columns<R> through(Function<R, T> part) {
        return new Columns<>(
                shown.stream()
                        .map(one -> new Shown<>(one.column(), one.cell().compose(part)))
                        .toList(),
                kept.stream()
                        .map(one -> new Kept<>(one.key(), one.value().compose(part)))
                        .toList());
    }

    /** Adds columns that others share. */
    public Columns<T> and(Columns<T> more) {
        return new Columns<>(
                Stream.concat(shown.stream(), more.shown.stream()).toList(),
                Stream.concat(kept.stream(), more.kept.stream()).toList());
    }

    private static <E> List<E> and(List<E> some, E one) {
        return Stream.concat(some.stream(), Stream.of(one)).toList();
    }

    /** Returns the cells of one row as a page shows them. */
    public List<String> cells(T row) {
        return shown.stream().map(one -> one.text(row)).toList();
    }

    /** Returns the table for a page. */
    public Table table(String caption, List<T> rows) {
        return new Table(
                caption,
                shown.stream().map(Shown::column).toList(),
                rows.stream().map(this::cells).toList());
    }

    /** Returns the sheet for a CSV file. */
    public CsvSheet csv(List<T> rows) {
        List<List<?>> cells = new ArrayList<>();
        rows.forEach(row ->
                cells.add(kept.stream().map(one -> one.value().apply(row)).toList()));
        return new CsvSheet(kept.stream().map(Kept::key).toList(), cells);
    }

    /** Returns the rows for a JSON file. */
    public ArrayNode json(List<T> rows) {
        ArrayNode array = JsonNodeFactory.instance.arrayNode();
        rows.forEach(row -> array.add(json(row)));
        return array;
    }

    /** Returns one row for a JSON file. */
    public ObjectNode json(T row) {
        ObjectNode node = JsonText.object();
        kept.forEach(one -> JsonText.put(node, one.key(), one.value().apply(row)));
        return node;
    }
}
