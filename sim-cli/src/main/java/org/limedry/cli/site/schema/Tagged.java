package org.limedry.cli.site.schema;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A group whose other keys depend on the word that stands at one of them, the tag. */
public final class Tagged implements Shape<Tagged.Variant> {
    private final String tag;
    private final String meaning;
    private final Map<String, Block> blocks;
    private final WordShape<String> words;

    /**
     * Declares the group.
     *
     * @param tag the key that decides
     * @param meaning what that key means, in a sentence
     * @param blocks for each word the other keys, in the order to list them
     */
    public Tagged(String tag, String meaning, Map<String, Block> blocks) {
        this.tag = tag;
        this.meaning = meaning;
        this.blocks = new LinkedHashMap<>(blocks);
        this.words = WordShape.of(blocks.keySet().toArray(String[]::new));
    }

    /**
     * The group as read.
     *
     * @param word the word that decided
     * @param entry the other keys
     */
    public record Variant(String word, Entry entry) {}

    @Override
    public Optional<Variant> read(Node node, Place place) {
        if (!(node instanceof Node.Group group)) {
            place.problem(node.words(), "must be a group of keys with " + tag + ": " + words.words());
            return Optional.empty();
        }
        Optional<Variant> result = Optional.empty();
        Optional<Node.Member> first = Optional.empty();
        for (Node.Member member : group.members()) {
            if (member.key().equals(tag) && first.isEmpty()) {
                first = Optional.of(member);
                result = words.read(member.value(), place.key(tag, member.line()))
                        .flatMap(word -> variant(word, group, place));
            } else if (member.key().equals(tag)) {
                place.key(tag, member.line())
                        .problem("given twice", "first on line " + first.get().line());
            }
        }
        if (first.isEmpty()) {
            place.key(tag, group.line()).problem("missing", "must be one of: " + words.list());
        }
        return result;
    }

    private Optional<Variant> variant(String word, Node.Group group, Place place) {
        return Optional.ofNullable(blocks.get(word))
                .map(block -> new Variant(word, block.readGroup(group, place, tag)));
    }

    @Override
    public ObjectNode jsonSchema() {
        List<ObjectNode> variants = new ArrayList<>();
        blocks.forEach((word, block) -> {
            ObjectNode variant = block.jsonSchema();
            variant.withObject("/properties").putObject(tag).put("const", word).put("description", meaning);
            variant.withArray("/required").insert(0, tag);
            variants.add(variant);
        });
        ObjectNode schema = Json.ofType("object");
        schema.set("oneOf", Json.schemas(variants));
        return schema;
    }

    @Override
    public String words() {
        return "a group of keys";
    }

    /** One row for each key; where only some of the words have it, its meaning begins with them. */
    @Override
    public List<GuideRow> guide(String path) {
        Map<GuideRow, List<String>> owners = new LinkedHashMap<>();
        blocks.forEach((word, block) -> block.guide(path)
                .forEach(row ->
                        owners.computeIfAbsent(row, same -> new ArrayList<>()).add(word)));
        List<GuideRow> rows = new ArrayList<>();
        rows.add(new GuideRow(path + "." + tag, words.words(), "needed", meaning));
        owners.forEach((row, some) -> rows.add(some.size() == blocks.size() ? row : row.of(some)));
        return rows;
    }
}
