package org.limedry.cli.site;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.limedry.cli.problem.InputProblem;
import org.limedry.cli.readings.logger.PlanFile;
import org.limedry.cli.readings.logger.PlanKey;

/** What is asked about a logger file names options of {@code limedry readings}: a site file has them said by the reading plan. */
final class PlanHint {
    private static final Pattern OPTION = Pattern.compile("(--[a-z-]+) (\\w[\\w-]*)");

    private PlanHint() {}

    /**
     * Returns a problem of a logger file with the way to answer it; as it is where it names no option.
     *
     * @param file the logger file
     * @param zone clock of the place
     */
    static InputProblem on(InputProblem problem, Path file, ZoneId zone) {
        Map<String, String> options = new TreeMap<>();
        Matcher option = OPTION.matcher(problem.rule());
        while (option.find()) {
            options.merge(option.group(1), option.group(2), (one, another) -> "...");
        }
        if (options.isEmpty()) {
            return problem;
        }
        String rule = problem.rule() + "; " + way(options, file, zone);
        return new InputProblem(problem.file(), problem.line(), problem.path(), rule, problem.found());
    }

    /** Returns how to have one thing said of a file from then on: in its plan, or by the command that writes one. */
    static String way(PlanKey key, String word, Path file) {
        Path plan = PlanFile.beside(file);
        return Files.exists(plan)
                ? "say " + key.word() + ": " + word + " in " + plan
                : "limedry readings " + file + " " + key.option() + " " + word + " --write-plan";
    }

    private static String way(Map<String, String> options, Path file, ZoneId zone) {
        Path plan = PlanFile.beside(file);
        if (Files.exists(plan)) {
            return "a site file has no such options, say it in " + plan;
        }
        String words = options.entrySet().stream()
                .map(option -> option.getKey() + " " + option.getValue())
                .collect(Collectors.joining(" "));
        return "a site file has no such options, they are kept in " + plan.getFileName() + ": limedry readings " + file
                + " " + words + " --write-plan (and --zone " + zone + " if its times do not say their clock)";
    }
}
