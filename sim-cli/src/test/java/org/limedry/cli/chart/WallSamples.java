package org.limedry.cli.chart;

import java.time.Duration;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.stream.IntStream;
import org.limedry.cli.chart.WallAndDewPointChart.Hour;
import org.limedry.cli.chart.WallAndDewPointChart.PlantWords;

/** Charts of a wall against the dew point, all figures invented. */
final class WallSamples {
    private static final PlantWords PLANT = new PlantWords("2 kW, 07 to 19 h", "20 litres a day, 07 to 19 h");

    private WallSamples() {}

    /** Below the dew point to day 28, above it after the heater came; doors open from 11 to 13 on working days. */
    static WallAndDewPointChart stall() {
        return chart(DryingSamples.WINTER, 28, 42);
    }

    /** Returns a run in which heater and dehumidifier come on the given days, if they come. */
    static WallAndDewPointChart chart(Timeline timeline, double heaterDay, double dehumidifierDay) {
        long count = Duration.between(timeline.from(), timeline.to()).toHours();
        List<Hour> hours = IntStream.rangeClosed(0, (int) count)
                .mapToObj(i -> hour(timeline, i, heaterDay, dehumidifierDay))
                .toList();
        return new WallAndDewPointChart(
                "wall-and-dew-point",
                "The wall was wet whenever the dew point reached it: most hours before the heater",
                timeline,
                "north wall",
                hours,
                PLANT);
    }

    private static Hour hour(Timeline timeline, int i, double heaterDay, double dehumidifierDay) {
        Instant at = timeline.from().plus(Duration.ofHours(i));
        ZonedDateTime past = at.minus(Duration.ofMinutes(30)).atZone(timeline.zone());
        double days = i / 24.0;
        boolean working = past.getDayOfWeek().getValue() <= 5;
        boolean heated = days >= heaterDay && past.getHour() >= 7 && past.getHour() < 19;
        double weather = 2.2 * Math.sin(days / 4.1) + 1.3 * Math.sin(days / 1.7) - 3 * Math.sin(days / 30);
        double wall = 8 + weather + 0.8 * Math.sin(2 * Math.PI * days) + (days >= heaterDay ? 2.4 : 0);
        double dew = 8.3 + weather + 0.8 * Math.sin(days / 2.3) - (days >= heaterDay ? 0.6 : 0);
        return new Hour(
                at,
                wall,
                dew,
                working && (past.getHour() == 11 || past.getHour() == 12) ? 1 : 0,
                heated ? 1 : 0,
                days >= dehumidifierDay ? 1 : 0);
    }

    /** Returns a run in which both lines stand still at the given temperatures. */
    static WallAndDewPointChart flat(Timeline timeline, double wallCelsius, double dewPointCelsius) {
        long count = Duration.between(timeline.from(), timeline.to()).toHours();
        List<Hour> hours = IntStream.rangeClosed(0, (int) count)
                .mapToObj(
                        i -> new Hour(timeline.from().plus(Duration.ofHours(i)), wallCelsius, dewPointCelsius, 0, 0, 0))
                .toList();
        return new WallAndDewPointChart(
                "wall-and-dew-point",
                "Nothing moved",
                timeline,
                "North-west gable of the former harbour master's dairy and its <annexe> & porch",
                hours,
                new PlantWords("", ""));
    }
}
