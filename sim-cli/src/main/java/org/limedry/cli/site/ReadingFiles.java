package org.limedry.cli.site;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.limedry.cli.problem.BadInputException;
import org.limedry.cli.problem.InputProblem;
import org.limedry.cli.readings.diary.Diary;
import org.limedry.cli.readings.diary.DiaryFile;
import org.limedry.cli.readings.logger.Asked;
import org.limedry.cli.readings.logger.LoggerFile;
import org.limedry.cli.readings.logger.PlanFile;
import org.limedry.cli.readings.logger.PlanKey;
import org.limedry.cli.readings.logger.Unused;
import org.limedry.cli.site.schema.Entry;
import org.limedry.cli.site.schema.Key;
import org.limedry.cli.site.schema.Place;
import org.limedry.climate.LoggedReading;
import org.limedry.climate.Readings;
import org.limedry.climate.SensorError;
import org.limedry.units.Units;

/** Loads what was read on a site from the files beside the site file, or reports what is wrong with them. */
final class ReadingFiles {
    private final SiteParts parts;
    private final Entry entry;
    private final Path folder;
    private final List<String> remarks = new ArrayList<>();
    private final Map<Path, String> namedAt = new HashMap<>();
    private final List<String> clockTaken = new ArrayList<>();

    private ReadingFiles(SiteParts parts, Entry entry, Path folder) {
        this.parts = parts;
        this.entry = entry;
        this.folder = folder;
    }

    /** Loads them; what is wrong goes to the problems of the site file. */
    static Optional<SiteReadings> load(SiteParts parts, Path folder) {
        return parts.entry().given(SiteKeys.READINGS).map(entry -> new ReadingFiles(parts, entry, folder).load());
    }

    private SiteReadings load() {
        List<SiteReadings.Logged> loggers = new ArrayList<>();
        entry.get(ReadingKeys.LOGGERS).forEach(logger -> logger(logger).ifPresent(loggers::add));
        Optional<Readings> outdoors = readings(entry, ReadingKeys.OUTDOORS);
        outdoors.ifPresent(this::checkOutdoors);
        Optional<Diary> diary = diary();
        SensorError error = new SensorError(
                entry.get(ReadingKeys.TEMPERATURE_ERROR),
                Units.fractionFromPercent(entry.get(ReadingKeys.HUMIDITY_ERROR)));
        Instant last = Stream.of(
                        loggers.stream().map(logger -> logger.readings().until()),
                        outdoors.stream().map(Readings::until),
                        diary.stream()
                                .flatMap(book -> book.days().stream())
                                .map(day -> day.date()
                                        .plusDays(1)
                                        .atStartOfDay(parts.days().zone())
                                        .toInstant()))
                .flatMap(times -> times)
                .max(Instant::compareTo)
                .orElse(parts.days().from());
        Instant weather = outdoors.map(Readings::until)
                .orElse(
                        parts.weather().isOf(parts.days().from(), last)
                                ? last
                                : parts.days().from());
        return new SiteReadings(
                loggers, outdoors, diary, error, new SiteReadings.Known(weather, last, last), allRemarks());
    }

    private Optional<SiteReadings.Logged> logger(Entry logger) {
        Optional<String> room = logger.given(ReadingKeys.ROOM);
        Optional<String> wall = logger.given(ReadingKeys.WALL);
        room.filter(name -> !parts.rooms().containsKey(name))
                .ifPresent(name -> logger.at(ReadingKeys.ROOM)
                        .problem(
                                "no room \"" + name + "\"",
                                "there are: " + String.join(", ", parts.rooms().keySet())));
        if (room.isEmpty()) {
            logger.place().problem("no room", "must say the room that it was in: room");
        }
        wall.ifPresent(name -> parts.names().check(logger.at(ReadingKeys.WALL), room, name));
        Optional<Readings> readings = readings(logger, ReadingKeys.FILE);
        readings.ifPresent(read -> checkLogger(logger, read));
        String name = logger.given(ReadingKeys.FILE).orElse("");
        return readings.map(read -> new SiteReadings.Logged(
                name,
                read.all().stream().anyMatch(SiteReadings::isOfAir) ? room : Optional.empty(),
                wall.flatMap(listed -> room.map(in -> WallNames.Listed.planName(in, listed))),
                read));
    }

    private void checkLogger(Entry logger, Readings read) {
        boolean face =
                read.all().stream().anyMatch(reading -> reading.surfaceCelsius().isPresent());
        if (logger.isGiven(ReadingKeys.WALL) && !face) {
            logger.at(ReadingKeys.WALL)
                    .problem("the file has no wall surface", "must have such a column, or wall be left out");
        }
        if (!face && read.all().stream().noneMatch(SiteReadings::isOfAir)) {
            logger.at(ReadingKeys.FILE)
                    .problem("nothing of a room in it", "must have temperature, humidity or surface");
        }
        checkDays(logger.at(ReadingKeys.FILE), read);
    }

