package org.limedry.cli.airing;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.limedry.cli.site.Site;
import org.limedry.room.RoomPlan;
import org.limedry.simulation.Warning;
import org.limedry.study.airing.AiredRoom;
import org.limedry.study.airing.AiringFinding;
import org.limedry.study.airing.AiringStudy;

/**
 * Everything that was found about the air of one room.
 *
 * @param site the site as run
 * @param room the room
 * @param by when it is to be ready, if the user said so
 * @param firstLaid when its first coat is laid
 * @param study the levels that were tried
 * @param choice which of them to choose
 * @param dryDays the chosen level with the doors kept shut on days that water the walls, if there was any
 * @param asTold the room as the file has it
 * @param building the building as it was
 */
record AiringAnswer(
        Site site,
        AiredRoom room,
        Optional<LocalDate> by,
        Instant firstLaid,
        AiringStudy study,
        AiringStudy.Choice choice,
        Optional<DryDays> dryDays,
        AiringFinding asTold,
        Building building) {
    /** A day sooner or later is none. */
    private static final double SAME_DAYS = 1.0;

    /**
     * A level with the doors kept shut on some days.
     *
     * @param finding what came of it
     * @param wetDays days kept shut, of the days of the wait
     */
    record DryDays(AiringFinding finding, int wetDays) {}

    /**
     * What the runs began with.
     *
     * @param plan the room with its openings and plant as the file has it
     * @param rooms all rooms of a run of the most heated level, with their plant
     * @param wholeCarbonDioxideKg carbon dioxide that all its coats take until hard right through, kg
     * @param wholeAirM3 outdoor air that holds as much, m3
     * @param outdoorPpm carbon dioxide outdoors, parts per million
     * @param warned kinds of warning that any run gave
     */
    record Building(
            RoomPlan plan,
            List<RoomPlan> rooms,
            double wholeCarbonDioxideKg,
            double wholeAirM3,
            double outdoorPpm,
            Set<Warning.Kind> warned) {
        Building {
            rooms = List.copyOf(rooms);
            warned = Set.copyOf(warned);
        }
    }

    /** Returns the level of the answer or, if none answers, the soonest that lime stands; empty if it stands none. */
    Optional<AiringFinding> told() {
        if (choice instanceof AiringStudy.Choice.Do found) {
            return Optional.of(usesDryDays() ? dryDays.orElseThrow().finding() : found.finding());
        }
        return choice instanceof AiringStudy.Choice.TooLate late ? Optional.of(late.soonest()) : Optional.empty();
    }

    /** Tells whether keeping shut on wet days costs no time, so that the answer says to. */
    boolean usesDryDays() {
        return choice instanceof AiringStudy.Choice.Do found
                && dryDays.isPresent()
                && dryDays.orElseThrow().finding().days() <= found.finding().days() + SAME_DAYS;
    }

    /** Tells whether the likely date of the answer lies within the runs. */
    boolean isDated() {
        return told().map(finding -> Double.isFinite(finding.days())).orElse(false);
    }
}
