package org.limedry.cli.delay;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.limedry.cli.chart.Chart;
import org.limedry.cli.chart.Charts;
import org.limedry.cli.chart.DateWords;
import org.limedry.cli.chart.Size;
import org.limedry.cli.delay.LetterRow.Kind;
import org.limedry.cli.page.Names;
import org.limedry.cli.page.Templates;
import org.limedry.cli.site.Normals;
import org.limedry.cli.site.PlannedJob;

/**
 * The letter to the client: what happened in the past tense, what is forecast as forecast, names and clause left blank.
 *
 * @param story what there is to tell
 * @param room how much of it goes on the page
 */
record Letter(DelayStory story, Room room) {
    /** How much goes on the page; each leaves out what the one before does, and more. */
    enum Room {
        /** Everything. */
        ALL,
        /** Without coats between the first and the last date. */
        ENDS_ONLY,
        /** Also without steps after the third. */
        THREE_STEPS,
        /** Also without the months against normals. */
        NO_MONTHS,
        /** Also in smaller type. */
        SMALL_TYPE;

        boolean atMost(Room other) {
            return compareTo(other) >= 0;
        }
    }

    private static final int SOME_STEPS = 3;

    /** What the template sees. */
    private record View(
            boolean pdf,
            boolean small,
            String headline,
            List<String> dangers,
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
            Optional<String> maybeNothing,
            Optional<String> cutOff,
            Optional<String> leftOut,
            String limits,
            String owed) {}

    /** Returns the page for screens, charts in both sizes. */
    String html() {
        Chart chart = DelayCharts.of(story);
        return filled(false, Charts.svg(chart, Size.WIDE) + Charts.svg(chart, Size.NARROW));
    }

    /** Returns the page for print, with the given element in the place of its chart. */
    String forPrint(String chartElement) {
        return filled(true, chartElement);
    }

    private String filled(boolean pdf, String chart) {
        List<MonthRow> months = room.atMost(Room.NO_MONTHS) ? List.of() : MonthRow.of(story);
        return Templates.fill(
                "delay/letter.mustache",
                new View(
                        pdf,
                        room == Room.SMALL_TYPE,
                        headline(),
                        DelayAnswer.situation(story).dangers(),
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
                        RangeWords.sentence(story),
                        RangeWords.maybeNothing(story),
                        RangeWords.cutOff(story),
                        leftOut(),
                        limits(),
                        owed()));
    }

    private String headline() {
        String what = "The plaster of the " + story.wallWords() + " ";
        String range = RangeWords.afterTotal(story);
        String late = story.days() == 0
                ? "on the day of the modelled plan"
                : story.atLeast()
                        + DelayWords.days(Math.abs(story.days()))
                        + (story.days() > 0 ? " later" : " earlier")
                        + " than the modelled plan";
        return what + ready() + " " + DateWords.longDayWithYear(story.actualReady()) + ", " + late + range;
    }

    private String ready() {
        if (story.actual().ready().isEmpty()) {
            return "was not yet ready on";
        }
        return switch (story.readyBasis()) {
            case RECORD -> "was ready on";
            case MODEL -> "was ready about";
            case FORECAST -> "is forecast to be ready about";
        };
    }

    private List<LetterRow> rows() {
        return LetterRows.of(story).stream()
                .filter(row -> !room.atMost(Room.ENDS_ONLY) || row.kind() != Kind.BETWEEN)
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
        return told.isEmpty() ? "nothing is on record." : String.join("; ", told) + ".";
    }

    private String records() {
        List<String> records = story.runs().job().records();
        return records.isEmpty() ? "none are named." : String.join("; ", records) + ".";
    }

    private Stream<String> sites() {
        return Stream.of(story.actual(), story.planned())
                .map(side -> side.site().weatherName());
    }

    private Optional<String> leftOut() {
        List<String> parts = new ArrayList<>();
        if (room.atMost(Room.ENDS_ONLY)) {
            parts.add("dates of the coats between");
        }
        if (room.atMost(Room.THREE_STEPS) && story.runs().job().steps().size() > SOME_STEPS) {
            parts.add("steps after the third");
        }
        if (room.atMost(Room.NO_MONTHS) && !MonthRow.of(story).isEmpty()) {
            parts.add("months against normals");
        }
        return parts.isEmpty()
                ? Optional.empty()
                : Optional.of("Left out for room: " + String.join(", ", parts) + " (see delay.csv).");
    }

    private String limits() {
        String basis = story.runs().job().recordOverrules()
                ? "plan by a model; actual dates by the record, else by the model"
                : "both sides by one model";
        return "Limits: " + basis + ", weather " + sites().distinct().collect(Collectors.joining(" against "))
                + "; no rain, sun or salts. No claim is made. Local codes and competent persons first.";
    }

    private String owed() {
        Set<String> owed = new LinkedHashSet<>();
        owed.addAll(story.actual().site().attribution());
        owed.addAll(story.planned().site().attribution());
        String invented =
                story.runs().site().isInvented() ? "Site, people and dates are invented; the weather is real. " : "";
        return invented + owed.stream().map(Names::capital).collect(Collectors.joining(" "));
    }
}
