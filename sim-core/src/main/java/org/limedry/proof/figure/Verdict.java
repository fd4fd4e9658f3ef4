package org.limedry.proof.figure;

/** What a finding comes to. */
public enum Verdict {
    /** Accepted. */
    IN("in"),
    /** Not accepted: the library falls short. */
    OUTSIDE("OUTSIDE"),
    /** Not accepted, and no correct formula could be: the source is in error. */
    SOURCE_IN_ERROR("outside, source in error");

    private final String words;

    Verdict(String words) {
        this.words = words;
    }

    /** Returns it in words. */
    public String words() {
        return words;
    }
}
