package org.limedry.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ReferenceTableTest {
    private static final ReferenceTable TABLE = ReferenceTable.load("reader_case");

    // EXACT: what stands in reader_case.csv, for all expected values of this class.
    @Test
    void load_keepsHeadingRowsAndLines() {
        assertEquals("reader_case", TABLE.name());
        assertEquals(List.of("name", "lengthM", "remark"), TABLE.header());
        assertEquals(
                List.of(7L, 8L, 10L),
                TABLE.rows().stream().map(ReferenceTable.Row::line).toList());
    }

    @Test
    void provenance_collectsLinesOfOneKey() {
        Provenance head = TABLE.provenance();

        assertEquals("nobody, a case for the reader", head.source());
        assertEquals("FROM MEMORY", head.read());
        assertEquals("lengthM in m: metres", head.units());
        assertEquals(List.of("first", "second"), head.notes());
        assertEquals(List.of(), head.licence());
    }

    @Test
    void text_ofAQuotedCell_losesOnlyItsQuotes() {
        assertEquals("said \"yes\", once", TABLE.rows().get(0).text("remark"));
    }

    // EXACT: the figure as it stands in the file of the test.
    @Test
    void number_isRead() {
        assertEquals(-0.0025, TABLE.rows().get(0).number("lengthM"), 0.0); // the same double
        assertEquals(OptionalDouble.of(-0.0025), TABLE.rows().get(0).optionalNumber("lengthM"));
    }

    @Test
    void number_thatIsMissing_isEmptyOrRefused() {
        ReferenceTable.Row row = TABLE.rows().get(1);

        assertEquals(OptionalDouble.empty(), row.optionalNumber("lengthM"));
        var e = assertThrows(IllegalStateException.class, () -> row.number("lengthM"));
        assertEquals("reader_case.csv line 8: lengthM: must be a number, was \"\"", e.getMessage());
    }

    @Test
    void number_thatIsAWord_isRefusedWithFileLineAndColumn() {
        ReferenceTable.Row row = TABLE.rows().get(2);

        var e = assertThrows(IllegalStateException.class, () -> row.optionalNumber("lengthM"));
        assertEquals("reader_case.csv line 10: lengthM: must be a number, was \"NaN\"", e.getMessage());
    }

    @Test
    void text_ofAnUnknownColumn_isRefused() {
        var e = assertThrows(
                IllegalArgumentException.class, () -> TABLE.rows().get(0).text("length"));
        assertEquals("column: must be one of [name, lengthM, remark], was length", e.getMessage());
    }

    @Test
    void load_ofAnUnknownTable_isRefused() {
        var e = assertThrows(IllegalArgumentException.class, () -> ReferenceTable.load("psychro/nothing"));
        assertEquals("name: must be a table on the class path, was psychro/nothing", e.getMessage());
    }

    @Test
    void load_ofARaggedTable_isRefusedWithItsLine() {
        var e = assertThrows(IllegalStateException.class, () -> ReferenceTable.load("ragged_case"));
        assertEquals("ragged_case.csv line 4: must have 2 cells, was 3", e.getMessage());
    }

    @Test
    void provenance_withoutAKey_isRefused() {
        var e = assertThrows(IllegalStateException.class, () -> Provenance.of(List.of(" no key here")));
        assertTrue(e.getMessage().contains("\" no key here\""), e.getMessage());
        assertThrows(IllegalStateException.class, () -> Provenance.of(List.of()).source());
        assertThrows(
                IllegalStateException.class,
                () -> Provenance.of(List.of("source: a", "source: b")).source());
    }
}
