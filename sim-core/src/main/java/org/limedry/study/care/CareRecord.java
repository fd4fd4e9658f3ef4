package org.limedry.study.care;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.limedry.simulation.History;
import org.limedry.units.Check;

/**
 * What was held in each room of a run, hour by hour: how fast its air was warmed, how dry and how cold it became, and when a
 * limit was passed.
 *
 * @param limits the limits
 * @param rooms one entry for each room, in the order of the run
 */
public record CareRecord(Limits limits, List<Room> rooms) {
    /** Warming is told against the same hour of the day before, so that day and night do not count. */
    public static final int WARMING_HOURS = 24;

    /** Hours back within a limit that do not yet end a spell outside it. */
    private static final Duration LONGEST_PAUSE = Duration.ofHours(6);

    public CareRecord {
        rooms = List.copyOf(rooms);
    }

    /**
     * The limits.
     *
     * @param warmingK most that the air may be warmer than 24 hours before, K; above 0
     * @param driest lowest relative humidity, fraction; in [0, 1]
     * @param coldestCelsius lowest air temperature, C
     */
    public record Limits(double warmingK, double driest, double coldestCelsius) {
        public Limits {
            Check.positive(warmingK, "warmingK", "K");
            Check.that(driest >= 0.0 && driest <= 1.0, "driest", "0 to 1", driest);
            Check.finite(coldestCelsius, "coldestCelsius", "C");
        }
    }

    /** What a limit is set for. */
    public enum Kind {
        /** Warmer by more than the limit than 24 hours before; K. */
        WARMED,
        /** Relative humidity below the limit; fraction. */
        DRY,
        /** Air temperature below the limit; C. */
        COLD
    }

    /**
     * The worst figure of a kind.
     *
     * @param value its value, in the unit of its kind
     * @param at when
     */
    public record Extreme(double value, Instant at) {}

    /**
     * A spell outside a limit.
     *
     * @param kind which limit
     * @param from first hour outside
     * @param until last hour outside
     * @param worst the worst figure of the spell
     * @param heated whether a heater ran in it or in the 24 hours before it
     */
    public record Spell(Kind kind, Instant from, Instant until, Extreme worst, boolean heated) {}

    /**
     * A room.
     *
     * @param room its name
     * @param fastest its fastest warming, if the run lasts a day
     * @param driest its driest hour
     * @param coldest its coldest hour
     * @param spells when a limit was passed, kind after kind
     */
    public record Room(String room, Optional<Extreme> fastest, Extreme driest, Extreme coldest, List<Spell> spells) {
        public Room {
            spells = List.copyOf(spells);
        }
    }

    /**
     * Returns the record of a run.
     *
     * @param history the run, of at least one hour
     * @param limits the limits
     */
    public static CareRecord of(History history, Limits limits) {
        Check.notEmpty(history.times(), "history.times");
        return new CareRecord(
                limits,
                history.rooms().stream()
                        .map(room -> new Reader(history.times(), room, limits).room())
                        .toList());
    }

    /** Returns by how much the air of a room is warmer than 24 hours before, K; hour 24 is the first that tells. */
    public static double warmingK(History.RoomHours room, int hour) {
        return room.airCelsius().at(hour) - room.airCelsius().at(hour - WARMING_HOURS);
    }

    /** Reads one room; of equal figures the first counts. */
    private record Reader(List<Instant> times, History.RoomHours hours, Limits limits) {
        Room room() {
            List<Spell> spells = new ArrayList<>();
            for (Kind kind : Kind.values()) {
                spells.addAll(spells(kind));
            }
            return new Room(
                    hours.room(),
                    times.size() > WARMING_HOURS ? Optional.of(worst(all(Kind.WARMED), Kind.WARMED)) : Optional.empty(),
                    worst(all(Kind.DRY), Kind.DRY),
                    worst(all(Kind.COLD), Kind.COLD),
                    spells);
        }

        private List<Integer> all(Kind kind) {
            return IntStream.range(kind == Kind.WARMED ? WARMING_HOURS : 0, times.size())
                    .boxed()
                    .toList();
        }

        private Extreme worst(List<Integer> among, Kind kind) {
            int worst = among.get(0);
            for (int hour : among) {
                worst = excess(kind, hour) > excess(kind, worst) ? hour : worst;
            }
            return new Extreme(value(kind, worst), times.get(worst));
        }

        private double value(Kind kind, int hour) {
            return switch (kind) {
                case WARMED -> warmingK(hours, hour);
                case DRY -> hours.relativeHumidity().at(hour);
                case COLD -> hours.airCelsius().at(hour);
            };
        }

        /** How far an hour lies outside a limit; negative inside. */
        private double excess(Kind kind, int hour) {
            double value = value(kind, hour);
            return switch (kind) {
                case WARMED -> value - limits.warmingK();
                case DRY -> limits.driest() - value;
                case COLD -> limits.coldestCelsius() - value;
            };
        }

        private List<Spell> spells(Kind kind) {
            List<List<Integer>> runs = new ArrayList<>();
            int last = 0;
            for (int hour : all(kind)) {
                if (excess(kind, hour) > 0.0) {
                    boolean joined = !runs.isEmpty()
                            && Duration.between(times.get(last), times.get(hour))
                                            .compareTo(LONGEST_PAUSE)
                                    <= 0;
                    if (!joined) {
                        runs.add(new ArrayList<>());
                    }
                    runs.get(runs.size() - 1).add(hour);
                    last = hour;
                }
            }
            return runs.stream().map(run -> spell(kind, run)).toList();
        }

        private Spell spell(Kind kind, List<Integer> run) {
            int first = run.get(0);
            int last = run.get(run.size() - 1);
            boolean heated = IntStream.rangeClosed(Math.max(0, first - WARMING_HOURS), last)
                    .anyMatch(hour -> hours.heaterWatts().at(hour) > 0.0);
            return new Spell(kind, times.get(first), times.get(last), worst(run, kind), heated);
        }
    }
}
