package org.limedry.proof.benchmarks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.limedry.air.MagnusForm;
import org.limedry.climate.Schedule;
import org.limedry.lime.CoatMortar;
import org.limedry.proof.figure.Label;
import org.limedry.proof.figure.Source;
import org.limedry.proof.figure.Standing;
import org.limedry.reference.ReferenceTable;
import org.limedry.room.AirExchange;
import org.limedry.room.Plant;
import org.limedry.room.RoomPlan;
import org.limedry.room.Surfaces;
import org.limedry.room.VapourExchange;
import org.limedry.simulation.Accuracy;
import org.limedry.simulation.SiteView;
import org.limedry.units.Units;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.Side;
import org.limedry.wall.WallPlan;
import org.limedry.wall.WallView;

/** ROOM_YEAR: plastered and bare walls of WALL_YEAR around one room through the same year. */
final class RoomYearProof implements Benchmark {
    private static final String TABLE = "benchmarks/ROOM_YEAR";
    private static final String COATED = "coated";
    private static final String BARE = "bare";
    private static final double COATED_M2 = 44.0;
    private static final double BARE_M2 = 36.0;
    private static final double VOLUME_M3 = 45.0;
    private static final double AIR_J_PER_M3_K = 1207.2;
    private static final double RADIANT_J_PER_K = 50_000.0;
    private static final double PRESSURE_PA = 101_325.0;
    private static final double START_CELSIUS = 12.0;
    private static final double START_HUMIDITY = 0.80;
    private static final double SHUT_PER_HOUR = 0.6;
    private static final double OPEN_PER_HOUR = 6.0;
    private static final int DAYS = 365;
    private static final List<String> COLUMNS = List.of(
            "T_air_C",
            "T_rad_C",
            "RH_air",
            "coated_render",
            "coated_brick",
            "coated_coat1",
            "coated_coat2",
            "coated_coat3",
            "bare_render",
            "bare_brick",
            "Tsi_coated_C",
            "Tsi_bare_C",
            "vented_kg",
            "lost_outside_kg");

    @Override
    public String name() {
        return "ROOM_YEAR";
    }

    @Override
    public String setUp() {
        return "44 m2 of the plastered and 36 m2 of the bare wall of WALL_YEAR around a room of 45 m3, 0.6 air changes an hour, 6"
                + " from 8 to 16 h on weekdays. Walls of one kind are one wall here; the 50 kJ/K of the radiant node stand with"
                + " the air.";
    }

    @Override
    public Source origin() {
        return new Source(Label.COMPUTED, "table benchmarks/ROOM_YEAR, Richardson extrapolation of two grids (CVODE)");
    }

    @Override
    public String bands() {
        return "the table gives only its own error; to it are added the bands of WALL_YEAR (water 2e-3 kg/m2, T 0.02 K, 3e-3 kg"
                + " for each of the 80 m2) and of ROOM_BUFFER (RH 0.003)";
    }

    @Override
    public Standing standing(String quantity, double gridFactor) {
        return gridFactor == ORDINARY_GRID
                ? new Standing.KnownShort(
                        "the band of WALL_YEAR asks for some 240 cells a wall; the ordinary grid has 84")
                : new Standing.Sound();
    }

