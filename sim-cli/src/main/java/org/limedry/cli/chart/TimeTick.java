package org.limedry.cli.chart;

import java.awt.geom.Line2D;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A mark on a time axis.
 *
 * @param at where
 * @param words the day, or the hour within a day
 */
record TimeTick(Instant at, String words) {
    private static final int[] HOURS_APART = {6, 12};
    private static final int[] DAYS_APART = {1, 2, 4, 7, 14, 28, 56, 112};
    private static final double GAP_PX = 12;

    /** Between words of which one had to move to stay on the chart. */
    private static final double LEAST_GAP_PX = 6;

    private static final double MARK_PX = 6;
    private static final double WORDS_BELOW_PX = 22;
    private static final double MONTH_BELOW_PX = 18;
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMM", Locale.ENGLISH);

    /** Draws the closest marks whose words stay apart, below the line at {@code y}. */
    static void draw(Canvas canvas, TimeScale scale, double y, Size size) {
        for (TimeTick tick : closest(scale, size)) {
            double x = scale.x(tick.at());
            canvas.line(new Line2D.Double(x, y, x, y + MARK_PX), Ink.line(1));
            Text text = Text.plain(tick.words(), size.textPx());
            canvas.text(text, tick.leftPx(scale, size), y + WORDS_BELOW_PX, Align.START);
        }
    }

    /** Returns where its words begin: centred on the mark, but on the chart. */
    private double leftPx(TimeScale scale, Size size) {
        double width = widthPx(this, size);
        return Math.max(0, Math.min(scale.x(at) - width / 2, size.widthPx() - width));
    }

    static List<TimeTick> closest(TimeScale scale, Size size) {
        Timeline timeline = scale.timeline();
        Stream<List<TimeTick>> byHours = IntStream.of(HOURS_APART).mapToObj(hours -> everyHours(timeline, hours));
        Stream<List<TimeTick>> byDays = IntStream.of(DAYS_APART).mapToObj(days -> everyDays(timeline, days));
        return Stream.concat(byHours, byDays)
                .filter(ticks -> stayApart(ticks, scale, size))
                .findFirst()
                .orElseGet(List::of);
    }

    private static boolean stayApart(List<TimeTick> ticks, TimeScale scale, Size size) {
        return IntStream.range(1, ticks.size()).allMatch(i -> {
            double pitchPx =
                    scale.x(ticks.get(i).at()) - scale.x(ticks.get(i - 1).at());
            double endPx = ticks.get(i - 1).leftPx(scale, size) + widthPx(ticks.get(i - 1), size);
            return pitchPx >= GAP_PX + Math.max(widthPx(ticks.get(i), size), widthPx(ticks.get(i - 1), size))
                    && ticks.get(i).leftPx(scale, size) - endPx >= LEAST_GAP_PX;
        });
    }

    private static double widthPx(TimeTick tick, Size size) {
        return Text.plain(tick.words(), size.textPx()).widthPx();
    }

    private static List<TimeTick> everyHours(Timeline timeline, int hours) {
        return days(timeline.firstDay(), timeline.lastDay().plusDays(1), 1)
                .flatMap(day -> IntStream.iterate(0, hour -> hour < 24, hour -> hour + hours)
                        .mapToObj(hour -> atHour(timeline, day, hour)))
                .filter(tick -> timeline.holds(tick.at()))
                .toList();
    }

    private static TimeTick atHour(Timeline timeline, LocalDate day, int hour) {
        String words = hour == 0 ? DateWords.shortDay(day) : String.format(Locale.ROOT, "%02d:00", hour);
        return new TimeTick(day.atTime(hour, 0).atZone(timeline.zone()).toInstant(), words);
    }

    /** From a week on the marks stand on Mondays; a run that starts on one is marked at its start. */
    private static List<TimeTick> everyDays(Timeline timeline, int days) {
        boolean weeks = days % 7 == 0;
        LocalDate first =
                weeks ? timeline.firstDay().with(TemporalAdjusters.nextOrSame(DayOfWeek.MONDAY)) : timeline.firstDay();
        List<TimeTick> ticks = new ArrayList<>();
        days(first, timeline.lastDay(), days).forEach(day -> {
            Instant start = timeline.startOf(day);
            if (weeks || timeline.holds(start)) {
                ticks.add(new TimeTick(timeline.clamp(start), DateWords.shortDay(day)));
            }
        });
        return ticks;
    }

    private static Stream<LocalDate> days(LocalDate first, LocalDate last, int apart) {
        return Stream.iterate(first, day -> !day.isAfter(last), day -> day.plusDays(apart));
    }

    /** Draws months below the line at {@code y}: a mark where each begins, its name in the middle. */
    static void drawMonths(Canvas canvas, TimeScale scale, double y, Size size) {
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
                canvas.boxed(text, (left + right) / 2, y + MONTH_BELOW_PX, Align.MIDDLE);
            }
        }
    }

    private static Text name(YearMonth month, Size size) {
        return Text.plain(MONTH.format(month), size.textPx());
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
                .mapToDouble(month -> name(month, size).widthPx())
                .max()
                .orElse(0);
        double monthPx = scale.widthPx() * 28.0 * 86_400.0 / scale.lengthSeconds();
        return IntStream.iterate(1, apart -> apart + 1)
                .filter(apart -> apart * monthPx >= widest + LEAST_GAP_PX)
                .findFirst()
                .orElse(1);
    }
}
