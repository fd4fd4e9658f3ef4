package org.limedry.climate;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The times at which something is on or open: sorted, disjoint half-open spans.
 *
 * <p>Local timetables are turned into spans by the reader, which knows the time zone; nothing here does.
 *
 * @param spans spans in time order; touching and overlapping ones are joined
 */
public record Schedule(List<Span> spans) {
    /**
     * One span.
     *
     * @param from first instant in the span
     * @param until first instant after it; later than {@code from}
     */
    public record Span(Instant from, Instant until) {
        public Span {
            if (!from.isBefore(until)) {
                throw new IllegalArgumentException("until: must be after " + from + ", was " + until);
            }
        }
    }

    public Schedule {
        spans = joined(spans);
    }

    /** Returns the schedule of something that is never on. */
    public static Schedule never() {
        return new Schedule(List.of());
    }

    /** Returns the schedule of something that is on from {@code from} to {@code until}. */
    public static Schedule always(Instant from, Instant until) {
        return new Schedule(List.of(new Span(from, until)));
    }

    /** Tells whether {@code instant} lies in a span. */
    public boolean isOn(Instant instant) {
        for (Span span : spans) {
            if (instant.isBefore(span.from())) {
                return false;
            }
            if (instant.isBefore(span.until())) {
                return true;
            }
        }
        return false;
    }

    /**
     * Returns this schedule with other times between two instants.
     *
     * @param from first instant to be changed
     * @param until first instant after it; later than {@code from}
     * @param inside when it is on in between; what lies outside is cut off
     */
    public Schedule between(Instant from, Instant until, Schedule inside) {
        List<Span> result = new ArrayList<>();
        cut(Instant.MIN, from, result);
        inside.cut(from, until, result);
        cut(until, Instant.MAX, result);
        return new Schedule(result);
    }

    private void cut(Instant from, Instant until, List<Span> to) {
        for (Span span : spans) {
            Instant start = later(span.from(), from);
            Instant end = span.until().isBefore(until) ? span.until() : until;
            if (start.isBefore(end)) {
                to.add(new Span(start, end));
            }
        }
    }

    private static List<Span> joined(List<Span> spans) {
        List<Span> sorted = new ArrayList<>(spans);
        sorted.sort(Comparator.comparing(Span::from));
        List<Span> result = new ArrayList<>();
        for (Span span : sorted) {
            int last = result.size() - 1;
            if (last >= 0 && !span.from().isAfter(result.get(last).until())) {
                Span before = result.get(last);
                result.set(last, new Span(before.from(), later(before.until(), span.until())));
            } else {
                result.add(span);
            }
        }
        return List.copyOf(result);
    }

    private static Instant later(Instant a, Instant b) {
        return a.isAfter(b) ? a : b;
    }
}
