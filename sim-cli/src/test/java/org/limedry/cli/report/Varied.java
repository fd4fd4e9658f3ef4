package org.limedry.cli.report;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.limedry.lime.CoatPlan;
import org.limedry.room.Plant;
import org.limedry.room.RoomPlan;
import org.limedry.simulation.History;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Scenario;
import org.limedry.simulation.Warning;
import org.limedry.simulation.WaterAccount;
import org.limedry.study.ReadyRange;
import org.limedry.wall.WallPlan;

/** Findings like {@link Invented#oneRoom()} with something changed; as invented as those. */
final class Varied {
    private Varied() {}

    static Findings quick(Findings findings) {
        return new Findings(
                findings.notes(),
                findings.scenario(),
                findings.outcome(),
                List.of(),
                new Effort(0, 0, 0.4, findings.effort().version()));
    }

    static Findings site(Findings findings, String site) {
        Scenario old = findings.scenario();
        return scenario(findings, Invented.scenario(site, old.rooms(), old.walls(), old.coats()));
    }

    /** Returns the findings with one wall called otherwise, in the plan and in all that was found. */
    static Findings renamedWall(Findings findings, String from, String to) {
        Scenario old = findings.scenario();
        UnaryOperator<String> rename = name -> name.equals(from) ? to : name;
        List<WallPlan> walls = old.walls().stream()
                .map(wall -> new WallPlan(
                        rename.apply(wall.name()),
                        wall.kind(),
                        wall.areaM2(),
                        wall.layers(),
                        wall.outside(),
                        wall.inside(),
                        wall.risingDampKgPerS()))
                .toList();
        List<CoatPlan> coats = old.coats().stream()
                .map(coat -> Invented.coat(
                        rename.apply(coat.wall()), coat.number(), coat.thicknessM(), Invented.day("2026-11-02")))
                .toList();
        return history(
                scenario(findings, Invented.scenario(old.site(), old.rooms(), walls, coats)),
                history -> new History(
                        history.times(),
                        history.outdoorCelsius(),
                        history.outdoorRelativeHumidity(),
                        history.rooms(),
                        history.faces().stream()
                                .map(face -> new History.FaceHours(
                                        rename.apply(face.wall()),
                                        face.room(),
                                        face.celsius(),
                                        face.relativeHumidity(),
                                        face.filmKgPerM2(),
                                        face.vapourKgPerM2S()))
                                .toList(),
                        history.coats()));
    }

    static Findings plant(Findings findings, List<Plant> plant) {
        Scenario old = findings.scenario();
        List<RoomPlan> rooms = List.of(Invented.room("store", plant));
        return scenario(findings, Invented.scenario(old.site(), rooms, old.walls(), old.coats()));
    }

    static Findings scenario(Findings findings, Scenario scenario) {
        return new Findings(findings.notes(), scenario, findings.outcome(), findings.ranges(), findings.effort());
    }

    static Findings notes(Findings findings, SiteNotes notes) {
        return new Findings(notes, findings.scenario(), findings.outcome(), findings.ranges(), findings.effort());
    }

    static Findings outcome(Findings findings, UnaryOperator<Outcome> change) {
        return new Findings(
                findings.notes(),
                findings.scenario(),
                change.apply(findings.outcome()),
                findings.ranges(),
                findings.effort());
    }

    static Findings warnings(Findings findings, Warning... warnings) {
        return outcome(
                findings,
                old -> new Outcome(
                        old.ending(),
                        old.reached(),
                        old.coats(),
                        old.account(),
                        old.roomAccounts(),
                        old.faces(),
                        old.history(),
                        List.of(warnings),
                        old.statistics()));
    }

    static Findings account(Findings findings, WaterAccount account) {
        return outcome(
                findings,
                old -> new Outcome(
                        old.ending(),
                        old.reached(),
                        old.coats(),
                        account,
                        List.of(new Outcome.RoomAccount("store", account)),
                        old.faces(),
                        old.history(),
                        old.warnings(),
                        old.statistics()));
    }

    static Findings history(Findings findings, UnaryOperator<History> change) {
        return outcome(
                findings,
                old -> new Outcome(
                        old.ending(),
                        old.reached(),
                        old.coats(),
                        old.account(),
                        old.roomAccounts(),
                        old.faces(),
                        change.apply(old.history()),
                        old.warnings(),
                        old.statistics()));
    }

    /** Returns the same hours without any heat. */
    static History withoutHeat(History old) {
        return rooms(
                old,
                room -> new History.RoomHours(
                        room.room(),
                        room.airCelsius(),
                        room.relativeHumidity(),
                        room.dewPointCelsius(),
                        room.carbonDioxidePpm(),
                        room.freshAirM3PerS(),
                        room.openShare(),
                        Invented.series(hour -> 0.0),
                        room.dehumidifierKgPerS()));
    }

    /** Returns findings in which the doors stood open all day, so that nobody asks for more. */
    static Findings openAllDay(Findings findings) {
        return history(
                findings,
                old -> rooms(
                        old,
                        room -> new History.RoomHours(
                                room.room(),
                                room.airCelsius(),
                                room.relativeHumidity(),
                                room.dewPointCelsius(),
                                room.carbonDioxidePpm(),
                                room.freshAirM3PerS(),
                                Invented.series(hour -> 1.0),
                                room.heaterWatts(),
                                room.dehumidifierKgPerS())));
    }

    private static History rooms(History old, UnaryOperator<History.RoomHours> change) {
        return new History(
                old.times(),
                old.outdoorCelsius(),
                old.outdoorRelativeHumidity(),
                old.rooms().stream().map(change).toList(),
                old.faces(),
                old.coats());
    }

