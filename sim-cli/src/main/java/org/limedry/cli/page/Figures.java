package org.limedry.cli.page;

import java.util.Locale;
import org.limedry.cli.chart.Litres;

/** Numbers in the words of the page. */
public final class Figures {
    private static final char MINUS = '\u2212';

    private Figures() {}

    /** Returns the nearest whole number: "1,234". */
    public static String whole(double value) {
        return whole(Math.round(value));
    }

    /** Returns a whole number: "1,234". */
    public static String whole(long value) {
        return signed(String.format(Locale.ROOT, "%,d", value));
    }

    /** Returns a number with one decimal: "23.5". */
    public static String oneDecimal(double value) {
        return signed(String.format(Locale.ROOT, "%,.1f", value + 0.0));
    }

    /** Returns a number without needless decimals, to three figures: "0.6", "11", "2.25". */
    public static String plain(double value) {
        if (value == Math.rint(value) || Math.abs(value) >= 1000.0) {
            return whole(value);
        }
        String text = String.format(Locale.ROOT, "%.3g", value);
        return signed(text.contains(".") && !text.contains("e") ? text.replaceAll("\\.?0+$", "") : text);
    }

    /** Returns litres for running text, with the decimals of a total. */
    public static String litres(double litres) {
        return Litres.text(Litres.shown(litres));
    }

    /** Returns "1 hour" or "214 hours". */
    public static String count(double value, String one) {
        String number = whole(value);
        return "1".equals(number) ? number + " " + one : number + " " + one + "s";
    }

    /** Returns a range with its likely value: "0.5 to 2, likely 1 times". */
    public static String range(double low, double high, double likely, String unit) {
        return "%s to %s, likely %s %s"
                .formatted(plain(low), plain(high), plain(likely), unit)
                .strip();
    }

    private static String signed(String text) {
        if (text.matches("-0(\\.0*)?")) {
            return text.substring(1);
        }
        return text.startsWith("-") ? MINUS + text.substring(1) : text;
    }
}
