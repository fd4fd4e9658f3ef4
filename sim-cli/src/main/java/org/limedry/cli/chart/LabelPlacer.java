package org.limedry.cli.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * Finds room for labels: the first place that hits no text and no line; failing that, the nearest free room with a
 * leader line, and as few lines under it as can be. A label for which no room is left between other texts is not drawn:
 * one text upon another helps nobody.
 */
final class LabelPlacer {
    private static final double TEXT_GAP_PX = 4;
    private static final double OWN_GAP_PX = 4;
    private static final double SEARCH_STEP_PX = 8;
    private static final double COVERED_LINE_COST_PX = 60;
    private static final List<Effort> EFFORTS =
            List.of(new Effort(8, true), new Effort(4.5, true), new Effort(8, false), new Effort(4.5, false));

    private final Canvas canvas;
    private final Rectangle2D bounds;
    private final List<Obstacle> lines = new ArrayList<>();
    private final List<Rectangle2D> tinted = new ArrayList<>();

    LabelPlacer(Canvas canvas, Rectangle2D bounds) {
        this.canvas = canvas;
        this.bounds = bounds;
    }

    private record Obstacle(Object owner, Line2D line) {}

    /** How hard to try: clear of lines by so many px, and clear of tinted blocks or not. */
    private record Effort(double lineGapPx, boolean offTint) {}

    private record Spot(Paragraph setting, Rectangle2D box) {}

    /** Keeps labels off lines. */
    void avoid(Object owner, List<Line2D> pieces) {
        pieces.forEach(piece -> lines.add(new Obstacle(owner, piece)));
    }

    /** Keeps labels off a tinted block if it can be done. */
    void avoidTint(Rectangle2D block) {
        tinted.add(block);
    }

    /** Draws a label where there is room for it. */
    void place(Label label) {
        List<Spot> spots = label.settings().stream()
                .flatMap(setting -> label.spots().apply(setting).stream().map(box -> new Spot(setting, box)))
                .filter(spot -> bounds.contains(spot.box()) && clearOfTexts(spot.box()))
                .toList();
        Optional<Spot> beside = EFFORTS.stream()
                .flatMap(effort -> spots.stream().filter(spot -> free(spot.box(), label, effort)))
                .findFirst();
        if (beside.isPresent()) {
            draw(label, beside.get());
            return;
        }
        nearest(label).ifPresent(spot -> {
            canvas.line(leader(label, spot.box()), Ink.line(1));
            draw(label, spot);
        });
    }

    private void draw(Label label, Spot spot) {
        canvas.boxed(spot.setting(), spot.box(), label.paper());
    }

    private Optional<Spot> nearest(Label label) {
        return label.settings().stream()
                .flatMap(setting -> everywhere(setting).map(box -> new Spot(setting, box)))
                .filter(spot -> clearOfTexts(spot.box()))
                .min(Comparator.comparingDouble(spot -> cost(label, spot.box())));
    }

    private double cost(Label label, Rectangle2D box) {
        Line2D leader = leader(label, box);
        Rectangle2D clear = Canvas.grown(box, OWN_GAP_PX);
        long covered = lines.stream()
                .map(Obstacle::line)
                .filter(line -> line.intersects(clear) || line.intersectsLine(leader))
                .count();
        return leader.getP1().distance(leader.getP2()) + COVERED_LINE_COST_PX * covered;
    }

    private Stream<Rectangle2D> everywhere(Paragraph setting) {
        double width = setting.widthPx();
        double height = setting.heightPx();
        return steps(bounds.getMinX(), bounds.getMaxX() - width)
                .boxed()
                .flatMap(x -> steps(bounds.getMinY(), bounds.getMaxY() - height)
                        .mapToObj(y -> new Rectangle2D.Double(x, y, width, height)));
    }

    private static DoubleStream steps(double from, double to) {
        return DoubleStream.iterate(from, at -> at <= to, at -> at + SEARCH_STEP_PX);
    }

    private boolean free(Rectangle2D box, Label label, Effort effort) {
        return clearOfLines(box, label.owner(), effort.lineGapPx())
                && (!effort.offTint() || tinted.stream().noneMatch(block -> block.intersects(box)));
    }

    private boolean clearOfTexts(Rectangle2D box) {
        Rectangle2D apart = Canvas.grown(box, TEXT_GAP_PX);
        for (Canvas.TextBox text : canvas.texts()) {
            if (text.box().intersects(apart)) {
                return false;
            }
        }
        return true;
    }

    /** Plain loops: this runs some ten thousand times for each chart, most of them before the JVM is warm. */
    private boolean clearOfLines(Rectangle2D box, Object owner, double gapPx) {
        Rectangle2D fromOthers = Canvas.grown(box, gapPx);
        Rectangle2D fromOwn = Canvas.grown(box, OWN_GAP_PX);
        for (Obstacle obstacle : lines) {
            if (obstacle.line().intersects(obstacle.owner().equals(owner) ? fromOwn : fromOthers)) {
                return false;
            }
        }
        return true;
    }

    /** Returns the shortest line from the box to an anchor. */
    private static Line2D leader(Label label, Rectangle2D box) {
        return label.anchors().stream()
                .map(anchor -> new Line2D.Double(closest(box, anchor), anchor))
                .min(Comparator.comparingDouble(line -> line.getP1().distance(line.getP2())))
                .orElseThrow();
    }

    private static Point2D closest(Rectangle2D box, Point2D to) {
        return new Point2D.Double(
                Math.max(box.getMinX(), Math.min(to.getX(), box.getMaxX())),
                Math.max(box.getMinY(), Math.min(to.getY(), box.getMaxY())));
    }
}
