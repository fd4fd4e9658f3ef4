package org.limedry.cli.wallcase;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.limedry.cli.problem.BadInputException;
import org.limedry.cli.problem.InputProblem;
import org.limedry.cli.readings.TextFile;
import org.limedry.cli.site.schema.Block;
import org.limedry.cli.site.schema.Entry;
import org.limedry.cli.site.schema.Key;
import org.limedry.cli.site.schema.Node;
import org.limedry.cli.site.schema.Problems;
import org.limedry.cli.site.schema.YamlTree;
import org.limedry.wall.Constants;
import org.limedry.wall.LayerPlan;

/** Reads wall case files: a case that can be run, or everything that is wrong with the file and its tables. */
final class CaseReader {
    private static final long MOST_BYTES = 5_000_000;

    /** A position is on the inside face if it lies this close to it, mm: thicknesses add up by rounding only. */
    private static final double SAME_MM = 1.0e-6;

    private final Problems problems;
    private final CaseTables tables;
    private final List<String> notes = new ArrayList<>();

    private CaseReader(Path file) {
        problems = new Problems(file.toString());
        tables = new CaseTables(file);
    }

    /**
     * Reads a file; tables that it names are looked for beside it.
     *
     * @throws BadInputException with every problem found
     */
    static WallCase read(Path file) {
        TextFile.Content content = TextFile.read(file, file.toString(), "", MOST_BYTES);
        if (content instanceof TextFile.Unreadable unreadable) {
            throw new BadInputException(List.of(unreadable.problem()));
        }
        String text = ((TextFile.Text) content).text();
        if (text.isBlank()) {
            throw new BadInputException(List.of(new InputProblem(
                    file.toString(),
                    0,
                    "",
                    "must be a wall case; see limedry schema --wall",
                    "there is nothing in it")));
        }
        CaseReader reader = new CaseReader(file);
        return YamlTree.parse(text, reader.problems)
                .flatMap(root -> CaseKeys.BLOCK.read(root, reader.problems.root()))
                .flatMap(reader::wallCase)
                .orElseThrow(() -> new BadInputException(reader.problems.sorted()));
    }

    private Optional<WallCase> wallCase(Entry entry) {
        Entry saidConstants = orNothingSaid(entry, CaseKeys.CONSTANTS, CaseKeys.CONSTANTS_BLOCK);
        Entry accuracy = orNothingSaid(entry, CaseKeys.ACCURACY, CaseKeys.ACCURACY_BLOCK);
        Constants constants = CaseConstants.of(saidConstants);
        double hours = entry.given(CaseKeys.HOURS).orElse(0.0);
        CaseSides sides = new CaseSides(tables, constants, hours, notes);
        Optional<CaseSide> outside = entry.given(CaseKeys.OUTSIDE).flatMap(side -> sides.read(side, "outside"));
        Optional<CaseSide> inside = entry.given(CaseKeys.INSIDE).flatMap(side -> sides.read(side, "inside"));
        List<LayerPlan> layers = new CaseLayers(tables, constants, entry).read();
        checkHours(entry);
        checkPositions(entry);
        if (!problems.isEmpty()) {
            return Optional.empty();
        }
        CaseConstants.noteBelowZero(saidConstants, notes);
        TreeSet<Double> outputHours = new TreeSet<>(entry.get(CaseKeys.OUTPUT_HOURS));
        outputHours.add(hours);
        return Optional.of(new WallCase(
                layers,
                outside.orElseThrow(),
                inside.orElseThrow(),
                constants,
                hours,
                List.copyOf(outputHours),
                List.copyOf(new TreeSet<>(entry.get(CaseKeys.POSITIONS_MM))),
                accuracy.get(CaseKeys.RELATIVE),
                accuracy.get(CaseKeys.CELLS),
                notes));
    }

    /** Returns a group of keys as given, or as if it had been given with nothing in it. */
    private static Entry orNothingSaid(Entry entry, Key<Entry> key, Block block) {
        return entry.given(key)
                .or(() -> block.read(new Node.Group(0, List.of()), entry.at(key)))
                .orElseThrow();
    }

    private void checkHours(Entry entry) {
        Optional<Double> hours = entry.given(CaseKeys.HOURS);
        List<Double> asked = entry.given(CaseKeys.OUTPUT_HOURS).orElse(List.of());
        for (double hour : asked) {
            if (hours.isPresent() && hour > hours.get()) {
                entry.at(CaseKeys.OUTPUT_HOURS)
                        .problem(text(hour), "must not be after the end of the run, hours: " + text(hours.get()));
            }
        }
    }

    private void checkPositions(Entry entry) {
        List<Entry> layers = entry.given(CaseKeys.LAYERS).orElse(List.of());
        boolean allKnown = !layers.isEmpty()
                && layers.stream()
                        .allMatch(layer -> layer.given(CaseKeys.THICKNESS_MM).isPresent());
        double wholeMm = layers.stream()
                .mapToDouble(layer -> layer.given(CaseKeys.THICKNESS_MM).orElse(0.0))
                .sum();
        for (double mm : entry.given(CaseKeys.POSITIONS_MM).orElse(List.of())) {
            if (allKnown && mm > wholeMm + SAME_MM) {
                entry.at(CaseKeys.POSITIONS_MM)
                        .problem(text(mm), "must be inside the wall, which is " + text(wholeMm) + " mm thick");
            }
        }
    }

    /** Writes a number as it stands in the file, as nearly as can be. */
    static String text(double value) {
        String text = Double.toString(value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }
}
