package org.limedry.cli.readings.logger;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;

/** One walk over all lines of a file: a line that says nothing is listed and the next is read. */
final class Walk {
    private final RowReader reader;
    private final Tally tally;
    private final Stamps stamps;
    private final List<Kept> kept = new ArrayList<>();
    private final List<Blank> blank = new ArrayList<>();
    private final List<Found> found = new ArrayList<>();

    private Walk(RowReader reader, Tally tally, Stamps stamps) {
        this.reader = reader;
        this.tally = tally;
        this.stamps = stamps;
    }

    /** A line that says something, its date as it is written. */
    private record Kept(int line, Stamp stamp, Figures.Values values) {}

    /** A line with a time and no figure. */
    private record Blank(Stamp stamp, Found found) {}

    /** Walks from the first reading to the end. */
    static Walk over(Lines lines, Cutter cutter, Sheet sheet, Places places, RowReader.Way way) {
        Tally tally = new Tally(sheet, places);
        Walk walk = new Walk(new RowReader(sheet, places, way), tally, new Stamps(places));
        int first = sheet.readings().get(0).line();
        lines.forEach((number, text) -> {
            if (number >= first) {
                walk.see(cutter.cut(number, text), way.only());
            }
        });
        return walk;
    }

    Tally tally() {
        return tally;
    }

    private void see(Row row, ReadingPlan.Only only) {
        if (row.isBlank()) {
            return;
        }
        Optional<Stamp> stamp = stamps.of(row);
        tally.see(row, stamp);
        if (only.takes(row)) {
            read(row, stamp);
        }
    }

    private void read(Row row, Optional<Stamp> stamp) {
        Optional<Found.Kind> fault = reader.fault(row, stamp.isPresent());
        if (fault.isPresent()) {
            found.add(Found.on(row, fault.get()));
            return;
        }
        Figures.Values values = reader.values(row, found);
        if (values.isBlank()) {
            blank.add(new Blank(stamp.orElseThrow(), Found.on(row, reader.blankness(row))));
        } else {
            kept.add(new Kept(row.line(), stamp.orElseThrow(), values));
        }
    }

    /**
     * Returns what the lines say now that the order of their dates is known, in the order of the file.
     *
     * @param lines the same lines, to show those whose date is none in this order
     * @param to where everything that is not as it should be is listed
     */
    List<Figures> figures(DateOrder order, Lines lines, List<Found> to) {
        Set<Integer> undated = new HashSet<>();
        List<Figures> figures = new ArrayList<>(kept.size());
        for (Kept one : kept) {
            figures(one, order).ifPresentOrElse(figures::add, () -> undated.add(one.line()));
        }
        found.stream().filter(one -> !undated.contains(one.line())).forEach(to::add);
        for (Blank one : blank) {
            boolean dated = one.stamp().secondIn(order).isPresent();
            to.add(dated ? one.found() : one.found().as(Found.Kind.NO_TIME));
        }
        lines.of(undated).forEach(line -> to.add(Found.on(line.number(), Found.Kind.NO_TIME, line.text())));
        return figures;
    }

    private static Optional<Figures> figures(Kept one, DateOrder order) {
        OptionalLong second = one.stamp().secondIn(order);
        if (second.isEmpty()) {
            return Optional.empty();
        }
        Optional<ZoneOffset> offset = Stamp.offset(one.stamp().offset());
        long ahead = offset.map(ZoneOffset::getTotalSeconds).orElse(0);
        return Optional.of(new Figures(one.line(), second.getAsLong() - ahead, offset.isPresent(), one.values()));
    }
}
