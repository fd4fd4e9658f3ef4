package org.limedry.simulation;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Writes docs/validation.md from the figures of all proofs, and tells whether a page still says what is found. */
final class ValidationPage {
    /** A case with more numbers than this is shown by its worst rows. */
    private static final int MOST_ROWS = 80;

    /** Pieces of the row of a figure, split at its bars, and the piece that holds the band. */
    private static final int FIGURE_PIECES = 10;

    private static final int BAND_PIECE = 7;

    private static final String HEAD = """
            # Validation

            Every number below was found by the solver that runs sites (the time loop, the walls and the rooms as they are), on the
            ordinary grid and on half of every cell. A case that fails stays in its table.

            This page is written by a test: `mvn -q -pl sim-core -am test -Dtest=ValidationPageTest
            -Dsurefire.failIfNoSpecifiedTests=false -Dlimedry.write=true`. The same test fails when the page is out of date.
            Found numbers may differ from it by a fiftieth of the accepted difference.

            Labels: EXACT (closed form), PUBLISHED (source, table, row), COMPUTED (tool), PINNED (own output, says nothing of
            truth), PRACTICE (common practice, no source). The cases test the numerics and the coding of the equations, not
            whether a wall behaves so: there is no measured drying run among them. The trade's own numbers are in
            [trade-checks.md](trade-checks.md).

            """;

    private static final String TAIL = """
            ## Choices that do not matter, and one that does

            - EN15026 with a tenth of the surface transfer: every number moves by less than a fifth of its band (`ProofTest`).
            - Liquid conductivity held at its peak below the suction where it peaks: ROOM_COATS moves by less than a hundredth
              of its bands. The law of FRESH_COAT has no peak, so nothing can move there (`ProofTest`). The site solver does not
              hold it: on full walls that took up to a thousand times the steps.
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

    static String render() {
        StringBuilder page = new StringBuilder(HEAD);
        page.append(
                "| case | numbers | in the band on both grids | on half cells only | outside | worst share of a band:"
                        + " ordinary | half cells |\n|---|---|---|---|---|---|---|\n");
        for (ProofCase proof : Proofs.cases()) {
            List<Figure> all = Proofs.figures(proof);
            long both = all.stream().filter(Figure::passesOnBoth).count();
            long half = all.stream().filter(Figure::passes).count() - both;
            page.append(row(
                    proof.name(),
                    all.size(),
                    both,
                    half,
                    all.size() - both - half,
                    share(all.stream()
                            .mapToDouble(Figure::ordinaryShareOfBand)
                            .max()
                            .orElseThrow()),
                    share(all.stream().mapToDouble(Figure::shareOfBand).max().orElseThrow())));
        }
        for (ProofCase proof : Proofs.cases()) {
            section(proof, page);
        }
        return page.append('\n').append(TAIL).toString();
    }

    private static void section(ProofCase proof, StringBuilder page) {
        page.append("\n## ").append(proof.name()).append("\n\n");
        page.append(proof.setUp()).append("\n\n");
        page.append("Expected: ").append(proof.source()).append(".\n\n");
        page.append("Accepted: ").append(proof.bands()).append(".\n\n");
        page.append("| quantity | unit | expected | ordinary grid | half cells | difference | accepted | verdict |\n");
        page.append("|---|---|---|---|---|---|---|---|\n");
        List<Figure> all = Proofs.figures(proof);
        if (all.size() <= MOST_ROWS) {
            all.forEach(
                    figure -> page.append(row(proof, figure, figure.expected().quantity())));
            return;
        }
        Map<String, List<Figure>> groups = all.stream()
                .collect(Collectors.groupingBy(ValidationPage::group, LinkedHashMap::new, Collectors.toList()));
        groups.forEach((name, group) -> page.append(row(proof, worst(group), title(name, group))));
    }

    private static String group(Figure figure) {
        return figure.expected().quantity().replaceFirst(", [^,]*$", "");
    }

    private static String title(String name, List<Figure> group) {
        if (group.size() == 1) {
            return group.get(0).expected().quantity();
        }
        String where = worst(group).expected().quantity().replaceFirst(".*, ", "");
        return name + ", worst of " + group.size() + " (" + where + ")";
    }

    /** The worst by a hundredth of its band, the first of several: rounding must not choose another row elsewhere. */
    private static Figure worst(List<Figure> group) {
        Figure worst = group.get(0);
        for (Figure figure : group) {
            worst = Math.round(100.0 * figure.shareOfBand()) > Math.round(100.0 * worst.shareOfBand()) ? figure : worst;
        }
        return worst;
    }

    private static String row(ProofCase proof, Figure figure, String title) {
        ProofCase.Expected expected = figure.expected();
        return row(
                title.replace("|", ""),
                expected.unit(),
                number(expected.value()),
                number(figure.ordinary()),
                number(figure.half()),
                number(figure.half() - expected.value(), 2),
                number(expected.band()),
                verdict(proof, figure));
    }

    private static String verdict(ProofCase proof, Figure figure) {
        if (!figure.passes()) {
            return "**outside**: "
                    + proof.knownShort().getOrDefault(figure.expected().quantity(), "");
        }
        return figure.passesOnBoth() ? "in" : "in, half cells only";
    }

    private static String row(Object... cells) {
        List<String> texts = new ArrayList<>();
        for (Object cell : cells) {
            texts.add(cell.toString());
        }
        return "| " + String.join(" | ", texts) + " |\n";
    }

    private static String share(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }

    private static String number(double value) {
        return number(value, 5);
    }

    private static String number(double value, int digits) {
        double size = Math.abs(value);
        if (size > 0.0 && (size < 1.0e-3 || size >= 1.0e6)) {
            return String.format(Locale.ROOT, "%." + (digits - 1) + "e", value);
        }
        return new BigDecimal(value)
                .round(new MathContext(digits))
                .stripTrailingZeros()
                .toPlainString();
    }

    /** Returns the lines in which two pages differ by more than a fiftieth of the accepted difference. */
    static List<String> differences(String committed, String now) {
        List<String> old = committed.lines().toList();
        List<String> fresh = now.lines().toList();
        if (old.size() != fresh.size()) {
            return List.of("lines: " + old.size() + " against " + fresh.size());
        }
        List<String> different = new ArrayList<>();
        for (int k = 0; k < old.size(); k++) {
            if (!isSame(old.get(k).split("\\|", -1), fresh.get(k).split("\\|", -1))) {
                different.add(old.get(k) + "  <>  " + fresh.get(k));
            }
        }
        return different;
    }

    private static boolean isSame(String[] old, String[] fresh) {
        boolean isFigure = fresh.length == FIGURE_PIECES && isNumber(fresh[BAND_PIECE]);
        double slack = 0.02 * (isFigure ? Double.parseDouble(fresh[BAND_PIECE]) : 1.0);
        boolean same = old.length == fresh.length;
        for (int k = 0; same && k < old.length; k++) {
            same = old[k].equals(fresh[k]) || isClose(old[k], fresh[k], slack);
        }
        return same;
    }

    private static boolean isClose(String one, String other, double slack) {
        if (!isNumber(one) || !isNumber(other)) {
            return false;
        }
        double value = Double.parseDouble(one);
        // The page has five digits.
        return Math.abs(value - Double.parseDouble(other)) <= slack + 1.0e-4 * Math.abs(value);
    }

    private static boolean isNumber(String text) {
        return text.strip().matches("-?[0-9.]+(e[+-]?[0-9]+)?");
    }
}
