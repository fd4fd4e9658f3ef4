package org.limedry.cli.site;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.limedry.cli.readings.diary.Column;
import org.limedry.cli.readings.diary.Diary;
import org.limedry.cli.readings.diary.DiaryDay;
import org.limedry.cli.readings.diary.HandMark;
import org.limedry.cli.site.schema.Entry;
import org.limedry.cli.site.schema.Key;
import org.limedry.cli.site.schema.Place;
import org.limedry.cli.site.schema.Problems;
import org.limedry.lime.HandTest;

/**
 * Whether hand tests can be: their coat is there and laid, their day is in the run, and no two contradict. Those of the site
 * file and those of a diary obey the same rules, and each other.
 */
final class HandTestChecks {
    private final Entry site;
    private final WallNames walls;
    private final Optional<RunDays> days;
    private final Map<String, List<Optional<LocalDate>>> coats;

    private HandTestChecks(
            Entry site, WallNames walls, Optional<RunDays> days, Map<String, List<Optional<LocalDate>>> coats) {
        this.site = site;
        this.walls = walls;
        this.days = days;
        this.coats = coats;
    }

    static HandTestChecks of(Entry site, WallNames walls, Optional<RunDays> days) {
        return new HandTestChecks(site, walls, days, coats(site, walls));
    }

    /** Returns the first day on which each coat of a wall can be there, by the wall; nothing where it is not known. */
    private static Map<String, List<Optional<LocalDate>>> coats(Entry site, WallNames walls) {
        Map<String, List<Optional<LocalDate>>> coats = new HashMap<>();
        for (Entry coat : site.given(SiteKeys.COATS).orElse(List.of())) {
            walls.find(coat).ifPresent(wall -> {
                List<Optional<LocalDate>> on = coats.computeIfAbsent(wall.planName(), name -> new ArrayList<>());
                Optional<LocalDate> under = on.isEmpty() ? Optional.empty() : on.get(on.size() - 1);
                Optional<LocalDate> laid = coat.given(CoatKeys.LAID).flatMap(day -> day);
                on.add(laid.or(() -> under.map(day -> day.plusDays(1))));
            });
        }
        return coats;
    }

    /** Reports what is wrong with the hand tests of the site file. */
    void file() {
        site.given(SiteKeys.HAND_TESTS).orElse(List.of()).forEach(walls::check);
        List<Tried> all = inFile();
        all.forEach(this::check);
        agree(all, List.of());
    }

    /** Reports what is wrong with the hand tests of a diary, where those of the site file are good. */
    void diary(Diary diary, Problems problems) {
        List<Tried> all = new ArrayList<>();
        for (DiaryDay day : diary.days()) {
            for (HandMark mark : day.care().handTests()) {
                all.add(Tried.of(day, mark, problems));
            }
        }
        all.forEach(this::check);
        agree(all, inFile());
    }

    private List<Tried> inFile() {
        return site.given(SiteKeys.HAND_TESTS).orElse(List.of()).stream()
                .map(test -> Tried.of(test, walls))
                .toList();
    }

    /**
     * A hand test as it is written; what cannot be read of it has been told.
     *
     * @param who wall and coat where its place does not say them; else empty
     * @param at where its parts stand
     */
    private record Tried(
            Optional<String> wall,
            Optional<Integer> coat,
            Optional<LocalDate> day,
            Optional<HandTest.Result> result,
            String who,
            Function<Key<?>, Place> at) {
        static Tried of(Entry test, WallNames walls) {
            return new Tried(
                    walls.find(test).map(WallNames.Listed::planName),
                    test.given(CoatKeys.COAT),
                    test.given(CoatKeys.DATE),
                    test.given(CoatKeys.RESULT),
                    "",
                    test::at);
        }

        static Tried of(DiaryDay day, HandMark mark, Problems problems) {
            Place place = problems.root().key(Column.HAND_TESTS.heading(), day.line());
            return new Tried(
                    Optional.of(mark.wall()),
                    Optional.of(mark.coat()),
                    Optional.of(day.date()),
                    Optional.of(mark.result()),
                    mark.wall() + ", coat " + mark.coat(),
                    key -> place);
        }

        /** Returns the test if all of it can be read. */
        Optional<HandTest> test(ZoneId zone) {
            return wall.flatMap(on -> coat.flatMap(number -> day.flatMap(date -> result.map(found -> new HandTest(
                    on, number, date.atTime(RunDays.START_OF_WORK).atZone(zone).toInstant(), found)))));
        }

        void problem(Key<?> key, String found, String rule) {
            at.apply(key).problem(who.isEmpty() || found.isEmpty() ? who + found : who + ": " + found, rule);
        }

        String found() {
            return result.map(Words::ofConstant).orElse("") + " on "
                    + day.map(LocalDate::toString).orElse("");
        }
    }

    private void check(Tried tried) {
        tried.wall().ifPresent(wall -> tried.coat().ifPresent(number -> checkCoat(tried, wall, number)));
        Optional<LocalDate> outside =
                tried.day().filter(day -> days.filter(run -> !run.contains(day)).isPresent());
        if (outside.isPresent()) {
            RunDays run = days.orElseThrow();
            tried.problem(
                    CoatKeys.DATE,
                    outside.get().toString(),
                    "must be in the run, " + run.first() + " to " + run.last());
        } else {
            laid(tried)
                    .ifPresent(laid -> tried.day()
                            .filter(day -> day.isBefore(laid))
                            .ifPresent(day -> tried.problem(
                                    CoatKeys.DATE, day.toString(), "that coat is not laid before " + laid)));
        }
    }

    private void checkCoat(Tried tried, String wall, int number) {
        int there = coats.getOrDefault(wall, List.of()).size();
        if (number > there) {
            String rule = there == 1 ? "there is 1 coat on that wall" : "there are " + there + " coats on that wall";
            tried.problem(CoatKeys.COAT, tried.who().isEmpty() ? Integer.toString(number) : "", rule);
        }
    }

    private Optional<LocalDate> laid(Tried tried) {
        List<Optional<LocalDate>> on = tried.wall().map(coats::get).orElse(List.of());
        return tried.coat().filter(number -> number <= on.size()).flatMap(number -> on.get(number - 1));
    }

    /** Reports each dent in a coat that was ready, and each test that says so of one that dents in the tests heard before. */
    private void agree(List<Tried> tests, List<Tried> before) {
        for (Tried tried : tests) {
            Optional<HandTest> test = tried.test(zone());
            List<Tried> against =
                    new ArrayList<>(test.map(one -> contrary(one, before)).orElse(List.of()));
            test.filter(one -> !one.result().passes()).ifPresent(one -> against.addAll(contrary(one, tests)));
            if (!against.isEmpty()) {
                String others = against.stream()
                        .map(other -> other.found() + " ("
                                + other.at().apply(CoatKeys.RESULT).words() + ")")
                        .collect(Collectors.joining(", "));
                tried.problem(
                        CoatKeys.RESULT, tried.found(), "must agree with " + others + ": strike out the wrong one");
            }
        }
    }

    private List<Tried> contrary(HandTest test, List<Tried> others) {
        Predicate<Tried> contrary =
                other -> other.test(zone()).filter(test::contradicts).isPresent();
        return others.stream().filter(contrary).toList();
    }

    private ZoneId zone() {
        return days.map(RunDays::zone).orElse(ZoneOffset.UTC);
    }
}
