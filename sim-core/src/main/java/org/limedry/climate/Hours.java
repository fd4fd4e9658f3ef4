package org.limedry.climate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Hourly temperature, humidity and wind in a row; NaN stands for a missing value until it is bridged. */
final class Hours {
    final double[] celsius;
    final double[] relativeHumidity;
    final double[] windMPerS;

    private Hours(double[] celsius, double[] relativeHumidity, double[] windMPerS) {
        this.celsius = celsius;
        this.relativeHumidity = relativeHumidity;
        this.windMPerS = windMPerS;
    }

    /** Returns as many hours with every value missing. */
    static Hours missing(int count) {
        Hours hours = new Hours(new double[count], new double[count], new double[count]);
        for (double[] column : hours.columns()) {
            Arrays.fill(column, Double.NaN);
        }
        return hours;
    }

    int size() {
        return celsius.length;
    }

    List<double[]> columns() {
        return List.of(celsius, relativeHumidity, windMPerS);
    }

    Hours slice(int from, int count) {
        return new Hours(
                Arrays.copyOfRange(celsius, from, from + count),
                Arrays.copyOfRange(relativeHumidity, from, from + count),
                Arrays.copyOfRange(windMPerS, from, from + count));
    }

    Hours withWind(double factor) {
        return new Hours(
                celsius,
                relativeHumidity,
                Arrays.stream(windMPerS).map(wind -> wind * factor).toArray());
    }

    double meanCelsius() {
        return Arrays.stream(celsius).average().orElseThrow();
    }

    void copyHour(int index, Hours source, int sourceIndex) {
        celsius[index] = source.celsius[sourceIndex];
        relativeHumidity[index] = source.relativeHumidity[sourceIndex];
        windMPerS[index] = source.windMPerS[sourceIndex];
    }

    /** Takes over every value that is known in a row of the same hours. */
    void copyKnown(Hours source) {
        for (int column = 0; column < columns().size(); column++) {
            double[] from = source.columns().get(column);
            for (int k = 0; k < size(); k++) {
                if (!Double.isNaN(from[k])) {
                    columns().get(column)[k] = from[k];
                }
            }
        }
    }

    /** Moves an hour towards an hour of another row by a share of the way. */
    void mixHour(int index, Hours source, int sourceIndex, double share) {
        celsius[index] += share * (source.celsius[sourceIndex] - celsius[index]);
        relativeHumidity[index] += share * (source.relativeHumidity[sourceIndex] - relativeHumidity[index]);
        windMPerS[index] += share * (source.windMPerS[sourceIndex] - windMPerS[index]);
    }

    boolean isMissing(int index) {
        return Double.isNaN(celsius[index]) || Double.isNaN(relativeHumidity[index]);
    }

    /** Returns words for every run of hours without temperature or humidity. */
    List<String> holes(HourAxis axis) {
        List<String> holes = new ArrayList<>();
        int index = 0;
        while (index < size()) {
            int end = index;
            while (end < size() && isMissing(end)) {
                end++;
            }
            if (end > index) {
                holes.add(axis.words(index, end));
            }
            index = end + 1;
        }
        return holes;
    }

    /** Fills every run of missing values that is short and has a value on either side with a straight line. */
    void bridge() {
        columns().forEach(Hours::bridge);
    }

    private static void bridge(double[] column) {
        int known = -1;
        for (int i = 0; i < column.length; i++) {
            if (Double.isNaN(column[i])) {
                continue;
            }
            int missing = i - known - 1;
            if (known >= 0 && missing <= WeatherRecord.LONGEST_BRIDGE_HOURS) {
                line(column, known, i);
            }
            known = i;
        }
    }

    private static void line(double[] column, int from, int until) {
        for (int i = from + 1; i < until; i++) {
            double share = (i - from) / (double) (until - from);
            column[i] = column[from] + share * (column[until] - column[from]);
        }
    }
}
