package org.limedry.cli.verify;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import org.limedry.proof.figure.Expected;

/** Numbers as they are shown: few digits, so that no two machines show another one. */
final class Numbers {
    private static final double SMALL = 1.0e-3;
    private static final double LARGE = 1.0e6;
    private static final int DIGITS = 5;
    private static final int FEW_DIGITS = 2;

    private Numbers() {}

    /** Returns a number with five digits. */
    static String of(double value) {
        return of(value, DIGITS);
    }

    /** Returns a difference with two digits. */
    static String difference(double value) {
        return of(value, FEW_DIGITS);
    }

    /** Returns a share of what is accepted, in hundredths. */
    static String share(double value) {
        if (Double.isNaN(value)) {
            return "none";
        }
        return Double.isInfinite(value) ? "beyond" : String.format(Locale.ROOT, "%.2f", value);
    }

    /** Returns what is accepted beside the expected number. */
    static String accepted(Expected expected) {
        if (Double.isInfinite(expected.above())) {
            return "or more";
        }
        return Double.isInfinite(expected.below()) ? "or less" : "+-" + of(expected.above(), FEW_DIGITS);
    }

    private static String of(double value, int digits) {
        if (!Double.isFinite(value)) {
            return "none";
        }
        double size = Math.abs(value);
        if (size > 0.0 && (size < SMALL || size >= LARGE)) {
            return String.format(Locale.ROOT, "%." + (digits - 1) + "e", value);
        }
        return new BigDecimal(value)
                .round(new MathContext(digits))
                .stripTrailingZeros()
                .toPlainString();
    }
}
