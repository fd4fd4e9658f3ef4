package org.limedry.cli.doors;

import java.time.Instant;
import java.util.Optional;
import org.limedry.study.doors.DoorWay;

/**
 * What came of one way of handling the doors.
 *
 * @param way the way
 * @param litres water out of walls and plaster of the room over the days, litres; negative if they took it up
 * @param lowLitres one member in five has less, if members were run
 * @param highLitres one member in five has more, if members were run
 * @param ready when the coat that waits is ready, if one waits and the run lasts so long
 */
record WayResult(
        DoorWay way, double litres, Optional<Double> lowLitres, Optional<Double> highLitres, Optional<Instant> ready) {}
