package org.limedry.cli.readings.logger;

import static org.junit.jupiter.api.Assertions.fail;

import java.time.Instant;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.limedry.cli.problem.InputProblem;
import org.limedry.climate.LoggedReading;

/** Reads texts as logger files. */
final class Logs {
    static final ZoneId DUBLIN = ZoneId.of("Europe/Dublin");

    private Logs() {}

    static LoggerFile.Result read(String text, Asked asked) {
        return LoggerFile.parse(text, "log.csv", asked, DUBLIN);
    }

    static LoggerFile good(String text) {
        return good(text, Asked.nothing());
    }

    static LoggerFile good(String text, Asked asked) {
        LoggerFile.Result result = read(text, asked);
        return result instanceof LoggerFile.Good good ? good.file() : fail(problems(result));
    }

    static String problems(LoggerFile.Result result) {
        return result instanceof LoggerFile.Bad bad
                ? bad.problems().stream().map(InputProblem::text).collect(Collectors.joining("\n"))
                : "";
    }

    static Asked asked(Map<PlanKey, String> words) {
        Map<PlanKey, Asked.Word> all = new EnumMap<>(PlanKey.class);
        words.forEach((key, text) -> all.put(key, new Asked.Word(text, key.option(), 0)));
        return new Asked(all);
    }

    static List<String> times(LoggerFile file) {
        return file.readings().all().stream()
                .map(LoggedReading::at)
                .map(Instant::toString)
                .toList();
    }

    static List<String> found(LoggerFile file) {
        return file.found().stream()
                .map(one -> one.kind() + " " + one.line() + "-" + one.lastLine())
                .toList();
    }

    static LoggedReading reading(String at, double celsius, double relativeHumidity) {
        return new LoggedReading(
                Instant.parse(at),
                OptionalDouble.of(celsius),
                OptionalDouble.of(relativeHumidity),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }
}
