package org.limedry.study.fit;

import java.time.Instant;
import org.limedry.lime.HandTest;
import org.limedry.units.Check;

/** Something that was read on site, to bring the model to. */
public sealed interface Reading {
    /** Returns when it was read; of a stretch its end. */
    Instant at();

    /** Returns what was read: C, fraction, litres; of a hand test 0 e-folds, the limit of the ready rule. */
    double measured();

    /** Returns its kind and the thing it was read from: "room temperature, hall". Readings of a channel are wrong together. */
    String channel();

    /**
     * Air temperature of a room by a logger.
     *
     * @param logger the logger: all its readings share one offset
     * @param room name of the room
     * @param celsius reading, C
     */
    record RoomCelsius(String logger, String room, Instant at, double celsius) implements Reading {
        public RoomCelsius {
            Check.notBlank(logger, "logger");
            Check.finite(celsius, "celsius", "C");
        }

        @Override
        public double measured() {
            return celsius;
        }

        @Override
        public String channel() {
            return "room temperature, " + logger;
        }
    }

    /**
     * Relative humidity of a room by a logger.
     *
     * @param logger the logger: all its readings share one offset
     * @param room name of the room
     * @param relativeHumidity reading, fraction
     */
    record RoomHumidity(String logger, String room, Instant at, double relativeHumidity) implements Reading {
        public RoomHumidity {
            Check.notBlank(logger, "logger");
            Check.finite(relativeHumidity, "relativeHumidity", "");
        }

        @Override
        public double measured() {
            return relativeHumidity;
        }

        @Override
        public String channel() {
            return "room humidity, " + logger;
        }
    }

    /**
     * Temperature of a face of a wall, by an infrared gun or a stuck-on sensor.
     *
     * @param wall name of the wall
     * @param celsius reading, C
     */
    record FaceCelsius(String wall, Instant at, double celsius) implements Reading {
        public FaceCelsius {
            Check.finite(celsius, "celsius", "C");
        }

        @Override
        public double measured() {
            return celsius;
        }

        @Override
        public String channel() {
            return "face temperature, " + wall;
        }
    }

    /**
     * Water emptied from the dehumidifiers of a room.
     *
     * @param room name of the room
     * @param from when it was emptied before
     * @param litres water in it, litres
     */
    record Bucket(String room, Instant from, Instant at, double litres) implements Reading {
        public Bucket {
            Check.that(from.isBefore(at), "at", "after " + from, at);
            Check.nonNegative(litres, "litres", "litres");
        }

        @Override
        public double measured() {
            return litres;
        }

        @Override
        public String channel() {
            return "bucket, " + room;
        }
    }

    /**
     * A hand test: the coat was on one side of the ready rule or the other.
     *
     * @param test the test
     */
    record ByHand(HandTest test) implements Reading {
        @Override
        public Instant at() {
            return test.instant();
        }

        @Override
        public double measured() {
            return 0.0;
        }

        @Override
        public String channel() {
            return "hand tests, " + test.wall();
        }
    }
}
