package org.limedry.cli.readings.diary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.limedry.cli.problem.InputProblem;
import org.limedry.cli.readings.diary.DiaryPlaces.Name;
import org.limedry.lime.HandTest;

final class DiaryFileTest {
    private static final String HEADING =
            "date;doors open;heater hours;dehumidifier hours;litres emptied;gas kg;misted at;hand tests;running wet;"
                    + "covers;written by;note\n";
    private static final DiaryPlaces PLACES = new DiaryPlaces(
            "Net loft (invented)",
            List.of("store", "sail room"),
            List.of(
                    new Name("store yard door", "yard door"),
                    new Name("store window", "window"),
                    new Name("sail room window", "window")),
            List.of(new Name("store north", "north"), new Name("store west", "west")));

    private static DiaryFile read(String days) {
        return DiaryFile.parse(HEADING + days, "diary.csv", PLACES);
    }

    private static List<String> problems(String days) {
        return read(days).problems().stream().map(InputProblem::text).toList();
    }

    // EXACT: every cell of a full day.
    @Test
    void read_fullDay_givesEveryCell() {
        DiaryFile file = read("2026-11-09;yard door 9:00-12:30 (Pat), store window 13:00-24:00;10.5;24;"
                + "store 4.5, sail room 2;1.25;7:30, 19:00;north 2 dents, West nail not knuckle;north;on;JM;rain\n");

        assertEquals(List.of(), file.problems());
        DiaryDay day = file.diary().days().get(0);
        assertEquals(
                List.of(
                        new DoorSpell("store yard door", 540, 750, "Pat"),
                        new DoorSpell("store window", 780, 1440, "")),
                day.doors());
        assertEquals(3.5, day.doors().get(0).hours());
        assertEquals(
                new DiaryDay.Plant(
                        List.of(new Amount("", 10.5)),
                        List.of(new Amount("", 24)),
                        List.of(new Amount("store", 4.5), new Amount("sail room", 2)),
                        List.of(new Amount("", 1.25))),
                day.plant());
        assertEquals(
                List.of(LocalTime.of(7, 30), LocalTime.of(19, 0)), day.care().misted());
        assertEquals(
                List.of(
                        new HandMark("store north", 2, HandTest.Result.DENTS),
                        new HandMark("store west", 1, HandTest.Result.NAIL_NOT_KNUCKLE)),
                day.care().handTests());
        assertEquals(List.of("store north"), day.care().runningWet());
        assertEquals(Set.of(Column.values()), day.written());
    }

    // EXACT: a door that stands open while the clocks go back is open an hour longer by the sun.
    @Test
    void spell_overTheClockChange_keepsTheClock() {
        DoorSpell spell = new DoorSpell("door", 30, 180, "");
        ZoneId dublin = ZoneId.of("Europe/Dublin");

        assertEquals(Instant.parse("2026-10-24T23:30:00Z"), spell.from(LocalDate.of(2026, 10, 25), dublin));
        assertEquals(Instant.parse("2026-10-25T03:00:00Z"), spell.until(LocalDate.of(2026, 10, 25), dublin));
    }

    // EXACT: "shut", "0" and "no" are written and mean none; blank is not written.
    @Test
    void read_noneAndBlank_areToldApart() {
        List<DiaryDay> days = read("2026-11-09;shut;0;0;0;0;none;;no;off;;\n2026-11-10\n")
                .diary()
                .days();

        assertEquals(List.of(), days.get(0).doors());
        assertTrue(days.get(0).written().containsAll(List.of(Column.DOORS, Column.LITRES, Column.WET)));
        assertEquals(0.0, days.get(0).plant().litres().get(0).value());
        assertEquals(Set.of(Column.DATE), days.get(1).written());
    }

    // EXACT: every word for none makes 0; an empty list would leave the day to the timetable.
    @ParameterizedTest
    @ValueSource(strings = {"0", "no", "None", "off", "-"})
    void read_noneOfAnAmount_isZero(String none) {
        DiaryDay day = read("2026-11-09;;%s;%s;%s;%s\n".formatted(none, none, none, none))
                .diary()
                .days()
                .get(0);
        List<Amount> zero = List.of(new Amount("", 0.0));

        assertEquals(new DiaryDay.Plant(zero, zero, zero, zero), day.plant());
    }

