package org.limedry.cli.verify;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.limedry.cli.page.CsvSheet;
import org.limedry.proof.figure.Claim;
import org.limedry.proof.figure.Expected;
import org.limedry.proof.figure.Figure;
import org.limedry.proof.figure.Verdict;

/** Every figure as a row of a table, in full precision. */
final class CheckCsv {
    private static final List<String> COLUMNS = List.of(
            "case",
            "part",
            "quantity",
            "unit",
            "label",
            "source",
            "expected",
            "found",
            "difference",
            "acceptedBelow",
            "acceptedAbove",
            "shareOfAccepted",
            "reason",
            "verdict",
            "why");

    private CheckCsv() {}

    /** Returns the table, a row also for each case that failed to run; a cell is blank where there is no number, or where any is accepted. */
    static CsvSheet of(List<CaseRun> runs) {
        List<List<?>> rows = new ArrayList<>();
        for (CaseRun run : runs) {
            run.figures().forEach(figure -> rows.add(cells(figure)));
            run.failure().ifPresent(reason -> rows.add(failed(run, reason)));
        }
        return new CsvSheet(COLUMNS, rows);
    }

    private static List<?> cells(Figure figure) {
        Claim claim = figure.claim();
        Expected expected = claim.expected();
        return List.of(
                figure.proof(),
                figure.part(),
                claim.quantity(),
                claim.unit(),
                claim.source().label().name(),
                claim.source().where(),
                number(expected.value()),
                number(figure.found()),
                number(figure.difference()),
                number(expected.below()),
                number(expected.above()),
                number(figure.share()),
                claim.reason(),
                figure.verdict().words(),
                figure.verdict() == Verdict.IN ? "" : claim.standing().reason());
    }

    private static List<?> failed(CaseRun run, String reason) {
        List<Object> cells = new ArrayList<>(Collections.nCopies(COLUMNS.size(), ""));
        cells.set(0, run.proof().name());
        cells.set(COLUMNS.indexOf("source"), run.proof().source());
        cells.set(COLUMNS.indexOf("verdict"), CheckLines.FAILED);
        cells.set(COLUMNS.indexOf("why"), reason);
        return cells;
    }

    private static Optional<Double> number(double value) {
        return Double.isFinite(value) ? Optional.of(value) : Optional.empty();
    }
}
