package org.limedry.cli.readings.logger;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.zone.ZoneOffsetTransition;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/** Turns the times of a logger's clock into moments, the hour that is missing in spring and doubled in autumn included. */
final class Moments {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("d MMM uuuu HH:mm", Locale.ENGLISH);

    private final ZoneId zone;
    private final List<Found> found;

    private Moments(ZoneId zone, List<Found> found) {
        this.zone = zone;
        this.found = found;
    }

    /** What a line says, at its moment. */
    record Timed(int line, Instant at, Figures.Values values) {}

    static List<Timed> of(List<Figures> figures, ZoneId zone, List<Found> found) {
        Moments moments = new Moments(zone, found);
        return moments.all(moments.oldestFirst(figures));
    }

    private List<Figures> oldestFirst(List<Figures> figures) {
        long back = IntStream.range(1, figures.size())
                .filter(i -> figures.get(i).localSecond() < figures.get(i - 1).localSecond())
                .count();
        if (back * 2 < figures.size() || figures.size() < 2) {
            return figures;
        }
        List<Figures> turned = new ArrayList<>(figures);
        Collections.reverse(turned);
        found.add(new Found(
                Found.Kind.NEWEST_FIRST,
                figures.get(0).line(),
                figures.get(figures.size() - 1).line(),
                "the newest is on line " + figures.get(0).line()));
        return turned;
    }

    private List<Timed> all(List<Figures> figures) {
        List<Timed> timed = new ArrayList<>();
        int next = 0;
        while (next < figures.size()) {
            Optional<ZoneOffsetTransition> doubled = doubledHour(figures.get(next));
            if (doubled.isPresent()) {
                int end = endOf(figures, next, doubled.get());
                timed.addAll(twice(figures.subList(next, end), doubled.get()));
                next = end;
            } else {
                moment(figures.get(next)).ifPresent(timed::add);
                next++;
            }
        }
        return timed;
    }

    private Optional<ZoneOffsetTransition> doubledHour(Figures figures) {
        return figures.utc()
                ? Optional.empty()
                : Optional.ofNullable(zone.getRules().getTransition(figures.local()))
                        .filter(ZoneOffsetTransition::isOverlap);
    }

    private int endOf(List<Figures> figures, int start, ZoneOffsetTransition transition) {
        return IntStream.range(start, figures.size())
                .filter(i -> !doubledHour(figures.get(i)).equals(Optional.of(transition)))
                .findFirst()
                .orElse(figures.size());
    }

    private Optional<Timed> moment(Figures figures) {
        LocalDateTime local = figures.local();
        if (figures.utc()) {
            return Optional.of(timed(figures, ZoneOffset.UTC));
        }
        List<ZoneOffset> offsets = zone.getRules().getValidOffsets(local);
        if (offsets.isEmpty()) {
            found.add(Found.on(figures.line(), Found.Kind.NO_SUCH_TIME, CLOCK.format(local)));
            return Optional.empty();
        }
        return Optional.of(timed(figures, offsets.get(0)));
    }

    /** Summer time until the clock steps back or stands, winter time from there. */
    private List<Timed> twice(List<Figures> hour, ZoneOffsetTransition transition) {
        int back = IntStream.range(1, hour.size())
                .filter(i -> hour.get(i).localSecond() <= hour.get(i - 1).localSecond())
                .findFirst()
                .orElse(hour.size());
        Found.Kind kind = back == hour.size() ? Found.Kind.HOUR_ONCE : Found.Kind.HOUR_TWICE;
        List<Integer> lines = hour.stream().map(Figures::line).sorted().toList();
        found.add(new Found(
                kind,
                lines.get(0),
                lines.get(lines.size() - 1),
                CLOCK.format(transition.getDateTimeAfter()) + " to " + CLOCK.format(transition.getDateTimeBefore())));
        return IntStream.range(0, hour.size())
                .mapToObj(
                        i -> timed(hour.get(i), i < back ? transition.getOffsetBefore() : transition.getOffsetAfter()))
                .toList();
    }

    private static Timed timed(Figures figures, ZoneOffset offset) {
        return new Timed(
                figures.line(),
                Instant.ofEpochSecond(figures.localSecond() - offset.getTotalSeconds()),
                figures.values());
    }
}
