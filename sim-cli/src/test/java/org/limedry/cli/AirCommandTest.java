package org.limedry.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.limedry.cli.ask.ExitCode;

final class AirCommandTest {
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder;

    private int air(String... options) {
        String[] args = Stream.concat(Stream.of("air"), Stream.of(options)).toArray(String[]::new);
        return Main.run(args, new PrintWriter(out), new PrintWriter(err));
    }

    private Path file(String... lines) throws IOException {
        return Files.writeString(folder.resolve("air.csv"), String.join("\n", lines) + "\n");
    }

    // COMPUTED: Python 3.11, WMO Magnus over water and the equations of psychro/magnus_grid, to the digits printed
    // here.
    @Test
    void state_isToldInWordsThenFigures() {
        int code = air("--celsius", "12", "--rh", "80", "--wall", "7");

        assertEquals(ExitCode.DONE.code(), code);
        assertEquals("", err.toString());
        List<String> lines = out.toString().lines().map(String::strip).toList();
        assertEquals(
                List.of(
                        "Air at 12.0 C and 80 % relative humidity can take up 2.1 g more water per m3 before it is full.",
                        "Dew forms on everything at 8.7 C or colder.",
                        "A wet face in a draught cools towards 10.2 C.",
                        "A wall at 7.0 C: dew forms on it; it takes water from the air.",
                        ""),
                lines.subList(0, 5));
        for (String figure : List.of(
                "saturation pressure 1399.98 Pa",
                "vapour pressure 1119.98 Pa",
                "dew point over water 8.65 C",
                "frost point over ice none",
                "wet bulb 10.17 C",
                "humidity ratio 6.951 g/kg dry air",
                "absolute humidity 8.511 g/m3",
                "enthalpy 29.61 kJ/kg dry air",
                "specific volume 0.8168 m3/kg dry air",
                "density 1.2328 kg/m3",
                "relative humidity at the wall 111.9 %")) {
            assertTrue(lines.stream().map(line -> line.replaceAll(" +", " ")).anyMatch(figure::equals), figure);
        }
    }

    // COMPUTED: Python 3.11, WMO Magnus: 361.56 Pa over ice is -6.23 C; 736.6/1147.4 is 64 %; 2558.1 Pa at 21.5 C is
    // 18.8 g/m3; 305.6 Pa is saturated at -8.16 C over ice and at -9.20 C over water.
    @ParameterizedTest
    @CsvSource({ // options that change what the words say
        "--celsius 8 --rh 100, is full: it takes up no more water",
        "--celsius -5 --rh 90 --below-zero ice, Frost forms on everything at -6.2 C or colder.",
        "--celsius 10 --rh 60 --wall 9, A wall at 9.0 C: it stays free of dew; the air at its face is at 64 %",
        "--celsius 2 --rh 90 --wall -3, A wall at -3.0 C: frost forms on it.",
        "--celsius 0 --rh 50, Frost forms on everything at -8.2 C or colder.",
        "--celsius 0 --rh 50 --wall -8.5, A wall at -8.5 C: frost forms on it.",
        "--celsius 0 --rh 50 --wall -8, A wall at -8.0 C: it stays free of dew; the air at its face is at 91 %",
        "--celsius 21.5 --rh 0, can take up 18.8 g more water per m3"
    })
    void state_saysWhatItMeans(String options, String words) {
        int code = air(options.split(" ", -1));

        assertEquals(ExitCode.DONE.code(), code, err.toString());
        assertTrue(out.toString().contains(words), out.toString());
        assertFalse(out.toString().contains("NaN"), out.toString());
    }

