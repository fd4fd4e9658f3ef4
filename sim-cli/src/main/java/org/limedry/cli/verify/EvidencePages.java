package org.limedry.cli.verify;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.limedry.proof.figure.Proof;
import org.limedry.proof.trade.ReadyDays;

/** The pages that show what was found, with their charts. */
final class EvidencePages {
    /** The page of tables and benchmarks. */
    static final String VALIDATION = "validation.md";

    /** The page of the trade. */
    static final String TRADE = "trade-checks.md";

    private EvidencePages() {}

    /**
     * Writes the pages.
     *
     * @param runs all cases
     * @return the text of each file, by its name within the folder of the pages
     */
    static Map<String, String> all(List<CaseRun> runs) {
        Map<String, String> files = new LinkedHashMap<>();
        List<CaseRun> benchmarks = of(runs, Proof.Kind.BENCHMARK);
        files.put(VALIDATION, ValidationPage.render(benchmarks, of(runs, Proof.Kind.TABLE)));
        benchmarks.forEach(run -> ChartFiles.put(FoundChart.of(run), files));
        List<ReadyDays.Cell> days = ReadyDays.all();
        files.put(TRADE, TradePage.render(of(runs, Proof.Kind.TRADE), days));
        ChartFiles.put(ReadyDaysChart.of(days), files);
        return files;
    }

    private static List<CaseRun> of(List<CaseRun> runs, Proof.Kind kind) {
        return runs.stream().filter(run -> run.proof().kind() == kind).toList();
    }
}
