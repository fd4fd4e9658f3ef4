package org.limedry.cli.chart;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Invented odds to draw. */
final class OddsSamples {
    private OddsSamples() {}

    static ChancesChart chances(Timeline timeline, int days, int runs) {
        List<Optional<Instant>> dates = new ArrayList<>();
        for (int run = 0; run < runs; run++) {
            double day = days * 1.2 * (run + 0.5) / runs;
            dates.add(day < days ? Optional.of(DryingSamples.day(timeline, day)) : Optional.empty());
        }
        return new ChancesChart(
                "odds-dates",
                "An even chance by the middle of the run, with a title that is rather long for its chart",
                timeline,
                "North wall of the harbourmaster's dairy, coat 2",
                new Ready.Range(dates.get(runs / 5), dates.get(runs / 2), dates.get(4 * runs / 5)),
                dates);
    }

    static RankChart rank() {
        return new RankChart(
                "odds-unknowns",
                "Knowing the wetness would take off most: 27 days of 65",
                "days",
                List.of(
                        new RankChart.Bar("Wetness of the north wall, wet", 27.3),
                        new RankChart.Bar(
                                "How hard a half-wet wall pulls: entry suction of lime-rubble stone, from no source",
                                9.94),
                        new RankChart.Bar("Nothing at all", 0.0)));
    }

    static SavedChart saved(boolean ranges) {
        OptionalDouble none = OptionalDouble.empty();
        return new SavedChart(
                "options",
                "Doors open and 2 kW of heat saves 28 days; too close to call against a desiccant machine with the doors shut",
                List.of(
                        new SavedChart.Row(
                                "Doors open 9 to 16 and 2 kW electric heat to 14 C, protected supply, on every day of the week",
                                28.2,
                                ranges ? OptionalDouble.of(21) : none,
                                ranges ? OptionalDouble.of(36) : none,
                                false),
                        new SavedChart.Row(
                                "Desiccant machine",
                                26.0,
                                ranges ? OptionalDouble.of(18) : none,
                                ranges ? OptionalDouble.of(34) : none,
                                true),
                        new SavedChart.Row("Nothing", 0.0, none, none, false),
                        new SavedChart.Row(
                                "4 kW unflued gas, shut",
                                -34.0,
                                ranges ? OptionalDouble.of(-52) : none,
                                ranges ? OptionalDouble.of(-19) : none,
                                false)));
    }
}
