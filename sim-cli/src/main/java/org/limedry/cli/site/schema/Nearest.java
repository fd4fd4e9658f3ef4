package org.limedry.cli.site.schema;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds the word that was probably meant. */
public final class Nearest {
    private Nearest() {}

    /** Returns the known word nearest to {@code word}, if any is near: a slip in every third letter at most. */
    static Optional<String> to(String word, Collection<String> known) {
        return known.stream()
                .min(Comparator.comparingInt(candidate -> distance(word, candidate)))
                .filter(candidate -> distance(word, candidate) <= Math.max(1, candidate.length() / 3));
    }

    /** Returns "(… meant?)", or nothing when no known word is near. */
    public static String hint(String word, Collection<String> known) {
        return to(word, known).map(near -> " (" + near + " meant?)").orElse("");
    }

    /** Returns the known word that is near, or else all of them. */
    static String orAll(String word, Collection<String> known) {
        return to(word, known)
                .map(near -> "nearest: " + near)
                .orElseGet(() -> "there are: " + String.join(", ", known));
    }

    private static int distance(String a, String b) {
        return LevenshteinDistance.getDefaultInstance().apply(a.toLowerCase(Locale.ROOT), b.toLowerCase(Locale.ROOT));
    }
}
