package org.limedry.cli.readings.diary;

import org.limedry.lime.HandTest;
import org.limedry.units.Check;

/**
 * A hand test as the diary has it.
 *
 * @param wall the wall, in the words of the diary
 * @param coat number of the coat on that wall; 1 is the first
 * @param result what was found
 */
public record HandMark(String wall, int coat, HandTest.Result result) {
    public HandMark {
        Check.notBlank(wall, "wall");
        Check.atLeast(coat, 1, "coat");
    }
}
