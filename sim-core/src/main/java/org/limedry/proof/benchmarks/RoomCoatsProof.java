package org.limedry.proof.benchmarks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.limedry.material.LiquidTransport;
import org.limedry.proof.figure.Label;
import org.limedry.proof.figure.Source;
import org.limedry.reference.ReferenceTable;
import org.limedry.simulation.Accuracy;
import org.limedry.simulation.SiteView;
import org.limedry.wall.WallView;

/**
 * ROOM_COATS: every row and column of the sheet.
 *
 * @param liquid what is done to the liquid transport of every material; nothing, for the sheet's own
 */
record RoomCoatsProof(UnaryOperator<LiquidTransport> liquid) implements Benchmark {
    private static final int BRICK = 0;
    private static final int STONE = 1;
    private static final int GLASS = 2;
    private static final List<String> COLUMNS = List.of(
            "T_air_C",
            "RH_air",
            "T_rad_C",
            "Ts_brickwall_C",
            "Ts_stone_C",
            "Ts_glass_C",
            "RHs_brickwall",
            "RHs_stone",
            "brick_kg_m2",
            "coat1_kg_m2",
            "coat2_kg_m2",
            "stone_kg_m2",
            "film_glass_kg_m2",
            "cum_vent_out_kg",
            "cum_evap_brickwall_kg",
            "cum_evap_stone_kg",
            "cum_evap_glass_kg",
            "cum_runoff_glass_kg",
            "cum_outside_brickwall_kg",
            "cum_outside_stone_kg",
            "air_kg",
            "total_water_kg");

    RoomCoatsProof() {
        this(UnaryOperator.identity());
    }

    @Override
    public String name() {
        return "ROOM_COATS";
    }

    @Override
    public String setUp() {
        return "24 days of a room with a brick wall, two coats, stone, glass, a door by day and a heater from day 12; leakage"
                + " as a fan, since the case adds it to the flow of the door.";
    }

    @Override
    public Source origin() {
        return new Source(
                Label.COMPUTED,
                "table benchmarks/ROOM_COATS, finite volumes, implicit steps, checked by a second code (SciPy BDF)");
    }

    @Override
    public String bands() {
        return "T 0.1 K, RH 0.005, layer water 1 % + 0.01 kg/m2, kg 1 % + 0.1 kg (stated with the table)";
    }

    @Override
    public List<Aim> aims() {
        List<Aim> all = new ArrayList<>();
        for (ReferenceTable.Row row :
                ReferenceTable.load("benchmarks/ROOM_COATS").rows()) {
            for (String column : COLUMNS) {
                double value = row.number(column);
                all.add(new Aim(
                        Benchmark.quantity(column, row.number("hour")), unit(column), value, band(column, value)));
            }
        }
        return all;
    }

    private static String unit(String column) {
        if (column.startsWith("T")) {
            return "C";
        }
        if (column.startsWith("RH")) {
            return "-";
        }
        return column.endsWith("kg_m2") ? "kg/m2" : "kg";
    }

    private static double band(String column, double value) {
        return switch (unit(column)) {
            case "C" -> 0.1;
            case "-" -> 0.005;
            case "kg/m2" -> 0.01 * Math.abs(value) + 0.01;
            default -> 0.01 * Math.abs(value) + 0.1;
        };
    }

    @Override
    public Map<String, Double> found(double gridFactor) {
        Map<String, Double> found = new HashMap<>();
        Totals totals = new Totals();
        List<Double> hours = ReferenceTable.load("benchmarks/ROOM_COATS").rows().stream()
                .map(row -> row.number("hour"))
                .toList();
        RoomCoatsCase.lab(Accuracy.ordinary().tolerance(), gridFactor, liquid)
                .run(RoomCoatsCase.HOURS, (hour, site) -> {
                    if (hour > 0.0) {
                        totals.add(site);
                    }
                    if (hours.contains(hour)) {
                        write(hour, site, totals, found);
                    }
                });
        return found;
    }

    /** What passed since the start, kg. */
    private static final class Totals {
        private final double[] toRoom = new double[3];
        private final double[] toOutside = new double[3];
        private double vented;
        private double ranOffGlass;

        void add(SiteView site) {
            vented += site.stepOutByAirKg(0);
            for (int wall = BRICK; wall <= GLASS; wall++) {
                WallView column = site.walls().get(wall);
                double area = column.plan().areaM2();
                toRoom[wall] -= area * column.innerFlow().stepVapourKgPerM2();
                toOutside[wall] -= area * column.outerFlow().stepVapourKgPerM2();
            }
            WallView glass = site.walls().get(GLASS);
            ranOffGlass += glass.plan().areaM2() * glass.innerFlow().stepRunOffKgPerM2();
        }
    }

    private static void write(double hour, SiteView site, Totals totals, Map<String, Double> found) {
        WallView brick = site.walls().get(BRICK);
        WallView stone = site.walls().get(STONE);
        WallView glass = site.walls().get(GLASS);
        double airKg = RoomCoatsCase.VOLUME_M3 * site.vapourKgPerM3(0);
        double saturationPa = Lab.sheetConstants().saturation().pressurePa(site.airCelsius(0));
        double[] values = {
            site.airCelsius(0),
            site.vapourPa(0) / saturationPa,
            site.radiantCelsius(0),
            brick.innerCelsius(),
            stone.innerCelsius(),
            glass.innerCelsius(),
            brick.innerRelativeHumidity(),
            stone.innerRelativeHumidity(),
            brick.layerWaterKgPerM2(0),
            brick.coats() > 0 ? brick.coatWaterKgPerM2(1) : 0.0,
            brick.coats() > 1 ? brick.coatWaterKgPerM2(2) : 0.0,
            stone.layerWaterKgPerM2(0),
            glass.innerFilmKgPerM2(),
            totals.vented,
            totals.toRoom[BRICK],
            totals.toRoom[STONE],
            totals.toRoom[GLASS],
            totals.ranOffGlass,
            totals.toOutside[BRICK],
            totals.toOutside[STONE],
            airKg,
            airKg + held(brick) + held(stone) + held(glass)
        };
        for (int k = 0; k < values.length; k++) {
            found.put(Benchmark.quantity(COLUMNS.get(k), hour), values[k]);
        }
    }

    private static double held(WallView column) {
        double films = column.innerFilmKgPerM2() + column.outerFilmKgPerM2();
        return column.plan().areaM2() * (column.waterKgPerM2() + films);
    }
}
