package org.limedry.cli.site.schema;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;

/**
 * What may stand at one place of a site file.
 *
 * @param <T> what the program makes of it
 */
public interface Shape<T> {
    /** Returns the value, or reports at least one problem at {@code place} and returns nothing. */
    Optional<T> read(Node node, Place place);

    /** Returns the same rule as JSON Schema, draft 2020-12. */
    ObjectNode jsonSchema();

    /** Returns the rule in words, as the user guide prints it: "number, 2 to 60". */
    String words();

    /** Returns the rows of the user guide for the keys under this place. */
    default List<GuideRow> guide(String path) {
        return List.of();
    }

    /**
     * Returns a shape that makes something else of the value.
     *
     * @param convert returns the new value, or reports a problem at the place and returns nothing
     */
    default <U> Shape<U> as(BiFunction<? super T, Place, Optional<U>> convert) {
        return new Converted<>(this, convert);
    }
}
