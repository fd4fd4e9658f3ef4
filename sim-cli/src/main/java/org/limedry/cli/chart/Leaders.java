package org.limedry.cli.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The list of names below a bar, each led to its segment: names of segments in the right part stand left of them, the
 * others right of them, so arranged that as few leaders as can be run through names.
 *
 * @param rows one row each
 */
record Leaders(List<Row> rows) {
    private static final double LEFT_PX = 4;
    private static final double RIGHT_PX = 672;
    private static final double ROW_PX = 18;
    private static final double FIRST_ROW_PX = 14;
    private static final double ELBOW_PX = 14;
    private static final double GAP_PX = 4;
    private static final double BELOW_PX = 6;
    private static final double WIDEST_PX = (RIGHT_PX - LEFT_PX) / 2 - ELBOW_PX - GAP_PX;

    Leaders {
        rows = List.copyOf(rows);
    }

    /**
     * A name that did not fit into its segment.
     *
     * @param text the name
     * @param x middle of its segment
     */
    record Named(Text text, double x) {
        Named {
            text = text.cutTo(WIDEST_PX);
        }
    }

    /** One name in its row: a leader from the segment down, then across to the elbow, then the text. */
    private record Row(Named named, double barBottom, double y, double elbow) {
        boolean textLeft() {
            return elbow < named.x();
        }

        Line2D down() {
            return new Line2D.Double(named.x(), barBottom, named.x(), y);
        }

        Line2D across() {
            return new Line2D.Double(named.x(), y, elbow, y);
        }

        double baseline() {
            return y + 5;
        }

        Rectangle2D box() {
            double width = named.text().widthPx();
            return named.text().box(textLeft() ? elbow - GAP_PX - width : elbow + GAP_PX, baseline());
        }
    }

    /** Arranges names, given from left to right, below a bar. */
    static Leaders below(double barBottom, List<Named> names) {
        int count = names.size();
        // All to the left of their segments, all to the right, or parted somewhere between.
        Stream<Integer> splits = Stream.concat(
                Stream.of(0, count), IntStream.range(1, Math.max(1, count)).boxed());
        return splits.flatMap(split ->
                        Stream.of(true, false).map(rightOnTop -> arranged(barBottom, names, split, rightOnTop)))
                .min(Comparator.comparingInt(Leaders::faults))
                .orElseThrow();
    }

    private static Leaders arranged(double barBottom, List<Named> names, int split, boolean rightOnTop) {
        List<Named> textRight = new ArrayList<>(names.subList(0, split));
        List<Named> textLeft = names.subList(split, names.size());
        // The rightmost first, so that no leader crosses another.
        textRight.sort(Comparator.comparingDouble(Named::x).reversed());
        List<Named> order = rightOnTop
                ? Stream.concat(textRight.stream(), textLeft.stream()).toList()
                : Stream.concat(textLeft.stream(), textRight.stream()).toList();
        List<Row> rows = new ArrayList<>();
        for (Named named : order) {
            double y = barBottom + FIRST_ROW_PX + rows.size() * ROW_PX;
            double elbow = textLeft.contains(named)
                    ? textLeft.get(0).x() - ELBOW_PX
                    : textRight.get(0).x() + ELBOW_PX;
            rows.add(new Row(named, barBottom, y, elbow));
        }
        return new Leaders(rows);
    }

    private int faults() {
        int outside = (int) rows.stream()
                .filter(row -> row.box().getMinX() < LEFT_PX || row.box().getMaxX() > RIGHT_PX)
                .count();
        int crossings = rows.stream().mapToInt(this::namesCrossed).sum();
        return 100 * outside + crossings;
    }

    private int namesCrossed(Row row) {
        return (int) rows.stream()
                .filter(other -> !other.equals(row))
                .filter(other ->
                        row.down().intersects(other.box()) || row.across().intersects(other.box()))
                .count();
    }

    double heightPx() {
        return rows.isEmpty() ? 0 : rows.size() * ROW_PX + BELOW_PX;
    }

    /** Returns whether the last row leaves its left end free for a heading so wide. */
    boolean leavesRoomAtLeft(double widthPx) {
        return !rows.isEmpty()
                && rows.stream()
                        .allMatch(row ->
                                row.box().getMinX() > widthPx && row.named().x() > widthPx);
    }

    void draw(Canvas canvas) {
        rows.forEach(row -> {
            canvas.line(row.down(), Ink.line(1));
            canvas.line(row.across(), Ink.line(1));
        });
        rows.forEach(row -> canvas.boxed(row.named().text(), row.box().getX(), row.baseline(), Align.START));
    }
}
