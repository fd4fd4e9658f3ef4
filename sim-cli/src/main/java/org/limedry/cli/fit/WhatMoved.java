package org.limedry.cli.fit;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.limedry.cli.page.Days;
import org.limedry.cli.site.FittedFile;
import org.limedry.cli.site.Site;
import org.limedry.cli.site.SiteReadings.Known;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Outcome.CoatResult;
import org.limedry.study.fit.FitResult;
import org.limedry.study.fit.Fitted;
import org.limedry.study.fit.Reading;
import org.limedry.units.Units;

/**
 * What moved the dates since the issue before: the job is run again and again, each time with one thing more known, and at
 * last without one group of readings after the other.
 *
 * <p>The steps add up to the whole move. What a group of readings does is told by leaving it out; groups that say the same
 * do not add up.
 */
final class WhatMoved {
    private static final String OUTDOORS = "the outdoor air as it was read";
    private static final String DIARY = "doors, plant and mist as the diary has them";
    private static final String HAND = "hand tests in the diary";
    private static final String LEARNT = "what the readings say of building and plant";

    private final List<Step> steps = new ArrayList<>();
    private final List<Step> leftOut = new ArrayList<>();

    /**
     * The job with one thing more known, or with one group of readings left out.
     *
     * @param cause what it is
     * @param site the job
     */
    private record Step(String cause, Site site) {}

    private WhatMoved() {}

    /**
     * Says what to run.
     *
     * @param site the job with its readings, as the file has it
     * @param fit what the readings say
     * @param days words for dates
     */
    static WhatMoved of(Site site, FitResult fit, Days days) {
        WhatMoved moved = new WhatMoved();
        Optional<FittedFile> last = site.fitted();
        Instant before = last.map(file -> file.issue().readingsUntil()).orElse(site.from());
        Known now = site.readings().orElseThrow().known();
        moved.step("as before", site, Known.upTo(before), last);
        moved.step(OUTDOORS, site, new Known(now.weather(), before, before), last);
        moved.step(DIARY, site, new Known(now.weather(), now.diary(), before), last);
        moved.step(HAND, site, now, last);
        moved.step(LEARNT, site, now, Optional.of(learnt(site, fit, fit.fitted())));
        fit.withoutEach(reading -> group(reading, last, before, days)).forEach((group, without) -> {
            if (!group.isEmpty()) {
                moved.leftOut.add(
                        new Step(group, site.knowing(Optional.of(now), Optional.of(learnt(site, fit, without)))));
            }
        });
        return moved;
    }

    /** Returns the group of a reading; empty for those that the issue before knew. */
    private static String group(Reading reading, Optional<FittedFile> last, Instant before, Days days) {
        if (last.isEmpty()) {
            return reading.channel();
        }
        return reading.at().isAfter(before) ? reading.channel() + ", since " + days.brief(days.date(before)) : "";
    }

    private static FittedFile learnt(Site site, FitResult fit, Fitted fitted) {
        return FittedFile.undated(site.name(), fit.unknowns(), fitted, site.from());
    }

    private void step(String cause, Site site, Known known, Optional<FittedFile> learnt) {
        steps.add(new Step(cause, site.knowing(Optional.of(known), learnt)));
    }

    /** Returns the jobs to run, each with everything at its likely value. */
    List<Site> sites() {
        List<Site> sites = new ArrayList<>();
        steps.forEach(step -> sites.add(step.site()));
        leftOut.forEach(step -> sites.add(step.site()));
        return sites;
    }

    /**
     * What moved the dates.
     *
     * @param steps one thing after the other; they add up
     * @param leftOut what each group of readings does by itself: the date with it less the date without it
     */
    record Changes(List<FittedFile.Change> steps, List<FittedFile.Change> leftOut) {
        Changes {
            steps = List.copyOf(steps);
            leftOut = List.copyOf(leftOut);
        }
    }

    /**
     * Returns the changes.
     *
     * @param outcomes what came of each of the {@link #sites}
     * @param end end of the run, which stands for a date that does not come
     */
    Changes changes(List<Outcome> outcomes, Instant end) {
        List<FittedFile.Change> moves = new ArrayList<>();
        for (int i = 1; i < steps.size(); i++) {
            add(moves, steps.get(i).cause(), outcomes.get(i - 1), outcomes.get(i), end);
        }
        Outcome all = outcomes.get(steps.size() - 1);
        List<FittedFile.Change> without = new ArrayList<>();
        for (int i = 0; i < leftOut.size(); i++) {
            add(without, leftOut.get(i).cause(), outcomes.get(steps.size() + i), all, end);
        }
        return new Changes(moves, without);
    }

    private static void add(List<FittedFile.Change> to, String cause, Outcome before, Outcome after, Instant end) {
        for (int coat = 0; coat < after.coats().size(); coat++) {
            CoatResult result = after.coats().get(coat);
            Duration later = Duration.between(
                    before.coats().get(coat).ready().orElse(end), result.ready().orElse(end));
            to.add(new FittedFile.Change(
                    cause, result.wall(), result.number(), Units.daysFromSeconds((double) later.toSeconds())));
        }
    }
}
