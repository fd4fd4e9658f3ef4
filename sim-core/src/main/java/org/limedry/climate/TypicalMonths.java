package org.limedry.climate;

import java.time.Instant;
import java.time.Month;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.limedry.air.MagnusForm;
import org.limedry.reference.ReferenceTable;
import org.limedry.reference.Station;
import org.limedry.units.Check;

/**
 * A year of hours made up from twelve monthly means, for a place without an hourly record.
 *
 * <p>Temperature, vapour pressure and wind run in straight lines between the middles of the months, through knots chosen
 * so that each month keeps its mean; temperature swings by a cosine over the day, vapour pressure does not. Does not hold
 * the spells of some days in which real weather comes: dry spells, frosts and storms are levelled out, so extremes (risk
 * nights, the best drying days) are understated.
 *
 * <p>The daily swing is a share of the month's whole range, {@code 0.22 - 0.10 cos(2 pi (month - 1/2) / 12)}. COMPUTED
 * from the first daily harmonic of Mullingar and Valentia 2017 and JFK 2013: 0.09 to 0.13 in December and January, 0.24 to
 * 0.36 from April to August, all north of the equator.
 */
public final class TypicalMonths {
    /** Hour of the day at which it is warmest by the sun, h; add 1 for each 15 degrees west for UTC. COMPUTED as above. */
    public static final double WARMEST_SOLAR_HOUR = 14.0;

    private static final String TABLE = "weather/weather_monthly";
    private static final double DEGREES_PER_HOUR = 15.0;
    private static final int MONTHS = 12;
    private static final double HOURS_PER_DAY = 24.0;
    /** Any year of 365 days. */
    private static final int NOMINAL_YEAR = 2001;

    private static final int HOURS = 365 * 24;
    /** The error of a mean shrinks at least to a half in each round: far below any printed digit. */
    private static final int ROUNDS = 50;

    private TypicalMonths() {}

    /**
     * One month of a place.
     *
     * @param meanCelsius mean temperature, C
     * @param lowestCelsius lowest temperature of the month, C; not above the mean
     * @param highestCelsius highest temperature of the month, C; not below the mean
     * @param vapourPressurePa mean vapour pressure, Pa; above 0
     * @param windMPerS mean wind, m/s, if reported
     */
    public record MonthMeans(
            double meanCelsius,
            double lowestCelsius,
            double highestCelsius,
            double vapourPressurePa,
            OptionalDouble windMPerS) {
        public MonthMeans {
            Check.finite(meanCelsius, "meanCelsius", "C");
            Check.that(lowestCelsius <= meanCelsius, "lowestCelsius", "at most " + meanCelsius + " C", lowestCelsius);
            Check.that(
                    highestCelsius >= meanCelsius, "highestCelsius", "at least " + meanCelsius + " C", highestCelsius);
            Check.positive(vapourPressurePa, "vapourPressurePa", "Pa");
        }
    }

    /** Returns the names of the stations whose months are in the reference table, in its order. */
    public static List<String> stations() {
        return ReferenceTable.load(TABLE).rows().stream()
                .map(row -> row.text("station"))
                .distinct()
                .toList();
    }

    /**
     * Returns a year of weather with the months of a station of the reference table.
     *
     * @param station one of {@link #stations()}
     * @throws IllegalArgumentException if there is no such station
     */
    public static WeatherRecord year(String station) {
        List<MonthMeans> months = ReferenceTable.load(TABLE).rows().stream()
                .filter(row -> row.text("station").equals(station))
                .sorted(Comparator.comparingDouble(row -> row.number("month")))
                .map(row -> new MonthMeans(
                        row.number("t_mean_C"),
                        row.number("t_min_C"),
                        row.number("t_max_C"),
                        row.number("vapour_pressure_mean_Pa"),
                        row.optionalNumber("wind_mean_m_s")))
                .toList();
        Check.notEmpty(months, "months of station \"" + station + "\"");
        double solarDelay = -Station.load(station).longitudeDeg() / DEGREES_PER_HOUR;
        return year(months, (WARMEST_SOLAR_HOUR + solarDelay + HOURS_PER_DAY) % HOURS_PER_DAY);
    }

