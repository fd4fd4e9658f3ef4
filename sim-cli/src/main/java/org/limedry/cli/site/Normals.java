package org.limedry.cli.site;

import java.time.Month;
import java.util.List;
import java.util.Optional;
import org.limedry.cli.site.schema.Entry;

/**
 * Long-run normals as the user supplied them.
 *
 * @param source where they come from
 * @param months those supplied
 */
public record Normals(String source, List<OfMonth> months) {
    public Normals {
        months = List.copyOf(months);
    }

    /**
     * Normals of one month.
     *
     * @param month the month
     * @param celsius mean temperature, C
     * @param rhPercent mean relative humidity, percent
     * @param frostDays days with air below 0 C
     * @param rainDays rain days, as the source counts them
     * @param rainDaysRecorded rain days of the job's own month
     */
    public record OfMonth(
            Month month,
            Optional<Double> celsius,
            Optional<Double> rhPercent,
            Optional<Double> frostDays,
            Optional<Double> rainDays,
            Optional<Double> rainDaysRecorded) {}

    static Normals of(Entry normals) {
        return new Normals(
                normals.get(DelayKeys.SOURCE),
                normals.get(DelayKeys.MONTHS).stream()
                        .map(month -> new OfMonth(
                                Month.of(month.get(DelayKeys.MONTH)),
                                month.given(DelayKeys.CELSIUS),
                                month.given(DelayKeys.RH),
                                month.given(DelayKeys.FROST_DAYS),
                                month.given(DelayKeys.RAIN_DAYS),
                                month.given(DelayKeys.RAIN_DAYS_RECORDED)))
                        .toList());
    }

    /** Returns the normals of a month, if they were supplied. */
    public Optional<OfMonth> of(Month month) {
        return months.stream().filter(some -> some.month() == month).findFirst();
    }
}
