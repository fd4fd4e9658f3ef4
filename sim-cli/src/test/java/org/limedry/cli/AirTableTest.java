package org.limedry.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.limedry.air.MoistAir;
import org.limedry.cli.ask.ExitCode;
import org.limedry.reference.ReferenceTable;

/** The figures that {@code limedry air --table} adds to a table. */
final class AirTableTest {
    private static final List<ReferenceTable.Row> MAGNUS =
            ReferenceTable.load("psychro/magnus_grid").rows();

    private static final List<ReferenceTable.Row> LIBRARY =
            ReferenceTable.load("psychro/oracle_library_grid").rows();

    @TempDir
    private Path folder;

    private List<List<String>> table(String input, String... options) throws IOException {
        Path file = Files.writeString(folder.resolve("air.csv"), input);
        List<String> args = new ArrayList<>(List.of("air", "--table", file.toString()));
        args.addAll(List.of(options));
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();

        int code = Main.run(args.toArray(String[]::new), new PrintWriter(out), new PrintWriter(err));

        assertEquals("", err.toString());
        assertEquals(ExitCode.DONE.code(), code);
        return out.toString().lines().map(line -> List.of(line.split(",", -1))).toList();
    }

    // EXACT: the order of columns that the command promises.
    @Test
    void columns_standInTheOrderPromised() throws IOException {
        List<String> plain =
                table("celsius,rhPercent,pressurePa\n12,80,101325\n").get(0);
        List<String> walled = table("wallCelsius,pressurePa,rhPercent,celsius\n7,101325,80,12\n")
                .get(0);

        String added = "saturationPressurePa,vapourPressurePa,dewPointCelsius,frostPointCelsius,wetBulbCelsius,"
                + "humidityRatioKgPerKg,absoluteHumidityGPerM3,enthalpyKJPerKg,specificVolumeM3PerKg";
        assertEquals("celsius,rhPercent,pressurePa," + added, String.join(",", plain));
        assertEquals(
                "wallCelsius,pressurePa,rhPercent,celsius," + added + ",surfaceRhPercent,condenses",
                String.join(",", walled));
    }

    // COMPUTED: psychro/magnus_grid; 1e-6 relative as stated with the table, and the rounding of its print.
    @Test
    void magnusGrid_comesOut_rowByRow() throws IOException {
        String rows = MAGNUS.stream()
                .map(row -> row.text("t_C") + "," + row.text("rh_over_water_pct") + ","
                        + new BigDecimal(row.text("p_kPa")).movePointRight(3).toPlainString() + ",line " + row.line())
                .collect(Collectors.joining("\n"));
        List<List<String>> found = table("celsius,rhPercent,pressurePa,note\n" + rows + "\n");
        List<String> columns = List.of(
                "e_sat_water_Pa",
                "e_Pa",
                "dewpoint_water_C",
                "frostpoint_ice_C",
                "wetbulb_thermodynamic_C",
                "W_kg_per_kg",
                "abs_humidity_g_per_m3",
                "h_kJ_per_kg_dry",
                "v_m3_per_kg_dry");

        int checked = 0;
        for (int i = 0; i < MAGNUS.size(); i++) {
            ReferenceTable.Row expected = MAGNUS.get(i);
            List<String> cells = found.get(i + 1);
            assertEquals("line " + expected.line(), cells.get(3));
            for (int column = 0; column < columns.size(); column++) {
                checked += assertSame(expected, columns.get(column), cells.get(4 + column));
            }
        }
        assertEquals(391, found.size());
        // The table leaves 206 frost points and 139 wet bulbs blank.
        assertEquals(390 * 9 - 206 - 139, checked);
    }

    private static int assertSame(ReferenceTable.Row expected, String column, String cell) {
        if (expected.text(column).isEmpty()) {
            return 0;
        }
        double printed = expected.number(column);
        double rounding = new BigDecimal(expected.text(column)).ulp().doubleValue() / 2.0;
        assertEquals(printed, Double.parseDouble(cell), 1e-6 * Math.abs(printed) + rounding * 1.000001, column);
        return 1;
    }

    private static String libraryInput() {
        return LIBRARY.stream()
                .map(row -> row.text("t_C") + ","
                        + new BigDecimal(row.text("rh_fraction"))
                                .movePointRight(2)
                                .toPlainString() + ","
                        + row.text("p_Pa"))
                .collect(Collectors.joining("\n", "celsius,rhPercent,pressurePa\n", "\n"));
    }

    private static void assertNear(ReferenceTable.Row row, String column, String cell, double tolerance) {
        assertEquals(row.number(column), Double.parseDouble(cell), tolerance, column + " in line " + row.line());
    }

