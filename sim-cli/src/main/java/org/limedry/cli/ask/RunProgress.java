package org.limedry.cli.ask;

import java.io.Console;
import java.lang.reflect.InvocationTargetException;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicLong;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;
import org.jspecify.annotations.Nullable;
import org.limedry.simulation.Progress;

/** A bar for work that takes longer than a second, on a terminal only. */
public final class RunProgress implements AutoCloseable {
    private static final long PATIENCE_NANOS = Duration.ofSeconds(1).toNanos();
    private static final int LOOK_EVERY_HOURS = 32;

    private final String task;
    private final long steps;
    private final int lookEvery;
    private final boolean terminal;
    private final long started = System.nanoTime();
    private final AtomicLong done = new AtomicLong();
    private @Nullable ProgressBar bar;

    /**
     * Starts to count.
     *
     * @param hours simulated hours in all runs together
     */
    public RunProgress(long hours) {
        this("drying", hours, LOOK_EVERY_HOURS);
    }

    private RunProgress(String task, long steps, int lookEvery) {
        this.task = task;
        this.steps = steps;
        this.lookEvery = lookEvery;
        this.terminal = isTerminal();
    }

    /** Starts to count cases. */
    public static RunProgress ofCases(int cases) {
        return new RunProgress("checking", cases, 1);
    }

    /** Returns what a run is to tell; may be told by several threads. */
    public Progress ofARun() {
        return now -> step();
    }

    /** Counts one step; may be told by several threads. */
    public void step() {
        long reached = done.incrementAndGet();
        if (terminal && reached % lookEvery == 0 && System.nanoTime() - started > PATIENCE_NANOS) {
            show(reached);
        }
    }

    @Override
    public synchronized void close() {
        if (bar != null) {
            bar.close();
        }
    }

    private synchronized void show(long reached) {
        if (bar == null) {
            bar = new ProgressBarBuilder()
                    .setTaskName(task)
                    .setInitialMax(steps)
                    .setStyle(ProgressBarStyle.ASCII)
                    .clearDisplayOnFinish()
                    .hideEta()
                    .build();
        }
        bar.stepTo(reached);
    }

    /** From Java 22 on there is a console even where there is no terminal, and a method that tells; before, neither. */
    @SuppressWarnings("SystemConsoleNull") // both ways of telling are used here
    private static boolean isTerminal() {
        Console console = System.console();
        if (console == null) {
            return false;
        }
        try {
            return Boolean.TRUE.equals(Console.class.getMethod("isTerminal").invoke(console));
        } catch (NoSuchMethodException e) {
            return true;
        } catch (IllegalAccessException | InvocationTargetException e) {
            return false;
        }
    }
}
