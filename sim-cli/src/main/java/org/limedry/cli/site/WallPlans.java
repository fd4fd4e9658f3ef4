package org.limedry.cli.site;

import java.util.ArrayList;
import java.util.List;
import org.limedry.material.Catalogue;
import org.limedry.material.Closed;
import org.limedry.material.Material;
import org.limedry.material.MaterialSheet;
import org.limedry.room.Surfaces;
import org.limedry.study.Draw;
import org.limedry.units.Units;
import org.limedry.wall.Background;
import org.limedry.wall.Constants;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.Side;
import org.limedry.wall.StartWater;
import org.limedry.wall.WallPlan;

/** From the faces of a site to walls that can be computed, for one draw. */
final class WallPlans {
    private static final double SOIL_M = 1.0;
    private static final double PANE_M = 0.004;
    private static final double CEILING_PLASTER_M = 0.020;
    private static final double FLAGS_M = 0.060;
    private static final double SCREED_M = 0.075;
    private static final double BOARDS_M = 0.022;
    private static final double TILES_M = 0.008;
    private static final double OLD_PAINT_M = 0.001;

    /** The outer film for which U values are stated, W/(m2 K). FROM MEMORY (EN 673: 25). */
    private static final double STANDARD_OUTSIDE_W_PER_M2K = 25.0;

    /** Floors and ceilings that nobody described begin damp, like a cold old room. FROM MEMORY. */
    private static final StartWater DAMP = org.limedry.wall.Wetness.DAMP;

    /** Clay or silt, 1.5 W/(m K) and 3.0e6 J/(m3 K). FROM MEMORY (EN ISO 13370, category 1). */
    private static final Material SOIL = closed("soil", 1.5, 3.0e6);

    /** One millimetre that lets vapour through like half a metre of air and drinks nothing. FROM MEMORY, judgement. */
    private static final MaterialSheet OLD_PAINT = new MaterialSheet(
            Catalogue.OLD_PAINT,
            new MaterialSheet.Storage(50.0, 5.0, 500_000.0),
            new MaterialSheet.Transport(0.0, 500.0),
            new MaterialSheet.Thermal(1200.0, 1000.0, 0.2, 0.0));

    private final Library library;
    private final Materials materials;
    private final Guesses guesses;
    private final Draw draw;

    WallPlans(SiteParts parts, Materials materials, Guesses guesses, Draw draw) {
        this.library = parts.library();
        this.materials = materials;
        this.guesses = guesses;
        this.draw = draw;
    }

    /** How layers begin that nobody described. */
    private record Start(double celsius, StartWater water) {}

    /**
     * Returns a wall.
     *
     * @param spec its face
     * @param startCelsius temperature as the run begins, C
     * @param soilCelsius temperature of the soil at depth, C
     */
    WallPlan plan(WallSpec spec, double startCelsius, double soilCelsius) {
        return new WallPlan(
                spec.name(),
                spec.kind(),
                spec.areaM2(),
                layers(spec, startCelsius),
                outside(spec, soilCelsius),
                new Side.Room(spec.room()),
                spec.risingDampKgPerS());
    }

    private List<LayerPlan> layers(WallSpec spec, double celsius) {
        Start damp = new Start(celsius, DAMP);
        if (spec.build() instanceof WallSpec.Wall wall) {
            return wall(spec, wall, celsius);
        }
        if (spec.build() instanceof WallSpec.Ground ground) {
            return ground(ground.floor(), damp);
        }
        if (spec.build() instanceof WallSpec.Overhead overhead) {
            return overhead.ceiling() == RoomKeys.Ceiling.BOARDS
                    ? List.of(layer(Catalogue.SOFTWOOD, BOARDS_M, damp))
                    : List.of(
                            layer(Catalogue.LATH_LAYER, Background.LATH_LAYER_M, damp),
                            layer(Catalogue.AIR_LIME_PLASTER, CEILING_PLASTER_M, damp));
        }
        return List.of(pane(((WallSpec.Pane) spec.build()).transmittanceWPerM2K(), damp));
    }

