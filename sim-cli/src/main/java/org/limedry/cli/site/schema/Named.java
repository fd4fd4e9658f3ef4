package org.limedry.cli.site.schema;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Things of one shape under names.
 *
 * @param item shape of each
 * @param least how many there must be
 * @param known the names that there are; empty where the user chooses them
 */
public record Named<T>(Shape<T> item, int least, List<String> known) implements Shape<Map<String, T>> {
    private static final String NAME_PATTERN = "^\\S(.{0,58}\\S)?$";

    public Named {
        known = List.copyOf(known);
    }

    /** Returns things under names that the user chooses. */
    public static <T> Named<T> freely(Shape<T> item, int least) {
        return new Named<>(item, least, List.of());
    }

    /** Returns things under names out of a closed list. */
    public static <T> Named<T> among(List<String> known, Shape<T> item) {
        return new Named<>(item, 0, known);
    }

    @Override
    public Optional<Map<String, T>> read(Node node, Place place) {
        if (!(node instanceof Node.Group group)) {
            place.problem(node.words(), "must be names with what belongs to each indented under it");
            return Optional.empty();
        }
        if (group.members().size() < least) {
            place.problem("nothing in it", "must have at least " + least);
        }
        Map<String, T> result = new LinkedHashMap<>();
        Map<String, Integer> lines = new HashMap<>();
        for (Node.Member member : group.members()) {
            Place at = place.key(member.key(), member.line());
            Integer first = lines.putIfAbsent(member.key(), member.line());
            if (first != null) {
                at.problem("given twice", "first on line " + first);
            } else if (!known.isEmpty() && !known.contains(member.key())) {
                at.problem("not known", Nearest.orAll(member.key(), known));
            } else if (!member.key().matches(NAME_PATTERN)) {
                at.problem("not a name", "must be 1 to 60 characters on one line");
            } else {
                item.read(member.value(), at).ifPresent(value -> result.put(member.key(), value));
            }
        }
        return Optional.of(result);
    }

    @Override
    public ObjectNode jsonSchema() {
        ObjectNode schema = Json.ofType("object");
        schema.put("minProperties", least);
        ObjectNode names = Json.object();
        if (known.isEmpty()) {
            names.put("pattern", NAME_PATTERN);
        } else {
            names.set("enum", Json.texts(known));
        }
        schema.set("propertyNames", names);
        schema.set("additionalProperties", item.jsonSchema());
        return schema;
    }

    @Override
    public String words() {
        return known.isEmpty() ? "names of your own" : String.join(" / ", known);
    }

    @Override
    public List<GuideRow> guide(String path) {
        return item.guide(path + ".NAME");
    }
}
