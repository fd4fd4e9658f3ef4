package org.limedry.cli.site;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;
import org.limedry.study.Draw;
import org.limedry.study.Uncertain;

/** Whatever stands in a file, the reader gives a site that can be run, or at least one problem, and never an exception. */
final class SiteReaderFuzzTest {
    private static final List<String> TOKENS = List.of(
            "~",
            "[]",
            "{}",
            "-1",
            "0",
            "1e308",
            ".nan",
            "-.inf",
            "true",
            "yes",
            "\"",
            "'",
            ": ",
            "- ",
            "&a ",
            "*a",
            "!!int ",
            "<<: ",
            "%",
            "\t",
            "#",
            "---\n",
            "...\n",
            "2026-02-29",
            "9999-12-31",
            "\u0000",
            "\uD83D\uDE00",
            "\\x07",
            "|\n",
            "? ",
            "when ready",
            "never",
            "always",
            "north",
            "2026-11-09",
            "1000000000000000000000",
            "0x10",
            "1_0",
            "[[[[",
            "{{{{");

    private static Path folder;

    @BeforeContainer
    static void makeFolder() throws IOException {
        folder = Files.createTempDirectory("limedry-fuzz");
    }

    @AfterContainer
    static void removeFolder() throws IOException {
        Files.deleteIfExists(folder.resolve("site.yaml"));
        Files.deleteIfExists(folder);
    }

    @Property(tries = 1000, shrinking = ShrinkingMode.OFF)
    void parse_mutatedFile_givesASiteOrProblems(@ForAll long seed) {
        Random random = new Random(seed);
        String text = mutated(random.nextBoolean() ? FullFile.TEXT : Starter.text(), random);

        SiteReader.Result result = SiteReader.parse(text, "site.yaml", folder);

        check(result, random);
    }

    @Property(tries = 300, shrinking = ShrinkingMode.OFF)
    void read_randomBytes_givesProblems(@ForAll @Size(max = 400) byte[] bytes) throws IOException {
        Path file = folder.resolve("site.yaml");
        Files.write(file, bytes);

        SiteReader.Result result = SiteReader.read(file);

        check(result, new Random(1));
    }

    @Property(tries = 300, shrinking = ShrinkingMode.OFF)
    void parse_randomTokens_givesProblems(@ForAll long seed) {
        Random random = new Random(seed);
        String text = random.ints(random.nextInt(30), 0, TOKENS.size())
                .mapToObj(TOKENS::get)
                .collect(Collectors.joining(random.nextBoolean() ? "" : "\n"));

        SiteReader.Result result = SiteReader.parse(text, "site.yaml", folder);

        check(result, random);
    }

    private static void check(SiteReader.Result result, Random random) {
        if (result instanceof SiteReader.Good good) {
            Site site = good.site();
            site.scenario(Draw.likely());
            Map<String, Double> quantiles =
                    site.uncertain().stream().collect(Collectors.toMap(Uncertain::key, key -> random.nextDouble()));
            site.scenario(new Draw(quantiles));
        } else {
            assertFalse(((SiteReader.Bad) result).problems().isEmpty());
        }
    }

    private static String mutated(String text, Random random) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        int times = 1 + random.nextInt(3);
        for (int i = 0; i < times; i++) {
            int at = random.nextInt(lines.size());
            switch (random.nextInt(7)) {
                case 0 -> lines.remove(at);
                case 1 -> lines.add(at, lines.get(random.nextInt(lines.size())));
                case 2 -> Collections.swap(lines, at, random.nextInt(lines.size()));
                case 3 -> lines.set(at, withToken(lines.get(at), random));
                case 4 -> lines.set(at, withoutPart(lines.get(at), random));
                case 5 -> lines.set(at, withOtherNumber(lines.get(at), random));
                default -> lines.set(at, withOtherByte(lines.get(at), random));
            }
        }
        return String.join("\n", lines);
    }

    private static String withToken(String line, Random random) {
        int at = random.nextInt(line.length() + 1);
        return line.substring(0, at) + TOKENS.get(random.nextInt(TOKENS.size())) + line.substring(at);
    }

    private static String withoutPart(String line, Random random) {
        int from = random.nextInt(line.length() + 1);
        int until = from + random.nextInt(line.length() - from + 1);
        return line.substring(0, from) + line.substring(until);
    }

    /** Numbers that may still be in range: what passes the checks must also be able to run. */
    private static String withOtherNumber(String line, Random random) {
        double factor = Math.pow(10.0, random.nextInt(5) - 2) * (1 + random.nextInt(9));
        return line.replaceFirst("(?<=: )\\d+(\\.\\d+)?(?=[,}])", Double.toString(factor));
    }

    private static String withOtherByte(String line, Random random) {
        byte[] bytes = line.getBytes(StandardCharsets.UTF_8);
        if (bytes.length > 0) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
        return new String(bytes, StandardCharsets.UTF_8);
    }
}
