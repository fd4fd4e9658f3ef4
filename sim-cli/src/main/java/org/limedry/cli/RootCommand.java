package org.limedry.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** {@code limedry} without a command, and the options that every command has. */
@Command(
        name = "limedry",
        scope = ScopeType.INHERIT,
        mixinStandardHelpOptions = true,
        description = "Forecasts how fresh lime plaster dries in cold, damp, old buildings.",
        versionProvider = VersionProvider.class,
        synopsisSubcommandLabel = "COMMAND",
        footer = {
            "",
            "Exit codes: 0 done, 1 not finished as asked, 2 input that cannot be used, 3 a fault of limedry itself."
        })
final class RootCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(
            names = "--stacktrace",
            scope = ScopeType.INHERIT,
            description = "On an internal error, also show where in the program it arose.")
    private boolean stackTrace;

    /** Says whether the user asked for the stack trace of an internal error. */
    boolean wantsStackTrace() {
        return stackTrace;
    }

    @Override
    public Integer call() {
        throw new ParameterException(spec.commandLine(), "no command given");
    }
}
