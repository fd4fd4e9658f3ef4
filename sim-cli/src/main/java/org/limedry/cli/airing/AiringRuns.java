package org.limedry.cli.airing;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.limedry.air.CarbonDioxideContent;
import org.limedry.cli.ask.Question;
import org.limedry.cli.site.Site;
import org.limedry.room.Fumes;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Scenario;
import org.limedry.simulation.Simulation;
import org.limedry.simulation.Warning;
import org.limedry.study.Draw;
import org.limedry.study.EnsembleResult;
import org.limedry.study.airing.AiredRoom;
import org.limedry.study.airing.Airing;
import org.limedry.study.airing.AiringFinding;
import org.limedry.study.airing.AiringLevel;
import org.limedry.study.airing.AiringLine;
import org.limedry.study.airing.AiringReader;
import org.limedry.study.airing.AiringStudy;
import org.limedry.study.airing.Hardening;
import org.limedry.study.airing.SteadyHeat;
import org.limedry.units.Units;

/** Makes the runs behind {@code limedry airing}. */
final class AiringRuns {
    /** How long the runs wait for the room, from its first coat on. */
    private static final int HORIZON_DAYS = 140;

    private static final double LITTLE = 0.2;
    private static final double MUCH = 0.8;

    private final Question question;
    private final AiringAsked asked;
    private final AiredRoom room;
    private final Site site;
    private final Scenario likely;
    private final Instant firstLaid;
    private final EnsembleResult told;
    private final AiringReader reader;

    /** One level, and what came of it. */
    private record Tried(AiringLevel level, EnsembleResult result) {}

    private AiringRuns(Question question, AiringAsked asked, AiredRoom room, Site site, EnsembleResult told) {
        this.question = question;
        this.asked = asked;
        this.room = room;
        this.site = site;
        this.told = told;
        this.likely = site.scenario(Draw.likely());
        this.firstLaid = room.firstLaid(likely).orElseThrow();
        this.reader = new AiringReader(room, firstLaid, flow(room, LITTLE), flow(room, MUCH));
    }

    /** Returns the answer to what was asked. */
    static AiringAnswer answer(Question question, AiringAsked asked) {
        Site file = question.site();
        asked.check(question);
        Scenario scenario = file.scenario(Draw.likely());
        List<AiredRoom> plastered = file.rooms().stream()
                .map(name -> new AiredRoom(name, file.zone(), asked.withoutPlant()))
                .filter(one -> one.firstLaid(scenario).isPresent())
                .toList();
        asked.room().ifPresent(name -> check(question, name, file.rooms(), plastered));
        Instant last = plastered.stream()
                .flatMap(one -> one.firstLaid(scenario).stream())
                .max(Instant::compareTo)
                .orElseThrow(() -> question.refused("SITE: must have a coat in a room, had none"));
        Site whole = reaching(file, last);
        EnsembleResult told = question.untilReady(question.ensemble(whole), whole::scenario);
        String name = asked.room()
                .or(() -> AiredRoom.longestWaiting(scenario, told.likely()))
                .orElseThrow();
        AiredRoom room = new AiredRoom(name, file.zone(), asked.withoutPlant());
        Site site = reaching(file, room.firstLaid(scenario).orElseThrow());
        return new AiringRuns(question, asked, room, site, told).answer();
    }

    private static void check(Question question, String name, List<String> rooms, List<AiredRoom> plastered) {
        if (!rooms.contains(name)) {
            throw question.refused("--room: must be one of " + String.join(", ", rooms) + ", was " + name);
        }
        if (plastered.stream().noneMatch(one -> one.name().equals(name))) {
            throw question.refused("--room: must be a room with a coat, was " + name);
        }
    }

    /** Returns the job run until so long after a coat is laid; as long as the file says if the weather ends before. */
    private static Site reaching(Site file, Instant laid) {
        long before = Duration.between(file.from(), laid).toDays() + 1;
        return file.lasting((int) before + HORIZON_DAYS).orElse(file);
    }

    private static Draw flow(AiredRoom room, double quantile) {
        return new Draw(Map.of("openingFlow", quantile, "leakage." + room.name(), quantile));
    }

    private AiringAnswer answer() {
        double horizonDays = horizonDays();
        Optional<Double> by = asked.by().map(day -> daysUntil(day, horizonDays));
        List<Airing> airings = asked.airings(question, room.plan(likely));
        List<Optional<SteadyHeat>> heats =
                asked.heats(question, room.plan(likely).volumeM3(), meanOutdoors());
        List<AiringLevel> levels = heats.stream()
                .flatMap(heat -> airings.stream().map(airing -> AiringLevel.daily(airing, heat)))
                .toList();
        List<Tried> tried = tried(levels);
        List<AiringLine> lines = heats.stream().map(heat -> line(heat, tried)).toList();
        AiringStudy study = new AiringStudy(lines, horizonDays);
        AiringStudy.Choice choice = by.map(study::within).orElseGet(study::best);
        return new AiringAnswer(
                site,
                room,
                asked.by(),
                firstLaid,
                study,
                choice,
                choice instanceof AiringStudy.Choice.Do found ? dryDays(found.finding(), tried) : Optional.empty(),
                reader.read(AiringLevel.daily(Airing.SHUT, Optional.empty()), site::scenario, told),
                building(levels, tried));
    }

