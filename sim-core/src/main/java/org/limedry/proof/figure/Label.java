package org.limedry.proof.figure;

/** How an expected number is known. */
public enum Label {
    /** A closed form, given or named. */
    EXACT,
    /** Printed in a document that is named. */
    PUBLISHED,
    /** Worked out by a tool that is not this library. */
    COMPUTED,
    /** Common practice of the trade, without a source. */
    PRACTICE,
    /** A judgement, without a source. */
    JUDGEMENT
}
