package org.limedry.cli.site;

import java.util.List;
import java.util.function.DoubleFunction;
import org.limedry.cli.site.MemoryTrials.Trial;
import org.limedry.simulation.Scenario;

/** The ready rule's thresholds, twice too low and twice too high, on the demo. */
final class RuleTwiceOff {
    private RuleTwiceOff() {}

    static List<Trial> all() {
        DemoChanges demo = new DemoChanges();
        return List.of(
                trial("suction of 300 kPa halved and doubled", 300, value -> demo.assumed("readySuctionKPa", value)),
                trial("age of 2 days at 20 C halved and doubled", 2, value -> demo.assumed("readyAgeDays", value)),
                trial(
                        "both halved and both doubled",
                        1,
                        factor -> demo.withLine(
                                "assume",
                                "{readySuctionKPa: " + DemoChanges.plain(300 * factor) + ", readyAgeDays: "
                                        + DemoChanges.plain(2 * factor) + "}")));
    }

    private static Trial trial(String words, double value, DoubleFunction<Scenario> run) {
        return new Trial(words, value, 0.5 * value, 2.0 * value, "", run);
    }
}
