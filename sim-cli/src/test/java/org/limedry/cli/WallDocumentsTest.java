package org.limedry.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.limedry.cli.ask.ExitCode;
import org.limedry.cli.site.SiteSchema;
import org.limedry.cli.wallcase.CaseSchema;

/** What the documents say of wall cases: keys, schema, and what bad cases print. */
final class WallDocumentsTest {
    private static final Path BAD = WallCases.FOLDER.resolve("bad");
    private static final Pattern CASE = Pattern.compile("## (\\S+)\n\n```text\n(.*?)\n```", Pattern.DOTALL);
    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(SiteSchema.json(CaseSchema.TITLE, CaseSchema.block()), InputFormat.JSON);

    @TempDir
    private Path results;

    record Case(String file, String prints) {}

    static List<Case> badCases() throws IOException {
        return CASE.matcher(Files.readString(BAD.resolve("README.md")))
                .results()
                .map(WallDocumentsTest::bad)
                .toList();
    }

    private static Case bad(MatchResult match) {
        return new Case(match.group(1), match.group(2));
    }

    static Stream<Path> goodCases() throws IOException {
        try (Stream<Path> files = Files.list(WallCases.FOLDER)) {
            return files.filter(file -> file.toString().endsWith(".yaml")).toList().stream();
        }
    }

    // PINNED: the words as they stand in docs/examples/wall/bad/README.md.
    @ParameterizedTest
    @MethodSource("badCases")
    void wall_badCase_printsWhatTheReadmeSays(Case bad) {
        StringWriter err = new StringWriter();

        int code = Main.run(
                new String[] {
                    "wall",
                    BAD.resolve(bad.file()).toString(),
                    "--out",
                    results.resolve("out").toString()
                },
                new PrintWriter(new StringWriter()),
                new PrintWriter(err));

        assertEquals(ExitCode.BAD_INPUT.code(), code);
        List<String> lines =
                err.toString().replace(BAD + File.separator, "").lines().toList();
        assertEquals(bad.prints(), String.join("\n", lines.subList(0, lines.size() - 1)));
        assertTrue(Files.notExists(results.resolve("out")));
    }

    @Test
    void readme_namesEveryBadCase() throws IOException {
        List<String> told = badCases().stream().map(Case::file).sorted().toList();

        try (Stream<Path> files = Files.list(BAD)) {
            List<String> there = files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".yaml"))
                    .sorted()
                    .toList();
            assertEquals(there, told);
        }
    }

    @ParameterizedTest
    @MethodSource("goodCases")
    void schema_exampleCase_isAccepted(Path file) throws IOException {
        List<Error> errors = SCHEMA.validate(Files.readString(file), InputFormat.YAML);

        assertEquals(List.of(), errors);
    }

    @Test
    void table_isTheOneInTheDocument() throws IOException {
        String document = Files.readString(Path.of("..", "docs", "wall-case.md"));

        assertTrue(
                document.contains(SiteSchema.table(CaseSchema.block())),
                "docs/wall-case.md is stale: put the output of \"limedry schema --wall --table\" in place of its table");
    }
}
