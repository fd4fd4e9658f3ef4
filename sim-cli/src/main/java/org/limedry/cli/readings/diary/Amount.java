package org.limedry.cli.readings.diary;

import org.limedry.units.Check;

/**
 * So much of something.
 *
 * @param of the room or machine it belongs to; empty if the diary does not say
 * @param value hours, litres or kg, as its column says; at least 0
 */
public record Amount(String of, double value) {
    public Amount {
        Check.nonNegative(value, "value", "");
    }
}
