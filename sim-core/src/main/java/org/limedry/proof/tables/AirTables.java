package org.limedry.proof.tables;

import java.util.List;
import java.util.stream.Stream;
import org.limedry.proof.figure.Proof;

/** The proofs of the air. */
public final class AirTables {
    private AirTables() {}

    /** Returns one proof for each table of moist air. */
    public static List<Proof> all() {
        return Stream.of(
                        SaturationTables.all(),
                        DewPointTables.all(),
                        MoistAirTables.all(),
                        GridTables.all(),
                        List.<Proof>of(new PsychrometerTable()),
                        SurroundingsTables.all(),
                        List.<Proof>of(new RoomClimateClasses()),
                        WorkedExamples.all())
                .flatMap(List::stream)
                .toList();
    }
}
