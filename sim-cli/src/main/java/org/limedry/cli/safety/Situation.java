package org.limedry.cli.safety;

import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.limedry.cli.site.Site;
import org.limedry.climate.Schedule;
import org.limedry.room.Opening;
import org.limedry.room.Plant;
import org.limedry.room.RoomPlan;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Scenario;
import org.limedry.simulation.Warning;
import org.limedry.wall.WallPlan;

/**
 * What a site has and what an answer about it advises: all that decides which cautions are due.
 *
 * @param has what the site has
 * @param advised what the answer advises, or lays before its reader as a way
 */
public record Situation(Set<Has> has, Set<Advised> advised) {
    /** Nobody is on site at this time of day. */
    private static final LocalTime NIGHT = LocalTime.of(23, 0);

    /** What stands higher is not reached from a hop-up. Common practice, no source. */
    private static final double HOP_UP_REACH_M = 2.5;

    public Situation {
        has = Set.copyOf(has);
        advised = Set.copyOf(advised);
    }

    /** Returns the situation of an answer that is about no site. */
    public static Situation withoutSite() {
        return new Situation(Set.of(), Set.of());
    }

    /** Returns what a site file says of the work: the mixes, what is on the walls. */
    public static Situation at(Site site) {
        Set<Has> has = EnumSet.noneOf(Has.class);
        addIf(site.hasQuicklime(), Has.QUICKLIME, has);
        addIf(site.plastersOldPaint(), Has.OLD_PAINT, has);
        return new Situation(has, Set.of());
    }

    /** Returns this with what is in the rooms of a run, on its walls and outside working hours. */
    public Situation with(Scenario scenario, ZoneId zone) {
        Set<Has> more = EnumSet.noneOf(Has.class);
        addIf(!scenario.coats().isEmpty(), Has.LIME, more);
        addIf(isHigh(scenario), Has.HEIGHT, more);
        for (RoomPlan room : scenario.rooms()) {
            room.plant().forEach(plant -> more.addAll(of(plant, zone)));
            addIf(
                    room.openings().stream()
                            .filter(Opening::leadsOutdoors)
                            .anyMatch(opening -> isOnByNight(opening.open(), zone)),
                    Has.OPEN_BY_NIGHT,
                    more);
        }
        return having(more);
    }

    /** Returns this with plant that a measure brings in. */
    public Situation with(Collection<Plant> plant, ZoneId zone) {
        Set<Has> more = EnumSet.noneOf(Has.class);
        plant.forEach(one -> more.addAll(of(one, zone)));
        return having(more);
    }

    /** Returns this with what a run warns of. */
    public Situation with(Outcome outcome) {
        return warned(outcome.warnings().stream().map(Warning::kind).collect(Collectors.toSet()));
    }

    /** Returns this with kinds of warning that were given. */
    public Situation warned(Set<Warning.Kind> kinds) {
        Set<Has> more = EnumSet.noneOf(Has.class);
        kinds.forEach(kind -> more.addAll(of(kind)));
        return having(more);
    }

    /** Returns this with more that the answer advises. */
    public Situation advising(Collection<Advised> more) {
        Set<Advised> all = EnumSet.noneOf(Advised.class);
        all.addAll(advised);
        all.addAll(more);
        return new Situation(has, all);
    }

    /** Returns this with more that the answer advises. */
    public Situation advising(Advised... more) {
        return advising(List.of(more));
    }

    /** Returns the cautions that are due, in the order in which they are read. */
    public List<Caution> cautions() {
        return Caution.due(this);
    }

    /** Returns the cautions in one line of plain ASCII for the console. */
    public String line() {
        return cautions().stream().map(Caution::brief).collect(Collectors.joining(" ", "Care: ", ""));
    }

    /** Returns what must be read before the answer: a sentence each, mostly none. */
    public List<String> dangers() {
        List<String> dangers = new ArrayList<>();
        if (has(Has.BAD_AIR)) {
            dangers.add(
                    "DANGER: the run finds carbon dioxide above the working limit of 5,000 ppm. Keep out. Put any fuel off from"
                            + " outside, open up from outside, and let nobody in until a competent person has tested the air.");
        }
        if (burnsInTheRoom()) {
            dangers.add(
                    "DANGER: fuel burns in the air of a room. Put the unflued heater out and take it out of the building"
                            + " first: carbon monoxide kills. Never shut or sheet a room round it.");
        }
        return List.copyOf(dangers);
    }

