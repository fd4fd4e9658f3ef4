package org.limedry.cli.fit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.math3.random.MersenneTwister;
import org.apache.commons.math3.random.RandomGenerator;
import org.limedry.cli.site.Site;
import org.limedry.climate.Schedule;
import org.limedry.climate.WeatherSeries;
import org.limedry.lime.ReadinessRule;
import org.limedry.room.Opening;
import org.limedry.room.Plant;
import org.limedry.room.RoomPlan;
import org.limedry.simulation.Accuracy;
import org.limedry.simulation.History;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Progress;
import org.limedry.simulation.Scenario;
import org.limedry.simulation.Simulation;
import org.limedry.study.Draw;
import org.limedry.units.Units;

/**
 * A made-up truth: a site whose unknowns are known to us, and the files that loggers, buckets and hands would have left of it.
 *
 * <p>Each logger has an offset of its own and a noise that hangs together over hours, and writes one decimal, as cheap ones do.
 * What is written up to an earlier day is the beginning of what is written up to a later one.
 */
final class Twin {
    /** Errors as the site file takes them where it does not say: one standard deviation of offset and noise. */
    private static final double CELSIUS_SIGMA = 0.5;

    private static final double HUMIDITY_SIGMA = 3.0;
    private static final double BUCKET_SHARE = 0.05;
    private static final double BUCKET_LITRES = 0.2;
    private static final double HAND_SIGMA = 0.25;
    private static final double HOUR_TO_HOUR = 0.6;
    private static final String DENTS = "dents";

    private final Site site;
    private final Scenario truth;
    private final Outcome outcome;
    private final int seed;

    private Twin(Site site, Scenario truth, Outcome outcome, int seed) {
        this.site = site;
        this.truth = truth;
        this.outcome = outcome;
        this.seed = seed;
    }

    /**
     * Runs the truth to its end.
     *
     * @param site the site as it truly is: its timetables are what happened
     * @param unknowns where its unknowns truly lie
     * @param seed of the noise
     */
    static Twin of(Site site, Draw unknowns, int seed) {
        Scenario truth = site.scenario(unknowns).with(Accuracy.quick());
        return new Twin(site, truth, Simulation.run(truth, Progress.none()), seed);
    }

    Outcome outcome() {
        return outcome;
    }

    /** Returns when a coat truly is ready, counted from 0 in the order of the file. */
    Optional<Instant> ready(int coat) {
        return outcome.coats().get(coat).ready();
    }

    /** Writes what was read in the rooms and outdoors, ROOM.csv and yard.csv, to the end of a day. */
    void writeLoggers(Path folder, LocalDate last) {
        WeatherSeries weather = (WeatherSeries) truth.outdoors();
        write(
                folder.resolve("yard.csv"),
                hours(
                        last,
                        ";wind m/s",
                        hour -> line(
                                        at(hour),
                                        weather.celsius(at(hour)),
                                        Units.percentFromFraction(weather.relativeHumidity(at(hour))))
                                + String.format(Locale.ROOT, ";%.1f", weather.windMPerS(at(hour)))));
        for (History.RoomHours room : outcome.history().rooms()) {
            Noise celsius = new Noise(room.room() + " celsius", CELSIUS_SIGMA);
            Noise percent = new Noise(room.room() + " humidity", HUMIDITY_SIGMA);
            write(
                    folder.resolve(room.room().replace(' ', '-') + ".csv"),
                    hours(
                            last,
                            "",
                            hour -> line(
                                    at(hour),
                                    room.airCelsius().at(hour) + celsius.next(),
                                    Units.percentFromFraction(
                                                    room.relativeHumidity().at(hour))
                                            + percent.next())));
        }
    }

    private List<String> hours(LocalDate last, String more, IntFunction<String> line) {
        Instant end = startOf(last.plusDays(1));
        List<String> lines = new ArrayList<>(List.of("time UTC;temperature C;humidity %" + more));
        for (int hour = 0; at(hour).isBefore(end) && at(hour).isBefore(truth.until()); hour++) {
            lines.add(line.apply(hour));
        }
        return lines;
    }

    private Instant at(int hour) {
        return truth.from().plus(Duration.ofHours(hour));
    }

    private Instant startOf(LocalDate day) {
        return day.atStartOfDay(site.zone()).toInstant();
    }

    private static String line(Instant at, double celsius, double percent) {
        return String.format(Locale.ROOT, "%s;%.1f;%.1f", at, celsius, Math.max(1.0, Math.min(100.0, percent)));
    }

    /**
     * Writes the diary to a day: doors as they stood, hours of dehumidifiers, litres of each morning, and a hand test of every
     * coat on Fridays.
     */
    void writeDiary(Path file, LocalDate last) {
        List<String> lines = new ArrayList<>(List.of(
                "# Site diary: " + site.name() + ". All that is written here is invented.",
                "date;doors open;dehumidifier hours;litres emptied;hand tests"));
        LocalDate first = site.from().atZone(site.zone()).toLocalDate();
        for (LocalDate day = first; !day.isAfter(last); day = day.plusDays(1)) {
            lines.add(String.join(";", day.toString(), doors(day), ran(day), litres(day), handTests(day)));
        }
        write(file, lines);
    }