    private double horizonDays() {
        return Math.min(HORIZON_DAYS, days(Duration.between(firstLaid, site.until())));
    }

    /** Returns the time from the first coat to the end of a day. */
    private double daysUntil(LocalDate day, double horizonDays) {
        double until = days(Duration.between(
                firstLaid, day.plusDays(1).atStartOfDay(site.zone()).toInstant()));
        LocalDate first = firstLaid.atZone(site.zone()).toLocalDate();
        if (!day.isAfter(first)) {
            throw question.refused("--by: must be after " + first + ", when the first coat is laid, was " + day);
        }
        if (until > horizonDays + 1.0) {
            throw question.refused("--by: must be within " + Math.round(horizonDays) + " days of " + first
                    + ", when the first coat is laid, was " + day);
        }
        return until;
    }

    private static double days(Duration duration) {
        return Units.daysFromSeconds((double) duration.toSeconds());
    }

    private double meanOutdoors() {
        Instant until = firstLaid.plus(AiringAsked.HEAT_MEAN);
        return SteadyHeat.meanCelsius(
                likely.outdoors(), firstLaid, until.isBefore(site.until()) ? until : site.until());
    }

    private List<Tried> tried(List<AiringLevel> levels) {
        List<EnsembleResult> results = question.run(
                question.ensemble(site),
                levels.stream().map(this::way).toList(),
                Simulation.Until.readyOn(room.plasteredWalls(likely)));
        return IntStream.range(0, levels.size())
                .mapToObj(i -> new Tried(levels.get(i), results.get(i)))
                .toList();
    }

    private Function<Draw, Scenario> way(AiringLevel level) {
        return draw -> room.with(withoutFumes(site.scenario(draw)), level);
    }

    /** No level is laid before anyone with fuel burning in its air, be it next door. */
    private Scenario withoutFumes(Scenario scenario) {
        return scenario.withRooms(Fumes.without(room.name(), scenario.rooms()));
    }

    private AiringFinding read(Tried one) {
        return reader.read(one.level(), way(one.level()), one.result());
    }

    private AiringLine line(Optional<SteadyHeat> heat, List<Tried> tried) {
        return new AiringLine(
                heat,
                tried.stream()
                        .filter(one -> one.level().heat().equals(heat))
                        .map(this::read)
                        .toList());
    }

    /** Runs the chosen level once more with the doors shut on the days on which it watered the walls. */
    private Optional<AiringAnswer.DryDays> dryDays(AiringFinding chosen, List<Tried> tried) {
        Airing airing = chosen.level().airing();
        if (airing.doorHours() == 0.0 || airing.doorHours() == Airing.WHOLE_DAY_HOURS) {
            return Optional.empty();
        }
        Tried daily = tried.stream()
                .filter(one -> one.level().equals(chosen.level()))
                .findFirst()
                .orElseThrow();
        Set<LocalDate> wet = reader.wetDays(daily.level(), way(daily.level()), daily.result());
        if (wet.isEmpty()) {
            return Optional.empty();
        }
        Tried dry = tried(List.of(new AiringLevel(airing, chosen.level().heat(), wet)))
                .get(0);
        return Optional.of(new AiringAnswer.DryDays(read(dry), wet.size()));
    }

    private AiringAnswer.Building building(List<AiringLevel> levels, List<Tried> tried) {
        double wholeKg = Hardening.wholeKg(likely, room.plasteredWalls(likely));
        double outdoorPpm = likely.physics().outdoorCarbonDioxidePpm();
        double kgPerM3 = CarbonDioxideContent.kgPerM3(
                outdoorPpm, meanOutdoors(), likely.physics().air().pressurePa());
        List<Outcome> outcomes =
                tried.stream().map(one -> one.result().likely()).toList();
        Set<Warning.Kind> warned = Stream.concat(outcomes.stream(), Stream.of(told.likely()))
                .flatMap(outcome -> outcome.warnings().stream())
                .map(Warning::kind)
                .collect(Collectors.toSet());
        AiringLevel last = levels.get(levels.size() - 1);
        return new AiringAnswer.Building(
                room.plan(likely),
                new ArrayList<>(way(last).apply(Draw.likely()).rooms()),
                wholeKg,
                wholeKg / kgPerM3,
                outdoorPpm,
                warned);
    }
}
