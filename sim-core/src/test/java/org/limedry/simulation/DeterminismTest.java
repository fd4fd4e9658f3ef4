package org.limedry.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TimeZone;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;

final class DeterminismTest {
    // EXACT: the same sums in the same order. No tolerance.
    @Test
    void run_ofTheSameScenarioTwice_givesTheSameOutcome() {
        Scenario scenario = RandomSites.site(7);

        assertEquals(fingerprint(Simulation.run(scenario)), fingerprint(Simulation.run(scenario)));
    }

    // EXACT: runs share nothing that changes. No tolerance.
    @Test
    void run_inParallelThreads_givesTheOutcomeOfOneThread() throws InterruptedException, ExecutionException {
        List<String> alone = new ArrayList<>();
        for (int site = 0; site < 4; site++) {
            alone.add(fingerprint(Simulation.run(RandomSites.site(site))));
        }

        ExecutorService threads = Executors.newFixedThreadPool(4);
        List<Future<String>> together = new ArrayList<>();
        for (int site = 0; site < 4; site++) {
            Scenario scenario = RandomSites.site(site);
            together.add(threads.submit(() -> fingerprint(Simulation.run(scenario))));
        }
        List<String> found = new ArrayList<>();
        for (Future<String> one : together) {
            found.add(one.get());
        }
        threads.shutdown();

        assertEquals(alone, found);
    }

    // EXACT: nothing in a run asks where and in which language the machine stands. No tolerance.
    @Test
    void run_onMachinesElsewhere_givesTheSameOutcome() {
        TimeZone zone = TimeZone.getDefault();
        Locale locale = Locale.getDefault();
        Set<String> found = new HashSet<>();
        try {
            for (String place : List.of("Pacific/Kiritimati en-US", "America/St_Johns ar-EG-u-nu-arab", "UTC tr-TR")) {
                TimeZone.setDefault(TimeZone.getTimeZone(place.substring(0, place.indexOf(' '))));
                Locale.setDefault(Locale.forLanguageTag(place.substring(place.indexOf(' ') + 1)));
                found.add(fingerprint(Simulation.run(RandomSites.site(11))));
            }
        } finally {
            TimeZone.setDefault(zone);
            Locale.setDefault(locale);
        }

        assertEquals(1, found.size());
    }

    /** Everything an outcome holds, to the last bit of every number. */
    private static String fingerprint(Outcome outcome) {
        StringBuilder text = new StringBuilder();
        text.append(outcome.ending()).append(outcome.reached()).append(outcome.coats());
        text.append(outcome.account()).append(outcome.roomAccounts()).append(outcome.faces());
        text.append(outcome.warnings()).append(outcome.statistics());
        History history = outcome.history();
        series(history.outdoorCelsius(), text);
        for (History.RoomHours room : history.rooms()) {
            series(room.airCelsius(), text);
            series(room.relativeHumidity(), text);
            series(room.carbonDioxidePpm(), text);
            series(room.freshAirM3PerS(), text);
        }
        for (History.FaceHours face : history.faces()) {
            series(face.celsius(), text);
            series(face.relativeHumidity(), text);
            series(face.filmKgPerM2(), text);
            series(face.vapourKgPerM2S(), text);
        }
        for (History.CoatHours coat : history.coats()) {
            series(coat.waterKgPerM2(), text);
            series(coat.meanSuctionPa(), text);
            series(coat.carbonatedM(), text);
        }
        return text.toString();
    }

    private static void series(Series series, StringBuilder text) {
        for (int hour = 0; hour < series.size(); hour++) {
            text.append(' ').append(series.at(hour));
        }
    }
}
