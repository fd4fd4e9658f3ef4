package org.limedry.cli.chart;

import java.time.Instant;
import java.util.List;
import org.limedry.units.Check;

/**
 * The coldest wall against the dew point of the room air, with doors and plant below.
 *
 * @param id tells it from the other charts on its page
 * @param title the sentence over it
 * @param timeline the time it covers
 * @param wall name of the coldest wall
 * @param hours what happened hour by hour, in time order; at least two
 * @param plant what heater and dehumidifier do, in words
 */
public record WallAndDewPointChart(
        String id, String title, Timeline timeline, String wall, List<Hour> hours, PlantWords plant) implements Chart {
    public WallAndDewPointChart {
        Chart.check(id, title);
        Check.notBlank(wall, "wall");
        Check.that(hours.size() >= 2, "hours", "at least 2 hours", hours.size());
        hours = List.copyOf(hours);
    }

    /** Returns how many hours of the run had the dew point at or above the wall. */
    public long wetHours() {
        return hours.stream()
                .filter(hour -> hour.at().isAfter(timeline.from()))
                .filter(Hour::wet)
                .count();
    }

    /**
     * One hour.
     *
     * @param at the end of the hour
     * @param wallCelsius temperature of the wall's face then, C
     * @param dewPointCelsius dew point of the room air then, C
     * @param doorsOpenShare share of the hour during which an opening stood open, fraction
     * @param heaterShare share of the hour during which a heater ran, fraction
     * @param dehumidifierShare share of the hour during which a dehumidifier ran, fraction
     */
    public record Hour(
            Instant at,
            double wallCelsius,
            double dewPointCelsius,
            double doorsOpenShare,
            double heaterShare,
            double dehumidifierShare) {
        public Hour {
            Check.finite(wallCelsius, "wallCelsius", "C");
            Check.finite(dewPointCelsius, "dewPointCelsius", "C");
            Check.inClosed(doorsOpenShare, 0, 1, "doorsOpenShare", "");
            Check.inClosed(heaterShare, 0, 1, "heaterShare", "");
            Check.inClosed(dehumidifierShare, 0, 1, "dehumidifierShare", "");
        }

        boolean wet() {
            return dewPointCelsius >= wallCelsius;
        }
    }

    /**
     * What to print beside the strips of the plant where there is room; may be empty.
     *
     * @param heater such as "2 kW, 07 to 19 h"
     * @param dehumidifier such as "20 litres a day"
     */
    public record PlantWords(String heater, String dehumidifier) {}
}
