package org.limedry.cli.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Every expected text here is EXACT: what the columns say of the two rows. */
final class ColumnsTest {
    private static final Columns<Coat> COLUMNS = Columns.<Coat>of()
            .words("Coat", Coat::name)
            .words("Ready", Coat::ready)
            .number("Waiting, days", Coat::days)
            .key("coat", Coat::name)
            .key("ready", Coat::ready)
            .key("waitingDays", Coat::days)
            .key("frostNights", Coat::nights)
            .key("watch", coat -> List.of("frost", coat.name()));

    private static final Coat READY =
            new Coat("first", Optional.of(LocalDate.of(2026, 11, 9)), OptionalDouble.of(2.5), OptionalInt.of(3));
    private static final Coat NOT_YET =
            new Coat("second", Optional.empty(), OptionalDouble.empty(), OptionalInt.empty());

    private record Coat(String name, Optional<LocalDate> ready, OptionalDouble days, OptionalInt nights) {}

    @Test
    void table_valueNotKnown_showsADash() {
        Table table = COLUMNS.table("Coats", List.of(READY, NOT_YET));

        assertEquals(
                List.of(Table.Column.words("Coat"), Table.Column.words("Ready"), Table.Column.number("Waiting, days")),
                table.columns());
        assertEquals(
                List.of(List.of("first", "2026-11-09", "2.5"), List.of("second", "\u2013", "\u2013")), table.rows());
    }

    @Test
    void csv_valueNotKnown_isEmpty() {
        assertEquals(
                "coat,ready,waitingDays,frostNights,watch\nfirst,2026-11-09,2.5,3,frost first\nsecond,,,,frost second\n",
                COLUMNS.csv(List.of(READY, NOT_YET)).text().replace("\"", ""));
    }

    @Test
    void json_valueNotKnown_isNullUnderTheKeyOfTheCsv() {
        assertEquals(
                "[{'coat':'first','ready':'2026-11-09','waitingDays':2.5,'frostNights':3,'watch':['frost','first']},"
                        + "{'coat':'second','ready':null,'waitingDays':null,'frostNights':null,'watch':['frost','second']}]",
                COLUMNS.json(List.of(READY, NOT_YET)).toString().replace('"', '\''));
    }
}
