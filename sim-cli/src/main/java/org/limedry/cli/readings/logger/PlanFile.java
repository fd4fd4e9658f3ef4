package org.limedry.cli.readings.logger;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLGenerator;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.limedry.cli.problem.BadInputException;
import org.limedry.cli.problem.InputProblem;
import org.limedry.cli.readings.TextFile;

/** A reading plan: a small YAML file kept beside the logger file, so that it is read the same in ten years. */
public final class PlanFile {
    private static final long MOST_BYTES = 100_000;
    private static final String ENDING = ".plan.yaml";
    private static final YAMLFactory FACTORY = YAMLFactory.builder()
            .disable(YAMLGenerator.Feature.WRITE_DOC_START_MARKER)
            .enable(YAMLGenerator.Feature.MINIMIZE_QUOTES)
            .enable(YAMLGenerator.Feature.ALWAYS_QUOTE_NUMBERS_AS_STRINGS)
            .enable(YAMLParser.Feature.PARSE_BOOLEAN_LIKE_WORDS_AS_STRINGS)
            .build();

    private final String shown;
    private final List<InputProblem> problems = new ArrayList<>();
    private final Map<PlanKey, Asked.Word> words = new EnumMap<>(PlanKey.class);

    private PlanFile(String shown) {
        this.shown = shown;
    }

    /** Returns where the plan of a file is kept: store.csv has store.plan.yaml beside it. */
    public static Path beside(Path file) {
        String name = String.valueOf(file.getFileName());
        int dot = name.lastIndexOf('.');
        return file.resolveSibling((dot > 0 ? name.substring(0, dot) : name) + ENDING);
    }

    /**
     * Reads a plan.
     *
     * @throws BadInputException if it is none, with every problem
     */
    public static Asked read(Path file) {
        PlanFile plan = new PlanFile(file.toString());
        TextFile.Content content = TextFile.read(file, plan.shown, "", MOST_BYTES);
        if (content instanceof TextFile.Text text) {
            plan.parse(text.text());
        } else if (content instanceof TextFile.Unreadable unreadable) {
            plan.problems.add(unreadable.problem());
        }
        if (!plan.problems.isEmpty()) {
            throw new BadInputException(plan.problems);
        }
        return new Asked(plan.words);
    }

    private void parse(String text) {
        try (YAMLParser parser = FACTORY.createParser(text)) {
            if (parser.nextToken() != JsonToken.START_OBJECT) {
                problem(0, "", "there are no keys in it", keysRule());
                return;
            }
            while (parser.nextToken() == JsonToken.FIELD_NAME) {
                take(parser);
            }
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? 0 : Math.max(e.getLocation().getLineNr(), 0);
            problem(line, "", "this is not YAML", String.valueOf(e.getOriginalMessage()));
        } catch (IOException e) {
            // A text in memory cannot fail to be read.
            throw new UncheckedIOException(e);
        }
    }

    private void take(YAMLParser parser) throws IOException {
        int line = parser.currentTokenLocation().getLineNr();
        String name = parser.currentName();
        JsonToken token = parser.nextToken();
        if (!token.isScalarValue()) {
            problem(line, name, "more than one thing", "must be one word or number");
            parser.skipChildren();
            return;
        }
        String value = parser.getText();
        PlanKey.of(name)
                .ifPresentOrElse(
                        key -> put(key, new Asked.Word(value, shown, line)),
                        () -> problem(line, name, "not known", keysRule()));
    }

    private void put(PlanKey key, Asked.Word word) {
        if (words.putIfAbsent(key, word) != null) {
            problem(word.line(), key.word(), "given twice", "must be given once");
        }
    }

    private static String keysRule() {
        return "there are: "
                + Arrays.stream(PlanKey.values()).map(PlanKey::word).collect(Collectors.joining(", "));
    }

    private void problem(int line, String path, String found, String rule) {
        problems.add(new InputProblem(shown, line, path, rule, found));
    }

    /** Returns the text of the plan by which a file was read. */
    public static String text(LoggerFile file) {
        StringWriter text = new StringWriter();
        text.append("# How limedry reads this logger file. Kept beside it, it is read the same in ten years.\n");
        try (YAMLGenerator generator = FACTORY.createGenerator(text)) {
            generator.writeStartObject();
            for (Map.Entry<PlanKey, String> entry : file.plan().words().entrySet()) {
                generator.writeStringField(entry.getKey().word(), entry.getValue());
            }
            generator.writeEndObject();
        } catch (IOException e) {
            // A text in memory cannot fail to be written.
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }
}
