package org.limedry.cli.chart;

import org.limedry.units.Check;

/** Something that {@link Charts} can draw: one message, told by its title. */
public sealed interface Chart
        permits AiringChart,
                CareChart,
                ChancesChart,
                CoverageChart,
                DelayChart,
                DoorsChart,
                DryingChart,
                NarrowingChart,
                PlotsChart,
                ProgrammeChart,
                RankChart,
                ReadingsChart,
                ResidualChart,
                SavedChart,
                SeasonsChart,
                WallAndDewPointChart,
                WaterAccountChart {
    /** Returns what tells this chart from the others on its page; small letters, digits and hyphens. */
    String id();

    /** Returns the sentence that says what the chart shows. */
    String title();

    /** Requires an id that may stand in a page, and a title. */
    static void check(String id, String title) {
        Check.that(id.matches("[a-z][a-z0-9-]*"), "id", "small letters, digits and hyphens, a letter first", id);
        Check.notBlank(title, "title");
    }
}
