package org.limedry.cli.page;

import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.limedry.cli.problem.BadInputException;
import org.limedry.cli.problem.InputProblem;

/**
 * A folder of results that is never half-written: files are made in a folder aside and then moved, each in one step.
 *
 * <p>Other files that lie in the folder stay. Whatever ends the program before the move leaves the folder as it was.
 */
public final class OutputFolder implements Closeable {
    private static final String OPTION = "--out";
    private static final String ASIDE_PREFIX = ".limedry-";

    private final Path target;
    private final Path aside;
    private final Thread atExit = new Thread(this::removeAside, "limedry-remove-unfinished");

    private OutputFolder(Path target, Path aside) {
        this.target = target;
        this.aside = aside;
    }

    /**
     * Makes the folder aside.
     *
     * @param directory where the results are to go; need not exist
     * @param files the files that will be written, relative to it
     * @throws BadInputException if they cannot be written there
     */
    public static OutputFolder open(Path directory, List<Path> files) {
        Path target = directory.toAbsolutePath().normalize();
        files.stream()
                .map(target::resolve)
                .filter(Files::isDirectory)
                .findFirst()
                .ifPresent(file -> {
                    throw refused(file + " is a folder", "must leave its place to a file of results");
                });
        files.stream()
                .map(target::resolve)
                .filter(file -> !Files.exists(file))
                .map(OutputFolder::nearestExisting)
                .filter(existing -> !Files.isDirectory(existing))
                .findFirst()
                .ifPresent(existing -> {
                    throw refused(existing + " is a file", "must be a folder, or a name still free");
                });
        OutputFolder folder = new OutputFolder(target, makeAside(target));
        Runtime.getRuntime().addShutdownHook(folder.atExit);
        return folder;
    }

    /** Returns the folder to write into for now. */
    public Path aside() {
        return aside;
    }

    /** Moves all files written so far into their place. */
    public void publish() throws IOException {
        for (Path file : filesAside()) {
            Path place = target.resolve(aside.relativize(file));
            makeParents(place);
            Files.move(file, place, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** Removes what was not published. */
    @Override
    public void close() {
        removeAside();
        Runtime.getRuntime().removeShutdownHook(atExit);
    }

    private static void makeParents(Path file) throws IOException {
        Path parent = file.getParent();
        if (parent != null) {
            Files.createDirectories(parent);
        }
    }

    private List<Path> filesAside() throws IOException {
        try (Stream<Path> all = Files.walk(aside)) {
            return all.filter(Files::isRegularFile).sorted().toList();
        }
    }

    private void removeAside() {
        try (Stream<Path> all = Files.walk(aside)) {
            all.sorted(Comparator.reverseOrder()).forEach(path -> path.toFile().delete());
        } catch (IOException | UncheckedIOException e) {
            // A stray folder aside harms nothing, and there is nobody left to tell.
            aside.toFile().deleteOnExit();
        }
    }

    /**
     * Makes the folder beside the target, where its files can be moved in one step; where that cannot be, as for the root
     * of a disk or in a folder that is not ours, in the target itself. A folder of the system for temporary files would
     * do for neither: it may be on another disk.
     */
    private static Path makeAside(Path target) {
        Path existing = nearestExisting(target);
        Path parent = target.getParent();
        String name = ASIDE_PREFIX + ProcessHandle.current().pid() + "-" + Long.toHexString(System.nanoTime());
        try {
            if (parent != null && existing.equals(target) && canStandIn(parent, target)) {
                return Files.createDirectory(parent.resolve(name));
            }
            return Files.createDirectory(existing.resolve(name));
        } catch (IOException e) {
            throw refused(existing + " cannot be written to", "must be a folder that you may write to");
        }
    }

    private static boolean canStandIn(Path folder, Path other) throws IOException {
        return Files.isWritable(folder) && Files.getFileStore(folder).equals(Files.getFileStore(other));
    }

    private static Path nearestExisting(Path path) {
        Path existing = path;
        while (!Files.exists(existing) && existing.getParent() != null) {
            existing = existing.getParent();
        }
        return existing;
    }

    private static BadInputException refused(String found, String rule) {
        return new BadInputException(List.of(new InputProblem(OPTION, 0, "", rule, found)));
    }
}
