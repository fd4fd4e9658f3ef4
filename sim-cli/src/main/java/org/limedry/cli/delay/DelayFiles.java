package org.limedry.cli.delay;

import java.util.function.Consumer;
import org.limedry.cli.page.Bundle;

/** The files of a delay. */
public final class DelayFiles {
    private static final String NAME = "delay";

    private DelayFiles() {}

    /**
     * Returns the letter as PDF and page, its chart, and its figures.
     *
     * @param story what there is to tell
     * @param warn told if the letter does not fit its page
     */
    public static Bundle of(DelayStory story, Consumer<String> warn) {
        LetterPdf pdf = LetterPdf.of(story);
        if (pdf.pages() > 1) {
            warn.accept("delay.pdf has " + pdf.pages() + " pages: shorten the steps and records in the site file.");
        }
        return new Bundle()
                .file(NAME + ".pdf", pdf::file)
                .text(NAME + ".html", () -> new Letter(story, pdf.room()).html())
                .chart(NAME, DelayCharts.of(story))
                .csv(NAME, DelayTables.csv(story))
                .json(NAME, DelayTables.json(story));
    }
}
