package org.limedry.cli.doors;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.limedry.cli.ask.Question;
import org.limedry.cli.page.Names;
import org.limedry.cli.safety.Advised;
import org.limedry.cli.safety.Situation;
import org.limedry.cli.site.Site;
import org.limedry.room.Opening;
import org.limedry.room.RoomPlan;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Scenario;
import org.limedry.simulation.Simulation;
import org.limedry.simulation.Warning;
import org.limedry.simulation.WaterAccount;
import org.limedry.study.Draw;
import org.limedry.study.Ensemble;
import org.limedry.study.EnsembleResult;
import org.limedry.study.MemberQuantile;
import org.limedry.study.doors.DoorLitres;
import org.limedry.study.doors.DoorPlan;
import org.limedry.study.doors.DoorQuestion;
import org.limedry.study.doors.DoorWay;

/** Finds a plan for the doors and runs it against other ways. */
final class DoorsRun {

    private final Question asked;
    private final Site site;
    private final DoorsForecast weather;
    private final DoorQuestion question;

    DoorsRun(Question asked, Site site, DoorsWanted wanted, DoorsForecast weather) {
        this.asked = asked;
        this.site = site;
        this.weather = weather;
        Scenario scenario = scenario(Draw.likely());
        DoorsDays days = new DoorsDays(asked, site, weather);
        days.check(wanted);
        String room = wanted.room().map(name -> room(name, scenario)).orElseGet(() -> longestWaiting(scenario));
        question =
                new DoorQuestion(scenario, room, days.window(wanted, scenario, room), wanted.errors(), wanted.nights());
    }

    private Scenario scenario(Draw draw) {
        // Members differ in what is unknown of the building; the weather is that for which the plan is made.
        return weather.in(site.scenario(draw.without(Site.WEATHER_SHIFT)));
    }

    private String room(String name, Scenario scenario) {
        RoomPlan room = scenario.rooms().stream()
                .filter(plan -> plan.name().equals(name))
                .findFirst()
                .orElseThrow(() -> asked.refused("--room: must be a room of the site ("
                        + String.join(", ", site.rooms()) + "), was \"" + name + "\""));
        if (room.openings().stream().noneMatch(Opening::leadsOutdoors)) {
            throw asked.refused("--room: must have a door or window to outdoors, " + name + " has none");
        }
        return name;
    }

    /** Returns the room with an opening to outdoors whose coat waits longest. */
    private String longestWaiting(Scenario scenario) {
        List<String> rooms = scenario.rooms().stream()
                .filter(plan -> plan.openings().stream().anyMatch(Opening::leadsOutdoors))
                .map(RoomPlan::name)
                .toList();
        if (rooms.isEmpty()) {
            throw asked.refused("SITE: must have a room with a door or window to outdoors, has none");
        }
        if (rooms.size() == 1) {
            return rooms.get(0);
        }
        Outcome outcome = run(List.of(scenario), Simulation.Until.ALL_READY).get(0);
        return rooms.stream()
                .max(Comparator.comparingLong(name -> longestWaitS(name, outcome)))
                .orElseThrow();
    }

    private static long longestWaitS(String room, Outcome outcome) {
        return outcome.coats().stream()
                .filter(coat -> coat.laid().isPresent() && isIn(room, coat.wall(), outcome))
                .mapToLong(coat -> coat.ready().orElse(outcome.reached()).getEpochSecond()
                        - coat.laid().orElseThrow().getEpochSecond())
                .max()
                .orElse(0);
    }

    private static boolean isIn(String room, String wall, Outcome outcome) {
        return outcome.faces().stream()
                .anyMatch(face -> face.wall().equals(wall) && face.room().equals(room));
    }

    private List<Outcome> run(List<Scenario> scenarios, Simulation.Until until) {
        List<Function<Draw, Scenario>> ways = scenarios.stream()
                .map(scenario -> (Function<Draw, Scenario>) draw -> scenario)
                .toList();
        return asked.run(Ensemble.likelyOnly(), ways, until).stream()
                .map(EnsembleResult::likely)
                .toList();
    }

    /** Returns what was found; empty if the solver gave up. */
    Optional<DoorFindings> findings() {
        Optional<DoorPlan> plan = DoorPlan.find(question, scenarios -> run(scenarios, Simulation.Until.THE_END));
        return plan.map(this::findings);
    }

    private DoorFindings findings(DoorPlan plan) {
        List<EnsembleResult> results = asked.run(asked.ensemble(site), ways(plan), Simulation.Until.THE_END);
        Map<DoorWay, EnsembleResult> after = byWay(results.subList(1, results.size()));
        Outcome byPlan = Objects.requireNonNull(after.get(DoorWay.PLAN)).likely();
        Optional<Outcome.CoatResult> waits = waits(byPlan);
        Map<DoorWay, Instant> ready = waits.map(coat -> ready(plan, coat)).orElseGet(Map::of);
        Map<DoorWay, WayResult> ways = new EnumMap<>(DoorWay.class);
        after.forEach((way, result) ->
                ways.put(way, result(way, results.get(0), result, Optional.ofNullable(ready.get(way)))));
        return new DoorFindings(
                site.name(),
                site.isInvented(),
                site.zone(),
                doors(),
                weather.words(),
                weather.record().isPresent(),
                plan,
                plan.nights(byPlan),
                waits.map(coat -> Names.wall(site.wallWords(coat.wall())) + ", coat " + coat.number()),
                ways,
                situation(byPlan));
    }

