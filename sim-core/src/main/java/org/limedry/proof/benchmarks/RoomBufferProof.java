package org.limedry.proof.benchmarks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.limedry.air.MagnusForm;
import org.limedry.climate.Schedule;
import org.limedry.material.Closed;
import org.limedry.material.Material;
import org.limedry.proof.figure.Label;
import org.limedry.proof.figure.Source;
import org.limedry.reference.ReferenceTable;
import org.limedry.room.AirExchange;
import org.limedry.room.Plant;
import org.limedry.room.RoomPlan;
import org.limedry.room.Surfaces;
import org.limedry.room.VapourExchange;
import org.limedry.simulation.Accuracy;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.Side;
import org.limedry.wall.WallPlan;

/** ROOM_BUFFER: a ventilated room whose faces take up and give back vapour, a source of 500 g/h from 9 to 17 h. */
final class RoomBufferProof implements Benchmark {
    private static final double CELSIUS = 20.0;
    private static final double SATURATION_PA = MagnusForm.ISO_WATER.pressurePa(CELSIUS);
    private static final double FACES_M2 = 171.6;
    private static final double FILM = 2.0e-8;
    private static final int DAYS = 120;
    private static final double HELD_J_PER_K = 1.0e15;

    /** The three columns of the sheet. */
    private enum Kind {
        TIGHT("RH_0A_tight", "RH 0A", 0.449),
        OPEN("RH_0B_open", "RH 0B", 0.419),
        BARE("RH_no_buffer", "RH no buffer", 0.449);

        private final String column;
        private final String words;
        private final double start;

        Kind(String column, String words, double start) {
            this.column = column;
            this.words = words;
            this.start = start;
        }
    }

    @Override
    public String name() {
        return "ROOM_BUFFER";
    }

    @Override
    public String setUp() {
        return "People in number 5.56 give 500 g/h; no latent heat and air held at 20 C by a heat capacity without end, so"
                + " that all is isothermal (the largest departure is a row of its own). Day " + DAYS
                + " of the run is judged.";
    }

    @Override
    public Source origin() {
        return new Source(
                Label.EXACT,
                "table benchmarks/ROOM_BUFFER, Fourier series; own error 2e-5 (specification FROM MEMORY)");
    }

    @Override
    public String bands() {
        return "RH 0.003, daily mean 0.001 (stated with the table); departure from 20 C 0.001 K";
    }

    @Override
    public List<Aim> aims() {
        List<Aim> all = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            double sum = 0.0;
            for (ReferenceTable.Row row :
                    ReferenceTable.load("benchmarks/ROOM_BUFFER").rows()) {
                double value = row.number(kind.column);
                sum += row.number("hour") > 0.0 ? value : 0.0;
                all.add(new Aim(key(kind, row.number("hour")), "-", value, 0.003));
            }
            all.add(new Aim("daily mean, " + kind.words, "-", sum / 48.0, 0.001));
            all.add(new Aim("departure from 20 C, " + kind.words, "K", 0.0, 0.001));
        }
        return all;
    }

    private static String key(Kind kind, double hour) {
        return String.format(Locale.ROOT, "%s, %.1f h", kind.words, hour);
    }

    @Override
    public Map<String, Double> found(double gridFactor) {
        Map<String, Double> found = new HashMap<>();
        for (Kind kind : Kind.values()) {
            day(kind, gridFactor, found);
        }
        return found;
    }

    private static void day(Kind kind, double gridFactor, Map<String, Double> found) {
        double from = 24.0 * (DAYS - 1);
        double[] sums = new double[2];
        Lab lab = lab(kind, gridFactor);
        lab.run(from + 24.0, (hour, site) -> {
            double humidity = site.vapourPa(0) / SATURATION_PA;
            double half = 2.0 * (hour - from);
            if (half >= 0.0 && half == Math.rint(half)) {
                found.put(key(kind, 0.5 * half), humidity);
                sums[0] += half > 0.0 ? humidity / 48.0 : 0.0;
            }
            sums[1] = Math.max(sums[1], Math.abs(site.airCelsius(0) - CELSIUS));
            sums[1] = Math.max(sums[1], Math.abs(site.walls().get(0).innerCelsius() - CELSIUS));
        });
        found.put("daily mean, " + kind.words, sums[0]);
        found.put("departure from 20 C, " + kind.words, sums[1]);
    }

    private static Lab lab(Kind kind, double gridFactor) {
        List<Schedule.Span> work = new ArrayList<>();
        List<Schedule.Span> halfHours = new ArrayList<>();
        for (int day = 0; day < DAYS; day++) {
            work.add(new Schedule.Span(Lab.at(24.0 * day + 9.0), Lab.at(24.0 * day + 17.0)));
        }
        for (int hour = 24 * (DAYS - 1); hour < 24 * DAYS; hour++) {
            halfHours.add(new Schedule.Span(Lab.at(hour), Lab.at(hour + 0.5)));
        }
        List<Plant> plant = List.of(
                new Plant.People("source", 500.0 / 90.0, new Schedule(work)),
                new Plant.Fan("stands still, for a step end at each half hour", 0.0, new Schedule(halfHours)));
        RoomPlan room =
                new RoomPlan("room", 129.6, 48.0, 2.7, HELD_J_PER_K, 0.5, 0.0, List.of(), plant, CELSIUS, kind.start);
        AirExchange air = new AirExchange(AirExchange.Balance.PARTIAL_PRESSURE, 101_325.0, 1.0, 0.4, 0.6);
        return new Lab()
                .constants(Lab.isothermal())
                .accuracy(Accuracy.ordinary().tolerance(), gridFactor)
                .outdoors(Course.steady(Lab.START, CELSIUS, 0.30 * SATURATION_PA))
                .air(air, new VapourExchange.HeatCapacity.Fixed(1207.2))
                .surfaces(new Surfaces(3.0, 3.0, 3.0, 5.0, FILM / 3.0, 4.0, 4.0))
                .room(room)
                .wall(wall(kind));
    }

    private static WallPlan wall(Kind kind) {
        if (kind == Kind.BARE) {
            List<LayerPlan> pane = List.of(new LayerPlan("pane", Lab.closed(1.0, 1.0e6), 0.004, CELSIUS, 1.0e8));
            return new WallPlan(
                    "faces", WallPlan.Kind.LISTED, 1.0e-6, pane, new Side.Sealed(), new Side.Room("room"), 0.0);
        }
        Material concrete = new Material(
                "aerated concrete",
                new LinearSorption(42.965, CELSIUS),
                Closed.instance(),
                water -> 3.0e-11,
                water -> 0.18,
                5.0e5);
        Side outside = kind == Kind.TIGHT ? new Side.Sealed() : new Side.Air(CELSIUS, 0.30, 8.0, FILM);
        double middle = kind == Kind.TIGHT ? kind.start : 0.5 * (kind.start + 0.30);
        LayerPlan layer = new LayerPlan("concrete", concrete, 0.15, CELSIUS, Lab.suctionPa(middle, CELSIUS));
        return new WallPlan(
                "faces", WallPlan.Kind.LISTED, FACES_M2, List.of(layer), outside, new Side.Room("room"), 0.0);
    }
}
