package org.limedry.proof.trade;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.limedry.proof.figure.Expected;
import org.limedry.proof.figure.Label;
import org.limedry.proof.figure.Proof;
import org.limedry.proof.figure.Source;

/** The saying about a building that is wet through, with the measures tried on it. */
final class BuildingSayings {
    private static final Source PRACTICE = new Source(Label.PRACTICE, "common practice, no source: weeks to months");
    private static final Source INDEPENDENT = new Source(
            Label.COMPUTED, "a calculation of another room by the same equations: a second opinion, not a truth");
    private static final String EARLIER =
            "earlier than that calculation, of whose stone and room not all is known; not explained";
    private static final double TWO_WEEKS = 14.0;
    private static final double NEVER_DAYS = 110.0;

    private final Map<RoomBench, RoomBench.Days> done = new ConcurrentHashMap<>();
    private final List<Saying.Row> rows = new ArrayList<>();

    private BuildingSayings() {
        RoomBench shut = new RoomBench(RoomBench.Door.SHUT, RoomBench.Kit.NOTHING);
        add(shut, "shut", PRACTICE, Expected.atLeast(TWO_WEEKS), Expected.atLeast(TWO_WEEKS));
        second(RoomBench.Door.BY_DAY, RoomBench.Kit.NOTHING, "door open 8 h a day", 30.0, 80.0);
        second(RoomBench.Door.AJAR, RoomBench.Kit.ELECTRIC, "2 kW electric, door ajar", 2.8, 37.0);
        second(RoomBench.Door.SHUT, RoomBench.Kit.DESICCANT, "desiccant dehumidifier, shut", 3.2, 35.0);
        RoomBench gas = new RoomBench(RoomBench.Door.SHUT, RoomBench.Kit.UNFLUED_GAS);
        String burnt = "unflued gas 2 kW, shut";
        rows.add(onLath(gas, burnt, INDEPENDENT, about(4.3)));
        rows.add(onStone(gas, burnt, INDEPENDENT, Expected.atLeast(NEVER_DAYS)).shortOf(EARLIER));
    }

    static List<Proof> all() {
        return List.of(new Saying(
                "T6",
                "A building that is wet through, in winter and shut, takes weeks to months until the next coat; and what measures"
                        + " do to it. An invented room, weather of Mullingar 2017, on the grid of a quick run; "
                        + RoomBench.DAYS
                        + " days: not in the run. (Unflued heaters kill by carbon monoxide: a scenario, no advice; local codes"
                        + " and competent persons come first.)",
                new BuildingSayings().rows));
    }

    private void second(RoomBench.Door door, RoomBench.Kit kit, String words, double lathDays, double stoneDays) {
        add(new RoomBench(door, kit), words, INDEPENDENT, about(lathDays), about(stoneDays));
    }

    /** Another room: half to twice as long, a judgement. */
    private static Expected about(double days) {
        return Expected.between(0.5 * days, 2.0 * days);
    }

    private void add(RoomBench bench, String words, Source source, Expected lath, Expected stone) {
        rows.add(onLath(bench, words, source, lath));
        rows.add(onStone(bench, words, source, stone));
    }

    private Saying.Row onLath(RoomBench bench, String words, Source source, Expected days) {
        return new Saying.Row(
                words + ": coat on lath", "days", source, days, () -> run(bench).lath());
    }

    private Saying.Row onStone(RoomBench bench, String words, Source source, Expected days) {
        return new Saying.Row(
                words + ": coat on stone four fifths full of water",
                "days",
                source,
                days,
                () -> run(bench).stone());
    }

    private RoomBench.Days run(RoomBench bench) {
        return done.computeIfAbsent(bench, RoomBench::readyDays);
    }
}