    // COMPUTED: psychro/oracle_library_grid, humidity over ice below 0 °C; the tolerances stated with it for WMO
    // Magnus.
    @Test
    void libraryGrid_comesOut_overIce() throws IOException {
        List<List<String>> found = table(libraryInput(), "--below-zero", "ice");

        int wetBulbs = 0;
        for (int i = 0; i < LIBRARY.size(); i++) {
            ReferenceTable.Row row = LIBRARY.get(i);
            List<String> cells = found.get(i + 1);
            String dewOrFrost = row.number("dewpoint_refined_C") < 0.0 ? cells.get(6) : cells.get(5);
            assertNear(row, "p_sat_Pa", cells.get(3), 0.0035 * row.number("p_sat_Pa"));
            assertNear(row, "dewpoint_refined_C", dewOrFrost, 0.06);
            assertNear(row, "W_kg_per_kg", cells.get(8), 0.0035 * row.number("W_kg_per_kg"));
            double enthalpy = 1000.0 * Double.parseDouble(cells.get(10));
            assertEquals(row.number("h_J_per_kg_dry"), enthalpy, row.number("t_C") <= 30.0 ? 400.0 : 600.0);
            assertNear(row, "v_m3_per_kg_dry", cells.get(11), 0.0003 * row.number("v_m3_per_kg_dry"));
            if (Math.abs(row.number("wetbulb_refined_C")) > 0.1 && row.number("wetbulb_ambiguous") == 0.0) {
                assertNear(row, "wetbulb_refined_C", cells.get(7), 0.06);
                wetBulbs++;
            }
        }
        assertEquals(631, found.size());
        assertEquals(624, wetBulbs);
    }

    // COMPUTED: the same grid by the library's own equations, 1e-6 relative and 0.001 K as stated with it. At 0 °C the
    // library counts over ice and this command over water: 1e-4 of the pressure.
    @Test
    void libraryGrid_comesOut_byItsOwnFormula() throws IOException {
        List<List<String>> found = table(libraryInput(), "--formula", "HYLAND_WEXLER_1983", "--below-zero", "ice");

        int wetBulbs = 0;
        for (int i = 0; i < LIBRARY.size(); i++) {
            ReferenceTable.Row row = LIBRARY.get(i);
            List<String> cells = found.get(i + 1);
            double relative = row.number("t_C") == 0.0 ? 1.2e-4 : 1e-6;
            assertNear(row, "p_sat_Pa", cells.get(3), relative * row.number("p_sat_Pa"));
            assertNear(row, "p_v_Pa", cells.get(4), relative * row.number("p_v_Pa") + 1e-6); // printed so
            if (row.number("t_C") != 0.0 && row.number("wetbulb_ambiguous") == 0.0) {
                assertNear(row, "wetbulb_refined_C", cells.get(7), 0.001);
                wetBulbs++;
            }
        }
        assertEquals(585, wetBulbs);
    }

    // EXACT: what is written reads back as the very double that the library computes.
    @Test
    void figures_haveFullPrecision() throws IOException {
        MoistAir air = MoistAir.of(12.3, 0.715, 99_870.0);
        List<String> cells = table("celsius,rhPercent,pressurePa,wallCelsius\n12.3,71.5,99870,6.6\n")
                .get(1);

        assertEquals(air.saturationPressurePa(), Double.parseDouble(cells.get(4)));
        assertEquals(air.vapourPressurePa(), Double.parseDouble(cells.get(5)));
        assertEquals(air.dewPointCelsius().orElseThrow(), Double.parseDouble(cells.get(6)));
        assertEquals("", cells.get(7), "no frost above 0 °C");
        assertEquals(air.wetBulbCelsius().orElseThrow(), Double.parseDouble(cells.get(8)));
        assertEquals(air.humidityRatio(), Double.parseDouble(cells.get(9)));
        assertEquals(1000.0 * air.absoluteHumidityKgPerM3(), Double.parseDouble(cells.get(10)));
        assertEquals(air.enthalpyKJPerKg(), Double.parseDouble(cells.get(11)));
        assertEquals(air.specificVolumeM3PerKg(), Double.parseDouble(cells.get(12)));
        assertEquals(100.0 * air.relativeHumidityAt(6.6), Double.parseDouble(cells.get(13)));
        assertEquals("true", cells.get(14));
    }

