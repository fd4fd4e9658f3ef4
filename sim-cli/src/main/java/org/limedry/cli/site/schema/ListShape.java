package org.limedry.cli.site.schema;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A list of things of one shape; those that cannot be read are left out once their problems are reported. */
public record ListShape<T>(Shape<T> item, int least) implements Shape<List<T>> {
    @Override
    public Optional<List<T>> read(Node node, Place place) {
        if (!(node instanceof Node.Items list)) {
            place.problem(node.words(), "must be a list");
            return Optional.empty();
        }
        if (list.items().size() < least) {
            place.problem("an empty list", "must have at least " + least);
        }
        List<T> result = new ArrayList<>();
        for (int i = 0; i < list.items().size(); i++) {
            Node element = list.items().get(i);
            item.read(element, place.item(i, element.line())).ifPresent(result::add);
        }
        return Optional.of(result);
    }

    @Override
    public ObjectNode jsonSchema() {
        ObjectNode schema = Json.ofType("array");
        schema.put("minItems", least);
        schema.set("items", item.jsonSchema());
        return schema;
    }

    @Override
    public String words() {
        return "list";
    }

    @Override
    public List<GuideRow> guide(String path) {
        return item.guide(path + "[]");
    }
}
