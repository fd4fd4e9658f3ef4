package org.limedry.cli.delay;

import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.limedry.cli.page.Figures;
import org.limedry.cli.site.Normals;
import org.limedry.study.delay.MonthOfWeather;

/**
 * A month of the record against the normals of the place.
 *
 * @param record the month as the weather file has it
 * @param normal its normals
 */
record MonthRow(MonthOfWeather record, Normals.OfMonth normal) {
    private static final DateTimeFormatter NAME = DateTimeFormatter.ofPattern("MMM yyyy", Locale.ENGLISH);

    /** Returns the months from the first coat to ready for which there are both a record and normals. */
    static List<MonthRow> of(DelayStory story) {
        Optional<Normals> normals = story.runs().job().normals();
        if (normals.isEmpty()) {
            return List.of();
        }
        YearMonth first = YearMonth.from(story.actual().day(story.actual().laid()));
        YearMonth last = YearMonth.from(story.actualReady());
        List<MonthRow> rows = new ArrayList<>();
        Stream.iterate(first, month -> !month.isAfter(last), month -> month.plusMonths(1))
                .forEach(month -> normals.get()
                        .of(month.getMonth())
                        .ifPresent(normal -> story.runs()
                                .job()
                                .weatherOf(month)
                                .ifPresent(record -> rows.add(new MonthRow(record, normal)))));
        return rows;
    }

    String month() {
        return NAME.format(record.month());
    }

    String celsius() {
        return against(
                Figures.oneDecimal(record.meanCelsius()), normal.celsius().map(Figures::oneDecimal));
    }

    String humidity() {
        return against(
                Figures.whole(100 * record.meanRelativeHumidity()),
                normal.rhPercent().map(Figures::whole));
    }

    String frostDays() {
        return against(Figures.whole(record.frostDays()), normal.frostDays().map(Figures::plain));
    }

    String rainDays() {
        String recorded = normal.rainDaysRecorded().map(Figures::plain).orElse("not given");
        return against(recorded, normal.rainDays().map(Figures::plain));
    }

    String roomInAir() {
        return against(
                Figures.oneDecimal(record.roomInAirLitres()), normalRoomInAir().map(Figures::oneDecimal));
    }

    /** Returns all of it in one line. */
    String line() {
        return month() + ", normals in brackets: " + celsius() + " C, " + humidity() + " % humidity, frost days "
                + frostDays() + ", rain days " + rainDays() + ", room in air " + roomInAir() + " l in 1,000 m3.";
    }

    private Optional<Double> normalRoomInAir() {
        return normal.celsius()
                .flatMap(celsius ->
                        normal.rhPercent().map(percent -> MonthOfWeather.roomInAirLitres(celsius, percent / 100.0)));
    }

    private static String against(String recorded, Optional<String> usual) {
        return recorded + " (" + usual.orElse("not given") + ")";
    }

    /** Returns the figures exactly, for the sheet. */
    List<List<?>> sheetRows() {
        return List.of(
                row("mean temperature", normal.celsius(), record.meanCelsius(), "C"),
                row("mean relative humidity", normal.rhPercent(), 100 * record.meanRelativeHumidity(), "percent"),
                row("frost days", normal.frostDays(), record.frostDays(), "days"),
                List.of("month", month() + ", rain days", normal.rainDays(), normal.rainDaysRecorded(), "", "days"),
                row(
                        "litres that 1000 m3 of air could still take up",
                        normalRoomInAir(),
                        record.roomInAirLitres(),
                        "litres"));
    }

    private List<?> row(String item, Optional<Double> usual, double recorded, String unit) {
        return List.of("month", month() + ", " + item, usual, recorded, usual.map(value -> recorded - value), unit);
    }
}
