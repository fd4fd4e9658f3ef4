package org.limedry.simulation;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleBinaryOperator;

/** Joins what is noticed step by step into spells: one warning from the first to the last hour of each. */
final class Spells {
    private record Key(Warning.Kind kind, String subject) {}

    private record Spell(Instant from, Instant until, double value) {}

    private final Map<Key, Spell> open = new LinkedHashMap<>();
    private final List<Warning> closed = new ArrayList<>();

    /**
     * Takes note of something.
     *
     * @param kind what
     * @param subject of what
     * @param step the step in which it was so
     * @param value its figure in this step
     * @param join how the figures of a spell are joined
     */
    void note(Warning.Kind kind, String subject, Step step, double value, DoubleBinaryOperator join) {
        Key key = new Key(kind, subject);
        Spell before = open.get(key);
        if (before == null) {
            open.put(key, new Spell(step.from(), step.until(), value));
        } else if (Duration.between(before.until(), step.from()).compareTo(longestPause(kind)) > 0) {
            close(key, before);
            open.put(key, new Spell(step.from(), step.until(), value));
        } else {
            open.put(key, new Spell(before.from(), step.until(), join.applyAsDouble(before.value(), value)));
        }
    }

    /** Returns all spells that matter, in time order. */
    List<Warning> all() {
        open.forEach(this::close);
        open.clear();
        return closed.stream().sorted(Comparator.comparing(Warning::from)).toList();
    }

    /** A step that has been taken. */
    record Step(Instant from, Instant until) {
        double hours() {
            return Duration.between(from, until).toNanos() / 3.6e12;
        }
    }

    private void close(Key key, Spell spell) {
        if (spell.value() >= least(key.kind()) || isLowFigure(key.kind())) {
            closed.add(new Warning(key.kind(), key.subject(), spell.from(), spell.until(), spell.value()));
        }
    }

    /** Nights are spells of their own; what lasts is one spell for the whole run. */
    private static Duration longestPause(Warning.Kind kind) {
        return switch (kind) {
            case FROST_AIR, FROST_WET_FACE -> Duration.ofHours(6);
            case TOO_COLD, TOO_FAST -> Duration.ofHours(24);
            default -> Duration.ofDays(36_500);
        };
    }

    /** Figures below these are not worth a line: hours for the cold, hours on glass, litres condensed while heated. */
    private static double least(Warning.Kind kind) {
        return switch (kind) {
            case TOO_COLD -> 6.0;
            case GLASS_RUNNING -> 1.0;
            case HEAT_WITHOUT_AIR -> 2.0;
            default -> 0.0;
        };
    }

    private static boolean isLowFigure(Warning.Kind kind) {
        return kind == Warning.Kind.FROST_AIR
                || kind == Warning.Kind.FROST_WET_FACE
                || kind == Warning.Kind.DRY_BUT_SOFT;
    }
}
