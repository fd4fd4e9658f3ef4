package org.limedry.cli.site.schema;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;

/**
 * One word with a meaning of its own, or else what another shape says.
 *
 * @param word the word
 * @param meaning what it stands for
 * @param other what may stand there instead
 */
public record WordOr<T>(String word, T meaning, Shape<T> other) implements Shape<T> {
    @Override
    public Optional<T> read(Node node, Place place) {
        if (node instanceof Node.Scalar scalar && scalar.kind() == Node.Kind.TEXT) {
            if (!scalar.text().equals(word)) {
                place.problem(scalar.words(), "must be " + words());
                return Optional.empty();
            }
            return Optional.of(meaning);
        }
        return other.read(node, place);
    }

    @Override
    public ObjectNode jsonSchema() {
        ObjectNode constant = Json.object().put("const", word);
        ObjectNode schema = Json.object();
        schema.set("anyOf", Json.schemas(List.of(constant, other.jsonSchema())));
        return schema;
    }

    @Override
    public String words() {
        return word + ", or " + other.words();
    }
}