    private void checkOutdoors(Readings read) {
        Place at = entry.at(ReadingKeys.OUTDOORS);
        boolean both = read.all().stream()
                .anyMatch(reading -> reading.celsius().isPresent()
                        && reading.relativeHumidity().isPresent());
        if (!both) {
            at.problem("not both of temperature and humidity", "must have both at the same times");
        }
        checkDays(at, read);
    }

    private void checkDays(Place at, Readings read) {
        if (read.until().isBefore(parts.days().from())
                || read.from().isAfter(parts.days().until())) {
            at.problem(
                    "readings from " + read.from() + " to " + read.until(),
                    "must be of days of the run, " + parts.days().first() + " to "
                            + parts.days().last());
        }
    }

    private Optional<Readings> readings(Entry owner, Key<String> key) {
        Optional<LoggerFile> file = file(owner, key);
        Optional<Readings> moving = file.flatMap(LoggerFile::believable);
        if (file.isPresent() && moving.isEmpty()) {
            owner.at(key).problem("every figure stands still", "must be of sensors that move (stuck?)");
        }
        return moving;
    }

    private Optional<LoggerFile> file(Entry owner, Key<String> key) {
        Place at = owner.at(key);
        return path(owner, key).filter(path -> isNamedOnce(path, owner, key)).flatMap(path -> {
            try {
                Path plan = PlanFile.beside(path);
                Asked asked = Files.exists(plan) ? PlanFile.read(plan) : Asked.nothing();
                String shown = owner.get(key);
                LoggerFile.Result result =
                        LoggerFile.read(path, shown, asked, parts.days().zone());
                if (result instanceof LoggerFile.Bad bad) {
                    bad.problems().stream()
                            .map(problem ->
                                    PlanHint.on(problem, path, parts.days().zone()))
                            .forEach(at.problems()::add);
                    return Optional.empty();
                }
                LoggerFile file = ((LoggerFile.Good) result).file();
                if (file.isClockTaken()) {
                    clockTaken.add(shown);
                }
                remarkUnused(key, file, path);
                file.doubts().forEach(doubt -> remarks.add(shown + ": " + doubt));
                return Optional.of(file);
            } catch (BadInputException plan) {
                plan.problems().forEach(at.problems()::add);
                return Optional.empty();
            }
        });
    }

    /** One file is one logger: named again, by whatever way to it, its readings would count twice. */
    private boolean isNamedOnce(Path path, Entry owner, Key<String> key) {
        String before = namedAt.putIfAbsent(real(path), owner.at(key).path());
        if (before != null) {
            owner.at(key)
                    .problem("\"" + owner.get(key) + "\", named at " + before + " already", "must be named only once");
        }
        return before == null;
    }

    private static Path real(Path path) {
        try {
            return path.toRealPath();
        } catch (IOException e) {
            // It is not there, which is told when it is read.
            return path.toAbsolutePath().normalize();
        }
    }

    /** Columns that were taken for nothing count where something is missing that they may be. */
    private void remarkUnused(Key<String> key, LoggerFile file, Path path) {
        boolean yard = key.equals(ReadingKeys.OUTDOORS);
        List<LoggedReading> all = file.readings().all();
        if (yard && all.stream().noneMatch(reading -> reading.windMPerS().isPresent())) {
            file.unused().stream()
                    .filter(Unused::looksLikeWind)
                    .forEach(wind -> remarks.add(file.shown() + ": " + wind.words()
                            + " looks like wind and is not used, wind is taken in m/s only: if it is, "
                            + PlanHint.way(PlanKey.WIND, Integer.toString(wind.number()), path)));
        }
        boolean air = all.stream().anyMatch(reading -> reading.celsius().isPresent());
        if (!yard
                && air
                && all.stream().noneMatch(reading -> reading.relativeHumidity().isPresent())) {
            String unused = file.unused().stream().map(Unused::words).collect(Collectors.joining(", "));
            remarks.add(file.shown() + ": no humidity was read, nothing is learnt from it"
                    + (unused.isEmpty()
                            ? ""
                            : "; not used: " + unused + ": if that is humidity, "
                                    + PlanHint.way(PlanKey.HUMIDITY, "COLUMN", path)));
        }
    }

    private List<String> allRemarks() {
        if (!clockTaken.isEmpty()) {
            remarks.add(
                    0,
                    String.join(", ", clockTaken) + ": times as " + parts.days().zone()
                            + ", the clock of the place, for neither the file nor a reading plan says one");
        }
        return remarks;
    }

    private Optional<Diary> diary() {
        return path(entry, ReadingKeys.DIARY).flatMap(path -> {
            String shown = entry.get(ReadingKeys.DIARY);
            DiaryFile file = DiaryFile.read(path, shown, SitePlaces.of(parts));
            List<InputProblem> wrong = new ArrayList<>(file.problems());
            wrong.addAll(DiaryChecks.of(parts, file.diary(), shown));
            wrong.forEach(entry.at(ReadingKeys.DIARY).problems()::add);
            return wrong.isEmpty() ? Optional.of(file.diary()) : Optional.empty();
        });
    }

    private Optional<Path> path(Entry owner, Key<String> key) {
        return owner.given(key).flatMap(name -> NamedFile.in(folder, name, owner.at(key)));
    }
}
