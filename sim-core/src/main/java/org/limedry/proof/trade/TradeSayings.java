package org.limedry.proof.trade;

import java.util.List;
import java.util.stream.Stream;
import org.limedry.proof.figure.Proof;

/** The proofs by the trade. */
public final class TradeSayings {
    private TradeSayings() {}

    /** Returns one proof for each saying, in their order. */
    public static List<Proof> all() {
        return Stream.of(CoatSayings.all(), BuildingSayings.all(), AirSayings.all())
                .flatMap(List::stream)
                .sorted((a, b) -> Integer.compare(number(a), number(b)))
                .toList();
    }

    private static int number(Proof saying) {
        return Integer.parseInt(saying.name().substring(1));
    }
}