    @Override
    public List<Aim> aims() {
        List<Aim> all = new ArrayList<>();
        for (ReferenceTable.Row row : ReferenceTable.load(TABLE).rows()) {
            for (String column : COLUMNS) {
                all.add(new Aim(
                        Benchmark.quantity(column, row.number("hour")),
                        unit(column),
                        row.number(column),
                        band(column, row)));
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
        return column.endsWith("_kg") ? "kg" : "kg/m2";
    }

    private static double band(String column, ReferenceTable.Row row) {
        return switch (unit(column)) {
            case "C" -> 0.02 + row.number("err_T_air_C");
            case "-" -> 0.003 + row.number("err_RH");
            case "kg" -> 3.0e-3 * (COATED_M2 + BARE_M2) + row.number("err_total_kg");
            default -> 2.0e-3 + row.number("err_water_kg_m2");
        };
    }

    @Override
    public Map<String, Double> found(double gridFactor) {
        Map<String, Double> found = new HashMap<>();
        Set<Double> hours = ReferenceTable.load(TABLE).rows().stream()
                .map(row -> row.number("hour"))
                .collect(Collectors.toSet());
        double[] passed = new double[2];
        lab(gridFactor).run(24.0 * DAYS, (hour, site) -> {
            if (hour > 0.0) {
                passed[0] += site.stepOutByAirKg(0);
                for (WallView wall : site.walls()) {
                    passed[1] -= wall.plan().areaM2() * wall.outerFlow().stepVapourKgPerM2();
                }
            }
            if (hours.contains(hour)) {
                write(hour, site, passed, found);
            }
        });
        return found;
    }

    private static void write(double hour, SiteView site, double[] passed, Map<String, Double> found) {
        WallView coated = site.walls().get(0);
        WallView bare = site.walls().get(1);
        double[] values = {
            site.airCelsius(0),
            site.radiantCelsius(0),
            site.vapourPa(0) / MagnusForm.ISO_WATER.pressurePa(site.airCelsius(0)),
            coated.layerWaterKgPerM2(0),
            coated.layerWaterKgPerM2(1),
            coat(coated, 1),
            coat(coated, 2),
            coat(coated, 3),
            bare.layerWaterKgPerM2(0),
            bare.layerWaterKgPerM2(1),
            coated.innerCelsius(),
            bare.innerCelsius(),
            passed[0],
            passed[1]
        };
        for (int k = 0; k < values.length; k++) {
            found.put(Benchmark.quantity(COLUMNS.get(k), hour), values[k]);
        }
    }

    private static double coat(WallView wall, int number) {
        return wall.coats() < number ? 0.0 : wall.coatWaterKgPerM2(number);
    }

    private static Lab lab(double gridFactor) {
        AirExchange air = new AirExchange(AirExchange.Balance.EQUAL_VOLUME, PRESSURE_PA, 1.0, 0.4, 0.6);
        VapourExchange.HeatCapacity heat = new VapourExchange.HeatCapacity.Fixed(AIR_J_PER_M3_K);
        CoatMortar mortar = SheetMaterials.inertMortar(SheetMaterials.freshCoat(), 0.97);
        return new Lab()
                .accuracy(Accuracy.ordinary().tolerance(), gridFactor)
                .outdoors(WallYearProof.mullingar())
                .course("out", WallYearProof.mullingar())
                .air(air, heat)
                .surfaces(new Surfaces(3.0, 3.0, 3.0, 5.0, 5.0e-8 / 3.0, 4.0, 4.0))
                .room(room(new VapourExchange(air.balance(), PRESSURE_PA, 461.5, heat)))
                .wall(wall(COATED, COATED_M2))
                .wall(wall(BARE, BARE_M2))
                .coat(COATED, mortar, 0.010, START_CELSIUS, 0.0)
                .coat(COATED, mortar, 0.010, START_CELSIUS, 168.0)
                .coat(COATED, mortar, 0.003, START_CELSIUS, 672.0);
    }

    private static WallPlan wall(String name, double areaM2) {
        List<LayerPlan> layers = WallYearProof.oldWall();
        Side outside = new Side.Course("out", 20.0, 1.3e-7);
        return new WallPlan(name, WallPlan.Kind.LISTED, areaM2, layers, outside, new Side.Room("room"), 0.0);
    }

    private static RoomPlan room(VapourExchange exchange) {
        List<Schedule.Span> weekdays = new ArrayList<>();
        for (int day = 0; day < DAYS; day++) {
            if (day % 7 >= 1 && day % 7 <= 5) {
                weekdays.add(new Schedule.Span(Lab.at(24.0 * day + 8.0), Lab.at(24.0 * day + 16.0)));
            }
        }
        double perSecond = VOLUME_M3 / Units.SECONDS_PER_HOUR;
        List<Plant> fans = List.of(
                new Plant.Fan("always", SHUT_PER_HOUR * perSecond, Schedule.always(Lab.START, Lab.at(24.0 * DAYS))),
                new Plant.Fan("open", (OPEN_PER_HOUR - SHUT_PER_HOUR) * perSecond, new Schedule(weekdays)));
        double vapourPa = START_HUMIDITY * MagnusForm.ISO_WATER.pressurePa(START_CELSIUS);
        double density = vapourPa / (461.5 * Units.kelvin(START_CELSIUS));
        double ownAir = exchange.moistJPerM3K(START_CELSIUS, density);
        double fittings = RADIANT_J_PER_K + VOLUME_M3 * (AIR_J_PER_M3_K - ownAir);
        return new RoomPlan(
                "room", VOLUME_M3, 18.0, 2.5, fittings, 0.0, 0.0, List.of(), fans, START_CELSIUS, START_HUMIDITY);
    }
}
