package org.limedry.study.doors;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.limedry.study.doors.DoorReason.DRIER_OUT;
import static org.limedry.study.doors.DoorReason.FROST;
import static org.limedry.study.doors.DoorReason.FUMES;
import static org.limedry.study.doors.DoorReason.WETTER_OUT;
import static org.limedry.study.doors.DoorReason.WITHIN_ERROR;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.limedry.study.doors.DoorReason.Word;

/** EXACT: what the rules of joining give by hand. */
final class DoorBlockTest {
    @Test
    void of_oneHourBetweenLongerOnes_goesToTheLonger() {
        List<DoorBlock> blocks =
                DoorBlock.of(List.of(DRIER_OUT, DRIER_OUT, DRIER_OUT, WITHIN_ERROR, WETTER_OUT, WETTER_OUT));

        assertEquals(List.of(new DoorBlock(0, 4, Word.OPEN), new DoorBlock(4, 2, Word.SHUT)), blocks);
    }

    @Test
    void of_oneHourBetweenEqualOnes_isShut() {
        List<DoorBlock> blocks = DoorBlock.of(List.of(DRIER_OUT, DRIER_OUT, WITHIN_ERROR, WETTER_OUT, WETTER_OUT));

        assertEquals(List.of(new DoorBlock(0, 2, Word.OPEN), new DoorBlock(2, 3, Word.SHUT)), blocks);
    }

    @Test
    void of_oneHourOfFrost_isWidenedNotGivenUp() {
        List<DoorBlock> blocks = DoorBlock.of(List.of(DRIER_OUT, DRIER_OUT, FROST, DRIER_OUT, DRIER_OUT, DRIER_OUT));

        assertEquals(
                List.of(new DoorBlock(0, 2, Word.OPEN), new DoorBlock(2, 2, Word.SHUT), new DoorBlock(4, 2, Word.OPEN)),
                blocks);
    }

    @Test
    void of_oneHourOfFumesInTheEvening_takesTheHourBefore() {
        List<DoorBlock> blocks = DoorBlock.of(List.of(WETTER_OUT, WETTER_OUT, WETTER_OUT, FUMES));

        assertEquals(List.of(new DoorBlock(0, 2, Word.SHUT), new DoorBlock(2, 2, Word.OPEN)), blocks);
    }

    @Property(tries = 500)
    void of_anyDay_leavesNoGapAndKeepsItsDangers(@ForAll @Size(min = 1, max = 14) List<DoorReason> reasons) {
        List<DoorBlock> blocks = DoorBlock.of(reasons);

        int hour = 0;
        for (DoorBlock block : blocks) {
            assertEquals(hour, block.firstHour());
            hour = block.endHour();
        }
        assertEquals(reasons.size(), hour);
        assertTrue(IntStream.range(0, reasons.size())
                .filter(k -> reasons.get(k) == FUMES)
                .allMatch(k -> wordAt(blocks, k) == Word.OPEN));
        // A hour of frost may become one of fumes, never one of drying.
        assertTrue(IntStream.range(0, reasons.size())
                .filter(k -> reasons.get(k) == FROST && !reasons.contains(FUMES))
                .allMatch(k -> wordAt(blocks, k) == Word.SHUT));
    }

    private static Word wordAt(List<DoorBlock> blocks, int hour) {
        return blocks.stream()
                .filter(block -> hour >= block.firstHour() && hour < block.endHour())
                .findFirst()
                .orElseThrow()
                .word();
    }
}
