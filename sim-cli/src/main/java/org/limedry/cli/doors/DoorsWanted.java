package org.limedry.cli.doors;

import java.time.LocalDate;
import java.util.Optional;
import org.limedry.climate.SensorError;

/** What the user asked of {@code limedry doors}, as far as he said. */
record DoorsWanted(
        Optional<String> room, Optional<LocalDate> from, Optional<Integer> days, SensorError errors, boolean nights) {}
