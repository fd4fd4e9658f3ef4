package org.limedry.cli.site;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.limedry.cli.readings.diary.Diary;
import org.limedry.cli.readings.diary.DiaryDay;
import org.limedry.climate.LoggedReading;
import org.limedry.climate.Readings;
import org.limedry.climate.SensorError;
import org.limedry.climate.WeatherSeries;
import org.limedry.lime.HandTest;
import org.limedry.room.RoomPlan;

/**
 * What was read on a site and what its diary says: the part of a job that is known and no longer guessed.
 *
 * @param loggers loggers in the rooms
 * @param outdoors readings from outdoors
 * @param diary the diary
 * @param error error of one logger
 * @param known up to when each of them counts
 * @param remarks what was found in the files, each in a sentence
 */
public record SiteReadings(
        List<Logged> loggers,
        Optional<Readings> outdoors,
        Optional<Diary> diary,
        SensorError error,
        Known known,
        List<String> remarks) {
    public SiteReadings {
        loggers = List.copyOf(loggers);
        remarks = List.copyOf(remarks);
    }

    /**
     * A logger.
     *
     * @param name its file
     * @param room room whose air it read
     * @param wall wall whose face it read, by its name in a scenario
     * @param readings what it read
     */
    public record Logged(String name, Optional<String> room, Optional<String> wall, Readings readings) {}

    /**
     * Up to when what happened is known. Whatever comes later is as the site file plans it.
     *
     * @param weather the weather
     * @param diary doors, plant and mist
     * @param hand hand tests of the diary
     */
    public record Known(Instant weather, Instant diary, Instant hand) {
        /** Returns that everything is known up to one moment. */
        public static Known upTo(Instant moment) {
            return new Known(moment, moment, moment);
        }
    }

    /** Returns the same readings as they were known at some time. */
    public SiteReadings with(Known other) {
        return new SiteReadings(loggers, outdoors, diary, error, other, remarks);
    }

    /**
     * Returns the weather with what is known of it.
     *
     * @param guessed weather that stands for what is to come
     * @param usual weather of the place on its own dates, which is what happened where nobody read it
     */
    WeatherSeries weather(WeatherSeries guessed, WeatherSeries usual) {
        WeatherSeries past = outdoors.map(usual::withReadings).orElse(usual);
        return guessed.after(known.weather(), past);
    }

    /** Returns a room in which doors, plant and mist went as the diary has it. */
    RoomPlan room(RoomPlan planned, RunDays days) {
        return diaryDays(days, known.diary()).stream()
                .reduce(planned, (room, day) -> new DiaryReplay(day, days.zone()).on(room), (a, b) -> b);
    }

    /** Returns the hand tests of the diary, each at the start of its day. */
    List<HandTest> handTests(RunDays days) {
        List<HandTest> tests = new ArrayList<>();
        for (DiaryDay day : diaryDays(days, known.hand())) {
            day.care()
                    .handTests()
                    .forEach(mark -> tests.add(
                            new HandTest(mark.wall(), mark.coat(), days.workBegins(day.date()), mark.result())));
        }
        return tests;
    }

    static boolean isOfAir(LoggedReading reading) {
        return reading.celsius().isPresent() || reading.relativeHumidity().isPresent();
    }

    /** Returns the days of the diary that lie in the run and are known. */
    private List<DiaryDay> diaryDays(RunDays days, Instant end) {
        return diary.map(Diary::days).orElse(List.of()).stream()
                .filter(day -> days.contains(day.date()))
                .filter(day -> days.workBegins(day.date()).isBefore(end))
                .toList();
    }
}
