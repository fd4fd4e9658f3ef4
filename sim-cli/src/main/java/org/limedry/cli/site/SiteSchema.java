package org.limedry.cli.site;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.stream.Collectors;
import org.limedry.cli.site.schema.Block;
import org.limedry.cli.site.schema.GuideRow;

/** The form of the site file, printed: for editors as JSON Schema, for people as a table. */
public final class SiteSchema {
    private SiteSchema() {}

    /** Returns the JSON Schema, draft 2020-12. It says nothing of how one part of a file must agree with another. */
    public static String json() {
        return json("limedry site file", SiteKeys.BLOCK);
    }

    /** Returns the JSON Schema of another file made of the same shapes. */
    public static String json(String title, Block block) {
        ObjectNode schema = JsonNodeFactory.instance.objectNode();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("title", title);
        schema.setAll(block.jsonSchema());
        return schema.toPrettyString() + "\n";
    }

    /** Returns a table of all keys in Markdown. */
    public static String table() {
        return table(SiteKeys.BLOCK);
    }

    /** Returns the same table for another file made of the same shapes. */
    public static String table(Block block) {
        String rows = block.guide("").stream().map(SiteSchema::row).collect(Collectors.joining());
        return "| key | what may stand there | if left out | what it means |\n|---|---|---|---|\n" + rows;
    }

    private static String row(GuideRow row) {
        return "| `" + row.path() + "` | " + row.value() + " | " + row.unsaid() + " | " + row.meaning() + " |\n";
    }
}
