package org.limedry.cli.site;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.limedry.cli.readings.diary.DiaryDay;
import org.limedry.cli.site.schema.Entry;
import org.limedry.climate.WeatherRecord;
import org.limedry.study.Draw;
import org.limedry.study.delay.MonthOfWeather;

/** A job of which the file says both what had been agreed and what happened, and every mixture of the two. */
public final class PlannedJob {
    /** In what a job went another way than agreed. */
    public enum Cause {
        /** Rooms were handed over on another day. */
        ROOM,
        /** Doors and windows stood open at other hours. */
        DOORS,
        /** Other heaters, dehumidifiers and fans, or at other times. */
        PLANT,
        /** Other weather than the plan was made on. */
        WEATHER,
        /** Walls wetter or drier, coats thicker or thinner than stated. */
        WALL
    }

    /**
     * The day on which a room was to be handed over and the day on which it was.
     *
     * @param room the room
     * @param planned as agreed
     * @param actual as it happened
     */
    public record Released(String room, LocalDate planned, LocalDate actual) {}

    /**
     * Something done to lose less time.
     *
     * @param date the day
     * @param words what, in the words of the file
     */
    public record Step(LocalDate date, String words) {}

    private final SiteParts parts;
    private final Materials materials;
    private final Entry planned;
    private final SiteWeather plannedWeather;
    private final PlannedRooms rooms;

    PlannedJob(SiteParts parts, Materials materials, SiteWeather plannedWeather) {
        this.parts = parts;
        this.materials = materials;
        this.planned = parts.entry().get(SiteKeys.PLANNED);
        this.plannedWeather = plannedWeather;
        this.rooms = new PlannedRooms(parts, planned);
    }

    /** Returns in what the two sides differ. */
    public List<Cause> causes() {
        return Arrays.stream(Cause.values()).filter(this::differs).toList();
    }

    private boolean differs(Cause cause) {
        EnumSet<Cause> butOne = EnumSet.complementOf(EnumSet.of(cause));
        return switch (cause) {
            case ROOM -> released().stream().anyMatch(room -> !room.planned().equals(room.actual()));
            case DOORS -> rooms.doorsDiffer();
            case PLANT ->
                !site(butOne)
                        .scenario(Draw.likely())
                        .rooms()
                        .equals(site(EnumSet.allOf(Cause.class))
                                .scenario(Draw.likely())
                                .rooms());
            case WEATHER -> !plannedWeather.name().equals(parts.weather().name());
            case WALL -> rooms.wetnessDiffers() || thicknessDiffers();
        };
    }

    private boolean thicknessDiffers() {
        return planned.get(PlannedKeys.COATS).stream().anyMatch(agreed -> {
            Entry coat = PlannedCoats.coatOf(parts, agreed);
            double laidMm = coat.get(CoatKeys.THICKNESS_MM) + coat.get(CoatKeys.DUBBING_MM);
            return laidMm != agreed.get(PlannedKeys.THICKNESS_MM);
        });
    }

    /**
     * Returns the job in which some things went as they did and all others as agreed. In every mixture a coat on top of
     * another goes on when that is ready, and no hand test counts: these belong to one course of the job only. Weather
     * and plant stay on their dates, door hours and people go with the job.
     *
     * @param happened what went as it did
     */
    public Site site(Set<Cause> happened) {
        boolean late = happened.contains(Cause.ROOM);
        Entry entry = parts.entry()
                .with(
                        SiteKeys.COATS,
                        new PlannedCoats(parts, planned, rooms).coats(late, happened.contains(Cause.WALL)))
                .with(SiteKeys.ROOMS, rooms.rooms(happened))
                .with(SiteKeys.HAND_TESTS, List.of());
        SiteWeather weather = happened.contains(Cause.WEATHER) ? parts.weather() : plannedWeather;
        return new Site(parts.with(entry, days(late), weather), materials);
    }

    /** Each run begins as long before its first coat as the file's. */
    private RunDays days(boolean late) {
        LocalDate first = parts.days().first();
        return new RunDays(
                parts.days().zone(),
                late ? first : first.minusDays(daysEarlier()),
                parts.days().last());
    }

    private long daysEarlier() {
        PlannedCoats coats = new PlannedCoats(parts, planned, rooms);
        return ChronoUnit.DAYS.between(coats.firstLaid(false), coats.firstLaid(true));
    }

