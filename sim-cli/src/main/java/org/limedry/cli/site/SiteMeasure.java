package org.limedry.cli.site;

import org.limedry.study.options.Measure;

/**
 * A measure of a site file, with what it costs in the firm's own money.
 *
 * @param measure what is done
 * @param hirePerDay hire for each day
 * @param once what it costs once
 * @param labourHoursPerDay hours a day that someone sees to it
 */
public record SiteMeasure(Measure measure, double hirePerDay, double once, double labourHoursPerDay) {}
