package org.limedry.cli.readings.logger;

import java.util.Locale;

/** What stands before the decimals. */
public enum DecimalMark {
    POINT('.'),
    COMMA(',');

    private final char sign;

    DecimalMark(char sign) {
        this.sign = sign;
    }

    char sign() {
        return sign;
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
