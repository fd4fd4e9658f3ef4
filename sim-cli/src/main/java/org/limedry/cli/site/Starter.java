package org.limedry.cli.site;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** The site file for one room that a user starts from. */
public final class Starter {
    private Starter() {}

    /** Returns its text. */
    public static String text() {
        try (InputStream in = Starter.class.getResourceAsStream("starter.yaml")) {
            return new String(Objects.requireNonNull(in, "starter.yaml").readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
