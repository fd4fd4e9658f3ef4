package org.limedry.cli.site;

import java.time.LocalDate;
import org.limedry.cli.site.schema.Entry;
import org.limedry.study.options.Measure;

/**
 * A measure of a site file, with what it costs in the firm's own money.
 *
 * @param measure what is done
 * @param hirePerDay hire for each day
 * @param once what it costs once
 * @param labourHoursPerDay hours a day that someone sees to it
 */
public record SiteMeasure(Measure measure, double hirePerDay, double once, double labourHoursPerDay) {
    /** Returns the measure of an entry of the file. */
    static SiteMeasure of(Entry entry, RoomPlans plans) {
        String room = entry.get(MeasureKeys.ROOM);
        return new SiteMeasure(
                new Measure(
                        entry.get(MeasureKeys.NAME),
                        room,
                        entry.given(MeasureKeys.OPEN).map(times -> plans.schedule(times, LocalDate.MIN, LocalDate.MAX)),
                        entry.get(MeasureKeys.PLANT).stream()
                                .map(plant -> plans.plant(room, plant))
                                .toList(),
                        entry.get(MeasureKeys.FUEL_OUT),
                        entry.get(MeasureKeys.SHEETS)),
                entry.get(MeasureKeys.HIRE),
                entry.get(MeasureKeys.ONCE),
                entry.get(MeasureKeys.LABOUR_HOURS));
    }
}
