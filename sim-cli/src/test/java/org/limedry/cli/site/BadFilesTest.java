package org.limedry.cli.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What each bad input prints, as its README says. */
final class BadFilesTest {
    private static final Pattern CASE = Pattern.compile("## (\\S+)\n\n```text\n(.*?)\n```", Pattern.DOTALL);

    record Case(String file, String prints) {}

    static List<Case> cases() throws IOException {
        String readme = Files.readString(Examples.BAD.resolve("README.md"));
        return CASE.matcher(readme).results().map(BadFilesTest::caseOf).toList();
    }

    private static Case caseOf(MatchResult match) {
        return new Case(match.group(1), match.group(2));
    }

    // PINNED: the words as they stand in docs/examples/bad/README.md.
    @ParameterizedTest
    @MethodSource("cases")
    void read_badInput_printsWhatTheReadmeSays(Case bad) {
        SiteReader.Result result = SiteReader.read(Examples.BAD.resolve(bad.file()));

        String folder = Examples.BAD + File.separator;
        assertEquals(bad.prints(), Examples.texts(result).replace(folder, ""));
    }

    @Test
    void readme_namesEveryBadFile() throws IOException {
        List<String> told = cases().stream().map(Case::file).toList();

        try (Stream<Path> files = Files.list(Examples.BAD)) {
            files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".yaml"))
                    .forEach(name -> assertTrue(told.contains(name), name));
        }
        assertTrue(told.size() >= 20, "only " + told.size());
    }
}
