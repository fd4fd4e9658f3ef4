package org.limedry.study.fit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The readings as least squares sees them: how far a run is off, in sigma, and which readings are off together.
 *
 * <p>A reading of a logger is off by its own error and by an offset that the whole channel shares. Errors and offset of a channel
 * have covariance {@code I + w^2 1 1^T}, w the sigma of the offset over that of one reading; {@link #whiten} makes that the unit
 * matrix, so that offsets need no unknowns of their own (textbook algebra, the square root of a rank-one change of I).
 */
final class FitReadings {
    private final List<Reading> readings;
    private final ReadingErrors errors;
    private final List<Group> groups;
    private final double[] sigmas;
    private final double[] factors;

    /** The readings of a channel by their place in the list, in time order, and how far they are wrong together. */
    record Group(String channel, List<Integer> rows, FitTogether together) {
        Group {
            rows = List.copyOf(rows);
        }
    }

    private FitReadings(List<Reading> readings, ReadingErrors errors, List<Group> groups) {
        this.readings = List.copyOf(readings);
        this.errors = errors;
        this.groups = List.copyOf(groups);
        this.sigmas = new double[readings.size()];
        this.factors = new double[readings.size()];
        for (Group group : groups) {
            double level = group.rows().stream()
                    .mapToDouble(row -> readings.get(row).measured())
                    .average()
                    .orElseThrow();
            for (int row : group.rows()) {
                sigmas[row] = errors.sigma(readings.get(row), level);
                factors[row] = group.together().factor();
            }
        }
    }

    static FitReadings of(List<Reading> readings, ReadingErrors errors) {
        Map<String, List<Integer>> rows = new LinkedHashMap<>();
        for (int i = 0; i < readings.size(); i++) {
            rows.computeIfAbsent(readings.get(i).channel(), channel -> new ArrayList<>())
                    .add(i);
        }
        List<Group> groups = new ArrayList<>();
        rows.forEach((channel, of) -> {
            of.sort((a, b) -> readings.get(a).at().compareTo(readings.get(b).at()));
            groups.add(new Group(channel, of, FitTogether.ALONE));
        });
        return new FitReadings(readings, errors, groups);
    }

    /** Returns the same readings with the errors, not the offsets, as much wider as what is left over from a run tells. */
    FitReadings wrongTogether(double[] predicted) {
        double[] left = leftOver(predicted);
        List<Group> wider = groups.stream()
                .map(group -> new Group(
                        group.channel(),
                        group.rows(),
                        FitTogether.of(
                                group.rows().stream().map(readings::get).toList(),
                                group.rows().stream()
                                        .mapToDouble(row -> left[row])
                                        .toArray())))
                .toList();
        return new FitReadings(readings, errors, wider);
    }

    /** Tells whether the errors of any channel are wider or narrower than in others of the same readings by a quarter or more. */
    boolean differsFrom(FitReadings other) {
        for (int i = 0; i < factors.length; i++) {
            if (Math.abs(Math.log(factors[i] / other.factors[i])) > Math.log(1.25)) {
                return true;
            }
        }
        return false;
    }

    List<Reading> all() {
        return readings;
    }

    int size() {
        return readings.size();
    }

    Reading reading(int row) {
        return readings.get(row);
    }

    List<Group> groups() {
        return groups;
    }

    /** Returns the error of a reading as given, in its own unit. */
    double sigma(int row) {
        return sigmas[row];
    }

    /** Returns the error of a reading as used, in its own unit. */
    double usedSigma(int row) {
        return factors[row] * sigma(row);
    }

    /** Returns how far each reading lies above the run, in sigma as used; of a hand test on either side of the limit. */
    double[] above(double[] predicted) {
        double[] above = new double[size()];
        for (int i = 0; i < above.length; i++) {
            above[i] = (readings.get(i).measured() - predicted[i]) / usedSigma(i);
        }
        return above;
    }

    /** Returns how far on the side that the hand found a coat lies, in errors of the hand. */
    static double onItsSide(Reading.ByHand hand, double above) {
        return hand.test().result().passes() ? -above : above;
    }

    /** Tells whether a run differs from a reading that far above it: from a hand test only on the wrong side of the ready rule. */
    static boolean differs(Reading reading, double above) {
        return !(reading instanceof Reading.ByHand hand) || onItsSide(hand, above) < 0.0;
    }

    /** Returns the sigma of the offset of a group over that of one of its readings as used; 0 if it has none. */
    double offsetWeight(Group group) {
        return offsetSigma(group) / usedSigma(group.rows().get(0));
    }

    /** Returns the sigma of the offset of a group, in the unit of its readings; 0 if it has none. */
    double offsetSigma(Group group) {
        return errors.offsetSigma(readings.get(group.rows().get(0)));
    }

    /** Makes the covariance of the rows that are in use the unit matrix: takes a share of its mean off each channel. */
    double[] whiten(double[] values, boolean[] used) {
        double[] white = values.clone();
        for (Group group : groups) {
            int count = count(group, used);
            double weight = offsetWeight(group);
            if (count > 0 && weight > 0.0) {
                double share = 1.0 - 1.0 / Math.sqrt(1.0 + count * weight * weight);
                double off = share * sum(group, values, used) / count;
                group.rows().forEach(row -> white[row] -= off);
            }
        }
        for (int i = 0; i < white.length; i++) {
            white[i] = used[i] ? white[i] : 0.0;
        }
        return white;
    }

    /** Returns the likeliest offset of each group, in the unit of its readings; 0 where none is shared. */
    List<Double> offsets(double[] predicted) {
        double[] above = above(predicted);
        boolean[] used = used(above);
        return groups.stream()
                .map(group -> {
                    double square = offsetWeight(group) * offsetWeight(group);
                    double share = square / (1.0 + count(group, used) * square);
                    return usedSigma(group.rows().get(0)) * share * sum(group, above, used);
                })
                .toList();
    }

    /** Returns how far each reading lies above the run, offsets taken off, in sigma as given; 0 of a hand test on its side. */
    private double[] leftOver(double[] predicted) {
        List<Double> offsets = offsets(predicted);
        double[] left = new double[size()];
        for (int i = 0; i < groups.size(); i++) {
            for (int row : groups.get(i).rows()) {
                double above = (readings.get(row).measured() - offsets.get(i) - predicted[row]) / sigma(row);
                left[row] = differs(readings.get(row), above) ? above : 0.0;
            }
        }
        return left;
    }

    /** Tells of each reading whether it counts: not those of which the run says nothing. */
    boolean[] used(double[] above) {
        boolean[] used = new boolean[above.length];
        for (int i = 0; i < used.length; i++) {
            used[i] = Double.isFinite(above[i]);
        }
        return used;
    }

    /** Returns twice the negative logarithm of how likely a run and its unknowns are, apart from a constant. */
    double cost(double[] predicted, double[] z) {
        double[] above = above(predicted);
        boolean[] used = used(above);
        for (int i = 0; i < above.length; i++) {
            if (used[i] && readings.get(i) instanceof Reading.ByHand hand) {
                above[i] = Math.sqrt(HandLaw.cost(onItsSide(hand, above[i])));
            }
        }
        return square(whiten(above, used)) + square(z);
    }

    private static int count(Group group, boolean[] used) {
        return (int) group.rows().stream().filter(row -> used[row]).count();
    }

    private static double sum(Group group, double[] values, boolean[] used) {
        double sum = 0.0;
        for (int row : group.rows()) {
            sum += used[row] ? values[row] : 0.0;
        }
        return sum;
    }

    private static double square(double[] values) {
        double sum = 0.0;
        for (double value : values) {
            sum += value * value;
        }
        return sum;
    }
}
