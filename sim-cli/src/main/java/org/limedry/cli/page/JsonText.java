package org.limedry.cli.page;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
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
