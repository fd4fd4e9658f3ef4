package org.limedry.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/**
 * What one command line did.
 *
 * @param code its exit code
 * @param out what it printed as its answer
 * @param err what it printed as problems
 */
public record Cli(int code, String out, String err) {
    /** Runs a command line. */
    public static Cli run(Object... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] texts = Arrays.stream(args).map(Object::toString).toArray(String[]::new);
        int code = Main.run(texts, new PrintWriter(out, true), new PrintWriter(err, true));
        return new Cli(code, out.toString(), err.toString());
    }

    List<String> lines() {
        return out.lines().toList();
    }

    static JsonNode json(Path file) throws IOException {
        return new ObjectMapper().readTree(file.toFile());
    }
}
