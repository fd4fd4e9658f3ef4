package org.limedry.cli.site.schema;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * One word, or few, out of a closed list.
 *
 * @param <T> what a word stands for
 */
public final class WordShape<T> implements Shape<T> {
    private final Map<String, T> meanings;

    private WordShape(Map<String, T> meanings) {
        this.meanings = meanings;
    }

    /** Returns a choice of words that stand for themselves. */
    public static WordShape<String> of(String... words) {
        return of(words, Function.identity());
    }

    /** Returns a choice of things, each by its word. */
    public static <T> WordShape<T> of(T[] things, Function<T, String> word) {
        Map<String, T> meanings = new LinkedHashMap<>();
        for (T thing : things) {
            meanings.put(word.apply(thing), thing);
        }
        return new WordShape<>(meanings);
    }

    @Override
    public Optional<T> read(Node node, Place place) {
        T meaning = node instanceof Node.Scalar scalar ? meanings.get(scalar.text()) : null;
        if (meaning == null) {
            String text = node instanceof Node.Scalar scalar ? scalar.text() : "";
            place.problem(node.words(), "must be one of: " + list() + Nearest.hint(text, meanings.keySet()));
        }
        return Optional.ofNullable(meaning);
    }

    String list() {
        return String.join(", ", meanings.keySet());
    }

    @Override
    public ObjectNode jsonSchema() {
        ObjectNode schema = Json.object();
        schema.set("enum", Json.texts(meanings.keySet()));
        return schema;
    }

    @Override
    public String words() {
        return String.join(" / ", meanings.keySet());
    }
}