    /**
     * Returns a year of weather with these months.
     *
     * @param months January to December
     * @param warmestHourUtc hour of the day at which it is warmest, UTC; in [0, 24)
     */
    public static WeatherRecord year(List<MonthMeans> months, double warmestHourUtc) {
        Check.that(months.size() == MONTHS, "months", "12", months.size());
        Check.inClosedOpen(warmestHourUtc, 0.0, HOURS_PER_DAY, "warmestHourUtc", "h");
        double[] celsius = courseWithMeans(months, MonthMeans::meanCelsius);
        double[] vapourPa = courseWithMeans(months, MonthMeans::vapourPressurePa);
        double[] wind = courseWithMeans(months, month -> month.windMPerS().orElse(WeatherRecord.BLANK_WIND_M_PER_S));
        double[] swing = throughMiddles(swings(months));
        Hours hours = Hours.missing(HOURS);
        for (int h = 0; h < HOURS; h++) {
            double phase = 2.0 * Math.PI * (h - warmestHourUtc) / HOURS_PER_DAY;
            hours.celsius[h] = celsius[h] + swing[h] * Math.cos(phase);
            double saturatedPa = MagnusForm.WMO_WATER.pressurePa(hours.celsius[h]);
            hours.relativeHumidity[h] = Math.min(1.0, vapourPa[h] / saturatedPa);
            hours.windMPerS[h] = Math.max(0.0, wind[h]);
        }
        Instant start = YearMonth.of(NOMINAL_YEAR, Month.JANUARY)
                .atDay(1)
                .atStartOfDay(ZoneOffset.UTC)
                .toInstant();
        return new WeatherRecord(new HourAxis(HourAxis.hourOf(start), HOURS), hours);
    }

    private static double[] swings(List<MonthMeans> months) {
        double[] swings = new double[MONTHS];
        for (int m = 0; m < MONTHS; m++) {
            double share = 0.22 - 0.10 * Math.cos(2.0 * Math.PI * (m + 0.5) / MONTHS);
            swings[m] = 0.5
                    * share
                    * (months.get(m).highestCelsius() - months.get(m).lowestCelsius());
        }
        return swings;
    }

    /** Moves the knots until the straight lines between them have the means that are wanted. */
    private static double[] courseWithMeans(List<MonthMeans> months, ToDoubleFunction<MonthMeans> mean) {
        double[] wanted = months.stream().mapToDouble(mean).toArray();
        double[] knots = wanted.clone();
        double[] course = throughMiddles(knots);
        for (int round = 0; round < ROUNDS; round++) {
            for (int m = 0; m < MONTHS; m++) {
                knots[m] += wanted[m] - meanOfMonth(course, m);
            }
            course = throughMiddles(knots);
        }
        return course;
    }

    private static double meanOfMonth(double[] course, int month) {
        double sum = 0.0;
        for (int h = firstHour(month); h < firstHour(month + 1); h++) {
            sum += course[h];
        }
        return sum / (firstHour(month + 1) - firstHour(month));
    }

    private static double[] throughMiddles(double[] knots) {
        double[] course = new double[HOURS];
        for (int m = 0; m < MONTHS; m++) {
            int next = (m + 1) % MONTHS;
            int from = middle(m);
            int until = next == 0 ? HOURS + middle(0) : middle(next);
            for (int h = from; h < until; h++) {
                double share = (h - from) / (double) (until - from);
                course[h % HOURS] = knots[m] + share * (knots[next] - knots[m]);
            }
        }
        return course;
    }

    private static int middle(int month) {
        return (firstHour(month) + firstHour(month + 1)) / 2;
    }

    private static int firstHour(int month) {
        return month == MONTHS
                ? HOURS
                : (YearMonth.of(NOMINAL_YEAR, month + 1).atDay(1).getDayOfYear() - 1) * (int) HOURS_PER_DAY;
    }
}
