package org.limedry.cli.chart;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.limedry.cli.chart.DryingChart.Coat;
import org.limedry.cli.chart.DryingChart.Point;
import org.limedry.cli.chart.DryingChart.ShutSite;
import org.limedry.cli.chart.DryingChart.Upright;

/** Lays out the drying chart: all coats in one plot, or one small plot for each wall when there are many. */
final class DryingPicture extends Picture {
    private static final int MOST_IN_ONE_PLOT = 4;
    private static final int HEAD_BASELINE_PX = 14;
    private static final int FIRST_ROW_PX = 24;
    private static final int PANEL_GAP_PX = 10;

    private final DryingChart chart;
    private final List<Plot> panels;

    DryingPicture(DryingChart chart, Size size) {
        super(size);
        this.chart = chart;
        this.panels = panels();
    }

    private List<Plot> panels() {
        TimeScale times = new TimeScale(chart.timeline(), size.pick(46, 34), size.pick(666, 346));
        double highest = chart.coats().stream()
                .flatMap(coat -> coat.left().stream())
                .mapToDouble(Point::litresPerM2)
                .max()
                .orElse(0);
        Frame frame = new Frame(chart, size, times, ValueScale.fromZero(highest));
        if (chart.coats().size() <= MOST_IN_ONE_PLOT) {
            return List.of(Plot.whole(frame, FIRST_ROW_PX));
        }
        List<Plot> small = new ArrayList<>();
        int top = FIRST_ROW_PX;
        for (List<Coat> wall : byWall().values()) {
            Plot panel = Plot.ofWall(frame, wall, top);
            small.add(panel);
            top = panel.bottom() + PANEL_GAP_PX;
        }
        return small;
    }

    /**
     * What all plots of one drying chart share.
     *
     * @param chart the chart
     * @param size the size
     * @param times the time axis
     * @param litres the value axis
     */
    record Frame(DryingChart chart, Size size, TimeScale times, ValueScale litres) {}

    private Map<String, List<Coat>> byWall() {
        return chart.coats().stream()
                .collect(Collectors.groupingBy(Coat::wall, LinkedHashMap::new, Collectors.toList()));
    }

    @Override
    double heightPx() {
        return panels.get(panels.size() - 1).bottom();
    }

    @Override
    void draw(Canvas canvas) {
        canvas.text(bold(heading()), 0, HEAD_BASELINE_PX, Align.START);
        panels.forEach(panel -> panel.draw(canvas));
    }

    private String heading() {
        boolean ranges = chart.coats().stream().anyMatch(coat -> coat.ready() instanceof Ready.Range);
        return ranges ? "Ready: earliest, likely, latest" : "Ready";
    }

    @Override
    String story() {
        Timeline timeline = chart.timeline();
        ReadyWords ready = new ReadyWords(timeline);
        String span = String.format(
                "Litres of water left in each square metre, %s to %s.",
                DateWords.longDayWithYear(timeline.firstDay()), DateWords.longDayWithYear(timeline.lastDay()));
        return chart.coats().stream()
                .map(coat -> coat.fullName() + ": " + water(coat) + ready.sentence(coat) + ".")
                .collect(Collectors.joining(" ", span + " ", ""));
    }

    private static String water(Coat coat) {
        if (coat.left().isEmpty()) {
            return "";
        }
        double first = coat.left().get(0).litresPerM2();
        double last = coat.left().get(coat.left().size() - 1).litresPerM2();
        String likely = coat.ready()
                .likely()
                .map(at -> TimedValue.between(Plot.values(coat), at))
                .filter(OptionalDouble::isPresent)
                .map(value -> litres(value.getAsDouble()) + " on the likely date, ")
                .orElse("");
        return litres(first) + " litres at first, " + likely + litres(last) + " at the end; ";
    }

    private static String litres(double litresPerM2) {
        return Litres.text(Litres.shown(litresPerM2, 1));
    }

