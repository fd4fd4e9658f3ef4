package org.limedry.simulation;

import java.util.EnumMap;
import java.util.Map;

/** Running sums of the water account of one room, each term by itself. */
final class Ledger {
    /** What is summed up; signs as in {@link WaterAccount}. */
    enum Term {
        LAID,
        WETTING,
        PEOPLE,
        GROUND,
        PLANT,
        RELEASED,
        BOUND,
        OUT_BY_AIR,
        BETWEEN_ROOMS,
        THROUGH_WALLS,
        DEHUMIDIFIER,
        RUN_OFF
    }

    /** Water in the stores of a room, kg. */
    record Stores(double coatsKg, double wallsKg, double airKg, double filmKg) {
        Stores plus(Stores other) {
            return new Stores(
                    coatsKg + other.coatsKg, wallsKg + other.wallsKg, airKg + other.airKg, filmKg + other.filmKg);
        }
    }

    private final Map<Term, Double> sums = new EnumMap<>(Term.class);

    Ledger() {
        for (Term term : Term.values()) {
            sums.put(term, 0.0);
        }
    }

    void add(Term term, double kg) {
        sums.merge(term, kg, Double::sum);
    }

    double kg(Term term) {
        return sums.getOrDefault(term, 0.0);
    }

    /** Adds the sums of another ledger. */
    void addAll(Ledger other) {
        other.sums.forEach(this::add);
    }

    WaterAccount account(Stores start, Stores end, double condensedKg, double suckedBackKg) {
        return new WaterAccount(
                kg(Term.LAID),
                kg(Term.WETTING),
                kg(Term.PEOPLE),
                kg(Term.GROUND),
                kg(Term.PLANT),
                kg(Term.RELEASED),
                kg(Term.BOUND),
                kg(Term.OUT_BY_AIR),
                kg(Term.BETWEEN_ROOMS),
                kg(Term.THROUGH_WALLS),
                kg(Term.DEHUMIDIFIER),
                kg(Term.RUN_OFF),
                end.coatsKg() - start.coatsKg(),
                end.wallsKg() - start.wallsKg(),
                end.airKg() - start.airKg(),
                end.filmKg() - start.filmKg(),
                condensedKg,
                suckedBackKg);
    }
}
