package org.limedry.cli.fit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.math3.random.RandomGenerator;
import org.limedry.cli.site.FittedFile;
import org.limedry.cli.site.Site;
import org.limedry.cli.site.SiteReader;
import org.limedry.cli.site.SiteReadings;
import org.limedry.reference.Estimate;
import org.limedry.simulation.Accuracy;
import org.limedry.simulation.Progress;
import org.limedry.simulation.Simulation;
import org.limedry.study.Draw;
import org.limedry.study.Ensemble;
import org.limedry.study.EnsembleResult;
import org.limedry.study.MemberQuantile;
import org.limedry.study.ReadyRange;
import org.limedry.study.Uncertain;
import org.limedry.study.fit.FitResult;
import org.limedry.units.Units;

/**
 * One twin experiment: a truth drawn from the ranges of the site, the files that it leaves week by week, and what a fit of them
 * says.
 *
 * @param seed its number
 * @param ready when the coat truly is ready; the end of the run if it is not before
 * @param weeks what was said at the end of each week
 */
record TwinCase(int seed, Instant ready, List<Week> weeks) {
    /**
     * One room with a desiccant dehumidifier. The date asked for is that of the soaked north wall, some six weeks; the east wall is
     * less wet and dries in one or two, and what the hand finds there tells of the north wall.
     */
    static final String SITE = """
            site: Twin room (invented)
            place: {weather: valentia-2017, shelter: sheltered}
            from: 2026-10-19
            until: 2027-03-31
            rooms:
              room:
                size: {lengthM: 5.0, widthM: 4.0, heightM: 2.4}
                floor: flags
                openings:
                  - {name: door, widthM: 0.9, heightM: 2.0, facing: N, open: "Mon-Fri 09:00-12:00"}
                walls:
                  north: {areaM2: 9.0, background: old brick, thicknessMm: 340, wetness: soaked}
                  east: {areaM2: 9.0, background: old brick, thicknessMm: 340, wetness: wet}
                plant:
                  - {kind: dehumidifier, type: desiccant, litresPerDayRated: 14, ratedAt: 20C60, on: always}
            mixes:
              base: {lime: quicklime, limeParts: 1, sandParts: 3, sand: damp}
            coats:
              - {wall: north, mix: base, thicknessMm: 12, laid: 2026-10-19}
              - {wall: east, mix: base, thicknessMm: 12, laid: 2026-10-19}
            readyRule: green-hard
            """;

    static final String READINGS = """
            readings:
              outdoors: yard.csv
              loggers:
                - {file: room.csv, room: room}
              diary: diary.csv
            """;

    /** Its coat, counted from 0. */
    private static final int NORTH = 0;

    private static final LocalDate FIRST_SUNDAY = LocalDate.of(2026, 10, 25);
    private static final double HALF = 0.5;

    TwinCase {
        weeks = List.copyOf(weeks);
    }

    /**
     * What was said at the end of a week.
     *
     * @param byHand whether the hand had found the coat ready
     * @param usable whether the fit was good enough to draw dates from
     * @param likely date of the likely run; here and below the end of the run where it does not come before
     * @param oneInTen date by which one member in ten is ready
     * @param half date by which half of them are
     * @param nineInTen date by which nine in ten are
     * @param told where the truth lies against the 80 % range of each unknown of which the readings told something
     */
    record Week(
            boolean byHand,
            boolean usable,
            Instant likely,
            Instant oneInTen,
            Instant half,
            Instant nineInTen,
            Map<String, Truth> told) {
        boolean holds(Instant ready) {
            return !ready.isBefore(oneInTen) && !ready.isAfter(nineInTen);
        }

        double widthDays() {
            return byHand ? 0.0 : days(oneInTen, nineInTen);
        }
    }

    /** Where a truth lies against a range. */
    enum Truth {
        BELOW,
        INSIDE,
        ABOVE;

        static Truth of(double truly, Estimate range) {
            return truly < range.low() ? BELOW : truly > range.high() ? ABOVE : INSIDE;
        }
    }

    static double days(Instant from, Instant until) {
        return Units.daysFromSeconds((double) Duration.between(from, until).toSeconds());
    }

    /** Makes a case, all of it a matter of its seed; its files go into a folder that is there. */
    static TwinCase of(int seed, int weeks, int members, Path folder) {
        Site plan = site(folder, "plan.yaml", SITE);
        RandomGenerator random = Twin.random(seed, "truth");
        Map<String, Double> quantiles = new HashMap<>();
        plan.fittable().forEach(unknown -> quantiles.put(unknown.key(), random.nextDouble()));
        quantiles.put(Site.WEATHER_SHIFT, random.nextDouble());
        Draw truth = new Draw(quantiles);
        Twin twin = Twin.of(plan, truth, seed);
        List<Week> said = new ArrayList<>();
        for (int week = 1; week <= weeks; week++) {
            LocalDate sunday = FIRST_SUNDAY.plusWeeks(week - 1L);
            twin.writeLoggers(folder, sunday);
            twin.writeDiary(folder.resolve("diary.csv"), sunday);
            said.add(week(site(folder, "read.yaml", SITE + READINGS), truth, members));
        }
        return new TwinCase(seed, twin.ready(NORTH).orElse(plan.until()), said);
    }

    private static Week week(Site site, Draw truth, int members) {
        SiteReadings read = site.readings().orElseThrow();
        ReadingsToFit readings = ReadingsToFit.of(site, read);
        FitResult fit = SiteFit.of(site, readings, 1);
        FittedFile file = FittedFile.undated(site.name(), fit.unknowns(), fit.fitted(), readings.until());
        Site learnt = site.knowing(Optional.of(read.known()), Optional.of(file));
        EnsembleResult result = Ensemble.over(learnt.uncertain(), members)
                .run(
                        draw -> learnt.scenario(draw).with(Accuracy.quick()),
                        scenario -> Simulation.run(scenario, Simulation.Until.ALL_READY, Progress.none()),
                        1,
                        (done, total) -> {});
        List<Optional<Instant>> dates = result.members().stream()
                .map(member -> member.coats().get(NORTH).ready())
                .toList();
        ReadyRange range = result.coats().get(NORTH);
        return new Week(
                range.byHand(),
                fit.isConverged() && fit.unexplained().isEmpty(),
                range.likely().orElse(site.until()),
                ReadyRange.quantile(dates, MemberQuantile.ONE_IN_TEN).orElse(site.until()),
                ReadyRange.quantile(dates, HALF).orElse(site.until()),
                ReadyRange.quantile(dates, MemberQuantile.NINE_IN_TEN).orElse(site.until()),
                told(fit, file, truth));
    }

    private static Map<String, Truth> told(FitResult fit, FittedFile file, Draw truth) {
        Map<String, Truth> told = new TreeMap<>();
        for (Uncertain unknown : fit.unknowns()) {
            if (!fit.untold().contains(unknown)) {
                told.put(
                        unknown.key(),
                        Truth.of(unknown.in(truth), file.now(unknown).orElseThrow()));
            }
        }
        return told;
    }

    private static Site site(Path folder, String name, String text) {
        Path file = folder.resolve(name);
        try {
            Files.writeString(file, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        SiteReader.Result result = SiteReader.read(file);
        if (result instanceof SiteReader.Bad bad) {
            throw new IllegalStateException(bad.problems().toString());
        }
        return ((SiteReader.Good) result).site();
    }
}
