package org.limedry.cli.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.limedry.simulation.WaterAccount;

/** Console, page, data file and outcome tell the same story. */
final class AgreementTest {
    static List<Findings> many() {
        Findings one = Invented.oneRoom();
        return List.of(one, Varied.twoRooms(), Varied.account(one, dryingWalls()), Varied.account(one, little()));
    }

    /** Walls that give up water, and damp air coming in: both stand on the other side. */
    private static WaterAccount dryingWalls() {
        return new WaterAccount(
                99.4, 0.0, 3.3, 0.0, 12.4, 1.3, 0.6, -7.5, 0.0, -0.9, 70.2, 4.5, 60.9, -11.7, 0.3, 0.0, 41.2, 28.3);
    }

    /** Below ten litres, where one decimal is shown. */
    private static WaterAccount little() {
        return new WaterAccount(
                6.26, 0.05, 0.0, 0.0, 0.0, 0.14, 0.08, 3.91, 0.0, 0.02, 0.0, 0.0, 2.13, 0.24, 0.06, 0.01, 0.31, 0.12);
    }

    @ParameterizedTest
    @MethodSource("many")
    void dates_areTheSameOnConsolePageAndFile(Findings findings) throws IOException {
        String page = HtmlPage.of(findings, PageModels.of(findings), new Pictures(findings));
        String console = String.join("\n", ConsoleAnswer.lines(findings, "out"));
        JsonNode coats = new ObjectMapper()
                .readTree(SummaryJson.of(findings, PageModels.of(findings).situation()))
                .get("coats");

        assertEquals(findings.coats().size(), coats.size());
        for (Coat coat : findings.coats()) {
            JsonNode likely = coats.get(coat.index()).at("/ready/likely");
            String cell = new ReadyText(findings).page(coat).likely();
            assertEquals(coat.isUnready(), likely.isNull());
            if (!likely.isNull()) {
                LocalDate date = LocalDate.parse(likely.asText());
                assertEquals(findings.days().date(coat.result().ready().orElseThrow()), date);
                assertEquals(findings.days().table(date), cell);
                assertTrue(console.contains(findings.days().brief(date)), console);
            }
            assertTrue(page.contains("<b class=\"likely\">" + cell + "</b>"), cell);
        }
    }

    @ParameterizedTest
    @MethodSource("many")
    void litres_areTheSameOnConsolePageAndChart(Findings findings) {
        Account account = PageModels.of(findings).account();
        String page = HtmlPage.of(findings, PageModels.of(findings), new Pictures(findings));
        String console = String.join(" ", ConsoleAnswer.lines(findings, "out")).replaceAll("\\s+", " ");

        String total = account.totalIn().litres();
        assertTrue(console.contains("Water, litres: " + total + " put in"), console);
        assertTrue(page.contains("<figcaption>Of " + total + " litres put in, "), total);
        assertEquals(total, account.totalNow().litres());
        double exact = findings.outcome().account().grossInKg();
        assertTrue(number(total).doubleValue() > exact - 0.5, () -> exact + " against " + total);
    }

    @ParameterizedTest
    @MethodSource("many")
    void partsOnTheConsole_addUpToWhatWasPutIn(Findings findings) {
        String console = String.join(" ", ConsoleAnswer.lines(findings, "out")).replaceAll("\\s+", " ");
        Matcher sum = Pattern.compile("([0-9.,]+) put in \\([^)]*\\) = (.*?) On the way")
                .matcher(console);
        assertTrue(sum.find(), console);

        BigDecimal parts = Pattern.compile(" \\+ ")
                .splitAsStream(sum.group(2))
                .map(part -> number(part.substring(0, part.indexOf(' '))))
                .reduce(BigDecimal.ZERO, BigDecimal::add);

        assertEquals(0, number(sum.group(1)).compareTo(parts), sum::group);
    }

    @ParameterizedTest
    @MethodSource("many")
    void columnsOfTheTable_addUp(Findings findings) {
        Account account = PageModels.of(findings).account();

        assertEquals(number(account.totalIn().litres()), litres(account.putIn()));
        assertEquals(number(account.totalNow().litres()), litres(account.whereNow()));
        assertEquals(number(account.totalIn().buckets()), buckets(account.putIn()));
        assertEquals(number(account.totalNow().buckets()), buckets(account.whereNow()));
    }

    @Test
    void negativeTerm_standsOnTheOtherSideUnderItsOtherName() {
        Account account = Account.of(dryingWalls(), "account", 10.0);

        // EXACT: 116.4 put in by name, and 7.5 + 0.9 + 11.7 turned round, make 136.5.
        assertEquals("137", account.totalIn().litres());
        List<String> in = account.putIn().stream().map(Account.Row::words).toList();
        assertTrue(in.containsAll(
                List.of("Given up by the old walls", "Brought in by outside air", "In through the walls")));
        assertTrue(account.whereNow().stream().noneMatch(row -> row.words().contains("old walls")));
    }

    @Test
    void accountThatDoesNotClose_isSeenNotToClose() {
        WaterAccount a = Invented.account();
        WaterAccount open = new WaterAccount(
                a.laidKg(),
                a.wettingKg(),
                a.peopleKg(),
                a.groundKg(),
                0.0,
                a.chemicalReleasedKg(),
                a.chemicalBoundKg(),
                a.outByAirKg() - 20.0,
                0.0,
                a.throughWallsKg(),
                a.dehumidifierKg(),
                a.runOffKg(),
                a.changeInCoatsKg(),
                a.changeInWallsKg(),
                a.changeInAirKg(),
                a.changeInFilmKg(),
                a.condensedKg(),
                a.suckedBackKg());

        Account account = Account.of(open, "account", 10.0);
        PageModel.RunPart run =
                PageModels.of(Varied.account(Invented.oneRoom(), open)).run();

        assertEquals("235", account.totalIn().litres());
        assertEquals("215", account.totalNow().litres());
        assertEquals("The account is off by 20 litres.", run.closure());
    }

    private static BigDecimal litres(List<Account.Row> rows) {
        return rows.stream().map(row -> number(row.litres())).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static BigDecimal buckets(List<Account.Row> rows) {
        return rows.stream().map(row -> number(row.buckets())).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static BigDecimal number(String text) {
        return new BigDecimal(text.replace(",", ""));
    }
}
