package org.limedry.reference;

import java.util.List;

/**
 * A rule of the trade as {@code materials/guidance_rules} words it.
 *
 * @param topic what it is about, such as "frost protection after application"; several rules may share a topic
 * @param rule the rule in words
 * @param number its figure as printed, which may be a range such as "3-5"; empty when the rule has none
 * @param unit unit of the figure; empty when the rule has none
 * @param status how it was obtained: READ, or READ weak for a trade page or blog
 * @param source source numbers, to be looked up in {@code materials/sources}
 */
public record GuidanceRule(String topic, String rule, String number, String unit, String status, String source) {
    /** Reads all rules in the order of the table. */
    public static List<GuidanceRule> loadAll() {
        return ReferenceTable.load("materials/guidance_rules").rows().stream()
                .map(GuidanceRule::of)
                .toList();
    }

    private static GuidanceRule of(ReferenceTable.Row row) {
        return new GuidanceRule(
                row.text("topic"),
                row.text("rule"),
                row.text("number"),
                row.text("unit"),
                row.text("status"),
                row.text("source"));
    }
}
