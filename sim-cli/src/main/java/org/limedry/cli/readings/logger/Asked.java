package org.limedry.cli.readings.logger;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * What the user said about a file, in the user's words: by options, by a plan, or not at all.
 *
 * @param words the words by key
 */
public record Asked(Map<PlanKey, Word> words) {
    /**
     * What was said about one thing.
     *
     * @param text as it was written
     * @param file where: a plan, or the option itself
     * @param line its line there; 0 for an option
     */
    public record Word(String text, String file, int line) {}

    public Asked {
        words = Map.copyOf(words);
    }

    /** Returns that nothing was said. */
    public static Asked nothing() {
        return new Asked(Map.of());
    }

    /** Returns this, with what the other says in place of what this says about the same. */
    public Asked with(Asked other) {
        Map<PlanKey, Word> both = new EnumMap<>(PlanKey.class);
        both.putAll(words);
        both.putAll(other.words);
        return new Asked(both);
    }

    Optional<Word> word(PlanKey key) {
        return Optional.ofNullable(words.get(key));
    }
}
