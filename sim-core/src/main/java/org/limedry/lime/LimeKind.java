package org.limedry.lime;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

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

    /**
     * Returns the lime of that name; case and spaces do not matter.
     *
     * @param name "quicklime", "putty", "hydrated", "NHL 2", "NHL 3.5" or "NHL 5"
     * @throws IllegalArgumentException if there is none of that name
     */
    public static LimeKind named(String name) {
        for (LimeKind kind : values()) {
            if (plain(kind.words).equals(plain(name))) {
                return kind;
            }
        }
        String allowed = Arrays.stream(values()).map(LimeKind::words).collect(Collectors.joining(", "));
        throw new IllegalArgumentException("lime: must be one of " + allowed + ", was \"" + name + "\"");
    }

    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replace(" ", "");
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
