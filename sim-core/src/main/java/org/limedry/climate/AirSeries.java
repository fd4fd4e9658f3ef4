package org.limedry.climate;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.limedry.air.SaturationCurve;
import org.limedry.units.Check;
import org.limedry.units.Units;

/**
 * Air told by rows of temperature and relative humidity, both linear between rows.
 *
 * <p>A step that does not cross a row gets temperature and humidity of its two ends as they are; the vapour pressure
 * between them, which is not quite straight, is taken as straight. Has no wind.
 */
public final class AirSeries implements Outdoors {
    private static final double NANOS_PER_HOUR = 1.0e9 * Units.SECONDS_PER_HOUR;

    /** Three rows closer to a straight line than this count as one, in C and as a fraction of humidity. */
    private static final double STRAIGHT = 1.0e-12;

    private final Instant start;
    private final SaturationCurve saturation;
    private final double[] hour;
    private final double[] celsius;
    private final double[] relativeHumidity;

    /**
     * One row.
     *
     * @param hour hours since the start
     * @param celsius temperature, C
     * @param relativeHumidity fraction; at least 0
     */
    public record Row(double hour, double celsius, double relativeHumidity) {
        public Row {
            Check.finite(hour, "hour", "h");
            Check.finite(celsius, "celsius", "C");
            Check.nonNegative(relativeHumidity, "relativeHumidity", "");
        }
    }

    /**
     * Takes the rows.
     *
     * @param start hour 0
     * @param rows at least one, their hours rising; before the first and after the last the air stays as there
     * @param saturation what relative humidity is counted by
     */
    public AirSeries(Instant start, List<Row> rows, SaturationCurve saturation) {
        Check.notEmpty(rows, "rows");
        this.start = start;
        this.saturation = saturation;
        hour = rows.stream().mapToDouble(Row::hour).toArray();
        celsius = rows.stream().mapToDouble(Row::celsius).toArray();
        relativeHumidity = rows.stream().mapToDouble(Row::relativeHumidity).toArray();
        for (int k = 1; k < hour.length; k++) {
            Check.that(hour[k] > hour[k - 1], "hour", "rising from row to row", hour[k]);
        }
    }

    /** Returns air that never changes. */
    public static AirSeries steady(double celsius, double relativeHumidity, SaturationCurve saturation) {
        return new AirSeries(Instant.EPOCH, List.of(new Row(0.0, celsius, relativeHumidity)), saturation);
    }

    /** Returns the instants of the rows at which the course bends: a step must not cross them. */
    public List<Instant> bends() {
        List<Instant> bends = new ArrayList<>();
        for (int k = 1; k < hour.length - 1; k++) {
            if (bends(celsius, k) || bends(relativeHumidity, k)) {
                bends.add(instant(hour[k]));
            }
        }
        return bends;
    }

    /** Returns the temperature at an instant, C. */
    public double celsius(Instant instant) {
        return at(celsius, hours(instant));
    }

    /** Returns the relative humidity at an instant, fraction. */
    public double relativeHumidity(Instant instant) {
        return at(relativeHumidity, hours(instant));
    }

    @Override
    public Piece over(Instant from, Instant until) {
        double startCelsius = celsius(from);
        double endCelsius = celsius(until);
        return new Piece(
                startCelsius,
                endCelsius,
                relativeHumidity(from) * saturation.pressurePa(startCelsius),
                relativeHumidity(until) * saturation.pressurePa(endCelsius),
                0.0,
                0.0);
    }

    private boolean bends(double[] values, int k) {
        double share = (hour[k] - hour[k - 1]) / (hour[k + 1] - hour[k - 1]);
        double straight = values[k - 1] + share * (values[k + 1] - values[k - 1]);
        return Math.abs(values[k] - straight) > STRAIGHT;
    }

    private double at(double[] values, double hours) {
        int found = Arrays.binarySearch(hour, hours);
        if (found >= 0) {
            return values[found];
        }
        int next = -found - 1;
        if (next == 0 || next == hour.length) {
            return values[Math.max(0, next - 1)];
        }
        double share = (hours - hour[next - 1]) / (hour[next] - hour[next - 1]);
        return values[next - 1] + share * (values[next] - values[next - 1]);
    }

    private Instant instant(double atHour) {
        return start.plusNanos(Math.round(atHour * NANOS_PER_HOUR));
    }

    private double hours(Instant instant) {
        return Duration.between(start, instant).toNanos() / NANOS_PER_HOUR;
    }
}
