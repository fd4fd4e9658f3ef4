package org.limedry.proof.benchmarks;

import java.util.concurrent.TimeUnit;
import java.util.function.UnaryOperator;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Scenario;
import org.limedry.simulation.Simulation;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Whole runs of the two large benchmarks. The baselines make the same site and run it for a second: tables, grids and
 * books without the steps.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(1)
public class SolverBenchmark {
    private static final double SECOND = 1.0 / 3600.0;

    /** 1 for the ordinary grid, 2 for half of every cell. */
    @Param({"1", "2"})
    public double gridFactor;

    private Scenario room;
    private Scenario roomSecond;
    private Scenario year;
    private Scenario yearSecond;

    /** Makes the scenarios, reading weather and tables once. */
    @Setup
    public void prepare() {
        room = RoomCoatsCase.lab(1.0e-3, gridFactor, UnaryOperator.identity()).scenario(RoomCoatsCase.HOURS);
        roomSecond =
                RoomCoatsCase.lab(1.0e-3, gridFactor, UnaryOperator.identity()).scenario(SECOND);
        year = WallYearProof.lab(gridFactor).scenario(WallYearProof.HOURS);
        yearSecond = WallYearProof.lab(gridFactor).scenario(SECOND);
    }

    /** 24 days of the ROOM_COATS room. */
    @Benchmark
    public Outcome roomCoats() {
        return Simulation.run(room);
    }

    /** Its baseline. */
    @Benchmark
    public Outcome roomCoatsBaseline() {
        return Simulation.run(roomSecond);
    }

    /** The year of the WALL_YEAR wall. */
    @Benchmark
    public Outcome wallYear() {
        return Simulation.run(year);
    }

    /** Its baseline. */
    @Benchmark
    public Outcome wallYearBaseline() {
        return Simulation.run(yearSecond);
    }
}
