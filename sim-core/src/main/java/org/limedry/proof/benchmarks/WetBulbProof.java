package org.limedry.proof.benchmarks;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.limedry.air.MagnusForm;
import org.limedry.climate.Schedule;
import org.limedry.material.Material;
import org.limedry.material.VanGenuchten;
import org.limedry.proof.figure.Label;
import org.limedry.proof.figure.Source;
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

/** WETBULB_ROOM: wet faces in given air, and the room balances. */
final class WetBulbProof implements Benchmark {
    private static final double AIR_DENSITY = 1.204;
    private static final double AIR_HEAT = 1006.0;
    /** Vapour transfer per convection of the sheet: Lewis relation with a Lewis number of 0.865. */
    private static final double LEWIS =
            Math.pow(0.865, -2.0 / 3.0) / (AIR_DENSITY * AIR_HEAT * 461.5 * Units.kelvin(20.0));

    private static final double HELD_J_PER_K = 1.0e15;
    private static final double STEADY_HOURS = 48.0;
    private static final Pattern FACE = Pattern.compile("air (\\S+) C RH (\\S+)");
    private static final Pattern CONVECTION = Pattern.compile("h_c=(\\d+)");

    @Override
    public String name() {
        return "WETBULB_ROOM";
    }

    @Override
    public String setUp() {
        return "A face of wet plaster, 5 mm on nothing, until it is steady (48 h); rooms through the room balance with vapour"
                + " counted at room temperature, air held at 20 C by a heat capacity without end; surroundings at air"
                + " temperature are put into the convection.";
    }

    @Override
    public Source origin() {
        return new Source(
                Label.EXACT,
                "table benchmarks/WETBULB_ROOM, root of the surface balance, exponentials; own error 1e-9");
    }

    @Override
    public String bands() {
        return "T 0.05 K, rates 1 %, RH 0.003 (stated with the table); no rate: 1e-9 kg/(m2 s)";
    }

    @Override
    public List<Aim> aims() {
        return ReferenceTable.load("benchmarks/WETBULB_ROOM").rows().stream()
                .map(row -> new Aim(key(row), row.text("unit"), row.number("value"), band(row)))
                .toList();
    }

    private static double band(ReferenceTable.Row row) {
        return switch (row.text("unit")) {
            case "C" -> 0.05;
            case "-" -> 0.003;
            default -> Math.max(1.0e-9, 0.01 * row.number("value"));
        };
    }

    private static String key(ReferenceTable.Row row) {
        return row.text("case") + ": " + row.text("quantity");
    }

    @Override
    public Map<String, Double> found(double gridFactor) {
        Map<String, Double> found = new HashMap<>();
        for (ReferenceTable.Row row :
                ReferenceTable.load("benchmarks/WETBULB_ROOM").rows()) {
            String text = row.text("case");
            if (text.startsWith("room air")) {
                found.put(key(row), heated(last(row), gridFactor));
            } else if (text.contains("source 100 g/h")) {
                found.put(key(row), humidified(last(row), gridFactor));
            } else if (text.startsWith("room")) {
                found.put(key(row), wetRoom(row, gridFactor));
            } else {
                found.put(key(row), face(row, gridFactor));
            }
        }
        return found;
    }

    private static double face(ReferenceTable.Row row, double gridFactor) {
        Matcher air = FACE.matcher(row.text("quantity"));
        Matcher convection = CONVECTION.matcher(row.text("case"));
        if (!air.find()) {
            throw new IllegalStateException("no air in " + row.text("quantity"));
        }
        double watts = convection.find() ? Double.parseDouble(convection.group(1)) : 3.0;
        boolean bare = row.text("case").contains("no radiation");
        boolean backed = row.text("case").contains("U=1.2");
        Side inside = new Side.Air(
                Double.parseDouble(air.group(1)),
                Double.parseDouble(air.group(2)),
                bare ? watts : watts + 5.0,
                watts * LEWIS);
        Side behind = backed ? new Side.Air(5.0, 0.8, 1.2, 0.0) : new Side.Sealed();
        WallView wall = new Lab()
                .accuracy(Accuracy.ordinary().tolerance(), gridFactor)
                .wall("w", List.of(plaster()), behind, inside)
                .wallAfter(STEADY_HOURS);
        return row.text("unit").equals("C")
                ? wall.innerCelsius()
                : -wall.innerFlow().vapourKgPerM2S();
    }

    /** Returns plaster that stays wet: a great store, light, and so conductive that it has one temperature. */
    private static LayerPlan plaster() {
        Material coat = SheetMaterials.freshCoat();
        Material wet = new Material(
                "wet",
                new VanGenuchten(5000.0, 1.0e4, 2.0),
                coat.liquid(),
                coat.vapourPermeabilityKgPerMSPa(),
                water -> 1.0e3,
                1.0e5);
        return new LayerPlan("wet", wet, 0.005, 20.0, 1.0e3);
    }

