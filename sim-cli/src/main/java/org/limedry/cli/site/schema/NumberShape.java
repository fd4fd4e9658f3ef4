package org.limedry.cli.site.schema;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.DoubleStream;

/**
 * A number between two bounds, both allowed.
 *
 * @param low least value
 * @param high greatest value
 * @param whole whether it must be a whole number
 */
public record NumberShape(double low, double high, boolean whole) implements Shape<Double> {
    private static final Pattern PLAIN = Pattern.compile("[-+]?(0|[1-9]\\d{0,17})(\\.\\d{1,18})?([eE][-+]?\\d{1,2})?");
    private static final Pattern WITH_UNIT =
            Pattern.compile("([-+]?\\d{1,9}([.,]\\d{1,9})?)\\s*[\\p{L}%\\u00b0\\u00b2\\u00b3/]{0,10}");
    /** What people mix up: a digit too many, metres or litres for millimetres, fractions for percent. */
    private static final double[] SLIPS = {0.1, 0.001, 1000.0, 100.0, 0.01};

    /** Returns a number between two bounds. */
    public static NumberShape between(double low, double high) {
        return new NumberShape(low, high, false);
    }

    /** Returns a whole number between two bounds. */
    public static Shape<Integer> count(int low, int high) {
        return new NumberShape(low, high, true).as((value, place) -> Optional.of((int) Math.round(value)));
    }

    @Override
    public Optional<Double> read(Node node, Place place) {
        if (!(node instanceof Node.Scalar scalar) || !isPlain(scalar)) {
            place.problem(node.words(), "must be a plain number" + unitHint(node));
            return Optional.empty();
        }
        double value = Double.parseDouble(scalar.text());
        if (!(value >= low && value <= high)) {
            place.problem(scalar.text(), rule() + slipHint(value));
            return Optional.empty();
        }
        if (whole && value != Math.rint(value)) {
            place.problem(scalar.text(), "must be a whole number");
            return Optional.empty();
        }
        return Optional.of(value);
    }

    private static boolean isPlain(Node.Scalar scalar) {
        return scalar.kind() == Node.Kind.NUMBER && PLAIN.matcher(scalar.text()).matches();
    }

    private String rule() {
        return "must be " + text(low) + " to " + text(high);
    }

    private String unitHint(Node node) {
        if (!(node instanceof Node.Scalar scalar)) {
            return "";
        }
        if (PLAIN.matcher(scalar.text()).matches()) {
            return scalar.kind() == Node.Kind.TEXT ? " without quotes" : "";
        }
        Matcher matcher = WITH_UNIT.matcher(scalar.text().strip());
        return matcher.matches() ? " without unit or comma (" + matcher.group(1).replace(',', '.') + " meant?)" : "";
    }

    private String slipHint(double value) {
        return DoubleStream.of(SLIPS)
                .map(factor -> value * factor)
                .filter(meant -> value > 0.0 && meant >= low && meant <= high)
                .mapToObj(meant -> " (" + text(meant) + " meant?)")
                .findFirst()
                .orElse("");
    }

    /** Writes a bound as a person would: no exponent, no rounding dust. */
    static String text(double value) {
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(6));
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    @Override
    public ObjectNode jsonSchema() {
        ObjectNode schema = Json.ofType(whole ? "integer" : "number");
        schema.put("minimum", low);
        schema.put("maximum", high);
        return schema;
    }

    @Override
    public String words() {
        return (whole ? "whole number, " : "number, ") + text(low) + " to " + text(high);
    }
}
