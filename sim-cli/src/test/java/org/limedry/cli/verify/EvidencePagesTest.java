package org.limedry.cli.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.limedry.proof.Proofs;
import org.limedry.proof.figure.Figure;
import org.limedry.proof.figure.Standing;
import org.limedry.proof.figure.Verdict;

/** The pages in docs say what is found now, and nothing falls short that is not known to. */
final class EvidencePagesTest {
    // The tests run in the module's own folder.
    private static final Path DOCS = Path.of("..", "docs");
    private static final List<CaseRun> RUNS = new ArrayList<>();

    // Not where the field is made: the threads would wait for this class, and it for them.
    @BeforeAll
    static void runEveryCaseOnce() {
        RUNS.addAll(CaseRun.all(Proofs.all(), 2, () -> {}));
    }

    // PINNED: the pages are our own output; what they are judged by stands in them.
    @Test
    void pages_againstWhatIsFoundNow_areUpToDate() throws IOException {
        Map<String, String> files = EvidencePages.all(RUNS);
        if (Boolean.getBoolean("limedry.write")) {
            write(files);
        }

        List<String> stale = new ArrayList<>();
        for (Map.Entry<String, String> file : files.entrySet()) {
            String committed = Files.readString(DOCS.resolve(file.getKey()));
            List<String> differences = file.getKey().endsWith(".md")
                    ? Staleness.ofPage(committed, file.getValue())
                    : Staleness.ofDrawing(committed, file.getValue());
            differences.forEach(difference -> stale.add(file.getKey() + ": " + difference));
        }

        assertEquals(List.of(), stale);
        List<String> charts = files.keySet().stream()
                .filter(name -> name.endsWith(".svg"))
                .sorted()
                .toList();
        try (Stream<Path> there = Files.list(DOCS.resolve("charts"))) {
            List<String> names =
                    there.map(chart -> "charts/" + chart.getFileName()).sorted().toList();
            assertEquals(charts, names);
        }
    }

    private static void write(Map<String, String> files) throws IOException {
        for (Map.Entry<String, String> file : files.entrySet()) {
            Path place = DOCS.resolve(file.getKey());
            Files.createDirectories(place.getParent());
            Files.writeString(place, file.getValue());
        }
    }

    // PINNED: which cases fall short, and on how many figures; it says nothing of truth, the bands do. WALL_YEAR and
    // ROOM_YEAR on the ordinary grid; counts near an edge may move by one with the last digits of a machine.
    @Test
    void figures_thatFallShort_areOfTheseCasesAndHaveAReason() {
        Map<String, Long> outside = new TreeMap<>();
        for (CaseRun run : RUNS) {
            for (Figure figure : run.figures()) {
                if (figure.verdict() == Verdict.OUTSIDE) {
                    outside.merge(figure.proof() + " " + figure.part(), 1L, Long::sum);
                    assertEquals(
                            Standing.KnownShort.class, figure.claim().standing().getClass(), () -> figure.toString());
                }
            }
        }

        assertEquals(
                List.of(
                        "Catalogue uptake half cells",
                        "Catalogue uptake ordinary grid",
                        "ROOM_YEAR ordinary grid",
                        "T12 ",
                        "T4 ",
                        "T6 ",
                        "T7 ",
                        "T9 ",
                        "WALL_YEAR ordinary grid"),
                List.copyOf(outside.keySet()));
        assertEquals(76.0, outside.get("WALL_YEAR ordinary grid"), 3.0); // figures close to the edge of their band
        assertEquals(46.0, outside.get("ROOM_YEAR ordinary grid"), 3.0); // the same
        assertEquals(1L, outside.get("T6 "));
    }
}
