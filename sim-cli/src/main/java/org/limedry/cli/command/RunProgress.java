package org.limedry.cli.command;

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
final class RunProgress implements AutoCloseable {
    private static final long PATIENCE_NANOS = Duration.ofSeconds(1).toNanos();
    private static final int LOOK_EVERY = 32;

    private final long hours;
    private final boolean terminal;
    private final long started = System.nanoTime();
    private final AtomicLong done = new AtomicLong();
    private @Nullable ProgressBar bar;

    /**
     * Starts to count.
     *
     * @param hours simulated hours in all runs together
     */
    RunProgress(long hours) {
        this.hours = hours;
        this.terminal = isTerminal();
    }

    /** Returns what a run is to tell; may be told by several threads. */
    Progress ofARun() {
        return now -> {
            long hour = done.incrementAndGet();
            if (terminal && hour % LOOK_EVERY == 0 && System.nanoTime() - started > PATIENCE_NANOS) {
                show(hour);
            }
        };
    }

    @Override
    public synchronized void close() {
        if (bar != null) {
            bar.close();
        }
    }

    private synchronized void show(long hour) {
        if (bar == null) {
            bar = new ProgressBarBuilder()
                    .setTaskName("drying")
                    .setInitialMax(hours)
                    .setStyle(ProgressBarStyle.ASCII)
                    .clearDisplayOnFinish()
                    .hideEta()
                    .build();
        }
        bar.stepTo(hour);
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
