package org.limedry.proof.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.limedry.proof.figure.Figure;
import org.limedry.proof.figure.Proof;
import org.limedry.proof.figure.Verdict;
import org.limedry.reference.ReferenceTable;

// PUBLISHED and COMPUTED: the row of the table that each figure names; tolerances as stated with the table or beside
// it.
final class AirTablesTest {
    private static final Map<String, Proof> TABLES =
            AirTables.all().stream().collect(Collectors.toMap(Proof::name, proof -> proof));

    /** Examples that only divide or multiply figures of their own, and a fit for the wet bulb that is not used. */
    private static final Set<String> LEFT_OUT =
            Set.of("FAO-2b", "GEOCAT-60", "GEOCAT-80", "GEOCAT-100", "STULL-1", "BAL-6", "BAL-7", "BAL-8");

    @ParameterizedTest
    @CsvSource({ // table, figures compared, of them with a source in error
        "sat_computed, 1388, 0", // 71 rows of 16 formulas over water, 21 of 12 over ice
        "sat_published, 2312, 3", // 1408 by five formulas, 7 rough and 3 misprinted rows, 298 of three columns
        "sat_deviation, 120, 0",
        "formula_crosscheck, 36, 0",
        "iapws_checkpoints, 8, 0",
        "dewpoint_published, 631, 2", // 205 within the print, 90 rough, 2 misprints, 297 and 37 computed
        "dewpoint_deviation, 44, 0",
        "moist_air_published, 140, 9", // 61 sound, 9 unreliable, 70 computed
        "moist_air_realgas, 315, 0",
        "absolute_humidity_published, 191, 1", // 54 sound, 40 rough, 1 over the wrong phase and right over the other
        "magnus_grid, 3416, 0",
        "oracle_library_grid, 10074, 0",
        "psychrometer_published, 1459, 0",
        "barometric_published, 81, 0",
        "surface_condensation_grid, 308, 0",
        "vapour_balance_grid, 144, 0",
        "iso13788_reference, 5, 0",
        "worked_examples, 38, 2",
        "surface_condensation, 11, 0",
        "vapour_balance, 6, 0"
    })
    void table_byEveryFormula_isMetButForMisprints(String table, int figures, int inError) {
        List<Figure> found = TABLES.get(table).figures();

        assertEquals(figures, found.size());
        assertEquals(List.of(), with(found, Verdict.OUTSIDE));
        assertEquals(inError, with(found, Verdict.SOURCE_IN_ERROR).size());
    }

    // PUBLISHED: psychro tables, rows flagged FAILS: each is a figure that is not met.
    @Test
    void misprints_inAllTables_areThoseFlagged() {
        long flagged = TABLES.keySet().stream()
                .map(name -> ReferenceTable.load("psychro/" + name))
                .filter(table -> table.header().contains("flag"))
                .flatMap(table -> table.rows().stream())
                .filter(row -> row.text("flag").equals("FAILS"))
                .count();

        long missed = TABLES.values().stream()
                .mapToLong(
                        proof -> with(proof.figures(), Verdict.SOURCE_IN_ERROR).size())
                .sum();

        assertEquals(17, flagged);
        assertEquals(flagged, missed);
    }

    @Test
    void examples_thatAreNotRun_areThoseWithoutAFunctionOfThisLibrary() {
        Set<String> left = new HashSet<>();
        left.addAll(ids("worked_examples", "example_id"));
        left.addAll(ids("surface_condensation", "case_id"));
        left.addAll(ids("vapour_balance", "case_id"));

        for (String name : List.of("worked_examples", "surface_condensation", "vapour_balance")) {
            TABLES.get(name)
                    .figures()
                    .forEach(figure -> left.remove(figure.claim().quantity().split("[ ,]", -1)[1]));
        }

        assertEquals(LEFT_OUT, left);
    }

    private static Set<String> ids(String table, String column) {
        return ReferenceTable.load("psychro/" + table).rows().stream()
                .map(row -> row.text(column))
                .collect(Collectors.toSet());
    }

    private static List<Figure> with(List<Figure> figures, Verdict verdict) {
        return figures.stream().filter(figure -> figure.verdict() == verdict).toList();
    }
}
