package org.limedry.cli.report;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.limedry.cli.chart.Litres;
import org.limedry.cli.page.Ascii;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Figures;
import org.limedry.simulation.Outcome;
import org.limedry.wall.WallPlan;

/** The answer on the console: under twenty lines of plain ASCII for up to three coats, one more for each further coat. */
final class ConsoleAnswer {
    private static final int LABEL_WIDTH = 24;
    private static final int LAID_WIDTH = 10;
    private static final int DATE_WIDTH = 11;
    private static final int MOST_COATS = 8;
    private static final int COATS_IF_MORE = 3;

    private final Findings findings;
    private final PageModel page;
    private final Days days;
    private final ReadyText ready;
    private final List<String> lines = new ArrayList<>();

    private ConsoleAnswer(Findings findings, PageModel page) {
        this.findings = findings;
        this.page = page;
        this.days = findings.days();
        this.ready = new ReadyText(findings);
    }

    /**
     * Returns the lines to print.
     *
     * @param findings what was found
     * @param directory where the files went, as the user named it
     */
    static List<String> lines(Findings findings, String directory) {
        ConsoleAnswer answer = new ConsoleAnswer(findings, PageModels.of(findings));
        answer.heading();
        answer.coats();
        answer.moved();
        answer.water();
        answer.advice();
        answer.add("Wrote " + directory + ": report.html, 3 charts (svg, png), hours.csv, summary.json");
        return List.copyOf(answer.lines);
    }

    private void heading() {
        add(page.head().site() + ", " + page.head().period());
        page.situation().dangers().forEach(this::add);
        if (findings.outcome().ending() instanceof Outcome.Ending.GaveUp) {
            add(page.notes().get(0));
        }
    }

    private void coats() {
        List<Coat> coats = shown();
        if (coats.isEmpty()) {
            return;
        }
        String rule = "rule: " + findings.scenario().rule().name();
        int width = labelWidth(coats);
        row(rule, width, "laid", new ReadyText.Cells("earliest", "LIKELY", "latest"));
        for (Coat coat : coats) {
            String laid = coat.result().laid().map(days::date).map(days::brief).orElse("not laid");
            row(label(coat, width), width, laid, ready.console(coat));
        }
        int more = findings.coats().size() - coats.size();
        if (more > 0) {
            add("... and " + more + " more in report.html");
        }
        String spread = findings.quick()
                ? "Likely dates only (quick run, no ranges)."
                : "1 in 5 before earliest, 1 in 5 after latest.";
        add("  " + spread + " A hand test overrules.");
    }

    private void moved() {
        page.moved().forEach(moved -> {
            add(moved.heading());
            moved.lines().forEach(line -> add("  " + line));
        });
    }

    /** Returns all coats, or the three that are ready last. */
    private List<Coat> shown() {
        List<Coat> coats = findings.coats();
        if (coats.size() <= MOST_COATS) {
            return coats;
        }
        Comparator<Coat> byReady =
                Comparator.comparing(coat -> coat.result().ready().orElse(Instant.MAX));
        return coats.stream()
                .sorted(byReady.reversed())
                .limit(COATS_IF_MORE)
                .sorted(Comparator.comparing(Coat::index))
                .toList();
    }

    /** Returns the width of the first column: that of the longest label, within what the dates leave of the line. */
    private int labelWidth(List<Coat> coats) {
        int longest = coats.stream()
                .mapToInt(coat -> Ascii.of(coat.label()).length())
                .max()
                .orElse(0);
        int latest = coats.stream()
                .mapToInt(coat -> ready.console(coat).latest().length())
                .max()
                .orElse(0);
        int most = Ascii.COLUMNS - LAID_WIDTH - 2 * DATE_WIDTH - latest;
        return Math.max(LABEL_WIDTH, Math.min(longest + 1, most));
    }

    /** Cuts a long name of a wall, never the number of the coat. */
    private static String label(Coat coat, int width) {
        String number = ", coat " + coat.plan().number();
        String wall = Ascii.of(coat.wall());
        int room = width - 1 - number.length();
        if (wall.length() <= room) {
            return wall + number;
        }
        String shorter = wall.replaceFirst(" wall$", "");
        return (shorter.length() <= room ? shorter : shorter.substring(0, room - 2) + "..") + number;
    }

    private void row(String label, int width, String laid, ReadyText.Cells dates) {
        String start = Ascii.cell(label, width) + Ascii.cell(laid, LAID_WIDTH);
        lines.add(
                findings.quick()
                        ? start + Ascii.of(dates.likely())
                        : start
                                + Ascii.cell(dates.earliest(), DATE_WIDTH)
                                + Ascii.cell(dates.likely(), DATE_WIDTH)
                                + Ascii.of(dates.latest()));
    }

    private void water() {
        Account account = page.account();
        List<String> parts = new ArrayList<>();
        BigDecimal rest = account.shown().totalNow();
        rest = rest.subtract(part(account.litres(AccountTerm.OUT_BY_AIR), "out by air", parts));
        rest = rest.subtract(part(account.litres(AccountTerm.DEHUMIDIFIER), "dehumidifier", parts));
        BigDecimal coats = account.litres(AccountTerm.COATS);
        BigDecimal here = account.shown().totalStillHere().subtract(coats);
        part(rest.subtract(coats).subtract(here), "other ways out", parts);
        part(coats, "still in the coats", parts);
        part(here, "in walls and room air", parts);
        add("Water, litres: %s put in (%s buckets%s) = %s"
                .formatted(
                        account.totalIn().litres(),
                        account.totalIn().buckets(),
                        laid(account),
                        String.join(" + ", parts)));
        add("  On the way %s condensed, %s of them sucked back.%s"
                .formatted(account.totalOnTheWay().litres(), Litres.text(account.suckedBack()), glass()));
    }

    /** Where walls or ground give more than half, the reader must not take all of it for his own water. */
    private static String laid(Account account) {
        BigDecimal laid = account.laid();
        boolean most = laid.add(laid).compareTo(account.shown().totalIn()) >= 0;
        return most ? "" : "; " + Litres.text(laid) + " litres of it laid";
    }

    private static BigDecimal part(BigDecimal litres, String words, List<String> parts) {
        if (litres.signum() > 0) {
            parts.add(Litres.text(litres) + " " + words);
        }
        return litres;
    }

    private String glass() {
        double hours = findings.outcome().faces().stream()
                .filter(face -> findings.wall(face.wall()).kind() == WallPlan.Kind.PANE)
                .mapToDouble(Outcome.FaceResult::runningWetHours)
                .max()
                .orElse(0.0);
        return Math.round(hours) == 0 ? "" : " Glass ran for " + Figures.count(hours, "hour") + ".";
    }

    private void advice() {
        page.why().ifPresent(why -> add(shorter(onConsole(why.full()), onConsole(why.brief()))));
        for (int i = 0; i < page.todo().size(); i++) {
            DoLine line = page.todo().get(i);
            String start = "Do " + (i + 1) + ": " + line.what();
            String whole = start + " (" + line.why() + ").";
            add(whole.length() <= Ascii.COLUMNS ? whole : start + ".");
        }
        add(page.situation().line());
    }

    private static String onConsole(String why) {
        return why.replaceFirst("^Slow because ", "Why slow: ");
    }

    /** Returns the whole text where it fits on two lines. */
    private static String shorter(String whole, String brief) {
        return Ascii.wrap(whole).size() <= 2 ? whole : brief;
    }

    private void add(String text) {
        lines.addAll(Ascii.wrap(text));
    }
}
