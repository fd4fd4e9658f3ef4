package org.limedry.cli.site;

import org.limedry.cli.site.schema.Block;
import org.limedry.cli.site.schema.Entry;
import org.limedry.cli.site.schema.Key;
import org.limedry.cli.site.schema.NumberShape;
import org.limedry.cli.site.schema.TextShape;

/** Keys of a gang. */
final class GangKeys {
    /** Common practice, no source: a plasterer with a mate lays some 12 m2 of one coat of lime in a day. */
    private static final double M2_PER_PERSON_AND_DAY = 6.0;

    static final Key<String> NAME = Key.needed("name", TextShape.free(), "what you call the gang");
    static final Key<Integer> PEOPLE = Key.optional("people", NumberShape.count(1, 50), "how many people it is")
            .plainly(2, "2");
    static final Key<Double> M2_PER_DAY = Key.optional(
                    "m2PerDay", NumberShape.between(0.5, 1000.0), "one coat that the whole gang lays in a day")
            .workedOut("6 for each of its people; common practice, no source");

    static final Block BLOCK = Block.of(NAME, PEOPLE, M2_PER_DAY);

    private GangKeys() {}

    static GangPlan plan(Entry gang) {
        int people = gang.get(PEOPLE);
        return new GangPlan(
                gang.get(NAME),
                people,
                gang.given(M2_PER_DAY).orElse(people * M2_PER_PERSON_AND_DAY),
                gang.given(M2_PER_DAY).isPresent());
    }

    /** Returns the gang that is taken where the file names none. */
    static GangPlan usual() {
        return new GangPlan("gang", 2, 2 * M2_PER_PERSON_AND_DAY, false);
    }
}
