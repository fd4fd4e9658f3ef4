package org.limedry.cli.report;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Names;
import org.limedry.study.ReadyRange;

/** When a coat is ready, in words. A date past the run is never guessed: it is said to be past the run. */
final class ReadyText {
    private final Findings findings;
    private final Days days;

    ReadyText(Findings findings) {
        this.findings = findings;
        this.days = findings.days();
    }

    /**
     * The three dates of a coat as they stand in a table.
     *
     * @param earliest date that one chance in five beats
     * @param likely date of the likely run
     * @param latest date that one chance in five misses
     */
    record Cells(String earliest, String likely, String latest) {}

    /** Returns the dates for the page: "Thu 7 Jan". */
    Cells page(Coat coat) {
        String past = "not by " + days.brief(lastDay()) + ", the end of the run";
        if (coat.result().byHand()) {
            String test = dated(coat.result().ready(), date -> "your test, " + days.brief(date), past);
            return new Cells(test, test, test);
        }
        return cells(coat, days::table, past);
    }

    /** Returns the dates for the console: "7 Jan". */
    Cells console(Coat coat) {
        if (coat.result().byHand()) {
            return new Cells("your test", dated(coat.result().ready(), days::brief, "after run"), "your test");
        }
        Cells cells = cells(coat, days::brief, "after run");
        boolean past = coat.range().map(ReadyRange::latest).stream().anyMatch(Optional::isEmpty);
        String end = "after the run (" + days.brief(lastDay()) + ")";
        return past ? new Cells(cells.earliest(), cells.likely(), end) : cells;
    }

    /** Returns the answer for one coat as a heading without a full stop. */
    String heading(Coat coat) {
        String what = Names.capital(subject(coat));
        if (coat.result().laid().isEmpty()) {
            return what + " not laid by " + lastDayLong() + ", the end of the run";
        }
        if (coat.result().byHand()) {
            return dated(coat.result().ready(), date -> what + goal(coat) + ": your test, " + days.text(date), what);
        }
        Optional<LocalDate> likely = coat.result().ready().map(days::date);
        if (likely.isEmpty()) {
            return what + " not" + goal(coat) + " by " + lastDayLong() + ", the end of the run"
                    + coat.range()
                            .flatMap(ReadyRange::earliest)
                            .map(early -> "; " + days.textWithoutWeekday(days.date(early)) + " if all goes well")
                            .orElse("");
        }
        return what + goal(coat) + ": likely " + days.text(likely.get())
                + coat.range().map(range -> spread(likely.get(), range)).orElse("");
    }

    /** Returns the last day of the run. */
    LocalDate lastDay() {
        return days.lastDay(findings.outcome().reached());
    }

    private String spread(LocalDate likely, ReadyRange range) {
        Optional<LocalDate> earliest = range.earliest().map(days::date);
        Optional<LocalDate> latest = range.latest().map(days::date);
        if (earliest.equals(latest) && earliest.equals(Optional.of(likely))) {
            return ", early or late the same day";
        }
        return "; "
                + earliest.map(days::textWithoutWeekday).orElse("not by " + lastDayLong()) + " if all goes well, "
                + latest.map(days::textWithoutWeekday).orElse("not by " + lastDayLong()) + " if not";
    }

    private Cells cells(Coat coat, Function<LocalDate, String> words, String past) {
        return new Cells(
                coat.range().map(range -> dated(range.earliest(), words, past)).orElse(""),
                dated(coat.result().ready(), words, past),
                coat.range().map(range -> dated(range.latest(), words, past)).orElse(""));
    }

    private String dated(Optional<Instant> instant, Function<LocalDate, String> words, String past) {
        return instant.map(days::date).map(words).orElse(past);
    }

    private String subject(Coat coat) {
        return hasNext(coat) ? coat.wall() : coat.label();
    }

    private String goal(Coat coat) {
        return hasNext(coat) ? " ready for its " + Names.ordinal(coat.plan().number() + 1) + " coat" : " ready";
    }

    private boolean hasNext(Coat coat) {
        List<Coat> coats = findings.coats();
        return coats.stream()
                .anyMatch(other -> other.plan().wall().equals(coat.plan().wall())
                        && other.plan().number() == coat.plan().number() + 1);
    }

    private String lastDayLong() {
        return days.textWithoutWeekday(lastDay());
    }
}
