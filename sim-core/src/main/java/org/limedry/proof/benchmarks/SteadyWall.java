package org.limedry.proof.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.limedry.air.MagnusForm;
import org.limedry.material.Closed;
import org.limedry.material.Material;
import org.limedry.material.Retention;
import org.limedry.wall.Constants;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.Side;
import org.limedry.wall.WallView;

/**
 * A wall of the STEADY sheet.
 *
 * @param layers its layers from the inside to the outside
 */
record SteadyWall(List<Layer> layers) {
    private static final double STILL_AIR = 2.0e-10;
    private static final double OUTER_W_PER_M2K = 1.0 / 0.04;
    private static final double INNER_W_PER_M2K = 1.0 / 0.13;
    private static final double NO_VAPOUR_FILM = 1.0e-5;
    private static final double SETTLED_HOURS = 2160.0;
    private static final double HOURS = 2880.0;
    private static final double TOLERANCE = 1.0e-4;

    /**
     * One layer.
     *
     * @param thicknessM thickness, m
     * @param conductivityWPerMK thermal conductivity, W/(m K)
     * @param resistance vapour resistance factor
     */
    record Layer(double thicknessM, double conductivityWPerMK, double resistance) {}

    /**
     * Air before a face.
     *
     * @param celsius temperature, C
     * @param relativeHumidity relative humidity over water, or over ice below 0 C, fraction
     */
    record Air(double celsius, double relativeHumidity) {
        double vapourPa() {
            return relativeHumidity * branch(celsius).pressurePa(celsius);
        }
    }

    /**
     * The wall when it has come to rest.
     *
     * @param wall the wall
     * @param depthsM depth of each contact from the outer face, the innermost first, m
     * @param saturation the saturation of the run
     * @param gainedKgPerM2 water gained in the last 30 days, kg/m2
     */
    record Rest(WallView wall, List<Double> depthsM, MagnusForm saturation, double gainedKgPerM2) {
        double contactCelsius(int contact) {
            return wall.celsiusAt(depthsM.get(contact - 1));
        }

        double contactHumidity(int contact) {
            double celsius = contactCelsius(contact);
            double humidity = Lab.relativeHumidity(wall.suctionPaAt(depthsM.get(contact - 1)), celsius);
            return humidity * saturation.pressurePa(celsius) / branch(celsius).pressurePa(celsius);
        }
    }

    /** Pores that hold a trace of water in proportion to the humidity, and from 99.99 % up as much as comes. */
    private record Gathers(Retention trace) implements Retention {
        private static final double FULL = 5.0e4;
        private static final double HALF_PA = 1.0e3;

        Gathers() {
            this(new LinearSorption(0.3, 20.0));
        }

        @Override
        public double waterKgPerM3(double suctionPa) {
            double x = suctionPa / HALF_PA;
            return FULL / (1.0 + x * x) + trace.waterKgPerM3(suctionPa);
        }

        @Override
        public double slopeKgPerM3(double suctionPa) {
            double x = suctionPa / HALF_PA;
            return -2.0 * FULL * x * x / ((1.0 + x * x) * (1.0 + x * x)) + trace.slopeKgPerM3(suctionPa);
        }

        @Override
        public double freeSaturationKgPerM3() {
            return FULL + trace.freeSaturationKgPerM3();
        }
    }

    /** Returns the wall whose letter a text begins with. */
    static SteadyWall named(String text) {
        return switch (text.charAt(0)) {
            case 'A' ->
                new SteadyWall(List.of(
                        new Layer(0.020, 0.70, 10.0), new Layer(0.365, 0.60, 10.0), new Layer(0.020, 0.80, 15.0)));
            case 'B' ->
                new SteadyWall(List.of(
                        new Layer(0.010, 0.70, 10.0), new Layer(0.060, 0.045, 5.0), new Layer(0.365, 0.60, 10.0)));
            case 'C' ->
                new SteadyWall(List.of(
                        new Layer(0.020, 0.70, 10.0), new Layer(0.100, 0.04, 1.0), new Layer(0.150, 2.0, 80.0)));
            default -> throw new IllegalArgumentException("text: must begin with A, B or C, was " + text);
        };
    }