    /** One plot of the drying chart with the ready rows over it. */
    static final class Plot {
        private static final int HEADING_PX = 22;
        private static final int AXIS_TITLE_PX = 21;
        private static final int DATES_PX = 28;
        private static final String AXIS_TITLE = "litres in each m\u00b2";

        private final Frame frame;
        private final String heading;
        private final int top;
        private final boolean first;
        private final List<Coat> coats;
        private final List<ReadyRow> rows;
        private final TimePanel plot;

        private Plot(Frame frame, String heading, List<Coat> coats, int top) {
            this.frame = frame;
            this.heading = heading;
            this.top = top;
            this.first = coats.get(0).equals(frame.chart().coats().get(0));
            this.coats = coats;
            this.rows = rows(small() ? top + HEADING_PX : top);
            int plotTop = (int) Math.ceil(rows.get(rows.size() - 1).bottom()) + (first ? AXIS_TITLE_PX : 0);
            this.plot = new TimePanel(frame.times(), frame.litres(), plotTop, plotBottom(plotTop));
        }

        /** Returns the one plot that holds all coats. */
        static Plot whole(Frame frame, int top) {
            return new Plot(frame, "", frame.chart().coats(), top);
        }

        /** Returns a small plot for the coats of one wall. */
        static Plot ofWall(Frame frame, List<Coat> coats, int top) {
            Text heading = Text.bold(coats.get(0).wall(), frame.size().textPx());
            return new Plot(frame, heading.cutTo(frame.size().widthPx()).words(), coats, top);
        }

        private boolean small() {
            return !heading.isEmpty();
        }

        private int plotBottom(int plotTop) {
            Size size = frame.size();
            if (small()) {
                return plotTop + size.pick(100, 110);
            }
            return Math.max(plotTop + size.pick(191, 220), size.pick(354, 426) - DATES_PX);
        }

        int bottom() {
            return (int) plot.area().getMaxY() + DATES_PX;
        }

        private List<ReadyRow> rows(double firstTop) {
            List<ReadyRow> laidOut = new ArrayList<>();
            double rowTop = firstTop;
            for (Coat coat : inOrderOfDates()) {
                String name = small() ? coat.name() : coat.fullName();
                ReadyRow row = ReadyRow.below(rowTop, coat, name, frame.times(), frame.size());
                laidOut.add(row);
                rowTop = row.bottom();
            }
            return laidOut;
        }

        private List<Coat> inOrderOfDates() {
            Comparator<Coat> byLikely =
                    Comparator.comparing(coat -> coat.ready().likely().orElse(Instant.MAX));
            Comparator<Coat> byEarliest = Comparator.comparing(
                    coat -> coat.ready().dates().findFirst().orElse(Instant.MAX));
            return coats.stream().sorted(byLikely.thenComparing(byEarliest)).toList();
        }

        void draw(Canvas canvas) {
            DryingLabels labels = new DryingLabels(frame, coats, plot.area());
            List<Curve> curves = addToPlot();
            plot.draw(canvas, frame.size());
            TimeTick.draw(canvas, frame.times(), plot.area().getMaxY(), frame.size());

            LabelPlacer placer = new LabelPlacer(canvas, roomForNames());
            curves.forEach(curve -> placer.avoid(curve.coat(), Panel.pieces(curve.line())));
            drawLaid(
                    canvas,
                    curves.stream()
                            .filter(curve -> labels.liesOnAnother(curve.coat()))
                            .toList(),
                    placer);
            drawMarks(canvas, placer);
            drawHeadings(canvas);
            rows.forEach(row -> row.drawWords(canvas));
            drawNames(curves, labels, placer);
        }

        private record Curve(Coat coat, List<Point2D> line) {}

