package org.limedry.proof.figure;

import java.util.List;

/** One case: numbers from elsewhere, and a way to find them with this library. */
public interface Proof {
    /** What kind of case it is. */
    enum Kind {
        /** A table of moist air. */
        TABLE,
        /** A benchmark of the solver. */
        BENCHMARK,
        /** A saying of the trade. */
        TRADE
    }

    /** Returns the name, unique among all cases. */
    String name();

    /** Returns the kind. */
    Kind kind();

    /** Returns what is run and how, in a sentence or two. */
    String setUp();

    /** Returns where the expected numbers come from. */
    String source();

    /** Returns what is accepted, with its reason. */
    String bands();

    /**
     * Runs the case.
     *
     * @return every figure, in an order that is always the same
     */
    List<Figure> figures();
}
