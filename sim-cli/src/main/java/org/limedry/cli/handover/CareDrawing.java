package org.limedry.cli.handover;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.limedry.cli.chart.CareChart;
import org.limedry.cli.chart.Timeline;
import org.limedry.cli.page.Names;
import org.limedry.simulation.History;
import org.limedry.simulation.Series;
import org.limedry.study.care.CareRecord;
import org.limedry.study.care.CareRecord.Kind;
import org.limedry.units.Units;

/** Makes the chart of the record of care: the room with most hours outside the limits. */
final class CareDrawing {
    private final Handover handover;
    private final CareRecord.Room room;
    private final History history;
    private final History.RoomHours hours;

    private CareDrawing(Handover handover) {
        this.handover = handover;
        this.room = CareText.worst(handover.care());
        this.history = handover.likely().history();
        this.hours = history.rooms().stream()
                .filter(one -> one.room().equals(room.room()))
                .findFirst()
                .orElseThrow();
    }

    static CareChart of(Handover handover) {
        return new CareDrawing(handover).chart();
    }

    private CareChart chart() {
        CareRecord.Limits limits = handover.care().limits();
        List<CareChart.Panel> panels = new ArrayList<>();
        if (history.times().size() > CareRecord.WARMING_HOURS + 1) {
            panels.add(panel(
                    Kind.WARMED,
                    "warmer than a day before, K",
                    limits.warmingK(),
                    hour -> CareRecord.warmingK(hours, hour)));
        }
        panels.add(panel(
                Kind.COLD,
                "air temperature, degrees C",
                limits.coldestCelsius(),
                hour -> hours.airCelsius().at(hour)));
        panels.add(panel(
                Kind.DRY,
                "relative humidity, percent",
                Units.percentFromFraction(limits.driest()),
                hour -> Math.min(
                        100.0,
                        Units.percentFromFraction(hours.relativeHumidity().at(hour)))));
        Instant last = history.times().get(history.times().size() - 1);
        return new CareChart(
                "care",
                title(),
                new Timeline(history.times().get(0), last, handover.site().zone()),
                panels);
    }

    private String title() {
        String name = Names.capital(room.room());
        return room.spells().isEmpty()
                ? name + ": every limit was held"
                : name + ": a limit was passed "
                        + (room.spells().size() == 1 ? "once" : room.spells().size() + " times");
    }

    private CareChart.Panel panel(Kind kind, String name, double limit, IntToDoubleFunction value) {
        int first = kind == Kind.WARMED ? CareRecord.WARMING_HOURS : 0;
        int end = history.times().size();
        return new CareChart.Panel(
                name,
                kind == Kind.DRY ? CareChart.Unit.PERCENT : CareChart.Unit.DEGREES,
                history.times().subList(first, end),
                Series.of(IntStream.range(first, end).mapToDouble(value).toArray()),
                limit,
                room.spells().stream()
                        .filter(spell -> spell.kind() == kind)
                        .map(spell -> new CareChart.Outside(spell.from(), spell.until()))
                        .toList());
    }
}
