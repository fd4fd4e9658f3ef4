package org.limedry.cli.verify;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import org.limedry.proof.figure.Figure;
import org.limedry.proof.figure.Proof;
import org.limedry.proof.figure.Verdict;

/**
 * A case that has been run.
 *
 * @param proof the case
 * @param figures what it came to; none if it failed
 * @param failure why it could not be run to its end; empty if it could
 */
record CaseRun(Proof proof, List<Figure> figures, Optional<String> failure) {
    CaseRun {
        figures = List.copyOf(figures);
        if (figures.isEmpty() == failure.isEmpty()) {
            throw new IllegalArgumentException("figures: must be there unless the case failed, was " + figures.size());
        }
    }

    CaseRun(Proof proof, List<Figure> figures) {
        this(proof, figures, Optional.empty());
    }

    /**
     * Runs cases, several at a time. A case that throws, or that comes to no figure, has failed; the rest goes on.
     *
     * @param proofs the cases
     * @param threads how many at a time; at least 1
     * @param done told whenever a case is done, by any thread
     * @return the cases in the order given, whatever the order in which they end
     */
    static List<CaseRun> all(List<Proof> proofs, int threads, Runnable done) {
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            List<Future<List<Figure>>> running = new ArrayList<>();
            for (Proof proof : proofs) {
                Callable<List<Figure>> job = () -> {
                    try {
                        return proof.figures();
                    } finally {
                        done.run();
                    }
                };
                running.add(pool.submit(job));
            }
            List<CaseRun> runs = new ArrayList<>();
            for (int k = 0; k < running.size(); k++) {
                runs.add(ended(proofs.get(k), running.get(k)));
            }
            return List.copyOf(runs);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted", e);
        } finally {
            pool.shutdownNow();
        }
    }

    private static CaseRun ended(Proof proof, Future<List<Figure>> running) throws InterruptedException {
        try {
            List<Figure> figures = running.get();
            return figures.isEmpty() ? failed(proof, "it came to no figure") : new CaseRun(proof, figures);
        } catch (ExecutionException e) {
            Throwable cause = Objects.requireNonNullElse(e.getCause(), e);
            String message = Objects.requireNonNullElse(cause.getMessage(), "no message");
            String words = cause.getClass().getSimpleName() + ": " + message;
            return failed(proof, words.replaceAll("\\s+", " "));
        }
    }

    private static CaseRun failed(Proof proof, String reason) {
        return new CaseRun(proof, List.of(), Optional.of(reason));
    }

    /** Returns the figures by part, in their order. */
    Map<String, List<Figure>> parts() {
        return figures.stream().collect(Collectors.groupingBy(Figure::part, LinkedHashMap::new, Collectors.toList()));
    }

    /** Tells whether it ran and every figure is in, but for those whose source is in error. */
    boolean isMet() {
        return failure.isEmpty() && outside(figures) == 0;
    }

    static long outside(List<Figure> figures) {
        return figures.stream()
                .filter(figure -> figure.verdict() == Verdict.OUTSIDE)
                .count();
    }

    static long inError(List<Figure> figures) {
        return figures.stream()
                .filter(figure -> figure.verdict() == Verdict.SOURCE_IN_ERROR)
                .count();
    }

    /**
     * Returns the figure that is furthest off by a hundredth of what is accepted, the first of several, so that rounding
     * does not choose another one elsewhere; one whose source is in error only if there is no other.
     */
    static Figure worst(List<Figure> figures) {
        List<Figure> fair = figures.stream()
                .filter(figure -> figure.verdict() != Verdict.SOURCE_IN_ERROR)
                .toList();
        List<Figure> judged = fair.isEmpty() ? figures : fair;
        Figure worst = judged.get(0);
        for (Figure figure : judged) {
            worst = hundredths(figure) > hundredths(worst) ? figure : worst;
        }
        return worst;
    }

    private static long hundredths(Figure figure) {
        // Not a number is as far off as can be.
        return Double.isNaN(figure.share()) ? Long.MAX_VALUE : Math.round(100.0 * figure.share());
    }
}
