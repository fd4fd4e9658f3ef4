package org.limedry.cli.problem;

import java.util.List;
import java.util.stream.Collectors;
import org.limedry.units.Check;

/** Input that cannot be used, with every problem that was found in it. Ends the command with exit code 2. */
public final class BadInputException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<InputProblem> problems;

    /** Takes all the problems found in one pass, in the order in which the user should read them. */
    public BadInputException(List<InputProblem> problems) {
        super(problems.stream().map(InputProblem::text).collect(Collectors.joining("\n")));
        Check.notEmpty(problems, "problems");
        this.problems = List.copyOf(problems);
    }

    /** Returns the problems, at least one. */
    public List<InputProblem> problems() {
        return problems;
    }
}
