package org.limedry.cli.readings.logger;

import java.util.Locale;

/** In what order a date of three numbers stands. */
public enum DateOrder {
    DAY_MONTH_YEAR,
    MONTH_DAY_YEAR,
    YEAR_MONTH_DAY;

    String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
