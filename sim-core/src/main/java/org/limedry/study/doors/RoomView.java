package org.limedry.study.doors;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.IntStream;
import org.limedry.lime.CoatPlan;
import org.limedry.lime.Frost;
import org.limedry.lime.TooFast;
import org.limedry.room.Plant;
import org.limedry.simulation.History;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Series;
import org.limedry.units.Units;
import org.limedry.wall.WallPlan;

/** One room of a run, for an eye on its walls and coats. An hour is told by the index at which it begins. */
final class RoomView {
    private final DoorQuestion question;
    private final Outcome outcome;
    private final History.RoomHours room;
    private final List<Integer> walls;

    RoomView(DoorQuestion question, Outcome outcome) {
        this.question = question;
        this.outcome = outcome;
        room = outcome.history().rooms().stream()
                .filter(hours -> hours.room().equals(question.room()))
                .findFirst()
                .orElseThrow();
        walls = walls();
    }

    /** Returns the faces of the walls that the user listed; of a room that has none, all that drink. */
    private List<Integer> walls() {
        List<String> listed = question.scenario().walls().stream()
                .filter(wall -> wall.kind() == WallPlan.Kind.LISTED)
                .map(WallPlan::name)
                .toList();
        List<Integer> here = IntStream.range(0, outcome.faces().size())
                .filter(k -> outcome.faces().get(k).room().equals(question.room()))
                .boxed()
                .toList();
        List<Integer> own = here.stream()
                .filter(k -> listed.contains(outcome.faces().get(k).wall()))
                .toList();
        return own.isEmpty()
                ? here.stream().filter(k -> outcome.faces().get(k).absorbent()).toList()
                : own;
    }

    History.RoomHours hours() {
        return room;
    }

    /** Returns the index of the hour that begins at an instant. */
    int indexOf(Instant instant) {
        Instant first = outcome.history().times().get(0);
        return Math.toIntExact(Duration.between(first, instant).toHours());
    }

    /** Returns the air of an hour: the mean of its two ends. */
    static AirReading mean(Series celsius, Series relativeHumidity, int hour) {
        return new AirReading(mean(celsius, hour), mean(relativeHumidity, hour));
    }

    private static double mean(Series series, int hour) {
        return 0.5 * (series.at(hour) + series.at(hour + 1));
    }

    /** Returns the coldest wall with a coat on it, of a room without one the coldest wall, C. */
    double coldestFaceCelsius(int hour) {
        List<Integer> plastered =
                walls.stream().filter(k -> isPlastered(face(k).wall(), hour)).toList();
        return (plastered.isEmpty() ? walls : plastered)
                .stream().mapToDouble(k -> mean(face(k).celsius(), hour)).min().orElseThrow();
    }

    /**
     * Returns the water that the walls give off in an hour, kg; negative if they take it up. The flow at the end of the
     * hour stands for all of it: it is told just before a door moves, and an open or shut room settles in minutes.
     */
    double driedKg(int hour) {
        return -walls.stream().mapToDouble(k -> takenUpKg(k, hour)).sum();
    }

    /** Returns the water that goes into those walls that take it up in an hour, kg. */
    double ontoWallsKg(int hour) {
        return walls.stream()
                .mapToDouble(k -> Math.max(0.0, takenUpKg(k, hour)))
                .sum();
    }

    private double takenUpKg(int face, int hour) {
        return face(face).vapourKgPerM2S().at(hour + 1)
                * outcome.faces().get(face).areaM2()
                * Units.SECONDS_PER_HOUR;
    }

    /** Tells whether fuel is burnt in the room at any time of an hour. */
    boolean isFumed(Instant from) {
        Instant middle = from.plus(Duration.ofMinutes(30));
        return question.scenario().rooms().stream()
                .filter(plan -> plan.name().equals(question.room()))
                .flatMap(plan -> plan.plant().stream())
                .filter(Plant.Heater.class::isInstance)
                .map(Plant.Heater.class::cast)
                .filter(heater ->
                        heater.fuel() == Plant.Fuel.UNFLUED_LPG || heater.fuel() == Plant.Fuel.UNFLUED_PARAFFIN)
                .anyMatch(heater -> heater.on().isOn(from) || heater.on().isOn(middle));
    }

    /**
     * Tells whether a coat in the room that is young or not ready may freeze in an hour.
     *
     * @param marginK how near to freezing counts, K
     */
    boolean mayFreeze(Instant from, double marginK) {
        int hour = indexOf(from);
        double air = Math.min(room.airCelsius().at(hour), room.airCelsius().at(hour + 1));
        for (int k : walls) {
            double face = Math.min(face(k).celsius().at(hour), face(k).celsius().at(hour + 1));
            boolean cold = Frost.risk(air - marginK, face - marginK) != Frost.Risk.NONE;
            if (cold && coats(face(k).wall()).stream().anyMatch(coat -> isTender(coat, from))) {
                return true;
            }
        }
        return false;
    }

    /** Tells whether a coat in its first days loses more in an hour than it can give. */
    boolean driesTooFast(Instant from) {
        int end = indexOf(from) + 1;
        return walls.stream()
                .anyMatch(k ->
                        coats(face(k).wall()).stream().anyMatch(coat -> isLaid(coat, from) && tooFast(k, coat, end)));
    }

    private boolean tooFast(int face, Outcome.CoatResult coat, int end) {
        TooFast.Exposure exposure = new TooFast.Exposure(
                ageDays(coat, outcome.history().times().get(end)),
                -face(face).vapourKgPerM2S().at(end) * Units.SECONDS_PER_HOUR,
                room.relativeHumidity().at(end),
                room.openShare().at(end) > 0.0,
                false,
                0.0,
                isHaired(coat));
        return TooFast.look(exposure).level() == TooFast.Level.ACT;
    }

    private boolean isHaired(Outcome.CoatResult coat) {
        return question.scenario().coats().stream()
                .filter(plan -> plan.wall().equals(coat.wall()) && plan.number() == coat.number())
                .map(CoatPlan::mortar)
                .anyMatch(mortar -> mortar.isHaired());
    }

    private boolean isPlastered(String wall, int hour) {
        Instant at = outcome.history().times().get(hour);
        return coats(wall).stream().anyMatch(coat -> isLaid(coat, at));
    }

    private List<Outcome.CoatResult> coats(String wall) {
        return outcome.coats().stream().filter(coat -> coat.wall().equals(wall)).toList();
    }

    /** Tells whether frost would harm it: in its first days, or as long as it is not ready. */
    private static boolean isTender(Outcome.CoatResult coat, Instant at) {
        boolean ready = coat.ready().map(when -> !when.isAfter(at)).orElse(false);
        return isLaid(coat, at) && (!ready || ageDays(coat, at) <= Frost.LEAST_FROST_FREE_DAYS);
    }

    private static boolean isLaid(Outcome.CoatResult coat, Instant at) {
        return coat.laid().map(when -> !when.isAfter(at)).orElse(false);
    }

    private static double ageDays(Outcome.CoatResult coat, Instant at) {
        return Duration.between(coat.laid().orElse(at), at).toSeconds() / Units.SECONDS_PER_DAY;
    }

    private History.FaceHours face(int k) {
        return outcome.history().faces().get(k);
    }
}
