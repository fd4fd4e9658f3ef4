package org.limedry.climate;

import java.util.List;

/**
 * What was found in a weather file and what was done about it, to be shown to the user.
 *
 * @param readings rows read
 * @param gaps places where rows are missing
 * @param missingHours hours missing in those places, bridged by straight lines
 * @param blankValues temperatures and humidities left blank in a row, bridged likewise
 * @param blankWinds winds left blank, taken as {@link WeatherRecord#BLANK_WIND_M_PER_S}
 * @param setAside readings that cannot be true, each with its hour, treated as blank
 * @param doubtful readings that are kept but look wrong, each with its hour
 */
public record WeatherQuality(
        int readings,
        int gaps,
        int missingHours,
        int blankValues,
        int blankWinds,
        List<String> setAside,
        List<String> doubtful) {
    public WeatherQuality {
        setAside = List.copyOf(setAside);
        doubtful = List.copyOf(doubtful);
    }
}
