package org.limedry.proof.trade;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.limedry.proof.figure.Figure;
import org.limedry.proof.figure.Proof;
import org.limedry.proof.figure.Standing;
import org.limedry.proof.figure.Verdict;

// PRACTICE, PUBLISHED, COMPUTED: the band that each saying names. T6, rooms through a winter, is run by the test of the
// page.
final class TradeSayingsTest {
    @Test
    void sayings_inOrder_areAllTwenty() {
        assertEquals(
                IntStream.rangeClosed(1, 20).mapToObj(number -> "T" + number).toList(),
                TradeSayings.all().stream().map(Proof::name).toList());
    }

    @Test
    void sayings_ofOneCoatAndOfAir_areMetButForThoseKnownToFallShort() {
        List<Figure> figures = TradeSayings.all().stream()
                .filter(saying -> !saying.name().equals("T6"))
                .flatMap(saying -> saying.figures().stream())
                .toList();

        List<String> outside = figures.stream()
                .filter(figure -> figure.verdict() != Verdict.IN)
                .map(TradeSayingsTest::words)
                .toList();

        // What is known to fall short must still do so, or its reason is out of date.
        List<String> known = figures.stream()
                .filter(figure -> figure.claim().standing() instanceof Standing.KnownShort)
                .map(TradeSayingsTest::words)
                .toList();
        assertEquals(known, outside);
        assertEquals(
                "T4 T4 T7 T9 T12",
                figures.stream()
                        .filter(figure -> figure.verdict() != Verdict.IN)
                        .map(Figure::proof)
                        .collect(Collectors.joining(" ")));
    }

    private static String words(Figure figure) {
        return figure.proof() + ": " + figure.claim().quantity();
    }
}
