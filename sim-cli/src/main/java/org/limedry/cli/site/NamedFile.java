package org.limedry.cli.site;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import org.limedry.cli.site.schema.Place;

/** Files that the site file names: they are looked for beside it. */
final class NamedFile {
    private NamedFile() {}

    /** Returns where the file is, whether or not it exists, or reports at {@code at} that no file can be called so. */
    static Optional<Path> in(Path folder, String name, Place at) {
        try {
            return Optional.of(folder.resolve(name));
        } catch (InvalidPathException e) {
            at.problem("\"" + name + "\"", "must be the name of a file");
            return Optional.empty();
        }
    }
}
