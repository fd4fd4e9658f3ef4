package org.limedry.cli.page;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.limedry.cli.problem.BadInputException;
import org.limedry.cli.problem.InputProblem;

/** A file of results of which nobody finds a half: one that was there stays until the new one is whole. */
public final class WholeFile {
    private WholeFile() {}

    /** What goes into a file. */
    @FunctionalInterface
    public interface Content {
        /** Writes it. */
        void write(Writer out) throws IOException;
    }

    /**
     * Writes a file.
     *
     * @param file where it goes
     * @param option the option that named it, for the problem if it cannot
     * @param content what goes into it
     * @throws BadInputException if it cannot be written there
     */
    public static void write(Path file, String option, Content content) throws IOException {
        Path target = file.toAbsolutePath().normalize();
        Path name = target.getFileName();
        Path directory = target.getParent();
        if (name == null || directory == null) {
            throw new BadInputException(
                    List.of(new InputProblem(file.toString(), 0, option, "must be a file", "this is a folder")));
        }
        try (OutputFolder folder = OutputFolder.open(directory, List.of(name))) {
            try (Writer out = Files.newBufferedWriter(folder.aside().resolve(name))) {
                content.write(out);
            }
            folder.publish();
        }
    }
}
