package org.limedry.cli.delay;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.limedry.cli.chart.DateWords;
import org.limedry.cli.page.Days;
import org.limedry.cli.page.Figures;
import org.limedry.cli.page.Names;
import org.limedry.cli.site.PlannedJob;
import org.limedry.cli.site.PlannedJob.Cause;
import org.limedry.room.Plant;
import org.limedry.simulation.Scenario;
import org.limedry.study.Draw;
import org.limedry.units.Units;

/**
 * What the two sides of a job were like, in words.
 *
 * @param runs the runs
 * @param planned the side that was planned
 * @param actual the side that happened
 * @param plannedDoorHours hours a working day that doors were to stand open, over the days of the job as it happened
 * @param actualDoorHours hours a working day that they did
 */
record DelayFacts(DelayRuns runs, JobSide planned, JobSide actual, double plannedDoorHours, double actualDoorHours) {
    private static final double SAME_HOURS = 0.05;

    static DelayFacts of(DelayRuns runs, JobSide planned, JobSide actual) {
        PlannedJob job = runs.job();
        Set<Cause> allButDoors = EnumSet.complementOf(EnumSet.of(Cause.DOORS));
        Scenario agreed = job.site(allButDoors).scenario(Draw.likely());
        JobSide withDoorsAsAgreed = new JobSide(actual.site(), agreed, actual.outcome(), actual.wall(), actual.room());
        return new DelayFacts(
                runs,
                planned,
                actual,
                withDoorsAsAgreed.doorHours(job.workingDays(), actual.laid(), actual.end()),
                actual.doorHours(job.workingDays(), actual.laid(), actual.end()));
    }

    /** Returns what happened against what was agreed: "Room released 2 Nov, not 7 Sep". */
    String words(Cause cause) {
        return switch (cause) {
            case ROOM -> released();
            case DOORS -> doors();
            case PLANT -> machines();
            case WEATHER -> "Weather as recorded, not that of the plan";
            case WALL -> wall();
        };
    }

    private Days dates() {
        return new Days(actual.zone(), false);
    }

    /** Returns the release of the room of the wall, if both days are known. */
    Optional<PlannedJob.Released> ownRelease() {
        return runs.job().released().stream()
                .filter(some -> some.room().equals(actual.room()))
                .findFirst();
    }

    private String released() {
        List<PlannedJob.Released> moved = runs.job().released().stream()
                .filter(some -> !some.planned().equals(some.actual()))
                .toList();
        PlannedJob.Released told = moved.stream()
                .filter(some -> some.room().equals(actual.room()))
                .findFirst()
                .orElse(moved.get(0));
        String room = told.room().equals(actual.room()) ? "Room" : Names.capital(told.room());
        String others = moved.size() > 1 ? ", and " + (moved.size() - 1) + " more" : "";
        return room + " released " + dates().brief(told.actual()) + ", not " + dates().brief(told.planned()) + others;
    }

    private String doors() {
        return doorsDiffer()
                ? "Doors open " + DelayWords.hoursFigure(actualDoorHours) + " hours a day, not "
                        + DelayWords.hoursFigure(plannedDoorHours)
                : "Doors open at other hours than agreed";
    }

    /** Tells whether the doors of the wall's own room stood open for other hours. */
    boolean doorsDiffer() {
        return Math.abs(actualDoorHours - plannedDoorHours) >= SAME_HOURS;
    }

    private String machines() {
        Optional<LocalDate> agreed = heatFrom(planned, planned.scenario().until());
        Optional<LocalDate> came = heatFrom(actual, actual.end());
        if (agreed.isPresent() && came.isEmpty()) {
            return "No heat before ready; agreed from " + dates().brief(agreed.get());
        }
        return agreed.isPresent() && came.isPresent() && !agreed.equals(came)
                ? "Heat from " + dates().brief(came.get()) + ", not " + dates().brief(agreed.get())
                : "Heat and machines not as agreed";
    }

    /** Returns what became of heat and machines, as a sentence. */
    String machinesSentence() {
        Optional<LocalDate> agreed = heatFrom(planned, planned.scenario().until());
        Optional<LocalDate> came = heatFrom(actual, actual.end());
        if (agreed.isEmpty() || agreed.equals(came)) {
            return "Heat and machines agreed: " + plannedMachines() + "; on site: " + actualMachines() + ".";
        }
        return came.map(day -> (day.isAfter(runs.job().lastRecord()) ? "Heat is to come on " : "Heat came on ")
                                + DateWords.longDay(day))
                        .orElse("No heat came before it was ready")
                + "; it had been agreed from " + DateWords.longDay(agreed.get()) + ".";
    }

    /** Returns the first day of heat in the room by the calendar, if it came before an instant. */
    private static Optional<LocalDate> heatFrom(JobSide side, Instant before) {
        return side.machines().stream()
                .filter(Plant.Heater.class::isInstance)
                .map(JobSide::firstOn)
                .filter(at -> at.isBefore(before))
                .min(Instant::compareTo)
                .map(side::day);
    }

    /** Returns the machines that were agreed, whether or not the plan was done before they came. */
    String plannedMachines() {
        return machines(planned, planned.scenario().until());
    }

    /** Returns the machines that ran before the plaster was ready. */
    String actualMachines() {
        return machines(actual, actual.end());
    }

    private static String machines(JobSide side, Instant before) {
        List<String> words = side.machines().stream()
                .filter(plant -> JobSide.firstOn(plant).isBefore(before))
                .map(plant -> plant.name() + from(side, JobSide.firstOn(plant)))
                .toList();
        return words.isEmpty() ? "none" : String.join("; ", words);
    }

    private static String from(JobSide side, Instant at) {
        boolean fromTheStart = at.isBefore(side.scenario().from().plus(Duration.ofDays(1)));
        return fromTheStart ? " from the start" : " from " + new Days(side.zone(), false).brief(side.day(at));
    }

    private String wall() {
        String stated = wetness(planned);
        String found = wetness(actual);
        String wetness = stated.equals(found) ? "" : "Wall found " + found + ", stated " + stated;
        String coats = thickness(actual).equals(thickness(planned))
                ? ""
                : "coats " + thickness(actual) + " mm thick, not " + thickness(planned);
        String both = List.of(wetness, coats).stream()
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining("; "));
        return both.isEmpty() ? "Other walls not as stated" : Names.capital(both);
    }

    /** Returns how wet the wall was as its run began: "damp". */
    static String wetness(JobSide side) {
        return side.site().wetnessOf(side.wall());
    }

    /** Returns the thickness of the coats of the wall: "11 and 10". */
    static String thickness(JobSide side) {
        return side.scenario().coats().stream()
                .filter(coat -> coat.wall().equals(side.wall()))
                .map(coat -> Figures.plain(Math.round(10 * Units.mmFromMetres(coat.thicknessM())) / 10.0))
                .collect(Collectors.joining(" and "));
    }
}
