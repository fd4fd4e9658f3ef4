package org.limedry.cli.doors;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.limedry.cli.chart.DoorsChart;
import org.limedry.cli.page.Bundle;
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
public final class DoorsFiles {
    private static final List<String> HEADINGS = List.of(
            "hour",
            "room",
            "word",
            "reason",
            "dryingPowerGPerM3",
            "dryingPowerErrorGPerM3",
            "offColdestWallGPerM3",
            "offColdestWallErrorGPerM3",
            "outdoorCelsius",
            "outdoorRhPercent",
            "outdoorVapourGPerM3",
            "shutRoomCelsius",
            "shutRoomRhPercent",
            "shutRoomVapourGPerM3",
            "coldestWallCelsius",
            "offWallsOpenKg",
            "offWallsShutKg",
            "ontoWallsOpenKg");

    private DoorsFiles() {}

    /** Returns all files of a plan. */
    public static Bundle of(DoorFindings findings, Page.Foot foot) {
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
        List<List<?>> rows = new ArrayList<>();
        for (DoorDay day : findings.days()) {
            for (DoorBlock block : day.blocks()) {
                day.hours()
                        .subList(block.firstHour(), block.endHour())
                        .forEach(hour -> rows.add(row(findings.room(), block.word(), hour)));
            }
            DoorReason.Word word = day.openAtNight() ? DoorReason.Word.OPEN : DoorReason.Word.SHUT;
            day.night().forEach(hour -> rows.add(row(findings.room(), word, hour)));
        }
        return new CsvSheet(HEADINGS, rows);
    }

    private static List<?> row(String room, DoorReason.Word word, DoorHour hour) {
        return List.of(
                hour.from(),
                room,
                name(word),
                name(hour.reason()),
                hour.ofRoom().gPerM3(),
                hour.ofRoom().errorGPerM3(),
                hour.ofFace().gPerM3(),
                hour.ofFace().errorGPerM3(),
                hour.outside().celsius(),
                percent(hour.outside()),
                hour.outside().vapourGPerM3(),
                hour.inside().celsius(),
                percent(hour.inside()),
                hour.inside().vapourGPerM3(),
                hour.coldestFaceCelsius(),
                hour.driedOpenKg(),
                hour.driedShutKg(),
                hour.ontoWallsKg());
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
        findings.waits().ifPresent(coat -> root.put("coatThatWaits", coat));
        ArrayNode ways = root.putArray("ways");
        findings.ways().values().forEach(way -> way(ways.addObject(), way));
        return root;
    }

    private static void day(ObjectNode node, DoorDay day, DoorNight night) {
        node.put("date", day.date().toString());
        ArrayNode blocks = node.putArray("blocks");
        day.blocks()
                .forEach(block -> blocks.addObject()
                        .put("fromHour", DayWords.clock(block.firstHour()))
                        .put("untilHour", DayWords.clock(block.endHour()))
                        .put("word", name(block.word())));
        node.put("night", DayWords.night(night));
        node.put("why", new DayWords(day).why());
        node.put("ontoWallsLitresIfOpen", day.ontoWallsKg());
    }

    private static void way(ObjectNode node, WayResult way) {
        node.put("way", name(way.way()));
        node.put("outOfWallsLitres", way.litres());
        Optional<Double> low = way.lowLitres();
        low.ifPresent(litres -> node.put("lowLitres", litres));
        way.highLitres().ifPresent(litres -> node.put("highLitres", litres));
        node.put("ready", way.ready().map(Object::toString).orElse(null));
    }
}
