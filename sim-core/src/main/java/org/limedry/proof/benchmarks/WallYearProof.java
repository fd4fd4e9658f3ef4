package org.limedry.proof.benchmarks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import org.limedry.air.MagnusForm;
import org.limedry.lime.CoatMortar;
import org.limedry.proof.figure.Label;
import org.limedry.proof.figure.Source;
import org.limedry.proof.figure.Standing;
import org.limedry.reference.ReferenceTable;
import org.limedry.reference.WeatherYear;
import org.limedry.simulation.Accuracy;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.Side;
import org.limedry.wall.WallView;

/** WALL_YEAR: a rendered brick wall with three coats through a year of hourly weather. */
final class WallYearProof implements Benchmark {
    static final double HOURS = 8760.0;
    private static final int ROWS = 8760;
    private static final int FIRST_ROW = 273 * 24;
    private static final double START_CELSIUS = 12.0;
    private static final List<String> LAYERS =
            List.of("render_kg_m2", "brick_kg_m2", "coat1_kg_m2", "coat2_kg_m2", "coat3_kg_m2");

    @Override
    public String name() {
        return "WALL_YEAR";
    }

    @Override
    public String setUp() {
        return "Render, brick and three coats (days 0, 7, 28) from 1 October, hourly weather of Mullingar 2017. The"
                + " band of the table asks for some 240 cells; the ordinary grid has 84, half of every cell 164.";
    }

    @Override
    public Source origin() {
        return new Source(
                Label.COMPUTED,
                "table benchmarks/WALL_YEAR, Richardson extrapolation of 480 and 960 cells (CVODE); own error 4.4e-5 kg/m2");
    }

    @Override
    public String bands() {
        return "water 2e-3 kg/m2 + own error, inner face 0.02 K, evaporation 3e-3 kg/m2 (stated with the table)";
    }

    @Override
    public Standing standing(String quantity, double gridFactor) {
        return gridFactor == ORDINARY_GRID
                ? new Standing.KnownShort("the band of the table asks for some 240 cells; the ordinary grid has 84")
                : new Standing.Sound();
    }

    @Override
    public List<Aim> aims() {
        List<Aim> all = new ArrayList<>();
        for (ReferenceTable.Row row :
                ReferenceTable.load("benchmarks/WALL_YEAR").rows()) {
            double hour = row.number("hour");
            for (String layer : LAYERS) {
                double band = 2.0e-3 + row.number("err_water_kg_m2");
                all.add(new Aim(Benchmark.quantity(layer, hour), "kg/m2", row.number(layer), band));
            }
            all.add(new Aim(
                    Benchmark.quantity("T_inside_surface_C", hour), "C", row.number("T_inside_surface_C"), 0.02));
            all.add(new Aim(Benchmark.quantity("evap_in_kg_m2", hour), "kg/m2", row.number("evap_in_kg_m2"), 3.0e-3));
            all.add(new Aim(Benchmark.quantity("evap_out_kg_m2", hour), "kg/m2", row.number("evap_out_kg_m2"), 3.0e-3));
        }
        return all;
    }

    @Override
    public Map<String, Double> found(double gridFactor) {
        Map<String, Double> found = new HashMap<>();
        Set<Double> hours = ReferenceTable.load("benchmarks/WALL_YEAR").rows().stream()
                .map(row -> row.number("hour"))
                .collect(Collectors.toSet());
        double[] lost = new double[2];
        lab(gridFactor).run(HOURS, (hour, site) -> {
            WallView wall = site.walls().get(0);
            if (hour > 0.0) {
                lost[0] -= wall.innerFlow().stepVapourKgPerM2();
                lost[1] -= wall.outerFlow().stepVapourKgPerM2();
            }
            if (hours.contains(hour)) {
                for (int layer = 0; layer < LAYERS.size(); layer++) {
                    boolean isThere = layer < 2 + wall.coats();
                    found.put(
                            Benchmark.quantity(LAYERS.get(layer), hour), isThere ? wall.layerWaterKgPerM2(layer) : 0.0);
                }
                found.put(Benchmark.quantity("T_inside_surface_C", hour), wall.innerCelsius());
                found.put(Benchmark.quantity("evap_in_kg_m2", hour), lost[0]);
                found.put(Benchmark.quantity("evap_out_kg_m2", hour), lost[1]);
            }
        });
        return found;
    }

    static Lab lab(double gridFactor) {
        CoatMortar mortar = SheetMaterials.inertMortar(SheetMaterials.freshCoat(), 0.97);
        return new Lab()
                .accuracy(Accuracy.ordinary().tolerance(), gridFactor)
                .course("out", mullingar())
                .course("in", indoors())
                .wall("wall", oldWall(), new Side.Course("out", 20.0, 1.3e-7), new Side.Course("in", 8.0, 5.0e-8))
                .coat("wall", mortar, 0.010, START_CELSIUS, 0.0)
                .coat("wall", mortar, 0.010, START_CELSIUS, 168.0)
                .coat("wall", mortar, 0.003, START_CELSIUS, 672.0);
    }

    /** Returns render and brick at 80 % humidity. */
    static List<LayerPlan> oldWall() {
        double suctionPa = Lab.suctionPa(0.80, START_CELSIUS);
        return List.of(
                new LayerPlan("render", SheetMaterials.freshRender(), 0.020, START_CELSIUS, suctionPa),
                new LayerPlan("brick", SheetMaterials.freshBrick(), 0.340, START_CELSIUS, suctionPa));
    }

    static Course mullingar() {
        WeatherYear year = WeatherYear.load("mullingar-2017");
        double[] celsius = new double[ROWS];
        double[] humidity = new double[ROWS];
        for (int k = 0; k < ROWS; k++) {
            int row = (k + FIRST_ROW) % ROWS;
            celsius[k] = year.celsius(row);
            humidity[k] = 0.01 * year.rhPercent(row);
        }
        DoubleUnaryOperator t = hour -> between(celsius, hour);
        return new Course(
                Lab.START,
                t,
                hour -> between(humidity, hour) * MagnusForm.ISO_WATER.pressurePa(t.applyAsDouble(hour)),
                hour -> 0.0);
    }

    private static double between(double[] hourly, double hour) {
        int before = (int) Math.floor(hour);
        double share = hour - before;
        return (1.0 - share) * hourly[before % ROWS] + share * hourly[(before + 1) % ROWS];
    }

    private static Course indoors() {
        DoubleUnaryOperator t = hour -> 10.0 + 6.0 * Math.sin(2.0 * Math.PI * (hour / 24.0 + 160.0) / 365.0);
        return new Course(
                Lab.START,
                t,
                hour -> (0.75 + 0.10 * Math.sin(2.0 * Math.PI * hour / 24.0 / 365.0))
                        * MagnusForm.ISO_WATER.pressurePa(t.applyAsDouble(hour)),
                hour -> 0.0);
    }
}
