package org.limedry.cli.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Rectangle;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.limedry.cli.chart.AiringChart.Line;
import org.limedry.cli.chart.AiringChart.Point;
import org.limedry.cli.chart.AiringChart.Spot;
import org.limedry.cli.chart.AiringChart.Tick;

/** Lays out the airing chart: weeks over fresh air, and under it what gives how much air. */
final class AiringPicture extends Picture {
    private static final int HEIGHT_PX = 464;
    private static final int TITLE_BASELINE_PX = 16;
    private static final int TOP_PX = 30;
    private static final int TOP_UNDER_ARROWS_PX = 56;
    private static final int BOTTOM_PX = 352;
    private static final double DIAMOND_PX = 5;
    private static final double ARROW_PX = 16;
    private static final double TOP_WEEKS = 20.0;
    private static final double TOP_STEP_WEEKS = 5.0;
    private static final List<ValueScale> SHORT_WAITS =
            List.of(ValueScale.upTo(2.0, 0.5), ValueScale.upTo(5.0, 1.0), ValueScale.upTo(10.0, 2.0));
    private static final double HEADROOM = 1.08;
    private static final int FIRST_ROW_PX = 22;
    private static final int ROW_PX = 20;
    private static final int TICK_PX = 6;
    private static final int NOTE_GAP_PX = 8;
    private static final double BESIDE_PX = 6;
    private static final double STEP_PX = 6;
    private static final double ABOVE_TOP_PX = 5;
    private static final double WIDEST_SHARE = 0.9;
    private static final Color BAND = new Color(0, 0, 0, 26);
    private static final Color BAND_EDGE = new Color(0x555555);

    private final AiringChart chart;
    private final ValueScale air;
    private final ValueScale weeks;
    private final Panel panel;

    AiringPicture(AiringChart chart, Size size) {
        super(size);
        this.chart = chart;
        int left = size.pick(48, 30);
        int top = chart.isEndless() ? TOP_UNDER_ARROWS_PX : TOP_PX;
        this.air = ValueScale.fromZero(DoubleStream.concat(
                        points().mapToDouble(Point::m3PerHour),
                        chart.ticks().stream().mapToDouble(Tick::m3PerHour))
                .max()
                .orElse(1.0));
        this.weeks = weeks();
        this.panel = new Panel.Plain(air, weeks, new Rectangle(left, top, size.pick(670, 348) - left, BOTTOM_PX - top));
    }

    private Stream<Point> points() {
        return chart.lines().stream().flatMap(line -> line.points().stream());
    }

    /** Short waits fill the plot; a wait that does not end needs the whole of it. */
    private ValueScale weeks() {
        boolean endless = chart.isEndless();
        double longest = points().flatMapToDouble(
                        point -> DoubleStream.concat(point.weeks().stream(), point.latest().stream()))
                .max()
                .orElse(TOP_WEEKS);
        double top = endless ? Math.min(TOP_WEEKS, chart.horizonWeeks()) : TOP_WEEKS;
        return SHORT_WAITS.stream()
                .filter(scale -> !endless && longest * HEADROOM <= scale.high())
                .findFirst()
                .orElse(ValueScale.upTo(top, TOP_STEP_WEEKS));
    }

    @Override
    double heightPx() {
        return HEIGHT_PX;
    }

    @Override
    void draw(Canvas canvas) {
        nothingZone().ifPresent(zone -> {
            Hatching.fill(canvas, zone, Fill.LIGHT);
            canvas.draw(zone, Ink.line(0.8), Ink.FRAME);
        });
        chart.marks().tooFast().ifPresent(spot -> Hatching.fill(canvas, tooFastZone(spot), Fill.DOTS));
        chart.lines().forEach(line -> band(canvas, line));
        chart.lines()
                .forEach(line ->
                        panel.addLine(line.points().stream().map(this::data).toList(), stroke(line)));
        panel.draw(canvas, size);
        canvas.text(plain(chart.waited()).cutTo(widthPx()), 0, TITLE_BASELINE_PX, Align.START);
        chart.marks().doThis().ifPresent(spot -> canvas.line(upright(spot), Ink.dashed(1.4, 2f, 3f)));
        chart.lines().forEach(line -> line.points().forEach(point -> mark(canvas, line, point)));
        axis(canvas);
        labels(canvas);
    }

