package org.limedry.cli.site.schema;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;

/**
 * A group that the user guide tells in a word, without a row for each of its keys.
 *
 * @param shape the group
 * @param words what the guide prints
 */
public record Brief<T>(Shape<T> shape, String words) implements Shape<T> {
    @Override
    public Optional<T> read(Node node, Place place) {
        return shape.read(node, place);
    }

    @Override
    public ObjectNode jsonSchema() {
        return shape.jsonSchema();
    }
}
