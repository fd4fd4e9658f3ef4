package org.limedry.cli.delay;

import java.util.Optional;
import org.limedry.cli.site.PlannedJob.Cause;

/**
 * A share of the delay.
 *
 * @param cause the cause; empty for what the record says beyond the runs
 * @param words what happened
 * @param days its likely days, exactly
 * @param shown its likely days as printed; all add up to the days of the calendar
 * @param soonerDays days gained had this cause alone gone as planned; 0 for the rest
 * @param range the least and the most of all reckonings
 */
public record CauseDays(
        Optional<Cause> cause, String words, double days, long shown, double soonerDays, DaysRange range) {}
