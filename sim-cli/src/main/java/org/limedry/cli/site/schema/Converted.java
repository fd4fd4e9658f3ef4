package org.limedry.cli.site.schema;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;

/** A shape whose value is turned into something else. */
record Converted<T, U>(Shape<T> shape, BiFunction<? super T, Place, Optional<U>> convert) implements Shape<U> {
    @Override
    public Optional<U> read(Node node, Place place) {
        return shape.read(node, place).flatMap(value -> convert.apply(value, place));
    }

    @Override
    public ObjectNode jsonSchema() {
        return shape.jsonSchema();
    }

    @Override
    public String words() {
        return shape.words();
    }

    @Override
    public List<GuideRow> guide(String path) {
        return shape.guide(path);
    }
}
