package org.limedry.cli.site.schema;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.limedry.cli.problem.InputProblem;

/** Shapes by themselves: what they take, what they say, what they print. */
final class ShapesTest {
    private final Problems problems = new Problems("f.yaml");

    private String told() {
        return problems.sorted().stream().map(InputProblem::text).collect(Collectors.joining("\n"));
    }

    private <T> Optional<T> read(Shape<T> shape, String text) {
        return YamlTree.parse(text, problems).flatMap(node -> shape.read(node, problems.root()));
    }

    // EXACT: both ends of the range, just outside, and what is no number.
    @ParameterizedTest
    @CsvSource({
        "2, true",
        "60, true",
        "1.9999999, false",
        "60.0000001, false",
        ".nan, false",
        ".inf, false",
        "-.inf, false",
        "NaN, false",
        "1e1, true",
        "+11, true",
        "1e400, false",
        "010, false",
        "0x0B, false",
        "1_1, false"
    })
    void number_atAndBeyondItsEnds(String text, boolean taken) {
        assertEquals(taken, read(NumberShape.between(2.0, 60.0), text).isPresent(), text);
        assertEquals(taken, problems.isEmpty(), told());
    }

    // PINNED: our own words.
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "110|f.yaml: 110; must be 2 to 60 (11 meant?)",
                "0.011|f.yaml: 0.011; must be 2 to 60 (11 meant?)",
                "0.11|f.yaml: 0.11; must be 2 to 60 (11 meant?)",
                "0|f.yaml: 0; must be 2 to 60",
                "11 mm|f.yaml: \"11 mm\"; must be a plain number without unit or comma (11 meant?)",
                "11,5|f.yaml: \"11,5\"; must be a plain number without unit or comma (11.5 meant?)",
                "\"11\"|f.yaml: \"11\"; must be a plain number without quotes",
                "thick|f.yaml: \"thick\"; must be a plain number",
                "true|f.yaml: true; must be a plain number",
                "[1]|f.yaml: a list; must be a plain number",
                "~|f.yaml: nothing; must be a plain number",
            })
    void number_wrong_saysWhatWasProbablyMeant(String text, String problem) {
        read(NumberShape.between(2.0, 60.0), text);

        assertEquals(problem, told());
    }

    @Test
    void block_readsWhatItCanAndTellsTheRest() {
        Key<Double> length = Key.needed("lengthM", NumberShape.between(1.0, 9.0), "length");
        Key<String> name = Key.optional("name", TextShape.free(), "name").plainly("hut", "hut");
        Block block = Block.of(length, name);

        Entry entry = read(block, "lenghtM: 3\nname: 7\nname: shed").orElseThrow();

        assertEquals(
                List.of(
                        "f.yaml:1: lenghtM: not known; nearest: lengthM",
                        "f.yaml:1: lengthM: missing; needed: length (number, 1 to 9)",
                        "f.yaml:2: name: 7; must be text; if it is meant as text, put it in quotes",
                        "f.yaml:3: name: given twice; first on line 2"),
                told().lines().toList());
        assertEquals(Optional.empty(), entry.find(name)); // written badly: no default stands in for it
        assertEquals(Optional.empty(), entry.given(length));
    }

    // EXACT: the default that the key was given.
    @Test
    void entry_defaultsAreToldOnlyIfTheySaySomething() {
        Key<Double> line =
                Key.optional("line", NumberShape.between(1.0, 9.0), "cold line").assumed(5.0, "5", "trade");
        Key<String> name = Key.optional("name", TextShape.free(), "name").plainly("hut", "hut");

        Entry entry = read(Block.of(line, name), "{}").orElseThrow();

        assertEquals(5.0, entry.get(line));
        assertEquals("hut", entry.get(name));
        assertEquals(List.of(new Entry.Taken("", "line", "cold line", "5", "trade")), entry.taken());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "a: [1, 2|this is not YAML",
                "a: *b|site files have no aliases",
                "--- 1\\n--- 2|a second document",
            })
    void yaml_outOfForm_isOneProblem(String text, String part) {
        Optional<Node> root = YamlTree.parse(text.replace("\\n", "\n"), problems);

        assertEquals(Optional.empty(), root);
        assertTrue(told().contains(part), told());
    }

    @Test
    void yaml_nestedWithoutEnd_isAProblem() {
        Optional<Node> root = YamlTree.parse("[".repeat(5000), problems);

        assertEquals(Optional.empty(), root);
        assertTrue(!problems.isEmpty());
    }
}
