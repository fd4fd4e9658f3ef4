package org.limedry.cli.fit;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.limedry.cli.readings.diary.Amount;
import org.limedry.cli.readings.diary.Column;
import org.limedry.cli.readings.diary.Diary;
import org.limedry.cli.readings.diary.DiaryDay;
import org.limedry.cli.site.Site;
import org.limedry.cli.site.SiteReadings;
import org.limedry.climate.LoggedReading;
import org.limedry.climate.Readings;
import org.limedry.climate.Schedule;
import org.limedry.lime.CoatPlan;
import org.limedry.lime.HandTest;
import org.limedry.lime.Laying;
import org.limedry.room.Plant;
import org.limedry.room.RoomPlan;
import org.limedry.simulation.Scenario;
import org.limedry.study.Draw;
import org.limedry.study.fit.Reading;

/**
 * The readings of a site that the model is brought to: full hours of the loggers, buckets, hand tests.
 *
 * @param list the readings
 * @param until the last moment up to which both room and weather are known
 * @param remarks what was left out and why, each in a sentence
 */
record ReadingsToFit(List<Reading> list, Instant until, List<String> remarks) {
    /**
     * A run begins from a guess of how warm and damp room and walls are; until that is forgotten nothing is compared. Judgement,
     * no source.
     */
    static final Duration SETTLING = Duration.ofDays(2);

    ReadingsToFit {
        list = List.copyOf(list);
        remarks = List.copyOf(remarks);
    }

    /** Returns the readings of a site that has some. */
    static ReadingsToFit of(Site site, SiteReadings read) {
        return new Maker(site, read).readings();
    }

    private static final class Maker {
        private final Site site;
        private final SiteReadings read;
        private final Scenario scenario;
        private final Instant from;
        private final Instant until;
        private final List<Reading> list = new ArrayList<>();
        private final List<String> remarks;

        Maker(Site site, SiteReadings read) {
            this.site = site;
            this.read = read;
            this.scenario = site.scenario(Draw.likely());
            this.from = site.from().plus(SETTLING);
            Instant last = read.known().diary();
            Instant weather = read.outdoors().map(Readings::until).orElse(last);
            this.until = earlier(site.until(), earlier(last, weather));
            this.remarks = new ArrayList<>(site.outdoorRemarks());
            remarks.addAll(read.remarks());
            boolean still = read.outdoors().stream()
                    .flatMap(outdoors -> outdoors.all().stream())
                    .noneMatch(reading -> reading.windMPerS().isPresent());
            if (read.outdoors().isPresent() && still) {
                remarks.add("no wind was read outdoors, that of " + site.weatherName()
                        + " stands in: the ranges of leakage and doors come out too narrow");
            }
        }

        ReadingsToFit readings() {
            read.loggers().forEach(this::addLogger);
            read.diary().ifPresent(this::addBuckets);
            scenario.handTests().forEach(this::addHandTest);
            return new ReadingsToFit(list, until, remarks);
        }

        private boolean counts(Instant at) {
            return at.isAfter(from) && !at.isAfter(until);
        }

        private void addLogger(SiteReadings.Logged logger) {
            List<LoggedReading> hours = logger.readings().hourly();
            for (LoggedReading hour : hours) {
                if (counts(hour.at())) {
                    addHour(logger, hour);
                }
            }
            long late = hours.stream().filter(hour -> hour.at().isAfter(until)).count();
            if (late > 0) {
                remarks.add(logger.name() + ": " + late + " hours are later than the weather is known: left out");
            }
        }

        private void addHour(SiteReadings.Logged logger, LoggedReading hour) {
            logger.room().ifPresent(room -> {
                hour.celsius()
                        .ifPresent(value -> list.add(new Reading.RoomCelsius(logger.name(), room, hour.at(), value)));
                hour.relativeHumidity()
                        .ifPresent(value -> list.add(new Reading.RoomHumidity(logger.name(), room, hour.at(), value)));
            });
            logger.wall()
                    .ifPresent(wall -> hour.surfaceCelsius()
                            .ifPresent(value -> list.add(new Reading.FaceCelsius(wall, hour.at(), value))));
        }

        private void addBuckets(Diary diary) {
            List<RoomPlan> drying = scenario.rooms().stream()
                    .filter(room -> firstOn(room).isPresent())
                    .toList();
            drying.forEach(room -> addBuckets(diary, room, drying.size()));
            boolean nowhere = drying.isEmpty()
                    && diary.days().stream()
                            .anyMatch(day -> !day.plant().litres().isEmpty()
                                    && day.plant().litres().get(0).value() > 0.0);
            if (nowhere) {
                remarks.add("litres in the diary, and no dehumidifier in the site file: left out");
            }
        }

        private static Optional<Instant> firstOn(RoomPlan room) {
            return room.plant().stream()
                    .filter(plant -> plant instanceof Plant.Dehumidifier)
                    .flatMap(plant -> plant.on().spans().stream())
                    .map(Schedule.Span::from)
                    .min(Comparator.naturalOrder());
        }

        /** A bucket holds what came since it was emptied before, or since the machine was first switched on. */
        private void addBuckets(Diary diary, RoomPlan room, int rooms) {
            Instant before = firstOn(room).orElseThrow();
            for (DiaryDay day : diary.days()) {
                Instant at = site.workBegins(day.date());
                Optional<Double> litres = litres(day, room, rooms);
                if (litres.isPresent() && before.isBefore(at) && !at.isAfter(until)) {
                    if (counts(at)) {
                        list.add(new Reading.Bucket(room.name(), before, at, litres.get()));
                    }
                    before = at;
                }
            }
        }

        private static Optional<Double> litres(DiaryDay day, RoomPlan room, int rooms) {
            return day.plant().litres().stream()
                    .filter(amount ->
                            amount.of().equals(room.name()) || (amount.of().isEmpty() && rooms == 1))
                    .filter(amount -> day.written().contains(Column.LITRES))
                    .map(Amount::value)
                    .findFirst();
        }

        private void addHandTest(HandTest test) {
            Optional<CoatPlan> coat = scenario.coats().stream()
                    .filter(plan -> plan.wall().equals(test.wall()) && plan.number() == test.coat())
                    .findFirst();
            boolean laid = coat.filter(plan -> plan.laying() instanceof Laying.On on
                            && on.instant().isBefore(test.instant()))
                    .isPresent();
            if (laid && !test.instant().isAfter(until)) {
                list.add(new Reading.ByHand(test));
            } else if (!laid) {
                remarks.add("a hand test of " + test.wall() + ", coat " + test.coat()
                        + ", which has no day on which it was laid before: left out of the fit");
            }
        }

        private static Instant earlier(Instant a, Instant b) {
            return a.isBefore(b) ? a : b;
        }
    }
}