    /** Returns heat through the wall at rest for each kelvin, W/(m2 K), from a run between 0 and 1 C. */
    double transmittance(double gridFactor, double innerResistance) {
        Side inside = new Side.Air(1.0, 0.5, 1.0 / innerResistance, 0.0);
        WallView wall = new Lab()
                .constants(Lab.isothermal())
                .accuracy(TOLERANCE, gridFactor)
                .wall("w", plans(0.5), new Side.Air(0.0, 0.5, OUTER_W_PER_M2K, 0.0), inside)
                .wallAfter(SETTLED_HOURS);
        return (1.0 - wall.innerCelsius()) / innerResistance;
    }

    /** Runs the wall until it rests, and on for 30 days. */
    Rest atRest(double gridFactor, Air inside, Air outside) {
        MagnusForm saturation = branch(coldestContact(inside, outside));
        Lab lab = new Lab()
                .constants(new Constants(saturation, 461.5, 1000.0, 0.0, 4187.0, OptionalDouble.empty(), 0.0))
                .accuracy(TOLERANCE, gridFactor)
                .wall(
                        "w",
                        plans(0.5 * (inside.celsius() + outside.celsius())),
                        side(outside, OUTER_W_PER_M2K, saturation),
                        side(inside, INNER_W_PER_M2K, saturation));
        double settled = lab.wallAfter(SETTLED_HOURS).waterKgPerM2();
        WallView wall = lab.wallAfter(HOURS);
        return new Rest(wall, depthsM(), saturation, wall.waterKgPerM2() - settled);
    }

    /** Returns the temperature of the outermost contact, where these walls get wet, C. */
    private double coldestContact(Air inside, Air outside) {
        double sum = 1.0 / INNER_W_PER_M2K + 1.0 / OUTER_W_PER_M2K;
        for (Layer layer : layers) {
            sum += layer.thicknessM() / layer.conductivityWPerMK();
        }
        Layer outermost = layers.get(layers.size() - 1);
        double beyond = 1.0 / OUTER_W_PER_M2K + outermost.thicknessM() / outermost.conductivityWPerMK();
        return outside.celsius() + (inside.celsius() - outside.celsius()) * beyond / sum;
    }

    private static Side side(Air air, double heatTransfer, MagnusForm saturation) {
        double humidity = air.vapourPa() / saturation.pressurePa(air.celsius());
        return new Side.Air(air.celsius(), humidity, heatTransfer, NO_VAPOUR_FILM);
    }

    private static MagnusForm branch(double celsius) {
        return celsius < 0.0 ? MagnusForm.ISO_ICE : MagnusForm.ISO_WATER;
    }

    private List<LayerPlan> plans(double celsius) {
        List<LayerPlan> plans = new ArrayList<>();
        for (int k = layers.size() - 1; k >= 0; k--) {
            Layer layer = layers.get(k);
            double permeability = STILL_AIR / layer.resistance();
            Material material = new Material(
                    "layer " + (k + 1),
                    new Gathers(),
                    Closed.instance(),
                    water -> permeability,
                    water -> layer.conductivityWPerMK(),
                    1.0e5);
            plans.add(
                    new LayerPlan(material.name(), material, layer.thicknessM(), celsius, Lab.suctionPa(0.5, celsius)));
        }
        return plans;
    }

    private List<Double> depthsM() {
        List<Double> depths = new ArrayList<>();
        double depth = layers.stream().mapToDouble(Layer::thicknessM).sum();
        for (Layer layer : layers.subList(0, layers.size() - 1)) {
            depth -= layer.thicknessM();
            depths.add(depth);
        }
        return depths;
    }
}
