package org.limedry.cli.chart;

import java.awt.geom.Rectangle2D;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.limedry.cli.chart.WallAndDewPointChart.Hour;

/** The four strips under the temperatures: wet hours, open doors, heater, dehumidifier. */
final class Strips {
    private static final double STRIP_PX = 20;
    private static final double WIDE_PITCH_PX = 26;
    private static final double NARROW_PITCH_PX = 44;
    private static final double NARROW_NAME_PX = 18;
    private static final double TICK_PX = 2.4;
    private static final double TICK_SHORT_PX = 3;
    private static final double INSIDE_PX = 6;
    private static final double HOURS_A_DAY = 24;
    private static final double OPEN_HOURS = 0.1;

    private final WallAndDewPointChart chart;
    private final Size size;
    private final TimeScale times;
    private final HourSums sums;
    private final double top;

    Strips(WallAndDewPointChart chart, Size size, TimeScale times, double top) {
        this.chart = chart;
        this.size = size;
        this.times = times;
        this.sums = new HourSums(chart.timeline(), chart.hours());
        this.top = top;
    }

    double bottom() {
        return strip(3).getMaxY();
    }

    private Rectangle2D strip(int n) {
        double y = top + n * size.pick(WIDE_PITCH_PX, NARROW_PITCH_PX) + size.pick(0.0, NARROW_NAME_PX);
        return new Rectangle2D.Double(times.left(), y, times.widthPx(), STRIP_PX);
    }

    void draw(Canvas canvas) {
        wetHours(canvas, strip(0));
        doors(canvas, strip(1));
        plant(
                canvas,
                strip(2),
                new Plant("heater", chart.plant().heater(), Fill.HEAVY),
                sums.stretches(hour -> hour.heaterShare() > 0));
        plant(
                canvas,
                strip(3),
                new Plant("dehumidifier", chart.plant().dehumidifier(), Fill.LIGHT),
                sums.stretches(hour -> hour.dehumidifierShare() > 0));
    }

    private void wetHours(Canvas canvas, Rectangle2D strip) {
        boolean byDay = chart.timeline().byDay();
        name(canvas, strip, byDay ? size.pick("wet hours of 24", "wet hours a day (full height 24)") : "wet hours");
        if (byDay) {
            sums.hoursByDay(hour -> hour.wet() ? 1 : 0).forEach((day, hours) -> dayBar(canvas, strip, day, hours));
        } else {
            sums.stretches(Hour::wet).forEach(wet -> canvas.fill(across(strip, wet, 0), Ink.BLACK));
        }
        frame(canvas, strip);
        if (chart.wetHours() == 0) {
            inside(canvas, strip, "none");
        }
    }

    private void dayBar(Canvas canvas, Rectangle2D strip, LocalDate day, double hours) {
        Rectangle2D whole = across(strip, sums.stretch(day), 0);
        double height = STRIP_PX * Math.min(1, hours / HOURS_A_DAY);
        double gap = whole.getWidth() > 4 ? 0.6 : 0;
        canvas.fill(
                new Rectangle2D.Double(whole.getX(), whole.getMaxY() - height, whole.getWidth() - gap, height),
                Ink.BLACK);
    }

    private void doors(Canvas canvas, Rectangle2D strip) {
        Map<LocalDate, Double> hours = sums.hoursByDay(Hour::doorsOpenShare);
        List<Double> open = hours.values().stream()
                .filter(sum -> sum >= OPEN_HOURS)
                .sorted()
                .toList();
        name(canvas, strip, open.isEmpty() ? "doors" : "doors, " + typicalHours(open));
        frame(canvas, strip);
        if (open.isEmpty()) {
            inside(canvas, strip, "shut all the time");
        } else if (chart.timeline().byDay()) {
            hours.forEach((day, sum) -> doorTick(canvas, strip, day, sum));
        } else {
            sums.stretches(hour -> hour.doorsOpenShare() >= 0.5)
                    .forEach(stretch -> canvas.fill(across(strip, stretch, TICK_SHORT_PX), Ink.BLACK));
        }
    }

    private void doorTick(Canvas canvas, Rectangle2D strip, LocalDate day, double hours) {
        if (hours < OPEN_HOURS) {
            return;
        }
        Rectangle2D whole = across(strip, sums.stretch(day), TICK_SHORT_PX);
        double width = Math.min(TICK_PX, 0.45 * whole.getWidth());
        canvas.fill(
                new Rectangle2D.Double(whole.getCenterX() - width / 2, whole.getY(), width, whole.getHeight()),
                Ink.BLACK);
    }

    /** Returns the open hours of the middle open day, or both ends when the days differ much. */
    private static String typicalHours(List<Double> sorted) {
        long least = Math.max(1, Math.round(sorted.get(sorted.size() / 10)));
        long most = Math.max(1, Math.round(sorted.get(sorted.size() - 1 - sorted.size() / 10)));
        return least == most ? least + " h" : least + "\u2013" + most + " h";
    }

    private record Plant(String name, String words, Fill fill) {}

    private void plant(Canvas canvas, Rectangle2D strip, Plant plant, List<Stretch> on) {
        name(canvas, strip, plant.name());
        if (size == Size.NARROW && !on.isEmpty() && !plant.words().isEmpty()) {
            detail(canvas, strip, plant);
        }
        frame(canvas, strip);
        on.forEach(stretch -> canvas.bar(across(strip, stretch, TICK_SHORT_PX), plant.fill(), Ink.line(1)));
        String since = on.isEmpty()
                ? "none"
                : "none until "
                        + DateWords.shortDay(chart.timeline().day(on.get(0).from()));
        double emptyPx = on.isEmpty() ? strip.getWidth() : times.x(on.get(0).from()) - strip.getX();
        if (words(since).widthPx() + 2 * INSIDE_PX <= emptyPx) {
            inside(canvas, strip, since);
        }
    }

    private void detail(Canvas canvas, Rectangle2D strip, Plant plant) {
        double roomPx = strip.getWidth() - words(plant.name()).widthPx() - 2 * INSIDE_PX;
        canvas.text(words(plant.words()).cutTo(roomPx), strip.getMaxX(), nameBaseline(strip), Align.END);
    }

    private void name(Canvas canvas, Rectangle2D strip, String name) {
        if (size == Size.WIDE) {
            canvas.text(words(name), strip.getX() - 8, middleBaseline(strip), Align.END);
        } else {
            canvas.text(words(name), strip.getX(), nameBaseline(strip), Align.START);
        }
    }

    private void inside(Canvas canvas, Rectangle2D strip, String text) {
        canvas.text(words(text), strip.getX() + INSIDE_PX, middleBaseline(strip), Align.START);
    }

    private static double nameBaseline(Rectangle2D strip) {
        return strip.getY() - 5;
    }

    private static double middleBaseline(Rectangle2D strip) {
        return strip.getCenterY() + 5;
    }

    private static void frame(Canvas canvas, Rectangle2D strip) {
        canvas.draw(strip, Ink.line(0.8), Ink.FRAME);
    }

    private Rectangle2D across(Rectangle2D strip, Stretch stretch, double insetPx) {
        double left = times.x(stretch.from());
        return new Rectangle2D.Double(
                left, strip.getY() + insetPx, times.x(stretch.to()) - left, strip.getHeight() - 2 * insetPx);
    }

    private Text words(String words) {
        return Text.plain(words, size.textPx());
    }
}