    // EXACT: the input comes back as it was written, blank walls and quotes included.
    @Test
    void input_isKeptAsItIs() throws IOException {
        List<List<String>> found = table(
                "# a remark\nroom,celsius,rhPercent,pressurePa,wallCelsius\nstore, 12.00,8e1,101325.0,\n\"a\"\"b\",5,20,100000,9\n");

        assertEquals(
                List.of("store", " 12.00", "8e1", "101325.0", ""), found.get(1).subList(0, 5));
        assertEquals(List.of("", ""), found.get(1).subList(14, 16));
        assertEquals("\"a\"\"b\"", found.get(2).get(0));
        assertEquals("false", found.get(2).get(15));
    }

    // EXACT: a byte order mark, line ends of another system and blank lines change nothing.
    @Test
    void fileFromASpreadsheet_givesTheSame() throws IOException {
        String plain = "celsius,rhPercent,pressurePa\n12,80,101325\n-3,95,99000\n";

        List<List<String>> found = table("\uFEFF" + plain.replace("\n", "\r\n") + "\r\n");

        assertEquals(table(plain), found);
        assertEquals(3, found.size());
    }

    // EXACT: below the heading nothing is a remark, and no row is lost.
    @Test
    void rowThatBeginsWithAHash_isKept() throws IOException {
        List<List<String>> found = table("# a remark\nroom,celsius,rhPercent,pressurePa\n#3,12,80,101325\n");

        assertEquals("#3", found.get(1).get(0));
        assertEquals(2, found.size());
    }

    // EXACT: at every corner of what is taken the cells are numbers or blank, in their physical order.
    @ParameterizedTest
    @CsvSource({"water, -45", "ice, -65"})
    void cornersOfTheRange_giveNumbers(String belowZero, double lowest) throws IOException {
        StringBuilder rows = new StringBuilder("celsius,rhPercent,pressurePa,wallCelsius\n");
        for (double celsius : new double[] {lowest, -0.01, 0.0, 0.01, 60.0}) {
            for (String rest : List.of("0,20000", "0,120000", "1e-9,101325", "50,101325", "100,20000", "100,120000")) {
                rows.append(celsius).append(',').append(rest).append(',').append(lowest);
                rows.append('\n').append(celsius).append(',').append(rest).append(",60\n");
            }
        }

        List<List<String>> found = table(rows.toString(), "--below-zero", belowZero);

        assertEquals(61, found.size());
        for (List<String> cells : found.subList(1, 61)) {
            assertPlausible(cells);
        }
    }

    private static void assertPlausible(List<String> cells) {
        double celsius = Double.parseDouble(cells.get(0));
        for (String cell : cells.subList(4, 14)) {
            assertTrue(cell.isEmpty() || Double.isFinite(Double.parseDouble(cell)), cells.toString());
        }
        double wetBulb = Double.parseDouble(cells.get(8));
        assertTrue(wetBulb <= celsius + 1e-6, cells.toString()); // the root is found to 1e-12 K, saturation to 1e-9
        String dewPoint = cells.get(6);
        assertTrue(dewPoint.isEmpty() || Double.parseDouble(dewPoint) <= wetBulb + 1e-6, cells.toString()); // the same
        assertEquals(Double.parseDouble(cells.get(13)) >= 100.0, Boolean.parseBoolean(cells.get(14)));
    }

    // EXACT: below 0 °C the wick is of the phase that humidity is counted over, so the wet bulb keeps within its
    // bounds.
    @Test
    void wetBulbBelowZero_isOfThePhaseAskedFor() throws IOException {
        String input = "celsius,rhPercent,pressurePa\n5,20,100000\n-5,100,100000\n";
        List<List<String>> water = table(input, "--below-zero", "water");
        List<List<String>> ice = table(input, "--below-zero", "ice");

        double supercooled = Double.parseDouble(water.get(1).get(7));
        double frozen = Double.parseDouble(ice.get(1).get(7));
        assertTrue(frozen < supercooled && supercooled < 0.0, "ice takes more heat: " + frozen + ", " + supercooled);
        assertEquals(-5.0, Double.parseDouble(water.get(2).get(7)), 1e-9); // saturated air is its own wet bulb
        assertEquals(-5.0, Double.parseDouble(ice.get(2).get(7)), 1e-9); // saturated air is its own wet bulb
    }

    // EXACT: a formula that ends at 0 °C leaves the dew point below it blank.
    @Test
    void formulaThatEndsAtZero_leavesCellsBlank() throws IOException {
        List<String> cells = table("celsius,rhPercent,pressurePa\n6,20,100000\n", "--formula", "ISO13788")
                .get(1);

        assertEquals("", cells.get(5));
        assertTrue(Double.parseDouble(cells.get(6)) < 0.0, cells.toString());
        assertEquals("", cells.get(7));
    }
}
