package org.limedry.cli.delay;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.limedry.cli.delay.LetterRow.Kind;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Figures;
import org.limedry.cli.page.Names;
import org.limedry.cli.site.PlannedJob;
import org.limedry.simulation.Outcome.CoatResult;

/** Dates and conditions of both sides, row by row. */
final class LetterRows {
    private final DelayStory story;
    private final List<LetterRow> rows = new ArrayList<>();

    private LetterRows(DelayStory story) {
        this.story = story;
    }

    static List<LetterRow> of(DelayStory story) {
        LetterRows rows = new LetterRows(story);
        rows.released();
        rows.coats();
        rows.conditions();
        rows.drying();
        return List.copyOf(rows.rows);
    }

    private void released() {
        story.facts()
                .ownRelease()
                .ifPresent(released -> rows.add(new LetterRow(
                        "Room released",
                        story.dates().brief(released.planned()) + ", agreed",
                        Days.full(released.actual()),
                        DelayWords.later(released.planned(), released.actual()),
                        Kind.NEEDED)));
    }

    private void coats() {
        List<CoatResult> planned = story.planned().coats();
        List<CoatResult> actual = story.actual().coats();
        List<Boolean> onRecord = story.runs().job().laidOnRecord(story.actual().wall());
        int last = planned.size() - 1;
        for (int i = 0; i <= last; i++) {
            String name = Names.capital(Names.ordinal(i + 1)) + " coat ";
            CoatResult is = actual.get(i);
            Kind laid = i == 0 ? Kind.NEEDED : Kind.BETWEEN;
            dates(name + "laid", planned.get(i).laid(), is.laid(), onRecord.get(i), laid);
            String byHand = is.byHand() ? " (hand test)" : "";
            Kind ready = i == last ? Kind.ANSWER : Kind.BETWEEN;
            dates(name + "ready" + byHand, planned.get(i).ready(), is.ready(), is.byHand(), ready);
        }
    }

    private void dates(String item, Optional<Instant> plan, Optional<Instant> went, boolean onRecord, Kind kind) {
        Optional<LocalDate> planned = plan.map(story.planned()::day);
        Optional<LocalDate> actual = went.map(story.actual()::day);
        String difference = planned.isPresent() && actual.isPresent()
                ? DelayWords.later(planned.get(), actual.get())
                : "not yet by the end of the run";
        String missing = "not by " + Days.full(story.actualReady());
        rows.add(new LetterRow(
                item,
                planned.map(Days::full).orElse(missing),
                actual.map(day -> story.basis(onRecord, day).full(day)).orElse(missing),
                difference,
                kind));
    }

    private void conditions() {
        DelayFacts facts = story.facts();
        rows.add(new LetterRow(
                "Doors open, working days",
                DelayWords.hours(facts.plannedDoorHours()),
                DelayWords.hours(facts.actualDoorHours()),
                difference(facts.plannedDoorHours(), facts.actualDoorHours()),
                Kind.NEEDED));
        if (story.runs().causes().contains(PlannedJob.Cause.PLANT)) {
            words("Heat and machines", facts.plannedMachines(), facts.actualMachines());
        }
        if (story.runs().causes().contains(PlannedJob.Cause.WALL)) {
            words(
                    "Wall before plastering",
                    "stated " + DelayFacts.wetness(story.planned()),
                    "found " + DelayFacts.wetness(story.actual()));
            words("Coats, mm", DelayFacts.thickness(story.planned()), DelayFacts.thickness(story.actual()));
        }
        if (story.runs().causes().contains(PlannedJob.Cause.WEATHER)) {
            words(
                    "Weather",
                    story.planned().site().weatherName(),
                    story.actual().site().weatherName());
        }
    }

    private static String difference(double planned, double actual) {
        double less = planned - actual;
        if (Math.abs(less) < 0.05) {
            return "none";
        }
        return DelayWords.hours(Math.abs(less)) + (less > 0 ? " less" : " more");
    }

    private void words(String item, String planned, String actual) {
        if (!planned.replace("stated ", "").equals(actual.replace("found ", ""))) {
            rows.add(new LetterRow(item, planned, actual, "", Kind.NEEDED));
        }
    }

    private void drying() {
        int planned = story.planned().roomDays().drying(story.targetLitres());
        int actual = story.actual().roomDays().drying(story.targetLitres());
        rows.add(new LetterRow(
                "Drying days (" + Figures.litres(story.targetLitres()) + " l or more)",
                planned + " of " + story.planned().roomDays().count(),
                actual + " of " + story.actual().roomDays().count(),
                "",
                Kind.NEEDED));
    }
}
