package org.limedry.cli.handover;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.limedry.cli.site.Site;
import org.limedry.simulation.Scenario;
import org.limedry.study.EnsembleResult;
import org.limedry.study.ReadyRange;
import org.limedry.wall.Side;
import org.limedry.wall.WallPlan;

/**
 * When one room may be decorated.
 *
 * @param room its name
 * @param ready when its last coat is ready
 * @param wetness how wet its wettest plastered wall began
 * @param zone clock of the site
 */
record RoomLadder(String room, ReadyRange ready, Wetness wetness, ZoneId zone) {
    /** How wet a wall is in itself, driest first. */
    enum Wetness {
        DRY("walls dry"),
        DAMP("walls damp, or not known to be dry"),
        WET("a wall is wet in itself");

        private final String words;

        Wetness(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }

        private static Wetness of(WallPlan wall, String words) {
            if (wall.risingDampKgPerS() > 0.0 || Set.of("wet", "soaked").contains(words)) {
                return WET;
            }
            return "dry".equals(words) ? DRY : DAMP;
        }
    }

    /**
     * The days between which one finish may go on.
     *
     * @param from first day
     * @param until day by which the longer wait is over
     */
    record Span(LocalDate from, LocalDate until) {}

    /** Returns the plastered rooms, in the order of the file. */
    static List<RoomLadder> of(Site site, Scenario scenario, EnsembleResult result) {
        List<RoomLadder> ladders = new ArrayList<>();
        for (String room : site.rooms()) {
            List<WallPlan> walls = plastered(scenario, room);
            Set<String> names = walls.stream().map(WallPlan::name).collect(Collectors.toSet());
            walls.stream()
                    .map(wall -> Wetness.of(wall, site.wetnessOf(wall.name())))
                    .max(Comparator.naturalOrder())
                    .ifPresent(wetness -> ladders.add(new RoomLadder(
                            room, result.last(coat -> names.contains(coat.wall())), wetness, site.zone())));
        }
        return List.copyOf(ladders);
    }

    private static List<WallPlan> plastered(Scenario scenario, String room) {
        Set<String> coated = scenario.coats().stream().map(coat -> coat.wall()).collect(Collectors.toSet());
        return scenario.walls().stream()
                .filter(wall -> wall.inside().equals(new Side.Room(room)))
                .filter(wall -> coated.contains(wall.name()))
                .toList();
    }

    /** Returns the day on which the last coat is likely to be ready. */
    Optional<LocalDate> readyDay() {
        return ready.likely().map(this::day);
    }

    /** Returns when a finish may go on; empty if its wall is wet, or the plaster is not ready within the run. */
    Optional<Span> span(Finish finish) {
        if (isPutOff(finish)) {
            return Optional.empty();
        }
        return ready.earliest()
                .flatMap(first ->
                        ready.latest().map(last -> new Span(finish.soonest(day(first)), finish.usual(day(last)))));
    }

    /** Tells whether a finish has to wait for the wall itself. */
    boolean isPutOff(Finish finish) {
        return finish.isVapourTight() && wetness == Wetness.WET;
    }

    /** Tells whether a date holds only if the wall is dry by then. */
    boolean isOnCondition(Finish finish) {
        return finish.isVapourTight() && wetness == Wetness.DAMP;
    }

    private LocalDate day(Instant instant) {
        return instant.atZone(zone).toLocalDate();
    }
}
