package org.limedry.proof.figure;

/**
 * One number of a proof: what was claimed and what was found.
 *
 * @param proof name of the case
 * @param part what was compared within the case: a formula and a column, or a grid
 * @param claim the number that is to be found
 * @param found the number found
 */
public record Figure(String proof, String part, Claim claim, double found) {
    /** Returns what the finding comes to. */
    public Verdict verdict() {
        if (claim.expected().allows(found)) {
            return Verdict.IN;
        }
        return claim.standing() instanceof Standing.SourceInError ? Verdict.SOURCE_IN_ERROR : Verdict.OUTSIDE;
    }

    /** Returns found less expected. */
    public double difference() {
        return claim.expected().difference(found);
    }

    /** Returns the difference as a share of what is accepted. */
    public double share() {
        return claim.expected().share(found);
    }
}