    /** Returns the lines of an answer on the console: dangers above it, care below it. */
    public List<String> around(List<String> answer) {
        List<String> lines = new ArrayList<>(dangers());
        lines.addAll(answer);
        lines.add(line());
        return List.copyOf(lines);
    }

    boolean has(Has... any) {
        return Arrays.stream(any).anyMatch(has::contains);
    }

    boolean advises(Advised... any) {
        return Arrays.stream(any).anyMatch(advised::contains);
    }

    boolean burnsInTheRoom() {
        return has(Has.UNFLUED_GAS, Has.UNFLUED_PARAFFIN);
    }

    boolean heats() {
        return burnsInTheRoom() || has(Has.FLUED_HEATER, Has.ELECTRIC_HEATER) || advises(Advised.HEAT);
    }

    private Situation having(Set<Has> more) {
        Set<Has> all = EnumSet.noneOf(Has.class);
        all.addAll(has);
        all.addAll(more);
        return new Situation(all, advised);
    }

    private static boolean isHigh(Scenario scenario) {
        Set<String> plastered =
                scenario.coats().stream().map(coat -> coat.wall()).collect(Collectors.toSet());
        Set<String> highRooms = scenario.rooms().stream()
                .filter(room -> room.heightM() > HOP_UP_REACH_M)
                .map(RoomPlan::name)
                .collect(Collectors.toSet());
        return scenario.walls().stream()
                .filter(wall -> plastered.contains(wall.name()))
                .anyMatch(wall -> wall.kind() == WallPlan.Kind.CEILING
                        || wall.innerRoom().filter(highRooms::contains).isPresent());
    }

    private static Set<Has> of(Plant plant, ZoneId zone) {
        Set<Has> has = EnumSet.noneOf(Has.class);
        if (plant instanceof Plant.Heater heater) {
            has.add(
                    switch (heater.fuel()) {
                        case ELECTRIC -> Has.ELECTRIC_HEATER;
                        case FLUED -> Has.FLUED_HEATER;
                        case UNFLUED_LPG -> Has.UNFLUED_GAS;
                        case UNFLUED_PARAFFIN -> Has.UNFLUED_PARAFFIN;
                    });
        } else if (plant instanceof Plant.Dehumidifier) {
            has.add(Has.DEHUMIDIFIER);
        } else if (plant instanceof Plant.Fan) {
            has.add(Has.FAN);
        } else if (plant instanceof Plant.Misting) {
            has.add(Has.MISTING);
        }
        boolean machine = !has.isEmpty() && !has.contains(Has.MISTING);
        addIf(machine && isOnByNight(plant.on(), zone), Has.RUNS_BY_NIGHT, has);
        return has;
    }

    private static boolean isOnByNight(Schedule times, ZoneId zone) {
        return times.spans().stream().anyMatch(span -> {
            var night = span.from().atZone(zone).with(NIGHT);
            var next = night.toInstant().isBefore(span.from()) ? night.plusDays(1) : night;
            return next.toInstant().isBefore(span.until());
        });
    }

    private static Set<Has> of(Warning.Kind kind) {
        return switch (kind) {
            case FROST_AIR, FROST_WET_FACE -> EnumSet.of(Has.FROST);
            case TOO_COLD -> EnumSet.of(Has.COLD);
            case CARBON_DIOXIDE -> EnumSet.of(Has.BAD_AIR);
            case DRY_BUT_SOFT -> EnumSet.of(Has.DRY_BUT_SOFT);
            case WET_LATH -> EnumSet.of(Has.WET_LATHS);
            case MOULD -> EnumSet.of(Has.MOULD);
            // Said by the plant itself, or no danger to anyone.
            case UNFLUED_HEATER, TOO_FAST, GLASS_RUNNING, HEAT_WITHOUT_AIR, NOT_LAID, NOT_READY, WALL_FULL ->
                EnumSet.noneOf(Has.class);
        };
    }

    private static void addIf(boolean applies, Has one, Set<Has> to) {
        if (applies) {
            to.add(one);
        }
    }
}
