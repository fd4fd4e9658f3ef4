package org.limedry.proof;

import java.util.List;
import java.util.stream.Stream;
import org.limedry.proof.benchmarks.Benchmarks;
import org.limedry.proof.figure.Proof;
import org.limedry.proof.tables.AirTables;
import org.limedry.proof.trade.TradeSayings;

/** All proofs. */
public final class Proofs {
    private Proofs() {}

    /** Returns every proof: tables, benchmarks, sayings of the trade. */
    public static List<Proof> all() {
        return Stream.of(AirTables.all(), Benchmarks.all(), TradeSayings.all())
                .flatMap(List::stream)
                .toList();
    }
}
