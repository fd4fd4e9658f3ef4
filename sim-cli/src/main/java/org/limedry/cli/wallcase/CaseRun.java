package org.limedry.cli.wallcase;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.limedry.simulation.Onlooker;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Progress;
import org.limedry.simulation.Simulation;
import org.limedry.simulation.SiteView;
import org.limedry.units.Units;
import org.limedry.wall.WallView;

/** One run of a case on one grid, written down at the output hours. */
final class CaseRun implements Onlooker {
    private static final double FULL_PERCENT = 100.0;

    private final WallCase wallCase;
    private final Map<Instant, Double> hours = new HashMap<>();
    private final List<Snapshot> snapshots = new ArrayList<>();
    private double waterInOutside;
    private double waterInInside;
    private double heatIn;
    private double heatStored;
    private double heatMoved;
    private double startWaterKgPerM2;
    private double wettestPa = Double.POSITIVE_INFINITY;
    private boolean started;
    private Optional<Snapshot> reached = Optional.empty();

    private CaseRun(WallCase wallCase) {
        this.wallCase = wallCase;
        wallCase.outputHours().forEach(hour -> hours.put(WallCase.instant(hour), hour));
    }

    /**
     * What a run gave.
     *
     * @param snapshots the output hours reached
     * @param outcome account and statistics
     * @param heatResidualJPerM2 heat stored less heat through both faces, J/m2
     * @param heatMovedJPerM2 sum of the magnitudes of all heat through both faces, J/m2
     * @param startWaterKgPerM2 water at the start, kg/m2
     * @param wettestPa least suction met, Pa; below 0 if water stood in full pores
     */
    record Result(
            List<Snapshot> snapshots,
            Outcome outcome,
            double heatResidualJPerM2,
            double heatMovedJPerM2,
            double startWaterKgPerM2,
            double wettestPa) {
        Result {
            snapshots = List.copyOf(snapshots);
        }
    }

    static Result run(WallCase wallCase, double gridFactor, double tolerance, Progress progress) {
        CaseRun run = new CaseRun(wallCase);
        Outcome outcome = Simulation.run(wallCase.scenario(gridFactor, tolerance), progress, run);
        if (run.snapshots.isEmpty()) {
            // The solver gave up before the first output hour: what it reached is better than nothing.
            run.reached.ifPresent(run.snapshots::add);
        }
        return new Result(
                run.snapshots,
                outcome,
                run.heatStored - run.heatIn,
                run.heatMoved,
                run.startWaterKgPerM2,
                run.wettestPa);
    }

    @Override
    public List<Instant> stops() {
        return wallCase.stops();
    }

    @Override
    public void look(Instant now, SiteView site) {
        WallView wall = site.walls().get(0);
        if (started) {
            add(wall);
        } else {
            startWaterKgPerM2 = wall.waterKgPerM2();
            started = true;
        }
        Double hour = hours.get(now);
        if (hour != null) {
            snapshots.add(snapshot(hour, wall));
        } else if (snapshots.isEmpty()) {
            reached = Optional.of(snapshot(WallCase.hour(now), wall));
        }
    }

    private void add(WallView wall) {
        waterInOutside += wall.outerFlow().stepVapourKgPerM2();
        waterInInside += wall.innerFlow().stepVapourKgPerM2();
        double outer = wall.outerFlow().stepHeatJPerM2();
        double inner = wall.innerFlow().stepHeatJPerM2();
        heatIn += outer + inner;
        heatMoved += Math.abs(outer) + Math.abs(inner);
        heatStored += wall.stepHeatStoredJPerM2();
        wettestPa = Math.min(wettestPa, wall.wettestSuctionPa());
    }

    private Snapshot snapshot(double hour, WallView wall) {
        double reach = wall.thicknessM();
        List<Snapshot.Point> profile = wallCase.positionsMm().stream()
                .filter(mm -> Units.metresFromMm(mm) <= reach + 1.0e-9)
                .map(mm -> point(mm, wall))
                .toList();
        List<Double> layers = IntStream.range(0, wallCase.layers().size())
                .mapToObj(layer -> layer < wall.layers() ? wall.layerWaterKgPerM2(layer) : 0.0)
                .toList();
        return new Snapshot(
                hour,
                profile,
                layers,
                new Snapshot.FaceState(wall.outerFace(), waterInOutside),
                new Snapshot.FaceState(wall.innerFace(), waterInInside));
    }

    private static Snapshot.Point point(double mm, WallView wall) {
        double depthM = Units.metresFromMm(mm);
        return new Snapshot.Point(
                mm,
                wall.celsiusAt(depthM),
                Math.min(FULL_PERCENT, Units.percentFromFraction(wall.relativeHumidityAt(depthM))),
                Math.max(0.0, wall.suctionPaAt(depthM)),
                wall.waterKgPerM3At(depthM));
    }
}
