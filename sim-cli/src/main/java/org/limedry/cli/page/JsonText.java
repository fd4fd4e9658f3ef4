package org.limedry.cli.page;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import org.limedry.cli.safety.Situation;

/** JSON files as limedry writes them: two blanks a level, one line feed at each end of a line, on every machine. */
public final class JsonText {
    private static final ObjectMapper JSON = new ObjectMapper();

    private JsonText() {}

    /** Puts the cautions that are due into a file's object: what a reader of data must know too. */
    public static void putCautions(ObjectNode node, Situation situation) {
        ArrayNode cautions = node.putArray("cautions");
        situation.cautions().forEach(caution -> cautions.add(caution.text()));
    }

    /** Returns a new object to fill. */
    public static ObjectNode object() {
        return JSON.createObjectNode();
    }

    /** Puts a value: text, number, date, truth, a list of texts, or JSON; an optional that is empty is null. */
    public static void put(ObjectNode node, String key, Object value) {
        Optional<?> known = Value.of(value);
        known.ifPresentOrElse(it -> putKnown(node, key, it), () -> node.putNull(key));
    }

    private static void putKnown(ObjectNode node, String key, Object value) {
        if (value instanceof JsonNode json) {
            node.set(key, json);
        } else if (value instanceof Integer || value instanceof Long) {
            node.put(key, ((Number) value).longValue());
        } else if (value instanceof Number number) {
            node.put(key, number.doubleValue());
        } else if (value instanceof Boolean truth) {
            node.put(key, truth);
        } else if (value instanceof List<?> several) {
            ArrayNode array = node.putArray(key);
            several.forEach(one -> array.add(one.toString()));
        } else {
            node.put(key, value.toString());
        }
    }

    /** Returns the file's text. */
    public static String of(JsonNode root) {
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentObjectsWith(new DefaultIndenter("  ", "\n"));
        printer.indentArraysWith(new DefaultIndenter("  ", "\n"));
        try {
            return JSON.writer(printer).writeValueAsString(root) + "\n";
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
