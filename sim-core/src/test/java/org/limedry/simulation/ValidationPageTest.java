package org.limedry.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

final class ValidationPageTest {
    // The tests run in the module's own folder.
    private static final Path PAGE = Path.of("..", "docs", "validation.md");

    @Test
    void page_againstWhatIsFoundNow_isUpToDate() throws IOException {
        String now = ValidationPage.render();
        if (Boolean.getBoolean("limedry.write")) {
            Files.writeString(PAGE, now);
        }

        List<String> differences = ValidationPage.differences(Files.readString(PAGE), now);

        assertEquals(List.of(), differences);
    }

    @Test
    void differences_ofANumberMovedByATenthOfItsBand_areSeen() {
        String row = "| water | kg | 1.5 | 1.51 | 1.502 | 0.002 | 0.03 | in |\n";

        assertEquals(List.of(), ValidationPage.differences(row, row.replace("1.502", "1.5021")));
        assertFalse(
                ValidationPage.differences(row, row.replace("1.502", "1.505")).isEmpty());
        assertFalse(ValidationPage.differences(row, row.replace("| in |", "| out |"))
                .isEmpty());
    }
}
