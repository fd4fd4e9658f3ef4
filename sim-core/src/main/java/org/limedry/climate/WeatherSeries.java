package org.limedry.climate;

import java.time.Instant;
import org.limedry.air.MagnusForm;
import org.limedry.units.Check;

/**
 * Weather over one run: temperature, relative humidity and wind each linear between hours, vapour pressure {@code phi
 * p_sat(t)} over water (WMO-No. 8 Magnus form), also below 0 C.
 *
 * <p>A step is given the straight lines with the same mean and the same first moment as the true course: {@code line =
 * m + b s}, s from -1 to 1 over the step, {@code m = mean(f)}, {@code b = 3 mean(f s)} (least-squares line, Legendre
 * degree 1). Temperature and wind, linear between hours, are projected exactly; the vapour pressure by three Gauss points
 * in each hour, exact to degree 5. A wind line that would fall below zero is tilted less, which keeps its mean only.
 */
public final class WeatherSeries implements Outdoors {
    /** Nodes and weights of Gauss and Legendre's rule of three points on [-1, 1]. */
    private static final double[] NODES = {-Math.sqrt(0.6), 0.0, Math.sqrt(0.6)};

    private static final double[] WEIGHTS = {5.0 / 9.0, 8.0 / 9.0, 5.0 / 9.0};

    private final HourAxis axis;
    private final Hours hours;

    WeatherSeries(HourAxis axis, Hours hours) {
        this.axis = axis;
        this.hours = hours;
    }

    /** Returns the temperature at an instant of the run, C. */
    public double celsius(Instant instant) {
        return at(hours.celsius, instant);
    }

    /** Returns the relative humidity over water at an instant of the run, fraction. */
    public double relativeHumidity(Instant instant) {
        return at(hours.relativeHumidity, instant);
    }

    /** Returns the wind at the building at an instant of the run, m/s. */
    public double windMPerS(Instant instant) {
        return at(hours.windMPerS, instant);
    }

    private double at(double[] column, Instant instant) {
        double x = axis.hoursTo(instant);
        Check.inClosed(x, 0.0, axis.count() - 1.0, "instant", "h from the start of the weather");
        int k = Math.min((int) x, axis.count() - 2);
        return between(column, k, x - k);
    }

    /**
     * Returns this weather with what happened before an instant in place of its own hours.
     *
     * @param end first instant of its own; hours before it are of {@code earlier}
     * @param earlier weather over the same run
     */
    public WeatherSeries after(Instant end, WeatherSeries earlier) {
        Check.that(earlier.axis.equals(axis), "earlier", "over the same hours", earlier.axis);
        Hours mixed = hours.slice(0, hours.size());
        for (int k = 0; k < axis.count() && axis.instant(k).isBefore(end); k++) {
            mixed.copyHour(k, earlier.hours, k);
        }
        return new WeatherSeries(axis, mixed);
    }

    /**
     * Returns this weather with readings from outdoors in place of its own temperature, humidity and, if read, wind. Holes of
     * up to {@link WeatherRecord#LONGEST_BRIDGE_HOURS} hours are bridged; in longer ones its own hours stay.
     */
    public WeatherSeries withReadings(Readings outdoors) {
        Hours read = Hours.missing(hours.size());
        for (LoggedReading hour : outdoors.hourly()) {
            long index = HourAxis.hourOf(hour.at()) - axis.firstHour();
            if (index >= 0 && index < axis.count()) {
                int k = Math.toIntExact(index);
                hour.celsius().ifPresent(value -> read.celsius[k] = value);
                hour.relativeHumidity().ifPresent(value -> read.relativeHumidity[k] = value);
                hour.windMPerS().ifPresent(value -> read.windMPerS[k] = value);
            }
        }
        read.bridge();
        Hours mixed = hours.slice(0, hours.size());
        mixed.copyKnown(read);
        return new WeatherSeries(axis, mixed);
    }

    @Override
    public Piece over(Instant from, Instant until) {
        double start = axis.hoursTo(from);
        double end = axis.hoursTo(until);
        Check.that(start >= 0.0 && start < end && end <= axis.count() - 1.0, "step", "within the weather", from);
        double celsiusMean = 0.0;
        double celsiusTilt = 0.0;
        double vapourMean = 0.0;
        double vapourTilt = 0.0;
        double windMean = 0.0;
        double windTilt = 0.0;
        for (int k = (int) start; k < end; k++) {
            double low = Math.max(start, k);
            double half = 0.5 * (Math.min(end, k + 1.0) - low);
            for (int g = 0; g < NODES.length; g++) {
                double x = low + half * (1.0 + NODES[g]);
                double weight = WEIGHTS[g] * half / (end - start);
                double tilt = 3.0 * weight * (2.0 * x - start - end) / (end - start);
                double celsius = between(hours.celsius, k, x - k);
                double vapour = between(hours.relativeHumidity, k, x - k) * MagnusForm.WMO_WATER.pressurePa(celsius);
                double wind = between(hours.windMPerS, k, x - k);
                celsiusMean += weight * celsius;
                celsiusTilt += tilt * celsius;
                vapourMean += weight * vapour;
                vapourTilt += tilt * vapour;
                windMean += weight * wind;
                windTilt += tilt * wind;
            }
        }
        windTilt = Math.max(-windMean, Math.min(windMean, windTilt));
        return new Piece(
                celsiusMean - celsiusTilt,
                celsiusMean + celsiusTilt,
                vapourMean - vapourTilt,
                vapourMean + vapourTilt,
                windMean - windTilt,
                windMean + windTilt);
    }

    private static double between(double[] column, int k, double share) {
        return column[k] + share * (column[k + 1] - column[k]);
    }
}