    @ParameterizedTest
    @CsvSource({
        "--celsius 60.1 --rh 50, command line: --celsius: 60.1; must be -45 to 60 °C",
        "--celsius 12 --rh 100.5, command line: --rh: 100.5; must be 0 to 100 %",
        "--celsius 12 --rh NaN, command line: --rh: NaN; must be 0 to 100 %",
        "--celsius NaN --rh 50, command line: --celsius: NaN; must be -45 to 60 °C",
        "--celsius 12 --rh 50 --pressure 1013, command line: --pressure: 1013.0; must be 20000 to 120000 Pa",
        "--celsius 12 --rh 50 --wall -46, command line: --wall: -46.0; must be -45 to 60 °C",
        "--celsius 12 --rh 50 --formula IAPWS_R14_08, must be below 0 °C: IAPWS_R14_08 has no formula over water",
        "--celsius -2 --rh 50 --formula FAO56 --below-zero ice, must be 0 °C or above: FAO56 has no formula over ice",
        "--celsius -2 --rh 50 --formula ISO13788, must be 0 to 60 °C",
        "--celsius 130 --rh 50 --formula WAGNER_PRUSS_AUX, must be above the saturation pressure at this temperature"
    })
    void state_outOfRange_isRefused(String options, String problem) {
        int code = air(options.split(" ", -1));

        assertEquals(ExitCode.BAD_INPUT.code(), code);
        assertEquals("", out.toString());
        assertTrue(err.toString().contains(problem), err.toString());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "--celsius 12",
                "--rh 50",
                "--celsius twelve --rh 50",
                "--celsius 12 --rh 50 --table a.csv",
                "--out b.csv",
                "--celsius 12 --rh 50 --formula MAGNUS",
                "--celsius 12 --rh 50 --below-zero snow"
            })
    void usage_thatCannotBe_isRefused(String options) {
        int code = air(options.isEmpty() ? new String[0] : options.split(" ", -1));

        assertEquals(ExitCode.BAD_INPUT.code(), code);
        assertEquals("", out.toString());
        assertTrue(err.toString().matches("error: .+; see limedry air --help\\R"), err.toString());
    }

    @Test
    void table_withOut_holdsWhatIsPrintedWithout() throws IOException {
        Path table = file("celsius,rhPercent,pressurePa", "12,80,101325");
        Path result = folder.resolve("result.csv");

        assertEquals(ExitCode.DONE.code(), air("--table", table.toString()));
        int code = air("--table", table.toString(), "--out", result.toString());

        assertEquals(ExitCode.DONE.code(), code, err.toString());
        assertEquals(out.toString(), Files.readString(result));
        assertEquals(List.of("air.csv", "result.csv"), filesThere());
    }

    private List<String> filesThere() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> String.valueOf(file.getFileName()))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void tableWithBadRows_tellsEveryProblem_andWritesNothing() throws IOException {
        Path table = file(
                "room,celsius,rhPercent,pressurePa,wallCelsius",
                "store,12;0,80,101325,7",
                "attic,NaN,140,1000,,",
                "porch,,20,100000,-80",
                "",
                "porch,70,-1,100000,2d");
        Path result = Files.writeString(folder.resolve("result.csv"), "what was there");

        int code = air("--table", table.toString(), "--out", result.toString());

        assertEquals(ExitCode.BAD_INPUT.code(), code);
        assertEquals("", out.toString());
        assertEquals("what was there", Files.readString(result));
        assertEquals(List.of("air.csv", "result.csv"), filesThere());
        assertEquals(
                List.of(
                        table + ":2: celsius: \"12;0\"; must be a number with a decimal point",
                        table + ":3: 6 cells; must have 5, as the heading has; "
                                + "write numbers with a decimal point, not a comma",
                        table + ":4: celsius: blank; must be a number with a decimal point",
                        table + ":4: wallCelsius: -80; must be -45 to 60 °C, the range of WMO8_MAGNUS over water",
                        table + ":6: celsius: 70; must be -45 to 60 °C, the range of WMO8_MAGNUS over water",
                        table + ":6: rhPercent: -1; must be 0 to 100 %",
                        table + ":6: wallCelsius: \"2d\"; must be a number with a decimal point"),
                err.toString().lines().toList().subList(0, 7));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "celsius,rhPercent,pressurePa|: there are no rows in it; must have a row for each state of air",
                "celsius,rhPercent|:1: pressurePa: no such column; must be in the heading",
                "celsius;rhPercent;pressurePa|:1: columns parted by semicolons; must be parted by commas",
                "celsius,rhPercent,pressurePa,celsius|:1: celsius: this column stands twice; must stand once",
                "celsius,rhPercent,pressurePa,condenses|:1: condenses: this column is one of the results; must not be",
                "\"celsius|; "
            })
    void tableWithABadHeading_isRefused(String heading, String problem) throws IOException {
        Path table = file(heading);

        int code = air("--table", table.toString());

        assertEquals(ExitCode.BAD_INPUT.code(), code);
        assertEquals("", out.toString());
        assertTrue(err.toString().startsWith(table.toString()), err.toString());
        assertTrue(err.toString().contains(problem), err.toString());
    }

    // EXACT: each cell that is no number, or not in the range of the default formula, is named with its line and
    // column.
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "NaN,80,101325|celsius: \"NaN\"; must be a number with a decimal point",
                "12,NaN,101325|rhPercent: \"NaN\"; must be a number with a decimal point",
                "12,80,Infinity|pressurePa: \"Infinity\"; must be a number with a decimal point",
                "12,80,-inf|pressurePa: \"-inf\"; must be a number with a decimal point",
                "\"12,5\",80,101325|celsius: \"12,5\"; must be a number with a decimal point",
                "12,5,80,101325|4 cells; must have 3, as the heading has; write numbers with a decimal point, not a comma",
                "12,80|2 cells; must have 3, as the heading has",
                "-45.001,80,101325|celsius: -45.001; must be -45 to 60 °C, the range of WMO8_MAGNUS over water",
                "60.001,80,101325|celsius: 60.001; must be -45 to 60 °C, the range of WMO8_MAGNUS over water",
                "12,-0.001,101325|rhPercent: -0.001; must be 0 to 100 %",
                "12,100.001,101325|rhPercent: 100.001; must be 0 to 100 %",
                "12,80,19999.9|pressurePa: 19999.9; must be 20000 to 120000 Pa",
                "12,80,120000.1|pressurePa: 120000.1; must be 20000 to 120000 Pa",
                "12,80,1e400|pressurePa: 1e400; must be 20000 to 120000 Pa"
            })
    void tableWithABadCell_saysWhereAndWhat(String row, String problem) throws IOException {
        Path table = file("celsius,rhPercent,pressurePa", "12,80,101325", row);

        int code = air("--table", table.toString());

        assertEquals(ExitCode.BAD_INPUT.code(), code);
        assertEquals("", out.toString());
        assertEquals(
                List.of(table + ":3: " + problem, "1 problem. Nothing was run, nothing was written."),
                err.toString().lines().toList());
    }

    // EXACT: four files that are no tables, a problem each.
    @Test
    void tableThatIsNone_isRefused() throws IOException {
        Path empty = Files.writeString(folder.resolve("empty.csv"), "");
        Path binary = Files.write(folder.resolve("binary.csv"), new byte[] {(byte) 0xff, 0, 7, (byte) 0xfe});

        assertEquals(ExitCode.BAD_INPUT.code(), air("--table", empty.toString()));
        assertEquals(ExitCode.BAD_INPUT.code(), air("--table", binary.toString()));
        assertEquals(ExitCode.BAD_INPUT.code(), air("--table", folder.toString()));
        assertEquals(
                ExitCode.BAD_INPUT.code(),
                air("--table", folder.resolve("gone.csv").toString()));

        List<String> problems = err.toString()
                .lines()
                .filter(line -> line.contains(folder.toString()))
                .toList();
        assertEquals(4, problems.size());
        assertTrue(problems.get(0).contains("empty.csv: there is nothing in it"), problems.get(0));
        assertTrue(problems.get(1).contains("binary.csv: this is not text"), problems.get(1));
        assertTrue(problems.get(2).contains("this is a folder"), problems.get(2));
        assertTrue(problems.get(3).contains("gone.csv: there is no such file"), problems.get(3));
    }

    // EXACT: a folder that is not there yet is made, as for the results of a run.
    @Test
    void out_inANewFolder_isWritten() throws IOException {
        Path table = file("celsius,rhPercent,pressurePa", "12,80,101325");
        Path result = folder.resolve("new").resolve("result.csv");

        int code = air("--table", table.toString(), "--out", result.toString());

        assertEquals(ExitCode.DONE.code(), code, err.toString());
        assertEquals(2, Files.readAllLines(result).size());
        assertEquals(List.of("air.csv", "new"), filesThere());
    }

    @Test
    void out_thatCannotBeWritten_isRefused() throws IOException {
        Path table = file("celsius,rhPercent,pressurePa", "12,80,101325");
        Path underAFile = table.resolve("result.csv");

        assertEquals(ExitCode.BAD_INPUT.code(), air("--table", table.toString(), "--out", folder.toString()));
        assertEquals(ExitCode.BAD_INPUT.code(), air("--table", table.toString(), "--out", underAFile.toString()));
        assertEquals(ExitCode.BAD_INPUT.code(), air("--table", table.toString(), "--out", "/"));

        assertTrue(err.toString().contains("--out: " + folder + " is a folder"), err.toString());
        assertTrue(err.toString().contains("--out: " + table + " is a file"), err.toString());
        assertTrue(err.toString().contains("/: --out: this is a folder; must be a file"), err.toString());
        assertEquals(List.of("air.csv"), filesThere());
    }
}
