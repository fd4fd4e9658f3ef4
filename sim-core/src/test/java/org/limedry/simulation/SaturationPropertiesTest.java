package org.limedry.simulation;

import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.statistics.Statistics;
import org.limedry.wall.WallColumn;

/** Neither a coat nor the air of a room ever holds more than it can. */
final class SaturationPropertiesTest {
    /** The small store that keeps the solver regular near saturation, at the least suction it knows: 0.46 % of w_f. */
    private static final double SMALL_STORE = 4.0e-4 * Math.log1p(10.0 / 1.0e-4);

    // EXACT: pores hold at most free saturation, and the humidity in them is at most 1. Looked at after every step.
    @Property(tries = 16, shrinking = ShrinkingMode.OFF)
    void coat_ofASiteMadeUpAtRandom_isNeverAboveSaturation(@ForAll @LongRange(min = 0, max = 1_000_000) long number) {
        double[] fullest = new double[1];
        Simulation.run(RandomSites.site(number), Progress.none(), (now, site) -> {
            for (CoatCourse coat : ((SiteModel) site).coats()) {
                fullest[0] = Math.max(fullest[0], coat.isLaid() ? saturation(coat) : 0.0);
            }
        });

        assertTrue(fullest[0] <= 1.0 + SMALL_STORE, () -> "as full as " + fullest[0]);
        Statistics.label("a coat is filled up after it was laid")
                .collect(fullest[0] > 0.975)
                .coverage(seen -> seen.check(true).count(count -> count >= 1));
    }

    // EXACT: air holds no more than it is saturated with. Tolerance: fog falls out at a rate, found 0.12 K on 300
    // sites.
    @Property(tries = 16, shrinking = ShrinkingMode.OFF)
    void dewPoint_ofARoomMadeUpAtRandom_isNeverAboveItsAir(@ForAll @LongRange(min = 0, max = 1_000_000) long number) {
        Outcome outcome = Simulation.run(RandomSites.site(number));

        double dampest = 0.0;
        for (History.RoomHours room : outcome.history().rooms()) {
            for (int hour = 0; hour < room.airCelsius().size(); hour++) {
                double above =
                        room.dewPointCelsius().at(hour) - room.airCelsius().at(hour);
                assertTrue(above <= 0.3, () -> room.room() + ": dew point " + above + " K above the air");
                dampest = Math.max(dampest, room.relativeHumidity().at(hour));
            }
        }
        Statistics.label("the air is full at some hour")
                .collect(dampest > 0.99)
                .coverage(seen -> seen.check(true).count(count -> count >= 1));
    }

    /** Returns the share of free saturation that a coat holds; its pores are looked at one by one. */
    private static double saturation(CoatCourse coat) {
        WallColumn wall = coat.column();
        int number = coat.plan().number();
        int outermost = wall.nodeInCoat(number, 0.0);
        for (int node = wall.nodeInCoat(number, coat.plan().thicknessM()); node <= outermost; node++) {
            double humidity = wall.relativeHumidity(node);
            assertTrue(humidity <= 1.0, () -> "humidity in the pores " + humidity);
        }
        double free = coat.plan().mortar().material().retention().freeSaturationKgPerM3();
        return wall.coatWaterKgPerM2(number) / (free * coat.plan().thicknessM());
    }
}
