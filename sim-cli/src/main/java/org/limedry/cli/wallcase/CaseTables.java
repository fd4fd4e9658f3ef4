package org.limedry.cli.wallcase;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.limedry.cli.problem.InputProblem;
import org.limedry.cli.readings.NumberTable;
import org.limedry.cli.readings.TextFile;
import org.limedry.cli.site.schema.Place;
import org.limedry.climate.AirSeries;
import org.limedry.material.LinearTable;
import org.limedry.material.SuctionTable;
import org.limedry.units.Units;

/** Reads the CSV tables that a wall case names; files are looked for beside the case. */
final class CaseTables {
    private static final List<String> SUCTION_COLUMNS = List.of("suctionPa", "waterKgPerM3", "liquidConductivityS");
    private static final List<String> WATER_COLUMNS =
            List.of("waterKgPerM3", "vapourPermeabilityKgPerMSPa", "conductivityWPerMK");
    private static final List<String> SERIES_COLUMNS = List.of("hour", "celsius", "rhPercent");
    private static final int LEAST_ROWS = 2;
    private static final long MOST_BYTES = 50_000_000;

    private final Path folder;
    private final Path shownFolder;

    /**
     * Starts to read.
     *
     * @param caseFile the case as the user named it
     */
    CaseTables(Path caseFile) {
        Path parent = caseFile.toAbsolutePath().normalize().getParent();
        folder = parent == null ? caseFile : parent;
        Path shownParent = caseFile.getParent();
        shownFolder = shownParent == null ? Path.of("") : shownParent;
    }

    /** The two functions of water that one table tells. */
    record OfWater(LinearTable permeability, LinearTable conductivity) {}

    /** Returns water and liquid conductivity by suction, or reports what is wrong with the table. */
    Optional<SuctionTable> suction(String name, Place place) {
        return read(name, place, SUCTION_COLUMNS).flatMap(table -> {
            List<NumberTable.Row> rows = ordered(table, LEAST_ROWS);
            NumberTable.Row before = null;
            for (NumberTable.Row row : rows) {
                atLeast(table, row, 0, Double.MIN_VALUE, "must be above 0");
                atLeast(table, row, 1, 0.0, "must be at least 0");
                atLeast(table, row, 2, 0.0, "must be at least 0");
                if (before != null && row.at(1) > before.at(1)) {
                    table.refuse(
                            row, 1, "must not be more than at the lower suction beside it, on line " + before.line());
                }
                before = row;
            }
            return sound(table, place)
                    ? Optional.of(new SuctionTable(column(rows, 0), column(rows, 1), column(rows, 2)))
                    : Optional.empty();
        });
    }

    /** Returns permeability and conductivity by water, or reports what is wrong with the table. */
    Optional<OfWater> water(String name, Place place) {
        return read(name, place, WATER_COLUMNS).flatMap(table -> {
            List<NumberTable.Row> rows = ordered(table, LEAST_ROWS);
            for (NumberTable.Row row : rows) {
                atLeast(table, row, 0, 0.0, "must be at least 0");
                atLeast(table, row, 1, 0.0, "must be at least 0");
                atLeast(table, row, 2, Double.MIN_VALUE, "must be above 0");
            }
            return sound(table, place)
                    ? Optional.of(new OfWater(
                            new LinearTable(column(rows, 0), column(rows, 1)),
                            new LinearTable(column(rows, 0), column(rows, 2))))
                    : Optional.empty();
        });
    }

    /** Returns the rows of a climate, or reports what is wrong with them. */
    Optional<List<AirSeries.Row>> series(String name, Place place, double leastRhPercent) {
        return read(name, place, SERIES_COLUMNS).flatMap(table -> {
            rising(table);
            enough(table, LEAST_ROWS);
            for (NumberTable.Row row : table.rows()) {
                if (!(row.at(1) >= CaseKeys.COLDEST_CELSIUS && row.at(1) <= CaseKeys.WARMEST_CELSIUS)) {
                    table.refuse(row, 1, "must be -60 to 90");
                }
                if (!(row.at(2) >= leastRhPercent && row.at(2) <= 100.0)) {
                    table.refuse(row, 2, leastRhPercent > 0.0 ? "must be above 0 and at most 100" : "must be 0 to 100");
                }
            }
            return sound(table, place)
                    ? Optional.of(table.rows().stream().map(CaseTables::air).toList())
                    : Optional.empty();
        });
    }

    private static AirSeries.Row air(NumberTable.Row row) {
        return new AirSeries.Row(row.at(0), row.at(1), Units.fractionFromPercent(row.at(2)));
    }

    private Optional<NumberTable> read(String name, Place place, List<String> columns) {
        try {
            Path file = folder.resolve(name);
            String shown = shownFolder.resolve(name).toString();
            TextFile.Content content = TextFile.read(file, shown, place.path(), MOST_BYTES);
            if (content instanceof TextFile.Text text) {
                return Optional.of(NumberTable.parse(text.text(), shown, columns));
            }
            InputProblem problem = ((TextFile.Unreadable) content).problem();
            place.problem("\"" + name + "\": " + problem.found(), problem.rule());
        } catch (InvalidPathException e) {
            place.problem("\"" + name + "\"", "must be the name of a file");
        }
        return Optional.empty();
    }

    /** Returns the rows with the first column rising, whichever way round they stand; reports those out of order. */
    private static List<NumberTable.Row> ordered(NumberTable table, int least) {
        List<NumberTable.Row> rows = new ArrayList<>(table.rows());
        enough(table, least);
        if (rows.size() > 1 && rows.get(1).at(0) < rows.get(0).at(0)) {
            for (int k = 1; k < rows.size(); k++) {
                if (!(rows.get(k).at(0) < rows.get(k - 1).at(0))) {
                    table.refuse(rows.get(k), 0, "must fall from row to row, as in the rows before");
                }
            }
            Collections.reverse(rows);
        } else {
            rising(table);
        }
        return rows;
    }

    private static void rising(NumberTable table) {
        List<NumberTable.Row> rows = table.rows();
        for (int k = 1; k < rows.size(); k++) {
            if (!(rows.get(k).at(0) > rows.get(k - 1).at(0))) {
                table.refuse(rows.get(k), 0, "must rise from row to row");
            }
        }
    }

    private static void enough(NumberTable table, int least) {
        if (table.problems().isEmpty() && table.rows().size() < least) {
            table.refuse(table.rows().isEmpty() ? "no rows" : "1 row", "must have at least " + least);
        }
    }

    private static void atLeast(NumberTable table, NumberTable.Row row, int column, double least, String rule) {
        if (!(row.at(column) >= least)) {
            table.refuse(row, column, rule);
        }
    }

    private static boolean sound(NumberTable table, Place place) {
        table.problems().forEach(place.problems()::add);
        return table.problems().isEmpty();
    }

    private static double[] column(List<NumberTable.Row> rows, int column) {
        return rows.stream().mapToDouble(row -> row.at(column)).toArray();
    }
}