    private static double wetRoom(ReferenceTable.Row row, double gridFactor) {
        double perHour = Double.parseDouble(row.text("case").replaceAll(".*80%, | 1/h", ""));
        double[] last = new double[3];
        WallPlan wall = new WallPlan(
                "plaster",
                WallPlan.Kind.LISTED,
                40.0,
                List.of(plaster()),
                new Side.Sealed(),
                new Side.Room("room"),
                0.0);
        lab(gridFactor, 20.0, 101_325.0)
                .surfaces(faces(8.0, 3.0 * LEWIS / 8.0))
                .room(room(HELD_J_PER_K, perHour, List.of(), 20.0))
                .wall(wall)
                .run(STEADY_HOURS, (hour, site) -> {
                    last[0] = relativeHumidity(site);
                    last[1] = -site.walls().get(0).innerFlow().vapourKgPerM2S();
                    last[2] = site.walls().get(0).innerCelsius();
                });
        return switch (row.text("quantity")) {
            case "RH" -> last[0];
            case "T_s" -> last[2];
            default -> last[1];
        };
    }

    private static double humidified(double hours, double gridFactor) {
        double[] last = new double[1];
        // 90 g/h a head.
        Plant people = new Plant.People("source", 100.0 / 90.0, Schedule.always(Lab.START, Lab.at(24.0)));
        lab(gridFactor, 20.0, 101_325.0)
                .room(room(HELD_J_PER_K, 0.5, List.of(people), 20.0))
                .wall(pane(1.0e-6, new Side.Sealed()))
                .run(hours, (hour, site) -> last[0] = relativeHumidity(site));
        return last[0];
    }

    private static double heated(double hours, double gridFactor) {
        double[] last = new double[1];
        Plant heater = new Plant.Heater(
                "heater",
                600.0,
                Plant.Fuel.ELECTRIC,
                0.0,
                OptionalDouble.empty(),
                false,
                Schedule.always(Lab.START, Lab.at(24.0)));
        // 60 W/K: 1000 W/(m2 K) on both faces of 0.12 m2, nothing between. Air pressure such that the air is the
        // sheet's.
        double vapourPa = 0.5 * MagnusForm.ISO_WATER.pressurePa(5.0);
        double pressurePa =
                vapourPa + AIR_DENSITY * 287.042 * Units.kelvin(5.0) - vapourPa * 1860.0 / 461.5 * 287.042 / AIR_HEAT;
        lab(gridFactor, 5.0, pressurePa)
                .surfaces(faces(1.0e3, 1.0e-12))
                .room(room(0.0, 0.0, List.of(heater), 5.0))
                .wall(pane(0.12, new Side.Air(5.0, 0.5, 1.0e3, 0.0)))
                .run(hours, (hour, site) -> last[0] = site.airCelsius(0));
        return last[0];
    }

    /** Returns transfer without radiation to speak of, the same whatever stands open. */
    private static Surfaces faces(double convection, double vapourPerConvection) {
        return new Surfaces(convection, convection, convection, 1.0e-9, vapourPerConvection, 4.0, 4.0);
    }

    private static Lab lab(double gridFactor, double outdoorCelsius, double pressurePa) {
        AirExchange air = new AirExchange(AirExchange.Balance.PARTIAL_PRESSURE, pressurePa, 1.0, 0.4, 0.6);
        double outdoorPa = 0.8 * MagnusForm.ISO_WATER.pressurePa(5.0);
        return new Lab()
                .accuracy(Accuracy.ordinary().tolerance(), gridFactor)
                .outdoors(Course.steady(Lab.START, outdoorCelsius, outdoorPa))
                .air(air, new VapourExchange.HeatCapacity.Fixed(AIR_DENSITY * AIR_HEAT));
    }

    private static RoomPlan room(double fittings, double perHour, List<Plant> plant, double celsius) {
        return new RoomPlan("room", 30.0, 12.0, 2.5, fittings, perHour, 0.0, List.of(), plant, celsius, 0.5);
    }

    /** Returns a thin pane without heat capacity to speak of. */
    private static WallPlan pane(double areaM2, Side outside) {
        List<LayerPlan> glass = List.of(new LayerPlan("pane", Lab.closed(1.0e3, 1.0), 0.001, 5.0, 1.0e8));
        return new WallPlan("pane", WallPlan.Kind.PANE, areaM2, glass, outside, new Side.Room("room"), 0.0);
    }

    private static double relativeHumidity(SiteView site) {
        return site.vapourPa(0) / MagnusForm.ISO_WATER.pressurePa(site.airCelsius(0));
    }

    private static double last(ReferenceTable.Row row) {
        return Double.parseDouble(row.text("quantity").replaceAll(".*after | h", ""));
    }
}
