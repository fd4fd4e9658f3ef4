package org.limedry.cli.wallcase;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.limedry.simulation.Outcome;

/** {@code summary.json}: what a program needs to judge a run. */
final class CaseSummary {
    private CaseSummary() {}

    static Map<String, Object> of(CaseResult result, String version) {
        Map<String, Object> summary = new LinkedHashMap<>();
        summary.put("version", version);
        summary.put("complete", result.isComplete());
        summary.put("hours", result.wallCase().hours());
        summary.put("reachedHour", result.reachedHour());
        summary.put("layers", layers(result));
        summary.put("waterThroughFacesKgPerM2", throughFaces(result));
        summary.put("balance", balance(result));
        summary.put("gridDifference", difference(result.difference()));
        summary.put("written", statistics(result.written(), result.wallCase().relative()));
        summary.put("coarser", statistics(result.coarser(), CaseResult.coarseTolerance(result.wallCase())));
        summary.put("computeSeconds", result.computeSeconds());
        summary.put("notes", result.wallCase().notes());
        return summary;
    }

    private static List<Map<String, Object>> layers(CaseResult result) {
        Snapshot last = result.last();
        return IntStream.range(0, last.layerWaterKgPerM2().size())
                .mapToObj(layer -> {
                    Map<String, Object> entry = new LinkedHashMap<>();
                    entry.put("name", result.wallCase().layers().get(layer).name());
                    entry.put("waterKgPerM2", last.layerWaterKgPerM2().get(layer));
                    return entry;
                })
                .toList();
    }

    private static Map<String, Object> throughFaces(CaseResult result) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("outside", result.last().outside().cumulativeWaterKgPerM2());
        entry.put("inside", result.last().inside().cumulativeWaterKgPerM2());
        return entry;
    }

    private static Map<String, Object> balance(CaseResult result) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("waterStartKgPerM2", result.written().startWaterKgPerM2());
        entry.put("waterLaidKgPerM2", result.written().outcome().account().laidKg());
        entry.put("waterResidualKgPerM2", result.waterResidualKgPerM2());
        entry.put("heatResidualJPerM2", result.written().heatResidualJPerM2());
        entry.put("heatThroughFacesJPerM2", result.written().heatMovedJPerM2());
        entry.put("leastSuctionPa", result.written().wettestPa());
        return entry;
    }

    private static Map<String, Object> difference(GridDifference difference) {
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("celsius", difference.celsius());
        entry.put("rhPercent", difference.rhPercent());
        entry.put("waterKgPerM3", difference.waterKgPerM3());
        entry.put("layerWaterKgPerM2", difference.layerWaterKgPerM2());
        entry.put("cumulativeWaterKgPerM2", difference.cumulativeWaterKgPerM2());
        return entry;
    }

    private static Map<String, Object> statistics(CaseRun.Result run, double relative) {
        Outcome.Statistics statistics = run.outcome().statistics();
        Map<String, Object> entry = new LinkedHashMap<>();
        entry.put("cells", statistics.cells() - 1);
        entry.put("relative", relative);
        entry.put("steps", statistics.steps());
        entry.put("rejectedSteps", statistics.rejectedSteps());
        entry.put("linearSolves", statistics.linearSolves());
        entry.put("smallestStepS", statistics.smallestStepS());
        return entry;
    }
}
