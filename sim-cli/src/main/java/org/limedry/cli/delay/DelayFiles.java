package org.limedry.cli.delay;

import java.util.function.Consumer;
import org.limedry.cli.page.Bundle;

/** The files of a delay. */
public final class DelayFiles {
    private DelayFiles() {}

    /** Returns them. */
    public static Bundle of(DelayStory story, Consumer<String> warn) {
        return new Bundle()
                .chart("delay", DelayCharts.of(story))
                .csv("delay", DelayTables.csv(story))
                .json("delay", DelayTables.json(story));
    }
}
