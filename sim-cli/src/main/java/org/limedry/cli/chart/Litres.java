package org.limedry.cli.chart;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.limedry.units.Check;

/** Litres as they are printed: rounded so that the parts shown add up to the total shown. */
public final class Litres {
    private static final double ONE_DECIMAL_BELOW_LITRES = 10;

    private Litres() {}

    /** Returns a total as it is shown: whole litres, or one decimal below 10 litres. */
    public static BigDecimal shown(double litres) {
        return shown(litres, decimals(litres));
    }

    /** Returns a figure as it is shown, with the given decimals. */
    public static BigDecimal shown(double litres, int decimals) {
        Check.finite(litres, "litres", "litres");
        return BigDecimal.valueOf(litres).setScale(decimals, RoundingMode.HALF_UP);
    }

    /** Returns how many decimals a total is shown with. */
    public static int decimals(double totalLitres) {
        return Math.abs(totalLitres) < ONE_DECIMAL_BELOW_LITRES ? 1 : 0;
    }

    /**
     * Rounds parts so that they add up to the total shown, by largest remainder: all are rounded down, then those that
     * lost most get one unit each.
     *
     * @param parts the parts, litres; each 0 or above
     * @param total the total shown; its decimals are used for the parts
     * @return the parts shown, in order; they add up to {@code total}, or are all 0 if the parts are
     * @throws IllegalArgumentException if a part is NaN, infinite or below 0
     */
    public static List<BigDecimal> shares(List<Double> parts, BigDecimal total) {
        parts.forEach(part -> Check.nonNegative(part, "parts", "litres"));
        double sum = parts.stream().mapToDouble(Double::doubleValue).sum();
        double units = total.movePointRight(total.scale()).doubleValue();
        double unitsPerLitre = sum > 0 ? units / sum : 0;
        List<Double> exact = parts.stream().map(part -> part * unitsPerLitre).toList();
        List<Long> whole =
                exact.stream().map(part -> (long) Math.floor(part)).collect(Collectors.toCollection(ArrayList::new));
        long missing = sum > 0
                ? Math.round(units) - whole.stream().mapToLong(Long::longValue).sum()
                : 0;
        IntStream.range(0, parts.size())
                .boxed()
                .sorted(Comparator.comparingDouble((Integer i) -> whole.get(i) - exact.get(i)))
                .limit(missing)
                .forEach(i -> whole.set(i, whole.get(i) + 1));
        return whole.stream()
                .map(part -> BigDecimal.valueOf(part, total.scale()))
                .toList();
    }

    /** Returns the sum of parts shown, with the decimals of {@code like}. */
    static BigDecimal sum(List<BigDecimal> parts, BigDecimal like) {
        return parts.stream().reduce(BigDecimal.ZERO.setScale(like.scale()), BigDecimal::add);
    }

    /** Returns the figure as text: thousands with a comma, a true minus sign. */
    public static String text(BigDecimal litres) {
        String digits = String.format(Locale.ROOT, "%,." + litres.scale() + "f", litres.abs());
        return litres.signum() < 0 ? "\u2212" + digits : digits;
    }
}