    private Rectangle2D area() {
        return panel.area();
    }

    /** A wait that is longer than the plot or does not end lies on its upper edge. */
    private Point2D data(Point point, OptionalDouble wait) {
        return new Point2D.Double(point.m3PerHour(), Math.min(wait.orElse(weeks.top()), weeks.top()));
    }

    private Point2D data(Point point) {
        return data(point, point.weeks());
    }

    private Point2D place(Point point) {
        return panel.place(data(point));
    }

    private List<Point2D> course(Line line) {
        return Panel.fine(line.points().stream().map(this::place).toList());
    }

    private Optional<Rectangle2D> nothingZone() {
        return chart.marks().nothingUntil().stream()
                .<Rectangle2D>mapToObj(until -> new Rectangle2D.Double(
                        area().getMinX(),
                        area().getMinY(),
                        Math.min(panel.x(until), area().getMaxX()) - area().getMinX(),
                        area().getHeight()))
                .findFirst();
    }

    /** Under the line it concerns, from the lowest point that the line has there. */
    private Rectangle2D tooFastZone(Spot spot) {
        double left = panel.x(spot.m3PerHour());
        double top = course(chart.lines().get(spot.line())).stream()
                .filter(at -> at.getX() >= left - 1.0)
                .mapToDouble(Point2D::getY)
                .max()
                .orElse(area().getMinY());
        return new Rectangle2D.Double(left, top, area().getMaxX() - left, area().getMaxY() - top);
    }

    private void band(Canvas canvas, Line line) {
        List<Point> known = line.points().stream()
                .filter(point -> point.earliest().isPresent())
                .toList();
        if (known.size() < 2) {
            return;
        }
        List<Point2D> lower = known.stream()
                .map(point -> panel.place(data(point, point.earliest())))
                .toList();
        List<Point2D> upper = known.stream()
                .map(point -> panel.place(data(point, point.latest())))
                .toList();
        canvas.fill(Marks.between(upper, lower), BAND);
        BasicStroke edge = line.heated() ? Ink.line(1) : Ink.dashed(1, 2f, 3f);
        canvas.draw(Marks.path(lower), edge, BAND_EDGE);
        canvas.draw(Marks.path(upper), edge, BAND_EDGE);
    }

    private BasicStroke stroke(Line line) {
        int n = chart.lines().indexOf(line);
        return line.heated() ? (n == 0 ? Ink.line(3.4) : Ink.line(1.8)) : Ink.dashed(2.6, 9f, 6f);
    }

    private void mark(Canvas canvas, Line line, Point point) {
        if (point.weeks().isPresent()) {
            Marks.diamond(canvas, place(point), line.heated() ? Ink.BLACK : Ink.PAPER, DIAMOND_PX);
        } else {
            arrow(canvas, place(point));
        }
    }

    private static void arrow(Canvas canvas, Point2D at) {
        canvas.line(new Line2D.Double(at.getX(), at.getY() - 2, at.getX(), at.getY() - ARROW_PX + 4), Ink.line(2));
        Path2D head = Marks.path(List.of(
                new Point2D.Double(at.getX() - 5, at.getY() - ARROW_PX + 8),
                new Point2D.Double(at.getX(), at.getY() - ARROW_PX),
                new Point2D.Double(at.getX() + 5, at.getY() - ARROW_PX + 8)));
        canvas.fill(head, Ink.BLACK);
    }

    private Line2D upright(Spot spot) {
        double x = panel.x(spot.m3PerHour());
        return new Line2D.Double(x, area().getMinY(), x, area().getMaxY());
    }

