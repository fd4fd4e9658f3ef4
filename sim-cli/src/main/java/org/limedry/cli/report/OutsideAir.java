package org.limedry.cli.report;

import java.util.Map;
import org.limedry.air.MagnusForm;
import org.limedry.cli.page.Days;
import org.limedry.simulation.History;

/**
 * How often the outdoor air could have helped during a wait: days on which, on the mean, it held less water than the
 * air of the room.
 *
 * @param drierDays days on which outdoor air held less
 * @param days all days
 */
record OutsideAir(long drierDays, int days) {
    static OutsideAir of(Waiting wait, Days calendar) {
        History history = wait.history();
        MagnusForm saturation = MagnusForm.WMO_WATER;
        Map<?, Double> surplusPa = wait.byDay(
                hour -> history.outdoorRelativeHumidity().at(hour)
                                * saturation.pressurePa(history.outdoorCelsius().at(hour))
                        - wait.room().relativeHumidity().at(hour)
                                * saturation.pressurePa(wait.room().airCelsius().at(hour)),
                calendar);
        long drier = surplusPa.values().stream().filter(pa -> pa < 0.0).count();
        return new OutsideAir(drier, surplusPa.size());
    }

    /** Returns the share of days on which outdoor air was drier; 0 for no day at all. */
    double drierShare() {
        return days == 0 ? 0.0 : (double) drierDays / days;
    }

    /** Returns the days on which opening up could bring nothing. */
    long noHelpDays() {
        return days - drierDays;
    }
}
