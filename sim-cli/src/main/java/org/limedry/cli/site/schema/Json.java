package org.limedry.cli.site.schema;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Collection;

/** Pieces of JSON Schema. */
final class Json {
    private Json() {}

    static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    static ObjectNode ofType(String type) {
        return object().put("type", type);
    }

    static ArrayNode texts(Collection<String> texts) {
        ArrayNode array = JsonNodeFactory.instance.arrayNode();
        texts.forEach(array::add);
        return array;
    }

    static ArrayNode schemas(Collection<ObjectNode> schemas) {
        ArrayNode array = JsonNodeFactory.instance.arrayNode();
        array.addAll(schemas);
        return array;
    }
}