    /** Three rows under the plot: fresh air, door hours, fans. Where a word is left out, its tick stays. */
    private void axis(Canvas canvas) {
        double base = area().getMaxY();
        double baseline = base + FIRST_ROW_PX;
        row(canvas, air.ticks().stream().map(tick -> new Tick(tick, air.words(tick), true)), baseline);
        row(canvas, chart.ticks().stream().filter(Tick::byDoors), baseline + ROW_PX);
        row(canvas, chart.ticks().stream().filter(tick -> !tick.byDoors()), baseline + 2.0 * ROW_PX);
        for (Tick tick : chart.ticks()) {
            double x = panel.x(tick.m3PerHour());
            canvas.line(new Line2D.Double(x, base, x, base + TICK_PX), Ink.line(1));
        }
        boolean fans = !chart.ticks().stream().allMatch(Tick::byDoors);
        double noteTop = baseline + (fans ? 2.0 : 1.0) * ROW_PX + NOTE_GAP_PX;
        String words =
                "m\u00b3 of fresh air an hour; below: door hours a day" + (fans ? ", then fans day and night" : "");
        Text note = Text.plain(words, size.pick(size.textPx(), size.textPx() - 1));
        canvas.paragraph(Paragraph.wrapped(note, widthPx()), 0, noteTop, Align.START);
    }

    private void row(Canvas canvas, Stream<Tick> ticks, double baseline) {
        List<AxisWords.At> words = ticks.map(tick -> new AxisWords.At(panel.x(tick.m3PerHour()), plain(tick.words())))
                .toList();
        new AxisWords(0, widthPx(), TICK_PX).draw(canvas, words, baseline);
    }

    private void labels(Canvas canvas) {
        Labels labels = new Labels();
        LabelPlacer placer = new LabelPlacer(
                canvas, new Rectangle2D.Double(area().getMinX() + 2, 24, area().getWidth() - 2, BOTTOM_PX - 28));
        for (Line line : chart.lines()) {
            placer.avoid(line, Panel.pieces(course(line)));
            line.points().forEach(point -> placer.avoid(line, Marks.cross(place(point))));
        }
        AiringChart.Marks marks = chart.marks();
        marks.doThis().ifPresent(spot -> placer.avoid(spot, List.of(upright(spot))));
        chart.lines().stream()
                .filter(line -> !line.endless().isEmpty())
                .forEach(line -> placer.place(labels.endless(line, endlessAt(line))));
        marks.doThis().ifPresent(spot -> placer.place(labels.beside(spot, upright(spot))));
        chart.lines().forEach(line -> placer.place(labels.name(line, course(line))));
        marks.tooFast().ifPresent(spot -> placer.place(labels.inside(spot.words(), tooFastZone(spot))));
        marks.slower()
                .ifPresent(spot -> placer.place(labels.near(
                        spot, panel.x(spot.m3PerHour()), course(chart.lines().get(spot.line())))));
        nothingZone().ifPresent(zone -> placer.place(labels.inside("does nothing", zone)));
    }

    private List<Point2D> endlessAt(Line line) {
        return line.points().stream()
                .filter(point -> point.weeks().isEmpty())
                .map(this::place)
                .toList();
    }

    @Override
    String story() {
        AiringChart.Marks marks = chart.marks();
        String nothing = marks.nothingUntil().stream()
                .mapToObj(
                        until -> String.format(Locale.ROOT, " Below %.0f cubic metres an hour nothing changes.", until))
                .collect(Collectors.joining());
        String spots = Stream.of(marks.tooFast(), marks.slower(), marks.doThis())
                .flatMap(Optional::stream)
                .map(spot -> String.format(Locale.ROOT, " At %.0f: %s.", spot.m3PerHour(), spot.words()))
                .collect(Collectors.joining());
        return "Across: fresh air in cubic metres an hour. Up: " + chart.waited() + ". "
                + chart.lines().stream().map(this::sentence).collect(Collectors.joining(" "))
                + nothing
                + spots;
    }

