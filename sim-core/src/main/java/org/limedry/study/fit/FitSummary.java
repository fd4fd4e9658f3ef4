package org.limedry.study.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.limedry.study.Uncertain;

/** Puts together what was found at the end of a walk. */
final class FitSummary {
    /** Share of its spread that an unknown must lose for the readings to have told something of it. */
    private static final double TOLD = 0.1;

    private final List<Uncertain> unknowns;
    private final FitReadings readings;
    private final FitPoint found;
    private final FitLaw law;

    /** Likeliest offset of each group of readings, in its unit. */
    private final List<Double> offsets;

    FitSummary(List<Uncertain> unknowns, FitReadings readings, FitPoint found) {
        this.unknowns = unknowns;
        this.readings = readings;
        this.found = found;
        this.law = new FitLaw(readings, found);
        this.offsets = readings.offsets(found.predicted());
    }

    /** Returns the result, told what the likely run said of each reading and what the fit took. */
    FitResult result(double[] before, FitResult.Effort effort) {
        List<String> keys = unknowns.stream().map(Uncertain::key).toList();
        double[] mean = found.z();
        for (int k = 0; k < mean.length; k++) {
            mean[k] = found.slopes().isFlat(k) ? 0.0 : mean[k]; // what was left out of the walk keeps its range
        }
        List<Residual> residuals = residuals(before);
        Fitted fitted =
                new Fitted(keys, new ArrayRealVector(mean), law.minimum().root());
        return new FitResult(
                unknowns,
                fitted,
                untold(fitted),
                offsets(),
                channels(residuals),
                residuals,
                effort,
                new LeaveOut(keys, readings.all(), law, mean));
    }

    private List<Uncertain> untold(Fitted fitted) {
        return IntStream.range(0, unknowns.size())
                .filter(k -> fitted.spread(k) > 1.0 - TOLD)
                .mapToObj(unknowns::get)
                .toList();
    }

    private Map<String, Double> offsets() {
        Map<String, Double> byName = new HashMap<>();
        for (int i = 0; i < offsets.size(); i++) {
            Reading first = readings.reading(readings.groups().get(i).rows().get(0));
            if (first instanceof Reading.RoomCelsius air) {
                byName.put("celsius." + air.logger(), offsets.get(i));
            } else if (first instanceof Reading.RoomHumidity air) {
                byName.put("humidity." + air.logger(), offsets.get(i));
            }
        }
        return byName;
    }

    private List<Residual> residuals(double[] before) {
        double[] after = found.predicted();
        double[] shareLeft = law.shareLeft();
        double[] byReading = new double[before.length];
        for (int i = 0; i < offsets.size(); i++) {
            for (int row : readings.groups().get(i).rows()) {
                byReading[row] = offsets.get(i);
            }
        }
        List<Residual> residuals = new ArrayList<>();
        for (int i = 0; i < before.length; i++) {
            residuals.add(new Residual(
                    readings.reading(i),
                    before[i],
                    after[i],
                    byReading[i],
                    readings.sigma(i),
                    Math.sqrt(shareLeft[i])));
        }
        return residuals;
    }

    private List<FitResult.Channel> channels(List<Residual> residuals) {
        return IntStream.range(0, offsets.size())
                .mapToObj(i -> {
                    FitReadings.Group group = readings.groups().get(i);
                    List<Residual> own =
                            group.rows().stream().map(residuals::get).toList();
                    return new FitResult.Channel(
                            group.channel(),
                            own.size(),
                            rms(own.stream().mapToDouble(Residual::sigmasBefore).toArray()),
                            rms(own.stream().mapToDouble(Residual::sigmasAfter).toArray()),
                            group.together().lagCorrelation(),
                            group.together().factor(),
                            offsets.get(i) == 0.0 ? 0.0 : offsets.get(i) / readings.offsetSigma(group));
                })
                .toList();
    }

    private static double rms(double[] misfits) {
        double sum = 0.0;
        for (double misfit : misfits) {
            sum += misfit * misfit;
        }
        return Math.sqrt(sum / misfits.length);
    }
}
