package org.limedry.cli.airing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.limedry.cli.chart.AiringChart;
import org.limedry.cli.page.Figures;
import org.limedry.study.airing.Airing;
import org.limedry.study.airing.AiringFinding;
import org.limedry.study.airing.AiringLine;
import org.limedry.study.airing.AiringStudy;
import org.limedry.units.Units;

/** The answer as a chart. */
final class AiringDrawing {
    private static final double DAYS_PER_WEEK = 7.0;

    private final AiringAnswer answer;
    private final AiringWords words;
    private final AiringText text;
    private final List<AiringLine> lines;

    private AiringDrawing(AiringAnswer answer) {
        this.answer = answer;
        this.words = new AiringWords(answer);
        this.text = new AiringText(answer);
        AiringLine main = text.mainLine();
        this.lines = answer.study().lines().stream()
                .sorted(Comparator.comparing(line -> !line.equals(main)))
                .toList();
    }

    /** Returns the chart. */
    static AiringChart of(AiringAnswer answer) {
        AiringDrawing drawing = new AiringDrawing(answer);
        return new AiringChart(
                "airing",
                drawing.title(),
                "weeks until every coat in the " + answer.room().name() + " is ready",
                drawing.lines.stream().map(drawing::line).toList(),
                drawing.ticks(),
                drawing.marks(),
                answer.study().horizonDays() / DAYS_PER_WEEK);
    }

    private String title() {
        String shut = answer.study()
                .lines()
                .get(0)
                .shut()
                .map(one -> words.wait(one.waiting().likelyDays()))
                .orElse("");
        return answer.told()
                .filter(one -> Double.isFinite(one.days()))
                .map(one -> "Shut and cold: " + shut + "; " + brief(one) + ": "
                        + words.wait(one.waiting().likelyDays()))
                .orElse("Shut and cold: " + shut);
    }

    private String brief(AiringFinding one) {
        String heat = one.level().heat().isPresent() ? " with heat" : " without heat";
        return words.level(one.level().airing()).replace("shut, cracks only", "shut") + heat;
    }

    private AiringChart.Line line(AiringLine line) {
        String name = line.heat().isEmpty()
                ? "cold room, no heat"
                : "heated: " + AiringWords.heat(line).replace(" held", " electric, held");
        return new AiringChart.Line(
                name,
                line.heat().isPresent(),
                line.levels().stream().map(AiringDrawing::point).toList(),
                endless(line));
    }

    private String endless(AiringLine line) {
        List<AiringFinding> endless = line.levels().stream()
                .filter(one -> !Double.isFinite(one.days()))
                .toList();
        if (endless.isEmpty()) {
            return "";
        }
        String heat = line.heat()
                .map(one -> lines.size() > 2 ? AiringWords.kw(one) + " kW" : "heated")
                .orElse("cold");
        String first = tick(endless.get(0).level().airing());
        String which = endless.size() == 1 ? first + " and " + heat : heat;
        return which + ": not in " + words.horizon();
    }

    private static AiringChart.Point point(AiringFinding one) {
        return new AiringChart.Point(
                perHour(one.freshAir().likelyM3PerS()),
                weeks(one.waiting().likelyDays()),
                weeks(one.waiting().earliestDays()),
                weeks(one.waiting().latestDays()));
    }

    private static OptionalDouble weeks(OptionalDouble days) {
        return days.isPresent() ? OptionalDouble.of(days.getAsDouble() / DAYS_PER_WEEK) : days;
    }

    private static double perHour(double m3PerS) {
        return m3PerS * Units.SECONDS_PER_HOUR;
    }

    /** Each level stands where it lies on the line that matters most; in a warmer room the same doors give a little more. */
    private List<AiringChart.Tick> ticks() {
        return text.mainLine().levels().stream()
                .map(one -> new AiringChart.Tick(
                        perHour(one.freshAir().likelyM3PerS()),
                        tick(one.level().airing()),
                        one.level().airing().fanM3PerS() == 0.0))
                .toList();
    }

    private static String tick(Airing airing) {
        if (airing.fanM3PerS() > 0.0) {
            return "fan " + Figures.whole(perHour(airing.fanM3PerS()));
        }
        return airing.isShut() ? "shut" : AiringWords.hours(airing.doorHours()) + " h";
    }

    private AiringChart.Marks marks() {
        OptionalDouble nothing = text.nothingUntilM3PerS();
        return new AiringChart.Marks(
                nothing.isPresent() ? OptionalDouble.of(perHour(nothing.getAsDouble())) : nothing,
                tooFast(),
                answer.isDated() ? doThis() : Optional.empty(),
                slower());
    }

    private Optional<AiringChart.Spot> tooFast() {
        return IntStream.range(0, lines.size())
                .boxed()
                .filter(i -> lines.get(i).tooFastFromM3PerS().isPresent())
                .findFirst()
                .map(i -> new AiringChart.Spot(
                        i,
                        perHour(lines.get(i).tooFastFromM3PerS().orElseThrow()),
                        (lines.get(i).heat().isPresent() ? "with heat" : "cold") + ": dries too fast, mist it"));
    }

    private Optional<AiringChart.Spot> doThis() {
        return answer.told().map(one -> {
            boolean whole = one.level().airing().doorHours() == Airing.WHOLE_DAY_HOURS;
            String days = one.level().shutDays().isEmpty() ? "" : " on dry days";
            return new AiringChart.Spot(
                    lines.indexOf(text.mainLine()),
                    perHour(one.freshAir().likelyM3PerS()),
                    (answer.by().isPresent() && !isInTime() ? "soonest: " : "do this: ")
                            + (whole ? "open day and night" : tick(one.level().airing()))
                            + days);
        });
    }

    private boolean isInTime() {
        return answer.choice() instanceof AiringStudy.Choice.Do;
    }

    private Optional<AiringChart.Spot> slower() {
        return IntStream.range(0, lines.size())
                .boxed()
                .filter(i -> lines.get(i).setback().isPresent())
                .findFirst()
                .map(i -> slower(i, lines.get(i).setback().orElseThrow()));
    }

    private static AiringChart.Spot slower(int line, AiringLine.Setback setback) {
        String cause = setback.isByCold() ? "more air cools the stone" : "damp air wets the wall";
        return new AiringChart.Spot(
                line, perHour(setback.more().freshAir().likelyM3PerS()), cause + ": slower, not quicker");
    }
}
