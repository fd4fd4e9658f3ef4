package org.limedry.cli.chart;

import java.awt.geom.Rectangle2D;

/**
 * A text that was drawn.
 *
 * @param text the text
 * @param box where it stands
 */
record TextBox(Text text, Rectangle2D box) {}
