package org.limedry.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.limedry.cli.page.Ascii;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Figures;
import org.limedry.cli.page.Names;
import org.limedry.simulation.Warning;
import org.limedry.simulation.WaterAccount;

/** Names, dates, numbers and plain text. EXACT: counts and figures are those that each test puts in. */
final class WordsTest {
    private static final ZoneId DUBLIN = ZoneId.of("Europe/Dublin");

    @ParameterizedTest
    @CsvSource({
        "store north, store north wall",
        "North-East, North-East wall",
        "party, party wall",
        "ceiling, ceiling",
        "north gable, north gable",
        "window pane, window pane"
    })
    void wall_thatOnlySaysWhere_isCalledAWall(String name, String words) {
        assertEquals(words, Names.wall(name));
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "1234, '1,234'", "-3.4, \u22123", "-0.2, 0", "0.5, 1"})
    void wholeNumber_hasCommasAndATrueMinus(double value, String text) {
        assertEquals(text, Figures.whole(value));
    }

    @ParameterizedTest
    @CsvSource({"0.125, 0.125", "11, 11", "2.20, 2.2", "-0.04, \u22120.04", "1500.4, '1,500'", "0.6, 0.6"})
    void plainNumber_hasNoNeedlessDecimals(double value, String text) {
        assertEquals(text, Figures.plain(value));
    }

    @ParameterizedTest
    @CsvSource({"0.12, 0.1", "9.94, 9.9", "10.2, 10", "186.4, 186", "-0.04, 0.0"})
    void litres_areWholeFromTen(double value, String text) {
        assertEquals(text, Figures.litres(value));
    }

    @Test
    void count_ofOne_isSingular() {
        assertEquals("1 hour", Figures.count(1.2, "hour"));
        assertEquals("2 hours", Figures.count(1.6, "hour"));
        assertEquals("0 hours", Figures.count(0.0, "hour"));
    }

    @Test
    void day_followsTheClockOfTheSite() {
        Days days = Days.of(DUBLIN, Instant.parse("2026-06-01T00:00:00Z"), Instant.parse("2026-09-08T23:00:00Z"));

        assertEquals(LocalDate.of(2026, 6, 2), days.date(Instant.parse("2026-06-01T23:30:00Z")));
        assertEquals(LocalDate.of(2026, 9, 8), days.lastDay(Instant.parse("2026-09-08T23:00:00Z")));
    }

    @Test
    void dates_areInTheWordsOfThePage() {
        Days days = Days.of(DUBLIN, Instant.parse("2026-06-01T00:00:00Z"), Instant.parse("2026-10-01T00:00:00Z"));
        LocalDate date = LocalDate.of(2026, 9, 7);

        assertEquals("7 Sep", days.brief(date));
        assertEquals("Mon 7 Sep", days.table(date));
        assertEquals("Monday 7 September", days.text(date));
        assertEquals("7 Sep 2026", Days.full(date));
    }

    @Test
    void dates_ofALongRun_carryTheirYear() {
        Days days = Days.of(DUBLIN, Instant.parse("2026-06-01T00:00:00Z"), Instant.parse("2027-06-01T00:00:00Z"));

        assertEquals("7 Sep '26", days.brief(LocalDate.of(2026, 9, 7)));
        assertEquals("Monday 7 September 2026", days.text(LocalDate.of(2026, 9, 7)));
    }

    @Test
    void ascii_keepsWhatATerminalCanShow() {
        assertEquals(
                "Cafe, -2.0 C, 3 m2, it's ?", Ascii.of("Caf\u00e9, \u22122.0 \u00b0C, 3 m\u00b2, it\u2019s \u6c34"));
        assertEquals("bell? escape?[31m", Ascii.of("bell\u0007 escape\u001b[31m"));
    }

    @Property
    void wrappedText_fitsAndLosesNothing(@ForAll @Size(max = 60) List<Short> lengths) {
        StringBuilder text = new StringBuilder();
        lengths.forEach(length ->
                text.append("x".repeat(1 + Math.abs(length % 100))).append(' '));

        List<String> lines = Ascii.wrap(text.toString());

        assertTrue(lines.stream().allMatch(line -> line.length() <= Ascii.COLUMNS));
        assertEquals(text.toString().replace(" ", ""), String.join("", lines).replace(" ", ""));
    }

    @ParameterizedTest
    @EnumSource(Warning.Kind.class)
    void everyWarning_isASentenceAboutItsSubject(Warning.Kind kind) {
        Warning warning = new Warning(kind, "store north", Invented.hour(1), Invented.hour(2), 3.0);

        String text = WarningText.of(warning, "north wall");

        assertTrue(text.matches("North wall: .*3.*\\."), text);
    }

    @Test
    void warningsOfOneKindAboutOneThing_areToldAsOne() {
        Warning first = new Warning(Warning.Kind.FROST_AIR, "north", Invented.hour(20), Invented.hour(30), -1.5);
        Warning second = new Warning(Warning.Kind.FROST_AIR, "north", Invented.hour(44), Invented.hour(54), -0.5);
        Warning other = new Warning(Warning.Kind.TOO_COLD, "north", Invented.hour(0), Invented.hour(60), 60.0);

        List<WarningGroup> groups = WarningGroup.of(List.of(first, other, second));

        assertEquals(2, groups.size());
        assertEquals(
                new WarningGroup(
                        new Warning(Warning.Kind.FROST_AIR, "north", Invented.hour(20), Invented.hour(54), -1.5), 2),
                groups.get(0));
    }

    @Test
    void coatsNotReadyOnOneWall_areToldOneByOne() {
        Warning first = new Warning(Warning.Kind.NOT_READY, "north", Invented.UNTIL, Invented.UNTIL, 1.0);
        Warning second = new Warning(Warning.Kind.NOT_READY, "north", Invented.UNTIL, Invented.UNTIL, 2.0);

        assertEquals(2, WarningGroup.of(List.of(first, second)).size());
    }

    @Property
    void anyAccountThatCloses_isShownClosed(
            @ForAll @Size(14) List<@DoubleRange(min = -60.0, max = 300.0) Double> kg,
            @ForAll @DoubleRange(min = 3.0, max = 30.0) double bucketLitres) {
        double laid = Math.abs(kg.get(0));
        double in = laid + Math.abs(kg.get(1)) + Math.abs(kg.get(2)) + kg.get(3);
        double rest = in - kg.get(4) - kg.get(5) - kg.get(6) - kg.get(7);
        WaterAccount account = new WaterAccount(
                laid,
                Math.abs(kg.get(1)),
                Math.abs(kg.get(2)),
                kg.get(3),
                0.0,
                0.0,
                0.0,
                kg.get(4),
                kg.get(5),
                0.0,
                kg.get(6),
                0.0,
                kg.get(7),
                rest,
                0.0,
                0.0,
                0.0,
                0.0);

        Account shown = Account.of(account, "account", bucketLitres);

        assertEquals(shown.totalIn().litres(), shown.totalNow().litres());
        assertEquals(shown.totalIn().buckets(), shown.totalNow().buckets());
        assertEquals(sum(shown.putIn()), sum(shown.whereNow()), 1e-9); // rounding of the sum of printed decimals
        assertTrue(shown.putIn().stream().noneMatch(row -> row.litres().startsWith("\u2212")));
    }

    private static double sum(List<Account.Row> rows) {
        return rows.stream()
                .mapToDouble(row -> Double.parseDouble(row.litres().replace(",", "")))
                .sum();
    }
}
