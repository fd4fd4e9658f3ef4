package org.limedry.cli.site.schema;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;

/** Yes or no, written true or false. */
public record FlagShape() implements Shape<Boolean> {
    @Override
    public Optional<Boolean> read(Node node, Place place) {
        if (node instanceof Node.Scalar scalar && scalar.kind() == Node.Kind.FLAG) {
            return Optional.of(Boolean.parseBoolean(scalar.text()));
        }
        place.problem(node.words(), "must be true or false");
        return Optional.empty();
    }

    @Override
    public ObjectNode jsonSchema() {
        return Json.ofType("boolean");
    }

    @Override
    public String words() {
        return "true / false";
    }
}
