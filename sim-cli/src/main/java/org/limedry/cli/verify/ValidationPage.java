package org.limedry.cli.verify;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.limedry.proof.benchmarks.Benchmarks;
import org.limedry.proof.figure.Claim;
import org.limedry.proof.figure.Figure;
import org.limedry.proof.figure.Verdict;

/** The page of tables and benchmarks. */
final class ValidationPage {
    /** A case with more numbers than this is shown by its worst rows. */
    private static final int MOST_ROWS = 80;

    private static final String HEAD = """
            # Validation

            Every figure found below comes from the code that runs sites. The values that go into it mostly are not those of sites:
            each benchmark brings its own materials, constants, transfer at the faces and climate, many of them invented; only
            "Catalogue uptake" uses materials that a site uses. A benchmark that is met shows that the equations are solved
            rightly; of the default values it shows nothing.

            Benchmarks are run on the ordinary grid and on half of every cell. A figure that is not met stays in its table. All of
            them, in full: `limedry check --all`, or `--csv FILE`.

            This page is written by `limedry check --pages docs`; a test fails when it is out of date (and writes it anew with
            `-Dlimedry.write=true`). Found numbers may differ from it by a fiftieth of the accepted difference.

            Labels: EXACT (closed form), PUBLISHED (source, table, row), COMPUTED (tool), PRACTICE (common practice, no source),
            JUDGEMENT. The cases test the numerics and the coding of the equations, not whether a wall behaves so: there is no
            measured drying run among them. The trade's own numbers are in [trade-checks.md](trade-checks.md).

            """;

    private static final String TABLES = """
            ## Tables of moist air

            Each column of each table against each formula that it speaks about. "Misprints" are rows that no correct formula
            meets; they are left in, named below, and do not count as falling short.

            """;

    private static final String TAIL = """
            ## Choices that do not matter, and one that does

            - EN15026 with a tenth of the surface transfer: every number moves by less than a fifth of its band (`BenchmarksTest`).
            - Liquid conductivity held at its peak below the suction where it peaks: ROOM_COATS moves by less than a hundredth
              of its bands. The law of FRESH_COAT has no peak, so nothing can move there (`BenchmarksTest`). The site solver does
              not hold it: on full walls that took up to a thousand times the steps.
            - The grid matters most at the outer face in real weather and where a coat has just been laid: see WALL_YEAR.

            ## What else is held by tests

            - Order: third in time for the method alone, with algebraic rows and a time-dependent right-hand side (`Rodas3Test`);
              second in space and at least second in time for a wall with coats (`WallOrderTest`).
            - Linear algebra against Commons Math on random systems (`BlockTridiagonalTest`, `DenseSolverTest`).
            - Tables against the exact functions, suction from water and back (`TransportTableTest`, `WallMeshTest`).
            - The water account of sites made up at random closes to 1e-9 of what came in, room by room and as a whole, and
              every term of it is needed (`WaterAccountTest`).
            - The same scenario gives the same outcome, also in parallel threads (`DeterminismTest`).
            """;

    private ValidationPage() {}

    static String render(List<CaseRun> benchmarks, List<CaseRun> tables) {
        StringBuilder page = new StringBuilder(HEAD).append("## Benchmarks\n\n");
        page.append(Markdown.head(
                "case",
                "numbers",
                "in the band on both grids",
                "on half cells only",
                "outside on half cells",
                "worst share of a band: ordinary",
                "half cells"));
        benchmarks.forEach(run -> page.append(summary(run)));
        benchmarks.forEach(run -> section(run, page));
        page.append('\n').append(TABLES);
        page.append(Markdown.head("table", "compared", "figures", "in", "outside", "misprints", "worst share", "at"));
        tables.forEach(run -> run.parts().forEach((part, figures) -> page.append(part(run, part, figures))));
        misprints(tables, page);
        return page.append('\n').append(TAIL).toString();
    }

    /** One quantity on both grids. */
    private record Pair(Figure ordinary, Figure half) {
        boolean isInOnBoth() {
            return isInOnHalf() && ordinary.verdict() == Verdict.IN;
        }

        boolean isInOnHalf() {
            return half.verdict() == Verdict.IN;
        }

        Claim claim() {
            return half.claim();
        }
    }

    private static List<Pair> pairs(CaseRun run) {
        List<Figure> ordinary = run.parts().getOrDefault(Benchmarks.ORDINARY_GRID, List.of());
        List<Figure> half = run.parts().getOrDefault(Benchmarks.HALF_CELLS, List.of());
        List<Pair> pairs = new ArrayList<>();
        for (int k = 0; k < half.size(); k++) {
            pairs.add(new Pair(ordinary.get(k), half.get(k)));
        }
        return pairs;
    }

