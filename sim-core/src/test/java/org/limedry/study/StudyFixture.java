package org.limedry.study;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.limedry.climate.Outdoors;
import org.limedry.lime.ReadinessRule;
import org.limedry.room.RoomPlan;
import org.limedry.simulation.Accuracy;
import org.limedry.simulation.History;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Outcome.CoatResult;
import org.limedry.simulation.Physics;
import org.limedry.simulation.Scenario;
import org.limedry.simulation.Series;
import org.limedry.simulation.WaterAccount;

/** An invented site of one room, and a made-up law in place of a simulation. */
public final class StudyFixture {
    public static final Instant FROM = Instant.parse("2026-10-05T00:00:00Z");
    public static final int RUN_DAYS = 60;

    public static final Uncertain LEAKAGE =
            new Uncertain("leakage.store", "leakage", "1/h", 0.2, 0.6, 2.0, true, "FROM MEMORY", "judgement");
    public static final Uncertain START =
            new Uncertain("start.store", "start", "C", 4.0, 8.0, 11.0, false, "FROM MEMORY", "judgement");

    private StudyFixture() {}

    public static Scenario scenario(Draw draw) {
        RoomPlan room = new RoomPlan(
                "store", 45.0, 18.0, 2.5, 0.0, LEAKAGE.in(draw), 0.0, List.of(), List.of(), START.in(draw), 0.85);
        Outdoors mild = (from, until) -> new Outdoors.Piece(6.0, 6.0, 800.0, 800.0, 2.0, 2.0);
        return new Scenario(
                "net loft",
                FROM,
                FROM.plus(Duration.ofDays(RUN_DAYS)),
                mild,
                Map.of(),
                List.of(room),
                List.of(),
                List.of(),
                rule(),
                List.of(),
                Physics.ordinary(),
                Accuracy.ordinary());
    }

    /** The made-up law: a tight, cold room is late, and one that would pass the end of the run is never ready. */
    public static Outcome madeUp(Scenario scenario) {
        RoomPlan room = scenario.rooms().get(0);
        double days = 30.0 / (0.3 + room.leakagePerHour()) - 0.5 * room.startCelsius();
        return outcome(new Outcome.Ending.Complete(), coat(1, ready(0.25 * days), false), coat(2, ready(days), false));
    }

    public static Optional<Instant> ready(double days) {
        return days < RUN_DAYS
                ? Optional.of(
                        FROM.plusMillis(Math.round(days * Duration.ofDays(1).toMillis())))
                : Optional.empty();
    }

    public static CoatResult coat(int number, Optional<Instant> ready, boolean byHand) {
        return new CoatResult("north", number, Optional.of(FROM), ready, byHand, Optional.empty(), 3.3, 0.4, 0.002);
    }

    public static Outcome outcome(Outcome.Ending ending, CoatResult... coats) {
        WaterAccount account = new WaterAccount(
                9.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 7.0, 0.0, 0.0, 0.0, 0.0, 2.0, 0.0, 0.0, 0.0, 0.0, 0.0);
        History history = new History(List.of(), Series.of(), Series.of(), List.of(), List.of(), List.of());
        return new Outcome(
                ending,
                FROM.plus(Duration.ofDays(RUN_DAYS)),
                List.of(coats),
                account,
                List.of(),
                List.of(),
                history,
                List.of(),
                new Outcome.Statistics(500, 3, 2000, 60, 1.0));
    }

    /** The likely run of an ensemble and those of its members. */
    public static EnsembleResult result(Outcome likely, List<Outcome> members) {
        return EnsembleResult.of(
                likely, members.stream().map(run -> member(Draw.likely(), run)).toList());
    }

    public static EnsembleResult.Member member(Draw draw, Outcome run) {
        return EnsembleResult.Member.of(draw, run);
    }

    private static ReadinessRule rule() {
        return new ReadinessRule(
                "days:9",
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(9.0));
    }
}
