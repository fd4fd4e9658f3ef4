package org.limedry.lime;

/** The binder of a mix, as it is gauged. */
public enum LimeKind {
    /** Quicklime slaked with the sand: a hot mix. */
    QUICKLIME("quicklime"),
    /** Lime putty. */
    PUTTY("putty"),
    /** Hydrated lime, a dry powder. */
    HYDRATED("hydrated"),
    /** Feebly hydraulic lime. */
    NHL_2("NHL 2"),
    /** Moderately hydraulic lime. */
    NHL_3_5("NHL 3.5"),
    /** Eminently hydraulic lime. */
    NHL_5("NHL 5");

    private final String words;

    LimeKind(String words) {
        this.words = words;
    }

    /** Returns the name in the words of the trade. */
    public String words() {
        return words;
    }

    /** Tells whether it sets with water alone. */
    public boolean isHydraulic() {
        return this == NHL_2 || this == NHL_3_5 || this == NHL_5;
    }
}
