package org.limedry.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.limedry.material.Catalogue;
import org.limedry.material.MaterialSheet;
import org.limedry.units.Check;

/**
 * What the first coat goes on, in the words of the trade.
 *
 * <p>A wall of stone or brick is one even material through its thickness: bed joints, hearting and old repairs are not
 * modelled. Timber lath is an 8 mm layer of laths and gaps on a closed cavity; keys of plaster squeezed through the gaps
 * are not modelled (they hold a little more water, so lath comes out a little early).
 */
public enum Background {
    /** Old soft brick. */
    OLD_BRICK("old brick", Catalogue.OLD_BRICK),
    /** Rubble in lime mortar. */
    LIME_RUBBLE_STONE("lime-rubble stone", Catalogue.LIME_RUBBLE),
    /** Sandstone. */
    SANDSTONE("sandstone", Catalogue.SANDSTONE),
    /** Soft limestone. */
    SOFT_LIMESTONE("soft limestone", Catalogue.SOFT_LIMESTONE),
    /** Hard limestone. */
    HARD_LIMESTONE("hard limestone", Catalogue.HARD_LIMESTONE),
    /** Granite: it does not drink, water runs on it. */
    GRANITE("granite", Catalogue.GRANITE),
    /** Riven laths on a closed cavity. */
    TIMBER_LATH("timber lath", Catalogue.LATH_LAYER),
    /** Sound old lime plaster on old brick. */
    OLD_PLASTER("old plaster", Catalogue.OLD_BRICK);

    /** Thickness of laths and gaps taken as one layer, m. Assumed. */
    public static final double LATH_LAYER_M = 0.008;

    /** Dry density of the lath layer, kg/m3 (materials table, row of {@link Catalogue#LATH_LAYER}; assumed there). */
    public static final double LATH_DRY_KG_PER_M3 = 450.0;

    /** Thickness of old plaster, m, and the most it takes of a thin wall. Assumed. */
    private static final double OLD_PLASTER_M = 0.015;

    private static final double OLD_PLASTER_MOST_OF_WALL = 0.5;

    /**
     * From behind the laths to the air of a neighbour's room: a still cavity (0.18), the far leaf (0.05) and its face
     * (0.13 m2 K/W). FROM MEMORY (EN ISO 6946) but for the leaf, which is judgement.
     */
    private static final double BEHIND_LATH_M2K_PER_W = 0.36;

    /** Vapour to the same place: 20 mm of lime plaster with mu 9 on the lath layer, {@code 2e-10 / (0.18 + 0.16) }. Judgement, kg/(m2 s Pa). */
    private static final double BEHIND_LATH_S_PER_M = 5.9e-10;

    private final String words;
    private final String materialName;

    Background(String words, String materialName) {
        this.words = words;
        this.materialName = materialName;
    }

    /** Returns its name in the words of the trade. */
    public String words() {
        return words;
    }

    /** Returns the name of its main material in the catalogue. */
    public String materialName() {
        return materialName;
    }

    /** Tells whether it is a thin layer on a closed cavity, whose thickness is not the wall's. */
    public boolean isOnCavity() {
        return this == TIMBER_LATH;
    }

    /**
     * Returns what its outer face looks at: as said, but behind laths there is a closed cavity, sealed unless a neighbour's
     * air is known, which then lies behind the cavity and the far leaf.
     *
     * @param said what the user says lies on the other side
     */
    public Side outerSide(Side said) {
        if (!isOnCavity()) {
            return said;
        }
        if (said instanceof Side.Air air) {
            return new Side.Air(
                    air.celsius(), air.relativeHumidity(), 1.0 / BEHIND_LATH_M2K_PER_W, BEHIND_LATH_S_PER_M);
        }
        return new Side.Sealed();
    }

    /**
     * Returns the layers of a wall, from its outer side to the room.
     *
     * @param sheets figures of a catalogue material by name
     * @param thicknessM thickness of the wall, m; above 0; of no account for laths
     * @param start how wet it is
     * @param celsius its temperature, C
     */
    public List<LayerPlan> layers(
            Function<String, MaterialSheet> sheets, double thicknessM, StartWater start, double celsius) {
        Check.positive(thicknessM, "thicknessM", "m");
        List<LayerPlan> layers = new ArrayList<>();
        double plasterM = this == OLD_PLASTER ? Math.min(OLD_PLASTER_M, OLD_PLASTER_MOST_OF_WALL * thicknessM) : 0.0;
        double mainM = isOnCavity() ? LATH_LAYER_M : thicknessM - plasterM;
        layers.add(layer(sheets.apply(materialName), mainM, start, celsius));
        if (plasterM > 0.0) {
            layers.add(layer(sheets.apply(Catalogue.AIR_LIME_PLASTER), plasterM, start, celsius));
        }
        return List.copyOf(layers);
    }

    private static LayerPlan layer(MaterialSheet sheet, double thicknessM, StartWater start, double celsius) {
        double suctionPa = start.startSuctionPa(sheet.storage().retention(), celsius, Constants.ordinary());
        return new LayerPlan(sheet.name(), sheet.material(), thicknessM, celsius, suctionPa);
    }
}
