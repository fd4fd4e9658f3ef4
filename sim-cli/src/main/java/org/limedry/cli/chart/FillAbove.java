package org.limedry.cli.chart;

import java.awt.Color;
import org.jfree.chart.renderer.xy.XYDifferenceRenderer;

/** Fills where the first line is above the second, and draws neither: lines drawn piece by piece lose their dashes. */
final class FillAbove extends XYDifferenceRenderer {
    private static final long serialVersionUID = 1L;
    private static final Color NOTHING = new Color(0, 0, 0, 0);

    FillAbove() {
        super(Ink.BLACK, NOTHING, false);
    }

    @Override
    public int getPassCount() {
        return 1;
    }
}
