package org.limedry.study.airing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.limedry.units.Check;

/**
 * The levels that were tried in a room, and which of them to choose.
 *
 * @param lines one for each heat, the cold one first
 * @param horizonDays days after the first coat at which the runs end
 */
public record AiringStudy(List<AiringLine> lines, double horizonDays) {
    /** Doors open longer than this stand open by night. */
    private static final double LONGEST_DOOR_HOURS = 12.0;

    /** Share of the days that can be saved with which to be content. */
    private static final double GOOD_SHARE = 0.75;

    /** The least trouble first: cold before heated, doors before fans, fewer hours and less air before more. */
    private static final Comparator<AiringFinding> LEAST_TROUBLE = Comparator.comparingDouble((AiringFinding one) ->
                    one.level().heat().map(SteadyHeat::watts).orElse(0.0))
            .thenComparingDouble(one -> one.level().airing().fanM3PerS())
            .thenComparingDouble(one -> one.level().airing().doorHours());

    public AiringStudy {
        lines = List.copyOf(lines);
        Check.notEmpty(lines, "lines");
        Check.positive(horizonDays, "horizonDays", "days");
    }

    /** What to do. */
    public sealed interface Choice {
        /**
         * This level answers.
         *
         * @param finding the level of least trouble that does
         */
        record Do(AiringFinding finding) implements Choice {}

        /**
         * No level that the lime stands answers in time.
         *
         * @param soonest the soonest that it stands, which is too late
         */
        record TooLate(AiringFinding soonest) implements Choice {}

        /** At every level the lime dries too fast or starves. */
        record NoneIsSound() implements Choice {}
    }

    /** A level at which heat makes the wait longer. */
    public record HeatSetback(AiringFinding cold, AiringFinding heated) {}

    /** Returns the level of least trouble that is ready within so many days of the first coat. */
    public Choice within(double days) {
        List<AiringFinding> sound = sound();
        if (sound.isEmpty()) {
            return new Choice.NoneIsSound();
        }
        return sound.stream()
                .filter(one -> one.days() <= days)
                .min(LEAST_TROUBLE)
                .<Choice>map(Choice.Do::new)
                .orElseGet(() -> new Choice.TooLate(AiringLine.soonest(sound)));
    }

    /**
     * Returns the level of least trouble that saves three quarters of the days that can be saved against the room shut and
     * cold, or any level if that saves nothing that counts; a wait that does not end counts as long as the run.
     */
    public Choice best() {
        List<AiringFinding> sound = sound();
        if (sound.isEmpty()) {
            return new Choice.NoneIsSound();
        }
        double best = AiringLine.soonest(sound).days();
        if (!Double.isFinite(best)) {
            return new Choice.TooLate(AiringLine.soonest(sound));
        }
        double idle = lines.get(0).shut().map(this::counted).orElse(horizonDays);
        double share = idle - best > AiringLine.countsFromDays(best) ? GOOD_SHARE : 0.0;
        return within(Math.max(best, idle - share * (idle - best)));
    }

    /** Returns the level at which heat loses most days against the same airing without, if that counts as a difference. */
    public Optional<HeatSetback> heatSetback() {
        return lines.stream()
                .filter(line -> line.heat().isPresent())
                .flatMap(line -> line.levels().stream())
                .flatMap(heated -> cold(heated).map(cold -> new HeatSetback(cold, heated)).stream())
                .filter(pair ->
                        lostDays(pair) > AiringLine.countsFromDays(pair.cold().days()))
                .max(Comparator.comparingDouble(AiringStudy::lostDays));
    }

    /** Returns the same airing without heat, if it was tried. */
    public Optional<AiringFinding> cold(AiringFinding heated) {
        return lines.stream()
                .filter(line -> line.heat().isEmpty())
                .flatMap(line -> line.levels().stream())
                .filter(one -> one.level().airing().equals(heated.level().airing()))
                .findFirst();
    }

    private static double lostDays(HeatSetback pair) {
        return Double.isFinite(pair.cold().days())
                ? pair.heated().days() - pair.cold().days()
                : 0.0;
    }

    /** Returns what lime stands, and what can be asked of people: no doors open by night unless nothing else is tried. */
    private List<AiringFinding> sound() {
        List<AiringFinding> all = all().filter(AiringFinding::isSound).toList();
        List<AiringFinding> byDay = all.stream()
                .filter(one -> one.level().airing().doorHours() <= LONGEST_DOOR_HOURS)
                .toList();
        return byDay.isEmpty() ? all : byDay;
    }

    private Stream<AiringFinding> all() {
        return lines.stream().flatMap(line -> line.levels().stream());
    }

    private double counted(AiringFinding finding) {
        return Math.min(finding.days(), horizonDays);
    }
}
