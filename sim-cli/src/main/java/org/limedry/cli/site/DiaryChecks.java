package org.limedry.cli.site;

import java.util.List;
import java.util.Optional;
import org.limedry.cli.problem.InputProblem;
import org.limedry.cli.readings.diary.Diary;
import org.limedry.cli.site.schema.Problems;

/** Whether what a diary says can be on its site. */
final class DiaryChecks {
    private DiaryChecks() {}

    /**
     * Returns everything that cannot.
     *
     * @param shown the file of the diary as the user named it
     */
    static List<InputProblem> of(SiteParts parts, Diary diary, String shown) {
        Problems problems = new Problems(shown);
        HandTestChecks.of(parts.entry(), parts.names(), Optional.of(parts.days()))
                .diary(diary, problems);
        return problems.sorted();
    }
}
