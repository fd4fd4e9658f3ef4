package org.limedry.cli.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

final class InputProblemTest {
    @Test
    void text_ofAFieldWithALine_namesFileLineFieldRuleAndValue() {
        InputProblem problem = new InputProblem("site.yaml", 7, "coats[2].thicknessMm", "must be 2 to 60", "-15");

        assertEquals("site.yaml:7: coats[2].thicknessMm: -15; must be 2 to 60", problem.text());
    }

    @Test
    void text_ofAWholeFile_leavesLineAndFieldOut() {
        InputProblem problem = new InputProblem("site.yaml", 0, "", "must be a site file", "there is nothing in it");

        assertEquals("site.yaml: there is nothing in it; must be a site file", problem.text());
    }

    @Test
    void text_ofAValueOverSeveralLines_isOneLine() {
        InputProblem problem =
                new InputProblem("site.yaml", 3, "site", "must be one line", "\"first \n\r\n second\u0007\"");

        assertEquals("site.yaml:3: site: \"first second?\"; must be one line", problem.text());
    }

    @Test
    void badInput_withoutAProblem_isRefused() {
        assertThrows(IllegalArgumentException.class, () -> new BadInputException(List.of()));
    }
}