    private List<LayerPlan> wall(WallSpec spec, WallSpec.Wall wall, double celsius) {
        StartWater water =
                wall.wetness().at(guesses.wetness(spec, wall.wetness()).in(draw));
        List<LayerPlan> layers =
                new ArrayList<>(wall.background().layers(this::drawn, wall.thicknessM(), water, celsius));
        Start finish = new Start(celsius, DAMP);
        switch (wall.finish()) {
            case OLD_PAINT -> layers.add(layer(OLD_PAINT, OLD_PAINT_M, finish));
            case TILES -> layers.add(layer(Catalogue.GRANITE, TILES_M, finish));
            case BARE, LIMEWASH -> {
                // A coat of limewash does not slow drying (S65, abstract), and holds no water to speak of.
            }
        }
        return layers;
    }

    private MaterialSheet drawn(String row) {
        return materials
                .likely(row)
                .withEntrySuction(Guesses.pascals(guesses.wallEntrySuction(row).in(draw)))
                .withAbsorption(guesses.wallAbsorption(row).in(draw));
    }

    private List<LayerPlan> ground(RoomKeys.Floor floor, Start start) {
        LayerPlan soil = layer(SOIL, SOIL_M, start);
        return switch (floor) {
            case BARE_EARTH -> List.of(soil);
            case FLAGS -> List.of(soil, layer(Catalogue.HARD_LIMESTONE, FLAGS_M, start));
            case BOARDS -> List.of(soil, layer(Catalogue.SOFTWOOD, BOARDS_M, start));
            case SCREED -> List.of(soil, layer(Catalogue.NHL_PLASTER, SCREED_M, start));
        };
    }

    /** Glass of 4 mm that has the resistance left when the films are taken off: {@code 1/U - 1/8 - 1/h_out}. */
    private LayerPlan pane(double transmittanceWPerM2K, Start start) {
        Material glass = library.catalogue().material(Catalogue.GLASS);
        Surfaces surfaces = Surfaces.ordinary();
        double inside = 1.0 / (surfaces.stillWPerM2K() + surfaces.radiantWPerM2K());
        double outside = 1.0 / STANDARD_OUTSIDE_W_PER_M2K;
        double plain = PANE_M / glass.conductivityWPerMK().at(0.0);
        double resistance = Math.max(plain, 1.0 / transmittanceWPerM2K - inside - outside);
        return layer(closed("glass", PANE_M / resistance, glass.dryHeatCapacityJPerM3K()), PANE_M, start);
    }

    private LayerPlan layer(String row, double thicknessM, Start start) {
        return layer(materials.likely(row), thicknessM, start);
    }

    private static LayerPlan layer(MaterialSheet sheet, double thicknessM, Start start) {
        double suctionPa =
                start.water().startSuctionPa(sheet.storage().retention(), start.celsius(), Constants.ordinary());
        return new LayerPlan(sheet.name(), sheet.material(), thicknessM, start.celsius(), suctionPa);
    }

    /** A closed layer holds no water; the suction only says how wet its bare face is. */
    private static LayerPlan layer(Material material, double thicknessM, Start start) {
        double suctionPa =
                start.water().startSuctionPa(OLD_PAINT.storage().retention(), start.celsius(), Constants.ordinary());
        return new LayerPlan(material.name(), material, thicknessM, start.celsius(), suctionPa);
    }

    private static Material closed(String name, double conductivityWPerMK, double heatJPerM3K) {
        return new Material(
                name,
                Closed.instance(),
                Closed.instance(),
                Closed.instance(),
                water -> conductivityWPerMK,
                heatJPerM3K);
    }

    private static Side outside(WallSpec spec, double soilCelsius) {
        if (spec.build() instanceof WallSpec.Ground) {
            return new Side.Soil(soilCelsius);
        }
        Side said = side(spec.beyond());
        return spec.build() instanceof WallSpec.Wall wall ? wall.background().outerSide(said) : said;
    }

    private static Side side(WallKeys.Beyond beyond) {
        if (beyond instanceof WallKeys.Beyond.Room room) {
            return new Side.Room(room.name());
        }
        if (beyond instanceof WallKeys.Beyond.Air air) {
            Surfaces surfaces = Surfaces.ordinary();
            return new Side.Air(
                    air.celsius(),
                    Units.fractionFromPercent(air.rhPercent()),
                    surfaces.stillWPerM2K() + surfaces.radiantWPerM2K(),
                    surfaces.stillWPerM2K() * surfaces.vapourPerConvectionKPerJ());
        }
        return beyond instanceof WallKeys.Beyond.Closed ? new Side.Sealed() : new Side.Outdoors();
    }
}
