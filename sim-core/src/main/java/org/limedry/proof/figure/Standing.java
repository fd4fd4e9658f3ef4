package org.limedry.proof.figure;

/** What is known beforehand about an expected number. */
public sealed interface Standing {
    /** Nothing: it is to be met. */
    record Sound() implements Standing {}

    /**
     * The source is in error: no correct formula meets it. It is left in to be seen.
     *
     * @param reason what is wrong with it
     */
    record SourceInError(String reason) implements Standing {}

    /**
     * This library does not meet it.
     *
     * @param reason why, as far as it is known
     */
    record KnownShort(String reason) implements Standing {}

    /** Returns the reason, empty if there is nothing to say. */
    default String reason() {
        if (this instanceof SourceInError error) {
            return error.reason;
        }
        return this instanceof KnownShort known ? known.reason : "";
    }
}
