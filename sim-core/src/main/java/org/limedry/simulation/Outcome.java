package org.limedry.simulation;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What one run found. Nothing downstream computes physics.
 *
 * @param ending how it ended
 * @param reached the time reached; all figures belong to it
 * @param coats one entry for each coat of the scenario, in its order
 * @param account the water account of the whole site
 * @param roomAccounts the water account of each room, in the order of the scenario
 * @param faces one entry for each room-side face, in the order of the walls
 * @param history hour by hour
 * @param warnings what the user must be told, in time order
 * @param statistics what the solver did
 */
public record Outcome(
        Ending ending,
        Instant reached,
        List<CoatResult> coats,
        WaterAccount account,
        List<RoomAccount> roomAccounts,
        List<FaceResult> faces,
        History history,
        List<Warning> warnings,
        Statistics statistics) {
    public Outcome {
        coats = List.copyOf(coats);
        roomAccounts = List.copyOf(roomAccounts);
        faces = List.copyOf(faces);
        warnings = List.copyOf(warnings);
    }

    /** How a run ended. */
    public sealed interface Ending {
        /** It reached its end. */
        record Complete() implements Ending {}

        /**
         * The solver gave up; the state at {@link Outcome#reached()} is the last it accepted.
         *
         * @param stepS step that was still refused, s
         * @param error its error against the tolerance of 1
         */
        record GaveUp(double stepS, double error) implements Ending {}
    }

    /**
     * One coat.
     *
     * @param wall its wall
     * @param number its number on that wall
     * @param laid when it was laid, if it was
     * @param ready when the next coat may go on, if that came
     * @param byHand whether the date is the plasterer's own test
     * @param work the work of the gang that laid it, if gangs lay the coats and one has begun it
     * @param waterLaidKgPerM2 water in it as laid, kg/m2
     * @param waterLeftKgPerM2 water in it at the end, kg/m2
     * @param carbonatedM depth that is hard right through, from the face, m
     */
    public record CoatResult(
            String wall,
            int number,
            Optional<Instant> laid,
            Optional<Instant> ready,
            boolean byHand,
            Optional<Work> work,
            double waterLaidKgPerM2,
            double waterLeftKgPerM2,
            double carbonatedM) {}

    /**
     * The work of a gang on one coat.
     *
     * @param gang its name
     * @param offered first morning on which the coat could have been begun, had a gang been free
     * @param begun morning on which it was begun
     * @param days working days that it takes, the last of them the day on which the coat counts as laid
     */
    public record Work(String gang, Instant offered, Instant begun, double days) {}

    /**
     * The water account of one room. A wall between two rooms belongs to the room it is listed under; what the other room
     * gives to it counts there as going through walls.
     *
     * @param room its name
     * @param account the account
     */
    public record RoomAccount(String room, WaterAccount account) {}

    /**
     * One room-side face over the run.
     *
     * @param wall its wall
     * @param room the room it faces
     * @param areaM2 its area, m2
     * @param absorbent whether it drinks
     * @param dewHours hours with the dew point of the room air at or above the face
     * @param runningWetHours hours with a film of 0.05 kg/m2 or more
     * @param dampFaceHours hours with the face above 98 % relative humidity
     * @param condensedKg vapour taken up while at or above 98.5 %, kg
     * @param suckedBackKg of that, drunk, kg
     */
    public record FaceResult(
            String wall,
            String room,
            double areaM2,
            boolean absorbent,
            double dewHours,
            double runningWetHours,
            double dampFaceHours,
            double condensedKg,
            double suckedBackKg) {}

    /**
     * What the solver did.
     *
     * @param steps steps accepted
     * @param rejectedSteps steps tried and refused
     * @param linearSolves linear systems solved
     * @param cells cells in all walls at the end
     * @param smallestStepS smallest accepted step, s
     */
    public record Statistics(long steps, long rejectedSteps, long linearSolves, int cells, double smallestStepS) {}
}
