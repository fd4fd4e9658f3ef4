package org.limedry.cli.chart;

import java.awt.Color;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.function.Function;

/**
 * Words that belong to something in a plot, and where they may stand.
 *
 * @param owner what they belong to; its own lines may come closer than others
 * @param settings the words as set in one or more ways, the best first
 * @param spots the places to try for one setting, the best first
 * @param anchors where a leader line may end, should none of the places be free
 * @param paper colour of what the words stand on
 */
record Label(
        Object owner,
        List<Paragraph> settings,
        Function<Paragraph, List<Rectangle2D>> spots,
        List<Point2D> anchors,
        Color paper) {
    Label {
        settings = List.copyOf(settings);
        anchors = List.copyOf(anchors);
    }
}
