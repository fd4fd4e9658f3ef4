package org.limedry.cli.site;

import static org.junit.jupiter.api.Assertions.fail;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.limedry.cli.problem.InputProblem;

/** The shipped examples, and short cuts to read site files. */
final class Examples {
    static final Path FOLDER = Path.of("..", "docs", "examples");
    static final Path BAD = FOLDER.resolve("bad");

    private Examples() {}

    static List<Path> good() {
        return List.of(
                FOLDER.resolve("net-loft.yaml"),
                FOLDER.resolve("summer-room.yaml"),
                FOLDER.resolve("net-loft-delay.yaml"));
    }

    /** Returns the site of a text that must be good. */
    static Site site(String text) {
        return good(SiteReader.parse(text, "site.yaml", FOLDER));
    }

    static Site good(SiteReader.Result result) {
        if (result instanceof SiteReader.Bad bad) {
            return fail(texts(bad));
        }
        return ((SiteReader.Good) result).site();
    }

    /** Returns the problems of a text, one a line; empty if it is good. */
    static String problems(String text) {
        return texts(SiteReader.parse(text, "site.yaml", FOLDER));
    }

    static String texts(SiteReader.Result result) {
        return result instanceof SiteReader.Bad bad
                ? bad.problems().stream().map(InputProblem::text).collect(Collectors.joining("\n"))
                : "";
    }
}
