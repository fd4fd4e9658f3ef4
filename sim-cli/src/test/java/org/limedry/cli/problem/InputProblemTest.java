package org.limedry.cli.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

final class InputProblemTest {
    @Test
    void text_ofAFieldWithALine_namesFileLineFieldRuleAndValue() {
        InputProblem problem = new InputProblem("site.yaml", 7, "coats[2].thicknessMm", "in (0, 60] mm", "-15");

        assertEquals("site.yaml line 7: coats[2].thicknessMm: must be in (0, 60] mm, was -15", problem.text());
    }

    @Test
    void text_ofAWholeFile_leavesLineAndFieldOut() {
        InputProblem problem = new InputProblem("site.yaml", 0, "", "a file with text in it", "empty");

        assertEquals("site.yaml: must be a file with text in it, was empty", problem.text());
    }

    @Test
    void text_ofAValueOverSeveralLines_isOneLine() {
        InputProblem problem = new InputProblem("site.yaml", 3, "site", "one line", "\"first \n\r\n second\"");

        assertEquals("site.yaml line 3: site: must be one line, was \"first second\"", problem.text());
    }

    @Test
    void badInput_withoutAProblem_isRefused() {
        assertThrows(IllegalArgumentException.class, () -> new BadInputException(List.of()));
    }
}
