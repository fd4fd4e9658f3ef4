package org.limedry.cli.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.limedry.cli.chart.ResidualChart;
import org.limedry.cli.chart.ResidualChart.Channel;
import org.limedry.cli.chart.ResidualChart.Marks;
import org.limedry.cli.chart.Timeline;
import org.limedry.cli.page.Figures;
import org.limedry.cli.page.Names;
import org.limedry.study.fit.Reading;
import org.limedry.study.fit.Residual;
import org.limedry.units.Units;

/** The charts of readings against the run, at most {@link ResidualChart#MOST_CHANNELS} strips each. */
final class FitStrips {
    private static final String HAND = "e-folds past ready";

    private final FitFindings findings;

    private FitStrips(FitFindings findings) {
        this.findings = findings;
    }

    static List<ResidualChart> of(FitFindings findings) {
        return new FitStrips(findings).charts();
    }

    /** Returns the unit in which a reading is shown. */
    static String unit(Reading reading) {
        if (reading instanceof Reading.RoomHumidity) {
            return "% RH";
        } else if (reading instanceof Reading.Bucket) {
            return "litres";
        } else if (reading instanceof Reading.ByHand) {
            return HAND;
        }
        return "C";
    }

    private List<ResidualChart> charts() {
        Map<String, List<Residual>> byChannel = new LinkedHashMap<>();
        findings.fit().residuals().stream()
                .filter(residual -> !(residual.reading() instanceof Reading.ByHand))
                .filter(residual -> Double.isFinite(residual.before()) && Double.isFinite(residual.after()))
                .forEach(residual -> byChannel
                        .computeIfAbsent(residual.reading().channel(), name -> new ArrayList<>())
                        .add(residual));
        List<Channel> channels = new ArrayList<>();
        byChannel.forEach((name, residuals) -> channels.add(channel(name, residuals)));
        List<ResidualChart> charts = new ArrayList<>();
        for (int first = 0; first < channels.size(); first += ResidualChart.MOST_CHANNELS) {
            List<Channel> some =
                    channels.subList(first, Math.min(channels.size(), first + ResidualChart.MOST_CHANNELS));
            charts.add(chart(charts.size() + 1, some));
        }
        return charts;
    }

    private ResidualChart chart(int number, List<Channel> channels) {
        String title = findings.dates().isPresent()
                ? "The run goes with what was read, to " + findings.untilWords()
                : "The run does not go with what was read, to " + findings.untilWords();
        Timeline timeline = new Timeline(
                findings.scenario().from(),
                findings.readings().until(),
                findings.site().zone());
        return new ResidualChart("fit-readings-" + number, title, timeline, channels);
    }

    private Channel channel(String name, List<Residual> residuals) {
        Reading kind = residuals.get(0).reading();
        double scale = kind instanceof Reading.RoomHumidity ? Units.percentFromFraction(1.0) : 1.0;
        double sigma = scale
                * residuals.stream().mapToDouble(Residual::sigma).average().orElseThrow();
        List<ResidualChart.Reading> points = residuals.stream()
                .sorted(Comparator.comparing(residual -> residual.reading().at()))
                .map(residual -> new ResidualChart.Reading(
                        residual.reading().at(),
                        scale * (residual.measured() - residual.offset()),
                        scale * residual.before(),
                        scale * residual.after()))
                .toList();
        return new Channel(Names.capital(name), unit(kind), marks(kind), sigma, verdict(points, kind), points);
    }

    private static Marks marks(Reading kind) {
        if (kind instanceof Reading.Bucket) {
            return Marks.BARS;
        }
        return kind instanceof Reading.FaceCelsius ? Marks.DOTS : Marks.LINE;
    }

    /** Returns how far the run lies from two readings in three. */
    private static String verdict(List<ResidualChart.Reading> points, Reading kind) {
        double[] off = points.stream()
                .mapToDouble(point -> Math.abs(point.measured() - point.after()))
                .sorted()
                .toArray();
        return "within " + Figures.oneDecimal(off[(off.length - 1) * 2 / 3]) + " " + unit(kind) + " mostly";
    }
}
