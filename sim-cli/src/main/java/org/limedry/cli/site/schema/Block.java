package org.limedry.cli.site.schema;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** A group with keys of ours. */
public final class Block implements Shape<Entry> {
    private final Map<String, Key<?>> keys = new LinkedHashMap<>();
    private final List<List<Key<?>>> ways;

    private Block(List<Key<?>> keys, List<List<Key<?>>> ways) {
        keys.forEach(key -> this.keys.put(key.name(), key));
        this.ways = ways;
    }

    /** Returns a block with these keys. */
    public static Block of(Key<?>... keys) {
        return new Block(List.of(keys), List.of());
    }

    /**
     * Returns the same block with the rule that at least one of several sets of keys must be complete.
     *
     * @param sets the sets, the one to recommend first
     */
    public Block needingOneOf(List<List<Key<?>>> sets) {
        return new Block(List.copyOf(keys.values()), sets);
    }

    @Override
    public Optional<Entry> read(Node node, Place place) {
        if (!(node instanceof Node.Group group)) {
            place.problem(node.words(), "must be a group of keys: " + names());
            return Optional.empty();
        }
        return Optional.of(readGroup(group, place, ""));
    }

    /** Reads a group in which one more key, {@code tag}, has been dealt with already. */
    Entry readGroup(Node.Group group, Place place, String tag) {
        Place here = new Place(place.problems(), place.path(), place.line() > 0 ? place.line() : group.line());
        Entry entry = new Entry(here, List.copyOf(keys.values()));
        for (Node.Member member : group.members()) {
            Place at = place.key(member.key(), member.line());
            Key<?> key = keys.get(member.key());
            if (key == null && !member.key().equals(tag)) {
                at.problem("not known", Nearest.orAll(member.key(), keys.keySet()));
            } else if (key != null && entry.isGiven(key)) {
                at.problem("given twice", "first on line " + entry.at(key).line());
            } else if (key != null) {
                entry.take(key, member.value(), at);
            }
        }
        requireKeys(entry);
        return entry;
    }

    private void requireKeys(Entry entry) {
        for (Key<?> key : keys.values()) {
            if (key.isNeeded() && !entry.isGiven(key)) {
                entry.at(key)
                        .problem(
                                "missing",
                                "needed: " + key.meaning() + " (" + key.shape().words() + ")");
            }
        }
        if (!ways.isEmpty() && ways.stream().noneMatch(way -> way.stream().allMatch(entry::isGiven))) {
            entry.place().problem("not enough", "needs " + waysInWords());
        }
    }

    private String names() {
        return String.join(", ", keys.keySet());
    }

    private String waysInWords() {
        return ways.stream()
                .map(way -> way.stream().map(Key::name).collect(Collectors.joining(" and ")))
                .collect(Collectors.joining(", or "));
    }

    @Override
    public ObjectNode jsonSchema() {
        ObjectNode properties = Json.object();
        keys.values().forEach(key -> {
            ObjectNode schema = key.shape().jsonSchema();
            properties.set(key.name(), schema.put("description", key.meaning()));
        });
        ObjectNode schema = Json.ofType("object");
        schema.set("properties", properties);
        schema.set(
                "required",
                Json.texts(namesOf(keys.values().stream().filter(Key::isNeeded).toList())));
        schema.put("additionalProperties", false);
        if (!ways.isEmpty()) {
            List<ObjectNode> anyOf = new ArrayList<>();
            for (List<Key<?>> way : ways) {
                ObjectNode required = Json.object();
                required.set("required", Json.texts(namesOf(way)));
                anyOf.add(required);
            }
            schema.set("anyOf", Json.schemas(anyOf));
        }
        return schema;
    }

    private static List<String> namesOf(List<Key<?>> keys) {
        return keys.stream().<String>map(Key::name).toList();
    }

    @Override
    public String words() {
        return "a group of keys";
    }

    @Override
    public List<GuideRow> guide(String path) {
        List<GuideRow> rows = new ArrayList<>();
        for (Key<?> key : keys.values()) {
            String here = path.isEmpty() ? key.name() : path + "." + key.name();
            rows.add(new GuideRow(here, key.shape().words(), key.unsaidWords(), key.meaning()));
            rows.addAll(key.shape().guide(here));
        }
        return rows;
    }
}
