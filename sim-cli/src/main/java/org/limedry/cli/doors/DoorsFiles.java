package org.limedry.cli.doors;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.limedry.cli.chart.DoorsChart;
import org.limedry.cli.page.Bundle;
import org.limedry.cli.page.Columns;
import org.limedry.cli.page.CsvSheet;
import org.limedry.cli.page.JsonText;
import org.limedry.cli.page.Page;
import org.limedry.study.doors.AirReading;
import org.limedry.study.doors.DoorBlock;
import org.limedry.study.doors.DoorDay;
import org.limedry.study.doors.DoorHour;
import org.limedry.study.doors.DoorNight;
import org.limedry.study.doors.DoorQuestion;
import org.limedry.study.doors.DoorReason;
import org.limedry.study.doors.DoorWindow;
import org.limedry.units.Units;

/** The sheet, the chart and the figures of a plan. */
final class DoorsFiles {
    private static final Columns<Row> HOURS = Columns.<Row>of()
            .key("hour", row -> row.hour().from())
            .key("room", Row::room)
            .key("word", row -> name(row.word()))
            .key("reason", row -> name(row.hour().reason()))
            .key("dryingPowerGPerM3", row -> row.hour().ofRoom().gPerM3())
            .key("dryingPowerErrorGPerM3", row -> row.hour().ofRoom().errorGPerM3())
            .key("offColdestWallGPerM3", row -> row.hour().ofFace().gPerM3())
            .key("offColdestWallErrorGPerM3", row -> row.hour().ofFace().errorGPerM3())
            .key("outdoorCelsius", row -> row.hour().outside().celsius())
            .key("outdoorRhPercent", row -> percent(row.hour().outside()))
            .key("outdoorVapourGPerM3", row -> row.hour().outside().vapourGPerM3())
            .key("shutRoomCelsius", row -> row.hour().inside().celsius())
            .key("shutRoomRhPercent", row -> percent(row.hour().inside()))
            .key("shutRoomVapourGPerM3", row -> row.hour().inside().vapourGPerM3())
            .key("coldestWallCelsius", row -> row.hour().coldestFaceCelsius())
            .key("offWallsOpenKg", row -> row.hour().driedOpenKg())
            .key("offWallsShutKg", row -> row.hour().driedShutKg())
            .key("ontoWallsOpenKg", row -> row.hour().ontoWallsKg());

    private static final Columns<DoorBlock> BLOCKS = Columns.<DoorBlock>of()
            .key("fromHour", block -> DayWords.clock(block.firstHour()))
            .key("untilHour", block -> DayWords.clock(block.endHour()))
            .key("word", block -> name(block.word()));

    private static final Columns<WayResult> WAYS = Columns.<WayResult>of()
            .key("way", way -> name(way.way()))
            .key("outOfWallsLitres", WayResult::litres)
            .key("lowLitres", WayResult::lowLitres)
            .key("highLitres", WayResult::highLitres)
            .key("ready", WayResult::ready);

    private record Row(String room, DoorReason.Word word, DoorHour hour) {}

    private DoorsFiles() {}

    /** Returns all files of a plan. */
    static Bundle of(DoorFindings findings, Page.Foot foot) {
        DoorsChart chart = chart(findings);
        return new Bundle()
                .text("doors.html", () -> DoorsPage.of(findings, chart, foot))
                .chart("doors", chart)
                .csv("doors", csv(findings))
                .json("doors", json(findings));
    }

    static DoorsChart chart(DoorFindings findings) {
        List<DoorsChart.Day> days = IntStream.range(0, findings.days().size())
                .mapToObj(i -> day(findings.days().get(i), findings.nights().get(i)))
                .toList();
        return new DoorsChart(
                "doors", new DoorWords(findings).headline(), DoorWindow.FIRST_HOUR, DoorWindow.LAST_HOUR, days);
    }

    private static DoorsChart.Day day(DoorDay day, DoorNight night) {
        DayWords words = new DayWords(day);
        List<DoorsChart.Block> blocks =
                day.blocks().stream().map(DoorsFiles::block).toList();
        return new DoorsChart.Day(words.weekday(), words.date(), blocks, DayWords.night(night), words.why());
    }

    private static DoorsChart.Block block(DoorBlock block) {
        DoorsChart.Word word = switch (block.word()) {
            case OPEN -> DoorsChart.Word.OPEN;
            case SHUT -> DoorsChart.Word.SHUT;
            case NO_DIFFERENCE -> DoorsChart.Word.NO_DIFFERENCE;
        };
        return new DoorsChart.Block(DayWords.clock(block.firstHour()), DayWords.clock(block.endHour()), word);
    }

    private static CsvSheet csv(DoorFindings findings) {
        List<Row> rows = new ArrayList<>();
        for (DoorDay day : findings.days()) {
            for (DoorBlock block : day.blocks()) {
                day.hours()
                        .subList(block.firstHour(), block.endHour())
                        .forEach(hour -> rows.add(new Row(findings.room(), block.word(), hour)));
            }
            DoorReason.Word word = day.openAtNight() ? DoorReason.Word.OPEN : DoorReason.Word.SHUT;
            day.night().forEach(hour -> rows.add(new Row(findings.room(), word, hour)));
        }
        return HOURS.csv(rows);
    }

    private static double percent(AirReading air) {
        return Units.percentFromFraction(air.relativeHumidity());
    }

    /** Returns "wets walls" for WETS_WALLS. */
    private static String name(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static ObjectNode json(DoorFindings findings) {
        DoorQuestion question = findings.plan().question();
        ObjectNode root = JsonText.object();
        JsonText.putCautions(root, findings.situation());
        root.put("site", findings.site()).put("room", findings.room());
        root.put("from", question.window().from().toString());
        root.put("until", question.until().toString());
        root.put("weather", findings.weather()).put("isForecast", findings.forecast());
        root.put("temperatureErrorK", question.errors().temperatureK());
        root.put(
                "humidityErrorPercent",
                Units.percentFromFraction(question.errors().relativeHumidity()));
        ArrayNode days = root.putArray("days");
        IntStream.range(0, findings.days().size())
                .forEach(i -> day(
                        days.addObject(),
                        findings.days().get(i),
                        findings.nights().get(i)));
        JsonText.put(root, "coatThatWaits", findings.waits());
        root.set("ways", WAYS.json(List.copyOf(findings.ways().values())));
        return root;
    }

    private static void day(ObjectNode node, DoorDay day, DoorNight night) {
        node.put("date", day.date().toString());
        node.set("blocks", BLOCKS.json(day.blocks()));
        node.put("night", DayWords.night(night));
        node.put("why", new DayWords(day).why());
        node.put("ontoWallsLitresIfOpen", day.ontoWallsKg());
    }
}
