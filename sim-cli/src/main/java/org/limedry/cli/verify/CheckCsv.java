package org.limedry.cli.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.limedry.cli.page.CsvSheet;
import org.limedry.proof.figure.Claim;
import org.limedry.proof.figure.Expected;
import org.limedry.proof.figure.Figure;
import org.limedry.proof.figure.Verdict;

/** Every figure as a row of a table, in full precision. */
public final class CheckCsv {
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

    /** Returns the table; a cell is blank where there is no number, or where any is accepted. */
    public static CsvSheet of(List<CaseRun> runs) {
        List<List<?>> rows = new ArrayList<>();
        runs.forEach(run -> run.figures().forEach(figure -> rows.add(cells(figure))));
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

    private static Optional<Double> number(double value) {
        return Double.isFinite(value) ? Optional.of(value) : Optional.empty();
    }
}
