package org.limedry.cli.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The printed schema accepts what the reader accepts; read by a validator that is not ours. */
final class SiteSchemaTest {
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private static final Schema SCHEMA = REGISTRY.getSchema(SiteSchema.json(), InputFormat.JSON);

    static Stream<String> goodTexts() throws IOException {
        Stream.Builder<String> texts = Stream.builder();
        for (Path file : Examples.good()) {
            texts.add(Files.readString(file));
        }
        return texts.add(Starter.text()).add(FullFile.TEXT).build();
    }

    @ParameterizedTest
    @MethodSource("goodTexts")
    void schema_goodFile_isAccepted(String text) {
        assertEquals("", Examples.problems(text));

        List<Error> errors = SCHEMA.validate(text, InputFormat.YAML);

        assertEquals(List.of(), errors);
    }

    // Problems of form only: how parts of a file agree with each other is beyond a schema.
    @ParameterizedTest
    @ValueSource(
            strings = {
                "02-unknown-key.yaml",
                "03-wrong-type.yaml",
                "04-out-of-range.yaml",
                "07-wall-without-area.yaml",
                "09-mix-without-lime.yaml",
                "11-coat-too-thick.yaml",
            })
    void schema_fileOfBadForm_isRefusedAsByTheReader(String name) throws IOException {
        String text = Files.readString(Examples.BAD.resolve(name));
        assertFalse(Examples.problems(text).isEmpty());

        List<Error> errors = SCHEMA.validate(text, InputFormat.YAML);

        assertFalse(errors.isEmpty());
    }

    @Test
    void schema_itself_isValid() {
        Schema dialect = REGISTRY.getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));

        assertEquals(List.of(), dialect.validate(SiteSchema.json(), InputFormat.JSON));
    }

    @Test
    void table_isTheOneInTheUserGuide() throws IOException {
        String guide = Files.readString(Path.of("..", "docs", "site-file.md"));

        assertTrue(
                guide.contains(SiteSchema.table()),
                "docs/site-file.md is stale: put the output of \"limedry schema --table\" in place of its table");
    }
}
