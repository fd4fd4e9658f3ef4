package org.limedry.reference;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The defaults of {@code materials/defaults} by parameter. */
public final class DefaultsTable {
    private final List<DefaultValue> values;
    private final Map<String, DefaultValue> byParameter;

    private DefaultsTable(List<DefaultValue> values) {
        this.values = values;
        this.byParameter =
                values.stream().collect(Collectors.toUnmodifiableMap(DefaultValue::parameter, Function.identity()));
    }

    /** Reads the table. */
    public static DefaultsTable load() {
        return new DefaultsTable(ReferenceTable.load("materials/defaults").rows().stream()
                .map(DefaultValue::new)
                .toList());
    }

    /** All defaults in the order of the table. */
    public List<DefaultValue> values() {
        return values;
    }

    /**
     * Returns a default.
     *
     * @throws IllegalArgumentException if the table has no such parameter
     */
    public DefaultValue of(String parameter) {
        DefaultValue found = byParameter.get(parameter);
        if (found == null) {
            throw new IllegalArgumentException("parameter: must be one of materials/defaults, was " + parameter);
        }
        return found;
    }
}
