package org.limedry.lime;

import java.util.Arrays;
import java.util.List;

/** The air temperatures below which lime is not to be laid: suppliers do not agree, so both are named. */
public enum ColdLine {
    /** The floor common in the trade (S34 to S36). */
    TRADE("the trade's 5 C", 5.0),
    /** The makers' sheets of natural hydraulic lime (S9, S10). */
    MAKERS("the makers' 8 C", 8.0);

    private final String words;
    private final double celsius;

    ColdLine(String words, double celsius) {
        this.words = words;
        this.celsius = celsius;
    }

    /** Returns whose line it is and where it lies, as a piece of a sentence. */
    public String words() {
        return words;
    }

    /** Returns the line, C. */
    public double celsius() {
        return celsius;
    }

    /** Returns the lines that air of this temperature, C, is below. */
    public static List<ColdLine> brokenBy(double airCelsius) {
        return Arrays.stream(values()).filter(line -> airCelsius < line.celsius).toList();
    }
}
