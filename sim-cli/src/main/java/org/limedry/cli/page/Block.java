package org.limedry.cli.page;

import java.util.List;
import org.limedry.cli.chart.Chart;
import org.limedry.cli.safety.Caution;
import org.limedry.cli.safety.Situation;

/** One thing on a page. */
public sealed interface Block {
    /** The weight of a paragraph. */
    enum Weight {
        /** Ordinary text. */
        PLAIN,
        /** The one sentence that matters most under the headline. */
        STRONG,
        /** Notes. */
        SMALL
    }

    /** A heading; {@code newSheet} starts a new sheet of paper. */
    record Heading(String text, boolean newSheet) implements Block {}

    /** A paragraph. */
    record Words(String text, Weight weight) implements Block {}

    /** Things to do or to know, one line each, with a heading; numbered if their order matters. */
    record Lines(String heading, boolean numbered, List<String> lines) implements Block {
        public Lines {
            lines = List.copyOf(lines);
        }
    }

    /** A box that must not be overlooked: "Take care". */
    record Cautions(Situation situation) implements Block {
        /** Returns the cautions that are due. */
        public List<Caution> cautions() {
            return situation.cautions();
        }
    }

    /** A chart in both sizes, its title as caption, with a note under it. */
    record Figure(Chart chart, String note) implements Block {}

    /** A table. */
    record Figures(Table table) implements Block {}

    /** A table of numbers, short enough to stay a table on a telephone. */
    record Numbers(Table table) implements Block {}

    /** A paragraph. */
    static Block words(String text) {
        return new Words(text, Weight.PLAIN);
    }
}
