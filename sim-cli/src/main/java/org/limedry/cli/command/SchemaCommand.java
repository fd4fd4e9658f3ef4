package org.limedry.cli.command;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.limedry.cli.site.SiteSchema;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code limedry schema}. */
@Command(name = "schema", description = "Print the form of the site file, for editors that check while you type.")
final class SchemaCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(names = "--table", description = "Print a table of all keys for people instead, in Markdown.")
    private boolean table;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        out.print(table ? SiteSchema.table() : SiteSchema.json());
        return ExitCode.DONE.code();
    }
}
