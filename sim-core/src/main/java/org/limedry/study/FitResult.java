package org.limedry.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a fit found.
 *
 * @param unknowns the unknowns, in the order of {@link Fitted#keys()}
 * @param fitted where they lie now
 * @param offsets what each logger reads too much: "celsius.NAME" in K, "humidity.NAME" as a fraction
 * @param channels how well each kind of reading is met before and after
 * @param iterations steps that were taken
 */
public record FitResult(
        List<Uncertain> unknowns, Fitted fitted, Map<String, Double> offsets, List<Channel> channels, int iterations) {
    /** Root mean square misfit, in sigma, above which the model does not explain the readings. */
    public static final double BAD_SIGMA = 2.0;

    /** Share of its spread that an unknown must lose for the readings to have told something of it. */
    private static final double TOLD = 0.1;

    public FitResult {
        unknowns = List.copyOf(unknowns);
        offsets = Map.copyOf(offsets);
        channels = List.copyOf(channels);
    }

    /**
     * One kind of readings of one thing.
     *
     * @param name kind and thing: "room temperature, store"
     * @param readings how many
     * @param before root mean square of the misfits in the likely run, sigma
     * @param after the same in the fitted run, offsets taken off, sigma
     */
    public record Channel(String name, int readings, double before, double after) {
        static List<Channel> of(List<Reading> readings, double[] before, double[] after) {
            Map<String, List<Integer>> groups = new LinkedHashMap<>();
            for (int i = 0; i < readings.size(); i++) {
                groups.computeIfAbsent(channelOf(readings.get(i)), key -> new ArrayList<>())
                        .add(i);
            }
            List<Channel> channels = new ArrayList<>();
            groups.forEach(
                    (name, rows) -> channels.add(new Channel(name, rows.size(), rms(rows, before), rms(rows, after))));
            return channels;
        }

        private static double rms(List<Integer> rows, double[] misfits) {
            double sum = 0.0;
            for (int row : rows) {
                sum += misfits[row] * misfits[row];
            }
            return Math.sqrt(sum / rows.size());
        }
    }

    /** Returns what kind of reading of which thing it is. */
    static String channelOf(Reading reading) {
        if (reading instanceof Reading.RoomCelsius air) {
            return "room temperature, " + air.logger();
        } else if (reading instanceof Reading.RoomHumidity air) {
            return "room humidity, " + air.logger();
        } else if (reading instanceof Reading.FaceCelsius face) {
            return "face temperature, " + face.wall();
        } else if (reading instanceof Reading.Bucket bucket) {
            return "bucket, " + bucket.room();
        }
        return "hand tests, " + ((Reading.ByHand) reading).test().wall();
    }

    /** Returns the channels that the fitted model does not explain; with any of them its dates are worth nothing. */
    public List<Channel> unexplained() {
        return channels.stream()
                .filter(channel -> !(channel.after() <= BAD_SIGMA))
                .toList();
    }

    /** Returns the unknowns of which the readings told nothing: nine tenths of their spread are left, or more. */
    public List<Uncertain> untold() {
        List<Uncertain> untold = new ArrayList<>();
        for (int i = 0; i < unknowns.size(); i++) {
            if (fitted.spread(i) > 1.0 - TOLD) {
                untold.add(unknowns.get(i));
            }
        }
        return untold;
    }
}
