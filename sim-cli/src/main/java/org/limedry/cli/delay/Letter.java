package org.limedry.cli.delay;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.limedry.cli.chart.Charts;
import org.limedry.cli.chart.Size;
import org.limedry.cli.delay.LetterRow.Kind;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Names;
import org.limedry.cli.page.Templates;
import org.limedry.cli.site.Normals;
import org.limedry.cli.site.PlannedJob;

/**
 * The letter to the client: facts in the past tense, names and clause left blank.
 *
 * @param story what there is to tell
 * @param room how much of it goes on the page
 */
record Letter(DelayStory story, Room room) {
    /** How much goes on the page; each leaves out what the one before does, and more. */
    enum Room {
        /** Everything. */
        ALL,
        /** Without the months against normals. */
        NO_MONTHS,
        /** Also without steps after the third. */
        THREE_STEPS,
        /** Also without coats between the first and the last date. */
        ENDS_ONLY;

        boolean atMost(Room other) {
            return compareTo(other) >= 0;
        }
    }

    private static final int SOME_STEPS = 3;

    /** What the template sees. */
    private record View(
            boolean pdf,
            String headline,
            String place,
            boolean invented,
            String caption,
            String chart,
            String story,
            List<LetterRow> rows,
            boolean hasMonths,
            List<MonthRow> months,
            String normals,
            String steps,
            String records,
            String shared,
            Optional<String> leftOut,
            String limits,
            String owed) {}

    /** Returns the page for screens, charts in both sizes. */
    String html() {
        var chart = DelayCharts.of(story);
        return filled(false, Charts.svg(chart, Size.WIDE) + Charts.svg(chart, Size.NARROW));
    }

    /** Returns the page for print, with the given element in the place of its chart. */
    String forPrint(String chartElement) {
        return filled(true, chartElement);
    }

    private String filled(boolean pdf, String chart) {
        List<MonthRow> months = room == Room.ALL ? MonthRow.of(story) : List.of();
        return Templates.fill(
                "delay/letter.mustache",
                new View(
                        pdf,
                        headline(),
                        story.runs().site().name() + ": " + story.wallWords(),
                        story.runs().site().isInvented(),
                        DelayCharts.title(story),
                        chart,
                        LetterStory.of(story),
                        rows(),
                        !months.isEmpty(),
                        months,
                        normals(),
                        steps(),
                        records(),
                        DelayAnswer.shared(story),
                        leftOut(),
                        limits(),
                        owed()));
    }

    private String headline() {
        String what = "The plaster of the " + story.wallWords() + " was ";
        String late = story.days() == 0
                ? "on the day planned"
                : story.atLeast()
                        + DelayWords.days(Math.abs(story.days()))
                        + (story.days() > 0 ? " later than planned" : " earlier than planned");
        return story.actual().ready().isPresent()
                ? what + "ready on " + Days.full(story.actualReady()) + ", " + late
                : what + "not yet ready on " + Days.full(story.actualReady()) + ", " + late;
    }

    private List<LetterRow> rows() {
        return LetterRows.of(story).stream()
                .filter(row -> room != Room.ENDS_ONLY || row.kind() != Kind.BETWEEN)
                .toList();
    }

    private String normals() {
        return story.runs()
                .job()
                .normals()
                .map(Normals::source)
                .map(source ->
                        "Room in air: litres that 1,000 m\u00b3 could still take up at the month's means. Normals: "
                                + source + ". Record: " + story.actual().site().weatherName() + ".")
                .orElse("");
    }

    private String steps() {
        List<PlannedJob.Step> all = story.runs().job().steps();
        boolean cut = room.atMost(Room.THREE_STEPS) && all.size() > SOME_STEPS;
        List<String> told = all.stream()
                .limit(cut ? SOME_STEPS : all.size())
                .map(step -> story.dates().brief(step.date()) + ", " + step.words())
                .toList();
        String machines = "On site until ready: " + story.facts().actualMachines() + ".";
        return (told.isEmpty() ? "nothing is on record. " : String.join("; ", told) + ". ") + machines;
    }

    private String records() {
        List<String> records = new ArrayList<>(story.runs().job().records());
        sites().map(site -> "weather " + site).distinct().forEach(records::add);
        return String.join("; ", records) + ".";
    }

    private Stream<String> sites() {
        return Stream.of(story.actual(), story.planned())
                .map(side -> side.site().weatherName());
    }

    private Optional<String> leftOut() {
        List<String> parts = new ArrayList<>();
        if (room != Room.ALL && !MonthRow.of(story).isEmpty()) {
            parts.add("months against normals");
        }
        if (room.atMost(Room.THREE_STEPS) && story.runs().job().steps().size() > SOME_STEPS) {
            parts.add("steps after the third");
        }
        if (room == Room.ENDS_ONLY) {
            parts.add("dates of the coats between");
        }
        return parts.isEmpty()
                ? Optional.empty()
                : Optional.of("Left out for room: " + String.join(", ", parts) + "; see delay.csv and the site file.");
    }

    private String limits() {
        String basis = story.runs().job().recordOverrules()
                ? "planned side by a model; actual dates by the record, else by the model"
                : "both sides by the same model";
        boolean two = sites().distinct().count() > 1;
        return "Limits: " + basis + (two ? "" : " on one weather year") + ", good to about 30 % a cause; rain on the"
                + " walls, sun and salts are left out. Facts only: no claim is made.";
    }

    private String owed() {
        Set<String> owed = new LinkedHashSet<>();
        owed.addAll(story.actual().site().attribution());
        owed.addAll(story.planned().site().attribution());
        String version =
                story.runs().site().isInvented() ? "Site, people and dates are invented; the weather is real. " : "";
        return version + owed.stream().map(Names::capital).collect(Collectors.joining(" "));
    }
}
