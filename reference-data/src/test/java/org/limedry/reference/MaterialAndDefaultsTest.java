package org.limedry.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MaterialAndDefaultsTest {
    private static final MaterialTable MATERIALS = MaterialTable.load();
    private static final DefaultsTable DEFAULTS = DefaultsTable.load();
    private static final Pattern SOURCE_NUMBER = Pattern.compile("\\bS\\d+\\b");

    // EXACT: the row "historic hand-made clay brick" of materials/materials_properties.
    @Test
    void material_byName_hasEveryColumn() {
        MaterialRow brick = MATERIALS.named("historic hand-made clay brick");

        assertEquals(1650.0, brick.densityKgPerM3());
        assertEquals(OptionalDouble.of(0.35), brick.openPorosity());
        assertEquals(OptionalDouble.of(6.0), brick.waterAt80PercentKgPerM3());
        assertEquals(OptionalDouble.of(280.0), brick.freeSaturationKgPerM3());
        assertEquals(Optional.of(new Estimate(0.25, 0.05, 0.45)), brick.absorptionKgPerM2RootS());
        assertEquals(new Estimate(16.0, 8.0, 20.0), brick.vapourResistanceDry());
        assertEquals(10.0, brick.vapourResistanceWet());
        assertEquals(0.60, brick.dryConductivityWPerMK());
        assertEquals(OptionalDouble.of(0.10), brick.conductivityGrowthPerPercentWater());
        assertEquals(850.0, brick.heatCapacityJPerKgK());
        assertEquals(Optional.of(new Estimate(59.0, 20.0, 178.0)), brick.entrySuctionKPa());
        assertEquals("MEMORY; A lower bound: dense bricks <0.05 READ", brick.status());
        assertEquals("S64", brick.source());
        assertTrue(brick.entryStatus().startsWith("assumed: retention exponent 1.62"), brick.entryStatus());
    }

    @Test
    void material_withoutAFigure_isEmptyThere() {
        MaterialRow glass = MATERIALS.named("glass soda-lime");

        assertEquals(Optional.empty(), glass.entrySuctionKPa());
        assertEquals(OptionalDouble.empty(), glass.conductivityGrowthPerPercentWater());
        // EXACT: no range is given, so the value is its own range.
        assertEquals(new Estimate(1e6, 1e6, 1e6), glass.vapourResistanceDry());
    }

    @Test
    void materials_canAllBeReadInFull() {
        for (MaterialRow material : MATERIALS.rows()) {
            assertFalse(material.name().isBlank());
            assertTrue(material.densityKgPerM3() > 0.0);
            assertTrue(
                    material.vapourResistanceWet()
                            <= material.vapourResistanceDry().high(),
                    material.name());
            assertTrue(material.dryConductivityWPerMK() > 0.0);
            assertTrue(material.heatCapacityJPerKgK() > 0.0);
            assertFalse(material.status().isBlank());
            assertEquals(
                    material.entrySuctionKPa().isEmpty(), material.entryStatus().isEmpty(), material.name());
            material.absorptionKgPerM2RootS()
                    .ifPresent(a -> assertTrue(a.high() <= 1.0, material.name())); // the Estimate checks the order
        }
        // PINNED: rows of the table.
        assertEquals(16, MATERIALS.rows().size());
    }

    @Test
    void material_unknown_isRefused() {
        var e = assertThrows(IllegalArgumentException.class, () -> MATERIALS.named("cob"));
        assertEquals("name: must be a material of materials/materials_properties, was cob", e.getMessage());
    }

    // EXACT: the row "quicklime bulk density" of materials/defaults.
    @Test
    void default_byParameter_hasEveryColumn() {
        DefaultValue bulk = DEFAULTS.of("quicklime bulk density");

        assertEquals("A", bulk.section());
        assertEquals("kg/m3", bulk.unit());
        assertEquals(950.0, bulk.likely());
        assertEquals(OptionalDouble.of(850.0), bulk.low());
        assertEquals(OptionalDouble.of(1200.0), bulk.high());
        assertEquals(new Estimate(950.0, 850.0, 1200.0), bulk.estimate());
        assertEquals("READ", bulk.status());
        assertEquals("S15 849 (53 lb/ft3); S16 977-1201 (61-75 lb/ft3)", bulk.basis());
    }

    @Test
    void defaults_areNumbersInOrderOfSize_butForTwo() {
        List<String> words = DEFAULTS.values().stream()
                .filter(value -> !isEstimate(value))
                .map(DefaultValue::parameter)
                .toList();

        // EXACT: one range in words, one row that points to another table.
        assertEquals(List.of("see materials_properties.csv", "carbonation best band"), words);
        assertEquals("0.65-0.80", DEFAULTS.of("carbonation best band").likelyText());
        // PINNED: rows of the table.
        assertEquals(72, DEFAULTS.values().size());
    }

    private static boolean isEstimate(DefaultValue value) {
        try {
            return value.estimate().low() <= value.likely();
        } catch (IllegalStateException e) {
            return false;
        }
    }

    @Test
    void default_unknown_isRefused() {
        var e = assertThrows(IllegalArgumentException.class, () -> DEFAULTS.of("price"));
        assertEquals("parameter: must be one of materials/defaults, was price", e.getMessage());
    }

    // EXACT: the first rule of the table; PINNED: rows of the table.
    @Test
    void guidanceRules_areReadInFull() {
        List<GuidanceRule> rules = GuidanceRule.loadAll();

        assertEquals(29, rules.size());
        assertEquals(
                new GuidanceRule(
                        "minimum air temperature", "NHL 2 and NHL 3.5 mortars not below", "8", "C", "READ", "S9;S10"),
                rules.get(0));
    }

    @ParameterizedTest
    @CsvSource({
        "materials/materials_properties, source",
        "materials/defaults, basis",
        "materials/guidance_rules, source",
        "materials/thermal_design_values_read, source"
    })
    void sourceNumbers_ofTheMaterialTables_areListed(String table, String column) {
        Set<String> listed = ReferenceTable.load("materials/sources").rows().stream()
                .map(row -> row.text("source_id"))
                .collect(Collectors.toSet());

        List<String> cited = ReferenceTable.load(table).rows().stream()
                .flatMap(row -> SOURCE_NUMBER.matcher(row.text(column)).results())
                .map(MatchResult::group)
                .distinct()
                .toList();

        assertFalse(cited.isEmpty());
        assertEquals(List.of(), cited.stream().filter(s -> !listed.contains(s)).toList());
    }

    @Test
    void estimate_outsideItsRange_isRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Estimate(3.5, 4.0, 5.0));
        assertThrows(IllegalArgumentException.class, () -> new Estimate(Double.NaN, 4.0, 5.0));
        // EXACT
        assertEquals(new Estimate(5.0, 3.0, 8.0), new Estimate(2.5, 1.5, 4.0).times(2.0));
    }
}
