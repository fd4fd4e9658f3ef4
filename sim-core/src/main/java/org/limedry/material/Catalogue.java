package org.limedry.material;

import java.util.Optional;
import org.limedry.reference.Estimate;
import org.limedry.reference.MaterialRow;
import org.limedry.reference.MaterialTable;

/**
 * The materials of the reference table, ready for use, each with the figures that are uncertain.
 *
 * <p>Most moisture figures are FROM MEMORY and every entry suction is assumed. The vapour
 * resistance is the dry one; the table's wet value is not used, since the factor (1 - S) already changes with water. Rows
 * without retention (the bare design-table row, mineral wool) are refused; glass is {@link Closed}.
 */
public final class Catalogue {
    /** Names of the rows that other packages build on. */
    public static final String AIR_LIME_PLASTER = "air-lime plaster 1:2.5-1:3 hardened";

    public static final String NHL_PLASTER = "NHL 3.5 plaster 1:2-1:2.5 hardened";
    public static final String PUTTY_FINISH = "lime putty finish 1:1 hardened";
    public static final String SLAG_PLASTER = "lime-slag or lime-pozzolan backing coat";
    public static final String OLD_BRICK = "historic hand-made clay brick";
    public static final String LIME_RUBBLE = "lime-rubble masonry (effective)";
    public static final String SANDSTONE = "sandstone";
    public static final String SOFT_LIMESTONE = "limestone soft";
    public static final String HARD_LIMESTONE = "limestone hard";
    public static final String GRANITE = "granite";
    public static final String LATH_LAYER = "lath and gaps as an 8 mm layer";
    public static final String SOFTWOOD = "softwood lath across grain";
    /** Not a row of the table: the name by which a sheet of old paint is known. */
    public static final String OLD_PAINT = "old paint";

    public static final String GLASS = "glass soda-lime";

    /**
     * Entry suction of softwood, which the table leaves open, Pa. COMPUTED: the curve through w_80 and w_f of the table
     * with the slope between 16.4 % at 80 % and 24.3 % at 95 % relative humidity, 10 C (Hailwood and Horrobin, constants
     * FROM MEMORY).
     */
    private static final Estimate SOFTWOOD_ENTRY_PA = new Estimate(12e3, 4e3, 37e3);

    private static final double PA_PER_KPA = 1000.0;
    /** Percent by volume of one kg of water in a m3. */
    private static final double VOLUME_PERCENT_PER_KG_PER_M3 = 0.1;

    private final MaterialTable table;

    private Catalogue(MaterialTable table) {
        this.table = table;
    }

    /** Returns the catalogue of a table. */
    public static Catalogue of(MaterialTable table) {
        return new Catalogue(table);
    }

    /**
     * Returns a material's figures, all at their likely values.
     *
     * @param name name of the row
     * @throws IllegalArgumentException if there is no such row, or it lacks what the closure needs
     */
    public MaterialSheet sheet(String name) {
        MaterialRow row = table.named(name);
        if (row.waterAt80PercentKgPerM3().isEmpty()
                || row.freeSaturationKgPerM3().isEmpty()
                || entrySuctionPa(row).isEmpty()) {
            throw new IllegalArgumentException(
                    "material: must have w80, free saturation and entry suction, \"" + name + "\" has not");
        }
        return new MaterialSheet(
                name,
                new MaterialSheet.Storage(
                        row.freeSaturationKgPerM3().getAsDouble(),
                        row.waterAt80PercentKgPerM3().getAsDouble(),
                        entrySuctionPa(row).get().likely()),
                new MaterialSheet.Transport(
                        row.absorptionKgPerM2RootS().map(Estimate::likely).orElse(0.0),
                        row.vapourResistanceDry().likely()),
                new MaterialSheet.Thermal(
                        row.densityKgPerM3(),
                        row.heatCapacityJPerKgK(),
                        row.dryConductivityWPerMK(),
                        conductivityGrowthM3PerKg(row)));
    }

    /**
     * Returns a material at its likely values, glass too.
     *
     * @param name name of the row
     * @throws IllegalArgumentException as {@link #sheet}
     */
    public Material material(String name) {
        return name.equals(GLASS) ? closed(table.named(name)) : sheet(name).material();
    }

    private static Optional<Estimate> entrySuctionPa(MaterialRow row) {
        Optional<Estimate> entry = row.entrySuctionKPa().map(kpa -> kpa.times(PA_PER_KPA));
        return entry.isEmpty() && row.name().equals(SOFTWOOD) ? Optional.of(SOFTWOOD_ENTRY_PA) : entry;
    }

    /** The table's supplement is per percent by volume, for softwood per percent of its dry mass. */
    private static double conductivityGrowthM3PerKg(MaterialRow row) {
        double perPercent = row.conductivityGrowthPerPercentWater().orElse(0.0);
        return row.name().equals(SOFTWOOD)
                ? perPercent * 100.0 / row.densityKgPerM3()
                : perPercent * VOLUME_PERCENT_PER_KG_PER_M3;
    }

    private static Material closed(MaterialRow row) {
        double conductivity = row.dryConductivityWPerMK();
        return new Material(
                row.name(),
                Closed.instance(),
                Closed.instance(),
                Closed.instance(),
                water -> conductivity,
                row.densityKgPerM3() * row.heatCapacityJPerKgK());
    }
}
