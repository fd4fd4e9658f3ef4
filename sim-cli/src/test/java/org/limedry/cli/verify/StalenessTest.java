package org.limedry.cli.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import org.junit.jupiter.api.Test;

final class StalenessTest {
    @Test
    void ofPage_aNumberMovedByATenthOfItsBand_isSeen() {
        String row = "| water | kg | 1.5 | 1.51 | 1.502 | 0.002 | 0.03 | in |\n";

        assertEquals(List.of(), Staleness.ofPage(row, row.replace("1.502", "1.5021")));
        assertFalse(Staleness.ofPage(row, row.replace("1.502", "1.505")).isEmpty());
        assertFalse(Staleness.ofPage(row, row.replace("| in |", "| out |")).isEmpty());
        assertFalse(Staleness.ofPage(row, row + row).isEmpty());
    }

    @Test
    void ofDrawing_aMarkMovedOrAWordChanged_isSeen() {
        String drawing = "<circle cx='12.4' cy='30'/><text>days</text>";

        assertEquals(List.of(), Staleness.ofDrawing(drawing, drawing.replace("12.4", "12.5")));
        assertFalse(
                Staleness.ofDrawing(drawing, drawing.replace("12.4", "13.4")).isEmpty());
        assertFalse(
                Staleness.ofDrawing(drawing, drawing.replace("days", "weeks")).isEmpty());
    }
}
