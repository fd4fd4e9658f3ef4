package org.limedry;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.function.Executable;

/** Wrong arguments: refused, and by their name. */
public final class Refusal {
    private Refusal() {}

    /** Asserts that {@code call} refuses the argument {@code name}. */
    public static void of(String name, Executable call) {
        String message =
                assertThrows(IllegalArgumentException.class, call, name).getMessage();
        assertTrue(message.startsWith(name + ": must "), message);
    }
}
