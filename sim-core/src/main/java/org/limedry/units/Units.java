package org.limedry.units;

/** Conversions between the units of files and people and those of the library. */
public final class Units {
    /** Zero degrees Celsius, K. Exact by definition (BIPM, The International System of Units, 9th edition, 2.3.1). */
    public static final double ZERO_CELSIUS_K = 273.15;

    /** Seconds in a minute, s. */
    public static final double SECONDS_PER_MINUTE = 60.0;

    /** Seconds in an hour, s. */
    public static final double SECONDS_PER_HOUR = 3600.0;

    /** Seconds in a day of 24 hours, s. */
    public static final double SECONDS_PER_DAY = 86_400.0;

    private static final double MM_PER_M = 1000.0;
    private static final double PERCENT_PER_FRACTION = 100.0;
    private static final double WATTS_PER_KW = 1000.0;

    private Units() {}

    /** Returns the absolute temperature, K, of a temperature in °C. */
    public static double kelvin(double celsius) {
        return celsius + ZERO_CELSIUS_K;
    }

    /** Returns the temperature, °C, of an absolute temperature in K. */
    public static double celsius(double kelvin) {
        return kelvin - ZERO_CELSIUS_K;
    }

    /** Returns metres from millimetres. */
    public static double metresFromMm(double lengthMm) {
        return lengthMm / MM_PER_M;
    }

    /** Returns millimetres from metres. */
    public static double mmFromMetres(double lengthM) {
        return lengthM * MM_PER_M;
    }

    /** Returns a fraction from a percentage. */
    public static double fractionFromPercent(double percent) {
        return percent / PERCENT_PER_FRACTION;
    }

    /** Returns a percentage from a fraction. */
    public static double percentFromFraction(double fraction) {
        return fraction * PERCENT_PER_FRACTION;
    }

    /** Returns watts from kilowatts. */
    public static double wattsFromKw(double powerKw) {
        return powerKw * WATTS_PER_KW;
    }

    /** Returns hours from seconds. */
    public static double hoursFromSeconds(double seconds) {
        return seconds / SECONDS_PER_HOUR;
    }

    /** Returns seconds from days of 24 hours. */
    public static double secondsFromDays(double days) {
        return days * SECONDS_PER_DAY;
    }

    /** Returns days of 24 hours from seconds. */
    public static double daysFromSeconds(double seconds) {
        return seconds / SECONDS_PER_DAY;
    }

    /** Returns a rate per second (a flow in m³/s, an air change per second) from one per hour. */
    public static double perSecondFromPerHour(double perHour) {
        return perHour / SECONDS_PER_HOUR;
    }
}
