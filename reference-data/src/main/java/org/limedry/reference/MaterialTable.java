package org.limedry.reference;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The materials of {@code materials/materials_properties} by name. */
public final class MaterialTable {
    private final List<MaterialRow> rows;
    private final Map<String, MaterialRow> byName;

    private MaterialTable(List<MaterialRow> rows) {
        this.rows = rows;
        this.byName = rows.stream().collect(Collectors.toUnmodifiableMap(MaterialRow::name, Function.identity()));
    }

    /** Reads the table. */
    public static MaterialTable load() {
        return new MaterialTable(ReferenceTable.load("materials/materials_properties").rows().stream()
                .map(MaterialRow::new)
                .toList());
    }

    /** All materials in the order of the table. */
    public List<MaterialRow> rows() {
        return rows;
    }

    /**
     * Returns a material.
     *
     * @throws IllegalArgumentException if the table has no material of that name
     */
    public MaterialRow named(String name) {
        MaterialRow found = byName.get(name);
        if (found == null) {
            throw new IllegalArgumentException(
                    "name: must be a material of materials/materials_properties, was " + name);
        }
        return found;
    }
}
