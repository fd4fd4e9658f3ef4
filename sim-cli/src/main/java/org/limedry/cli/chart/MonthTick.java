package org.limedry.cli.chart;

import java.awt.geom.Line2D;
import java.time.Instant;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Months under a time axis: a mark where each begins, its name in the middle. */
final class MonthTick {
    private static final DateTimeFormatter NAME = DateTimeFormatter.ofPattern("MMM", Locale.ENGLISH);
    private static final double MARK_PX = 6;
    private static final double WORDS_BELOW_PX = 18;
    private static final double GAP_PX = 6;

    private MonthTick() {}

    static void draw(Canvas canvas, TimeScale scale, double y, Size size) {
        List<YearMonth> months = months(scale.timeline());
        for (YearMonth month : months) {
            Instant start = start(scale.timeline(), month);
            if (scale.timeline().holds(start)) {
                double x = scale.x(start);
                canvas.line(new Line2D.Double(x, y, x, y + MARK_PX), Ink.line(1));
            }
        }
        int apart = apart(months, scale, size);
        for (int i = 0; i < months.size(); i += apart) {
            double left = scale.x(scale.timeline().clamp(start(scale.timeline(), months.get(i))));
            double right = scale.x(
                    scale.timeline().clamp(start(scale.timeline(), months.get(i).plusMonths(1))));
            Text text = name(months.get(i), size);
            if (right - left > text.widthPx()) {
                canvas.boxed(text, (left + right) / 2, y + WORDS_BELOW_PX, Align.MIDDLE);
            }
        }
    }

    private static Text name(YearMonth month, Size size) {
        return Text.plain(NAME.format(month), size.textPx());
    }

    private static Instant start(Timeline timeline, YearMonth month) {
        return timeline.startOf(month.atDay(1));
    }

    private static List<YearMonth> months(Timeline timeline) {
        YearMonth last = YearMonth.from(timeline.lastDay());
        return Stream.iterate(
                        YearMonth.from(timeline.firstDay()),
                        month -> !month.isAfter(last),
                        month -> month.plusMonths(1))
                .toList();
    }

    /** Returns how many months apart names stand so that they do not touch. */
    private static int apart(List<YearMonth> months, TimeScale scale, Size size) {
        double widest = months.stream()
                .map(month -> name(month, size).widthPx())
                .max(Comparator.naturalOrder())
                .orElse(0.0);
        double monthPx = scale.widthPx() * 28.0 * 86_400.0 / scale.lengthSeconds();
        return IntStream.iterate(1, apart -> apart + 1)
                .filter(apart -> apart * monthPx >= widest + GAP_PX)
                .findFirst()
                .orElse(1);
    }
}
