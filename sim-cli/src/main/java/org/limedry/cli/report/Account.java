package org.limedry.cli.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.limedry.cli.chart.Litres;
import org.limedry.cli.chart.ShownAccount;
import org.limedry.cli.chart.ShownAccount.ShownTerm;
import org.limedry.cli.chart.WaterAccountChart;
import org.limedry.cli.page.Figures;
import org.limedry.cli.page.Names;
import org.limedry.simulation.WaterAccount;

/**
 * A water account as chart, table and console print it, all from the same rounded figures.
 *
 * @param chart the account as a chart
 * @param shown its figures as printed
 * @param bucketLitres size of a bucket, litres
 */
record Account(WaterAccountChart chart, ShownAccount shown, double bucketLitres) {
    /**
     * One line of the table.
     *
     * @param words what it is
     * @param litres litres as printed
     * @param buckets buckets as printed
     */
    record Row(String words, String litres, String buckets) {}

    /**
     * Returns the account of the whole site or of one room.
     *
     * @param id tells its chart from the others on the page
     */
    static Account of(WaterAccount account, String id, double bucketLitres) {
        WaterAccountChart untitled = chart(account, id, "Water account");
        ShownAccount shown = untitled.shown();
        return new Account(chart(account, id, title(shown)), shown, bucketLitres);
    }

    private static WaterAccountChart chart(WaterAccount account, String id, String title) {
        double condensed = Math.max(0.0, account.condensedKg());
        List<WaterAccountChart.Part> ways = List.of(
                new WaterAccountChart.Part("sucked back by plaster and walls", Math.max(0.0, account.suckedBackKg())),
                new WaterAccountChart.Part("ran off", Math.max(0.0, account.runOffKg())));
        return new WaterAccountChart(
                id,
                title,
                AccountTerm.of(account, AccountTerm.Side.PUT_IN),
                AccountTerm.of(account, AccountTerm.Side.GONE),
                AccountTerm.of(account, AccountTerm.Side.STILL_HERE),
                new WaterAccountChart.OnTheWay(condensed, ways, "dried off again or still standing"));
    }

    private static String title(ShownAccount shown) {
        return "Of %s litres put in, %s are gone and %s are still here"
                .formatted(
                        Litres.text(shown.totalIn()),
                        Litres.text(shown.totalGone()),
                        Litres.text(shown.totalStillHere()));
    }

    /** Returns what was put in, for the table. */
    List<Row> putIn() {
        return rows(shown.putIn(), shown.totalIn());
    }

    /** Returns what is gone and what is still here, for the table. */
    List<Row> whereNow() {
        return rows(
                Stream.concat(shown.gone().stream(), shown.stillHere().stream()).toList(), shown.totalNow());
    }

    /** Returns the total of what was put in. */
    Row totalIn() {
        return total("Put in", shown.totalIn());
    }

    /** Returns the total of what is gone or still here. */
    Row totalNow() {
        return total("Gone or still here", shown.totalNow());
    }

    /** Returns what of the water that went round was sucked back, for the table. */
    Row suckedBackRow() {
        return total("of it sucked back by plaster and walls", suckedBack());
    }

    /** Returns the total of what went round on the way. */
    Row totalOnTheWay() {
        return total("Condensed on the way (not in the sum)", shown.totalOnTheWay());
    }

    /** Returns the size of a bucket: "10". */
    String bucket() {
        return Figures.plain(bucketLitres);
    }

    /** Returns the litres shown for a term that is gone or still here; 0 if it stands on the other side. */
    BigDecimal litres(AccountTerm term) {
        return Stream.concat(shown.gone().stream(), shown.stillHere().stream())
                .filter(line -> line.name().equals(term.words()))
                .map(ShownTerm::litres)
                .findFirst()
                .orElse(BigDecimal.ZERO);
    }

    /** Returns the litres shown as laid in the coats. */
    BigDecimal laid() {
        return shown.putIn().stream()
                .filter(line -> line.name().equals(AccountTerm.LAID.words()))
                .map(ShownTerm::litres)
                .findFirst()
                .orElse(BigDecimal.ZERO);
    }

    /** Returns the litres shown as sucked back. */
    BigDecimal suckedBack() {
        return shown.onTheWay().stream()
                .filter(line -> line.name().startsWith("sucked back"))
                .map(ShownTerm::litres)
                .findFirst()
                .orElse(BigDecimal.ZERO);
    }

    private Row total(String words, BigDecimal litres) {
        return new Row(words, Litres.text(litres), Litres.text(buckets(litres)));
    }

    private BigDecimal buckets(BigDecimal litres) {
        return litres.divide(BigDecimal.valueOf(bucketLitres), 1, RoundingMode.HALF_UP);
    }

    /** Buckets add up like litres do. Terms that round to nothing are left out. */
    private List<Row> rows(List<ShownTerm> terms, BigDecimal total) {
        List<BigDecimal> buckets = Litres.shares(
                terms.stream()
                        .map(term -> term.litres().doubleValue() / bucketLitres)
                        .toList(),
                buckets(total));
        return IntStream.range(0, terms.size())
                .filter(i -> terms.get(i).litres().signum() > 0)
                .mapToObj(i -> new Row(
                        Names.capital(terms.get(i).name()),
                        Litres.text(terms.get(i).litres()),
                        Litres.text(buckets.get(i))))
                .toList();
    }
}
