package org.limedry.cli.ask;

/** What the shell is told when a command ends. */
public enum ExitCode {
    /** Done as asked. */
    DONE(0),
    /** Ran, but did not finish as asked: a date past the end of the run, a disk that is full. */
    UNFINISHED(1),
    /** The command line or an input file cannot be used. */
    BAD_INPUT(2),
    /** Our fault. */
    INTERNAL_ERROR(3);

    private final int code;

    ExitCode(int code) {
        this.code = code;
    }

    /** Returns the number for the shell. */
    public int code() {
        return code;
    }
}
