package org.limedry.room;

/**
 * Thermostats and humidistats: proportional over a band about their setting, which has the mean of an on-off switch
 * without its jumps.
 *
 * <p>Does not model the dead band of a switch, its sensor or its place in the room.
 */
final class Control {
    private static final double THERMOSTAT_BAND_K = 1.0;
    private static final double HUMIDISTAT_BAND = 0.02;

    private Control() {}

    /** Returns the share of full heat: 1 at half a kelvin below the setting, 1/2 at it, 0 at half a kelvin above. */
    static double heating(double settingCelsius, double roomCelsius) {
        return share((settingCelsius - roomCelsius) / THERMOSTAT_BAND_K);
    }

    /** Returns the share of full drying: 0 at 1 % below the setting, 1/2 at it, 1 at 1 % above. */
    static double drying(double settingRelativeHumidity, double relativeHumidity) {
        return share((relativeHumidity - settingRelativeHumidity) / HUMIDISTAT_BAND);
    }

    private static double share(double bandsFromSetting) {
        return Math.min(1.0, Math.max(0.0, bandsFromSetting + 0.5));
    }
}
