package org.limedry.cli.chart;

/** How an area is filled: two tints and four hatches that a grey print keeps apart. */
public enum Fill {
    WHITE,
    GREY,
    /** Thin grey lines falling to the right. */
    LIGHT,
    /** Thick black lines rising to the right. */
    HEAVY,
    /** Thin lines both ways. */
    CROSS,
    DOTS
}
