package org.limedry.cli.page;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** A value of a file or a table that may not be known. */
final class Value {
    private Value() {}

    /** Returns the value, whichever kind of optional it stands in. */
    static Optional<?> of(Object value) {
        if (value instanceof Optional<?> maybe) {
            return maybe;
        }
        if (value instanceof OptionalDouble number) {
            return number.isPresent() ? Optional.of(number.getAsDouble()) : Optional.empty();
        }
        if (value instanceof OptionalInt number) {
            return number.isPresent() ? Optional.of(number.getAsInt()) : Optional.empty();
        }
        return Optional.of(value);
    }
}