        private List<Curve> addToPlot() {
            List<Curve> curves = new ArrayList<>();
            for (int i = 0; i < coats.size(); i++) {
                Coat coat = coats.get(i);
                if (coat.left().size() > 1) {
                    curves.add(new Curve(coat, plot.addTimes(values(coat), Ink.coat(i))));
                }
            }
            Timeline timeline = frame.chart().timeline();
            shutInRun()
                    .forEach(shut -> plot.addBlock(timeline.clamp(shut.from()), timeline.clamp(shut.to()), Ink.SHUT));
            uprights().forEach(upright -> plot.addUpright(upright.at()));
            return curves;
        }

        static List<TimedValue> values(Coat coat) {
            return coat.left().stream()
                    .map(point -> new TimedValue(point.at(), point.litresPerM2()))
                    .toList();
        }

        /** Names may reach a little over the right end of the plot, not over its figures or its base line. */
        private Rectangle2D roomForNames() {
            Rectangle2D area = plot.area();
            double left = area.getMinX() + 3;
            return new Rectangle2D.Double(left, area.getMinY(), frame.size().widthPx() - left, area.getHeight() - 3);
        }

        /** A dashed line shows where a coat was laid on another. */
        private void drawLaid(Canvas canvas, List<Curve> curves, LabelPlacer placer) {
            curves.forEach(curve -> {
                Point2D start = curve.line().get(0);
                Line2D upright = new Line2D.Double(start.getX(), plot.area().getMaxY(), start.getX(), start.getY());
                canvas.draw(upright, Ink.dashed(1, 2f, 3f), Ink.MIDDLE);
                placer.avoid(curve.coat(), List.of(upright));
            });
        }

        /** Draws what leads the eye from the dates to the lines. */
        private void drawMarks(Canvas canvas, LabelPlacer placer) {
            rows.forEach(row -> standing(row)
                    .flatMap(at -> row.dropTo(at.getY()))
                    .ifPresent(drop -> {
                        canvas.line(drop, Ink.drop());
                        placer.avoid(row, List.of(drop));
                    }));
            rows.forEach(row -> row.drawBar(canvas));
            rows.forEach(row -> standing(row).ifPresent(at -> {
                Marks.diamond(canvas, at, row.byHand() ? Ink.BLACK : Ink.PAPER);
                placer.avoid(row, Marks.cross(at));
            }));
        }

        private void drawHeadings(Canvas canvas) {
            int sizePx = frame.size().textPx();
            if (small()) {
                canvas.text(Text.bold(heading, sizePx), 0, top + HEADING_PX - 6, Align.START);
            }
            if (first) {
                canvas.boxed(Text.plain(AXIS_TITLE, sizePx), 0, plot.area().getMinY() - 16, Align.START);
            }
        }

        /** Returns where a coat's line stands on its likely day. */
        private Optional<Point2D> standing(ReadyRow row) {
            return row.coat().ready().likely().flatMap(at -> {
                OptionalDouble litres = TimedValue.between(values(row.coat()), at);
                return litres.isPresent()
                        ? Optional.of(plot.place(new TimedValue(at, litres.getAsDouble())))
                        : Optional.empty();
            });
        }

        /** What happened on site is named once, in the first plot. */
        private void drawNames(List<Curve> curves, DryingLabels labels, LabelPlacer placer) {
            uprights().forEach(upright -> placer.avoid(upright, List.of(labels.line(upright))));
            if (first) {
                uprights().forEach(upright -> placer.place(labels.of(upright)));
                shutInRun().forEach(shut -> placer.place(labels.of(shut)));
            }
            shutInRun().forEach(shut -> placer.avoidTint(labels.block(shut)));
            curves.forEach(curve -> placer.place(labels.of(curve.coat(), curve.line())));
        }

        private List<Upright> uprights() {
            return frame.chart().uprights().stream()
                    .filter(upright -> frame.chart().timeline().holds(upright.at()))
                    .toList();
        }

        private List<ShutSite> shutInRun() {
            Timeline timeline = frame.chart().timeline();
            return frame.chart().shut().stream()
                    .filter(shut -> timeline.clamp(shut.to()).isAfter(timeline.clamp(shut.from())))
                    .toList();
        }
    }
}
