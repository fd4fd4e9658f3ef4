package org.limedry.cli.schema;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.limedry.cli.ask.ExitCode;
import org.limedry.cli.site.SiteSchema;
import org.limedry.cli.wallcase.CaseSchema;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code limedry schema}. */
@Command(name = "schema", description = "Print the form of the site file, for editors that check while you type.")
public final class SchemaCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(names = "--table", description = "Print a table of all keys for people instead, in Markdown.")
    private boolean table;

    @Option(names = "--wall", description = "The form of the case file of limedry wall instead.")
    private boolean wall;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        if (wall) {
            out.print(
                    table
                            ? SiteSchema.table(CaseSchema.block())
                            : SiteSchema.json(CaseSchema.TITLE, CaseSchema.block()));
        } else {
            out.print(table ? SiteSchema.table() : SiteSchema.json());
        }
        return ExitCode.DONE.code();
    }
}