    // EXACT: the letters that the printed form asks for, with and without the coat.
    @Test
    void read_lettersOfThePrintedForm_areTheWords() {
        DiaryDay day = read("2026-11-09;;;;;;;north D, west 2 n, north 2 H\n")
                .diary()
                .days()
                .get(0);

        assertEquals(
                List.of(
                        new HandMark("store north", 1, HandTest.Result.DENTS),
                        new HandMark("store west", 2, HandTest.Result.NAIL_NOT_KNUCKLE),
                        new HandMark("store north", 2, HandTest.Result.HARD)),
                day.care().handTests());
    }

    // PINNED: our own words.
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "9 Nov|diary.csv:2: date: \"9 Nov\"; must be a day such as 2026-11-09; the day is left out",
                "2026-11-09;yard door 12:30-09:00|diary.csv:2: doors open: \"yard door 12:30-09:00\"; is shut before it is opened; past midnight goes on with 00:00 on the next day; the day is left out",
                "2026-11-09;yard door 9:00-11:00, yard door 10:30-12:00|diary.csv:2: doors open: \"store yard door 09:00-11:00, store yard door 10:30-12:00\"; must not overlap; the day is left out",
                "2026-11-09;back door 9:00-11:00|diary.csv:2: doors open: \"back door\"; not on this site; there are: yard door, store window, sail room window; the day is left out",
                "2026-11-09;window 9:00-11:00|diary.csv:2: doors open: \"window\"; not on this site; there are: yard door, store window, sail room window; the day is left out",
                "2026-11-09;all day|diary.csv:2: doors open: \"all day\"; must be such as \"yard door 09:00-12:30 (Pat)\", or shut; the day is left out",
                "2026-11-09;;25;|diary.csv:2: heater hours: \"25.0\"; must be at most 24; the day is left out",
                "2026-11-09;;;;4,5|diary.csv:2: litres emptied: \"4,5\"; must be one number, or name the room of each; decimals with a point: 4.5; the day is left out",
                "2026-11-09;;;;store 2,8|diary.csv:2: litres emptied: \"store 2,8\"; must be one number, or name the room of each; decimals with a point: store 2.8; the day is left out",
                "2026-11-09;;;;store 2,8, sail room 3,5|diary.csv:2: litres emptied: \"store 2,8, sail room 3,5\"; must be one number, or name the room of each; decimals with a point: store 2.8, sail room 3.5; the day is left out",
                "2026-11-09;;store 5, 3|diary.csv:2: heater hours: \"store 5, 3\"; must be one number, or name the room of each; the day is left out",
                "2026-11-09;;1.5,2|diary.csv:2: heater hours: \"1.5,2\"; must be one number, or name the room of each; the day is left out",
                "2026-11-09;;-3;|diary.csv:2: heater hours: \"-3\"; must be a number, or a room and a number; the day is left out",
                "2026-11-09;;store 5, store 3|diary.csv:2: heater hours: \"store 5, store 3\"; must name each room once; the day is left out",
                "2026-11-09;;;;ten;;dawn|diary.csv:2: litres emptied: \"ten\"; must be a number, or a room and a number; misted at: \"dawn\"; must be a time such as 07:30; the day is left out",
                "2026-11-09;;;;;;;north soft|diary.csv:2: hand tests: \"north soft\"; must be such as \"north 1 dents\": wall, coat, then dents, nail not knuckle or hard, or D, N, H; the day is left out",
                "2026-11-09;;;;;;;;;;;;|diary.csv:2: 13 cells; must have 12 cells",
            })
    void read_badLine_isOneMessage(String line, String problem) {
        assertEquals(List.of(problem), problems(line + "\n2026-11-10;shut\n"));
        assertEquals(1, read(line + "\n2026-11-10;shut\n").diary().days().size());
    }

    @Test
    void read_dayTwiceAndWrongHeading_areTold() {
        assertEquals(
                List.of("diary.csv:3: 2026-11-09 again; must be there once; the first is kept"),
                problems("2026-11-09;shut\n2026-11-09\n"));
        assertTrue(DiaryFile.parse("date;dors\n", "d.csv", PLACES)
                .problems()
                .get(0)
                .text()
                .startsWith("d.csv:1: heading \"date;dors\"; must have a heading with date and any of: doors open"));
        assertEquals(
                1, DiaryFile.parse("# nothing\n\n", "d.csv", PLACES).problems().size());
    }

    private static List<LocalDate> dates(String... cells) {
        return read(String.join(";shut\n", cells) + ";shut\n").diary().days().stream()
                .map(DiaryDay::date)
                .toList();
    }

    // EXACT: 19 is no month, so the day is first in all of the file, or the month; a name leaves nothing open.
    @Test
    void read_datesOfASpreadsheet_areTakenInTheOneOrderOfTheFile() {
        LocalDate second = LocalDate.of(2026, 11, 2);
        LocalDate nineteenth = LocalDate.of(2026, 11, 19);
        List<LocalDate> both = List.of(second, nineteenth);

        assertEquals(both, dates("2/11/2026", "19/11/2026"));
        assertEquals(both, dates("02.11.2026", "19.11.2026"));
        assertEquals(both, dates("11/2/2026", "11/19/2026"));
        assertEquals(both, dates("2026-11-02", "19/11/2026"));
        assertEquals(both, dates("2 Nov 2026", "2026/11/19"));
        assertEquals(both, dates("2/11/2026", "31/11/2026", "19/11/2026"), "31 November is left out, and nothing else");
    }

    // PINNED: our own words. EXACT: what leaves it open which number is the month is one message, and no day of it
    // counts.
    @Test
    void read_datesInOpenOrder_areOneProblem() {
        String lines = "2026-11-01;shut\n02/11/2026;shut\n03/11/2026;ajar\n";

        assertEquals(
                List.of(
                        "diary.csv:3: date: \"02/11/2026\", and this file does not say which number is the month; "
                                + "must have the year first, such as 2026-11-02 if 2 November is meant; 2 such days are left out"),
                problems(lines));
        assertEquals(1, read(lines).diary().days().size());
        assertEquals(1, problems("19/11/2026;shut\n11/19/2026;shut\n").size(), "each says the contrary of the other");
    }

    // EXACT: two digits may be a year or a day, and 31 November is no day.
    @ParameterizedTest
    @ValueSource(strings = {"19/11/26", "31/11/2026", "19/11", "0/0/2026"})
    void read_noDay_isAProblemOfItsLine(String date) {
        assertEquals(
                List.of("diary.csv:2: date: \"" + date + "\"; must be a day such as 2026-11-09; the day is left out"),
                problems(date + ";shut\n2026-11-10;shut\n"));
    }

    // EXACT: each gap that was put in.
    @Test
    void gaps_areListed() {
        Diary diary = read("""
                2026-11-09;yard door 9:00-10:00 (Pat);;24;4
                2026-11-10;;;12
                2026-11-12;yard door 9:00-10:00;;;3
                2026-11-16;shut;;;0;2
                """).diary();

        assertEquals(
                List.of(
                        "no readable line for 11 Nov",
                        "no readable line for 13 Nov to 15 Nov",
                        "doors not written: 10 Nov",
                        "who shut the doors not written: 12 Nov",
                        "dehumidifier ran, litres not written: 10 Nov",
                        "litres emptied, dehumidifier hours not written: 12 Nov",
                        "gas burnt, heater hours not written: 16 Nov"),
                DiaryGaps.of(diary));
    }

    // EXACT: the blank form reads without a problem and says nothing.
    @Test
    void form_readAsItIs_hasItsDaysAndNothingElse() {
        String form = String.join("\n", DiaryForm.lines(PLACES, LocalDate.of(2026, 10, 12)));

        DiaryFile file = DiaryFile.parse(form, "diary.csv", PLACES);

        assertEquals(List.of(), file.problems());
        assertEquals(28, file.diary().days().size());
        assertEquals(LocalDate.of(2026, 11, 8), file.diary().days().get(27).date());
        assertTrue(file.diary().days().stream().allMatch(day -> day.written().equals(Set.of(Column.DATE))));
    }

    @Provide
    Arbitrary<String> junk() {
        return Arbitraries.strings()
                .withChars(";,:-()\"0129 abdenorts\0\t\u00e9")
                .ofMaxLength(40);
    }

    /** One line is overwritten with anything: the other days are read, and the file never fails. */
    @Property(tries = 300)
    void read_oneLineOverwritten_keepsTheOthers(
            @ForAll @IntRange(min = 0, max = 9) int place, @ForAll("junk") String junk) {
        List<String> days = IntStream.range(0, 10)
                .mapToObj(i -> i == place ? junk : LocalDate.of(2026, 11, 9).plusDays(i) + ";shut;" + i)
                .toList();

        DiaryFile file = read(String.join("\n", days) + "\n");

        assertTrue(file.diary().days().size() >= 9, junk);
        assertTrue(file.problems().size() <= 1, junk);
    }
}
