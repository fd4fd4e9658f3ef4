package org.limedry.study.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.limedry.lime.HandTest;
import org.limedry.study.Uncertain;

/** What would have been found without some readings: as a fit without them finds it. */
final class FitLeaveOutTest {
    private static final List<Uncertain> UNKNOWNS = FitFixture.unknowns(3);
    private static final Fit.Runs RUNS = FitFixture.runs(z -> new FitFixture.Said(
            hour -> 8.0 + 0.02 * hour * z[0] + z[1],
            Map.of(0, 2.0 * z[1] - z[2], 1, z[0] + z[2]),
            5.0 + z[2],
            z[0] - 1.0));

    private static List<Reading> readings() {
        SplittableRandom random = new SplittableRandom(3);
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            readings.add(FitFixture.air(12 * i, 8.5 + 0.01 * 12 * i + random.nextDouble(-0.5, 0.5)));
            readings.add(FitFixture.face(i % 2, 20 * i, random.nextDouble(-1.0, 2.0)));
        }
        for (int day = 0; day < 6; day++) {
            readings.add(FitFixture.bucket(day, 5.3 + random.nextDouble(-0.2, 0.2)));
        }
        return readings;
    }

    private static FitResult fit(List<Reading> readings) {
        return FitFixture.fit(UNKNOWNS, readings, FitFixture.ERRORS, RUNS);
    }

    private static void assertSame(Fitted expected, Fitted found) {
        assertSame(expected, found, 1e-8); // rounding of quantiles
    }

    private static void assertSame(Fitted expected, Fitted found, double tolerance) {
        for (int row = 0; row < UNKNOWNS.size(); row++) {
            assertEquals(expected.mean(row), found.mean(row), tolerance, "mean " + row);
            for (int column = 0; column <= row; column++) {
                assertEquals(expected.root(row, column), found.root(row, column), tolerance, "root " + row);
            }
        }
    }

    private static void assertAsRefitted(List<Reading> readings, Predicate<Reading> leftOut) {
        assertSame(
                fit(readings.stream().filter(leftOut.negate()).toList()).fitted(),
                fit(readings).without(leftOut));
    }

    // EXACT: a straight law has one minimum. Fewer than 24 readings in a channel: errors stay as given.
    @Test
    void without_anyChannel_isWhatAFitWithoutItFinds() {
        List<Reading> readings = readings();

        readings.stream()
                .map(Reading::channel)
                .distinct()
                .forEach(channel ->
                        assertAsRefitted(readings, reading -> reading.channel().equals(channel)));
    }

    // EXACT: some readings of a logger that keeps others, so that its offset is found from fewer.
    @Test
    void without_halfTheReadingsOfALogger_isWhatAFitWithoutThemFinds() {
        List<Reading> readings = readings();

        assertAsRefitted(
                readings,
                reading ->
                        reading instanceof Reading.RoomCelsius && reading.at().isAfter(FitFixture.at(50)));
        assertAsRefitted(readings, readings.get(5)::equals);
    }

    // EXACT: a hand test that the buckets had kept well on the right side pulls once they are gone.
    @Test
    void without_readingsThatKeptAHandTestRight_isWhatAFitWithoutThemFinds() {
        Fit.Runs runs = FitFixture.runs(
                z -> new FitFixture.Said(hour -> 0.0, Map.of(0, z[1], 1, z[2]), 5.0 + z[0], z[0] + z[1] - 1.5));
        List<Reading> readings = List.of(
                FitFixture.bucket(0, 7.0),
                FitFixture.face(0, 3, 0.5),
                FitFixture.face(1, 3, 0.5),
                FitFixture.hand(30, HandTest.Result.HARD));
        Predicate<Reading> bucket = Reading.Bucket.class::isInstance;
        FitResult all = FitFixture.fit(UNKNOWNS, readings, FitFixture.ERRORS, runs);
        FitResult fewer = FitFixture.fit(UNKNOWNS, readings.subList(1, 4), FitFixture.ERRORS, runs);

        assertEquals(0.0, all.residuals().get(3).sigmasAfter());
        assertTrue(Math.abs(fewer.fitted().mean(1) - all.fitted().mean(1)) > 0.1);
        assertSame(
                fewer.fitted(),
                all.without(bucket),
                1e-6); // a walk ends near the place at which a hand's pull is asked
    }

    // EXACT: nothing left out changes nothing, not a digit; with everything left out what was believed before is left.
    @Test
    void without_nothingOrEverything_isTheFitOrTheBeliefs() {
        FitResult result = fit(readings());

        Fitted same = result.without(reading -> false);
        Fitted none = result.without(reading -> true);

        for (int k = 0; k < UNKNOWNS.size(); k++) {
            assertEquals(result.fitted().mean(k), same.mean(k));
            assertEquals(result.fitted().spread(k), same.spread(k));
            assertEquals(0.0, none.mean(k), 1e-8);
            assertEquals(1.0, none.spread(k), 1e-12);
        }
    }

    @Test
    void withoutEach_group_namesTheGroupsInTheOrderOfTheReadings() {
        FitResult result = fit(readings());

        Map<String, Fitted> byChannel = result.withoutEach(Reading::channel);
        Map<String, Fitted> byKind =
                result.withoutEach(reading -> reading instanceof Reading.Bucket ? "buckets" : "sensors");

        assertEquals(
                List.of("room temperature, hall", "face temperature, w0", "face temperature, w1", "bucket, store"),
                List.copyOf(byChannel.keySet()));
        assertEquals(List.of("sensors", "buckets"), List.copyOf(byKind.keySet()));
        assertSame(result.without(Reading.Bucket.class::isInstance), byKind.get("buckets"));
        assertSame(result.without(Reading.Bucket.class::isInstance), byChannel.get("bucket, store"));
    }
}