    /** Reports mixtures that cannot be run: too long, or without weather. */
    void check() {
        RunDays early = days(false);
        if (early.last().isBefore(early.first())
                || ChronoUnit.DAYS.between(early.first(), early.last()) > RunDays.MOST_DAYS) {
            planned.place()
                    .problem(
                            early.first() + " to " + early.last(),
                            "the planned run must be 1 to " + RunDays.MOST_DAYS + " days");
            return;
        }
        Entry place = parts.entry().get(SiteKeys.PLACE);
        parts.weather().checkReach(place, early);
        for (boolean late : List.of(true, false)) {
            if (plannedWeather.over(place, days(late), 0) instanceof WeatherRecord.Uncovered uncovered) {
                uncovered
                        .problems()
                        .forEach(hole -> planned.at(PlannedKeys.WEATHER).problem(plannedWeather.name(), hole));
            }
        }
    }

    /** Tells whether dates of later coats or hand tests of the record may overrule what a run finds. */
    public boolean recordOverrules() {
        return !parts.entry().get(SiteKeys.HAND_TESTS).isEmpty()
                || new PlannedCoats(parts, planned, rooms).datedLater();
    }

    /** Returns the rooms of which both days are known. */
    public List<Released> released() {
        List<Released> all = new ArrayList<>();
        planned.get(PlannedKeys.ROOMS)
                .forEach((room, agreed) -> agreed.given(PlannedKeys.RELEASED)
                        .ifPresent(day -> all.add(new Released(room, day, rooms.actuallyReleased(room)))));
        return all;
    }

    /** Returns the room of a wall. */
    public String roomOf(String wall) {
        return parts.faces().named(wall).room();
    }

    /** Returns the walls that have coats, by their names in a scenario. */
    public List<String> plasteredWalls() {
        return parts.coats().stream()
                .map(coat -> parts.wallOf(coat).planName())
                .distinct()
                .toList();
    }

    /** Returns the days on which the gang works. */
    public Set<DayOfWeek> workingDays() {
        return parts.entry().get(SiteKeys.WORKING_DAYS);
    }

    /** Returns what was done to lose less time, in the order of the days. */
    public List<Step> steps() {
        return parts.entry().get(SiteKeys.STEPS).stream()
                .map(step -> new Step(step.get(DelayKeys.DATE), step.get(DelayKeys.WORDS)))
                .sorted(Comparator.comparing(Step::date))
                .toList();
    }

    /**
     * Returns the last day of which the file says what happened: a room handed over, a coat laid, a hand test, a step taken, a
     * line of the diary. From then on dates are forecast.
     */
    public LocalDate lastRecord() {
        Stream<LocalDate> laid = parts.coats().stream().flatMap(coat -> coat.get(CoatKeys.LAID).stream());
        Stream<LocalDate> tests =
                parts.entry().get(SiteKeys.HAND_TESTS).stream().map(test -> test.get(CoatKeys.DATE));
        Stream<LocalDate> diary = parts.readings().flatMap(SiteReadings::diary).stream()
                .flatMap(book -> book.days().stream())
                .map(DiaryDay::date);
        return Stream.of(
                        laid,
                        tests,
                        diary,
                        steps().stream().map(Step::date),
                        released().stream().map(Released::actual))
                .flatMap(dates -> dates)
                .max(LocalDate::compareTo)
                .orElseThrow();
    }

    /** Tells of each coat of a wall, the first one first, whether the file says on which day it was laid. */
    public List<Boolean> laidOnRecord(String wall) {
        return parts.coats().stream()
                .filter(coat -> parts.wallOf(coat).planName().equals(wall))
                .map(coat -> coat.get(CoatKeys.LAID).isPresent())
                .toList();
    }

    /** Returns the records that the file names. */
    public List<String> records() {
        return parts.entry().get(SiteKeys.RECORDS);
    }

    /** Returns the normals that the user supplied. */
    public Optional<Normals> normals() {
        return parts.entry().given(SiteKeys.NORMALS).map(Normals::of);
    }

    /** Returns a whole month of the weather that happened, if the file has it. */
    public Optional<MonthOfWeather> weatherOf(YearMonth month) {
        RunDays days = new RunDays(parts.days().zone(), month.atDay(1), month.atEndOfMonth());
        WeatherRecord.Cover cover = parts.weather().over(parts.entry().get(SiteKeys.PLACE), days, 0);
        return cover instanceof WeatherRecord.Covered covered
                ? Optional.of(MonthOfWeather.of(covered.outdoors(), month, days.zone()))
                : Optional.empty();
    }
}
