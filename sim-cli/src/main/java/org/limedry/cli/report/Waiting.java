package org.limedry.cli.report;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.limedry.cli.page.Days;
import org.limedry.simulation.History;
import org.limedry.units.Units;
import org.limedry.wall.WallPlan;

/**
 * The hours for which a coat was waited for: after it was laid, until it was ready or the run ended.
 *
 * @param coat the coat; it was laid
 * @param wall its wall
 * @param room the room it faces, hour by hour
 * @param face the face of the room on that wall, hour by hour
 * @param history all hours of the run
 * @param first first hour, an index into the history
 * @param end first hour that no longer counts
 */
record Waiting(
        Coat coat, WallPlan wall, History.RoomHours room, History.FaceHours face, History history, int first, int end) {
    /** Air this full takes up hardly any more; stated on the page. */
    private static final double FULL_RELATIVE_HUMIDITY = 0.95;

    private static final LocalTime EVENING = LocalTime.of(18, 0);
    private static final LocalTime MORNING = LocalTime.of(6, 0);

    /** Returns the wait for a coat that was laid. */
    static Waiting of(Findings findings, Coat coat) {
        WallPlan wall = findings.wall(coat.plan().wall());
        String roomName = roomOf(wall);
        History history = findings.outcome().history();
        Instant laid = coat.result().laid().orElseThrow();
        Instant until = coat.result().ready().orElse(findings.outcome().reached());
        return new Waiting(
                coat,
                wall,
                history.rooms().stream()
                        .filter(hours -> hours.room().equals(roomName))
                        .findFirst()
                        .orElseThrow(),
                history.faces().stream()
                        .filter(hours ->
                                hours.wall().equals(wall.name()) && hours.room().equals(roomName))
                        .findFirst()
                        .orElseThrow(),
                history,
                countUpTo(history, laid),
                countUpTo(history, until));
    }

    /** Returns the name of the room that the plastered side of a wall faces. */
    static String roomOf(WallPlan wall) {
        return wall.innerRoom()
                .orElseThrow(() -> new IllegalArgumentException("wall: must face a room, was " + wall.name()));
    }

    /** Returns how many hours the wait lasted. */
    int hours() {
        return end - first;
    }

    /** Returns how many days the wait lasted. */
    double days() {
        return hours() / 24.0;
    }

    /** Counts hours of the wait. */
    int count(IntPredicate condition) {
        return (int) IntStream.range(first, end).filter(condition).count();
    }

    /** Counts hours of the wait between evening and morning. */
    int countAtNight(IntPredicate condition, Days calendar) {
        return count(hour -> condition.test(hour) && isNight(hour, calendar));
    }

    /** Adds up a quantity over the hours of the wait. */
    double sum(IntToDoubleFunction quantity) {
        return IntStream.range(first, end).mapToDouble(quantity).sum();
    }

    /** Returns the mean of a quantity over the wait. */
    double mean(IntToDoubleFunction quantity) {
        return sum(quantity) / hours();
    }

    /** Sums up a quantity for each day of the wait on the calendar of the site. */
    Map<LocalDate, Double> byDay(IntToDoubleFunction quantity, Days calendar) {
        return IntStream.range(first, end)
                .boxed()
                .collect(Collectors.groupingBy(
                        hour -> calendar.date(history.times().get(hour)),
                        TreeMap::new,
                        Collectors.summingDouble(quantity::applyAsDouble)));
    }

    /** Tells whether the dew point of the room air is at or above the face. */
    boolean isAtDewPoint(int hour) {
        return room.dewPointCelsius().at(hour) >= face.celsius().at(hour);
    }

    /** Tells whether the room air can take up hardly any more. */
    boolean isAirFull(int hour) {
        return room.relativeHumidity().at(hour) >= FULL_RELATIVE_HUMIDITY;
    }

    /** Tells whether the air is full or the face wet. */
    boolean isWet(int hour) {
        return isAirFull(hour) || isAtDewPoint(hour);
    }

    /** Returns the first hour of the wait. */
    Instant firstTime() {
        return history.times().get(Math.min(first, history.times().size() - 1));
    }

    /** Counts hours of the wait before an instant. */
    int hoursBefore(Instant instant, IntPredicate condition) {
        return count(hour -> history.times().get(hour).isBefore(instant) && condition.test(hour));
    }

    /** Returns water that left the coats of this wall through the face during the wait, litres. */
    double driedLitres() {
        return -wall.areaM2() * sum(hour -> face.vapourKgPerM2S().at(hour)) * Units.SECONDS_PER_HOUR;
    }

    /** Returns water that the coat lost during the wait, to the air or to the wall, litres. */
    double lostLitres() {
        double left = hours() == 0
                ? coat.result().waterLaidKgPerM2()
                : history.coats().get(coat.index()).waterKgPerM2().at(end - 1);
        return wall.areaM2() * (coat.result().waterLaidKgPerM2() - left);
    }

    private boolean isNight(int hour, Days calendar) {
        LocalTime time = history.times().get(hour).atZone(calendar.zone()).toLocalTime();
        return time.isBefore(MORNING) || !time.isBefore(EVENING);
    }

    /** Returns the first hour of the history that is later than {@code instant}. */
    private static int countUpTo(History history, Instant instant) {
        long hours = Duration.between(history.times().get(0), instant).toHours();
        return (int) Math.max(0, Math.min(history.times().size(), hours + 1));
    }
}
