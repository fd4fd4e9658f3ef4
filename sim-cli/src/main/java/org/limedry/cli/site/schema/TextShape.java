package org.limedry.cli.site.schema;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import java.util.function.Function;

/**
 * A text with a form of its own, such as a date or a timetable.
 *
 * @param words what it is, as the user guide prints it
 * @param pattern regular expression that the whole text must match, for the JSON Schema
 * @param parse makes the value; throws {@link IllegalArgumentException} whose message is the broken rule
 */
public record TextShape<T>(String words, String pattern, Function<String, T> parse) implements Shape<T> {
    private static final int LONGEST = 200;

    /** Returns free text on one line. */
    public static Shape<String> free() {
        return new TextShape<>("text", "^\\S(.*\\S)?$", TextShape::oneLine);
    }

    private static String oneLine(String text) {
        if (text.isBlank() || text.length() > LONGEST || text.chars().anyMatch(Character::isISOControl)) {
            throw new IllegalArgumentException("must be one line of text, 1 to " + LONGEST + " characters");
        }
        return text.strip();
    }

    @Override
    public Optional<T> read(Node node, Place place) {
        if (!(node instanceof Node.Scalar scalar) || scalar.kind() == Node.Kind.EMPTY) {
            place.problem(node.words(), "must be " + words);
            return Optional.empty();
        }
        if (scalar.kind() != Node.Kind.TEXT) {
            place.problem(scalar.words(), "must be " + words + "; if it is meant as text, put it in quotes");
            return Optional.empty();
        }
        try {
            return Optional.of(parse.apply(scalar.text()));
        } catch (IllegalArgumentException e) {
            place.problem(scalar.words(), String.valueOf(e.getMessage()));
            return Optional.empty();
        }
    }

    @Override
    public ObjectNode jsonSchema() {
        return Json.ofType("string").put("pattern", pattern);
    }
}
