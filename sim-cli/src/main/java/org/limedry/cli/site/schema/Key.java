package org.limedry.cli.site.schema;

import java.util.Optional;

/**
 * One key of the site file: declared once, as a constant, which is also the handle by which its value is asked for.
 *
 * @param <T> type of its value
 */
public final class Key<T> {
    private final String name;
    private final Shape<T> shape;
    private final String meaning;
    private final Unsaid<T> unsaid;

    private Key(String name, Shape<T> shape, String meaning, Unsaid<T> unsaid) {
        this.name = name;
        this.shape = shape;
        this.meaning = meaning;
        this.unsaid = unsaid;
    }

    /** What happens when a key is left out. */
    sealed interface Unsaid<T> {}

    /** It must be there. */
    record Needed<T>() implements Unsaid<T> {}

    /**
     * It may be left out.
     *
     * @param words what is done then; may be empty
     */
    record Free<T>(String words) implements Unsaid<T> {}

    /**
     * A value is taken for it.
     *
     * @param value the value
     * @param words the value in words
     * @param source where it comes from; empty when there is nothing to report
     */
    record Fallback<T>(T value, String words, String source) implements Unsaid<T> {}

    /**
     * Declares a key that must be there.
     *
     * @param name as written in the file
     * @param shape what may stand there
     * @param meaning one sentence for the user guide
     */
    public static <T> Key<T> needed(String name, Shape<T> shape, String meaning) {
        return new Key<>(name, shape, meaning, new Needed<>());
    }

    /** Declares a key that may be left out. */
    public static <T> Key<T> optional(String name, Shape<T> shape, String meaning) {
        return new Key<>(name, shape, meaning, new Free<>(""));
    }

    /**
     * Returns the same key with words for what is done when it is left out and the program works it out from the rest of
     * the file.
     */
    public Key<T> workedOut(String words) {
        return new Key<>(name, shape, meaning, new Free<>(words));
    }

    /** Returns the same key with a value for when it is left out that says nothing about the building. */
    public Key<T> plainly(T value, String words) {
        return new Key<>(name, shape, meaning, new Fallback<>(value, words, ""));
    }

    /**
     * Returns the same key with a value that is assumed, and reported as assumed, when it is left out.
     *
     * @param source where the value comes from
     */
    public Key<T> assumed(T value, String words, String source) {
        return new Key<>(name, shape, meaning, new Fallback<>(value, words, source));
    }

    /** Returns the name as written in the file. */
    public String name() {
        return name;
    }

    /** Returns what it means, in a sentence. */
    public String meaning() {
        return meaning;
    }

    Shape<T> shape() {
        return shape;
    }

    boolean isNeeded() {
        return unsaid instanceof Needed;
    }

    Optional<Fallback<T>> fallback() {
        return unsaid instanceof Fallback<T> fallback ? Optional.of(fallback) : Optional.empty();
    }

    String unsaidWords() {
        if (unsaid instanceof Fallback<T> fallback) {
            return fallback.words();
        }
        return unsaid instanceof Free<T> free ? free.words() : "needed";
    }
}