    private String doors(LocalDate day) {
        List<String> spells = new ArrayList<>();
        for (RoomPlan room : truth.rooms()) {
            for (Opening opening : room.openings()) {
                spansOf(day, opening.open())
                        .forEach(span -> spells.add(room.name() + " " + opening.name() + " " + clock(span.from(), day)
                                + "-" + clock(span.until(), day)));
            }
        }
        return spells.isEmpty() ? "shut" : String.join(", ", spells);
    }

    private List<Schedule.Span> spansOf(LocalDate day, Schedule schedule) {
        return Schedule.never()
                .between(startOf(day), startOf(day.plusDays(1)), schedule)
                .spans();
    }

    private String clock(Instant at, LocalDate day) {
        ZoneId zone = site.zone();
        return at.equals(startOf(day.plusDays(1)))
                ? "24:00"
                : at.atZone(zone).toLocalTime().toString();
    }

    private Stream<Plant> dehumidifiers(RoomPlan room) {
        return room.plant().stream().filter(plant -> plant instanceof Plant.Dehumidifier);
    }

    private String ran(LocalDate day) {
        return truth.rooms().stream()
                .filter(room -> dehumidifiers(room).findAny().isPresent())
                .map(room -> room.name() + " " + Math.min(24, minutes(day, room) / 60))
                .collect(Collectors.joining(", "));
    }

    private long minutes(LocalDate day, RoomPlan room) {
        return dehumidifiers(room)
                .flatMap(plant -> spansOf(day, plant.on()).stream())
                .mapToLong(span -> Duration.between(span.from(), span.until()).toMinutes())
                .sum();
    }

    private String litres(LocalDate day) {
        return truth.rooms().stream()
                .filter(room -> dehumidifiers(room).findAny().isPresent())
                .map(room -> String.format(Locale.ROOT, "%s %.1f", room.name(), litres(day, room.name())))
                .collect(Collectors.joining(", "));
    }

    private double litres(LocalDate day, String room) {
        History.RoomHours hours = outcome.history().rooms().stream()
                .filter(one -> one.room().equals(room))
                .findFirst()
                .orElseThrow();
        int until = hour(site.workBegins(day));
        double kg = 0.0;
        int from = hour(site.workBegins(day.minusDays(1)));
        for (int hour = Math.max(0, from); hour < until; hour++) {
            kg += 0.5
                    * Units.SECONDS_PER_HOUR
                    * (hours.dehumidifierKgPerS().at(hour)
                            + hours.dehumidifierKgPerS().at(hour + 1));
        }
        RandomGenerator random = random(room + day);
        return Math.max(0.0, kg * (1.0 + BUCKET_SHARE * random.nextGaussian()))
                + (kg > 0.0 ? Math.max(-0.9 * kg, BUCKET_LITRES * random.nextGaussian()) : 0.0);
    }

    private int hour(Instant at) {
        return Math.toIntExact(Duration.between(truth.from(), at).toHours());
    }

    private String handTests(LocalDate day) {
        if (day.getDayOfWeek() != DayOfWeek.FRIDAY) {
            return "";
        }
        int hour = hour(site.workBegins(day));
        return outcome.history().coats().stream()
                .filter(coat -> coat.meanSuctionPa().at(hour) > 0.0)
                .filter(coat -> !passedBefore(coat, day))
                .map(coat -> coat.wall() + " " + coat.number() + " " + found(coat, hour, day))
                .collect(Collectors.joining(", "));
    }

    /** A coat that was found ready is not tried again. */
    private boolean passedBefore(History.CoatHours coat, LocalDate day) {
        for (LocalDate friday = day.minusWeeks(1); ; friday = friday.minusWeeks(1)) {
            int hour = hour(site.workBegins(friday));
            if (hour < 0 || !(coat.meanSuctionPa().at(hour) > 0.0)) {
                return false;
            } else if (!found(coat, hour, friday).equals(DENTS)) {
                return true;
            }
        }
    }

    /** What the hand finds: the rule of the truth, with the error of a hand. */
    private String found(History.CoatHours coat, int hour, LocalDate day) {
        ReadinessRule rule = truth.rule();
        double margin = Math.min(
                Math.log(coat.meanSuctionPa().at(hour) / rule.suctionPa().orElseThrow()),
                Math.log(coat.equivalentAgeDays().at(hour)
                        / rule.equivalentAgeDays().orElseThrow()));
        double felt =
                margin + HAND_SIGMA * random(coat.wall() + coat.number() + day).nextGaussian();
        return felt < 0.0 ? DENTS : felt < 1.0 ? "nail not knuckle" : "hard";
    }

    private RandomGenerator random(String what) {
        return random(seed, what);
    }

    /** Returns numbers that have nothing to do with those of the next seed, which java.util.Random does not grant. */
    static RandomGenerator random(int seed, String what) {
        return new MersenneTwister(new int[] {seed, what.hashCode()});
    }

    private static void write(Path file, List<String> lines) {
        try {
            Files.writeString(file, String.join("\n", lines) + "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** An offset and a noise that hangs together from one hour to the next, both of one size. */
    private final class Noise {
        private final RandomGenerator random;
        private final double offset;
        private final double sigma;
        private double now;

        Noise(String what, double sigma) {
            this.random = random(what);
            this.sigma = sigma;
            this.offset = sigma * random.nextGaussian();
            this.now = sigma * random.nextGaussian();
        }

        double next() {
            double fresh = Math.sqrt(1.0 - HOUR_TO_HOUR * HOUR_TO_HOUR) * sigma * random.nextGaussian();
            now = HOUR_TO_HOUR * now + fresh;
            return offset + now;
        }
    }
}
