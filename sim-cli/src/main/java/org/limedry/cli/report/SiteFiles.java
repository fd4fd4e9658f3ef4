package org.limedry.cli.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.limedry.cli.problem.InputProblem;

/**
 * The site files that a command line means, each with the folder for its results.
 *
 * @param jobs the files, in order
 * @param problems what is wrong with the list of files itself
 */
record SiteFiles(List<Job> jobs, List<InputProblem> problems) {
    /**
     * A site file.
     *
     * @param file the file as the user named it
     * @param folder where its results go, relative to the folder of all results; empty for that folder itself
     */
    record Job(Path file, Path folder) {}

    /** Returns the files: a folder stands for all site files in it. */
    static SiteFiles of(List<Path> named) throws IOException {
        List<InputProblem> problems = new ArrayList<>();
        List<Path> files = new ArrayList<>();
        for (Path path : named) {
            if (Files.isDirectory(path)) {
                files.addAll(inFolder(path, problems));
            } else {
                files.add(path);
            }
        }
        boolean single = named.size() == 1 && !Files.isDirectory(named.get(0));
        return new SiteFiles(single ? List.of(new Job(files.get(0), Path.of(""))) : apart(files, problems), problems);
    }

    private static List<Path> inFolder(Path folder, List<InputProblem> problems) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            List<Path> found = all.filter(SiteFiles::looksLikeASite).sorted().toList();
            if (found.isEmpty()) {
                problems.add(new InputProblem(
                        folder.toString(),
                        0,
                        "",
                        "must hold a site file, or be one",
                        "a folder without any .yaml file"));
            }
            return found;
        }
    }

    private static boolean looksLikeASite(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        return Files.isRegularFile(file) && (name.endsWith(".yaml") || name.endsWith(".yml"));
    }

    private static List<Job> apart(List<Path> files, List<InputProblem> problems) {
        Map<Path, Path> byFolder = new HashMap<>();
        List<Job> jobs = new ArrayList<>();
        for (Path file : files) {
            Path folder = Path.of(String.valueOf(file.getFileName()).replaceFirst("(?i)\\.ya?ml$", ""));
            Path other = byFolder.putIfAbsent(folder, file);
            if (other != null) {
                problems.add(new InputProblem(
                        file.toString(),
                        0,
                        "",
                        "must have a name of its own, for results go into a folder of that name",
                        "named like " + other));
            }
            jobs.add(new Job(file, folder));
        }
        return jobs;
    }
}
