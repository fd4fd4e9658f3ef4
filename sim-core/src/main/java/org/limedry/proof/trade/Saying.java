package org.limedry.proof.trade;

import java.util.List;
import java.util.function.DoubleSupplier;
import org.limedry.proof.figure.Claim;
import org.limedry.proof.figure.Expected;
import org.limedry.proof.figure.Figure;
import org.limedry.proof.figure.Proof;
import org.limedry.proof.figure.Source;
import org.limedry.proof.figure.Standing;

/**
 * A saying of the trade.
 *
 * @param name its number in the list of trade checks
 * @param setUp what is said
 * @param rows the scenarios by which it is tried
 */
record Saying(String name, String setUp, List<Row> rows) implements Proof {
    /**
     * One scenario.
     *
     * @param scenario what is run and what is looked at
     * @param unit unit of the figures
     * @param source where the band comes from
     * @param expected the band
     * @param found what the model finds; run when asked
     * @param standing what is known beforehand
     */
    record Row(
            String scenario, String unit, Source source, Expected expected, DoubleSupplier found, Standing standing) {
        Row(String scenario, String unit, Source source, Expected expected, DoubleSupplier found) {
            this(scenario, unit, source, expected, found, new Standing.Sound());
        }

        /** Returns the same, known to fall short. */
        Row shortOf(String reason) {
            return new Row(scenario, unit, source, expected, found, new Standing.KnownShort(reason));
        }
    }

    Saying {
        rows = List.copyOf(rows);
    }

    Saying(String name, String setUp, Row... rows) {
        this(name, setUp, List.of(rows));
    }

    @Override
    public Kind kind() {
        return Kind.TRADE;
    }

    @Override
    public String source() {
        return rows.stream()
                .map(row -> row.source().words())
                .distinct()
                .reduce((a, b) -> a + "; " + b)
                .orElse("");
    }

    @Override
    public String bands() {
        return "the band of the saying, wide on purpose";
    }

    @Override
    public List<Figure> figures() {
        return rows.stream()
                .map(row -> new Figure(
                        name,
                        "",
                        new Claim(row.scenario(), row.unit(), row.source(), row.expected(), bands(), row.standing()),
                        row.found().getAsDouble()))
                .toList();
    }
}
