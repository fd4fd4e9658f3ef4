package org.limedry.cli.site.schema;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A single value, or else a group of keys that says the same at more length.
 *
 * @param plain shape of the single value
 * @param group shape of the group
 */
public record Either<T>(Shape<T> plain, Shape<T> group) implements Shape<T> {
    @Override
    public Optional<T> read(Node node, Place place) {
        return node instanceof Node.Group ? group.read(node, place) : plain.read(node, place);
    }

    @Override
    public ObjectNode jsonSchema() {
        ObjectNode schema = Json.object();
        schema.set("anyOf", Json.schemas(List.of(plain.jsonSchema(), group.jsonSchema())));
        return schema;
    }

    @Override
    public String words() {
        return plain.words() + ", or " + group.words();
    }

    @Override
    public List<GuideRow> guide(String path) {
        List<GuideRow> rows = new ArrayList<>(plain.guide(path));
        rows.addAll(group.guide(path));
        return rows;
    }
}
