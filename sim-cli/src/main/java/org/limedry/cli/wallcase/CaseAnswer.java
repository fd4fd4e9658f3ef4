package org.limedry.cli.wallcase;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.limedry.simulation.Outcome;
import org.limedry.wall.LayerPlan;

/** The answer on the console: water of every layer first, then how far to trust it. */
final class CaseAnswer {
    /** Below this suction water stands in full pores in an amount that anyone could see: 10 kg/m3 for every Pa. */
    private static final double STANDING_PA = -0.01;

    private final CaseResult result;
    private final List<String> lines = new ArrayList<>();

    private CaseAnswer(CaseResult result) {
        this.result = result;
    }

    /**
     * Returns the lines.
     *
     * @param name the case as the user named it
     * @param folder where the files went, as the user named it
     */
    static List<String> lines(CaseResult result, String name, String folder) {
        CaseAnswer answer = new CaseAnswer(result);
        answer.water(name);
        answer.trust();
        result.wallCase().notes().forEach(answer.lines::add);
        answer.say("Wrote profiles.csv, layers.csv, faces.csv and summary.json into %s.", folder);
        return List.copyOf(answer.lines);
    }

    /** Returns what to say of a case whose solver gave up on one of its grids. */
    static String gaveUp(CaseResult result, String name) {
        return String.format(
                Locale.ROOT,
                "%s: the solver gave up, on the written grid at hour %.6g; what is written ends there.",
                name,
                result.reachedHour());
    }

    private void water(String name) {
        Snapshot last = result.last();
        say("%s: water after %s h, kg/m2", name, CaseReader.text(last.hour()));
        for (int layer = 0; layer < last.layerWaterKgPerM2().size(); layer++) {
            LayerPlan plan = result.wallCase().layers().get(layer);
            String when =
                    plan.isThereFromTheStart() ? "" : "  laid at " + CaseReader.text(WallCase.hour(plan.laid())) + " h";
            say("  %-24s %12.5f%s", plan.name(), last.layerWaterKgPerM2().get(layer), when);
        }
        say(
                "  in through the outside   %12.5f   inside %.5f",
                last.outside().cumulativeWaterKgPerM2(), last.inside().cumulativeWaterKgPerM2());
        lines.add("");
    }

    private void trust() {
        GridDifference difference = result.difference();
        Outcome.Statistics fine = result.written().outcome().statistics();
        Outcome.Statistics coarse = result.coarser().outcome().statistics();
        say(
                "Two grids, %d and %d cells (tolerance %s and %s), differ by at most",
                fine.cells() - 1,
                coarse.cells() - 1,
                CaseReader.text(result.wallCase().relative()),
                CaseReader.text(CaseResult.coarseTolerance(result.wallCase())));
        say(
                "  %.2g K, %.2g %% RH, %.2g kg/m3 in profiles,",
                difference.celsius(), difference.rhPercent(), difference.waterKgPerM3());
        say(
                "  %.2g kg/m2 in a layer, %.2g kg/m2 through a face; the finer run is written.",
                difference.layerWaterKgPerM2(), difference.cumulativeWaterKgPerM2());
        say(
                "Balance: water closes to %.1g kg/m2, heat to %.2g J/m2 of %.3g J/m2 through the faces.",
                Math.abs(result.waterResidualKgPerM2()),
                Math.abs(result.written().heatResidualJPerM2()),
                result.written().heatMovedJPerM2());
        say(
                "%d steps, %d refused, %d linear solves; %.1f s for both runs.",
                fine.steps(), fine.rejectedSteps(), fine.linearSolves(), result.computeSeconds());
        if (result.written().wettestPa() < STANDING_PA) {
            lines.add(
                    "Water stood in full pores: more came somewhere than the tables let it hold; it is in the account.");
        }
    }

    private void say(String pattern, Object... values) {
        lines.add(String.format(Locale.ROOT, pattern, values));
    }
}
