package org.limedry.cli.site;

import java.time.LocalDate;
import java.util.List;
import org.limedry.cli.site.schema.Block;
import org.limedry.cli.site.schema.Entry;
import org.limedry.cli.site.schema.Key;
import org.limedry.cli.site.schema.ListShape;
import org.limedry.cli.site.schema.NumberShape;
import org.limedry.cli.site.schema.Shape;
import org.limedry.cli.site.schema.TextShape;

/** Keys of what goes beside a delay: steps taken, records, and the normals of the place. */
final class DelayKeys {
    static final Key<LocalDate> DATE = Key.needed("date", Words.date(), "day on which it was done");
    static final Key<String> WORDS = Key.needed("words", TextShape.free(), "what was done, in the past tense");
    static final Shape<List<Entry>> STEPS = new ListShape<>(Block.of(DATE, WORDS), 0);

    static final Key<Integer> MONTH = Key.needed("month", NumberShape.count(1, 12), "1 for January");
    static final Key<Double> CELSIUS =
            Key.optional("celsius", NumberShape.between(-60.0, 60.0), "mean temperature of that month");
    static final Key<Double> RH =
            Key.optional("rhPercent", NumberShape.between(1.0, 100.0), "mean relative humidity of that month");
    static final Key<Double> FROST_DAYS =
            Key.optional("frostDays", NumberShape.between(0.0, 31.0), "days with air below 0 C in that month");
    static final Key<Double> RAIN_DAYS = Key.optional(
            "rainDays", NumberShape.between(0.0, 31.0), "rain days in that month, as the source counts them");
    static final Key<Double> RAIN_DAYS_RECORDED = Key.optional(
            "rainDaysRecorded",
            NumberShape.between(0.0, 31.0),
            "rain days of the job's own month, from the station: weather files here hold no rain");

    static final Key<String> SOURCE =
            Key.needed("source", TextShape.free(), "station, years and publisher; printed with the figures");
    static final Key<List<Entry>> MONTHS = Key.needed(
            "months",
            new ListShape<>(Block.of(MONTH, CELSIUS, RH, FROST_DAYS, RAIN_DAYS, RAIN_DAYS_RECORDED), 1),
            "long-run normals, month by month");
    static final Block NORMALS = Block.of(SOURCE, MONTHS);

    private DelayKeys() {}
}