    /** Returns the run up to the first day, then each way up to the end of the last night. */
    private List<Function<Draw, Scenario>> ways(DoorPlan plan) {
        List<Function<Draw, Scenario>> ways = new ArrayList<>();
        ways.add(draw -> scenario(draw).endingAt(question.window().from()));
        for (DoorWay way : DoorWay.values()) {
            ways.add(draw -> question.of(scenario(draw)).with(way.open(plan)).endingAt(question.until()));
        }
        return ways;
    }

    private WayResult result(DoorWay way, EnsembleResult before, EnsembleResult after, Optional<Instant> ready) {
        double likely = DoorLitres.outOfWalls(
                account(before.likely().roomAccounts()), account(after.likely().roomAccounts()));
        double[] members = new double[after.members().size()];
        for (int i = 0; i < members.length; i++) {
            members[i] = DoorLitres.outOfWalls(
                    account(before.members().get(i).roomAccounts()),
                    account(after.members().get(i).roomAccounts()));
        }
        if (members.length == 0) {
            return new WayResult(way, likely, Optional.empty(), Optional.empty(), ready);
        }
        return new WayResult(
                way,
                likely,
                Optional.of(Math.min(likely, MemberQuantile.of(members, MemberQuantile.ONE_IN_FIVE))),
                Optional.of(Math.max(likely, MemberQuantile.of(members, MemberQuantile.FOUR_IN_FIVE))),
                ready);
    }

    private WaterAccount account(List<Outcome.RoomAccount> accounts) {
        return accounts.stream()
                .filter(account -> account.room().equals(question.room()))
                .map(Outcome.RoomAccount::account)
                .findFirst()
                .orElseThrow();
    }

    /** Returns the coat of the room that was laid last of those that waited at any time in the days. */
    private Optional<Outcome.CoatResult> waits(Outcome byPlan) {
        return byPlan.coats().stream()
                .filter(coat -> coat.laid().isPresent() && isIn(question.room(), coat.wall(), byPlan))
                .filter(coat -> coat.ready()
                        .map(when -> when.isAfter(question.window().from()))
                        .orElse(true))
                .max(Comparator.comparing(
                                (Outcome.CoatResult coat) -> coat.ready().orElse(Instant.MAX))
                        .thenComparing(coat -> coat.laid().orElseThrow()));
    }

    private Map<DoorWay, Instant> ready(DoorPlan plan, Outcome.CoatResult coat) {
        List<Scenario> scenarios = Stream.of(DoorWay.values())
                .map(way -> question.with(way.open(plan)))
                .toList();
        Map<DoorWay, Instant> dates = new EnumMap<>(DoorWay.class);
        byWay(run(scenarios, Simulation.Until.ALL_READY))
                .forEach((way, outcome) -> outcome.coats().stream()
                        .filter(one -> one.wall().equals(coat.wall()) && one.number() == coat.number())
                        .findFirst()
                        .flatMap(Outcome.CoatResult::ready)
                        .ifPresent(date -> dates.put(way, date)));
        return dates;
    }

    private static <T> Map<DoorWay, T> byWay(List<T> results) {
        Map<DoorWay, T> byWay = new EnumMap<>(DoorWay.class);
        Iterator<T> each = results.iterator();
        for (DoorWay way : DoorWay.values()) {
            byWay.put(way, each.next());
        }
        return byWay;
    }

    private List<String> doors() {
        return question.scenario().rooms().stream()
                .filter(plan -> plan.name().equals(question.room()))
                .flatMap(plan -> plan.openings().stream())
                .filter(Opening::leadsOutdoors)
                .map(Opening::name)
                .toList();
    }

    private Situation situation(Outcome byPlan) {
        Set<Warning.Kind> warned = EnumSet.noneOf(Warning.Kind.class);
        byPlan.warnings().stream()
                .filter(warning -> !warning.until().isBefore(question.window().from()))
                .map(Warning::kind)
                .forEach(warned::add);
        return Situation.at(site)
                .with(question.scenario(), site.zone())
                .warned(warned)
                .advising(Advised.OPEN, Advised.OPEN_BY_NIGHT, Advised.SHUT);
    }

    /** Returns how the figures were found. */
    List<String> basis() {
        return List.of("Each day simulated twice, doors shut and open; then the whole plan against three other ways"
                + (asked.wantsRanges()
                        ? "; in brackets one case in five below, one above."
                        : ", likely figures only."));
    }
}
