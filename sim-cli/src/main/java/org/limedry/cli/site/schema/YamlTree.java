package org.limedry.cli.site.schema;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Reads YAML into {@link Node}s, line numbers kept, keys given twice kept too. */
public final class YamlTree {
    /** No site file is deeper than a dozen; a file that is deeper is no site file. */
    private static final int DEEPEST = 50;

    /** Only true and false are flags: "no" and "on" are words of the trade too. */
    private static final YAMLFactory FACTORY = YAMLFactory.builder()
            .enable(YAMLParser.Feature.PARSE_BOOLEAN_LIKE_WORDS_AS_STRINGS)
            .build();

    private final YAMLParser parser;
    private final Problems problems;

    private YamlTree(YAMLParser parser, Problems problems) {
        this.parser = parser;
        this.problems = problems;
    }

    /** Returns the root of a text, or reports at least one problem and returns nothing. */
    public static Optional<Node> parse(String text, Problems problems) {
        try (YAMLParser parser = FACTORY.createParser(text)) {
            return new YamlTree(parser, problems).root();
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? 0 : Math.max(e.getLocation().getLineNr(), 0);
            problems.add(line, "", "this is not YAML", sentence(String.valueOf(e.getOriginalMessage())));
            return Optional.empty();
        } catch (IOException e) {
            // A text in memory cannot fail to be read; what the parser says is shown all the same.
            problems.add(0, "", "this cannot be read", sentence(String.valueOf(e.getMessage())));
            return Optional.empty();
        }
    }

    /** Leaves out of the parser's message the lines that repeat the place. */
    private static String sentence(String message) {
        return message.lines()
                .filter(line -> !line.isBlank() && !line.startsWith(" "))
                .collect(Collectors.joining(": "));
    }

    private Optional<Node> root() throws IOException {
        if (parser.nextToken() == null) {
            problems.add(
                    0, "", "there is nothing in it", "must be a site file; limedry new FILE writes one to start from");
            return Optional.empty();
        }
        Node root = node(0);
        if (parser.nextToken() != null) {
            problems.add(line(), "", "a second document", "must be one document, without a line of three dashes");
        }
        return problems.isEmpty() ? Optional.of(root) : Optional.empty();
    }

    private int line() {
        return parser.currentTokenLocation().getLineNr();
    }

    private Node node(int depth) throws IOException {
        if (depth > DEEPEST) {
            throw new JsonProcessingException("nested too deep", parser.currentTokenLocation()) {
                private static final long serialVersionUID = 1L;
            };
        }
        return switch (parser.currentToken()) {
            case START_OBJECT -> group(depth);
            case START_ARRAY -> items(depth);
            case VALUE_NULL -> scalar(Node.Kind.EMPTY);
            case VALUE_TRUE, VALUE_FALSE -> scalar(Node.Kind.FLAG);
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> scalar(Node.Kind.NUMBER);
            default -> scalar(Node.Kind.TEXT);
        };
    }

    private Node scalar(Node.Kind kind) throws IOException {
        if (parser.isCurrentAlias()) {
            problems.add(line(), "", "*" + parser.getText(), "must be written out: site files have no aliases");
        }
        String text = parser.getText();
        return new Node.Scalar(line(), text.isEmpty() ? Node.Kind.EMPTY : kind, text);
    }

    private Node items(int depth) throws IOException {
        int line = line();
        List<Node> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(node(depth + 1));
        }
        return new Node.Items(line, items);
    }

    private Node group(int depth) throws IOException {
        int line = line();
        List<Node.Member> members = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            int keyLine = line();
            String key = parser.currentName();
            parser.nextToken();
            members.add(new Node.Member(keyLine, key, node(depth + 1)));
        }
        return new Node.Group(line, members);
    }
}
