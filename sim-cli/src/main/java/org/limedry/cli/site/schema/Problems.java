package org.limedry.cli.site.schema;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.limedry.cli.problem.InputProblem;

/** Collects everything that is wrong with one site file, in one pass. */
public final class Problems {
    private final String file;
    private final List<InputProblem> found = new ArrayList<>();

    /**
     * Starts a collection.
     *
     * @param file the file as the user named it
     */
    public Problems(String file) {
        this.file = file;
    }

    /** Adds a problem of the site file itself. */
    public void add(int line, String path, String what, String rule) {
        add(new InputProblem(file, line, path, rule, what));
    }

    /** Adds a problem, perhaps of another file that the site file names. */
    public void add(InputProblem problem) {
        if (!found.contains(problem)) {
            found.add(problem);
        }
    }

    /** Returns the file as the user named it. */
    String file() {
        return file;
    }

    /** Returns the place of the whole file. */
    public Place root() {
        return new Place(this, "", 0);
    }

    /** Returns whether nothing is wrong. */
    public boolean isEmpty() {
        return found.isEmpty();
    }

    /** Returns the problems in the order of the lines; those of other files come last. */
    public List<InputProblem> sorted() {
        return found.stream()
                .sorted(Comparator.comparing(
                                (InputProblem problem) -> !problem.file().equals(file))
                        .thenComparing(InputProblem::line))
                .toList();
    }
}
