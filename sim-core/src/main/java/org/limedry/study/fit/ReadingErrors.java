package org.limedry.study.fit;

import org.limedry.climate.SensorError;
import org.limedry.units.Check;

/**
 * How far readings may lie from the truth of the model, one sigma each.
 *
 * @param celsius error of one temperature reading of a logger, K
 * @param celsiusOffset offset that all temperature readings of a logger share, K
 * @param relativeHumidity error of one humidity reading of a logger, fraction
 * @param relativeHumidityOffset offset that all its humidity readings share, fraction
 * @param faceCelsius error of a reading of a face, K
 * @param bucketShare error of a bucket, share of the litres that buckets of its room have on the mean
 * @param bucketLitres error of a bucket on top, litres
 * @param handLogs error of a hand test, in e-folds of the limit of the ready rule it is held against
 */
public record ReadingErrors(
        double celsius,
        double celsiusOffset,
        double relativeHumidity,
        double relativeHumidityOffset,
        double faceCelsius,
        double bucketShare,
        double bucketLitres,
        double handLogs) {
    public ReadingErrors {
        Check.positive(celsius, "celsius", "K");
        Check.positive(celsiusOffset, "celsiusOffset", "K");
        Check.positive(relativeHumidity, "relativeHumidity", "");
        Check.positive(relativeHumidityOffset, "relativeHumidityOffset", "");
        Check.positive(faceCelsius, "faceCelsius", "K");
        Check.nonNegative(bucketShare, "bucketShare", "");
        Check.positive(bucketLitres, "bucketLitres", "litres");
        Check.positive(handLogs, "handLogs", "");
    }

    /**
     * Returns the errors of cheap loggers, an infrared gun and a jug, with what the model itself misses: 0.5 K and 3 % RH for
     * one reading and for the offset, 1.5 K for a gun, 5 % and 0.2 litres for a bucket. FROM MEMORY (makers' sheets say 0.3
     * to 1 K, 2 to 5 %); a side-by-side check of two loggers replaces them.
     */
    public static ReadingErrors ordinary() {
        return new ReadingErrors(0.5, 0.5, 0.03, 0.03, 1.5, 0.05, 0.2, 0.25);
    }

    /** Returns the ordinary errors with those of loggers as somebody found them; an offset may be as large. */
    public static ReadingErrors of(SensorError error) {
        ReadingErrors usual = ordinary();
        return new ReadingErrors(
                error.temperatureK(),
                error.temperatureK(),
                error.relativeHumidity(),
                error.relativeHumidity(),
                usual.faceCelsius,
                usual.bucketShare,
                usual.bucketLitres,
                usual.handLogs);
    }

    /**
     * Returns the error of one reading, one sigma, in the unit of {@link Reading#measured()}.
     *
     * @param reading the reading
     * @param level what readings of its channel are on the mean, in their unit: a bucket that was measured too small is not surer
     *     for it
     */
    public double sigma(Reading reading, double level) {
        if (reading instanceof Reading.RoomCelsius) {
            return celsius;
        } else if (reading instanceof Reading.RoomHumidity) {
            return relativeHumidity;
        } else if (reading instanceof Reading.FaceCelsius) {
            return faceCelsius;
        } else if (reading instanceof Reading.Bucket) {
            return Math.hypot(bucketLitres, bucketShare * level);
        }
        return handLogs;
    }

    /** Returns the offset that all readings of the reading's channel share, one sigma, in the unit of the reading; 0 for none. */
    public double offsetSigma(Reading reading) {
        if (reading instanceof Reading.RoomCelsius) {
            return celsiusOffset;
        }
        return reading instanceof Reading.RoomHumidity ? relativeHumidityOffset : 0.0;
    }
}
