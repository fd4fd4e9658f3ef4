package org.limedry.cli.site.schema;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;

/** One thing, or a list of them. */
public record OneOrMany<T>(Shape<T> item) implements Shape<List<T>> {
    @Override
    public Optional<List<T>> read(Node node, Place place) {
        return node instanceof Node.Items
                ? many().read(node, place)
                : item.read(node, place).map(List::of);
    }

    private ListShape<T> many() {
        return new ListShape<>(item, 1);
    }

    @Override
    public ObjectNode jsonSchema() {
        ObjectNode schema = Json.object();
        schema.set("anyOf", Json.schemas(List.of(item.jsonSchema(), many().jsonSchema())));
        return schema;
    }

    @Override
    public String words() {
        return item.words() + ", or a list of them";
    }
}
