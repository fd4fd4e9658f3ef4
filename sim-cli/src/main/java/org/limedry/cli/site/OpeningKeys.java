package org.limedry.cli.site;

import java.util.List;
import org.limedry.cli.site.schema.Block;
import org.limedry.cli.site.schema.Key;
import org.limedry.cli.site.schema.NumberShape;
import org.limedry.cli.site.schema.TextShape;
import org.limedry.cli.site.schema.WordShape;
import org.limedry.climate.Timetable;

/** Keys of a door or window. */
final class OpeningKeys {
    /** How a window is glazed, with its U value, W/(m2 K), FROM MEMORY (EN ISO 10077-1, ordinary figures). */
    enum Glass {
        SINGLE(5.7),
        DOUBLE(2.8);

        private final double transmittanceWPerM2K;

        Glass(double transmittanceWPerM2K) {
            this.transmittanceWPerM2K = transmittanceWPerM2K;
        }

        double transmittanceWPerM2K() {
            return transmittanceWPerM2K;
        }
    }

    static final Key<String> NAME = Key.needed("name", TextShape.free(), "what you call it");
    static final Key<String> TO = Key.optional("to", TextShape.free(), "room on its other side; list such a door once")
            .workedOut("outdoors");
    static final Key<Double> WIDTH = Key.needed("widthM", NumberShape.between(0.1, 10.0), "clear width");
    static final Key<Double> HEIGHT = Key.needed("heightM", NumberShape.between(0.1, 10.0), "clear height");
    static final Key<Double> SILL = Key.optional(
                    "sillM", NumberShape.between(0.0, 20.0), "height of its lower edge above the floor")
            .workedOut("0, with glass 0.9");
    static final Key<String> FACING = Key.optional(
                    "facing",
                    WordShape.of("N", "NE", "E", "SE", "S", "SW", "W", "NW"),
                    "compass side, which tells whether two openings face opposite ways")
            .workedOut("not known");
    static final Key<Glass> GLASS = Key.optional(
                    "glass",
                    WordShape.of(Glass.values(), Words::ofConstant),
                    "glazing of a window; panes take up the cold and run with water")
            .workedOut("no glass: a door");
    static final Key<List<Timetable>> OPEN = Key.needed(
            "open", Words.times(), "when it stands open; always, never, a timetable, or lines with dates before them");

    static final Block BLOCK = Block.of(NAME, TO, WIDTH, HEIGHT, SILL, FACING, GLASS, OPEN);

    private OpeningKeys() {}
}