    private String sentence(Line line) {
        return line.points().stream().map(this::words).collect(Collectors.joining(", ", line.name() + ": ", "."));
    }

    private String words(Point point) {
        String range = point.earliest().isPresent() || point.latest().isPresent()
                ? " (" + words(point.earliest()) + " to " + words(point.latest()) + ")"
                : "";
        return String.format(Locale.ROOT, "%s at %.0f", words(point.weeks()) + range, point.m3PerHour());
    }

    private String words(OptionalDouble wait) {
        return wait.isPresent()
                ? String.format(Locale.ROOT, "%.1f weeks", wait.getAsDouble())
                : String.format(Locale.ROOT, "not in %.0f weeks", Math.floor(chart.horizonWeeks()));
    }

    /** The words in the plot, and where they may stand. */
    private final class Labels {
        /** The name of a line, along it. */
        Label name(Line line, List<Point2D> course) {
            return Label.along(line, settings(line.name(), true), course, Label.Side.ABOVE);
        }

        /** What to say of a wait that does not end: over the plot, beside one of its arrows. */
        Label endless(Line line, List<Point2D> arrows) {
            double y = area().getMinY() - ABOVE_TOP_PX;
            Function<Paragraph, List<Rectangle2D>> spots = setting -> Stream.concat(
                            arrows.stream().map(at -> at.getX() + 2 * BESIDE_PX),
                            arrows.stream().map(at -> at.getX() - 2 * BESIDE_PX - setting.widthPx()))
                    .map(left -> setting.boxAt(left, y - setting.heightPx()))
                    .toList();
            return new Label(line, settings(line.endless(), false), spots, arrows);
        }

        /** Beside an upright, from the top down. */
        Label beside(Spot spot, Line2D upright) {
            return Label.beside(spot, settings(spot.words(), true), upright);
        }

        /** In a zone, from its foot up, or across its edge where it is narrow. */
        Label inside(String words, Rectangle2D zone) {
            Function<Paragraph, List<Rectangle2D>> spots = setting -> {
                double foot = zone.getMaxY() - BESIDE_PX - setting.heightPx();
                double left = Math.max(
                        area().getMinX() + BESIDE_PX,
                        Math.min(
                                zone.getCenterX() - setting.widthPx() / 2,
                                area().getMaxX() - BESIDE_PX - setting.widthPx()));
                return Stream.iterate(foot, y -> y >= area().getMinY(), y -> y - STEP_PX)
                        .flatMap(
                                y -> Stream.of(left, zone.getMinX() + BESIDE_PX).map(x -> setting.boxAt(x, y)))
                        .toList();
            };
            Point2D middle = new Point2D.Double(zone.getCenterX(), zone.getCenterY());
            return new Label(words, settings(words, true), spots, List.of(middle));
        }

        /** Near the place of a line that lies at {@code x}. */
        Label near(Spot spot, double x, List<Point2D> course) {
            List<Point2D> around = course.stream()
                    .filter(point -> Math.abs(point.getX() - x) < area().getWidth() / 8)
                    .toList();
            Point2D at = course.stream()
                    .min(Comparator.comparingDouble(point -> Math.abs(point.getX() - x)))
                    .orElseThrow();
            List<Label.Side> sides = List.of(Label.Side.ABOVE, Label.Side.BELOW);
            return new Label(
                    spot, settings(spot.words(), false), setting -> Label.spots(around, sides, setting), List.of(at));
        }

        private List<Paragraph> settings(String words, boolean bold) {
            double widestPx = WIDEST_SHARE * area().getWidth();
            Text text = new Text(words, size.textPx(), bold);
            Paragraph narrow = Paragraph.wrapped(text, widestPx / 2);
            return Stream.concat(Paragraph.oneLineOrTwo(text.cutTo(2 * widestPx)).stream(), Stream.of(narrow))
                    .filter(setting -> setting.widthPx() <= widestPx)
                    .toList();
        }
    }
}
