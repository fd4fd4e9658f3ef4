package org.limedry.cli.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.limedry.proof.benchmarks.Benchmarks;
import org.limedry.proof.figure.Figure;
import org.limedry.proof.figure.Proof;
import org.limedry.proof.figure.Verdict;

/** What {@code check} prints. */
final class CheckLines {
    private static final String HEAD =
            "case | part | quantity | source | expected | found | difference | accepted | unit | verdict";
    /** What a case is called that could not be run to its end. */
    static final String FAILED = "failed to run";

    private static final String ROW = "%-34s %8s %8s %8s %10s %7s  %-8s %s";

    private CheckLines() {}

    /** Returns a line for each case, and for each grid of a benchmark. */
    static List<String> table(List<CaseRun> runs) {
        List<String> lines = new ArrayList<>();
        lines.add(String.format(
                Locale.ROOT, ROW, "case", "figures", "in", "outside", "misprints", "worst", "verdict", "worst figure"));
        for (CaseRun run : runs) {
            if (run.failure().isPresent()) {
                lines.add(String.format(Locale.ROOT, "%-34s ", run.proof().name()) + failed(run));
            } else if (run.proof().kind() == Proof.Kind.BENCHMARK) {
                run.parts().forEach((part, figures) -> lines.add(row(run.proof().name() + ", " + part, figures)));
            } else {
                lines.add(row(run.proof().name(), run.figures()));
            }
        }
        lines.add("");
        lines.add(
                "Worst: difference as a share of what is accepted, 1 at its edge. Misprints: rows of a source that no");
        lines.add("correct formula meets, left in to be seen; they do not count as falling short.");
        return lines;
    }

    private static String row(String name, List<Figure> figures) {
        long outside = CaseRun.outside(figures);
        long inError = CaseRun.inError(figures);
        Figure worst = CaseRun.worst(figures);
        return String.format(
                Locale.ROOT,
                ROW,
                name,
                figures.size(),
                figures.size() - outside - inError,
                outside,
                inError,
                Numbers.share(worst.share()),
                outside > 0 ? "OUTSIDE" : "in",
                words(worst));
    }

    private static String failed(CaseRun run) {
        return FAILED + ": " + run.failure().orElse("");
    }

    private static String words(Figure figure) {
        String part = figure.part().isEmpty()
                        || Set.of(Benchmarks.ORDINARY_GRID, Benchmarks.HALF_CELLS)
                                .contains(figure.part())
                ? ""
                : figure.part() + ": ";
        return part + figure.claim().quantity();
    }

    /** Returns every figure that is not in, with why. */
    static List<String> outside(List<CaseRun> runs) {
        List<String> lines = new ArrayList<>();
        List<Figure> figures =
                all(runs).filter(figure -> figure.verdict() != Verdict.IN).toList();
        if (!figures.isEmpty()) {
            lines.add("");
            lines.add("Every figure that is not in:");
            lines.add(HEAD + " | why");
            figures.forEach(figure -> lines.add(line(figure) + " | " + why(figure)));
        }
        return lines;
    }

    /** Returns every figure, and every case that failed to run. */
    static List<String> everything(List<CaseRun> runs) {
        List<String> lines = new ArrayList<>();
        lines.add(HEAD + " | reason of what is accepted");
        for (CaseRun run : runs) {
            run.figures().forEach(figure -> lines.add(line(figure) + " | " + reason(figure)));
            if (run.failure().isPresent()) {
                lines.add(run.proof().name() + " | " + failed(run));
            }
        }
        return lines;
    }

    /** Returns the sums of all cases in a line. */
    static String sum(List<CaseRun> runs, double seconds) {
        List<Figure> figures = all(runs).toList();
        long outside = CaseRun.outside(figures);
        long inError = CaseRun.inError(figures);
        long failed = runs.stream().filter(run -> run.failure().isPresent()).count();
        return String.format(
                Locale.ROOT,
                "%d figures of %d cases: %d in, %d outside, %d misprints of sources%s; %.0f s",
                figures.size(),
                runs.size(),
                figures.size() - outside - inError,
                outside,
                inError,
                failed == 0 ? "" : "; cases that failed to run: " + failed,
                seconds);
    }

    private static Stream<Figure> all(List<CaseRun> runs) {
        return runs.stream().flatMap(run -> run.figures().stream());
    }

    private static String line(Figure figure) {
        return String.join(
                " | ",
                figure.proof(),
                figure.part().isEmpty() ? "-" : figure.part(),
                figure.claim().quantity(),
                figure.claim().source().words(),
                Numbers.of(figure.claim().expected().value()),
                Numbers.of(figure.found()),
                Numbers.difference(figure.difference()),
                Numbers.accepted(figure.claim().expected()),
                figure.claim().unit(),
                figure.verdict().words());
    }

    private static String why(Figure figure) {
        String known = figure.claim().standing().reason();
        return known.isEmpty() ? "not known: please report" : known;
    }

    private static String reason(Figure figure) {
        String known = figure.verdict() == Verdict.IN ? "" : "; outside: " + why(figure);
        return figure.claim().reason() + known;
    }
}
