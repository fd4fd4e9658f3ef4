package org.limedry.cli.chart;

import java.util.LinkedHashMap;
import java.util.Map;

/** Every sample chart by a name that says what is hard about it. */
final class Samples {
    private Samples() {}

    static Map<String, Chart> all() {
        Timeline threeDays = DryingSamples.timeline("2026-11-02T08:00:00Z", 3);
        Timeline twoWeeks = DryingSamples.timeline("2026-10-19T00:00:00Z", 14);
        Timeline long200 = DryingSamples.timeline("2026-10-02T00:00:00Z", 200);
        Map<String, Chart> charts = new LinkedHashMap<>();
        charts.put("drying, stall", DryingSamples.stall());
        charts.put("drying, one coat", DryingSamples.oneCoat());
        charts.put("drying, six coats on three walls", DryingSamples.sixCoats());
        charts.put("drying, nasty, 3 days", DryingSamples.nasty(threeDays, 3));
        charts.put("drying, nasty, 91 days", DryingSamples.nasty(DryingSamples.WINTER, 91));
        charts.put("drying, nasty, 200 days", DryingSamples.nasty(long200, 200));
        charts.put("wall, stall", WallSamples.stall());
        charts.put("wall, 3 days, no dehumidifier", WallSamples.chart(threeDays, 1.2, 9));
        charts.put("wall, 14 days over a clock change", WallSamples.chart(twoWeeks, 7, 3));
        charts.put("wall, 200 days, heated from the start", WallSamples.chart(long200, 0, 99));
        charts.put("wall, always at the dew point", WallSamples.flat(DryingSamples.WINTER, -3, -3));
        charts.put("wall, far above the dew point", WallSamples.flat(DryingSamples.WINTER, -3, -13));
        charts.put("wall, far below the dew point", WallSamples.flat(threeDays, 4, 24));
        charts.put("readings, 3 days", ReadingsSamples.chart(threeDays, true, true));
        charts.put("readings, 14 days over a clock change", ReadingsSamples.chart(twoWeeks, true, false));
        charts.put("readings, 200 days with a wall", ReadingsSamples.chart(long200, true, true));
        charts.put("readings, temperature alone", ReadingsSamples.temperatureAlone(long200));
        charts.put("account, stall", AccountSamples.stall());
        charts.put("account, wet air from outside", AccountSamples.wetOutside());
        charts.put("account, a few litres", AccountSamples.small());
        charts.put("account, crowded", AccountSamples.crowded());
        charts.put("account, nothing", AccountSamples.nothing());
        addQuestions(charts, threeDays, long200);
        addFits(charts, threeDays, long200);
        return charts;
    }

    private static void addQuestions(Map<String, Chart> charts, Timeline threeDays, Timeline long200) {
        charts.put("chances, 3 days", OddsSamples.chances(threeDays, 3, 32));
        charts.put("chances, 200 days", OddsSamples.chances(long200, 200, 64));
        charts.put("rank", OddsSamples.rank());
        charts.put("saved, ranges", OddsSamples.saved(true));
        charts.put("saved, likely only", OddsSamples.saved(false));
        charts.put("plots, named lines", PlotsSamples.lines());
        charts.put("plots, found against expected", PlotsSamples.dots());
        charts.put("plots, tiny and huge numbers", PlotsSamples.extremes());
        charts.put("seasons, months", ProgrammeSamples.months());
        charts.put("seasons, likely only", ProgrammeSamples.likelyOnly());
        charts.put("seasons, two dozen", ProgrammeSamples.crowded());
        charts.put("seasons, never ready", ProgrammeSamples.never());
        charts.put("programme, winter and summer", ProgrammeSamples.winterAndSummer());
        charts.put("programme, nasty", ProgrammeSamples.nasty());
        charts.put("doors, a week", DoorsSamples.week());
        charts.put("airing, sketch", AiringSamples.sketch());
        charts.put("airing, days", AiringSamples.quick());
        charts.put("airing, never", AiringSamples.never());
        charts.put("airing, one level", AiringSamples.onlyShut());
        charts.put("delay, five causes", DelaySamples.fiveCauses());
        charts.put("delay, not ready", DelaySamples.notReady());
        charts.put("care, 3 days", CareSamples.chart(threeDays));
        charts.put("care, 200 days", CareSamples.chart(long200));
    }

    private static void addFits(Map<String, Chart> charts, Timeline threeDays, Timeline long200) {
        Timeline twelveWeeks = DryingSamples.timeline("2026-11-02T00:00:00Z", 84);
        Timeline twoWeeks = DryingSamples.timeline("2026-10-19T00:00:00Z", 14);
        charts.put("residuals, 3 days", ResidualSamples.four(threeDays, 3));
        charts.put("residuals, 14 days", ResidualSamples.four(twoWeeks, 14));
        charts.put("residuals, 12 weeks", ResidualSamples.four(twelveWeeks, 84));
        charts.put(
                "residuals, buckets every day",
                ResidualSamples.chart(
                        twelveWeeks,
                        ResidualSamples.bucket(twelveWeeks, 84, 1),
                        ResidualSamples.bucket(twelveWeeks, 84, 4),
                        ResidualSamples.tests(twelveWeeks, 30.0)));
        charts.put("residuals, 200 days", ResidualSamples.chart(long200, ResidualSamples.humidity(long200, 200)));
        charts.put("narrowing", NarrowingSamples.closing());
        charts.put("narrowing, open ended", NarrowingSamples.openEnded(60));
        charts.put("narrowing, 3 days", NarrowingSamples.openEnded(3));
        charts.put("narrowing, came late", NarrowingSamples.cameLate());
        charts.put("coverage", CoverageSamples.weeks());
        charts.put("coverage, uneven", CoverageSamples.uneven());
    }
}