    private static String summary(CaseRun run) {
        List<Pair> pairs = pairs(run);
        long both = pairs.stream().filter(Pair::isInOnBoth).count();
        long half = pairs.stream().filter(Pair::isInOnHalf).count();
        return Markdown.row(
                run.proof().name(),
                pairs.size(),
                both,
                half - both,
                pairs.size() - half,
                Numbers.share(CaseRun.worst(pairs.stream().map(Pair::ordinary).toList())
                        .share()),
                Numbers.share(
                        CaseRun.worst(pairs.stream().map(Pair::half).toList()).share()));
    }

    private static void section(CaseRun run, StringBuilder page) {
        page.append("\n### ").append(run.proof().name()).append("\n\n");
        page.append(run.proof().setUp()).append("\n\n");
        page.append("Expected: ").append(run.proof().source()).append(".\n\n");
        page.append("Accepted: ").append(run.proof().bands()).append(".\n\n");
        page.append(Markdown.chart(FoundChart.name(run), FoundChart.title(run)));
        page.append(Markdown.head(
                "quantity", "unit", "expected", "ordinary grid", "half cells", "difference", "accepted", "verdict"));
        List<Pair> pairs = pairs(run);
        if (pairs.size() <= MOST_ROWS) {
            pairs.forEach(pair -> page.append(row(pair, pair.claim().quantity())));
            return;
        }
        Map<String, List<Pair>> groups = pairs.stream()
                .collect(Collectors.groupingBy(
                        pair -> pair.claim().quantity().replaceFirst(", [^,]*$", ""),
                        LinkedHashMap::new,
                        Collectors.toList()));
        groups.forEach((name, group) -> page.append(worst(name, group)));
    }

    private static String worst(String name, List<Pair> group) {
        List<Figure> half = group.stream().map(Pair::half).toList();
        Pair worst = group.get(half.indexOf(CaseRun.worst(half)));
        String quantity = worst.claim().quantity();
        long coarse = group.stream().filter(pair -> !pair.isInOnBoth()).count();
        String title = group.size() == 1
                ? quantity
                : name + ", worst of " + group.size() + " (" + quantity.replaceFirst(".*, ", "") + ")"
                        + (coarse > 0 ? ", " + coarse + " of them outside on the ordinary grid" : "");
        return row(worst, title);
    }

    private static String row(Pair pair, String title) {
        Claim claim = pair.claim();
        return Markdown.row(
                title,
                claim.unit(),
                Numbers.of(claim.expected().value()),
                Numbers.of(pair.ordinary().found()),
                Numbers.of(pair.half().found()),
                Numbers.difference(pair.half().difference()),
                Numbers.of(claim.expected().above()),
                verdict(pair));
    }

    private static String verdict(Pair pair) {
        if (pair.isInOnBoth()) {
            return "in";
        }
        String why = pair.ordinary().claim().standing().reason();
        return (pair.isInOnHalf() ? "in on half cells; **outside** on the ordinary grid: " : "**outside**: ") + why;
    }

    private static String part(CaseRun run, String part, List<Figure> figures) {
        long outside = CaseRun.outside(figures);
        long inError = CaseRun.inError(figures);
        Figure worst = CaseRun.worst(figures);
        return Markdown.row(
                run.proof().name(),
                part,
                figures.size(),
                figures.size() - outside - inError,
                outside,
                inError,
                Numbers.share(worst.share()),
                worst.claim().quantity());
    }

    private static void misprints(List<CaseRun> tables, StringBuilder page) {
        page.append("\nRows that no correct formula meets:\n\n");
        page.append(Markdown.head("table", "row", "printed", "found", "difference", "accepted", "unit", "why"));
        tables.stream()
                .flatMap(run -> run.figures().stream())
                .filter(figure -> figure.verdict() != Verdict.IN)
                .forEach(figure -> page.append(Markdown.row(
                        figure.proof(),
                        figure.claim().quantity(),
                        Numbers.of(figure.claim().expected().value()),
                        Numbers.of(figure.found()),
                        Numbers.difference(figure.difference()),
                        Numbers.difference(figure.claim().expected().above()),
                        figure.claim().unit(),
                        figure.claim().standing().reason())));
        page.append("\nWhat is compared, and what is accepted:\n\n");
        tables.forEach(run -> page.append("- ")
                .append(run.proof().name())
                .append(": ")
                .append(run.proof().setUp())
                .append(" Source: ")
                .append(run.proof().source())
                .append(". Accepted: ")
                .append(run.proof().bands())
                .append(".\n"));
    }
}
