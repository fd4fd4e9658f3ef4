package org.limedry.cli.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.time.Instant;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.limedry.cli.chart.DryingChart.Coat;
import org.limedry.cli.chart.DryingChart.ShutSite;
import org.limedry.cli.chart.DryingChart.Upright;

/** The words inside one plot of the drying chart, and where they may stand. */
final class DryingLabels {
    private static final double HEIGHT_STEP_PX = 5;
    private static final double WIDEST_NAME_SHARE = 0.55;

    private final DryingPicture.Frame frame;
    private final List<Coat> coats;
    private final double plotTop;
    private final double plotBottom;

    DryingLabels(DryingPicture.Frame frame, List<Coat> coats, Rectangle2D plot) {
        this.frame = frame;
        this.coats = List.copyOf(coats);
        this.plotTop = plot.getMinY();
        this.plotBottom = plot.getMaxY();
    }

    Label of(Upright upright) {
        return Label.beside(upright, Paragraph.oneLineOrTwo(fitted(upright.words())), line(upright));
    }

    /** Inside the block if it is wide enough, else across it. */
    Label of(ShutSite shut) {
        Rectangle2D block = block(shut);
        List<Paragraph> all = Paragraph.oneLineOrTwo(fitted(shut.words()));
        List<Paragraph> inside = all.stream()
                .filter(setting -> setting.widthPx() < block.getWidth())
                .toList();
        Function<Paragraph, List<Rectangle2D>> spots = setting -> heights(setting)
                .map(y -> setting.boxAt(block.getCenterX() - setting.widthPx() / 2, y))
                .toList();
        Point2D middle = new Point2D.Double(block.getCenterX(), block.getCenterY());
        return inside.isEmpty()
                ? new Label(shut, all, spots, List.of(middle))
                : new Label(shut, inside, spots, List.of(middle), Ink.SHUT);
    }

    /** The full name if there is room, with the day it was laid if it lies on another; else as short as is clear. */
    Label of(Coat coat, List<Point2D> line) {
        Set<String> names = new LinkedHashSet<>();
        String fullName = oneWall() && coats.size() < frame.chart().coats().size() ? coat.name() : coat.fullName();
        if (liesOnAnother(coat) && frame.size() == Size.WIDE) {
            coat.laid()
                    .ifPresent(laid -> names.add(fullName + ", laid "
                            + DateWords.shortDay(frame.chart().timeline().day(laid))));
        }
        names.add(fullName);
        if (coats.stream().filter(other -> other.name().equals(coat.name())).count() == 1) {
            names.add(coat.name());
        }
        if (coats.stream().filter(other -> other.wall().equals(coat.wall())).count() == 1) {
            names.add(coat.wall());
        }
        boolean main = coats.size() > 1 && coat.equals(coats.get(0));
        List<Text> words = names.stream()
                .map(name -> new Text(name, frame.size().textPx(), main))
                .toList();
        List<Text> fitting =
                words.stream().filter(name -> name.widthPx() <= widestNamePx()).toList();
        Text shortest = words.get(words.size() - 1).cutTo(widestNamePx());
        List<Paragraph> settings = (fitting.isEmpty() ? List.of(shortest) : fitting)
                .stream().flatMap(name -> Paragraph.oneLineOrTwo(name).stream()).toList();
        return Label.along(coat, settings, line, Label.Side.ABOVE);
    }

    Line2D line(Upright upright) {
        double x = frame.times().x(upright.at());
        return new Line2D.Double(x, plotTop, x, plotBottom);
    }

    Rectangle2D block(ShutSite shut) {
        double left = frame.times().x(clamp(shut.from()));
        double right = frame.times().x(clamp(shut.to()));
        return new Rectangle2D.Double(left, plotTop, right - left, plotBottom - plotTop);
    }

    boolean liesOnAnother(Coat coat) {
        return coats.stream()
                .filter(other -> other.wall().equals(coat.wall()))
                .findFirst()
                .filter(first -> !first.equals(coat))
                .isPresent();
    }

    private boolean oneWall() {
        return coats.stream().map(Coat::wall).distinct().count() == 1;
    }

    private double widestNamePx() {
        return WIDEST_NAME_SHARE * frame.times().widthPx();
    }

    private Text fitted(String words) {
        return text(words).cutTo(widestNamePx());
    }

    private Text text(String words) {
        return Text.plain(words, frame.size().textPx());
    }

    /** Starts a fifth below the top. */
    private Stream<Double> heights(Paragraph setting) {
        double first = plotTop + 3;
        double last = plotBottom - 3 - setting.heightPx();
        double start = Math.min(first + (plotBottom - plotTop) / 5, Math.max(first, last));
        Stream<Double> down = Stream.iterate(start, y -> y <= last, y -> y + HEIGHT_STEP_PX);
        Stream<Double> up = Stream.iterate(start - HEIGHT_STEP_PX, y -> y >= first, y -> y - HEIGHT_STEP_PX);
        return Stream.concat(down, up);
    }

    private Instant clamp(Instant at) {
        return frame.chart().timeline().clamp(at);
    }
}
