package org.limedry.cli.site;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.limedry.cli.problem.InputProblem;
import org.limedry.cli.readings.diary.Amount;
import org.limedry.cli.readings.diary.Column;
import org.limedry.cli.readings.diary.Diary;
import org.limedry.cli.readings.diary.DiaryDay;
import org.limedry.cli.site.schema.Entry;
import org.limedry.cli.site.schema.Problems;

/** Whether what a diary says can be on its site. */
final class DiaryChecks {
    private final SiteParts parts;
    private final Diary diary;
    private final Problems problems;

    private DiaryChecks(SiteParts parts, Diary diary, Problems problems) {
        this.parts = parts;
        this.diary = diary;
        this.problems = problems;
    }

    /**
     * Returns everything that cannot.
     *
     * @param shown the file of the diary as the user named it
     */
    static List<InputProblem> of(SiteParts parts, Diary diary, String shown) {
        Problems problems = new Problems(shown);
        new DiaryChecks(parts, diary, problems).run();
        return problems.sorted();
    }

    private void run() {
        HandTestChecks.of(parts.entry(), parts.names(), Optional.of(parts.days()))
                .diary(diary, problems);
        machine(Column.HEATER, "heater", PlantKeys::isHeater, day -> day.plant().heaterHours());
        machine(
                Column.DEHUMIDIFIER,
                "dehumidifier",
                PlantKeys.DEHUMIDIFIER::equals,
                day -> day.plant().dehumidifierHours());
    }

    /** Reports hours of a machine that the site file does not have, once for each room: nothing could run for them. */
    private void machine(
            Column column, String machine, Predicate<String> kind, Function<DiaryDay, List<Amount>> hours) {
        Stream.concat(Stream.of(""), parts.rooms().keySet().stream())
                .filter(room -> parts.rooms().entrySet().stream()
                        .filter(there -> room.isEmpty() || there.getKey().equals(room))
                        .noneMatch(there -> has(there.getValue(), kind)))
                .forEach(room -> {
                    List<DiaryDay> ran = diary.days().stream()
                            .filter(day -> ran(hours.apply(day), room))
                            .toList();
                    ran.stream().findFirst().ifPresent(first -> missing(column, machine, room, ran));
                });
    }

    private void missing(Column column, String machine, String room, List<DiaryDay> ran) {
        String more = ran.size() > 1 ? String.format(Locale.ROOT, ", and on %d more days", ran.size() - 1) : "";
        String where = room.isEmpty() ? "" : " in " + room;
        problems.root()
                .key(column.heading(), ran.get(0).line())
                .problem(
                        "a " + machine + " ran" + where + more,
                        "there is none in the site file: write it under plant of its room, on: never if only the diary says when");
    }

    private static boolean has(Entry room, Predicate<String> kind) {
        return room.get(RoomKeys.PLANT).stream().anyMatch(plant -> kind.test(plant.word()));
    }

    private static boolean ran(List<Amount> hours, String room) {
        return hours.stream().anyMatch(amount -> amount.of().equals(room) && amount.value() > 0.0);
    }
}
