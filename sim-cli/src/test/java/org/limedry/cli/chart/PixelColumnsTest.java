package org.limedry.cli.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

final class PixelColumnsTest {
    private static Point2D at(double x, double y) {
        return new Point2D.Double(x, y);
    }

    // EXACT: of five points in one column the two between the ends that are neither lowest nor highest go.
    @Test
    void thinned_manyPointsInOnePx_keepsFirstLowestHighestLast() {
        List<Point2D> line = List.of(at(3, 5), at(3.1, 40), at(3.2, 20), at(3.3, -9), at(3.4, 6));

        assertEquals(List.of(at(3, 5), at(3.1, 40), at(3.3, -9), at(3.4, 6)), PixelColumns.thinned(line));
    }

    // EXACT: a straight line is its two ends.
    @Test
    void thinned_straightLine_keepsItsEnds() {
        List<Point2D> line =
                IntStream.rangeClosed(0, 500).mapToObj(i -> at(i, 3 + i / 4.0)).toList();

        assertEquals(List.of(at(0, 3), at(500, 128)), PixelColumns.thinned(line));
    }

    @Test
    void thinned_onePointOrNone_staysAsItIs() {
        assertEquals(List.of(), PixelColumns.thinned(List.of()));
        assertEquals(List.of(at(1, 2)), PixelColumns.thinned(List.of(at(1, 2))));
    }

    // EXACT: the highest and lowest point of every px column lie within a quarter px of the thinned line, which is the
    // most that straightening may take; 1e-9 for rounding. Four points a column at most.
    @Property(tries = 50)
    void thinned_anyLine_losesNoPeak(@ForAll long seed, @ForAll @IntRange(min = 1, max = 40) int pointsInOnePx) {
        Random random = new Random(seed);
        int points = 1000;
        double pitch = 1.0 / pointsInOnePx;
        double noise = 30 * random.nextDouble();
        List<Point2D> line = IntStream.range(0, points)
                .mapToObj(i -> at(i * pitch, 50 + 20 * Math.sin(i * pitch / 9) + noise * random.nextGaussian()))
                .toList();

        List<Point2D> thinned = PixelColumns.thinned(line);

        assertTrue(thinned.size() <= 4 * (Math.ceil(points * pitch) + 1), () -> "points " + thinned.size());
        IntStream.range(0, points)
                .filter(i -> peak(line, i))
                .forEach(i -> assertTrue(distance(thinned, line.get(i)) <= 0.25 + 1e-9, () -> "lost " + line.get(i)));
    }

    private static boolean peak(List<Point2D> line, int i) {
        double column = Math.floor(line.get(i).getX());
        List<Double> heights = IntStream.range(Math.max(0, i - 60), Math.min(line.size(), i + 60))
                .mapToObj(line::get)
                .filter(point -> Math.floor(point.getX()) == column)
                .map(Point2D::getY)
                .sorted()
                .toList();
        double height = line.get(i).getY();
        return height == heights.get(0) || height == heights.get(heights.size() - 1);
    }

    private static double distance(List<Point2D> line, Point2D point) {
        return IntStream.range(1, line.size())
                .mapToDouble(i -> new Line2D.Double(line.get(i - 1), line.get(i)).ptSegDist(point))
                .min()
                .orElseThrow();
    }
}
