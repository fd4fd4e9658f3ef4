package org.limedry.proof.benchmarks;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.limedry.lime.CoatMortar;
import org.limedry.material.LiquidTransport;
import org.limedry.material.Material;
import org.limedry.proof.figure.Label;
import org.limedry.proof.figure.Source;
import org.limedry.reference.ReferenceTable;
import org.limedry.simulation.Accuracy;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.Side;
import org.limedry.wall.WallView;

/**
 * FRESH_COAT: two wet coats on an absorbent brick, the second laid after three days.
 *
 * @param liquid what is done to the liquid transport of both materials; nothing, for the sheet's own
 */
record FreshCoatProof(UnaryOperator<LiquidTransport> liquid) implements Benchmark {
    private static final String WALL = "wall";

    FreshCoatProof() {
        this(UnaryOperator.identity());
    }

    @Override
    public String name() {
        return "FRESH_COAT";
    }

    @Override
    public String setUp() {
        return "Brick 250 mm between given airs; coats of 10 mm laid at 0 and 72 h; every row a run of its own.";
    }

    @Override
    public Source origin() {
        return new Source(
                Label.COMPUTED,
                "table benchmarks/FRESH_COAT, finite volumes with Kirchhoff links on three grids (SciPy); own error 6e-4 kg/m2");
    }

    @Override
    public String bands() {
        return "water 2 % + 0.01 kg/m2, face 0.1 K, evaporation to the room 3 % (stated with the table)";
    }

    @Override
    public List<Aim> aims() {
        return ReferenceTable.load("benchmarks/FRESH_COAT").rows().stream()
                .flatMap(row -> List.of(
                        water(row, "brick", "brick_kg_m2"),
                        water(row, "coat 1", "coat1_kg_m2"),
                        water(row, "coat 2", "coat2_kg_m2"),
                        new Aim(key("room face", hour(row)), "C", row.number("room_surface_T_C"), 0.1),
                        new Aim(
                                key("evaporation to the room", hour(row)),
                                "kg/(m2 s)",
                                row.number("evap_room_kg_m2s"),
                                0.03 * row.number("evap_room_kg_m2s")))
                        .stream())
                .toList();
    }

    private static Aim water(ReferenceTable.Row row, String layer, String column) {
        double value = row.number(column);
        return new Aim(key(layer, hour(row)), "kg/m2", value, 0.02 * value + 0.01);
    }

    private static double hour(ReferenceTable.Row row) {
        return row.number("hour");
    }

    private static String key(String quantity, double hour) {
        return String.format(Locale.ROOT, "%s, %.1f h", quantity, hour);
    }

    @Override
    public Map<String, Double> found(double gridFactor) {
        Map<String, Double> found = new HashMap<>();
        for (ReferenceTable.Row row :
                ReferenceTable.load("benchmarks/FRESH_COAT").rows()) {
            double hour = hour(row);
            Lab lab = lab(gridFactor);
            // The row of 72 h is before the second coat is laid, which would be the run's last deed.
            WallView wall = (hour > 72.0 ? lab.coat(WALL, mortar(), 0.01, 15.0, 72.0) : lab).wallAfter(hour);
            found.put(key("brick", hour), wall.layerWaterKgPerM2(0));
            found.put(key("coat 1", hour), wall.coatWaterKgPerM2(1));
            found.put(key("coat 2", hour), wall.coats() > 1 ? wall.coatWaterKgPerM2(2) : 0.0);
            found.put(key("room face", hour), wall.innerCelsius());
            found.put(key("evaporation to the room", hour), -wall.innerFlow().vapourKgPerM2S());
        }
        return found;
    }

    private Lab lab(double gridFactor) {
        List<LayerPlan> brick = List.of(
                new LayerPlan("brick", held(SheetMaterials.freshBrick()), 0.25, 15.0, Lab.suctionPa(0.70, 15.0)));
        return new Lab()
                .accuracy(Accuracy.ordinary().tolerance(), gridFactor)
                .wall(WALL, brick, new Side.Air(15.0, 0.70, 20.0, 1.3e-7), new Side.Air(15.0, 0.60, 8.0, 5.0e-8))
                .coat(WALL, mortar(), 0.01, 15.0, 0.0);
    }

    private CoatMortar mortar() {
        return SheetMaterials.inertMortar(held(SheetMaterials.freshCoat()), 0.97);
    }

    private Material held(Material material) {
        return SheetMaterials.withLiquid(material, liquid.apply(material.liquid()));
    }
}