    /** Returns the findings with another result and range for one coat. */
    static Findings coat(Findings findings, int index, Outcome.CoatResult result, ReadyRange range) {
        List<Outcome.CoatResult> results = replaced(findings.outcome().coats(), index, result);
        List<ReadyRange> ranges = findings.quick() ? List.of() : replaced(findings.ranges(), index, range);
        Outcome old = findings.outcome();
        Outcome outcome = new Outcome(
                old.ending(),
                old.reached(),
                results,
                old.account(),
                old.roomAccounts(),
                old.faces(),
                old.history(),
                old.warnings(),
                old.statistics());
        return new Findings(findings.notes(), findings.scenario(), outcome, ranges, findings.effort());
    }

    static Outcome.CoatResult byHand(String wall, int number, String laid, String passed) {
        Outcome.CoatResult result = Invented.result(wall, number, laid, passed, 0.9);
        return new Outcome.CoatResult(
                wall, number, result.laid(), result.ready(), true, Optional.empty(), 3.3, 0.9, 0.0004);
    }

    /** Returns findings in which the solver stopped at an instant. */
    static Findings gaveUp(Findings findings, Instant reached) {
        return outcome(
                findings,
                old -> new Outcome(
                        new Outcome.Ending.GaveUp(1e-4, 7.0),
                        reached,
                        old.coats(),
                        old.account(),
                        old.roomAccounts(),
                        old.faces(),
                        old.history(),
                        old.warnings(),
                        old.statistics()));
    }

    /** Returns two rooms, the second with a coat that is never ready. */
    static Findings twoRooms() {
        Findings one = Invented.oneRoom();
        List<WallPlan> walls = new ArrayList<>(one.scenario().walls());
        walls.add(Invented.wall("loft spine", WallPlan.Kind.LISTED, 9.0, "old brick", "loft"));
        walls.add(Invented.wall("loft skylight pane", WallPlan.Kind.PANE, 0.5, "glass", "loft"));
        List<CoatPlan> coats =
                added(one.scenario().coats(), Invented.coat("loft spine", 1, 0.011, Invented.day("2026-11-05")));
        List<RoomPlan> rooms = List.of(Invented.store(), Invented.room("loft", List.of()));
        return new Findings(
                one.notes(),
                Invented.scenario(one.scenario().site(), rooms, walls, coats),
                ofTwoRooms(one.outcome(), coats),
                added(one.ranges(), Invented.range("loft spine", 1, "2027-01-20", "", "")),
                one.effort());
    }

    private static Outcome ofTwoRooms(Outcome old, List<CoatPlan> coats) {
        WaterAccount loft = new WaterAccount(
                29.7, 0.0, 0.0, 0.0, 0.0, 0.3, 0.1, 12.0, -4.0, 0.0, 0.0, 0.0, 20.0, 1.7, 0.2, 0.0, 3.0, 2.5);
        List<Outcome.FaceResult> faces = new ArrayList<>(old.faces());
        faces.add(new Outcome.FaceResult("loft spine", "loft", 9.0, true, 1200.0, 0.0, 1300.0, 3.0, 2.5));
        faces.add(new Outcome.FaceResult("loft skylight pane", "loft", 0.5, false, 0.0, 0.0, 0.0, 0.0, 0.0));
        Map<String, List<String>> walls = new LinkedHashMap<>();
        walls.put("store", List.of("north", "ceiling", "window pane"));
        walls.put("loft", List.of("spine", "skylight pane"));
        return new Outcome(
                old.ending(),
                old.reached(),
                added(old.coats(), Invented.result("loft spine", 1, "2026-11-05", "", 2.2)),
                old.account(),
                added(old.roomAccounts(), new Outcome.RoomAccount("loft", loft)),
                faces,
                Invented.history(walls, coats),
                added(
                        old.warnings(),
                        new Warning(Warning.Kind.NOT_READY, "loft spine", Invented.UNTIL, Invented.UNTIL, 1.0)),
                old.statistics());
    }

    /** Returns one room with nine walls of one coat each. */
    static Findings nineCoats() {
        Findings one = Invented.oneRoom();
        List<String> names =
                IntStream.rangeClosed(1, 9).mapToObj(i -> "bay " + i).toList();
        List<CoatPlan> coats = names.stream()
                .map(name -> Invented.coat("store " + name, 1, 0.01, Invented.day("2026-11-02")))
                .toList();
        List<Outcome.CoatResult> results = IntStream.rangeClosed(1, 9)
                .mapToObj(i -> Invented.result("store bay " + i, 1, "2026-11-02", "2026-12-0" + i, 1.0))
                .toList();
        Outcome old = one.outcome();
        Outcome outcome = new Outcome(
                old.ending(),
                old.reached(),
                results,
                old.account(),
                old.roomAccounts(),
                List.of(),
                Invented.history(Map.of("store", names), coats),
                List.of(),
                old.statistics());
        List<WallPlan> walls = names.stream()
                .map(name -> Invented.wall("store " + name, WallPlan.Kind.LISTED, 5.0, "old brick", "store"))
                .toList();
        return new Findings(
                one.notes(),
                Invented.scenario("Nine bays", List.of(Invented.store()), walls, coats),
                outcome,
                List.of(),
                one.effort());
    }

    private static <T> List<T> replaced(List<T> list, int index, T item) {
        return IntStream.range(0, list.size())
                .mapToObj(i -> i == index ? item : list.get(i))
                .toList();
    }

    private static <T> List<T> added(List<T> list, T item) {
        return Stream.concat(list.stream(), Stream.of(item)).toList();
    }
}
