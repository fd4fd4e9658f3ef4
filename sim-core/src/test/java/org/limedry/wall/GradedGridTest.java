package org.limedry.wall;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class GradedGridTest {
    // EXACT: links add up to the layer, from a coat of paint to a half space.
    @ParameterizedTest
    @ValueSource(doubles = {1.0e-4, 3.0e-3, 0.3, 60.0})
    void graded_anyThickness_fillsTheLayer(double thicknessM) {
        double[] links = Grid.graded(thicknessM, 1.0, Grid.End.FACE, Grid.End.OUTER);

        assertEquals(thicknessM, Arrays.stream(links).sum(), 1.0e-12 * thicknessM); // rounding
        assertTrue(links.length >= 9 && links.length < 200, links.length + " links");
        assertTrue(links[0] <= 1.0e-4, "first link " + links[0]);
        for (int k = 1; k < links.length; k++) {
            double ratio = links[k] / links[k - 1];
            assertTrue(ratio < 1.13 && ratio > 1.0 / 2.2, "growth " + ratio + " at " + k + " of " + links.length);
        }
    }

    // EXACT: the asked place is a node, and the ends stay.
    @Test
    void moveNodes_toAnAskedPlace_putsANodeThere() {
        double[] links = Grid.graded(0.3, 1.0, Grid.End.FACE, Grid.End.FACE);
        int before = links.length;

        Grid.moveNodes(links, List.of(0.02, 0.15));

        assertEquals(before, links.length);
        assertEquals(0.3, Arrays.stream(links).sum(), 1.0e-15);
        double reach = 0.0;
        int met = 0;
        for (double link : links) {
            assertTrue(link > 0.0);
            reach += link;
            met += Math.abs(reach - 0.02) < 1.0e-14 || Math.abs(reach - 0.15) < 1.0e-14 ? 1 : 0;
        }
        assertEquals(2, met);
    }
}
